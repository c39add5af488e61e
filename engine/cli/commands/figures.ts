import type { Figures } from '../../figures/figures.ts';
import { figuresInSteps } from '../../figures/figures-of.ts';
import type { CompiledBoard } from '../../model/compiled-board.ts';
import type { CompiledTree } from '../../model/compiled-tree.ts';
import { type Bench, CannotRun, type ExitCode, exit } from '../bench.ts';
import type { Command } from '../command.ts';
import { loadBoardFile } from '../load-board-file.ts';
import { loadTreeFile } from '../load-tree-file.ts';
import { progressBar } from '../progress-bar.ts';
import { readOptions } from '../read-options.ts';
import { showFigures } from '../show/show-figures.ts';

export const figures: Command = {
  summary: 'reckon what a tree takes, what the best order would take, and what to change',
  help: `Usage: deadboard figures TREE [--board PATH] [--budget STATES] [--json]

Expected and worst minutes along a tree (its Markdown, or compiled JSON), overall and for
each fault; the best order of the same readings; what the readings can tell apart; and
where the order of the tree loses its minutes. schema/figures.md defines every figure.

  --board PATH      a board sheet: faults count as often as on boards of its class
  --budget STATES   how far to search for the best order; 3000 if not given. Where that
                    is not enough the best that was found and a bound are printed. Ctrl C
                    ends the search at once, with what was found so far
  --json            all figures as JSON

Exit code 0: reckoned; 2: could not run.`,
  run,
};

async function run(args: readonly string[], bench: Bench): Promise<ExitCode> {
  const { values, positionals } = readOptions(args, {
    board: { type: 'string' },
    budget: { type: 'string' },
    json: { type: 'boolean' },
  });
  const [path, ...more] = positionals;
  if (path === undefined || more.length > 0) throw new CannotRun('name one tree');
  const budget = budgetOf(values.budget);
  const tree = await loadTreeFile(bench, path);
  if (tree.faults.length === 0) throw new CannotRun(`"${path}" has no faults: there is nothing to reckon`);
  const board = values.board === undefined ? null : await loadBoardFile(bench, values.board);
  const found = await reckoned(bench, tree, { board, ...budget });
  bench.out(values.json ? JSON.stringify(found, null, 2) : showFigures(tree, found, bench.width));
  return exit.clean;
}

function budgetOf(text: string | undefined): { readonly budget?: number } {
  if (text === undefined) return {};
  if (!/^[1-9]\d{0,8}$/.test(text)) throw new CannotRun(`--budget is a number of states, not "${text}"`);
  return { budget: Number(text) };
}

const reckoned = (
  bench: Bench,
  tree: CompiledTree,
  options: { readonly board: CompiledBoard | null; readonly budget?: number },
): Promise<Figures> =>
  bench.stoppable(async (stopped) => {
    const steps = figuresInSteps(tree, options);
    let step = steps.next(false);
    while (step.done !== true) {
      bench.status(progressBar(step.value, bench.width));
      step = steps.next(await stopped());
    }
    bench.status(null);
    return step.value;
  });
