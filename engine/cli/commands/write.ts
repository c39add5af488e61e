import { localIso } from '../../job/index.ts';
import { drawMap, layOut, mapOf } from '../../map/index.ts';
import type { CompiledTree } from '../../model/compiled-tree.ts';
import { paperOf } from '../../paper/index.ts';
import { scxmlOf } from '../../scxml/index.ts';
import { type Bench, CannotRun, type ExitCode, exit } from '../bench.ts';
import type { Command } from '../command.ts';
import { loadTreeFile } from '../load-tree-file.ts';
import { writeFile } from '../read-file.ts';
import { readOptions } from '../read-options.ts';

export const write: Command = {
  summary: 'write a tree as a procedure on paper, a map or a state chart',
  help: `Usage: deadboard write TREE --as paper|map|scxml [--out FILE]

Writes a tree (its Markdown, or compiled JSON) in another form.

  --as paper   one printable HTML page: numbered sections, boxes to tick, room for
               every reading
  --as map     an SVG flowchart with the symbols of ISO 5807
  --as scxml   its state machine as State Chart XML 1.0, ECMAScript data model
  --out FILE   where to; else it is printed

Exit code 0: written; 2: could not run.`,
  run,
};

type Writer = (tree: CompiledTree, bench: Bench) => string | Promise<string>;

const writers: Readonly<Record<string, Writer>> = {
  paper: (tree, bench) => paperOf(tree, { day: localIso(bench.now()).slice(0, 10) }),
  map: async (tree) => drawMap(await layOut(mapOf(tree))),
  scxml: scxmlOf,
};

async function run(args: readonly string[], bench: Bench): Promise<ExitCode> {
  const { values, positionals } = readOptions(args, { as: { type: 'string' }, out: { type: 'string' } });
  const [path, ...more] = positionals;
  if (path === undefined || more.length > 0) throw new CannotRun('name one tree');
  const form = values.as ?? '';
  const writer = Object.hasOwn(writers, form) ? writers[form] : undefined;
  if (writer === undefined) {
    const forms = Object.keys(writers).join(', ');
    throw new CannotRun(
      form === '' ? `say --as with one of ${forms}` : `--as is one of ${forms}, not "${form}"`,
    );
  }
  const text = await writer(await loadTreeFile(bench, path), bench);
  if (values.out === undefined) bench.out(text.trimEnd());
  else await writeFile(bench, values.out, text, 'Free some room or name another file');
  return exit.clean;
}
