import { noEquipment, parseInstrument, printInstrument } from '../../engine/doubt/index.ts';
import type { DecisionRule, Equipment } from '../../engine/model/instrument.ts';
import { apply, entryFor, type Session } from '../../engine/run/index.ts';
import type { SettingsStore } from '../ports/settings-store.ts';

/** What is at this bench, as it is kept on the device: instruments as one line each. */
interface Kept {
  readonly instruments: readonly string[];
  readonly lacking: readonly string[];
  readonly rule: DecisionRule;
}

const name = 'equipment';

/** The equipment that this device keeps; what cannot be understood any more is left out. */
export function keptEquipment(store: SettingsStore): Equipment {
  const { instruments, lacking, rule } = keptText(store.read(name));
  const read = instruments.map(parseInstrument);
  return { instruments: read.flatMap((one) => (one.ok ? [one.value] : [])), lacking, rule };
}

export function keepEquipment(store: SettingsStore, { instruments, lacking, rule }: Equipment): void {
  store.write(
    name,
    JSON.stringify({ instruments: instruments.map(printInstrument), lacking, rule } satisfies Kept),
  );
}

function keptText(text: string | null): Kept {
  const nothing: Kept = { ...noEquipment, instruments: [] };
  try {
    const kept = JSON.parse(text ?? '{}') as Partial<Record<keyof Kept, unknown>>;
    return {
      instruments: textsOf(kept.instruments),
      lacking: textsOf(kept.lacking),
      rule: kept.rule === 'simple' ? 'simple' : 'guarded',
    };
  } catch {
    return nothing;
  }
}

const textsOf = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((one): one is string => typeof one === 'string') : [];

export const sameEquipment = (a: Equipment, b: Equipment): boolean => JSON.stringify(a) === JSON.stringify(b);

/** The session with this equipment noted, where it is not so already. */
export function equippedWith(session: Session, equipment: Equipment, at: string): Session {
  if (sameEquipment(session.equipment, equipment)) return session;
  const entry = entryFor(session, equipAnswer(equipment), at);
  return entry.ok ? apply(session, entry.value) : session;
}

/** What is said to note this equipment in a job. */
export const equipAnswer = ({ instruments, lacking, rule }: Equipment) =>
  ({ say: 'equip', instruments: instruments.map(printInstrument), lacking, rule }) as const;
