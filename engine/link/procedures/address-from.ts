import { relativePath } from '../../library/relative-path.ts';

const isRelative = (url: string): boolean => !/^(?:[a-z][a-z0-9+.-]*:|\/|#)/i.test(url);

/** What an address in the file at `procedure` is in the file at `tree`: sections have other ids there, and relative
 *  paths begin in another folder. */
export function addressFrom(
  tree: string,
  procedure: string,
  sections: ReadonlyMap<string, string>,
): (url: string) => string {
  const way = relativePath(tree, procedure);
  const folder = way.slice(0, way.lastIndexOf('/') + 1);
  return (url) => {
    if (url.startsWith('#')) return `#${sections.get(url.slice(1)) ?? url.slice(1)}`;
    return isRelative(url) ? `${folder}${url}` : url;
  };
}
