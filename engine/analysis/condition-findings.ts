import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { LinkedTree } from '../link/linked-tree.ts';
import { targetsOf } from '../paths/targets-of.ts';

/** Readings that are taken in a condition which no walk to their check has brought about. */
export function conditionFindings({ facts, sections }: LinkedTree): readonly Diagnostic[] {
  const wanted = new Set(facts.readings.flatMap(({ when }) => Object.keys(when)));
  const found = new Map<string, Diagnostic>();
  for (const { id, values } of facts.conditions) {
    const [coming] = values;
    if (coming === undefined || !wanted.has(id)) continue;
    const possible = valuesAt(id, coming, { sections });
    const set = new Set(
      sections.flatMap(({ section }) => (section.kind === 'task' ? (section.sets[id] ?? []) : [])),
    );
    for (const { section, leadSpan } of sections) {
      const here = possible.get(section.id);
      if (section.kind !== 'check' || here === undefined) continue;
      for (const reading of facts.readings.filter((each) => section.readings.includes(each.id))) {
        const value = reading.when[id];
        const key = `${reading.id} ${id}`;
        if (value === undefined || here.has(value) || found.has(key)) continue;
        found.set(key, {
          code: 'condition-not-set',
          reading: reading.id,
          condition: id,
          value,
          elsewhere: set.has(value),
          span: leadSpan,
        });
      }
    }
  }
  return [...found.values()];
}

/** The values that one condition can have on entering each section. */
function valuesAt(
  condition: string,
  coming: string,
  { sections }: Pick<LinkedTree, 'sections'>,
): ReadonlyMap<string, ReadonlySet<string>> {
  const byId = new Map(sections.map(({ section }) => [section.id, section]));
  const values = new Map<string, Set<string>>();
  const open: { readonly id: string; readonly value: string }[] = [];
  const enter = (id: string, value: string): void => {
    const here = values.get(id) ?? new Set();
    values.set(id, here);
    if (here.has(value)) return;
    here.add(value);
    open.push({ id, value });
  };
  const first = sections[0]?.section.id;
  if (first !== undefined) enter(first, coming);
  for (const { id, value } of open) {
    const section = byId.get(id);
    if (section === undefined) continue;
    const after = section.kind === 'task' ? (section.sets[condition] ?? value) : value;
    for (const target of targetsOf(section)) enter(target, after);
  }
  return values;
}
