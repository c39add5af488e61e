import type { Machine, MachineState } from '../model/machine.ts';

interface Place {
  readonly path: string;
  readonly parent: string;
  readonly state: MachineState;
}

/** Every state with the path of keys that leads to it; the machine itself has none. */
function placesOf(state: MachineState, path: string, parent: string): readonly Place[] {
  const inner = Object.entries(state.states ?? {}).flatMap(([key, each]) =>
    placesOf(each, path === '' ? key : `${path}.${key}`, path),
  );
  return [{ path, parent, state }, ...inner];
}

/** Whether a machine begins somewhere, and everything that leads on leads to a state it has. XState looks only when it gets there. */
export function machineHolds(machine: Machine): boolean {
  const places = placesOf(machine, '', '');
  const paths = new Set(places.map(({ path }) => path));
  const root = `#${machine.id}.`;
  const inside = (parent: string, key: string): string => (parent === '' ? key : `${parent}.${key}`);
  const isThere = (target: string, parent: string): boolean =>
    paths.has(target.startsWith(root) ? target.slice(root.length) : inside(parent, target));
  return places.every(
    ({ path, parent, state }) =>
      (state.initial === undefined ? state.states === undefined : paths.has(inside(path, state.initial))) &&
      Object.values(state.on ?? {})
        .flat()
        .every(({ target }) => target === undefined || isThere(target, parent)),
  );
}
