import boardSchema from '../../schema/board.schema.json' with { type: 'json' };
import { describe } from '../diagnostics/describe.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { FactsContext } from '../facts/facts-context.ts';
import { textOf, textsOf } from '../facts/raw.ts';
import { validateShape } from '../facts/validate-shape.ts';
import { emptyLibrary, type Library } from '../library/library.ts';
import type { CompiledBoard } from '../model/compiled-board.ts';
import { type ForeignFacts, noForeignFacts } from '../model/foreign-facts.ts';
import type { FrontMatter } from '../model/front-matter.ts';
import { openBlock, parseFrontMatter } from '../parse/index.ts';
import { splitSource } from '../source/split-source.ts';
import { digestBoard } from './digest-board.ts';
import { knownSettings } from './sheet/known-settings.ts';
import { readFittings } from './sheet/read-fittings.ts';
import { readJumpers } from './sheet/read-jumpers.ts';
import { readPictures } from './sheet/read-pictures.ts';
import { readPoints } from './sheet/read-points.ts';
import { readReferences } from './sheet/read-references.ts';
import { readSheetBody } from './sheet/read-sheet-body.ts';
import { readSheetReadings } from './sheet/read-sheet-readings.ts';
import { readSheetSettings } from './sheet/read-sheet-settings.ts';
import { readTables } from './sheet/read-tables.ts';

interface Place {
  /** The file's name without its ending. */
  readonly id: string;
  /** Where the file stands in the library; pictures are looked for from there. */
  readonly path?: string;
  readonly library?: Library;
  /** What the shared files declare that the sheet `uses`. */
  readonly foreign?: ForeignFacts;
}

interface Compiled {
  /** Null where anything is an error. */
  readonly board: CompiledBoard | null;
  /** Everything there is to say about the file, in its order. */
  readonly diagnostics: readonly Diagnostic[];
}

/** The whole way from the text of a board sheet to what a job carries along. Never throws, whatever the text. */
export function compileBoard(text: string, place: Place): Compiled {
  const source = splitSource(text, openBlock);
  if (source.value.front === null) return { board: null, diagnostics: inOrder(source.diagnostics) };
  const front = parseFrontMatter(source.value.front);
  const { board, diagnostics: ofFacts } = readBoardFacts(front.value, place);
  const ofBody = readSheetBody(source, board.title);
  const diagnostics = inOrder([...source.diagnostics, ...front.diagnostics, ...ofFacts, ...ofBody]);
  return { board: diagnostics.some(isError) ? null : board, diagnostics };
}

function readBoardFacts(
  front: FrontMatter,
  { id, path = `${id}.md`, library = emptyLibrary, foreign = noForeignFacts }: Place,
): { readonly board: CompiledBoard; readonly diagnostics: readonly Diagnostic[] } {
  const context = new FactsContext(front);
  const data = validateShape(front, context, boardSchema);
  const settings = readSheetSettings(data, foreign.settings, context);
  const jumpers = readJumpers(data, context);
  const tables = readTables(data, jumpers, foreign.settings, context);
  const known = knownSettings(foreign.settings, settings, tables);
  const readings = readSheetReadings(data, foreign.readings, known, context);
  const { pictures, names } = readPictures(data, path, library, context);
  const measures = new Map(readings.map(({ reading, measure }) => [reading, measure]));
  const facts = {
    format: 1,
    kind: 'compiled-board',
    id,
    title: textOf(data.title) ?? '',
    boards: textsOf(data.boards),
    settings,
    jumpers,
    tables,
    fittings: readFittings(data, context),
    readings,
    pictures,
    points: readPoints(data, names, foreign.readings, context),
    references: readReferences(data, foreign.readings, measures, context),
  } as const;
  return { board: { ...facts, digest: digestBoard(facts) }, diagnostics: context.diagnostics };
}

const isError = (diagnostic: Diagnostic): boolean => describe(diagnostic).severity === 'error';

const inOrder = (diagnostics: readonly Diagnostic[]): readonly Diagnostic[] =>
  diagnostics.toSorted((a, b) => a.span.from - b.span.from || a.span.to - b.span.to);
