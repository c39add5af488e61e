import fc from 'fast-check';
import { expect } from 'vitest';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import {
  apply,
  entryFor,
  machineValue,
  parseAnswer,
  questionOf,
  replay,
  type Session,
} from '../../engine/run/index.ts';
import { bandsOf } from '../../engine/scale/index.ts';

/** Numbers that choose the next answers; the same numbers always choose the same. */
const choices = fc.array(fc.nat({ max: 9999 }), { minLength: 1, maxLength: 60 });

const pick = <T>(items: readonly T[], at: number): T | undefined => items[at % Math.max(1, items.length)];

/** Something a technician might say now: mostly what is asked for, now and then something else. */
function answerFor(session: Session, choice: number): string {
  const question = questionOf(session);
  const odd = choice % 13;
  if (odd === 0) return 'back';
  if (odd === 1) return 'note: looked again';
  if (odd === 2)
    return (
      pick(
        [
          'resume',
          'retake v5 = 0.1',
          'again v5 = 5',
          'bus := 25',
          'correct bus := 40',
          'cannot read',
          'same',
        ],
        choice >> 4,
      ) ?? 'back'
    );
  if (odd === 3) return `strike ${choice % (session.entries.length + 1)}: slip`;
  if (odd === 4) return `go ${pick([...session.loaded.sections.keys()], choice >> 4)}`;
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
    case 'reading': {
      const { measure } = question.reading;
      if (measure.kind === 'options') return pick(bandsOf(question.reading), choice >> 4) ?? '';
      if (measure.kind === 'codes') return (choice % 256).toString(16).padStart(measure.digits, '0');
      return (
        pick(
          ['0', '0.1', '2', '4.7..4.9', '> 1', '5', `${choice % 90}`, 'OL', 'nonsense', ''],
          choice >> 4,
        ) ?? '5'
      );
    }
    case 'too-close':
      return `as if ${pick(question.ways, choice >> 4)?.target}`;
    case 'task':
      return choice % 2 === 0 ? 'done' : 'wait';
    case 'remedy':
      return choice % 4 === 0 ? 'decline: no part' : 'remedied: part';
    case 'aside':
    case 'stop':
      return choice % 5 === 0
        ? 'close not mended'
        : `go ${pick([...session.loaded.sections.keys()], choice >> 4)}`;
    case 'closing':
      return 'close';
    case 'nothing':
      return 'reopen: again';
  }
}

/** Walks a tree at random and holds every law of the session on the way: nothing throws, entries are only
 *  added, a step back restores the machine's value, and the entries alone lead to the same place. */
export function randomWalks(tree: CompiledTree, numRuns: number, seed?: number): void {
  fc.assert(
    fc.property(choices, (numbers) => {
      let session = replay(tree, []);
      numbers.forEach((choice, index) => {
        const parsed = parseAnswer(session, answerFor(session, choice));
        const at = `2026-03-01T10:${String(index).padStart(2, '0')}:00.000+01:00`;
        const entry = parsed.ok ? entryFor(session, parsed.value, at) : parsed;
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
      const again = replay(tree, JSON.parse(JSON.stringify(session.entries)));
      expect(machineValue(again)).toEqual(machineValue(session));
      expect([...again.history]).toEqual([...session.history]);
      expect(questionOf(again)).toEqual(questionOf(session));
    }),
    seed === undefined ? { numRuns } : { numRuns, seed },
  );
}

const moves = new Set(['read', 'confirmed', 'unread', 'assumed', 'did', 'remedied', 'declined', 'went']);

function stepsBack(before: Session, after: Session): void {
  const kind = after.entries.at(-1)?.kind ?? '';
  if (!moves.has(kind) || after.position === before.position || after.misfits.length > before.misfits.length)
    return;
  const back = apply(after, { kind: 'back', at: '2026-03-01T11:00:00.000+01:00' });
  expect(machineValue(back)).toEqual(machineValue(before));
  expect(back.position.section).toBe(before.position.section);
}
