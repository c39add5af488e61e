import type { Instance } from '../link/procedures/instance.ts';
import { oneOfMany } from '../names/one-of-many.ts';

/** Those of many alike that calls are given, by name: `the short one of rails`. */
export const onesGiven = (calls: ReadonlyMap<string, Instance>): readonly string[] =>
  [...calls.values()].flatMap(({ procedure, given, within }) => [
    ...procedure.facts.takes.flatMap(({ kind, id }) => {
      const value = kind === 'reading' ? given.get(id) : undefined;
      return value === undefined || oneOfMany(value) === null ? [] : [value];
    }),
    ...onesGiven(within),
  ]);
