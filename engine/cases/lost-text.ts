import { partedText } from './problem-text.ts';
import type { LostWalk } from './run-faults.ts';

/** Where a fault's own readings led instead: one sentence without a final full stop. */
export function lostText({ settings, path, expected, parted, refused }: LostWalk): string {
  const kinds = Object.entries(settings).map(([setting, value]) => `${setting} ${value}`);
  const board = kinds.length === 0 ? '' : `with ${kinds.join(', ')} `;
  const stands = path.at(-1)?.title ?? 'the start';
  if (refused !== null) return `${board}an answer was not taken at "${stands}": ${refused}`;
  return `${board}it stands at "${stands}" instead of "${expected}"${partedText(parted)}`;
}
