import { nearest } from '../../names/nearest.ts';
import { checksIn, type DrillEvent, measure, presentOf } from '../../practice/index.ts';
import { wrap } from '../../prose/plain-text.ts';
import { observationText, observe } from '../../scale/index.ts';
import { type DrillDesk, refused, type Told, told } from './drill-desk.ts';

/** Measures, or shows first what stands before it. */
export function measureLine(desk: DrillDesk, id: string, width: number): Told {
  const checks = checksIn(desk.drill);
  const check = checks.find(({ reading }) => reading.id === id);
  if (check === undefined) {
    const [near] = nearest(
      id,
      checks.map(({ reading }) => reading.id),
    );
    return refused(
      desk,
      `"${id.slice(0, 60)}" is no reading that can be taken${near === undefined ? '' : `: did you mean "${near}"?`}`,
    );
  }
  if (check.lacks !== null) return refused(desk, `This takes a ${check.lacks}, which is not here`);
  if (check.warnings.length === 0) return measured(desk, id, true, width);
  const warnings = check.warnings.map(({ text }) => wrap(`! ${text}`, width));
  return told(
    { ...desk, waiting: id },
    [...warnings, `acknowledge, to measure ${id} minding that; anyway, to pass it over`].join('\n'),
  );
}

export function measured(desk: DrillDesk, id: string, heeded: boolean, width: number): Told {
  const drill = measure(desk.drill, id, { heeded });
  const event = drill.events.at(-1);
  if (drill === desk.drill || event?.kind !== 'measured')
    return refused(desk, `"${id}" cannot be measured now`);
  const reading = drill.tree.readings.find((one) => one.id === id);
  const seen = reading && observe(reading, presentOf(drill), event.typed, drill.equipment);
  const value = seen?.ok ? observationText(seen.value) : event.typed;
  const bands = seen?.ok ? seen.value.bands.join(' or ') : '';
  const line = [value, ...(bands === value || bands === '' ? [] : [bands])].join(' · ');
  const running = event.board === 'running' ? ['The board runs at the moment.'] : [];
  return told(
    { drill, waiting: null },
    [wrap(`${reading?.is ?? id}: ${line}`, width), ...running, ...harmLines(event, width)].join('\n'),
  );
}

const harmLines = ({ passed }: Extract<DrillEvent, { readonly kind: 'measured' }>, width: number) =>
  passed.filter(({ harm }) => harm).map(({ text }) => wrap(`Harm was done: ${text}`, width));
