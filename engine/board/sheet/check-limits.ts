import { namesIn } from '../../formula/index.ts';
import type { Scale } from '../../model/reading.ts';
import type { Setting } from '../../model/setting.ts';
import type { TextProblem } from '../../model/text-problem.ts';
import { checkScale } from '../../scale/index.ts';
import type { KnownSetting } from './known-settings.ts';

const mostCombinations = 4096;

/**
 * What is wrong with limits, at every combination of the values that the settings in them are known to have.
 *
 * The first combination that has anything wrong tells it. Beyond 4,096 combinations the rest is left to the day
 * on which a board is set that way: then the limits contradict each other in plain sight.
 */
export function checkLimits(
  scale: Scale,
  unit: string,
  known: readonly KnownSetting[],
): readonly TextProblem[] {
  const names = new Set(scale.limits.flatMap(namesIn));
  const used = known.filter(({ setting }) => names.has(setting.id));
  const fixed = known.filter(({ setting }) => !names.has(setting.id)).map(({ setting }) => setting);
  let left = mostCombinations;
  for (const settings of combinations(used)) {
    if (left === 0) break;
    left -= 1;
    const problems = checkScale(scale, unit, [...settings, ...fixed]);
    if (problems.length > 0) return problems;
  }
  return [];
}

/** Every way to give each setting one of its values as the usual one. */
function* combinations(used: readonly KnownSetting[]): Generator<readonly Setting[]> {
  const [first, ...more] = used;
  if (first === undefined) {
    yield [];
    return;
  }
  const { setting, values } = first;
  const usual = values.length > 0 ? values : [setting.usual];
  for (const rest of combinations(more)) {
    for (const value of usual) yield [{ ...setting, usual: value } as Setting, ...rest];
  }
}
