import { typedFor } from '../../../engine/cases/typed-for.ts';
import { walkFault } from '../../../engine/cases/walk-fault.ts';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import type { Entry } from '../../../engine/model/entry.ts';
import { type Question, questionOf, type Session } from '../../../engine/run/index.ts';
import { bandsOf } from '../../../engine/scale/index.ts';
import { say } from '../../helpers/bench.ts';

interface Mending {
  readonly open: string;
  readonly remedied: string;
  readonly close: string;
}

/** What a technician says, as typed at a terminal, from the first question to the closed job on a board
 *  with this hidden fault: the way there, the remedy, the proof with every reading normal. */
export function mendingAnswers(tree: CompiledTree, faultId: string, words: Mending): readonly string[] {
  const fault = tree.faults.find(({ id }) => id === faultId);
  if (fault === undefined) throw new Error(`expected a fault "${faultId}"`);
  const { arrived, session } = walkFault(tree, fault, () => 0);
  if (!arrived) throw new Error(`expected to arrive at "${faultId}"`);
  const [, ...way] = session.entries.map(written);
  return [words.open, ...way, words.remedied, ...proof(session, words.remedied), words.close];
}

const writings: { readonly [Kind in Entry['kind']]?: (entry: Extract<Entry, { kind: Kind }>) => string } = {
  set: ({ setting, typed }) => `${setting} := ${typed}`,
  symptom: ({ same }) => (same ? 'yes' : 'no'),
  acknowledged: () => 'acknowledge',
  read: ({ observation }) => `${observation.reading} = ${observation.typed}`,
  did: () => 'done',
  arranged: () => 'arranged',
};

const written = (entry: Entry): string =>
  (writings[entry.kind] as ((entry: Entry) => string) | undefined)?.(entry) ?? '';

function proof(start: Session, remedied: string): readonly string[] {
  const answers: string[] = [];
  let session = say(start, remedied);
  for (;;) {
    const answer = soundAnswer(session, questionOf(session));
    if (answer === null) return answers;
    answers.push(answer);
    session = say(session, answer);
  }
}

function soundAnswer(session: Session, question: Question): string | null {
  if (question.ask === 'arrange') return 'arranged';
  if (question.ask !== 'reading') return null;
  const { reading } = question;
  const band = reading.normal === 'any' ? bandsOf(reading)[0] : reading.normal[0];
  return `${reading.id} = ${typedFor(session, reading, band ?? '')}`;
}
