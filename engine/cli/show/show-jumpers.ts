import { jumpersOf } from '../../board/jumper-rows.ts';
import type { CompiledBoard, Fitting, JumperTable } from '../../model/compiled-board.ts';
import { settingText } from '../../scale/index.ts';
import { columns } from './columns.ts';

/** Every jumper of a board, what its positions set, and which sockets may be filled together. */
export function showJumpers({ title, jumpers, tables, fittings }: CompiledBoard): string {
  return [
    title,
    ...(jumpers.length > 0
      ? [`Jumpers\n${columns(jumpers.map(({ id, is, positions }) => [id, positions.join(' | '), is]))}`]
      : ['This sheet has no jumpers']),
    ...tables.map(showTable),
    ...fittings.map(showFitting),
  ].join('\n\n');
}

/** A row for each line of the sheet; a jumper that it does not name may sit anywhere. */
function showTable(table: JumperTable): string {
  const deciding = jumpersOf(table);
  const rows = table.rows.map(({ at, value }) => [
    ...deciding.map((jumper) => at[jumper] ?? 'any'),
    settingText(value),
  ]);
  return `${table.setting}\n${columns([[...deciding, ''], ...rows])}`;
}

const showFitting = ({ is, sockets, together }: Fitting): string =>
  `${is}: ${sockets.join(', ')}\n${together.map((group) => `  ${group.join(' + ')}`).join('\n')}`;
