import type { Section } from '../model/section.ts';
import { targetsOf } from '../paths/targets-of.ts';
import type { Walkable } from '../paths/walkable.ts';
import { reach, reversed } from '../rules/reach.ts';
import type { Alike } from '../suspects/draws.ts';
import { alikeBands } from './alike-bands.ts';
import { kept } from './kept.ts';

/** What all walks of a tree share, whichever fault the board has. */
export interface Ground {
  readonly tree: Walkable;
  readonly sections: ReadonlyMap<string, Section>;
  readonly alike: Alike;
  /** Names of readings, calls and settings that decide somewhere. */
  readonly deciding: readonly string[];
  /** Conditions that some reading is taken in. */
  readonly conditions: readonly string[];
  /** The sections from which a name still decides something. */
  ahead(name: string): ReadonlySet<string>;
  /** The sections from which this one can be reached. */
  leadingTo(section: string): ReadonlySet<string>;
}

export function groundOf(tree: Walkable): Ground {
  const back = reversed(new Map(tree.sections.map((section) => [section.id, allTargets(section)])));
  const decidedAt = decisionsOf(tree);
  const ahead = new Map<string, ReadonlySet<string>>();
  const leading = new Map<string, ReadonlySet<string>>();
  return {
    tree,
    sections: new Map(tree.sections.map((section) => [section.id, section])),
    alike: alikeBands(tree),
    deciding: [...decidedAt.keys()],
    conditions: [...new Set(tree.readings.flatMap(({ when }) => Object.keys(when)))],
    ahead: (name) => kept(ahead, name, () => reach(decidedAt.get(name) ?? [], back)),
    leadingTo: (section) => kept(leading, section, () => reach([section], back)),
  };
}

/** A call also comes straight back, for faults that say how it ends. */
const allTargets = (section: Section): readonly string[] =>
  section.kind === 'call'
    ? [...targetsOf(section), ...section.ends.map(({ target }) => target)]
    : targetsOf(section);

/** Where each name decides something. */
function decisionsOf({ sections, readings, faults }: Walkable): ReadonlyMap<string, readonly string[]> {
  const asked = new Map(
    [...readings, ...faults].map(({ id, onlyIf }) => [id, onlyIf.map(({ reading }) => reading)]),
  );
  const decidedAt = new Map<string, string[]>();
  for (const section of sections) {
    for (const name of decidingIn(section, asked)) {
      const list = decidedAt.get(name);
      if (list === undefined) decidedAt.set(name, [section.id]);
      else list.push(section.id);
    }
  }
  return decidedAt;
}

function decidingIn(section: Section, asked: ReadonlyMap<string, readonly string[]>): ReadonlySet<string> {
  switch (section.kind) {
    case 'check':
      return new Set([
        ...section.outcomes.flatMap(({ condition }) =>
          condition.kind === 'bands' ? Object.keys(condition.bands) : [],
        ),
        ...section.readings.flatMap((id) => asked.get(id) ?? []),
      ]);
    case 'task':
      return new Set(section.onlyIf.map(({ reading }) => reading));
    case 'fault':
      return new Set([
        ...section.onlyIf.map(({ reading }) => reading),
        ...section.remedies.flatMap(({ fault }) => asked.get(fault) ?? []),
      ]);
    case 'call':
      return new Set([section.id]);
    case 'stop':
    case 'hand-over':
      return new Set();
  }
}
