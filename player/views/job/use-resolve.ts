import type { Session } from '../../../engine/run/index.ts';
import { valueText } from '../../../engine/run/index.ts';
import type { ResolveValue } from '../../parts/inlines.tsx';

/** Settings in prose, at their present values. */
export function useResolve(session: Session): ResolveValue {
  return ({ formula }) => valueText(session, formula);
}
