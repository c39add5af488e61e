/** The way from one file of a library to another: `trees/a.md`, `procedures/b.md` → `../procedures/b.md`. */
export function relativePath(from: string, to: string): string {
  const here = from.split('/').slice(0, -1);
  const there = to.split('/');
  const parted = here.findIndex((step, index) => step !== there[index] || index === there.length - 1);
  const common = parted < 0 ? here.length : parted;
  return [...here.slice(common).map(() => '..'), ...there.slice(common)].join('/');
}
