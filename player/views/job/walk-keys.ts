import type { Question } from '../../../engine/run/index.ts';
import type { OpenJob } from '../../models/open-job.ts';
import type { KeyTable } from '../../parts/use-keys.ts';

/** Keys that do the same on every step. */
export function walkKeys(job: OpenJob, question: Question): KeyTable {
  const sheet = (dialog: 'note' | 'todo' | 'settings' | 'more' | 'cannot-read') => () => {
    job.dialog.value = { dialog };
  };
  return {
    'Alt B': () => void job.answer({ say: 'back' }),
    'Alt N': sheet('note'),
    'Alt W': sheet('todo'),
    'Alt S': sheet('settings'),
    'Alt M': sheet('more'),
    ...(canSayCannotRead(question) && { 'Alt C': sheet('cannot-read') }),
  };
}

/** A proof needs every reading. */
function canSayCannotRead(question: Question): boolean {
  if (question.ask === 'reading') return question.purpose === 'check';
  const isCheck = 'section' in question && question.section?.kind === 'check';
  return isCheck && (question.ask === 'arrange' || (question.ask === 'held' && question.reading !== null));
}
