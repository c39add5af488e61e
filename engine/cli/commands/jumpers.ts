import {
  fittingAllows,
  type Positions,
  parsePositions,
  positionsFor,
  positionsText,
  settingAt,
} from '../../board/index.ts';
import { jumpersOf } from '../../board/jumper-rows.ts';
import { parseSettingValue } from '../../board/parse-setting-value.ts';
import type { CompiledBoard } from '../../model/compiled-board.ts';
import type { Taken } from '../../model/refusal.ts';
import { nearest } from '../../names/nearest.ts';
import { settingText } from '../../scale/index.ts';
import { type Bench, CannotRun, type ExitCode, exit } from '../bench.ts';
import type { Command } from '../command.ts';
import { loadBoardFile } from '../load-board-file.ts';
import { readOptions } from '../read-options.ts';
import { columns } from '../show/columns.ts';
import { showJumpers } from '../show/show-jumpers.ts';

export const jumpers: Command = {
  summary: 'say what jumpers set on a board, and which jumpers set a value',
  help: `Usage: deadboard jumpers BOARD ["POSITIONS"] [--for "SETTING VALUE"] [--filled "SOCKETS"]

Without more, prints the jumper tables of a board sheet.

  "JP12 1-2, JP13 open"   what these positions set
  --for "bus 66 MHz"      every way to set this
  --filled "A, B"         whether these sockets may be filled together

Exit code 0: there is an answer; 1: the sheet does not know; 2: could not run.`,
  run,
};

async function run(args: readonly string[], bench: Bench): Promise<ExitCode> {
  const { values, positionals } = readOptions(args, {
    for: { type: 'string' },
    filled: { type: 'string' },
  });
  const [path, ...typed] = positionals;
  if (path === undefined) throw new CannotRun('name a board sheet');
  const asked = [typed.length > 0, values.for !== undefined, values.filled !== undefined];
  if (asked.filter((each) => each).length > 1)
    throw new CannotRun('ask one thing: positions, --for or --filled');
  const board = await loadBoardFile(bench, path);
  const answer =
    values.for !== undefined
      ? waysTo(board, values.for)
      : values.filled !== undefined
        ? fittingOf(board, values.filled)
        : typed.length > 0
          ? madeBy(board, typed.join(', '))
          : { ok: true as const, value: showJumpers(board) };
  if (answer.ok) {
    bench.out(answer.value);
    return exit.clean;
  }
  const { text, offers } = answer.refusal;
  bench.err(offers.length === 0 ? text : `${text}. It takes: ${offers.join(' | ')}`);
  return exit.problems;
}

/** `bus = 66 MHz` for each setting that these jumpers decide, and what is lacking to know the others. */
function madeBy(board: CompiledBoard, typed: string): Taken<string> {
  const positions = parsePositions(board, typed);
  if (!positions.ok) return positions;
  const named = board.tables.filter((table) =>
    jumpersOf(table).some((jumper) => Object.hasOwn(positions.value, jumper)),
  );
  const found = named.map(({ setting }) => ({ setting, made: settingAt(board, setting, positions.value) }));
  const [first] = found;
  if (first === undefined) return refuse(`No table of this sheet speaks of ${said(board, positions.value)}`);
  if (!first.made.ok && found.every(({ made }) => !made.ok)) return first.made;
  return {
    ok: true,
    value: found
      .map(({ setting, made }) =>
        made.ok ? `${setting} = ${settingText(made.value)}` : `${setting}: ${made.refusal.text}`,
      )
      .join('\n'),
  };
}

const said = ({ jumpers }: CompiledBoard, positions: Positions): string => positionsText(positions, jumpers);

/** `bus 66 MHz`: a line for each way, jumpers in columns. */
function waysTo(board: CompiledBoard, typed: string): Taken<string> {
  const [, name = '', value = ''] = /^\s*([^\s=:]+)\s*[=:]*\s*(.*?)\s*$/.exec(typed) ?? [];
  const settings = board.tables.map(({ setting }) => setting);
  const setting = settings.find((each) => each.toLowerCase() === name.toLowerCase());
  if (setting === undefined) {
    const near = nearest(name.slice(0, 60), settings);
    return refuse(
      `This board sheet has no jumper table for "${name}"`,
      near.length > 0 ? near.map((each) => `${each} ${value}`.trim()) : settings,
    );
  }
  const wanted = parseSettingValue(board, setting, value);
  if (!wanted.ok) return wanted;
  const ways = positionsFor(board, setting, wanted.value);
  if (!ways.ok) return ways;
  const deciding = board.jumpers.filter(({ id }) =>
    board.tables.some((table) => table.setting === setting && jumpersOf(table).includes(id)),
  );
  const rows = ways.value.map(({ at }) => deciding.map(({ id }) => at[id] ?? 'any'));
  return {
    ok: true,
    value: `${setting} = ${settingText(wanted.value)}\n${columns([deciding.map(({ id }) => id), ...rows])}`,
  };
}

/** `memory A, B`, or only the sockets where the board has one group of them. */
function fittingOf({ fittings }: CompiledBoard, typed: string): Taken<string> {
  const words = typed.split(/[\s,+]+/).filter((word) => word !== '');
  const named = fittings.find(({ id }) => id.toLowerCase() === words[0]?.toLowerCase());
  const fitting = named ?? (fittings.length === 1 ? fittings[0] : undefined);
  if (fitting === undefined) {
    return refuse(
      fittings.length === 0
        ? 'This sheet does not say which sockets may be filled'
        : 'Name the group of sockets first',
      fittings.map(({ id, together }) => `${id} ${together[0]?.join(', ') ?? ''}`.trim()),
    );
  }
  const allowed = fittingAllows(fitting, named === undefined ? words : words.slice(1));
  return allowed.ok
    ? { ok: true, value: `${fitting.is}: ${allowed.value.join(' + ')} may be filled together` }
    : allowed;
}

const refuse = (text: string, offers: readonly string[] = []): Taken<never> => ({
  ok: false,
  refusal: { text, offers },
});
