import type { Debrief, Drill, TimedEvent } from '../../practice/index.ts';
import { wrap } from '../../prose/plain-text.ts';
import { columns } from '../show/columns.ts';

/** A drill looked back at, for a terminal: what it was, the minutes beside those of other orders, the time line. */
export function showDebrief(drill: Drill, debrief: Debrief, width: number): string {
  const { hidden, enough, passed, predictions, hints, wrong, idle } = debrief;
  const lines = [
    '== Debrief ==',
    wrap(`It was: ${hidden?.is ?? 'none of the faults that this tree lists'}`, width),
    debrief.rightAtFirst ? 'Named right at first.' : '',
    wrong.length === 0 ? '' : `Named before, and not it: ${wrong.join(', ')}`,
    '',
    minutesBlock(debrief),
    '',
    'minute  suspects  as many as  bits  event',
    ...debrief.steps.map((step) => stepLine(drill, step, idle.includes(step.event))),
    '',
    enough === null
      ? 'The evidence never was enough for one suspect with 95 %.'
      : `The evidence was enough at minute ${enough.minute}; ${enough.after} more went into checks after that.`,
    idle.length === 0 ? '' : `Checks that told nothing: ${idle.map((at) => readingAt(drill, at)).join(', ')}`,
    hints === 0 ? '' : `Hints taken: ${hints}`,
    predictions.length === 0
      ? ''
      : `Predicted right: ${predictions.filter(({ right }) => right).length} of ${predictions.length}`,
    ...passed.map(({ text, harm }) => wrap(`${harm ? 'HARM' : 'Passed over'}: ${text}`, width)),
  ];
  return lines.filter((line, at) => line !== '' || lines[at - 1] !== '').join('\n');
}

const minutesBlock = ({ minutes, waited, checking, best, along }: Debrief): string =>
  columns([
    ['minutes in all', `${minutes}${waited > 0 ? `, and ${waited} of waiting` : ''}`],
    ['on checks until a fault was named', String(checking)],
    ['the best next check each time, on this board', String(best)],
    ["the tree's own order, on this board", along === null ? 'comes to no fault' : String(along)],
  ]);

function stepLine(drill: Drill, step: Debrief['steps'][number], isIdle: boolean): string {
  const event = drill.events[step.event];
  const cells = [
    String(step.minute).padStart(6),
    String(step.suspects).padStart(8),
    step.effective.toFixed(1).padStart(10),
    step.bits.toFixed(2).padStart(4),
  ];
  return `${cells.join('  ')}  ${event === undefined ? 'the symptom' : eventText(event)}${isIdle ? '  (told nothing)' : ''}`;
}

const eventText = (event: TimedEvent): string =>
  event.kind === 'measured'
    ? `${event.reading} = ${event.typed}`
    : event.kind === 'named'
      ? `remedy for ${event.fault}: ${event.right ? 'mended' : 'no effect'}`
      : event.kind;

function readingAt({ events }: Drill, at: number): string {
  const event = events[at];
  return event?.kind === 'measured' ? event.reading : '';
}
