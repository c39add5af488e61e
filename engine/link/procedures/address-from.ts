const isRelative = (url: string): boolean => !/^(?:[a-z][a-z0-9+.-]*:|\/|#)/i.test(url);

/** What an address in the file at `procedure` is in the file at `tree`: sections have other ids there, and relative
 *  paths begin in another folder. */
export function addressFrom(
  tree: string,
  procedure: string,
  sections: ReadonlyMap<string, string>,
): (url: string) => string {
  const start = relativeFolder(tree, procedure);
  return (url) => {
    if (url.startsWith('#')) return `#${sections.get(url.slice(1)) ?? url.slice(1)}`;
    return isRelative(url) ? `${start}${url}` : url;
  };
}

/** `trees/a.md`, `procedures/b.md` → `../procedures/` */
function relativeFolder(from: string, to: string): string {
  const [here, there] = [from, to].map((path) => path.split('/').slice(0, -1)) as [string[], string[]];
  const parted = here.findIndex((step, index) => step !== there[index]);
  const common = parted < 0 ? here.length : parted;
  const steps = [...here.slice(common).map(() => '..'), ...there.slice(common)];
  return steps.map((step) => `${step}/`).join('');
}
