import type { Happening } from './happening.ts';

export const opened: Happening<'opened'> = (session) => ({ ...session, opened: true });

/** Acknowledgements and the heading's warnings hold for one sitting only. */
export const resumed: Happening<'resumed'> = (session, _entry, index) => ({
  ...session,
  resumedAt: index,
});
