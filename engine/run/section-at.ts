const section = 's-';
const handOver = 't-';

/** Which section a machine's value stands in, and the state inside that section, if there is one.
 *
 *      s-power-good                                  power-good
 *      { s-no-clock: proof-1 }                       no-clock, proof-1
 *      { s-find-the-short: call }                    find-the-short, call
 *      { s-find-the-short: { s-halve-it: s-b } }     find-the-short.halve-it.b
 *      t-memory                                      to:memory
 */
export function sectionAt(value: unknown): { readonly section: string; readonly phase: string | null } {
  const names: string[] = [];
  let at = value;
  while (typeof at === 'object' && at !== null) {
    const [[name, inner] = ['', null]] = Object.entries(at);
    names.push(name);
    at = inner;
  }
  if (typeof at === 'string') names.push(at);
  const [last = ''] = names.slice(-1);
  if (last.startsWith(handOver)) return { section: `to:${last.slice(handOver.length)}`, phase: null };
  const path = names.filter((name) => name.startsWith(section)).map((name) => name.slice(section.length));
  return { section: path.join('.'), phase: last.startsWith(section) || path.length === 0 ? null : last };
}
