import type { ForeignFacts } from '../model/foreign-facts.ts';
import type { Path } from '../model/front-matter.ts';
import type { Reading } from '../model/reading.ts';
import { checkName } from './check-name.ts';
import type { FactsContext } from './facts-context.ts';
import type { Known } from './known.ts';
import { likeOrder } from './like-order.ts';
import { isTable, type RawTable, tableOf } from './raw.ts';
import { readReading } from './read-reading.ts';

export interface OwnReadings {
  /** In the order of the file. */
  readonly readings: readonly Reading[];
  /** The same, each after the one it is like. */
  readonly inLikeOrder: readonly Reading[];
}

/** The readings with everything that concerns each alone: what they need of each other is read by `readNeeds`. */
export function readReadings(
  data: RawTable,
  foreign: Pick<ForeignFacts, 'settings' | 'readings'>,
  known: Known,
  context: FactsContext,
): OwnReadings {
  const table = tableOf(data.readings);
  const ids = context.keysOf(['readings'], table);
  for (const id of ids) checkId(id, ['readings', id], foreign, tableOf(data.settings), context);
  const made = new Map(foreign.readings.map((reading) => [reading.id, reading]));
  const order = likeOrder(table, ids, made, context);
  const own = new Map<string, Reading>();
  for (const id of order.ids) {
    const raw = table[id];
    if (!isTable(raw)) continue;
    const like = made.get(order.likes.get(id) ?? '') ?? null;
    const reading = readReading(id, raw, ['readings', id], like, known, context);
    made.set(id, reading);
    own.set(id, reading);
  }
  return { readings: ids.flatMap((id) => own.get(id) ?? []), inLikeOrder: [...own.values()] };
}

function checkId(
  name: string,
  path: Path,
  foreign: Pick<ForeignFacts, 'settings'>,
  settings: RawTable,
  context: FactsContext,
): void {
  checkName(name, 'reading', path, 'key', context);
  if (foreign.settings.some(({ id }) => id === name)) {
    context.atKey(path, { code: 'name-clash', name, of: 'reading', other: 'setting', elsewhere: true });
  } else if (name in settings) {
    const related = context.spanOf(['settings', name], 'key');
    context.atKey(path, { code: 'setting-and-reading', name }, { related });
  }
}
