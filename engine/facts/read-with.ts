import type { Path } from '../model/front-matter.ts';
import { nearest } from '../names/nearest.ts';
import type { FactsContext } from './facts-context.ts';
import { oneOrMore } from './raw.ts';
import { renameFix } from './rename-fix.ts';

/** Tools, which must be of the closed list where there is one. */
export function readWith(
  raw: unknown,
  path: Path,
  tools: readonly string[] | null,
  context: FactsContext,
): readonly string[] {
  const named = oneOrMore(raw);
  for (const [index, name] of named.entries()) {
    if (tools === null || tools.includes(name)) continue;
    const near = nearest(name.slice(0, 60), tools);
    const span = context.spanOf(Array.isArray(raw) ? [...path, index] : path);
    context.at(span, { code: 'no-tool-named', name, near }, renameFix(span, name, near));
  }
  return named;
}
