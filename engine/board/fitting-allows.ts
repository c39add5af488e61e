import type { Fitting } from '../model/compiled-board.ts';
import type { Taken } from '../model/refusal.ts';
import { nearest } from '../names/nearest.ts';

/** Whether these sockets may be filled together, and the way they are spelt on the sheet. */
export function fittingAllows(fitting: Fitting, filled: readonly string[]): Taken<readonly string[]> {
  const { sockets, together } = fitting;
  const spelt = new Map(sockets.map((socket) => [socket.toLowerCase(), socket]));
  const stranger = filled.find((name) => !spelt.has(name.toLowerCase()));
  if (stranger !== undefined) {
    const near = nearest(stranger.slice(0, 60), sockets);
    return refuse(
      `There is no socket "${stranger.slice(0, 60)}": the sheet has ${listed(sockets)}`,
      near.length > 0 ? near : sockets,
    );
  }
  const wanted = new Set(filled.map((name) => spelt.get(name.toLowerCase())));
  const inOrder = sockets.filter((socket) => wanted.has(socket));
  const allowed = together.some(
    (group) => group.length === inOrder.length && group.every((socket) => wanted.has(socket)),
  );
  if (allowed) return { ok: true, value: inOrder };
  return refuse(
    inOrder.length === 0
      ? 'No socket is filled'
      : `${listed(inOrder)} ${inOrder.length === 1 ? 'may not be filled alone' : 'may not be filled together'}`,
    together
      .map((group) => ({ group, far: difference(group, inOrder) }))
      .toSorted((a, b) => a.far - b.far)
      .slice(0, 3)
      .map(({ group }) => group.join(', ')),
  );
}

const difference = (a: readonly string[], b: readonly string[]): number =>
  a.filter((name) => !b.includes(name)).length + b.filter((name) => !a.includes(name)).length;

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

const refuse = (text: string, offers: readonly string[]): Taken<never> => ({
  ok: false,
  refusal: { text, offers },
});
