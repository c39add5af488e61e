import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import type { CompiledBoard } from '../model/compiled-board.ts';
import type { Measure } from '../model/reading.ts';

type Facts = Omit<CompiledBoard, 'digest'>;

/** SHA-256, in hexadecimal, of all that decides how a walk goes on this board, as canonical JSON (RFC 8785): settings, jumpers,
 *  limits and references. Words, pictures and points are left out. */
export function digestBoard({ settings, jumpers, tables, fittings, readings, references }: Facts): string {
  const walked = {
    settings,
    jumpers: jumpers.map(({ id, positions }) => ({ id, positions })),
    tables,
    fittings: fittings.map(({ id, sockets, together }) => ({ id, sockets, together })),
    readings: readings.map(({ reading, measure }) => ({ reading, measure: bare(measure) })),
    references: references.map(({ reading, value, date }) => ({ reading, value, date })),
  };
  return bytesToHex(sha256(utf8ToBytes(canonicalize(walked) ?? '')));
}

/** Without the words of the author. */
function bare(measure: Measure): object {
  switch (measure.kind) {
    case 'quantity': {
      const { written: _written, ...scale } = measure.scale;
      return { ...measure, scale };
    }
    case 'codes':
      return { ...measure, ranges: measure.ranges.map(({ means: _means, ...range }) => range) };
    case 'beeps':
      return { ...measure, patterns: measure.patterns.map(({ means: _means, ...pattern }) => pattern) };
    default:
      return measure;
  }
}
