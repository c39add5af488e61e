import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Fault } from '../model/fault.ts';
import type { Measure, Reading } from '../model/reading.ts';
import type { Section } from '../model/section.ts';
import type { Setting } from '../model/setting.ts';

/** The parts of a tree that decide how a walk goes. */
export type Walked = Pick<
  CompiledTree,
  'given' | 'conditions' | 'settings' | 'readings' | 'faults' | 'odds' | 'sections' | 'machine'
>;

/**
 * SHA-256, in hexadecimal, of all that decides how a walk goes, as canonical JSON (RFC 8785).
 *
 * Titles, prose, sources and other words are left out: a job must not part from its tree because of a
 * spelling. Section ids follow from the titles and are part of the machine.
 */
export function digestTree({
  given,
  conditions,
  settings,
  readings,
  faults,
  odds,
  sections,
  machine,
}: Walked): string {
  const walked = {
    given,
    conditions,
    settings: settings.map(bareSetting),
    readings: readings.map(bareReading),
    faults: faults.map(bareFault),
    ...(odds && { odds }),
    sections: sections.map(bareSection),
    machine,
  };
  return bytesToHex(sha256(utf8ToBytes(canonicalize(walked) ?? '')));
}

function bareSetting(setting: Setting): object {
  const { is: _is, ...bare } = setting;
  return bare.kind === 'options' ? { ...bare, options: bare.options.map(({ name }) => name) } : bare;
}

function bareReading({
  is: _is,
  source: _source,
  set: _set,
  points: _points,
  measure,
  ...bare
}: Reading): object {
  return { ...bare, measure: bareMeasure(measure) };
}

function bareMeasure(measure: Measure): object {
  switch (measure.kind) {
    case 'quantity': {
      const { written: _written, ...scale } = measure.scale;
      return { ...measure, scale };
    }
    case 'options':
      return { ...measure, options: measure.options.map(({ name }) => name) };
    case 'codes':
      return { ...measure, ranges: measure.ranges.map(({ from, to, band }) => ({ from, to, band })) };
    case 'beeps':
      return { ...measure, patterns: measure.patterns.map(({ pattern, band }) => ({ pattern, band })) };
    case 'tries':
      return measure;
    case 'each':
      return { ...measure, of: bareMeasure(measure.of) };
  }
}

function bareFault({
  is: _is,
  source: _source,
  parts: _parts,
  tools: _tools,
  family: _family,
  ...bare
}: Fault): object {
  return bare;
}

/** What the machine does not say: the order of readings, what proves a remedy, which fault it is for. */
const bareSections: {
  readonly [Kind in Section['kind']]: (section: Extract<Section, { kind: Kind }>) => object;
} = {
  check: ({ id, readings }) => ({ id, readings }),
  task: ({ id, minutes, wait, sets, onlyIf }) => ({ id, minutes, wait, sets, onlyIf }),
  call: ({ id, procedure, given, ends }) => ({
    id,
    procedure,
    given: given.map(({ name, value }) => ({ name, value })),
    ends: ends.map(({ end, target }) => ({ end, target })),
  }),
  fault: ({ id, onlyIf, remedies, proof, proofTries }) => ({
    id,
    onlyIf,
    faults: remedies.map(({ fault }) => fault),
    proof,
    proofTries,
  }),
  stop: ({ id }) => ({ id }),
  'hand-over': ({ id, tree }) => ({ id, tree }),
};

const bareSection = (section: Section): object => bareSections[section.kind](section as never);
