import type { Question, Session } from '../../../engine/run/index.ts';
import type { OpenJob } from '../../models/open-job.ts';
import { takeDetour } from '../../models/take-detour.ts';
import type { KeyTable } from '../../parts/use-keys.ts';

/** Keys that do the same on every step. */
export function walkKeys(job: OpenJob, session: Session, question: Question): KeyTable {
  const sheet = (dialog: 'note' | 'todo' | 'suspects' | 'settings' | 'more' | 'cannot-read') => () => {
    job.dialog.value = { dialog };
  };
  const proposal = job.ranking.proposal.value;
  return {
    'Alt B': () => void job.answer({ say: 'back' }),
    'Alt N': sheet('note'),
    'Alt W': sheet('todo'),
    'Alt S': sheet('settings'),
    'Alt M': sheet('more'),
    'Alt U': sheet('suspects'),
    ...(proposal !== null && { 'Alt Q': () => void takeDetour(job, proposal) }),
    ...(session.position.detour !== null && { 'Alt T': () => void job.answer({ say: 'return' }) }),
    ...(canSayCannotRead(question) && { 'Alt C': sheet('cannot-read') }),
  };
}

/** A proof needs every reading. */
function canSayCannotRead(question: Question): boolean {
  if (question.ask === 'reading') return question.purpose === 'check';
  const isCheck = 'section' in question && question.section?.kind === 'check';
  return isCheck && (question.ask === 'arrange' || (question.ask === 'held' && question.reading !== null));
}
