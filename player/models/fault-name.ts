import type { Fault } from '../../engine/model/fault.ts';
import { mends } from '../../engine/model/mends.ts';
import type { Session } from '../../engine/run/index.ts';
import { inSentence } from './in-sentence.ts';

/** What a suspect is called in a list: two faults stand under each other. */
export const suspectNames = (faults: readonly Fault[]): readonly string[] =>
  faults.length === 0 ? ["None of the tree's faults"] : faults.map(({ is }) => is);

/** What a suspect is called inside a sentence: by the section that mends it, where it stands there alone. */
export function shortName(session: Session, faults: readonly Fault[]): string {
  if (faults.length === 0) return 'something that the tree does not list';
  const name = (fault: Fault) => inSentence(titleOf(session, fault.id) ?? withoutRemark(fault.is));
  return faults.map(name).join(' with ');
}

function titleOf({ loaded }: Session, fault: string): string | null {
  const section = loaded.tree.sections.find((one) => mends(one, fault));
  return section?.kind === 'fault' && section.remedies.length === 1 ? section.title : null;
}

/** `The clock swings too weakly (tired crystal)` → `The clock swings too weakly` */
export const withoutRemark = (is: string): string => is.replace(/\s*\([^()]*\)$/, '');
