import { printInstrument } from '../doubt/index.ts';
import type { Answer } from './answer.ts';
import { type AnswerForm, form, readingName, trimmed } from './answer-form.ts';

const nothingSaid = { say: 'equip', instruments: null, lacking: null, rule: null } as const;

/** What is said of the bench and of the board as a whole, not of the step at hand. */
export const benchForms: readonly AnswerForm[] = [
  form(`twin\\s+${readingName}\\s*=\\s*(.+)`, 'twin ref_swing = 1.3 Vpp', ([reading = '', typed = '']) => ({
    say: 'twin',
    reading,
    typed,
  })),
  form(
    'instruments:\\s*(.+)',
    'instruments: bench meter (meter): 6 V ± (0.5 % + 2) at 1 mV | scope (scope): 100 MHz ± 25 ppm',
    ([lines]) => ({
      ...nothingSaid,
      instruments: trimmed(lines).toLowerCase() === 'none' ? [] : listed(lines, '|'),
    }),
  ),
  form(
    'instrument:\\s*(.+)',
    'instrument: bench meter (meter): 6 V ± (0.5 % + 2) at 1 mV',
    ([line = ''], { equipment }) => ({
      ...nothingSaid,
      instruments: [
        ...equipment.instruments.filter(({ name }) => !line.startsWith(`${name} (`)).map(printInstrument),
        line,
      ],
    }),
  ),
  form('lacking:\\s*(.+)', 'lacking: scope, spare cpu', ([tools]) => ({
    ...nothingSaid,
    lacking: trimmed(tools).toLowerCase() === 'nothing' ? [] : listed(tools, ','),
  })),
  form('rule:\\s*(simple|guarded)', 'rule: guarded', ([rule]) => ({
    ...nothingSaid,
    rule: rule?.toLowerCase() === 'simple' ? 'simple' : 'guarded',
  })),
  form('arranged?(?:\\s+(.+))?', 'arrange cards out, cpu out', ([text]) => arranged(text)),
  form('override(?::\\s*(.*))?', 'override: the rail was looked at yesterday', ([why]) => ({
    say: 'override',
    why: trimmed(why),
  })),
  form('runs:\\s*(.+)', 'runs: pressed the memory home', ([touched = '']) => ({ say: 'runs', touched })),
  form('undone:\\s*(fails again|still runs|not tried)', 'undone: fails again', ([word]) => ({
    say: 'undone',
    undone: (['fails again', 'still runs', 'not tried'] as const).find(
      (each) => each === word?.toLowerCase(),
    ) as 'not tried',
  })),
  form('hand over', 'hand over', () => ({ say: 'hand-over' })),
  form('newer', 'newer', () => ({ say: 'newer', digest: null })),
];

const listed = (text: string | undefined, joint: string): readonly string[] =>
  (text ?? '')
    .split(joint)
    .map((part) => part.trim())
    .filter((part) => part !== '');

/** `cards out, cpu: out`; nothing at all means what is asked for. */
function arranged(text: string | undefined): Answer | null {
  if (text === undefined) return { say: 'arrange', conditions: null };
  const pairs = listed(text, ',').map((part) =>
    /^`?([\p{L}_][\p{L}\p{N}_]*)`?\s*[:= ]\s*`?(\S+?)`?$/u.exec(part),
  );
  if (pairs.length === 0 || pairs.includes(null)) return null;
  return {
    say: 'arrange',
    conditions: Object.fromEntries(pairs.map((pair) => [pair?.[1] ?? '', pair?.[2] ?? ''])),
  };
}
