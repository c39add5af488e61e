import type { Measure, Reading } from '../../engine/model/reading.ts';
import type { Session } from '../../engine/run/index.ts';
import { observationText, observe } from '../../engine/scale/index.ts';

type Each = Extract<Measure, { readonly kind: 'each' }>;

/** What the field says of one of many alike. */
export interface RowMember {
  readonly name: string;
  /** As understood; null while nothing but "the rest" speaks of it. */
  readonly text: string | null;
  readonly normal: boolean;
}

/** The row that is being typed, everybody in it who was told so far. */
export function rowSoFar(
  session: Session,
  reading: Reading,
  measure: Each,
  typed: string,
): readonly RowMember[] {
  const [normal = ''] = measure.normal;
  const seen = [typed, `${typed}; rest ${normal}`]
    .map((text) => observe(reading, session, text, session.equipment))
    .find(({ ok }) => ok);
  const members = seen?.ok && seen.value.understood.kind === 'each' ? seen.value.understood.members : [];
  return measure.members.map((name) => {
    const member = members.find((one) => one.name === name);
    const text = member === undefined ? null : observationText({ understood: member.understood });
    const isNormal = member?.bands.every((band) => measure.normal.includes(band)) ?? true;
    return { name, text: text === normal && typed.trim() === '' ? null : text, normal: isNormal };
  });
}

/** The text of a row of choices: `A3 stuck; rest moves`. */
export function rowText({ normal: [normal = ''] }: Each, row: ReadonlyMap<string, string>): string {
  const by = new Map<string, string[]>();
  for (const [name, option] of row) if (option !== normal) by.set(option, [...(by.get(option) ?? []), name]);
  const told = [...by].map(([option, names]) => `${names.join(' ')} ${option}`);
  const alone = [...row.values()].every((option) => option !== normal);
  return [...told, ...(alone ? [] : [told.length === 0 ? `all ${normal}` : `rest ${normal}`])].join('; ');
}
