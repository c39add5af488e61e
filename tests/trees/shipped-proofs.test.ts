import { describe, expect, test } from 'vitest';
import { typedFor } from '../../engine/cases/typed-for.ts';
import { walkFault } from '../../engine/cases/walk-fault.ts';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import { type Question, questionOf, type Session } from '../../engine/run/index.ts';
import { bandsOf } from '../../engine/scale/index.ts';
import { say } from '../helpers/bench.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';

/** More answers than any proof has readings. */
const longest = 80;

/** What a technician says whose board is mended; null where the proof asks for nothing more, or holds something back. */
function sound(session: Session, question: Question): string | null {
  switch (question.ask) {
    case 'acknowledgement':
      return 'acknowledge';
    case 'arrange':
      return 'arranged';
    case 'reading': {
      const { reading } = question;
      const band = (reading.normal === 'any' ? bandsOf(reading)[0] : reading.normal[0]) ?? '';
      return `${reading.id} = ${typedFor(session, reading, band)}`;
    }
    default:
      return null;
  }
}

function mended(tree: CompiledTree, id: string): Question {
  const fault = tree.faults.find((one) => one.id === id);
  if (fault === undefined) throw new Error(`expected a fault "${id}"`);
  let { session } = walkFault(tree, fault, () => 0);
  for (let question = questionOf(session); ; question = questionOf(session)) {
    if (question.ask === 'acknowledgement') session = say(session, 'acknowledge');
    else if (question.ask !== 'remedy') throw new Error(`expected a remedy, was asked for ${question.ask}`);
    else if (question.fault.id !== id) session = say(session, 'decline: it is not that one');
    else break;
  }
  session = say(session, 'remedied: on the bench');
  for (let step = 0; step < longest; step += 1) {
    const answer = sound(session, questionOf(session));
    if (answer === null) break;
    session = say(session, answer);
  }
  return questionOf(session);
}

describe.each(shippedTrees)('the proofs of $id', ({ tree }) => {
  const compiled = tree as CompiledTree;
  test.each(compiled.faults.map(({ id }) => id))(
    'close the job once %s is mended, and nothing on the way is held back',
    (id) => {
      expect(mended(compiled, id)).toEqual({ ask: 'closing' });
    },
  );
});
