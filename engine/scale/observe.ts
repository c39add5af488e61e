import { noEquipment } from '../doubt/index.ts';
import type { Equipment } from '../model/instrument.ts';
import type { Observation } from '../model/observation.ts';
import type { Present } from '../model/present.ts';
import type { Measure, Reading } from '../model/reading.ts';
import type { Taken } from '../model/refusal.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';
import { groupDoubt } from './group-doubt.ts';
import { judge } from './judge.ts';
import { judgeOne } from './judge-one.ts';
import { tooFewTries } from './judge-tries.ts';
import { memberReading } from './member-reading.ts';
import { resolveScale } from './resolve-scale.ts';
import { marked } from './typed/marked.ts';
import { readEach } from './typed/read-each.ts';
import { readSingle } from './typed/read-single.ts';
import { readTries } from './typed/read-tries.ts';
import { usedLimits } from './used-limits.ts';

interface Observing {
  readonly reading: Reading;
  readonly present: Present;
  readonly typed: string;
  readonly equipment: Equipment;
}

type Seen = Pick<Observation, 'understood' | 'mark' | 'bands' | 'doubt' | 'remarks'>;

const single = (
  measure: Extract<Measure, { kind: 'quantity' | 'options' | 'codes' | 'beeps' }>,
  at: Observing,
) => {
  const read = readSingle(measure, at.typed);
  if (!read.ok) return read;
  const { understood, mark, remarks } = read.value;
  const judged = judgeOne(at.reading, resolveScale(at.reading, at.present), read.value, at.equipment);
  return taken({ understood, mark, remarks, ...judged });
};

const looks: {
  readonly [Kind in Measure['kind']]: (
    measure: Extract<Measure, { kind: Kind }>,
    at: Observing,
  ) => Taken<Seen>;
} = {
  quantity: single,
  options: single,
  codes: single,
  beeps: single,
  tries: (measure, { reading, present, typed }) => {
    const read = marked(
      typed,
      (text) => readTries(measure, text),
      (counted) => counted,
    );
    if (!read.ok) return read;
    const { understood, mark } = read.value;
    const few = tooFewTries(measure, understood);
    const bands = judge(reading, resolveScale(reading, present), understood);
    return taken({ understood, mark, bands, doubt: null, remarks: few === null ? [] : [few] });
  },
  each: (measure, { reading, present, typed, equipment }) => {
    const row = readEach(measure, typed);
    if (!row.ok) return row;
    const one = memberReading(reading);
    const resolved = resolveScale(one, present);
    const members = row.value.members.map((read) => ({
      ...read,
      ...judgeOne(one, resolved, read, equipment),
    }));
    const understood = {
      kind: 'each' as const,
      members: members.map(({ name, understood: seen, bands }) => ({ name, understood: seen, bands })),
      normal: measure.normal,
    };
    return taken({
      understood,
      mark: row.value.mark,
      bands: judge(reading, resolved, understood),
      doubt: groupDoubt(reading, members),
      remarks: [...new Set(members.flatMap(({ remarks }) => remarks))],
    });
  },
};

/** What a technician typed for a reading, understood and judged at the present settings.
 *  @param equipment what is known of the bench: near a limit, an instrument's accuracy may leave several bands open */
export function observe(
  reading: Reading,
  present: Present,
  typed: string,
  equipment: Equipment = noEquipment,
): Taken<Observation> {
  if (reading.from !== null || reading.call) {
    const text = `"${reading.id}" follows from other readings, so there is nothing to type for it`;
    return { ok: false, refusal: { text, offers: [] } };
  }
  const { measure } = reading;
  const seen = looks[measure.kind](measure as never, { reading, present, typed, equipment });
  if (!seen.ok) return seen;
  const resolved: ResolvedScale = resolveScale(memberReading(reading), present);
  const { contradiction } = resolved;
  const { remarks } = seen.value;
  return taken({
    reading: reading.id,
    typed,
    ...seen.value,
    used: usedLimits(resolved),
    remarks: contradiction === null ? remarks : [...remarks, contradiction],
  });
}

const taken = <T>(value: T): Taken<T> => ({ ok: true, value });
