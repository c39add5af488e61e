import { type Bounds, boundsOf, exactly, noValue } from '../formula/index.ts';
import type { DecisionRule } from '../model/instrument.ts';
import type { Observation, Understood } from '../model/observation.ts';
import type { Present } from '../model/present.ts';
import type { Reading } from '../model/reading.ts';
import { exactOf, fractionOf, fromStored, toStored } from '../quantity/index.ts';
import { yesOrNo } from './derived-bands.ts';
import { judge } from './judge.ts';
import { resolveScale } from './resolve-scale.ts';
import { inputsOf } from './settings-of.ts';
import { usedLimits } from './used-limits.ts';

/** A derived reading, computed from what is known of the readings and settings it rests on. It is exact where each of them
 *  is one value, and every band that they leave open otherwise; without them it can be in any band.
 *  @param reading with `from`
 *  @param latestOf the last observation of a reading that counts, or null
 *  @param rule by `guarded`, a value stands for all that its instrument leaves possible */
export function deriveObservation(
  reading: Reading,
  present: Present,
  latestOf: (reading: string) => Observation | null,
  rule: DecisionRule = 'guarded',
): Observation {
  const { from, measure } = reading;
  const lookUp = (name: string): Bounds => {
    const setting = present.settings.get(name);
    if (setting !== undefined && setting !== null) {
      return typeof setting === 'string' ? noValue : exactly(fromStored(setting));
    }
    return observed(latestOf(name), rule);
  };
  const bounds = from === null ? noValue : boundsOf(from, lookUp);
  const resolved = resolveScale(reading, present);
  const common = { reading: reading.id, typed: '', mark: null, doubt: null, used: usedLimits(resolved) };
  const remarks = inputsOf(reading)
    .filter((name) => lookUp(name).value === 'none')
    .map((name) => `"${name}" is not known`);
  if (measure.kind === 'options') {
    const bands = yesOrNo(bounds);
    const understood = bands.length === 1 ? optionOf(bands) : unknown('');
    return { ...common, understood, bands, remarks };
  }
  const unit = measure.kind === 'quantity' ? measure.unit : '';
  const understood = bounds.value === 'sure' ? understoodOf(bounds, unit) : unknown(unit);
  const { contradiction } = resolved;
  return {
    ...common,
    understood,
    bands: judge(reading, resolved, understood),
    remarks: contradiction === null ? remarks : [...remarks, contradiction],
  };
}

/** What an observation leaves possible. */
function observed(observation: Observation | null, rule: DecisionRule): Bounds {
  if (observation === null) return noValue;
  const { understood, doubt, bands } = observation;
  const dark = bands.includes('none') ? (bands.length === 1 ? 'yes' : 'perhaps') : 'no';
  if (understood.kind === 'quantity') {
    const value = fromStored(understood.quantity);
    const around = exactly(value);
    if (doubt === null || rule === 'simple') return { ...around, dark };
    const a = fromStored(doubt.plusMinus);
    const end = (at: typeof value) => ({ value: at, closed: true });
    return { ...around, low: end(value.sub(a)), high: end(value.add(a)), dark };
  }
  if (understood.kind === 'overload') return { ...beyond(observation), value: 'sure', dark };
  if (understood.kind !== 'interval' || (understood.from === null && understood.to === null)) return noValue;
  const { from, to, closed } = understood;
  const end = (at: string | null) => (at === null ? null : { value: fractionOf(at), closed });
  return { low: end(from), high: end(to), value: 'sure', dark };
}

/** Beyond what an ohmmeter shows is above the last limit; another instrument's overload is a value like any. */
function beyond({ bands, used }: Observation): Pick<Bounds, 'low' | 'high'> {
  const last = used?.limits.at(-1);
  const isTop = bands.length === 1 && bands[0] === used?.bands.at(-1);
  return { low: isTop && last ? { value: fromStored(last), closed: true } : null, high: null };
}

const optionOf = ([option = '']: readonly string[]): Understood => ({ kind: 'option', option });

const unknown = (unit: string): Understood => ({
  kind: 'interval',
  from: null,
  to: null,
  closed: false,
  unit,
});

function understoodOf({ low, high }: Bounds, unit: string): Understood {
  if (low !== null && high !== null && low.value.equals(high.value)) {
    return { kind: 'quantity', quantity: toStored(low.value, unit) };
  }
  // One mark serves both ends: where only one of them is a value itself, both are taken for values.
  const closed = low?.closed === true || high?.closed === true;
  return {
    kind: 'interval',
    from: low && exactOf(low.value),
    to: high && exactOf(high.value),
    closed,
    unit,
  };
}
