import { type Answering, happened, refused } from './answering.ts';

export const open: Answering<'open'> = (session, { board, owner, story }) =>
  session.opened ? refused('This job is open already') : happened({ kind: 'opened', board, owner, story });

export const symptom: Answering<'symptom'> = (_session, { same }, question) =>
  question.ask === 'symptom'
    ? happened({ kind: 'symptom', same })
    : refused('The symptom is not asked about now');

export const resume: Answering<'resume'> = (session, { same }) =>
  session.opened ? happened({ kind: 'resumed', same }) : refused('This job has not been opened yet');

export const acknowledge: Answering<'acknowledge'> = (_session, _answer, question) =>
  question.ask === 'acknowledgement'
    ? happened({ kind: 'acknowledged', section: question.section?.id ?? null, words: question.words })
    : refused('Nothing waits to be acknowledged');
