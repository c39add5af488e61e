import { latest, nameHere, type OpenWay, type Session } from '../../engine/run/index.ts';
import { bandWords } from './band-words.ts';

/** `Clock at the slot: slow; …`: only what is not sure already. */
export function openWayWords(session: Session, { bands }: OpenWay): string {
  const { readings, settings } = session.loaded;
  const unsure = Object.entries(bands).filter(([name]) => {
    if (settings.has(name)) return session.settings.get(name) == null;
    return latest(session, name)?.bands.length !== 1;
  });
  const clauses = (unsure.length > 0 ? unsure : Object.entries(bands)).map(
    ([name, band]) =>
      `${settings.get(name)?.is ?? nameHere(session, name)}: ${bandWords(readings.get(name), [band])}`,
  );
  return clauses.join('; ');
}
