import type { Happening } from '../../model/entry.ts';
import type { Refusal, Taken } from '../../model/refusal.ts';
import type { Answer } from '../answer.ts';
import type { Question } from '../question.ts';
import type { Session } from '../session.ts';

type Said = Answer['say'];

/** Turns one kind of answer into what happened, or says why it is not taken. */
export type Answering<Say extends Said> = (
  session: Session,
  answer: Extract<Answer, { readonly say: Say }>,
  question: Question,
) => Taken<Happening>;

export const happened = (value: Happening): Taken<Happening> => ({ ok: true, value });

export const refused = (text: string, offers: readonly string[] = []): { ok: false; refusal: Refusal } => ({
  ok: false,
  refusal: { text, offers },
});
