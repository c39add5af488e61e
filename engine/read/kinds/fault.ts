import type { Block, Hazard, Inline } from '../../model/prose.ts';
import type { Named } from '../named.ts';
import type { Part } from '../parts.ts';
import { report } from '../read-context.ts';
import type { ProseSyntax, RemedySyntax } from '../section-syntax.ts';
import { onlyIfOf } from './only-if-of.ts';
import type { SectionKind } from './section-kind.ts';

export const fault: SectionKind<'Fault'> = {
  kind: 'fault',
  word: 'Fault',
  branches: false,
  build({ base, lead, leadSpan, parts }, context) {
    const faults = lead.names;
    const { own, remedies } = deal(parts, faults);
    for (const { name, from, to } of faults) {
      const remedy = remedies.find((each) => each.fault === null || each.fault === name);
      if (remedy === undefined || remedy.blocks.length + remedy.hazards.length === 0) {
        const span = faults.length > 1 ? { from, to } : leadSpan;
        report(context, { code: 'fault-without-remedy', fault: name, several: faults.length > 1 }, span);
      }
    }
    const proof = parts.flatMap((part) =>
      part.kind === 'lead' && part.lead.word === 'Prove' ? part.lead.names : [],
    );
    return {
      ...base,
      ...own,
      kind: 'fault',
      faults,
      remedies,
      proof,
      onlyIf: onlyIfOf(parts),
    };
  },
};

interface Pile {
  readonly hazards: Hazard[];
  readonly blocks: Block[];
}

const pile = (): Pile => ({ hazards: [], blocks: [] });

/** Sorts the prose into the section's own and the remedies. With one fault all prose above `Prove` is
 *  its remedy; with several each remedy begins at the heading that names its fault. */
function deal(
  parts: readonly Part[],
  faults: readonly Named[],
): { own: ProseSyntax; remedies: RemedySyntax[] } {
  const own = pile();
  const piles = new Map<string | null, Pile>();
  const only = faults.length > 1 ? null : pile();
  if (only) piles.set(null, only);
  let current = only ?? own;
  for (const part of parts) {
    if (part.kind === 'lead' && part.lead.word === 'Prove') current = own;
    else if (part.kind === 'hazard') current.hazards.push(part.hazard);
    else if (part.kind === 'prose') {
      const named = only === null ? namedIn(part.block, faults) : null;
      if (named === null) current.blocks.push(part.block);
      else {
        current = piles.get(named) ?? pile();
        piles.set(named, current);
      }
    }
  }
  return { own, remedies: [...piles].map(([name, prose]) => ({ fault: name, ...prose })) };
}

/** The fault that a heading begins the remedy of. */
function namedIn(block: Block, faults: readonly Named[]): string | null {
  if (block.type !== 'heading') return null;
  const codes = new Set(codesOf(block.children));
  return faults.find((each) => codes.has(each.name))?.name ?? null;
}

const codesOf = (inlines: readonly Inline[]): string[] =>
  inlines.flatMap((inline) => {
    if (inline.type === 'code') return [inline.value];
    return 'children' in inline ? codesOf(inline.children) : [];
  });
