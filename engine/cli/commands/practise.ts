import { randomInt } from 'node:crypto';
import { noEquipment } from '../../doubt/index.ts';
import { localIso } from '../../job/index.ts';
import type { CompiledTree } from '../../model/compiled-tree.ts';
import { nearest } from '../../names/nearest.ts';
import { unlisted } from '../../practice/drill.ts';
import {
  codeOfPlan,
  type Drill,
  type DrillPlan,
  debriefOf,
  misfitOf,
  planDrill,
  planOfCode,
  resultOf,
  startDrill,
  toolsIn,
} from '../../practice/index.ts';
import { type Bench, CannotRun, type ExitCode, exit } from '../bench.ts';
import type { Command } from '../command.ts';
import { collectResults, resultTable } from '../drill/collect-results.ts';
import type { DrillDesk } from '../drill/drill-desk.ts';
import { showDebrief } from '../drill/show-debrief.ts';
import { drillHead, drillPrompt } from '../drill/show-drill.ts';
import { takeLine } from '../drill/take-line.ts';
import { loadBoardFile } from '../load-board-file.ts';
import { loadInstruments } from '../load-instruments.ts';
import { loadTreeFile } from '../load-tree-file.ts';
import { readOptions } from '../read-options.ts';

export const practise: Command = {
  summary: 'practise on a simulated board with a hidden fault',
  help: `Usage: deadboard practise TREE [--seed N | --code CODE] [--guided] [--unlisted]
                          [--board SHEET] [--instruments FILE] [--lacking TOOL]…
                          [--answer TEXT]… [--name TEXT] [--result FILE] [--json]
       deadboard practise TREE… --surprise …
       deadboard practise TREE --seal FAULT [--seed N] [--guided] …
       deadboard practise TREE --code CODE --open
       deadboard practise --collect FILE… [--json]

A board hides one of the tree's faults. Measure what you like (v5), or what the
tree asks for (next), name the fault (name FAULT), and see in the debrief what
each check was worth. ? at the keyboard lists what can be typed.

  --seed N            this board; without it, and without a code, any
  --code CODE         the board of a code, so that a class gets the same one
  --guided            the tree says what is next; else any check in any order
  --surprise          one of several trees
  --unlisted          the board may have a fault that the tree does not list
  --board SHEET       the sheet of the board: its limits, its faults' frequencies
  --instruments FILE  what is at the bench, an instrument on each line
  --lacking TOOL      a tool to do without; may be given many times
  --answer TEXT       one line, as it would be typed; may be given many times
  --name TEXT         the trainee, for the result
  --result FILE       keeps how it went, as JSON, once the drill is over
  --json              how it went, as JSON
  --seal FAULT        prints a code that hides this fault (an id, or unlisted):
                      a real board can be prepared with it, and its code handed out
  --open              tells what a code hides
  --collect           the results of a class as a table

Exit code 0: done; 1: a line was refused; 2: could not run.`,
  run,
};

const options = {
  seed: { type: 'string' },
  code: { type: 'string' },
  guided: { type: 'boolean' },
  surprise: { type: 'boolean' },
  unlisted: { type: 'boolean' },
  board: { type: 'string' },
  instruments: { type: 'string' },
  lacking: { type: 'string', multiple: true },
  answer: { type: 'string', multiple: true },
  name: { type: 'string' },
  result: { type: 'string' },
  json: { type: 'boolean' },
  seal: { type: 'string' },
  open: { type: 'boolean' },
  collect: { type: 'boolean' },
} as const;

async function run(args: readonly string[], bench: Bench): Promise<ExitCode> {
  const { values, positionals } = readOptions(args, options);
  if (values.collect === true) {
    if (positionals.length === 0) throw new CannotRun('name the files of the results');
    const results = await collectResults(bench, positionals);
    bench.out(values.json === true ? JSON.stringify(results, null, 2) : resultTable(results));
    return exit.clean;
  }
  const seed = values.seed === undefined ? randomInt(2 ** 32) : seedOf(values.seed);
  const path = chosen(positionals, values.surprise === true, seed);
  const tree = await loadTreeFile(bench, path);
  const board = values.board === undefined ? null : await loadBoardFile(bench, values.board);
  const plan =
    values.code === undefined
      ? planDrill(tree, {
          seed,
          manner: values.guided === true ? 'guided' : 'free',
          unlisted: values.unlisted === true,
          fault: values.seal === undefined ? null : faultIn(tree, values.seal),
          board,
          lacking: toolsAmong(tree, values.lacking ?? []),
        })
      : planFor(values.code, tree);
  const instruments =
    values.instruments === undefined ? [] : await loadInstruments(bench, values.instruments);
  const drill = startDrill(plan, tree, board, { ...noEquipment, instruments });
  if (values.seal !== undefined) {
    bench.out(codeOfPlan(plan));
    return exit.clean;
  }
  if (values.open === true) {
    const { hidden } = debriefOf(drill);
    bench.out(`${hidden?.id ?? unlisted}: ${hidden?.is ?? 'none of the faults that this tree lists'}`);
    return exit.clean;
  }
  const answers = values.answer ?? [];
  const scripted = answers.length > 0 || !bench.interactive;
  if (values.json !== true) bench.out(`${drillHead(drill, bench.width)}\nThis board: ${codeOfPlan(plan)}\n`);
  const ended = scripted
    ? script(bench, drill, answers, values.json === true)
    : { drill: await talk(bench, drill), code: exit.clean };
  await close(bench, ended.drill, values);
  return ended.code;
}

/** At a keyboard: until the fault is found, given up, or left. */
async function talk(bench: Bench, start: Drill): Promise<Drill> {
  let desk: DrillDesk = { drill: start, waiting: null };
  while (desk.drill.state === 'running') {
    const typed = await bench.ask(drillPrompt(desk.drill));
    if (typed === null || typed.trim() === 'quit') break;
    if (typed.trim() === '') continue;
    const told = takeLine(desk, typed, bench.width);
    desk = told.desk;
    if (told.text !== '') bench.out(told.text);
  }
  return desk.drill;
}

/** The first line that is refused ends a script. */
function script(
  bench: Bench,
  start: Drill,
  answers: readonly string[],
  quiet: boolean,
): { drill: Drill; code: ExitCode } {
  let desk: DrillDesk = { drill: start, waiting: null };
  for (const answer of answers) {
    if (desk.drill.state !== 'running') {
      bench.err(`deadboard practise: "${answer}" was not taken: the drill is over`);
      return { drill: desk.drill, code: exit.problems };
    }
    const told = takeLine(desk, answer, bench.width);
    if (!told.ok) {
      bench.err(`deadboard practise: "${answer}" was not taken: ${told.text}`);
      return { drill: desk.drill, code: exit.problems };
    }
    desk = told.desk;
    if (told.text !== '' && !quiet) bench.out(told.text);
  }
  return { drill: desk.drill, code: exit.clean };
}

async function close(
  bench: Bench,
  drill: Drill,
  { json, name = '', result }: { json?: boolean; name?: string; result?: string },
): Promise<void> {
  const debrief = drill.state === 'running' ? null : debriefOf(drill);
  if (debrief !== null && json !== true) bench.out(`\n${showDebrief(drill, debrief, bench.width)}`);
  if (json !== true && (result === undefined || debrief === null)) return;
  const made = resultOf(drill, name, localIso(bench.now()), debrief ?? undefined);
  const text = JSON.stringify(made, null, 2);
  if (json === true) bench.out(text);
  if (result === undefined) return;
  if (debrief === null) bench.err('The drill is not over: no result is kept');
  else await keep(bench, result, text);
}

async function keep(bench: Bench, path: string, text: string): Promise<void> {
  try {
    await bench.writeText(path, `${text}\n`);
  } catch (error) {
    throw new CannotRun(`cannot write "${path}": ${(error as Error).message}`);
  }
}

function seedOf(text: string): number {
  if (/^\d{1,10}$/.test(text) && Number(text) < 2 ** 32) return Number(text);
  throw new CannotRun(`"${text}" is no seed: a whole number below ${2 ** 32}`);
}

function chosen(paths: readonly string[], surprise: boolean, seed: number): string {
  const [first] = paths;
  if (first === undefined) throw new CannotRun('name a tree');
  if (paths.length > 1 && !surprise) throw new CannotRun('name one tree, or --surprise for one of them');
  return paths[seed % paths.length] ?? first;
}

function planFor(code: string, tree: CompiledTree): DrillPlan {
  const read = planOfCode(code);
  if (!read.ok) throw new CannotRun(read.problem);
  const misfit = misfitOf(read.value, tree);
  if (misfit !== null) throw new CannotRun(misfit);
  return read.value;
}

function faultIn({ faults, title }: CompiledTree, id: string): string {
  const ids = [...faults.map((fault) => fault.id), unlisted];
  if (ids.includes(id)) return id;
  const [near] = nearest(id, ids);
  throw new CannotRun(
    `"${title}" has no fault "${id}"${near === undefined ? '' : `: did you mean "${near}"?`}`,
  );
}

function toolsAmong(tree: CompiledTree, lacking: readonly string[]): readonly string[] {
  const tools = toolsIn(tree);
  const odd = lacking.find((tool) => !tools.includes(tool));
  if (odd !== undefined) throw new CannotRun(`no check asks for "${odd}": the tools are ${tools.join(', ')}`);
  return lacking;
}
