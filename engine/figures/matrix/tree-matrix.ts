import type { CompiledBoard } from '../../model/compiled-board.ts';
import type { CompiledTree } from '../../model/compiled-tree.ts';
import { arrangingOf } from '../../next/index.ts';
import { faultShares } from '../fault-shares.ts';
import type { Cell, Matrix, MatrixColumn, MatrixRow } from '../order/matrix.ts';
import { columnsOf, type TreeColumn, type Which } from './columns-of.ts';
import { type FaultRows, faultRows, type Showing } from './fault-rows.ts';
import { mergedBands } from './merged-bands.ts';

/** A tree as a matrix of faults against readings. */
export interface TreeMatrix {
  readonly matrix: Matrix;
  /** In the order of the matrix's columns. */
  readonly columns: readonly TreeColumn[];
  /** By column, the bands of a reading as the matrix numbers them. */
  readonly bands: readonly ReadonlyMap<string, number>[];
  /** The place of each row's fault in the tree's list. */
  readonly faultOf: readonly number[];
  /** Faults by what they are told apart as: those of one section are one. Places in the tree's list. */
  readonly groups: readonly (readonly number[])[];
  /** Readings that are taken to say nothing of a fault although it may show something. */
  readonly silent: readonly { readonly fault: string; readonly readings: readonly string[] }[];
}

/** @param together faults that share a section need not be told apart; else each is for itself */
export function treeMatrix(
  tree: CompiledTree,
  board: CompiledBoard | null,
  which: Which,
  together = true,
): TreeMatrix {
  const columns = columnsOf(tree, which);
  const ids = columns.flatMap(({ id, reading }) => (reading === null ? [] : [id]));
  const each = tree.faults.map((fault) => faultRows(tree, fault, ids));
  const groups = together ? groupsOf(tree) : tree.faults.map((_, place) => [place]);
  const shares = faultShares(tree, board);
  const all = each.flatMap(({ rows }, place) =>
    rows
      .map(({ share, shows }) => ({ place, weight: share * (shares[place] ?? 0), shows }))
      .filter(({ weight }) => weight > 0),
  );
  // What is normal and what is not is told apart as well: that detects a fault.
  const needs = columns.flatMap(({ only, id, reading }) =>
    reading === null || reading.normal === 'any' ? only : [...only, { reading: id, bands: reading.normal }],
  );
  const bands = columns.map(({ id }) =>
    mergedBands(
      id,
      all.map(({ shows }) => shows.get(id) ?? null),
      needs,
    ),
  );
  const rows = all.map(
    ({ place, weight, shows }): MatrixRow => ({
      weight,
      fault: groups.findIndex((group) => group.includes(place)),
      cells: columns.map(({ id, reading }, at) =>
        reading === null ? 0 : cellOf(shows.get(id) ?? null, bands[at] as ReadonlyMap<string, number>),
      ),
    }),
  );
  const start = Object.fromEntries(tree.conditions.map(({ id, values }) => [id, values[0] ?? '']));
  return {
    matrix: {
      rows,
      columns: columns.map((column) => matrixColumn(column, columns, bands)),
      arranging: arrangingOf(tree, start),
    },
    columns,
    bands,
    faultOf: all.map(({ place }) => place),
    groups,
    silent: tree.faults.flatMap(({ id }, place) => {
      const { silent } = each[place] as FaultRows;
      return silent.length === 0 ? [] : [{ fault: id, readings: silent }];
    }),
  };
}

/** Faults that share a section. */
function groupsOf({ faults, sections }: CompiledTree): readonly (readonly number[])[] {
  const home = new Map(
    sections.flatMap((section) =>
      section.kind === 'fault' ? section.remedies.map(({ fault }) => [fault, section.id] as const) : [],
    ),
  );
  const groups = new Map<string, number[]>();
  for (const [place, { id }] of faults.entries()) {
    const key = home.get(id) ?? ` ${id}`;
    const others = groups.get(key);
    if (others === undefined) groups.set(key, [place]);
    else others.push(place);
  }
  return [...groups.values()];
}

function cellOf(shows: Showing, bands: ReadonlyMap<string, number>): Cell {
  if (shows === null) return null;
  const shares = new Map<number, number>();
  for (const { band, share } of shows) {
    const at = bands.get(band) ?? 0;
    shares.set(at, (shares.get(at) ?? 0) + share);
  }
  const [only] = shares;
  if (shares.size === 1 && only !== undefined) return only[0];
  return [...shares].map(([band, share]) => ({ band, share }));
}

function matrixColumn(
  { minutes, wait, after, only, when }: TreeColumn,
  columns: readonly TreeColumn[],
  bands: readonly ReadonlyMap<string, number>[],
): MatrixColumn {
  const placeOf = (id: string): number => columns.findIndex((column) => column.id === id);
  return {
    minutes: minutes + wait,
    after: after.map(placeOf),
    only: only.map((need) => {
      const column = placeOf(need.reading);
      const numbers = need.bands.flatMap((band) => bands[column]?.get(band) ?? []);
      return { column, bands: [...new Set(numbers)] };
    }),
    when,
  };
}
