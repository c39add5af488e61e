import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { movedDiagnostic } from '../diagnostics/moved-diagnostic.ts';
import type { Staged } from '../diagnostics/staged.ts';
import type { Slice, Source } from '../model/source.ts';
import type { BodySyntax, Placed } from './body-syntax.ts';
import { readHead } from './read-head.ts';
import { readSection } from './read-section.ts';
import type { SectionSyntax } from './section-syntax.ts';

/** Reads the head and every section. Each needs nothing but its own text, so `section` may keep what it read before. */
export function readBody(source: Staged<Source>, section = readSection): Staged<BodySyntax> {
  const { text, head, sections } = source.value;
  const headRead = placed(head, readHead);
  const read = sections.map((slice, index) => {
    const result = placed(slice, section);
    const end = sections[index + 1]?.from ?? text.length;
    return source.diagnostics.some(({ span }) => slice.from <= span.from && span.from < end)
      ? doubted(result)
      : result;
  });
  return {
    value: {
      head: headRead.value,
      sections: read.map(({ value }) => value),
    },
    diagnostics: [headRead, ...read].flatMap(({ diagnostics }) => diagnostics),
  };
}

function placed<T>({ text, from }: Slice, read: (text: string) => Staged<T>): Staged<Placed<T>> {
  const { value, diagnostics } = read(text);
  return {
    value: { from, syntax: value },
    diagnostics: diagnostics.map((each) => movedDiagnostic(each, from)),
  };
}

/** A section that was reported already as more than a parser can take has lost its text: what is missing in it is no news. */
function doubted({ value, diagnostics }: Staged<Placed<SectionSyntax>>): Staged<Placed<SectionSyntax>> {
  const isNews = ({ code }: Diagnostic): boolean =>
    code !== 'section-without-lead-line' && code !== 'empty-heading';
  return {
    value: { from: value.from, syntax: { ...value.syntax, doubtful: true } },
    diagnostics: diagnostics.filter(isNews),
  };
}
