/** The path that `relative` means in the file at `from`: `trees/a.md` and `../common/rails.md` give
 *  `common/rails.md`. Null where it leads out of the library. */
export function resolvePath(from: string, relative: string): string | null {
  const steps = from.split('/').slice(0, -1);
  for (const step of relative.split('/')) {
    if (step === '' || step === '.') continue;
    if (step !== '..') steps.push(step);
    else if (steps.pop() === undefined) return null;
  }
  return steps.join('/');
}

/** A file's name without its folders and its ending: the id of what it holds. */
export const idOfPath = (path: string): string =>
  path.slice(path.lastIndexOf('/') + 1).replace(/\.[^.]*$/, '');
