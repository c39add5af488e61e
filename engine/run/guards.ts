import type { MachineEvent } from '../model/machine.ts';

/** The guards that a machine names. They look at the event alone. */
export const guards = {
  within: (
    { event }: { event: MachineEvent },
    { bands }: { bands: Readonly<Record<string, readonly string[]>> },
  ) => {
    if (event.type !== 'checked') return false;
    for (const name in bands) {
      const band = event.bands[name];
      if (band === undefined || !bands[name]?.includes(band)) return false;
    }
    return true;
  },
  names: ({ event }: { event: MachineEvent }, { section }: { section: string }) =>
    event.type === 'go' && event.section === section,
};
