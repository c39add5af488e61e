import type { Debrief } from '../../../engine/practice/debrief.ts';
import { listed } from '../listed.ts';
import { minutesText } from '../minutes-text.ts';
import type { DebriefStep } from './debrief-steps.ts';

/** A sentence on a drill. */
export interface DebriefLine {
  readonly text: string;
  readonly tone: 'good' | 'bad' | 'plain';
}

const line = (tone: DebriefLine['tone'], text: string): DebriefLine => ({ tone, text });

/** What a trainer would say of it, the weightiest first. */
export function debriefLines(debrief: Debrief, steps: readonly DebriefStep[]): readonly DebriefLine[] {
  return [
    ...enoughLines(debrief),
    ...orderLines(debrief),
    ...idleLines(steps),
    ...warningLines(debrief),
    ...namedLines(debrief),
    ...hintLines(debrief),
    ...predictionLines(debrief),
  ];
}

function enoughLines({ enough, outcome }: Debrief): readonly DebriefLine[] {
  if (enough === null) {
    return outcome === 'found'
      ? [line('plain', 'The readings left more than one suspect: it was named on less than was to be had.')]
      : [line('plain', 'The readings never came down to one suspect.')];
  }
  const after = enough.minute === 0 ? 'from the start' : `after minute ${enough.minute}`;
  return enough.after > 0
    ? [line('bad', `You knew enough ${after}; you spent ${enough.after} more.`)]
    : [line('good', `You knew enough ${after}, and measured no more than that.`)];
}

function orderLines({ checking, best, along, enough }: Debrief): readonly DebriefLine[] {
  const others = [
    ...(best === null ? [] : [`the best next check each time is certain of this board in ${best}`]),
    ...(along === null ? [] : [`the tree's order comes to a fault in ${along}`]),
  ];
  if (others.length === 0) return [line('plain', `You measured for ${minutesText(checking)}.`)];
  const tone = enough !== null && best !== null && checking <= best ? 'good' : 'plain';
  return [line(tone, `You measured for ${minutesText(checking)}; ${others.join(', ')}.`)];
}

function idleLines(steps: readonly DebriefStep[]): readonly DebriefLine[] {
  const idle = steps.filter(({ kind, halvings }) => kind === 'told nothing' && halvings !== null);
  if (idle.length === 0) return [];
  const numbers = listed(idle.map(({ number }) => String(number)));
  return [
    line('plain', idle.length === 1 ? `Check ${numbers} told nothing.` : `Checks ${numbers} told nothing.`),
  ];
}

function warningLines({ passed, harm }: Debrief): readonly DebriefLine[] {
  if (passed.length === 0) return [line('good', 'No warning was passed over.')];
  const count = passed.length === 1 ? 'One warning was' : `${passed.length} warnings were`;
  const harmed =
    harm === 0 ? 'On this board that did no harm' : `Harm was done ${harm === 1 ? 'once' : `${harm} times`}`;
  return [line('bad', `${count} passed over. ${harmed}.`)];
}

function namedLines({ wrong, hypotheses }: Debrief): readonly DebriefLine[] {
  if (wrong.length === 0) return [];
  const names = wrong.map((id) => hypotheses.find((one) => one.id === id)?.is ?? id);
  return [line('bad', `Named, and not the cause: ${names.join('; ')}.`)];
}

const hintLines = ({ hints }: Debrief): readonly DebriefLine[] =>
  hints === 0 ? [] : [line('plain', hints === 1 ? 'You took one hint.' : `You took ${hints} hints.`)];

function predictionLines({ predictions }: Debrief): readonly DebriefLine[] {
  if (predictions.length === 0) return [];
  const right = predictions.filter((one) => one.right).length;
  return [
    line(
      right === predictions.length ? 'good' : 'plain',
      `What you said before measuring came true ${right} of ${predictions.length} times.`,
    ),
  ];
}
