import { checksIn, type Drill, ledTo, nextOf, type ProofReading } from '../../practice/index.ts';
import { wrap } from '../../prose/plain-text.ts';
import { columns } from '../show/columns.ts';

export const helpText = [
  'The id of a reading measures it; or:',
  '  checks           what can be measured, with its minutes; checks clock: those with that word',
  '  next             measure what the tree asks for now (guided)',
  '  acknowledge      mind the warnings just shown, and measure',
  '  anyway           pass them over, and measure',
  '  predict v5 = low say what it will show before it is measured',
  '  twin v5          the same on a known-good board',
  '  arrange cards out',
  '  hint             what to measure next; once more: what is still suspected',
  '  faults           what the board may have',
  '  name FAULT       carry out the remedy of a fault, by id or number; name unlisted: none of these',
  '  give up, quit',
].join('\n');

/** What is known at the beginning, or what the tree asks for now. */
export function drillHead(drill: Drill, width: number): string {
  const { tree, plan } = drill;
  const given = tree.given.map(({ reading, band }) => {
    const found = tree.readings.find(({ id }) => id === reading);
    return `  ${found?.is ?? reading}: ${band}`;
  });
  const manner =
    plan.manner === 'guided'
      ? 'The tree says what is next: next measures it.'
      : 'Any check, in any order: checks lists them, ? what can be typed.';
  return [`== ${tree.title} ==`, wrap(tree.symptom, width), ...given, manner].join('\n');
}

/** `[12 minutes] clk, a clock`: what the tree asks for, or where it has led. */
export function drillPrompt(drill: Drill): string {
  const minutes = `[${drill.minutes} min] `;
  if (drill.plan.manner === 'free') return `${minutes}> `;
  const next = nextOf(drill);
  const led = next === null ? ledTo(drill) : null;
  return `${minutes}${next ?? (led === null ? 'the tree has come to its end' : `the tree has led to ${led.id}`)} > `;
}

export function checkLines(drill: Drill, word: string, width: number): string {
  const found = checksIn(drill).filter(({ reading }) =>
    `${reading.id} ${reading.is}`.toLowerCase().includes(word.toLowerCase()),
  );
  if (found.length === 0) return `  no check with "${word}"`;
  return columns(
    found.map(({ reading, minutes, wait, taken, lacks, warnings }) => [
      reading.id,
      `${minutes}${wait > 0 ? ` + ${wait}` : ''}`,
      warnings.some(({ kind }) => kind !== 'hazard') ? '!' : '',
      cut(
        taken.length > 0 ? `= ${taken.join(', ')}` : lacks === null ? reading.is : `(no ${lacks})`,
        width - 34,
      ),
    ]),
  );
}

const cut = (text: string, length: number): string =>
  text.length > Math.max(20, length) ? `${text.slice(0, Math.max(20, length) - 1)}…` : text;

export const faultLines = ({ tree }: Drill): string =>
  columns([
    ...tree.faults.map(({ id, is }, at) => [String(at + 1), id, is]),
    ['', 'unlisted', 'None of these'],
  ]);

export const proofLines = ({ tree }: Drill, proof: readonly ProofReading[]): readonly string[] =>
  proof.map(({ reading, typed, good }) => {
    const is = tree.readings.find(({ id }) => id === reading)?.is ?? reading;
    return `  ${good ? 'good ' : 'WRONG'}  ${is}: ${typed}`;
  });

/** What came of a remedy. */
export function lastWords(drill: Drill, right: boolean, width: number): string {
  const event = drill.events.at(-1);
  const passed = event?.kind === 'named' ? event.passed.filter(({ harm }) => harm) : [];
  const harm = passed.map(({ text }) => wrap(`Harm was done: ${text}`, width));
  return [
    ...harm,
    right ? 'That was it: the proof is complete.' : 'That was not it: the board still shows its fault.',
  ].join('\n');
}
