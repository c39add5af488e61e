import type { ForeignFacts } from '../model/foreign-facts.ts';
import type { Path } from '../model/front-matter.ts';
import type { Parameter } from '../model/procedure-facts.ts';
import { bandsOf } from '../scale/index.ts';
import { checkName } from './check-name.ts';
import type { FactsContext } from './facts-context.ts';
import { findReading } from './find-reading.ts';
import { isTable, type RawTable, tableOf, textOf } from './raw.ts';
import { readNames } from './read-names.ts';
import { readSettingValue } from './read-setting-value.ts';
import { readUnit } from './read-unit.ts';

/** What a procedure is given by its caller: readings with `bands` (or those of the reading each is `like`), and
 *  quantities with a `unit`. */
export function readParameters(
  data: RawTable,
  foreign: ForeignFacts,
  context: FactsContext,
): readonly Parameter[] {
  const table = tableOf(data.takes);
  return context.keysOf(['takes'], table).flatMap((id): readonly Parameter[] => {
    const path = ['takes', id];
    const raw = table[id];
    checkName(id, 'parameter', path, 'key', context);
    checkClash(id, path, data, foreign, context);
    return isTable(raw) ? [readParameter(id, raw, path, foreign, context)] : [];
  });
}

function checkClash(
  name: string,
  path: Path,
  data: RawTable,
  foreign: ForeignFacts,
  context: FactsContext,
): void {
  for (const other of ['reading', 'setting'] as const) {
    const isOwn = name in tableOf(data[`${other}s`]);
    const isForeign = foreign[`${other}s`].some(({ id }) => id === name);
    if (!isOwn && !isForeign) continue;
    const facts = { code: 'name-clash', name, of: 'parameter', other, elsewhere: !isOwn } as const;
    const related = isOwn ? { related: context.spanOf([`${other}s`, name], 'key') } : {};
    context.atKey(path, facts, related);
  }
}

function readParameter(
  id: string,
  raw: RawTable,
  path: Path,
  foreign: ForeignFacts,
  context: FactsContext,
): Parameter {
  const is = textOf(raw.is) ?? id;
  const found = ['bands', 'like', 'unit'].filter((key) => key in raw);
  if (!['bands', 'like', 'unit', 'bands unit'].includes(found.join(' '))) {
    context.atKey(path, { code: 'one-measure', of: 'parameter', found });
  }
  const unit = readUnit(raw, path, context);
  if ('bands' in raw) {
    return {
      kind: 'reading',
      id,
      is,
      bands: readNames(raw.bands, 'band', [...path, 'bands'], context),
      unit,
    };
  }
  const name = textOf(raw.like);
  if (name !== null) {
    const readings = new Map(foreign.readings.map((reading) => [reading.id, reading]));
    const like = findReading(name, readings, [...path, 'like'], 'value', context);
    const bands = like === null ? [] : bandsOf(like);
    const inUnit = like?.measure.kind === 'quantity' ? like.measure.unit : null;
    return { kind: 'reading', id, is, bands, unit: inUnit };
  }
  const setting = { kind: 'quantity', id, is, unit: unit ?? '', usual: null } as const;
  const usual = textOf(raw.usual);
  const value =
    usual === null || unit === null ? null : readSettingValue(usual, setting, [...path, 'usual'], context);
  return { ...setting, usual: typeof value === 'string' ? null : value };
}
