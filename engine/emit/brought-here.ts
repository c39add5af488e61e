import type { Fault } from '../model/fault.ts';

/** The faults, each with those of the same tree that it brings along: one of a shared file may bring others that this tree
 *  says nothing about. */
export function broughtHere(faults: readonly Fault[]): readonly Fault[] {
  const ids = new Set(faults.map(({ id }) => id));
  return faults.map((fault) => {
    if (fault.brings === undefined) return fault;
    const { brings, ...rest } = fault;
    const here = Object.entries(brings).filter(([id]) => ids.has(id));
    return here.length === 0 ? rest : { ...rest, brings: Object.fromEntries(here) };
  });
}
