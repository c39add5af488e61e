import { movedDiagnostic } from '../diagnostics/moved-diagnostic.ts';
import type { Placed } from '../read/body-syntax.ts';
import type { SectionSyntax } from '../read/section-syntax.ts';
import type { KeptLinks } from './kept-links.ts';
import type { LinkContext } from './link-context.ts';
import { linkSection } from './link-section.ts';
import type { LinkedHere } from './linked-here.ts';
import type { LinkedSection } from './linked-tree.ts';
import { placeIn } from './place-in.ts';

/** A section that follows no procedure, linked wherever it stands; one that only moved need not be linked again. */
export function linkHere(
  { syntax, from }: Placed<SectionSyntax>,
  context: LinkContext,
  kept: KeptLinks | null,
): LinkedSection | null {
  const before = kept?.get(syntax);
  const here = before?.here ?? linkAfresh(syntax, context, kept);
  for (const each of here.diagnostics) context.diagnostics.push(movedDiagnostic(each, from));
  for (const each of here.open) context.open.add(each);
  for (const each of here.settingsUsed) context.settingsUsed.add(each);
  for (const [id, { section, span }] of here.handOvers) {
    if (!context.handOvers.has(id)) context.handOvers.set(id, { section, span: placeIn(from, span) });
  }
  if (before === undefined) return here.linked && moved(here.linked, from);
  if (before.from !== from) {
    before.from = from;
    before.placed = here.linked && moved(here.linked, from);
  }
  return before.placed;
}

/** Near misses are looked for a limited number of times in a file, so what came of that is not kept. */
function linkAfresh(syntax: SectionSyntax, context: LinkContext, kept: KeptLinks | null): LinkedHere {
  let isSure = true;
  const own: LinkContext = {
    ...context,
    diagnostics: [],
    open: new Set(),
    settingsUsed: new Set(),
    handOvers: new Map(),
    near(name, names) {
      isSure = false;
      return context.near(name, names);
    },
  };
  const linked = linkSection({ syntax, from: 0 }, own);
  const { diagnostics, open, settingsUsed, handOvers } = own;
  const here = { linked, diagnostics, open, settingsUsed, handOvers };
  if (isSure) kept?.keep(syntax, here);
  return here;
}

function moved(linked: LinkedSection, from: number): LinkedSection {
  return {
    ...linked,
    titleSpan: placeIn(from, linked.titleSpan),
    leadSpan: placeIn(from, linked.leadSpan),
    outcomeSpans: linked.outcomeSpans.map((span) => placeIn(from, span)),
    faultSpans: linked.faultSpans.map((span) => placeIn(from, span)),
    risks: linked.risks.map((risk) => ({ ...risk, span: placeIn(from, risk.span) })),
  };
}
