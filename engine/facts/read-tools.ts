import type { FactsContext } from './facts-context.ts';
import { type RawTable, textsOf } from './raw.ts';

/** The closed list of tools; null where there is none. */
export function readTools(data: RawTable, context: FactsContext): readonly string[] | null {
  if (!('tools' in data)) return null;
  const tools = textsOf(data.tools);
  for (const [index, name] of tools.entries()) {
    if (tools.indexOf(name) < index) {
      context.atValue(['tools', index], { code: 'listed-twice', name, key: 'tools' });
    }
  }
  return [...new Set(tools)];
}
