import type { CallSection } from '../../engine/model/section.ts';
import type { Session } from '../../engine/run/index.ts';

/** The procedures that the present step belongs to, the outermost first: `a.b.c` stands inside the calls `a` and `a.b`. */
export function callsAround({ loaded, position }: Session): readonly CallSection[] {
  const steps = position.section?.id.split('.') ?? [];
  return steps.slice(0, -1).flatMap((_, at) => {
    const section = loaded.sections.get(steps.slice(0, at + 1).join('.'));
    return section?.kind === 'call' ? [section] : [];
  });
}
