import { printQuantity } from '../quantity/index.ts';
import type { Answer, Question, Session } from '../run/index.ts';
import { questionOf } from '../run/index.ts';

/** What is typed for settings, by name. */
export type TypedSettings = Readonly<Record<string, string>>;

/** The answers that a question itself calls for. While the next answer of a case is one of them, the question waits for it. */
const calledFor: Readonly<Partial<Record<Question['ask'], readonly Answer['say'][]>>> = {
  opening: ['open'],
  setting: ['setting', 'setting-unknown'],
  symptom: ['symptom'],
  acknowledgement: ['acknowledge'],
  task: ['done', 'wait'],
  call: ['done'],
  arrange: ['arrange', 'confirm', 'cannot-read'],
  'hand-over': ['hand-over'],
};

/** Said of the job as a whole, at whatever step it stands. They can come once the job is open. */
const aside: readonly Answer['say'][] = [
  'back',
  'go',
  'detour',
  'return',
  'note',
  'todo',
  'todo-done',
  'resume',
  'strike',
  'retake',
  'equip',
  'twin',
  'runs',
  'undone',
];

/** The answer that goes without saying at this step: what a case leaves out. Null where somebody has to say it.
 *  @param next the answer that the case gives next, if it gives one */
export function autoAnswer(session: Session, settings: TypedSettings, next: Answer | null): Answer | null {
  const question = questionOf(session);
  if (next !== null && calledFor[question.ask]?.includes(next.say)) return null;
  const begun = !['opening', 'setting', 'symptom'].includes(question.ask);
  if (next !== null && begun && aside.includes(next.say)) return null;
  switch (question.ask) {
    case 'opening':
      return { say: 'open', board: '', owner: '', story: '' };
    case 'setting':
      return settingAnswer(question.setting, settings);
    case 'symptom':
      return { say: 'symptom', same: true };
    case 'acknowledgement':
      return { say: 'acknowledge' };
    case 'task':
    case 'call':
      return { say: 'done' };
    case 'arrange':
      return { say: 'arrange', conditions: null };
    case 'hand-over':
      return question.tree === null ? null : { say: 'hand-over' };
    default:
      return null;
  }
}

function settingAnswer(
  { id, ...setting }: Extract<Question, { readonly ask: 'setting' }>['setting'],
  settings: TypedSettings,
): Answer {
  const usual =
    setting.usual === null || typeof setting.usual === 'string'
      ? setting.usual
      : printQuantity(setting.usual);
  const typed = settings[id] ?? usual;
  return typed === null || typed === '?'
    ? { say: 'setting-unknown', setting: id }
    : { say: 'setting', setting: id, typed, how: 'noted' };
}
