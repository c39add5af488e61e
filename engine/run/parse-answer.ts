import type { BoardState, Part } from '../model/entry.ts';
import type { Taken } from '../model/refusal.ts';
import type { Answer } from './answer.ts';
import { type AnswerForm, form, readingName, settingName, trimmed } from './answer-form.ts';
import { benchForms } from './bench-forms.ts';
import type { Question } from './question.ts';
import { questionOf } from './question-of.ts';
import { sectionFor } from './section-for.ts';
import { latest, type Session } from './session.ts';

const forms: readonly AnswerForm[] = [
  form('open:\\s*([^;]*)(?:;([^;]*))?(?:;(.*))?', 'open: board; owner; story', ([board, owner, story]) => ({
    say: 'open',
    board: trimmed(board),
    owner: trimmed(owner),
    story: trimmed(story),
  })),
  ...benchForms,
  form(`correct\\s+${settingName}\\s*:=\\s*(.+)`, 'correct bus := 50 MHz', ([setting = '', typed = '']) => ({
    say: 'setting',
    setting,
    typed,
    how: 'corrected',
  })),
  form(`${settingName}\\s*:=\\s*\\?`, 'bus := ?', ([setting = '']) => ({ say: 'setting-unknown', setting })),
  form(`${settingName}\\s*:=\\s*(.+)`, 'bus := 50 MHz', ([setting = '', typed = ''], session) => ({
    say: 'setting',
    setting,
    typed,
    how: session.settings.has(setting) ? 'altered' : 'noted',
  })),
  form('yes', 'yes', (_parts, session) => yesOrNo(session, true)),
  form('no', 'no', (_parts, session) => yesOrNo(session, false)),
  form('(?:acknowledge|understood)', 'acknowledge', () => ({ say: 'acknowledge' })),
  form('done', 'done', () => ({ say: 'done' })),
  form('wait', 'wait', () => ({ say: 'wait' })),
  form('same', 'same', () => ({ say: 'confirm' })),
  form('back', 'back', () => ({ say: 'back' })),
  form('cannot read(?::\\s*(.*))?', 'cannot read: no oscilloscope', ([why]) => ({
    say: 'cannot-read',
    why: trimmed(why),
  })),
  form(`retake\\s+${readingName}\\s*=\\s*(.+)`, 'retake v5 = 4.98 V', (parts, session) =>
    retake(parts, session, 'correction'),
  ),
  form(`again\\s+${readingName}\\s*=\\s*(.+)`, 'again v5 = 4.98 V', (parts, session) =>
    retake(parts, session, 'again'),
  ),
  form('strike\\s+(\\d+)(?::\\s*(.*))?', 'strike 12: wrong pin', ([of, why]) => ({
    say: 'strike',
    of: Number(of) - 1,
    why: trimmed(why),
  })),
  form('go\\s+#?(\\S+)', 'go power-good', ([section = '']) => ({ say: 'go', section })),
  form(
    `detour\\s+${readingName}(?:\\s+at\\s+#?(\\S+))?`,
    'detour v33',
    ([reading = '', section], session) => ({
      say: 'detour',
      section: section ?? sectionFor(session, reading),
      reading,
    }),
  ),
  form('return', 'return', () => ({ say: 'return' })),
  form('as if\\s+#?(\\S+)', 'as if power-good', ([target = '']) => ({ say: 'assume', target })),
  form(
    'remedied(?::\\s*([^;]*))?((?:;[^;]*)*)',
    'remedied: C14; tantalum 10 µF = 0.40',
    ([which, parts]) => ({
      say: 'remedied',
      which: trimmed(which),
      parts: readParts(parts),
    }),
  ),
  form('decline(?::\\s*(.*))?', 'decline: part not at hand', ([why]) => ({
    say: 'decline',
    why: trimmed(why),
  })),
  form('note:\\s*(.+)', 'note: smells burnt', ([text = '']) => ({ say: 'note', text })),
  form('todo:\\s*(.+)', 'todo: order a battery holder', ([text = '']) => ({ say: 'todo', text })),
  form('todo done\\s+(\\d+)', 'todo done 7', ([of]) => ({ say: 'todo-done', of: Number(of) - 1 })),
  form('resume(\\s+changed)?', 'resume', ([changed]) => ({ say: 'resume', same: changed === undefined })),
  form('close(\\s+not mended)?(?::\\s*(.*))?', 'close', ([not, note]) => ({
    say: 'close',
    mended: not === undefined,
    note: trimmed(note),
  })),
  form('reopen(?::\\s*(.*))?', 'reopen: same fault again', ([why]) => ({ say: 'reopen', why: trimmed(why) })),
  form(`${readingName}\\s*=\\s*(.+)`, 'v5 = 4.98 V', ([reading = '', typed = ''], session) => ({
    say: 'value',
    reading,
    ...boardState(typed, session),
  })),
];

/** What can be written, one example each. */
export const answerExamples: readonly string[] = forms.map(({ example }) => example);

/** Reads one line as a technician or a script writes it. Anything that is no command is the value
 *  of what is asked. */
export function parseAnswer(session: Session, text: string): Taken<Answer> {
  for (const { pattern, read } of forms) {
    const match = pattern.exec(text);
    if (match === null) continue;
    const answer = read(match.slice(1), session);
    if (answer !== null) return { ok: true, value: answer };
    return {
      ok: false,
      refusal: { text: `"${text.trim()}" is no answer to what is asked`, offers: offersFor(session) },
    };
  }
  return bare(session, text.trim());
}

function bare(session: Session, text: string): Taken<Answer> {
  const question = questionOf(session);
  if (question.ask === 'setting') {
    const setting = question.setting.id;
    return {
      ok: true,
      value:
        text === '?'
          ? { say: 'setting-unknown', setting }
          : { say: 'setting', setting, typed: text, how: 'noted' },
    };
  }
  if (question.ask === 'reading' || question.ask === 'held' || question.ask === 'arrange')
    return { ok: true, value: { say: 'value', reading: null, ...boardState(text, session) } };
  const [unsettled, ...others] = question.ask === 'too-close' ? question.unsettled : [];
  const before = unsettled && others.length === 0 ? latest(session, unsettled.reading.id) : null;
  // One reading leaves the check open, and it was looked at once more.
  if (before !== null && before.observation !== null && unsettled?.reading.from === null) {
    return {
      ok: true,
      value: { say: 'retake', of: before.entry, manner: 'again', ...boardState(text, session) },
    };
  }
  return { ok: false, refusal: { text: `"${text}" was not understood`, offers: offersFor(session) } };
}

const offers: Readonly<Record<Question['ask'], readonly string[]>> = {
  opening: ['open: board; owner; story'],
  setting: ['a value', '?'],
  reading: ['a value', 'cannot read: why', 'back'],
  arrange: ['arranged', 'cannot read: why', 'back'],
  held: ['a value of what must be seen first', 'override: why', 'back'],
  symptom: ['yes', 'no'],
  acknowledgement: ['acknowledge'],
  'too-close': ['as if SECTION', 'a value once more', 'back'],
  task: ['done', 'back'],
  call: ['done', 'back'],
  'hand-over': ['hand over', 'back'],
  remedy: ['remedied', 'decline: why', 'back'],
  aside: ['go SECTION', 'back', 'close not mended'],
  stop: ['back', 'go SECTION', 'close not mended'],
  closing: ['close'],
  nothing: ['reopen: why'],
};
const offersFor = (session: Session): readonly string[] => offers[questionOf(session).ask];

function yesOrNo(session: Session, yes: boolean): Answer | null {
  const { ask } = questionOf(session);
  if (ask === 'symptom') return { say: 'symptom', same: yes };
  if (ask === 'acknowledgement' && yes) return { say: 'acknowledge' };
  if ((ask === 'task' || ask === 'call') && yes) return { say: 'done' };
  if (ask === 'hand-over' && yes) return { say: 'hand-over' };
  if (ask === 'arrange' && yes) return { say: 'arrange', conditions: null };
  return ask === 'reading' || ask === 'held'
    ? { say: 'value', reading: null, typed: yes ? 'yes' : 'no', board: session.boardState }
    : null;
}

/** `4.98 V, running now`: taken while the board runs. */
function boardState(text: string, session: Session): { typed: string; board: BoardState } {
  const match = /^(.*?)[,;]?\s+(running|failing) now\s*$/iu.exec(text);
  return match === null
    ? { typed: text.trim(), board: session.boardState }
    : {
        typed: (match[1] ?? '').trim(),
        board: match[2]?.toLowerCase() === 'running' ? 'running' : 'failing',
      };
}

function retake(
  [reading = '', text = '']: readonly string[],
  session: Session,
  manner: 'correction' | 'again',
): Answer {
  return { say: 'retake', of: latest(session, reading)?.entry ?? -1, manner, ...boardState(text, session) };
}

function readParts(text: string | undefined): readonly Part[] {
  return (text ?? '')
    .split(';')
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .map((part) => {
      const [what = '', cost] = part.split('=');
      return { what: what.trim(), cost: cost?.trim() ?? null };
    });
}
