import fc from 'fast-check';
import { expect } from 'vitest';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import type { Reading } from '../../engine/model/reading.ts';
import {
  apply,
  entryFor,
  machineValue,
  type Parts,
  parseAnswer,
  questionOf,
  replay,
  type Session,
} from '../../engine/run/index.ts';
import { bandsOf } from '../../engine/scale/index.ts';

/** Numbers that choose the next answers; the same numbers always choose the same. */
const choices = fc.array(fc.nat({ max: 99_999 }), { minLength: 1, maxLength: 60, size: 'max' });

const pick = <T>(items: readonly T[], at: number): T | undefined => items[at % Math.max(1, items.length)];

/** Said at any step, whether it is wanted or not. */
const anyTime = [
  'note: looked again',
  'resume',
  'retake v5 = 0.1',
  'again v5 = 5',
  'again cpu_clk = 33',
  'bus := 25',
  'correct bus := 40',
  'correct rated := 20',
  'cannot read',
  'same',
  'arranged',
  'arrange cards in',
  'arrange cards out, cpu out',
  'override: seen before',
  'r_v5 = 150',
  'r_v5 = 1',
  'twin ref_swing = 1.2 Vpp',
  'instruments: meter (meter): 60 V ± (1 % + 2) at 10 mV | counter (scope): 100 MHz ± 1 %',
  'instruments: none',
  'rule: simple',
  'rule: guarded',
  'lacking: scope',
  'lacking: nothing',
  'runs: the cards',
  'undone: fails again',
  'undone: still runs',
  'newer',
  'hand over',
];

/** What might be typed for a reading. */
function typedAt(reading: Reading, choice: number): string {
  const { measure } = reading;
  const at = choice >> 4;
  const values: Readonly<Record<Reading['measure']['kind'], readonly string[]>> = {
    quantity: [
      '0',
      '0.1',
      '2',
      '4.7..4.9',
      '> 1',
      '5',
      '4.76',
      `${choice % 90}`,
      '150',
      'OL',
      'nonsense',
      '',
    ],
    options: bandsOf(reading),
    codes: [(choice % 256).toString(16).padStart(2, '0')],
    beeps: ['long short short', 'none', '1-3-3', 'hum'],
    tries: ['20 of 20', '10 of 10', '3 of 7', '0 of 1', '0 of 0'],
    each: ['all moves', 'A1 stuck, rest moves', 'A0 A2 stuck', 'all stuck', 'A9 moves'],
  };
  return pick(values[measure.kind], at) ?? '';
}

/** Off to another check, by name or to any section, or back from there. */
function aside(session: Session, choice: number): string {
  if (choice % 3 === 0) return 'return';
  const reading = pick([...session.loaded.readings.keys()], choice >> 4) ?? '';
  const section = pick([...session.loaded.sections.keys()], choice >> 9);
  return choice % 3 === 1 ? `detour \`${reading}\`` : `detour \`${reading}\` at ${section}`;
}

/** Something a technician might say now: mostly what is asked for, now and then something else. */
function answerFor(session: Session, choice: number): string {
  const question = questionOf(session);
  const sections = [...session.loaded.sections.keys()];
  const odd = choice % 19;
  if (odd < 2) return 'back';
  if (odd < 5) return pick(anyTime, choice >> 4) ?? 'back';
  if (odd === 5) return `strike ${choice % (session.entries.length + 1)}: slip`;
  if (odd === 6) return `go ${pick(sections, choice >> 4)}`;
  if (odd === 7) return aside(session, choice);
  switch (question.ask) {
    case 'opening':
      return 'open: board';
    case 'setting':
      return question.setting.kind === 'options'
        ? String(1 + (choice % question.setting.options.length))
        : String(1 + (choice % 80));
    case 'symptom':
      return choice % 3 === 0 ? 'no' : 'yes';
    case 'acknowledgement':
      return 'acknowledge';
    case 'reading':
      return choice % 5 === 0 && question.known !== null ? 'same' : typedAt(question.reading, choice);
    case 'arrange':
      return choice % 5 === 0 ? 'cannot read' : 'arranged';
    case 'held': {
      const reading = pick(
        question.lacking.flatMap(({ take }) => take),
        choice >> 4,
      );
      return choice % 3 === 0 || reading === undefined ? 'override: yes' : typedAt(reading, choice);
    }
    case 'too-close':
      return `as if ${pick(question.ways, choice >> 4)?.target}`;
    case 'task':
      return choice % 2 === 0 ? 'done' : 'wait';
    case 'call':
      return 'done';
    case 'hand-over':
      return 'hand over';
    case 'remedy':
      return choice % 4 === 0 ? 'decline: no part' : 'remedied: part';
    case 'aside':
    case 'stop':
      return choice % 9 === 0 ? 'close not mended' : `go ${pick(sections, choice >> 4)}`;
    case 'closing':
      return 'close';
    case 'nothing':
      return 'reopen: again';
  }
}

/** Walks a tree at random and holds every law of the session on the way: nothing throws, entries are only
 *  added, a step back restores the machine's value, and the entries alone lead to the same place. */
export function randomWalks(
  tree: CompiledTree,
  numRuns: number,
  { seed, ...parts }: Partial<Parts> & { readonly seed?: number } = {},
): void {
  const at = { board: null, laterTrees: [], ...parts };
  fc.assert(
    fc.property(choices, (numbers) => {
      let session = replay(tree, [], at);
      numbers.forEach((choice, index) => {
        const parsed = parseAnswer(session, answerFor(session, choice));
        const now = `2026-03-01T10:${String(index).padStart(2, '0')}:00.000+01:00`;
        const entry = parsed.ok ? entryFor(session, parsed.value, now) : parsed;
        if (!entry.ok) {
          expect(entry.refusal.text).not.toBe('');
          return;
        }
        const next = apply(session, entry.value);
        expect(next.entries.slice(0, -1)).toEqual(session.entries);
        questionOf(next);
        stepsBack(session, next);
        session = next;
      });
      const again = replay(tree, JSON.parse(JSON.stringify(session.entries)), at);
      expect(machineValue(again)).toEqual(machineValue(session));
      expect([...again.history]).toEqual([...session.history]);
      expect(questionOf(again)).toEqual(questionOf(session));
      expect(again.position.conditions).toEqual(session.position.conditions);
      expect(again.loaded.tree.digest).toBe(session.loaded.tree.digest);
    }),
    seed === undefined ? { numRuns } : { numRuns, seed },
  );
}

const moves = new Set([
  'read',
  'confirmed',
  'unread',
  'assumed',
  'did',
  'remedied',
  'declined',
  'went',
  'detoured',
  'returned',
]);

function stepsBack(before: Session, after: Session): void {
  const entry = after.entries.at(-1);
  const isMove = entry?.kind === 'tree' ? entry.why === 'handed over' : moves.has(entry?.kind ?? '');
  if (!isMove || after.position === before.position || after.misfits.length > before.misfits.length) return;
  const back = apply(after, { kind: 'back', at: '2026-03-01T11:00:00.000+01:00' });
  expect(machineValue(back)).toEqual(machineValue(before));
  expect(back.position.section).toBe(before.position.section);
  expect(back.position.conditions).toEqual(before.position.conditions);
  expect(back.loaded).toBe(before.loaded);
  expect(back.position.detour).toBe(before.position.detour);
}
