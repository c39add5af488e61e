import type { FactsContext } from '../../facts/facts-context.ts';
import type { Jumper } from '../../model/compiled-board.ts';
import type { Path } from '../../model/front-matter.ts';
import type { Span } from '../../model/span.ts';
import { nearest } from '../../names/nearest.ts';
import { cutPositions, type WrittenPosition } from '../cut-positions.ts';
import type { Positions } from '../positions-text.ts';

/** The key of a row, `JP12 1-2 + JP13 open`; null where it names anything that the board does not have. */
export function readPositions(
  key: string,
  jumpers: readonly Jumper[],
  path: Path,
  context: FactsContext,
): Positions | null {
  const whole = context.spanOf(path, 'key');
  const isPlain = whole.to - whole.from === key.length;
  const spanOf = (from: number, to: number): Span =>
    isPlain ? { from: whole.from + from, to: whole.from + to } : whole;
  const written = cutPositions(key);
  if (written.length === 0) {
    context.at(whole, { code: 'positions-form', found: key });
    return null;
  }
  const at: Record<string, string> = {};
  let sound = true;
  for (const one of written) {
    const { jumper, position, from, to } = one;
    if (Object.hasOwn(at, jumper) && at[jumper] !== position)
      context.at(spanOf(from, to), { code: 'jumper-twice', jumper });
    else if (isKnown(one, jumpers, spanOf, context)) {
      at[jumper] = position;
      continue;
    }
    sound = false;
  }
  return sound ? at : null;
}

function isKnown(
  { jumper: name, position, from, to, at }: WrittenPosition,
  jumpers: readonly Jumper[],
  spanOf: (from: number, to: number) => Span,
  context: FactsContext,
): boolean {
  const jumper = jumpers.find(({ id }) => id === name);
  if (position === '') {
    context.at(spanOf(from, to), { code: 'positions-form', found: jumper === undefined ? name : '' });
    return false;
  }
  if (jumper === undefined) {
    const span = spanOf(from, from + name.length);
    const near = nearest(
      name.slice(0, 60),
      jumpers.map(({ id }) => id),
    );
    context.at(span, { code: 'no-jumper-named', name, near }, renaming(span, name, near));
    return false;
  }
  if (jumper.positions.includes(position)) return true;
  const span = spanOf(at, to);
  const near = nearest(position.slice(0, 60), jumper.positions);
  const facts = {
    code: 'no-position-named',
    jumper: name,
    position,
    positions: jumper.positions,
    near,
  } as const;
  context.at(span, facts, renaming(span, position, near));
  return false;
}

/** The fix where one word only can be meant. */
function renaming(span: Span, written: string, near: readonly string[]) {
  const [only] = near;
  if (only === undefined || near.length > 1 || span.to - span.from !== written.length) return {};
  return { fix: { title: `Write "${only}"`, edits: [{ ...span, insert: only }] } };
}
