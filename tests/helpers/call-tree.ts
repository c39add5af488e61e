import { emitMachine } from '../../engine/emit/emit-machine.ts';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import type { Outcome, Section } from '../../engine/model/section.ts';
import { plainReading } from './plain-reading.ts';

const options = (id: string, ...names: readonly string[]) =>
  plainReading(id, { kind: 'options', options: names.map((name) => ({ name, means: null })) }, [
    names[0] ?? '',
  ]);
const call = (id: string, ...ends: readonly string[]) => ({
  ...options(id, ...ends),
  normal: 'any' as const,
  call: true,
});

const prose = { hazards: [], blocks: [] };
const check = (id: string, reading: string, targets: Readonly<Record<string, string>>): Section => ({
  id,
  title: id,
  ...prose,
  kind: 'check',
  readings: [reading],
  outcomes: Object.entries(targets).map(
    ([band, target]): Outcome => ({
      condition: { kind: 'bands', bands: { [reading]: [band] } },
      written: band,
      target,
      remark: [],
    }),
  ),
});
const follow = (id: string, first: string, ends: Readonly<Record<string, string>>): Section => ({
  id,
  title: id,
  ...prose,
  kind: 'call',
  procedure: id.split('.').at(-1) ?? '',
  procedureTitle: id,
  given: [],
  first,
  ends: Object.entries(ends).map(([end, target]) => ({ end, target, remark: [] })),
});
const stop = (id: string): Section => ({ id, title: id, ...prose, kind: 'stop', reason: [] });

/**
 * A tree with a procedure that follows another one, as it is compiled.
 *
 *     rails ─low→ find-the-short (call)                       found → shorted, not-found and unclear → supply
 *                   .measure ─short→ [found]
 *                            ─good→  [not-found]
 *                            ─low→   .halve (call)            here → .measure, nowhere → [found]
 *                                       .cut ─warm→ [here]  ─cold→ [nowhere]
 */
const sections: readonly [Section, ...Section[]] = [
  check('rails', 'v5', { good: 'fine', low: 'find-the-short' }),
  follow('find-the-short', 'find-the-short.measure', {
    found: 'shorted',
    'not-found': 'supply',
    unclear: 'supply',
  }),
  check('find-the-short.measure', 'r_gnd of v5', {
    short: 'shorted',
    good: 'supply',
    low: 'find-the-short.halve',
  }),
  follow('find-the-short.halve', 'find-the-short.halve.cut', {
    here: 'find-the-short.measure',
    nowhere: 'shorted',
  }),
  check('find-the-short.halve.cut', 'part', { warm: 'find-the-short.measure', cold: 'shorted' }),
  stop('fine'),
  stop('shorted'),
  stop('supply'),
];

export const callTree = (): CompiledTree => ({
  format: 1,
  kind: 'compiled-tree',
  id: 'call-tree',
  title: 'A rail is down',
  symptom: 'Nothing happens',
  boards: [],
  digest: 'call-tree',
  given: [],
  conditions: [],
  settings: [],
  readings: [
    options('v5', 'good', 'low'),
    call('find-the-short', 'found', 'not-found', 'unclear'),
    options('r_gnd of v5', 'good', 'low', 'short'),
    call('find-the-short.halve', 'here', 'nowhere'),
    options('part', 'cold', 'warm'),
  ],
  faults: [],
  hazards: [],
  blocks: [],
  sections,
  machine: emitMachine(sections),
});
