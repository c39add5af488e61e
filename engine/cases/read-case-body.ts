import type { Diagnostic, DiagnosticFacts } from '../diagnostics/diagnostic.ts';
import type { Staged } from '../diagnostics/staged.ts';
import type { Slice, Source } from '../model/source.ts';
import type { Span } from '../model/span.ts';
import { parseBody } from '../parse/index.ts';
import type { List, Paragraph, RootContent } from '../parse/parse-body.ts';
import { spanOf } from '../read/prose/span-of.ts';

/** Where a case says it must lead, nothing looked up. */
export type WrittenEnd =
  | { readonly kind: 'link'; readonly url: string; readonly span: Span }
  | { readonly kind: 'mended' };

/** What the body of a case says. Places count in the whole file. */
export interface CaseBody {
  readonly answers: readonly string[];
  /** Null where nothing says it in a form that is understood. */
  readonly end: WrittenEnd | null;
}

interface Reading {
  readonly text: string;
  readonly diagnostics: Diagnostic[];
  readonly lists: { readonly list: List; readonly slice: Slice }[];
  readonly ends: { readonly paragraph: Paragraph; readonly slice: Slice }[];
}

/** Reads the numbered list of answers and the last line; everything else is prose. */
export function readCaseBody({ head, sections, text }: Source): Staged<CaseBody> {
  const reading: Reading = { text, diagnostics: [], lists: [], ends: [] };
  for (const slice of [head, ...sections]) {
    for (const node of parseBody(slice).children) sort(node, slice, reading);
  }
  return {
    value: { answers: answersOf(reading), end: endOf(reading, text.length) },
    diagnostics: reading.diagnostics,
  };
}

function sort(node: RootContent, slice: Slice, { lists, ends }: Reading): void {
  if (node.type === 'list' && node.ordered) lists.push({ list: node, slice });
  if (node.type === 'paragraph' && /^leads?\s+to\b/i.test(written(node, slice)))
    ends.push({ paragraph: node, slice });
}

const written = (node: RootContent, { text }: Slice): string => {
  const { from, to } = spanOf(node);
  return text.slice(from, to);
};

const placed = (node: RootContent | List['children'][number], { from: base }: Slice): Span => {
  const { from, to } = spanOf(node);
  return { from: base + from, to: base + to };
};

const report = ({ diagnostics }: Reading, facts: DiagnosticFacts, span: Span): void =>
  void diagnostics.push({ ...facts, span });

function answersOf(reading: Reading): readonly string[] {
  const [first, ...others] = reading.lists;
  if (first === undefined) {
    const end = reading.text.length;
    report(reading, { code: 'case-without-answers' }, { from: end, to: end });
    return [];
  }
  for (const { list, slice } of others) report(reading, { code: 'second-answer-list' }, placed(list, slice));
  return first.list.children.flatMap((item) => {
    const answer = item.children
      .map((node) => written(node, first.slice))
      .join(' ')
      .replaceAll('`', '')
      .replace(/\s+/g, ' ')
      .trim();
    if (answer === '') report(reading, { code: 'empty-answer' }, placed(item, first.slice));
    return answer === '' ? [] : [answer];
  });
}

const mended = /^leads?\s+to\s+a\s+mended\s+board\s*\.?$/i;

function endOf(reading: Reading, length: number): WrittenEnd | null {
  const last = reading.ends.at(-1);
  if (last === undefined) {
    report(reading, { code: 'case-without-end' }, { from: length, to: length });
    return null;
  }
  const { paragraph, slice } = last;
  const text = written(paragraph, slice);
  if (mended.test(text)) return { kind: 'mended' };
  const link = paragraph.children.find((node) => node.type === 'link');
  if (link?.type === 'link') return { kind: 'link', url: link.url, span: placed(link, slice) };
  report(reading, { code: 'case-end-form', text }, placed(paragraph, slice));
  return null;
}
