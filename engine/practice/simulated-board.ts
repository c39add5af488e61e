import type { CompiledBoard } from '../model/compiled-board.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { BoardState } from '../model/entry.ts';
import type { Equipment } from '../model/instrument.ts';
import type { Observation } from '../model/observation.ts';
import { usualOdds } from '../model/odds.ts';
import type { Present, Twin } from '../model/present.ts';
import type { Reading } from '../model/reading.ts';
import { fromStored } from '../quantity/index.ts';
import { openSession } from '../run/index.ts';
import { bandsOf, deriveObservation, normalBandsOf, observe } from '../scale/index.ts';
import { usesTwin } from '../scale/settings-of.ts';
import { healthy } from '../suspects/unlisted-fault.ts';
import { asShown } from './as-shown.ts';
import { diceOf } from './dice.ts';
import { DrawnBands } from './drawn-bands.ts';
import type { DrillPlan } from './drill.ts';
import { type Hidden, hiddenIn } from './hidden-in.ts';
import { showBand } from './show-band.ts';
import { type ValueGroup, valueGroups } from './value-groups.ts';

/** One reading as it was taken. */
export interface Taking {
  readonly band: string;
  readonly typed: string;
  readonly board: BoardState;
}

/** How often a board with a fault that comes and goes runs while a reading is taken. */
export const runningShare = 0.25;

/** How often values that belong together are drawn anew until what is computed from them comes out as it should. */
const mostTogether = 60;

/** A board with a hidden fault. It answers the same whenever it is asked the same, in whatever order. */
export class SimulatedBoard {
  readonly hidden: Hidden;
  /** What its values are shown by: the known-good board's are all known here. */
  readonly present: Present;
  readonly #tree: CompiledTree;
  readonly #seed: number;
  readonly #equipment: Equipment;
  readonly #readings: ReadonlyMap<string, Reading>;
  /** What it shows while it fails, while it runs, and once it is mended. */
  readonly #bands: Readonly<Record<BoardState | 'mended', DrawnBands>>;
  readonly #values = new Map<string, string>();

  /** @param tree fitted to `sheet` */
  constructor(plan: DrillPlan, tree: CompiledTree, sheet: CompiledBoard | null, equipment: Equipment) {
    this.hidden = hiddenIn(plan, tree);
    this.#tree = tree;
    this.#seed = plan.seed;
    this.#equipment = equipment;
    this.#readings = new Map(tree.readings.map((reading) => [reading.id, reading]));
    const running = new DrawnBands(tree, healthy, plan.seed, 'running');
    this.#bands = {
      failing: this.hidden.bands,
      running,
      mended: new DrawnBands(tree, healthy, plan.seed, 'mended'),
    };
    this.present = this.#presentWith(sheet);
  }

  /** @param again at which taking of this reading it is, from 0 */
  take(id: string, again: number, board: BoardState = this.stateAt(id, again)): Taking {
    const reading = this.#readings.get(id);
    if (reading === undefined) return { band: '', typed: '', board };
    const slipped = this.#slip(reading, again);
    const band = slipped ?? this.#bands[board].bandOf(id);
    const typed =
      slipped === null ? this.#value(reading, board, again) : this.#draw(reading, slipped, ['slip', again]);
    return { band, typed, board };
  }

  /** What the board does while a reading is taken. */
  stateAt(id: string, again: number): BoardState {
    const isFitful = this.hidden.fault.comes === 'sometimes';
    return isFitful && diceOf(this.#seed, ['state', id, again]).share() < runningShare
      ? 'running'
      : 'failing';
  }

  /** The same reading once the board is mended: normal. */
  mended(id: string): string {
    const reading = this.#readings.get(id);
    return reading === undefined ? '' : this.#value(reading, 'mended', 0);
  }

  /** Without a slip: a proof is taken with care. */
  proven(id: string): string {
    const reading = this.#readings.get(id);
    return reading === undefined ? '' : this.#value(reading, 'failing', 0);
  }

  /** The same reading on a known-good board. */
  twin(id: string): string {
    const reading = this.#readings.get(id);
    if (reading === undefined) return '';
    const known = this.present.twins.get(id)?.value ?? reading.usual;
    if (known !== null && reading.measure.kind === 'quantity') {
      return asShown(fromStored(known).valueOf(), reading.measure.unit, null);
    }
    const [band = bandsOf(reading)[0] ?? ''] = normalBandsOf(reading);
    return this.#draw(reading, band, ['twin']);
  }

  /** A band that somebody read by mistake; null where nothing slipped. */
  #slip(reading: Reading, again: number): string | null {
    const dice = diceOf(this.#seed, ['slip', reading.id, again]);
    const { slip } = this.#tree.odds ?? usualOdds;
    return dice.share() < slip ? dice.of(bandsOf(reading)) : null;
  }

  #value(reading: Reading, board: BoardState | 'mended', again: number): string {
    const group = valueGroups(this.#tree).get(reading.id);
    if (group !== undefined) {
      const texts = this.#together(group, board);
      return texts.get(reading.id) ?? '';
    }
    return this.#draw(reading, this.#bands[board].bandOf(reading.id), [board], again);
  }

  #draw(reading: Reading, band: string, name: readonly (string | number)[], again = 0): string {
    const dice = (draw: number) => diceOf(this.#seed, ['value', ...name, reading.id, draw]);
    const noise = again === 0 ? null : diceOf(this.#seed, ['noise', ...name, reading.id, again]);
    const bench = { present: this.present, equipment: this.#equipment };
    return showBand(reading, band, bench, dice, noise);
  }

  /** Values from which everything that is computed comes out in the band that was drawn for it. */
  #together(group: ValueGroup, board: BoardState | 'mended'): ReadonlyMap<string, string> {
    const bands = this.#bands[board];
    const isKept = group.inputs.every(({ id }) => this.#values.has(`${board} ${id}`));
    let texts = new Map<string, string>();
    for (let draw = 0; !isKept && draw < mostTogether; draw += 1) {
      texts = new Map(
        group.inputs.map((input) => [input.id, this.#draw(input, bands.bandOf(input.id), [board, draw])]),
      );
      if (this.#comesOut(group, texts, bands)) break;
    }
    for (const [id, text] of texts) this.#values.set(`${board} ${id}`, text);
    return new Map(group.inputs.map(({ id }) => [id, this.#values.get(`${board} ${id}`) ?? '']));
  }

  #comesOut({ inputs, derived }: ValueGroup, texts: ReadonlyMap<string, string>, bands: DrawnBands): boolean {
    const seen = new Map<string, Observation>();
    for (const input of inputs) {
      const observed = observe(input, this.present, texts.get(input.id) ?? '', this.#equipment);
      if (observed.ok) seen.set(input.id, observed.value);
    }
    return derived.every((reading) => {
      const found = deriveObservation(reading, this.present, (id) => seen.get(id) ?? null, 'simple');
      seen.set(reading.id, found);
      return found.bands.includes(bands.bandOf(reading.id));
    });
  }

  #presentWith(sheet: CompiledBoard | null): Present {
    const { sets } = this.hidden.fault;
    const settings = new Map(this.#tree.settings.map(({ id, usual }) => [id, sets[id] ?? usual]));
    const { twins } = openSession(this.#tree, { board: sheet, laterTrees: [] });
    const present: Present = { settings, twins };
    const unknown = this.#tree.readings.filter(
      (reading) => usesTwin(reading) && !twins.has(reading.id) && reading.usual === null,
    );
    const bench = { present, equipment: this.#equipment };
    const invented = unknown.flatMap((reading): [string, Twin][] => {
      const [normal = ''] = normalBandsOf(reading);
      const dice = (draw: number) => diceOf(this.#seed, ['twin', reading.id, draw]);
      const seen = observe(reading, present, showBand(reading, normal, bench, dice, null));
      return seen.ok && seen.value.understood.kind === 'quantity'
        ? [[reading.id, { value: seen.value.understood.quantity, from: 'this job' }]]
        : [];
    });
    return { settings, twins: new Map([...twins, ...invented]) };
  }
}
