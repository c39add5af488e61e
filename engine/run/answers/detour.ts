import type { Section } from '../../model/section.ts';
import { nearest } from '../../names/nearest.ts';
import { isComputed } from '../is-computed.ts';
import { readIn } from '../read-in.ts';
import type { Session } from '../session.ts';
import { type Answering, happened, refused } from './answering.ts';

export const detour: Answering<'detour'> = (session, { section: id, reading }, question) => {
  if (session.closed !== null) return refused('This job is closed: reopen it first');
  if (notBegun.has(question.ask)) return refused('The job has not come to its first section yet');
  const { section: here, phase } = session.position;
  if (here === null) return refused('The proof is complete: there is nothing left to look for');
  if (here.kind === 'fault' && phase?.startsWith('proof')) {
    return refused('The remedy waits for its proof: finish that first');
  }
  const { readings, sections, tree } = session.loaded;
  const found = readings.get(reading);
  if (found === undefined) {
    return refused(
      `This tree has no reading "${reading}"`,
      nearest(reading.slice(0, 60), [...readings.keys()]),
    );
  }
  if (isComputed(found)) return refused(`"${reading}" follows from other readings: go for one of those`);
  const asking = readIn(tree).get(reading) ?? [];
  const section = sections.get(id);
  if (
    section !== undefined &&
    leadsTo(
      session,
      section,
      asking.map((one) => one.id),
    )
  ) {
    return happened({ kind: 'detoured', section: id, reading });
  }
  return refused(
    asking.length === 0
      ? `No section of this tree asks for "${reading}"`
      : `"${id}" does not lead to "${reading}"`,
    asking.map((one) => one.id),
  );
};

const notBegun: ReadonlySet<string> = new Set(['opening', 'setting', 'symptom']);

/** Whether a section asks for the reading, or tasks that follow one another lead from it to one that does. */
function leadsTo({ loaded }: Session, from: Section, asking: readonly string[]): boolean {
  const passed = new Set<string>();
  for (let at: Section | undefined = from; at !== undefined && !passed.has(at.id); ) {
    if (asking.includes(at.id)) return true;
    passed.add(at.id);
    at = at.kind === 'task' ? loaded.sections.get(at.target) : undefined;
  }
  return false;
}

export const returnBack: Answering<'return'> = ({ closed, position }) => {
  if (closed !== null) return refused('This job is closed: reopen it first');
  return position.detour === null || position.section === null
    ? refused('The walk was not left for a detour')
    : happened({ kind: 'returned' });
};
