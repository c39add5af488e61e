import type { CompiledBoard, Jumper } from '../model/compiled-board.ts';
import type { Taken } from '../model/refusal.ts';
import { nearest } from '../names/nearest.ts';
import { cutPositions, type WrittenPosition } from './cut-positions.ts';
import type { Positions } from './positions-text.ts';

const longest = 400;

/** Jumper positions as a technician types them: `JP12 1-2, JP13 open`, `jp12=1-2`. Letter case does not matter. */
export function parsePositions({ jumpers }: Pick<CompiledBoard, 'jumpers'>, typed: string): Taken<Positions> {
  if (jumpers.length === 0) return refuse('This board sheet has no jumpers', []);
  if (typed.length > longest)
    return refuse(`This is ${typed.length} characters long, and ${longest} is the most`, []);
  const written = cutPositions(typed);
  if (written.length === 0) return refuse('No jumper is named', examples(jumpers));
  const found: Record<string, string> = Object.create(null);
  for (const one of written) {
    const taken = positionOf(jumpers, one);
    if (!taken.ok) return taken;
    const { jumper, position } = taken.value;
    const before = found[jumper];
    if (before !== undefined && before !== position) {
      const offers = [before, position].map((each) => `${jumper} ${each}`);
      return refuse(`${jumper} cannot be in two positions at once`, offers);
    }
    found[jumper] = position;
  }
  return { ok: true, value: { ...found } };
}

/** One jumper and its position as the board sheet spells them. */
function positionOf(
  jumpers: readonly Jumper[],
  { jumper: name, position }: WrittenPosition,
): Taken<{ readonly jumper: string; readonly position: string }> {
  const jumper = sameWord(jumpers, ({ id }) => id, name);
  if (jumper === undefined) {
    const near = nearest(
      name.slice(0, 60),
      jumpers.map(({ id }) => id),
    );
    const meant = near.flatMap((id) => jumpers.filter((each) => each.id === id));
    return refuse(
      `This board has no jumper "${name.slice(0, 60)}"`,
      meant.length > 0 ? meant.map((each) => exampleOf(each, position)) : examples(jumpers),
    );
  }
  const { id, positions } = jumper;
  const found = sameWord(positions, (each) => each, position);
  if (found !== undefined) return { ok: true, value: { jumper: id, position: found } };
  const offers = positions.map((each) => `${id} ${each}`);
  return position === ''
    ? refuse(`Nothing says where ${id} sits`, offers)
    : refuse(`${id} has no position "${position.slice(0, 60)}"`, offers);
}

function sameWord<T>(all: readonly T[], nameOf: (one: T) => string, word: string): T | undefined {
  const flat = word.toLowerCase();
  return all.find((one) => nameOf(one) === word) ?? all.find((one) => nameOf(one).toLowerCase() === flat);
}

const exampleOf = ({ id, positions }: Jumper, position: string): string =>
  `${id} ${positions.includes(position) ? position : positions[0]}`;

const examples = (jumpers: readonly Jumper[]): readonly string[] =>
  jumpers.slice(0, 3).map((jumper) => exampleOf(jumper, ''));

const refuse = (text: string, offers: readonly string[]): Taken<never> => ({
  ok: false,
  refusal: { text, offers },
});
