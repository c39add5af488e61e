import type { Present } from '../model/present.ts';
import type { Reading } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';
import { bandOfBeeps } from '../scale/band-of-beeps.ts';
import { silence } from '../scale/beep-pattern.ts';
import { bandsOf, judge, resolveScale } from '../scale/index.ts';

/** What a reading shows while something it needs is missing: the band named `none`, else the one that holds silence, no
 *  success, or zero at the usual settings. Null where there is none of them. */
export function hiddenBand(reading: Reading, settings: readonly Setting[]): string | null {
  const bands = bandsOf(reading);
  if (bands.includes('none')) return 'none';
  const { measure } = reading;
  if (measure.kind === 'tries') return 'never';
  if (measure.kind === 'beeps') return bandOfBeeps(measure, silence);
  if (measure.kind !== 'quantity') return null;
  const usual: Present = {
    settings: new Map(settings.map(({ id, usual: value }) => [id, value])),
    twins: new Map(),
  };
  const resolved = resolveScale({ ...reading }, usual);
  const quantity = { value: '0', unit: measure.unit };
  const [lowest] = judge(reading, resolved, { kind: 'quantity', quantity });
  return lowest ?? null;
}
