import type { Moved, Windows } from './windows.ts';

export function broadcastWindows(name = 'deadboard'): Windows {
  if (typeof BroadcastChannel === 'undefined') return { tell() {}, listen: () => () => {} };
  const channel = new BroadcastChannel(name);
  return {
    tell: (moved) => channel.postMessage(moved),
    listen(hear) {
      const onMessage = (event: MessageEvent<Moved>) => hear(event.data);
      channel.addEventListener('message', onMessage);
      return () => channel.removeEventListener('message', onMessage);
    },
  };
}
