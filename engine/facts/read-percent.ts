import type { Path } from '../model/front-matter.ts';
import type { FactsContext } from './facts-context.ts';

/** `70 %`, as 70; null where it is none, which is told unless there is nothing at all. */
export function readPercent(raw: unknown, path: Path, context: FactsContext): number | null {
  const text = typeof raw === 'string' ? raw : '';
  const [, digits] = /^(\d{1,3}(?:\.\d{1,9})?)\s*%$/.exec(text) ?? [];
  if (digits === undefined && text !== '') shareForm(text, path, context);
  return digits === undefined ? null : Number(digits);
}

function shareForm(text: string, path: Path, context: FactsContext): void {
  const { to } = context.spanOf(path);
  // Below 2 it may be meant as a part of 1.
  const isPercentage = /^\d{1,3}(?:\.\d+)?$/.test(text) && Number(text) >= 2;
  const fix = { title: `Write "${text} %"`, edits: [{ from: to, to, insert: ' %' }] };
  context.atValue(path, { code: 'share-form', text }, isPercentage ? { fix } : {});
}
