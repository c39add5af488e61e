import { movedDiagnostic } from '../diagnostics/moved-diagnostic.ts';
import type { Slice, Source } from '../model/source.ts';
import type { Staged } from '../model/staged.ts';
import type { BodySyntax, Placed } from './body-syntax.ts';
import { readHead } from './read-head.ts';
import { readSection } from './read-section.ts';

/** Reads the head and every section. Each needs nothing but its own text, so `section` may keep what it read before. */
export function readBody({ head, sections }: Source, section = readSection): Staged<BodySyntax> {
  const readHeadAt = placed(head, readHead);
  // A section that no parser could be trusted with has been reported and is empty.
  const read = sections.filter(({ text }) => text !== '').map((slice) => placed(slice, section));
  return {
    value: { head: readHeadAt.value, sections: read.map(({ value }) => value) },
    diagnostics: [readHeadAt, ...read].flatMap(({ diagnostics }) => diagnostics),
  };
}

function placed<T>({ text, from }: Slice, read: (text: string) => Staged<T>): Staged<Placed<T>> {
  const { value, diagnostics } = read(text);
  return {
    value: { from, syntax: value },
    diagnostics: diagnostics.map((each) => movedDiagnostic(each, from)),
  };
}
