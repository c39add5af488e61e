import { nextTree } from '../next-tree.ts';
import { stepBack } from '../position.ts';
import { type Answering, happened, refused } from './answering.ts';

const isClosed = refused('This job is closed: reopen it first');

export const back: Answering<'back'> = (session) => {
  if (session.closed !== null) return isClosed;
  return stepBack(session.position) === null
    ? refused('This is the first step: there is nothing to go back to')
    : happened({ kind: 'back' });
};

export const go: Answering<'go'> = (session, { section }) => {
  if (session.closed !== null) return isClosed;
  return session.loaded.sections.has(section)
    ? happened({ kind: 'went', section })
    : refused(`This tree has no section "${section}"`, [...session.loaded.sections.keys()].slice(0, 5));
};

export const close: Answering<'close'> = (session, { mended, note }, question) => {
  if (session.closed !== null) return refused('This job is closed already');
  return mended && question.ask !== 'closing'
    ? refused('The proof is not complete: close it as not mended, or take the proof first')
    : happened({ kind: 'closed', mended, note });
};

export const reopen: Answering<'reopen'> = (session, { why }) =>
  session.closed === null ? refused('This job is not closed') : happened({ kind: 'reopened', why });

export const handOver: Answering<'hand-over'> = (session, _answer, question) => {
  if (question.ask !== 'hand-over') return refused('The tree does not end here');
  const tree = nextTree(session, question.section.tree);
  return tree === null
    ? refused(`The tree "${question.section.tree}" is not at hand`)
    : happened({ kind: 'tree', digest: tree.digest, why: 'handed over' });
};

export const newer: Answering<'newer'> = ({ closed, loaded, laterTrees }, { digest }) => {
  if (closed !== null) return isClosed;
  const { tree } = loaded;
  const found = laterTrees.findLast(
    (later) =>
      later.id === tree.id && later.digest !== tree.digest && (digest === null || later.digest === digest),
  );
  return found === undefined
    ? refused(`No other version of "${tree.id}" is at hand`)
    : happened({ kind: 'tree', digest: found.digest, why: 'newer' });
};
