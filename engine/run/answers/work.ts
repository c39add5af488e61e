import { remedyNumber } from '../position.ts';
import { type Answering, happened, refused } from './answering.ts';
import { heldText } from './held-words.ts';

export const wait: Answering<'wait'> = (_session, _answer, question) => {
  if (question.ask === 'task' && question.section.wait > 0) {
    return happened({ kind: 'waiting', section: question.section.id, minutes: question.section.wait });
  }
  if (question.ask === 'reading' && question.reading.wait > 0) {
    return happened({ kind: 'waiting', section: question.section.id, minutes: question.reading.wait });
  }
  return refused('Nothing here needs waiting');
};

export const done: Answering<'done'> = (_session, _answer, question) => {
  if (question.ask === 'held') return refused(heldText(question.lacking));
  return question.ask === 'task' || question.ask === 'call'
    ? happened({ kind: 'did', section: question.section.id })
    : refused('No task stands here to be done');
};

export const remedied: Answering<'remedied'> = (_session, { which, parts }, question) => {
  if (question.ask === 'held') return refused(heldText(question.lacking));
  return question.ask === 'remedy'
    ? happened({ kind: 'remedied', section: question.section.id, fault: question.fault.id, which, parts })
    : refused('No remedy stands here');
};

/** A remedy that is held back can be put aside all the same. */
export const decline: Answering<'decline'> = ({ position }, { why }, question) => {
  const { section, phase } = position;
  const isHere = question.ask === 'remedy' || (question.ask === 'held' && question.reading === null);
  const remedy =
    section?.kind === 'fault' && isHere ? section.remedies[remedyNumber(phase ?? '')] : undefined;
  return section === null || remedy === undefined
    ? refused('No remedy stands here')
    : happened({ kind: 'declined', section: section.id, fault: remedy.fault, why });
};

export const override: Answering<'override'> = (_session, { why }, question) => {
  if (question.ask !== 'held') return refused('Nothing is held back here');
  if (why.trim() === '') return refused('Going on all the same needs a reason', ['override: why']);
  const { section, reading } = question;
  return happened({
    kind: 'overrode',
    section: section.id,
    reading: reading?.id ?? null,
    why: why.trim(),
  });
};
