import type { Fault } from '../model/fault.ts';
import { normalBandsOf, observe } from '../scale/index.ts';
import { inputsOf } from '../suspects/inputs-of.ts';
import { diceOf } from './dice.ts';
import { type Drill, type PassedOver, type ProofReading, unlisted } from './drill.ts';
import { groundOf } from './ground-of.ts';
import { isMet, isTrue, presentOf, seenIn } from './seen-in.ts';
import { onlyIf, passedOver } from './warnings-before.ts';
import { withEvent } from './with-event.ts';

/** Minutes of a remedy whose author gave none. */
export const usualRemedyMinutes = 15;

export interface Named {
  readonly drill: Drill;
  readonly right: boolean;
  readonly proof: readonly ProofReading[];
}

/** The trainee says what it is; its remedy is carried out and proven. Where it was right, everything comes out good and the drill
 *  is over; else the board still shows what it showed, a new part may be lost to what is still wrong, and the drill goes on. That it
 *  is none of the tree's (`unlisted`) takes no remedy. */
export function nameFault(drill: Drill, id: string): Named {
  const { board } = groundOf(drill);
  const fault = drill.tree.faults.find((one) => one.id === id) ?? null;
  if (drill.state !== 'running' || (fault === null && id !== unlisted)) {
    return { drill, right: false, proof: [] };
  }
  const right = board.hidden.fault.id === id;
  const proof = fault === null ? [] : proofOf(drill, fault, right);
  const passed = fault === null ? [] : passedBy(drill, fault, right);
  const minutes = fault === null ? 0 : (fault.minutes ?? usualRemedyMinutes) + proofMinutes(drill, proof);
  const named = withEvent(drill, { kind: 'named', fault: id, right, proof, passed }, { minutes });
  return { drill: right ? { ...named, state: 'found' } : named, right, proof };
}

/** The readings that its section asks for, those that were out of normal, and the symptom. */
function proofOf(drill: Drill, fault: Fault, right: boolean): readonly ProofReading[] {
  const { board, readings } = groundOf(drill);
  const section = sectionFor(drill, fault);
  const wrong = seenIn(drill).filter(({ event, observation }) => {
    const reading = readings.get(event.reading);
    const normal = reading === undefined ? [] : normalBandsOf(reading);
    return normal.length > 0 && !observation.bands.some((band) => normal.includes(band));
  });
  const listed = [
    ...(section?.proof ?? []),
    ...drill.tree.given.map(({ reading }) => reading),
    ...wrong.map(({ event }) => event.reading),
  ];
  const taken = new Set(listed.flatMap((id) => takenFor(drill, id)));
  return drill.tree.readings
    .filter(({ id }) => taken.has(id))
    .map(({ id }) => {
      const typed = right ? board.mended(id) : board.proven(id);
      return { reading: id, typed, good: right || isGood(drill, id, typed) };
    });
}

const sectionFor = (drill: Drill, { id }: Fault) =>
  drill.tree.sections
    .filter((section) => section.kind === 'fault')
    .find(({ remedies }) => remedies.some(({ fault }) => fault === id)) ?? null;

/** What is read to know a reading: itself, or what it is computed from. The end of a procedure is not read. */
function takenFor(drill: Drill, id: string, above: readonly string[] = []): readonly string[] {
  const reading = groundOf(drill).readings.get(id);
  if (reading === undefined || reading.call || above.includes(id)) return [];
  return reading.from === null
    ? [id]
    : inputsOf(reading, drill.tree).flatMap((input) => takenFor(drill, input, [...above, id]));
}

/** Normal; what is not judged is good unless it is the symptom that the board came with. */
function isGood(drill: Drill, id: string, typed: string): boolean {
  const reading = groundOf(drill).readings.get(id);
  const seen = reading && observe(reading, presentOf(drill), typed, drill.equipment);
  if (reading === undefined || !seen?.ok) return true;
  const { bands } = seen.value;
  const symptom = drill.tree.given.find((given) => given.reading === id);
  if (reading.normal === 'any') return symptom === undefined || !bands.includes(symptom.band);
  return bands.every((band) => reading.normal.includes(band));
}

const proofMinutes = (drill: Drill, proof: readonly ProofReading[]): number =>
  proof.reduce((sum, { reading }) => sum + (groundOf(drill).readings.get(reading)?.minutes ?? 0), 0);

/** What should have been seen before the remedy, and the spare that went in beside what was still wrong. */
function passedBy(drill: Drill, fault: Fault, right: boolean): readonly PassedOver[] {
  const needs = [...(sectionFor(drill, fault)?.onlyIf ?? []), ...fault.onlyIf];
  const missed = passedOver(
    drill,
    needs.filter((need) => !isMet(drill, need)).map((need) => onlyIf(drill, need)),
  );
  const seenBad = needs.some((need) => !isTrue(drill, need));
  if (right || missed.some(({ harm }) => harm) || seenBad) return missed;
  const { hidden } = groundOf(drill).board;
  const share = hidden.fault.brings?.[fault.id] ?? 0;
  const isKilled = share > 0 && diceOf(drill.plan.seed, ['killed', fault.id]).share() < share;
  return isKilled
    ? [...missed, { kind: 'only-if', text: 'The new part was killed by what is still wrong', harm: true }]
    : missed;
}
