import { nearest } from '../../names/nearest.ts';
import { unlisted } from '../../practice/drill.ts';
import {
  arrange,
  askTwin,
  checksIn,
  type Drill,
  giveUp,
  hint,
  nameFault,
  nextOf,
  predict,
} from '../../practice/index.ts';
import { wrap } from '../../prose/plain-text.ts';
import { bandsOf } from '../../scale/index.ts';
import { type DrillDesk, refused, type Told, told } from './drill-desk.ts';
import { measured, measureLine } from './measure-line.ts';
import { checkLines, faultLines, helpText, lastWords, proofLines } from './show-drill.ts';

type Take = (desk: DrillDesk, rest: string, width: number) => Told;

/** The first word of a line, and what it does. */
const words: Readonly<Record<string, Take>> = {
  '?': (desk) => told(desk, helpText),
  checks: (desk, rest, width) => told(desk, checkLines(desk.drill, rest, width)),
  faults: (desk) => told(desk, faultLines(desk.drill)),
  measure: (desk, rest, width) => measureLine(desk, rest, width),
  next: (desk, _rest, width) => {
    const next = nextOf(desk.drill);
    return next === null
      ? refused(desk, 'The tree asks for no reading here')
      : measureLine(desk, next, width);
  },
  acknowledge: (desk, _rest, width) => waited(desk, true, width),
  anyway: (desk, _rest, width) => waited(desk, false, width),
  predict: (desk, rest) => predictLine(desk, rest),
  twin: (desk, rest) => twinLine(desk, rest),
  arrange: (desk, rest) => arrangeLine(desk, rest),
  hint: (desk, _rest, width) => {
    const { drill, text, cost } = hint(desk.drill);
    return told({ ...desk, drill }, wrap(`${text}${cost === 0 ? '' : ` (${cost} minutes)`}`, width));
  },
  name: (desk, rest, width) => nameLine(desk, rest, width),
  give: (desk, rest) =>
    rest === 'up'
      ? told({ ...desk, drill: giveUp(desk.drill) }, '')
      : refused(desk, 'Did you mean "give up"?'),
};

/** One line of a trainee, as it is typed or scripted. The id of a reading alone measures it. */
export function takeLine(desk: DrillDesk, line: string, width: number): Told {
  const text = line.trim();
  const [, first = '', rest = ''] = /^(\S+)\s*(.*)$/s.exec(text) ?? [];
  const take = Object.hasOwn(words, first) ? words[first] : undefined;
  if (take !== undefined) return take(desk, rest.trim(), width);
  if (checksIn(desk.drill).some(({ reading }) => reading.id === text)) return measureLine(desk, text, width);
  const near = nearest(text, [
    ...Object.keys(words),
    ...checksIn(desk.drill).map(({ reading }) => reading.id),
  ]);
  return refused(
    desk,
    `"${text.slice(0, 60)}" is neither a reading nor a word of a drill${near[0] === undefined ? '' : `: did you mean "${near[0]}"?`} (? lists them)`,
  );
}

function waited(desk: DrillDesk, heeded: boolean, width: number): Told {
  return desk.waiting === null
    ? refused(desk, 'No warning waits to be acknowledged')
    : measured(desk, desk.waiting, heeded, width);
}

function predictLine(desk: DrillDesk, text: string): Told {
  const [, id = '', band = ''] = /^(.+?)\s*=\s*(.+)$/.exec(text) ?? [];
  const reading = desk.drill.tree.readings.find((one) => one.id === id);
  if (reading === undefined) return refused(desk, 'Say which reading and which band: predict v5 = low');
  const drill = predict(desk.drill, id, band);
  return drill === desk.drill
    ? refused(desk, `"${id}" has no band "${band}": it has ${bandsOf(reading).join(', ')}`)
    : told({ ...desk, drill }, `Noted: ${id} ${band}`);
}

function twinLine(desk: DrillDesk, id: string): Told {
  const drill = askTwin(desk.drill, id);
  const event = drill.events.at(-1);
  if (drill === desk.drill || event?.kind !== 'twin')
    return refused(desk, `"${id}" is no reading that can be taken`);
  return told({ ...desk, drill }, `On the known-good board: ${event.typed}`);
}

function arrangeLine(desk: DrillDesk, text: string): Told {
  const wanted = text.split(',').flatMap((part) => {
    const [, id = '', value = ''] = /^\s*(.+?)\s+(\S+)\s*$/.exec(part) ?? [];
    return id === '' ? [] : [[id, value] as const];
  });
  const drill = arrange(desk.drill, Object.fromEntries(wanted));
  const all = desk.drill.tree.conditions.map(({ id, values }) => `${id} ${values.join('/')}`).join(', ');
  return drill === desk.drill
    ? refused(
        desk,
        all === '' ? 'This board has no conditions to change' : `Nothing changes: it takes ${all}`,
      )
    : told({ ...desk, drill }, `The board: ${conditionsOf(drill)}`);
}

const conditionsOf = ({ conditions }: Drill): string =>
  Object.entries(conditions)
    .map(([id, value]) => `${id} ${value}`)
    .join(', ');

function nameLine(desk: DrillDesk, text: string, width: number): Told {
  const { faults } = desk.drill.tree;
  const named = /^\d+$/.test(text) ? faults[Number(text) - 1]?.id : text;
  const fault = faults.find(({ id }) => id === named);
  if (fault === undefined && named !== unlisted) {
    const near = nearest(text, [...faults.map(({ id }) => id), unlisted]);
    return refused(
      desk,
      `"${text.slice(0, 60)}" is no fault of this tree${near[0] === undefined ? '' : `: did you mean "${near[0]}"?`} (faults lists them)`,
    );
  }
  const { drill, right, proof } = nameFault(desk.drill, named ?? '');
  const lines = proofLines(drill, proof);
  return told({ drill, waiting: null }, [...lines, lastWords(drill, right, width)].join('\n'));
}
