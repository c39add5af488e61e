import { parseInstrument } from '../../doubt/index.ts';
import type { Instrument } from '../../model/instrument.ts';
import type { Taken } from '../../model/refusal.ts';
import { nearest } from '../../names/nearest.ts';
import { observe } from '../../scale/index.ts';
import type { Session } from '../session.ts';
import { type Answering, happened, refused } from './answering.ts';

const form = ['bench meter (meter): 6 V ± (0.5 % + 2) at 1 mV'];

export const equip: Answering<'equip'> = ({ equipment }, { instruments, lacking, rule }) => {
  if (instruments === null && lacking === null && rule === null) return refused('Nothing was said', form);
  const read =
    instruments === null ? { ok: true as const, value: equipment.instruments } : readAll(instruments);
  if (!read.ok) return read;
  const tools = lacking?.map((tool) => tool.trim()).filter((tool) => tool !== '');
  return happened({
    kind: 'equipped',
    equipment: {
      instruments: read.value,
      lacking: tools === undefined ? equipment.lacking : [...new Set(tools)],
      rule: rule ?? equipment.rule,
    },
  });
};

function readAll(lines: readonly string[]): Taken<readonly Instrument[]> {
  const found: Instrument[] = [];
  for (const line of lines.filter((text) => text.trim() !== '')) {
    const read = parseInstrument(line);
    if (!read.ok) return read;
    if (found.some(({ name }) => name === read.value.name)) {
      return refused(`Two instruments are called "${read.value.name}": give each a name of its own`);
    }
    found.push(read.value);
  }
  return { ok: true, value: found };
}

export const twin: Answering<'twin'> = (session, { reading: id, typed }) => {
  const reading = session.loaded.readings.get(id);
  if (reading === undefined) {
    return refused(
      `This tree has no reading "${id}"`,
      nearest(id.slice(0, 60), [...session.loaded.readings.keys()]),
    );
  }
  if (reading.measure.kind !== 'quantity') {
    return refused(`"${id}" has no value that a known-good board could lend: only quantities have`);
  }
  const seen = observe(reading, session, typed, session.equipment);
  if (!seen.ok) return seen;
  return seen.value.understood.kind === 'quantity'
    ? happened({ kind: 'twin', observation: seen.value })
    : refused(`"${typed.trim()}" is not one value: what the known-good board shows is a single quantity`);
};

export const arrange: Answering<'arrange'> = (session, { conditions }, question) => {
  const asked =
    question.ask === 'arrange'
      ? Object.fromEntries(question.changes.map(({ condition, wanted }) => [condition, wanted]))
      : null;
  const wanted = conditions ?? asked;
  if (wanted === null) return refused('No other condition is asked for now', examplesOf(session));
  if (Object.keys(wanted).length === 0) return refused('No condition was named', examplesOf(session));
  for (const [id, value] of Object.entries(wanted)) {
    const found = session.loaded.tree.conditions.find((condition) => condition.id === id);
    if (found === undefined) return refused(`This tree knows no condition "${id}"`, examplesOf(session));
    if (!found.values.includes(value)) {
      const offers = found.values.map((each) => `arrange ${id} ${each}`);
      return refused(`"${id}" is never "${value}"`, offers);
    }
  }
  return happened({ kind: 'arranged', conditions: wanted });
};

const examplesOf = ({ loaded }: Session): readonly string[] =>
  loaded.tree.conditions
    .flatMap(({ id, values }) => values.map((value) => `arrange ${id} ${value}`))
    .slice(0, 6);

export const runs: Answering<'runs'> = (session, { touched }) => {
  if (!session.opened || session.closed !== null) return refused('No job is open');
  return touched.trim() === ''
    ? refused('Say what was touched last', ['runs: the memory in bank 0'])
    : happened({ kind: 'runs', touched: touched.trim(), undone: 'not tried' });
};

export const undone: Answering<'undone'> = ({ entries }, { undone: result }) => {
  const last = entries.findLast((entry) => entry.kind === 'runs');
  return last === undefined
    ? refused('Nobody said yet that the board runs', ['runs: what was touched'])
    : happened({ kind: 'runs', touched: last.touched, undone: result });
};
