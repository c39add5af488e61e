import type { Page } from 'playwright-core';
import type { BoardState, Part } from '../../../engine/model/entry.ts';
import { type Answer, questionOf, type Session } from '../../../engine/run/index.ts';
import { focusedName, tabAndPress, tabTo } from './keyboard.ts';

type ByKeys<Say extends Answer['say']> = (
  page: Page,
  answer: Extract<Answer, { readonly say: Say }>,
  session: Session,
) => Promise<void>;

/** A step without a field takes Enter only after it has stood for a moment: the page's clock goes on. */
async function pressMain(page: Page): Promise<void> {
  await page.clock.runFor(400);
  await page.keyboard.press('Enter');
}

/** Opens a sheet by its key and writes into its first field. */
async function inSheet(page: Page, key: string, words: string): Promise<void> {
  await page.keyboard.press(key);
  await write(page, words);
}

/** Writes into the first field of the sheet that opens. */
async function write(page: Page, words: string): Promise<void> {
  await page.waitForFunction(
    () => document.querySelector('dialog[open] [data-first]') === document.activeElement,
  );
  await page.keyboard.type(words);
}

const isOf = (session: Session, reading: string): string =>
  session.loaded.readings.get(reading)?.is ?? reading;
/** Name of the reading that entry `of` is about. */
const isAt = (session: Session, of: number): string => {
  const about = [...session.history].find(([, words]) => words.some(({ entry }) => entry === of));
  return isOf(session, about?.[0] ?? '');
};

/** Whether the board fails or runs just now stays as it was last said. */
async function sayBoard(page: Page, board: BoardState): Promise<void> {
  const runs = (await page.getByRole('button', { name: 'Board runs now' }).count()) > 0;
  if (runs !== (board === 'running')) await page.keyboard.press('Alt+R');
}

/** What is said outside of the walk's own steps. */
type Aside = 'open' | 'twin' | 'equip' | 'newer';

/** Which keys give each kind of answer. Opening a job is a screen of its own: see `openByKeys`. */
const keys: { readonly [Say in Exclude<Answer['say'], Aside>]: ByKeys<Say> } = {
  value: async (page, { typed, board }) => {
    await sayBoard(page, board);
    await page.keyboard.type(typed);
    await page.keyboard.press('Enter');
  },
  confirm: (page) => page.keyboard.press('='),
  // Only the check that is offered can be gone to by a key.
  detour: async (page) => {
    await page.locator('.proposal').first().waitFor({ state: 'attached' });
    await page.keyboard.press('Alt+Q');
  },
  return: (page) => page.keyboard.press('Alt+T'),
  'cannot-read': async (page, { why }) => {
    await inSheet(page, 'Alt+C', why);
    await page.keyboard.press('Enter');
  },
  setting: async (page, { setting, typed, how }, session) => {
    const is = session.loaded.settings.get(setting)?.is ?? setting;
    if (how !== 'noted') {
      await page.keyboard.press('Alt+S');
      await tabAndPress(page, `Change ${is}`);
      if (how === 'corrected') {
        await tabTo(page, 'The board was altered');
        await page.keyboard.press('ArrowDown');
      }
      await tabTo(page, is);
    }
    await page.keyboard.type(typed);
    await page.keyboard.press('Enter');
  },
  'setting-unknown': (page) => tabAndPress(page, 'Not known'),
  symptom: (page, { same }) => (same ? pressMain(page) : tabAndPress(page, 'No, something else')),
  acknowledge: pressMain,
  retake: async (page, { of, typed, manner }, session) => {
    await tabAndPress(page, `Retake ${isAt(session, of)}`);
    await write(page, typed);
    if (manner === 'again') {
      await tabTo(page, 'corrects the old one');
      await page.keyboard.press('ArrowDown');
      await tabTo(page, isAt(session, of));
    }
    await page.keyboard.press('Enter');
  },
  strike: async (page, { of, why }, session) => {
    await tabAndPress(page, `Retake ${isAt(session, of)}`);
    await tabAndPress(page, 'Strike it out instead');
    await write(page, why);
    await page.keyboard.press('Enter');
  },
  assume: async (page, { target }, session) => {
    const question = questionOf(session);
    const ways = question.ask === 'too-close' ? question.ways : [];
    await page.keyboard.press(String(1 + ways.findIndex((way) => way.target === target)));
  },
  arrange: pressMain,
  override: async (page, { why }) => {
    await tabAndPress(page, 'Go on all the same');
    await write(page, why);
    await page.keyboard.press('Enter');
  },
  runs: async (page, { touched }) => {
    await page.keyboard.press('Alt+M');
    await tabAndPress(page, 'It runs all of a sudden');
    await write(page, touched);
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Undo what was touched' }).waitFor();
    await page.keyboard.press('Escape');
  },
  undone: async (page, { undone }) => {
    await page.keyboard.press('Alt+M');
    await tabAndPress(page, 'Undo what was touched');
    await tabAndPress(
      page,
      { 'fails again': 'It fails again', 'still runs': 'It still runs', 'not tried': 'It cannot be undone' }[
        undone
      ],
    );
  },
  'hand-over': pressMain,
  wait: pressMain,
  done: async (page, _answer, session) => {
    const question = questionOf(session);
    const waits = question.ask === 'task' && question.section.wait > 0 && question.waitingSince === null;
    await (waits ? tabAndPress(page, 'Done, without waiting') : pressMain(page));
  },
  remedied: async (page, { which, parts }, session) => {
    await tabTo(page, whichLabel(session));
    await page.keyboard.type(which);
    await writeParts(page, parts);
    await tabTo(page, 'It is done: prove it');
    await pressMain(page);
  },
  decline: async (page, { why }) => {
    await tabAndPress(page, 'Put it aside');
    await write(page, why);
    await page.keyboard.press('Enter');
  },
  back: (page) => page.keyboard.press('Alt+B'),
  go: async (page, { section }, session) => {
    const title = session.loaded.sections.get(section)?.title ?? section;
    await page.keyboard.press('Alt+M');
    await tabAndPress(page, 'Go on at another step');
    await write(page, title);
    await tabAndPress(page, title);
  },
  note: async (page, { text }) => {
    await inSheet(page, 'Alt+N', text);
    await tabAndPress(page, 'Keep the note');
  },
  todo: async (page, { text }) => {
    await inSheet(page, 'Alt+W', text);
    await page.keyboard.press('Enter');
  },
  'todo-done': async (page, { of }, session) => {
    const entry = session.entries[of];
    await tabAndPress(page, `Done: ${entry?.kind === 'todo' ? entry.text : ''}`);
  },
  resume: (page, { same }) => (same ? pressMain(page) : tabAndPress(page, 'No, it is another one')),
  close: async (page, { mended, note }, session) => {
    if (mended) {
      await tabTo(page, 'A word for the record');
      await page.keyboard.type(note);
      await tabTo(page, 'Close it as mended');
      return pressMain(page);
    }
    if (questionOf(session).ask === 'stop') await pressMain(page);
    else {
      await page.keyboard.press('Alt+M');
      await tabAndPress(page, 'Close the job');
    }
    await write(page, note);
    await page.keyboard.press('Enter');
  },
  reopen: async (page, { why }) => {
    await tabAndPress(page, 'Take it up again');
    await write(page, why);
    await page.keyboard.press('Enter');
  },
};

/** What the field asks for where the tree says so. */
function whichLabel(session: Session): string {
  const question = questionOf(session);
  const asks = question.ask === 'remedy' ? question.fault.which : null;
  return asks === null ? 'Which one' : `${asks.charAt(0).toUpperCase()}${asks.slice(1)}`;
}

/** Every part in a line of its own: the author's lines are written over, those too many emptied. */
async function writeParts(page: Page, parts: readonly Part[]): Promise<void> {
  for (const { what, cost } of parts) {
    await page.keyboard.press('Tab');
    if ((await focusedName(page)) === 'Add a part') {
      await page.keyboard.press('Enter');
      await page.keyboard.press('Shift+Tab');
      await page.keyboard.press('Shift+Tab');
    }
    await writeOver(page, what);
    await page.keyboard.press('Tab');
    await writeOver(page, cost ?? '');
  }
  await page.keyboard.press('Tab');
  while ((await focusedName(page)) === 'Part') {
    await writeOver(page, '');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
  }
}

async function writeOver(page: Page, words: string): Promise<void> {
  await page.keyboard.press('Control+A');
  await page.keyboard.press('Delete');
  await page.keyboard.type(words);
}

/** Gives one answer to the page with the keyboard alone. Does not wait for what comes of it. */
export function answerByKeys(page: Page, session: Session, answer: Answer): Promise<void> {
  const { say } = answer;
  if (say === 'open' || say === 'twin' || say === 'equip' || say === 'newer')
    throw new Error(`expected an answer of the walk, not "${say}"`);
  return (keys[say] as ByKeys<typeof say>)(page, answer as never, session);
}
