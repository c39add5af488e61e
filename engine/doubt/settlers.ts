import type { StoredQuantity } from '../model/exact.ts';
import type { Equipment } from '../model/instrument.ts';
import type { Observation } from '../model/observation.ts';
import type { Reading } from '../model/reading.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';
import { compareQuantities } from '../quantity/index.ts';
import type { Settler } from './settler.ts';
import { settlersOfValue } from './settlers-of-value.ts';

/** What would settle an observation, the least trouble first; nothing where it leaves nothing open, or where nothing the
 *  technician has would do.
 *  @param resolved of many alike, the scale of one of them */
export function settlers(
  reading: Reading,
  resolved: ResolvedScale,
  { understood, bands }: Pick<Observation, 'understood' | 'bands'>,
  equipment: Equipment,
): readonly Settler[] {
  if (bands.length < 2) return [];
  if (understood.kind === 'tries' && reading.measure.kind === 'tries') {
    return [{ kind: 'tries', of: reading.measure.enough }];
  }
  if (understood.kind === 'quantity') {
    return settlersOfValue(reading, resolved, understood.quantity, bands, equipment);
  }
  if (understood.kind !== 'each') return [];
  const open = understood.members.filter((member) => member.bands.length > 1);
  return common(
    open.map((member) =>
      member.understood.kind === 'quantity'
        ? settlersOfValue(reading, resolved, member.understood.quantity, member.bands, equipment)
        : [],
    ),
  );
}

/** What settles every one of several: with the widest that it leaves any of them, and the longest average. */
function common([first = [], ...others]: readonly (readonly Settler[])[]): readonly Settler[] {
  return first.flatMap((settler) => {
    const same = others.map((list) => list.find((other) => nameOf(other) === nameOf(settler)));
    return same.every((one) => one !== undefined) ? [[settler, ...same].reduce(harder)] : [];
  });
}

/** What one does, whatever it brings. */
function nameOf(settler: Settler): string {
  switch (settler.kind) {
    case 'instrument':
      return `instrument ${settler.instrument}`;
    case 'range':
      return `range ${settler.instrument} ${settler.upTo.value}`;
    case 'setting':
      return `setting ${settler.setting}`;
    default:
      return settler.kind;
  }
}

const widthOf = (settler: Settler): StoredQuantity | null =>
  'plusMinus' in settler ? settler.plusMinus : null;

function harder(a: Settler, b: Settler): Settler {
  if (a.kind === 'average' && b.kind === 'average' && a.of !== b.of) return a.of > b.of ? a : b;
  const [widthA, widthB] = [widthOf(a), widthOf(b)];
  return widthA !== null && widthB !== null && compareQuantities(widthB, widthA) > 0 ? b : a;
}
