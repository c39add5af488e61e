import type { Entry } from '../model/entry.ts';
import type { Taken } from '../model/refusal.ts';
import type { Answer } from './answer.ts';
import type { Answering } from './answers/answering.ts';
import { arrange, equip, runs, twin, undone } from './answers/bench.ts';
import { detour, returnBack } from './answers/detour.ts';
import { back, close, go, handOver, newer, reopen } from './answers/moving.ts';
import { note, todo, todoDone } from './answers/notes.ts';
import { acknowledge, open, resume, symptom } from './answers/opening.ts';
import { assume, cannotRead, confirm, retake, strike, value } from './answers/reading.ts';
import { setting, settingUnknown } from './answers/setting.ts';
import { decline, done, override, remedied, wait } from './answers/work.ts';
import { questionOf } from './question-of.ts';
import type { Session } from './session.ts';

/** Every kind of answer and how it becomes an entry. */
const answerings: { readonly [Say in Answer['say']]: Answering<Say> } = {
  open,
  setting,
  'setting-unknown': settingUnknown,
  symptom,
  acknowledge,
  value,
  confirm,
  'cannot-read': cannotRead,
  retake,
  strike,
  assume,
  twin,
  equip,
  arrange,
  override,
  runs,
  undone,
  wait,
  done,
  'hand-over': handOver,
  newer,
  remedied,
  decline,
  back,
  go,
  detour,
  return: returnBack,
  note,
  todo,
  'todo-done': todoDone,
  resume,
  close,
  reopen,
};

/** The entry that an answer makes at the moment `at`, or why it is not taken. Changes nothing:
 *  `apply` does. */
export function entryFor(session: Session, answer: Answer, at: string): Taken<Entry> {
  const answering = answerings[answer.say] as Answering<typeof answer.say>;
  const happening = answering(session, answer as never, questionOf(session));
  return happening.ok ? { ok: true, value: { ...happening.value, at } } : happening;
}
