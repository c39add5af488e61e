import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { limits } from '../../source/limits.ts';
import { EditedText } from './edited-text.ts';
import { type FactPair, shiftedPair } from './fact-node.ts';
import { readYaml, type YamlReading } from './read-yaml.ts';
import { remedyFor } from './remedy-for.ts';
import { specialIndents } from './special-indents.ts';
import { tabIndents } from './tab-indents.ts';
import type { Remedy, Trouble } from './trouble.ts';
import { wordsAt } from './value-at.ts';

/** One entry of the facts, read. Places count from its first character. */
export interface ParsedEntry {
  readonly pairs: readonly FactPair[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Characters to parse again after repairs, in all. */
const repairBudget = 256 * 1024;
const mostRepairs = 24;

/**
 * Reads an entry and, where YAML stumbles, repairs a copy and reads again, so that one slip costs neither
 * what stands around it nor the value itself. The repair is what is offered as a fix: it is known to work.
 */
export function parseEntry(text: string): ParsedEntry {
  const { sectionCharacters: limit } = limits;
  if (text.length > limit) {
    const span = wordsAt(text, 0);
    return { pairs: [], diagnostics: [{ code: 'entry-too-large', characters: text.length, limit, span }] };
  }
  return new EntryParser(text).parse();
}

class EntryParser {
  private readonly diagnostics: Diagnostic[] = [];
  private readonly told = new Set<string>();
  private edited: EditedText;

  constructor(text: string) {
    this.edited = new EditedText(text);
  }

  parse(): ParsedEntry {
    this.repairAll(specialIndents(this.edited.text));
    this.repairAll(tabIndents(this.edited.text));
    let reading = readYaml(this.edited.text);
    const rounds = Math.min(mostRepairs, Math.ceil(repairBudget / (this.edited.text.length + 1)));
    for (let round = 0; round < rounds && this.repairFirst(reading); round += 1)
      reading = readYaml(this.edited.text);
    const back = (offset: number): number => this.edited.original(offset);
    const pairs = (reading.pairs ?? []).map((pair) => shiftedPair(pair, back));
    return { pairs, diagnostics: this.diagnostics };
  }

  private repairAll(remedies: readonly Remedy[]): void {
    if (remedies.length === 0) return;
    for (const remedy of remedies) this.tell(remedy);
    this.edited = this.edited.with(remedies.flatMap(({ repair = [] }) => repair));
  }

  /** Tells every trouble up to the first that can be repaired, and repairs that. False if there is none. */
  private repairFirst({ troubles }: YamlReading): boolean {
    const hasErrors = troubles.some(({ kind }) => kind === 'error');
    let stuck = false;
    for (const trouble of inOrder(troubles)) {
      if (stuck && trouble.kind !== 'comment') continue;
      const remedy = remedyFor(trouble, this.edited.text);
      if (remedy === null) continue;
      const isNew = this.tell(remedy);
      if (isNew && remedy.repair !== undefined && remedy.repair.length > 0) {
        this.edited = this.edited.with(remedy.repair);
        return true;
      }
      // What follows an error that could not be repaired follows from it.
      stuck ||= hasErrors && trouble.kind === 'error';
    }
    return false;
  }

  private tell({ facts, span, related, fix }: Remedy): boolean {
    const place = this.back(span);
    const mark = `${facts.code} ${place.from}`;
    if (this.told.has(mark)) return false;
    this.told.add(mark);
    this.diagnostics.push({
      ...facts,
      span: place,
      ...(related && { related: this.back(related) }),
      ...(fix && {
        fix: {
          title: fix.title,
          edits: fix.edits.map((edit) => ({ ...this.back(edit), insert: edit.insert })),
        },
      }),
    });
    return true;
  }

  private back({ from, to }: { readonly from: number; readonly to: number }): { from: number; to: number } {
    const [start, end] = [this.edited.original(from), this.edited.original(to)];
    return { from: start, to: Math.max(start, end) };
  }
}

/** Comments that cut a text first: they may be why a bracket is not closed. Then the parser's errors, then the rest. */
const inOrder = (troubles: readonly Trouble[]): readonly Trouble[] => {
  const rank = ({ kind }: Trouble): number => (kind === 'comment' ? 0 : kind === 'error' ? 1 : 2);
  return troubles.toSorted((a, b) => rank(a) - rank(b) || a.from - b.from);
};
