import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { formatDiagnostic, lineOf } from '../../../engine/diagnostics/index.ts';
import { once } from '../../helpers/once.ts';
import { brokenLines } from './broken-lines.ts';
import { compileFixture } from './compile-fixture.ts';
import { fixtureFolder, fixtureNames, readInput } from './fixtures.ts';

const codes = Object.keys(brokenLines).sort() as readonly (keyof typeof brokenLines)[];
const update = process.env.UPDATE === '1';

/** What is said about each fixture as it stands. */
const said = new Map(codes.map((code) => [code, once(() => compileFixture(code))]));
const saidOf = (code: (typeof codes)[number]) => said.get(code)?.() ?? [];

/** Everything that is told; of a flood, the kind that the fixture is about, and the rest counted. */
function toldAbout(code: (typeof codes)[number], text: string): string {
  const diagnostics = saidOf(code);
  const shown = diagnostics.length <= 20 ? diagnostics : diagnostics.filter((each) => each.code === code);
  const others = diagnostics.length - shown.length;
  return [
    ...shown.map((diagnostic) => formatDiagnostic('input.md', text, diagnostic)),
    ...(others > 0 ? [`and ${others} of other kinds`] : []),
  ]
    .map((part) => `${part}\n`)
    .join('\n');
}

describe('the fixtures of the diagnostics', () => {
  test('are one for each code, and no others', () => {
    expect(fixtureNames()).toEqual(codes);
  });

  test.each(codes)('%s is reported at the line that is broken', (code) => {
    const text = readInput(code);
    const lines = saidOf(code)
      .filter((diagnostic) => diagnostic.code === code)
      .map(({ span }) => lineOf(text, span.from).number);
    expect(lines).toContain(brokenLines[code]);
  });

  test.each(codes)('%s is told as expected', (code) => {
    const path = `${fixtureFolder}/${code}/expected.txt`;
    const told = toldAbout(code, readInput(code));
    if (update) writeFileSync(path, told);
    expect(existsSync(path), `${path} is missing; UPDATE=1 writes it`).toBe(true);
    expect(told).toBe(readFileSync(path, 'utf8'));
  });

  test.each(codes)('%s is gone once its fix is made, if it has one', (code) => {
    const text = readInput(code);
    const found = saidOf(code).filter((diagnostic) => diagnostic.code === code);
    const fixed = found.filter(({ fix }) => fix !== undefined);
    if (fixed.length === 0) return;
    const edits = fixed.flatMap(({ fix }) => fix?.edits ?? []).sort((a, b) => b.from - a.from);
    const mended = edits.reduce(
      (current, { from, to, insert }) => current.slice(0, from) + insert + current.slice(to),
      text,
    );
    const left = compileFixture(code, mended).filter((diagnostic) => diagnostic.code === code);
    expect(left.length).toBeLessThanOrEqual(found.length - fixed.length);
  });
});
