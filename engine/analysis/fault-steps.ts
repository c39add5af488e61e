import type { Fault } from '../model/fault.ts';
import type { Need } from '../model/reading.ts';
import type { CallSection, CheckSection, FaultSection, Section, TaskSection } from '../model/section.ts';
import { type Draw, type Drawn, type Draws, drawsOf } from '../suspects/draws.ts';
import type { PossibleBands } from '../suspects/possible-bands.ts';
import type { AstrayHow, Held } from './fault-walk.ts';
import { kept } from './kept.ts';
import type { Ground } from './walk-ground.ts';

/** Where a walk stands: what has come out so far of what still decides something, and the conditions of the board. */
export interface Standing {
  readonly section: string;
  readonly drawn: Drawn;
  readonly conditions: Readonly<Record<string, string>>;
}

export interface End {
  /** `not-followed` where there were too many ways. */
  readonly how: AstrayHow | 'arrived' | 'not-followed';
  readonly section: string;
  readonly held: Held | null;
}

/** One way on from a section, or its end. */
export interface Step {
  readonly share: number;
  readonly to: Standing | End;
  /** What decided it. */
  readonly by: readonly { readonly name: string; readonly band: string }[];
}

export const isEnd = (to: Standing | End): to is End => 'how' in to;

/** How a board with one fault leads from section to section. */
export class FaultSteps {
  readonly #ground: Ground;
  readonly #fault: Fault;
  readonly #draws: Draws;
  readonly #options: ReadonlyMap<string, readonly string[]>;
  /** By what is drawn, the names whose bands depend on it. */
  readonly #leaves = new Map<string, string[]>();
  /** By what is drawn, the sections from which it still decides something. */
  readonly #ahead = new Map<string, ReadonlySet<string>>();
  readonly #needs: ReadonlyMap<string, readonly Need[]>;
  readonly #when: ReadonlyMap<string, Readonly<Record<string, string>>>;

  constructor(ground: Ground, fault: Fault, possible: PossibleBands) {
    const { readings, settings } = ground.tree;
    this.#ground = ground;
    this.#fault = fault;
    this.#draws = drawsOf(ground.tree, fault, possible, ground.alike);
    this.#options = new Map(
      settings.flatMap((setting) => {
        const made = fault.sets[setting.id];
        if (setting.kind !== 'options') return [];
        return [
          [setting.id, typeof made === 'string' ? [made] : setting.options.map(({ name }) => name)] as const,
        ];
      }),
    );
    this.#needs = new Map(readings.map(({ id, onlyIf }) => [id, onlyIf]));
    this.#when = new Map(readings.map(({ id, when }) => [id, when]));
    for (const name of ground.deciding) {
      for (const root of this.#options.has(name) ? [name] : this.#draws.roots(name)) {
        const leaves = this.#leaves.get(root);
        if (leaves === undefined) this.#leaves.set(root, [name]);
        else leaves.push(name);
      }
    }
  }

  /** Where its walks begin: the first section, the symptom as given. Empty where the fault cannot show it. */
  starts(): readonly Draw[] {
    let draws: readonly Draw[] = [{ drawn: new Map(), share: 1 }];
    for (const { reading, band } of this.#ground.tree.given) {
      draws = this.#eachDraw([reading], draws).filter(({ drawn }) => this.#bandOf(reading, drawn) === band);
    }
    const sum = draws.reduce((total, { share }) => total + share, 0);
    return draws.map(({ drawn, share }) => ({ drawn, share: share / sum }));
  }

  /** The same standing, with what decides nothing any more left out. */
  settled(standing: Standing): Standing {
    const { section, drawn } = standing;
    const left = [...drawn].filter(([root]) => this.#aheadOf(root).has(section));
    return left.length === drawn.size ? standing : { ...standing, drawn: new Map(left) };
  }

  #aheadOf(root: string): ReadonlySet<string> {
    return kept(this.#ahead, root, () => {
      const each = (this.#leaves.get(root) ?? []).map((name) => this.#ground.ahead(name));
      return each.length === 1 && each[0] ? each[0] : new Set(each.flatMap((sections) => [...sections]));
    });
  }

  /** The ways on from a standing; their shares add up to 1. */
  from(standing: Standing): readonly Step[] {
    const section = this.#ground.sections.get(standing.section);
    if (section === undefined) return [this.#end(standing.section, 'nowhere')];
    return this.#kinds[section.kind](section as never, standing);
  }

  readonly #kinds: {
    readonly [Kind in Section['kind']]: (
      section: Extract<Section, { readonly kind: Kind }>,
      standing: Standing,
    ) => readonly Step[];
  } = {
    check: (check, standing) => this.#check(check, standing),
    task: (task, standing) => this.#task(task, standing),
    call: (call, standing) => this.#call(call, standing),
    fault: (section, standing) => this.#faultSection(section, standing),
    stop: ({ id }) => [this.#end(id, 'stop')],
    'hand-over': ({ id }) => [this.#end(id, 'hand-over')],
  };

  #check(check: CheckSection, standing: Standing): readonly Step[] {
    const wrong = this.#wrongCondition(check.readings, standing);
    if (wrong !== null) return [this.#end(check.id, 'held', wrong)];
    const needs = check.readings.flatMap((id) => this.#needs.get(id) ?? []);
    return this.#ifSeen(needs, check.id, standing, (draw) => this.#outcomes(check, draw, standing));
  }

  /** Lets come out only what the lines ask for, one line after the other: fewer ways than all that the check reads. */
  #outcomes(check: CheckSection, draw: Draw, standing: Standing): readonly Step[] {
    const names = [
      ...new Set(
        check.outcomes.flatMap(({ condition }) =>
          condition.kind === 'bands' ? Object.keys(condition.bands) : [],
        ),
      ),
    ];
    const steps: Step[] = [];
    let open: readonly Draw[] = [draw];
    for (const { condition, target } of check.outcomes) {
      if (condition.kind === 'unread') continue;
      const others: Draw[] = [];
      let fitting = open;
      for (const [name, bands] of condition.kind === 'bands' ? Object.entries(condition.bands) : []) {
        const inside: Draw[] = [];
        for (const each of this.#eachDraw([name], fitting)) {
          const fits = bands.includes(this.#bandOf(name, each.drawn) ?? '');
          (fits ? inside : others).push(each);
        }
        fitting = inside;
      }
      for (const { drawn, share } of fitting)
        steps.push({ share, by: this.#said(names, drawn), to: { ...standing, section: target, drawn } });
      open = others;
    }
    for (const { drawn, share } of open)
      steps.push({ ...this.#end(check.id, 'nowhere'), share, by: this.#said(names, drawn) });
    return steps;
  }

  #said(names: readonly string[], drawn: Drawn): Step['by'] {
    return names.flatMap((name) => {
      const band = this.#bandOf(name, drawn);
      return band === undefined ? [] : [{ name, band }];
    });
  }

  #task({ id, target, sets, onlyIf }: TaskSection, standing: Standing): readonly Step[] {
    const set = Object.entries(sets).filter(([condition]) => this.#ground.conditions.includes(condition));
    const conditions = { ...standing.conditions, ...Object.fromEntries(set) };
    return this.#ifSeen(onlyIf, id, standing, ({ drawn, share }) => [
      { share, by: [], to: { section: target, drawn, conditions } },
    ]);
  }

  /** A procedure is entered, unless the fault says how it ends. */
  #call({ id, first, ends }: CallSection, standing: Standing): readonly Step[] {
    if (!this.#fault.shows.some(({ reading }) => reading === id))
      return [{ share: 1, by: [], to: { ...standing, section: first } }];
    return this.#draws.draw(id, standing.drawn).map(({ drawn, share }) => {
      const band = this.#bandOf(id, drawn) ?? '';
      const target = ends.find(({ end }) => end === band)?.target;
      const by = [{ name: id, band }];
      if (target === undefined) return { ...this.#end(id, 'nowhere'), share, by };
      return { share, by, to: { ...standing, section: target, drawn } };
    });
  }

  #faultSection({ id, remedies, onlyIf }: FaultSection, standing: Standing): readonly Step[] {
    if (!remedies.some(({ fault }) => fault === this.#fault.id)) return [this.#end(id, 'other-fault')];
    return this.#ifSeen([...onlyIf, ...this.#fault.onlyIf], id, standing, ({ share }) => [
      { ...this.#end(id, 'arrived'), share },
    ]);
  }

  /** Goes on where everything that must have been seen comes out as it must. Whether it was seen on the way does not matter: it
   *  can be read on the spot. */
  #ifSeen(
    needs: readonly Need[],
    section: string,
    standing: Standing,
    goOn: (draw: Draw) => readonly Step[],
  ): readonly Step[] {
    let draws: readonly Draw[] = [{ drawn: standing.drawn, share: 1 }];
    const held: Step[] = [];
    for (const { reading, bands } of needs) {
      draws = this.#eachDraw([reading], draws).filter(({ drawn, share }) => {
        const band = this.#bandOf(reading, drawn) ?? '';
        if (bands.includes(band)) return true;
        held.push({ ...this.#end(section, 'held', { kind: 'only-if', reading, band }), share });
        return false;
      });
    }
    return [...held, ...draws.flatMap(goOn)];
  }

  #wrongCondition(readings: readonly string[], { conditions }: Standing): Held | null {
    for (const reading of readings) {
      for (const [condition, value] of Object.entries(this.#when.get(reading) ?? {})) {
        const now = conditions[condition];
        if (now !== undefined && now !== value) return { kind: 'when', reading, condition, value };
      }
    }
    return null;
  }

  #eachDraw(names: readonly string[], from: readonly Draw[]): readonly Draw[] {
    return names.reduce<readonly Draw[]>(
      (draws, name) =>
        draws.flatMap(({ drawn, share }) =>
          this.#drawOne(name, drawn).map((next) => ({ drawn: next.drawn, share: share * next.share })),
        ),
      from,
    );
  }

  #drawOne(name: string, drawn: Drawn): readonly Draw[] {
    const options = this.#options.get(name);
    if (options === undefined) return this.#draws.draw(name, drawn);
    if (drawn.has(name)) return [{ drawn, share: 1 }];
    return options.map((option) => ({
      drawn: new Map(drawn).set(name, option),
      share: 1 / options.length,
    }));
  }

  #bandOf(name: string, drawn: Drawn): string | undefined {
    return this.#options.has(name) ? drawn.get(name) : this.#draws.bandOf(name, drawn);
  }

  #end(section: string, how: End['how'], held: Held | null = null): Step {
    return { share: 1, by: [], to: { how, section, held } };
  }
}
