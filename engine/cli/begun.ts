import { apply, type Session } from '../run/index.ts';

interface Beginning {
  /** Null: the keyboard asks for it. */
  readonly board: string | null;
  /** A script's first answer; null at the keyboard, and where a job is only looked at. */
  readonly answer: string | null;
  readonly at: string;
}

/** A script need not open its job, nor take it up again on a later day: the entry is made for it, unless its first
 *  answer does so. Looking at a job leaves it as it is. */
export function begun(session: Session, { board, answer, at }: Beginning): Session {
  const last = session.entries.at(-1);
  if (last === undefined) {
    const opens = board !== null && !/^\s*open:/i.test(answer ?? '');
    return opens ? apply(session, { kind: 'opened', board, owner: '', story: '', at }) : session;
  }
  const resumes = answer !== null && !/^\s*resume\b/i.test(answer);
  const otherDay = last.at.slice(0, 10) !== at.slice(0, 10);
  return resumes && otherDay && session.closed === null
    ? apply(session, { kind: 'resumed', same: true, at })
    : session;
}
