import { localIso, openWorkOf } from '../job/index.ts';
import { answerExamples, apply, faultStandings, preview, questionOf, type Session } from '../run/index.ts';
import { proposalsOf } from '../run/proposals-of.ts';
import { suspectsOf } from '../run/suspects-of.ts';
import { observationText } from '../scale/index.ts';
import type { Bench } from './bench.ts';
import { proposalBlock } from './show/proposal-block.ts';
import { showQuestion } from './show/show-question.ts';
import { suspectsBlock } from './show/suspects-block.ts';
import { takeAnswer } from './take-answer.ts';

/** The walk at a keyboard: ask, take, keep, go on. Ends with `quit`, the end of input, or a closed job. */
export async function talk(
  bench: Bench,
  start: Session,
  keep: (session: Session) => Promise<Session>,
): Promise<void> {
  let session = await greet(bench, start, keep);
  let shown: Session | null = null;
  for (;;) {
    const question = questionOf(session);
    if (shown !== session) bench.out(`\n${showQuestion(session, bench.width, isBrief(session, shown))}\n`);
    shown = session;
    const typed = await bench.ask(question.ask === 'reading' ? `${question.reading.id} > ` : '> ');
    if (typed === null || typed.trim() === 'quit') return;
    const word = typed.trim();
    if (word === '') continue;
    const aside = asides[word];
    if (aside !== undefined) {
      bench.out(aside(session, bench.width));
      continue;
    }
    const taken = takeAnswer(session, word, bench);
    if (!taken.ok) {
      bench.out(taken.why);
      continue;
    }
    if (taken.entry.kind === 'read') sayUnderstood(bench, session, word);
    session = await keep(taken.session);
  }
}

/** In the middle of one check, its prose stands above already. */
const isBrief = (session: Session, shown: Session | null): boolean =>
  session.position.taken.size > 0 && session.position.section === shown?.position.section;

/** A job taken up on a later day begins with the symptom. */
async function greet(
  bench: Bench,
  session: Session,
  keep: (session: Session) => Promise<Session>,
): Promise<Session> {
  const last = session.entries.at(-1);
  const at = localIso(bench.now());
  if (last === undefined || last.at.slice(0, 10) === at.slice(0, 10) || session.closed !== null)
    return session;
  bench.out(`Last worked on ${last.at.slice(0, 10)}. ${session.loaded.tree.symptom}`);
  const typed = await bench.ask('Is the symptom still the same? yes or no > ');
  const next = apply(session, { kind: 'resumed', same: !/^n/i.test(typed ?? ''), at });
  return keep(next);
}

const asides: Readonly<Record<string, (session: Session, width: number) => string>> = {
  '?': () =>
    [
      'A value, or:',
      ...answerExamples.map((example) => `  ${example}`),
      '  suspects, next, faults, open work, quit',
    ].join('\n'),
  faults: (session) =>
    faultStandings(session)
      .map(({ fault, state }) => `  ${state.padEnd(10)} ${fault.is}`)
      .join('\n'),
  suspects: (session, width) => suspectsBlock(session, suspectsOf(session), width),
  next: (session, width) => proposalBlock(session, proposalsOf(session), suspectsOf(session), width),
  'open work': (session) =>
    openWorkOf(session.entries)
      .map(({ entry, text }) => `  ${entry + 1} ${text}`)
      .join('\n') || '  nothing',
};

function sayUnderstood(bench: Bench, session: Session, typed: string): void {
  const seen = preview(session, typed);
  if (!seen.ok) return;
  const { observation, fraction, target } = seen.value;
  const share = fraction === null ? [] : [`${fraction.toPrecision(2)} of what it should be`];
  const value = observationText(observation);
  const bands = observation.bands.join(' or ');
  const where = session.loaded.sections.get(target ?? '');
  const remarks = observation.remarks.length === 0 ? '' : ` (${observation.remarks.join('; ')})`;
  bench.out(
    [`${value}${remarks}`, ...(bands === value ? [] : [bands]), ...share].join(' · ') +
      (where ? ` -> ${where.title}` : ''),
  );
}
