import { type Answering, happened, refused } from './answering.ts';

export const wait: Answering<'wait'> = (_session, _answer, question) => {
  if (question.ask === 'task' && question.section.wait > 0) {
    return happened({ kind: 'waiting', section: question.section.id, minutes: question.section.wait });
  }
  if (question.ask === 'reading' && question.reading.wait > 0) {
    return happened({ kind: 'waiting', section: question.section.id, minutes: question.reading.wait });
  }
  return refused('Nothing here needs waiting');
};

export const done: Answering<'done'> = (_session, _answer, question) =>
  question.ask === 'task'
    ? happened({ kind: 'did', section: question.section.id })
    : refused('No task stands here to be done');

export const remedied: Answering<'remedied'> = (_session, { which, parts }, question) =>
  question.ask === 'remedy'
    ? happened({ kind: 'remedied', section: question.section.id, fault: question.fault.id, which, parts })
    : refused('No remedy stands here');

export const decline: Answering<'decline'> = (_session, { why }, question) =>
  question.ask === 'remedy'
    ? happened({ kind: 'declined', section: question.section.id, fault: question.fault.id, why })
    : refused('No remedy stands here');
