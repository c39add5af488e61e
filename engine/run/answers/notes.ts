import { type Answering, happened, refused } from './answering.ts';

export const note: Answering<'note'> = (_session, { text }) =>
  text.trim() === '' ? refused('A note needs words') : happened({ kind: 'note', text: text.trim() });

export const todo: Answering<'todo'> = (_session, { text }) =>
  text.trim() === '' ? refused('Open work needs words') : happened({ kind: 'todo', text: text.trim() });

export const todoDone: Answering<'todo-done'> = (session, { of }) =>
  session.entries[of]?.kind === 'todo'
    ? happened({ kind: 'todo-done', of })
    : refused(`Entry ${of + 1} is not open work`);
