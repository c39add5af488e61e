import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { placedDiagnostic } from '../diagnostics/moved-diagnostic.ts';
import type { LinkedSection, LinkedTree } from '../link/linked-tree.ts';
import { placeIn } from '../link/place-in.ts';
import type { Span } from '../model/span.ts';
import { checkRules } from './index.ts';

/** What the rules said of a tree before. It holds for as long as what changed is nothing that a rule looks at: most edits
 *  change the prose of one section. */
export class KeptRules {
  private before: { readonly tree: LinkedTree; readonly said: readonly Diagnostic[] } | null = null;

  /** The same as `checkRules(tree)`. */
  check(tree: LinkedTree): readonly Diagnostic[] {
    const { before } = this;
    const said = (before && stillSaid(before.said, before.tree, tree)) ?? checkRules(tree);
    this.before = { tree, said };
    return said;
  }
}

/** The same at the places where it is now; null where something else may have to be said. */
function stillSaid(
  said: readonly Diagnostic[],
  then: LinkedTree,
  now: LinkedTree,
): readonly Diagnostic[] | null {
  const change = onlyChange(then, now);
  if (change === null || !equal(frameOf(then), frameOf(now))) return null;
  if (!equal(bearing(change.was), bearing(change.is))) return null;
  const place = placesAfter(change);
  const placed = said.flatMap((diagnostic) => placedDiagnostic(diagnostic, place) ?? []);
  return placed.length === said.length ? placed : null;
}

interface Change {
  readonly was: LinkedSection;
  readonly is: LinkedSection;
  /** Where the next section began, and how far it has moved. */
  readonly end: number;
  readonly by: number;
}

/** The one section that is another. */
function onlyChange(then: LinkedTree, now: LinkedTree): Change | null {
  if (then.facts !== now.facts || then.sections.length !== now.sections.length) return null;
  const isAnother = ({ section }: LinkedSection, index: number): boolean =>
    section !== then.sections[index]?.section;
  const at = now.sections.findIndex(isAnother);
  const [before, after] = [then.sections[at], now.sections[at]];
  const [nextBefore, nextAfter] = [then.sections[at + 1], now.sections[at + 1]];
  if (before === undefined || after === undefined || now.sections.findLastIndex(isAnother) !== at)
    return null;
  const end = nextBefore?.titleSpan.from ?? Number.POSITIVE_INFINITY;
  return {
    was: before,
    is: after,
    end,
    by: (nextAfter?.titleSpan.from ?? 0) - (nextBefore?.titleSpan.from ?? 0),
  };
}

/** Where what was at a place is now; null where that cannot be told. */
function placesAfter({ was, is, end, by }: Change): (span: Span) => Span | null {
  const start = was.titleSpan.from;
  const within = new Map(
    spansOf(was).map((span, index) => [`${span.from} ${span.to}`, spansOf(is)[index] ?? null]),
  );
  return (span) => {
    if (span.to < start) return span;
    if (span.from >= end) return placeIn(by, span);
    return within.get(`${span.from} ${span.to}`) ?? null;
  };
}

const spansOf = ({
  titleSpan,
  leadSpan,
  outcomeSpans,
  faultSpans,
  risks,
}: LinkedSection): readonly Span[] => [
  titleSpan,
  leadSpan,
  ...outcomeSpans,
  ...faultSpans,
  ...risks.map(({ span }) => span),
];

/** What rules look at besides the sections. */
const frameOf = ({ hazards, open, settingsUsed }: LinkedTree) => ({
  hazards,
  open: [...open].toSorted(),
  settingsUsed: [...settingsUsed].toSorted(),
});

/** What rules look at in a section: all but its prose and its places. */
function bearing({ section, risks, sound, inlined, outcomeSpans, faultSpans }: LinkedSection): unknown {
  const bare = { ...section, blocks: [] };
  return {
    section:
      bare.kind === 'fault'
        ? { ...bare, remedies: bare.remedies.map((remedy) => ({ ...remedy, blocks: [] })) }
        : bare,
    risks: risks.map(({ risk, words }) => [risk, words]),
    spans: [outcomeSpans.length, faultSpans.length],
    sound,
    inlined,
  };
}

const equal = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
