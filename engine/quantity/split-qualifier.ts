import { type Qualifier, qualifierTable } from './unit-table.ts';

const meanings = new Map<string, Qualifier>();
for (const name in qualifierTable) {
  const qualifier = name as keyof typeof qualifierTable;
  for (const spelling of qualifierTable[qualifier].spellings) meanings.set(spelling, qualifier);
}
const spellings = [...meanings.keys()].sort((a, b) => b.length - a.length).join('|');
const behind = new RegExp(`^(.*?)(${spellings})$`, 'i');
// As printed on a meter's dial.
const before = /^(dc|ac)(.+)$/i;

/** `mVp-p` is `mV` and `pp`; `DCV` is `V` and `dc`. Null where nothing of the kind is there. */
export function splitQualifier(
  text: string,
): { readonly rest: string; readonly qualifier: Qualifier } | null {
  const tail = behind.exec(text);
  const [rest, qualifier] = tail ? [tail[1], tail[2]] : (before.exec(text)?.slice(1).reverse() ?? []);
  const meaning = meanings.get(qualifier?.toLowerCase() ?? '');
  return meaning === undefined ? null : { rest: rest ?? '', qualifier: meaning };
}
