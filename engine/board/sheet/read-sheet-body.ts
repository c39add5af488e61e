import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Staged } from '../../diagnostics/staged.ts';
import type { Source } from '../../model/source.ts';
import { readBody } from '../../read/read-body.ts';

/** Lead lines by what they make of a section. */
const words: Readonly<Record<string, string>> = {
  check: 'Read',
  task: 'Do',
  call: 'Follow',
  end: 'End',
  fault: 'Fault',
  stop: 'Stop',
};

/** Problems of prose, which a board sheet has in common with a tree. */
const ofProse: ReadonlySet<string> = new Set([
  'setext-heading',
  'section-form',
  'top-heading',
  'empty-heading',
  'lazy-quote',
  'hazard-form',
  'hazard-place',
  'html',
  'link-definition',
  'link-address',
  'image-address',
]);

/** The body of a board sheet is prose: nobody walks through it. */
export function readSheetBody(source: Staged<Source>, title: string): readonly Diagnostic[] {
  const { value, diagnostics } = readBody(source);
  const { head, sections } = value;
  const leads = sections.flatMap(({ from, syntax }): readonly Diagnostic[] => {
    const word = words[syntax.kind];
    if (word === undefined) return [];
    const span = { from: from + syntax.leadSpan.from, to: from + syntax.leadSpan.to };
    return [{ code: 'sheet-lead-line', word, span }];
  });
  const told = diagnostics.flatMap((each): readonly Diagnostic[] => {
    if (each.code === 'lead-above-sections')
      return [{ code: 'sheet-lead-line', word: each.word, span: each.span }];
    return ofProse.has(each.code) ? [each] : [];
  });
  return [...leads, ...told, ...titleProblems(head, title)];
}

type Head = ReturnType<typeof readBody>['value']['head'];

function titleProblems({ from, syntax }: Head, title: string): readonly Diagnostic[] {
  if (syntax.title === null || title === '' || syntax.title.text === title) return [];
  const { text, span } = syntax.title;
  const place = { from: from + span.from, to: from + span.to };
  return [{ code: 'title-differs', title, heading: text, span: place }];
}
