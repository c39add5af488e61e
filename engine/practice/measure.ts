import { lacksTool } from '../doubt/index.ts';
import type { Reading } from '../model/reading.ts';
import type { Drill } from './drill.ts';
import { groundOf } from './ground-of.ts';
import { guardsBefore, passedOver, sectionOf } from './warnings-before.ts';
import { withEvent } from './with-event.ts';
import { workFor } from './work-for.ts';

/** The board answers as the instrument shows it. What the reading wants the board in is arranged first. A drill that is over, a
 *  reading that is computed, and one whose tool is not there leave everything as it was.
 *  @param heeded the warnings that stand before it were acknowledged: hazards are then no harm; what is out of order stays so */
export function measure(start: Drill, id: string, { heeded }: { readonly heeded: boolean }): Drill {
  const { board, readings } = groundOf(start);
  const reading = readings.get(id);
  if (start.state !== 'running' || reading === undefined || reading.from !== null || reading.call)
    return start;
  if (lacksTool(reading, start.equipment) !== null) return start;
  const drill = readied(start, reading);
  const guards = guardsBefore(drill, reading, sectionOf(drill, id));
  const again = drill.events.filter((event) => event.kind === 'measured' && event.reading === id).length;
  const { typed, board: state } = board.take(id, again);
  const passed = passedOver(
    drill,
    guards.filter(({ kind }) => !(heeded && kind === 'hazard')),
  );
  return withEvent(
    drill,
    { kind: 'measured', reading: id, typed, heeded, board: state, passed },
    { minutes: reading.minutes, wait: reading.wait },
  );
}

/** What has to be done before the reading means what it says, and then what it wants the board in. */
function readied(start: Drill, reading: Reading): Drill {
  const { tasks } = workFor(start, reading);
  const worked = tasks.reduce((drill, { id, minutes, wait, sets }) => {
    const next = withEvent(drill, { kind: 'worked', section: id }, { minutes, wait });
    return { ...next, conditions: { ...next.conditions, ...sets } };
  }, start);
  return arrange(worked, workFor(worked, reading).wants);
}

/** The board is brought into other conditions; what cannot be, or is so already, is left out. */
export function arrange(drill: Drill, conditions: Readonly<Record<string, string>>): Drill {
  if (drill.state !== 'running') return drill;
  const { arranging } = groundOf(drill);
  const changes = Object.fromEntries(
    Object.entries(conditions).filter(
      ([id, value]) =>
        drill.conditions[id] !== value && arranging.minutesTo({ [id]: value }, drill.conditions) !== null,
    ),
  );
  if (Object.keys(changes).length === 0) return drill;
  const minutes = arranging.minutesTo(changes, drill.conditions) ?? 0;
  const arranged = withEvent(drill, { kind: 'arranged', conditions: changes }, { minutes });
  return { ...arranged, conditions: { ...drill.conditions, ...changes } };
}
