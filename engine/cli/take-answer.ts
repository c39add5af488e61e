import { localIso } from '../job/index.ts';
import type { Entry } from '../model/entry.ts';
import { apply, entryFor, parseAnswer, type Session } from '../run/index.ts';
import type { Bench } from './bench.ts';

/** What became of one typed line. */
export type TakenAnswer =
  | { readonly ok: true; readonly entry: Entry; readonly session: Session }
  | { readonly ok: false; readonly why: string };

/** One line as it is typed or scripted: the session after it, or a sentence why it is not taken. */
export function takeAnswer(session: Session, text: string, bench: Bench): TakenAnswer {
  const parsed = parseAnswer(session, text);
  const entry = parsed.ok ? entryFor(session, parsed.value, localIso(bench.now())) : parsed;
  if (entry.ok) return { ok: true, entry: entry.value, session: apply(session, entry.value) };
  const { text: why, offers } = entry.refusal;
  return { ok: false, why: offers.length === 0 ? why : `${why}. It takes: ${offers.join(' | ')}` };
}
