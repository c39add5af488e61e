import type { Library } from '../library/library.ts';
import { noForeignFacts } from '../model/foreign-facts.ts';
import { examineProcedure } from './examine-procedure.ts';
import { examineShared } from './examine-shared.ts';
import { isError } from './in-order.ts';
import { type OpenFile, openFile } from './open-file.ts';
import { openShelf, type Shelf } from './shelf.ts';

/** The files of a library, read and compiled as others ask for them. */
export const besideShelf = (library: Library, open: (text: string) => OpenFile = openFile): Shelf =>
  openShelf(library, {
    open: (_path, text) => open(text),
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
