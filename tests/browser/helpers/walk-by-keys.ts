import type { Page } from 'playwright-core';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import { apply, entryFor, parseAnswer, replay, type Session } from '../../../engine/run/index.ts';
import { answerByKeys } from './answer-by-keys.ts';
import { openByKeys } from './open-by-keys.ts';
import { standsAt } from './stands-at.ts';

/** Gives answers, written as for a terminal, to the page by keyboard, and waits after each until the
 *  page shows what the engine says comes next: the record after the last one. Gives the session that
 *  the page must stand at now. */
export async function walkByKeys(page: Page, start: Session, answers: readonly string[]): Promise<Session> {
  let session = start;
  for (const text of answers) {
    const { closed } = session;
    session = await sayByKeys(page, session, text);
    if (session.closed?.mended === true && closed === null)
      await page.getByRole('button', { name: 'Print', exact: true }).waitFor();
    else await standsAt(page, session);
  }
  return session;
}

/** Gives one answer and does not wait for what comes of it. */
export async function sayByKeys(page: Page, session: Session, text: string): Promise<Session> {
  const answer = parseAnswer(session, text);
  const entry = answer.ok ? entryFor(session, answer.value, new Date().toISOString()) : answer;
  if (!answer.ok || !entry.ok)
    throw new Error(`the engine does not take "${text}": ${JSON.stringify(entry)}`);
  if (answer.value.say === 'open') await openByKeys(page, session.loaded.tree, answer.value);
  else await answerByKeys(page, session, answer.value);
  return apply(session, entry.value);
}

/** A job in which nothing has happened yet. */
export const unopened = (tree: CompiledTree): Session => replay(tree, []);
