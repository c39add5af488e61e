import type { FactsContext } from '../../facts/facts-context.ts';
import { isTable, type RawTable, tableOf, textOf } from '../../facts/raw.ts';
import type { Library } from '../../library/library.ts';
import { resolvePath } from '../../library/resolve-path.ts';
import type { Picture } from '../../model/compiled-board.ts';

const endings = /\.(?:svg|png|jpe?g)$/i;

interface ReadPictures {
  readonly pictures: readonly Picture[];
  /** What points may name: a picture that cannot be shown is known all the same. */
  readonly names: readonly string[];
}

/** @param path the sheet's own place in the library */
export function readPictures(
  data: RawTable,
  path: string,
  library: Library,
  context: FactsContext,
): ReadPictures {
  const table = tableOf(data.pictures);
  const names = context.keysOf(['pictures'], table);
  const pictures = names.flatMap((id): readonly Picture[] => {
    const raw = table[id];
    const file = isTable(raw) ? textOf(raw.file) : null;
    if (!isTable(raw) || file === null) return [];
    const place = ['pictures', id, 'file'];
    if (!endings.test(file)) {
      context.atValue(place, { code: 'picture-kind', file });
      return [];
    }
    const at = resolvePath(path, file);
    const url = at === null ? null : library.picture(at);
    if (url === null) {
      context.atValue(place, { code: 'picture-missing', file });
      return [];
    }
    return [{ id, is: textOf(raw.is) ?? id, url, mirrored: raw.mirrored === 'yes' }];
  });
  return { pictures, names };
}
