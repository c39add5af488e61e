import type { Session } from '../session.ts';

/** Whether an entry made in `section` stands where the walk stands now. */
export const inPlace = (session: Session, section: string): boolean =>
  !session.parted && session.closed === null && session.position.section?.id === section;

/** From here on the later entries no longer lead along the path. */
export const part = (session: Session, index: number): Session => ({
  ...session,
  parted: true,
  misfits: [...session.misfits, index],
});
