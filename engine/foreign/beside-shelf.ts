import { emptyLibrary, type Library } from '../library/library.ts';
import { noForeignFacts } from '../model/foreign-facts.ts';
import { examineProcedure } from './examine-procedure.ts';
import { examineShared } from './examine-shared.ts';
import { isError } from './in-order.ts';
import { openFile } from './open-file.ts';
import { openShelf, type Shelf } from './shelf.ts';

/** The files of a library, read and compiled as others ask for them.
 *  @param alone there are no files but the one that is compiled */
export const besideShelf = (library: Library, alone = library === emptyLibrary): Shelf =>
  openShelf(library, alone, {
    open: (text) => openFile(text),
    shared(path, shelf) {
      const file = shelf.open(path);
      if (file === null) return { value: noForeignFacts, errors: 1 };
      const { value, diagnostics } = examineShared(file, path, shelf);
      return { value, errors: diagnostics.filter(isError).length };
    },
    procedure(path, shelf) {
      const file = shelf.open(path);
      if (file === null) return { value: null, errors: 1 };
      const { value, diagnostics } = examineProcedure(file, path, shelf);
      return { value, errors: diagnostics.filter(isError).length };
    },
  });
