import type { Part } from '../parts.ts';
import { findRisks, type Risk } from './find-risks.ts';

const running = new Set(['paragraph', 'list', 'table', 'quote']);

/** What the prose and the lead lines of a section tell to do that is dangerous. Hazards, headings, code and outcomes tell nothing. */
export const risksOf = (parts: readonly Part[], text: string): readonly Risk[] =>
  parts.flatMap((part) =>
    tells(part) ? findRisks(text.slice(part.span.from, part.span.to), part.span.from) : [],
  );

function tells(part: Part): boolean {
  if (part.kind === 'prose') return running.has(part.block.type);
  return part.kind === 'lead' && (part.lead.word === 'Do' || part.lead.word === 'Stop');
}
