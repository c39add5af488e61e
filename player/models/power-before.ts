import type { Session } from '../../engine/run/index.ts';

/** How the power stood for the last reading that asked for a state; null before the first. */
export function powerBefore(session: Session): 'on' | 'off' | null {
  for (const entry of [...session.entries].reverse()) {
    const id =
      entry.kind === 'read' || entry.kind === 'retaken'
        ? entry.observation.reading
        : entry.kind === 'confirmed' || entry.kind === 'unread'
          ? entry.reading
          : null;
    const power = id === null ? null : (session.loaded.readings.get(id)?.power ?? null);
    if (power !== null) return power;
  }
  return null;
}
