import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compileTree } from '../../../engine/compile.ts';
import { sarifOf } from '../../../engine/reports/index.ts';
import { uriOf } from '../../../engine/reports/uri-of.ts';

const options = { version: '1.2.3', helpUri: 'https://example.org/diagnostics.md' };

const text = [
  '---',
  'format: 1',
  'kind: tree',
  'title: "𝒱 Board"',
  'symptom: Nothing moves',
  'boards: [486]',
  'readings:',
  '  v5: { is: 5 V at the slot, unit: V, expect: 5 V ± 5 %, source: common practice }',
  'faults:',
  '  fuse: { is: The fuse has blown, shows: { v5: low }, source: common practice }',
  '---',
  '',
  '## Five volts',
  '',
  '𝒱 Read `v5`.',
  '',
  'Read `v5`.',
  '',
  '- low → [Fuse](#fues)',
  '- otherwise → [Fuse](#fuse)',
  '',
  '## Fuse',
  '',
  'Fault `fuse`.',
  '',
  'Fit one.',
  '',
  '## Fuse',
  '',
  'Stop: Twice.',
  '',
].join('\r\n');

const logOf = (path: string, content: string) => {
  const { diagnostics } = compileTree(content, { id: 'x' });
  const log = JSON.parse(sarifOf([{ path, text: content, diagnostics }], options));
  return { diagnostics, run: log.runs[0] };
};

describe('sarifOf()', () => {
  const { diagnostics, run } = logOf('trees/five volts.md', text);

  test('has a result for every diagnostic, with the rule it names', () => {
    expect(diagnostics.length).toBeGreaterThan(2);
    expect(run.results.map(({ ruleId }: { ruleId: string }) => ruleId)).toEqual(
      diagnostics.map(({ code }) => code),
    );
    for (const { ruleId, ruleIndex } of run.results) expect(run.tool.driver.rules[ruleIndex].id).toBe(ruleId);
  });

  test('counts lines and columns from 1, and columns in UTF-16 units', () => {
    const lines = text.split('\r\n');
    for (const { locations } of run.results) {
      const { startLine, startColumn, endLine, endColumn, charOffset, charLength } =
        locations[0].physicalLocation.region;
      const from =
        lines.slice(0, startLine - 1).join('\r\n').length + (startLine > 1 ? 2 : 0) + startColumn - 1;
      const to = lines.slice(0, endLine - 1).join('\r\n').length + (endLine > 1 ? 2 : 0) + endColumn - 1;
      expect([from, to - from]).toEqual([charOffset, charLength]);
    }
    expect(run.columnKind).toBe('utf16CodeUnits');
  });

  test('tells the other place that belongs to a problem', () => {
    const twice = run.results.find((result: { relatedLocations?: unknown }) => result.relatedLocations);
    expect(twice.relatedLocations[0].physicalLocation.region.startLine).toBe(22);
  });

  test('carries a fix whose edits mend the text', () => {
    const fixed = run.results.find((result: { fixes?: unknown }) => result.fixes);
    const [{ deletedRegion, insertedContent }] = fixed.fixes[0].artifactChanges[0].replacements;
    const from = deletedRegion.charOffset;
    const mended = text.slice(0, from) + insertedContent.text + text.slice(from + deletedRegion.charLength);
    expect(mended).toContain('[Fuse](#fuse)');
    expect(mended).not.toContain('#fues');
  });

  test('gives every rule words and the address of the page that explains it', () => {
    for (const rule of run.tool.driver.rules) {
      expect(rule.help.text).toMatch(/^For example: [A-Z"].+\.$/);
      expect(rule.helpUri).toBe(options.helpUri);
    }
  });

  test('names a file without problems among the artifacts', () => {
    const log = JSON.parse(sarifOf([{ path: 'a.md', text: '', diagnostics: [] }], options));
    expect(log.runs[0].artifacts[0].location.uri).toBe('a.md');
    expect(log.runs[0].results).toEqual([]);
  });

  test('says the same of the same files', () => {
    expect(JSON.stringify(logOf('a.md', text))).toBe(JSON.stringify(logOf('a.md', text)));
  });
});

describe('uriOf()', () => {
  test.each([
    ['trees/a b.md', 'trees/a%20b.md'],
    ['../x#1.md', '../x%231.md'],
    ['trees\\größe.md', 'trees/gr%C3%B6%C3%9Fe.md'],
    ['/home/x.md', 'file:///home/x.md'],
    ['C:\\bench\\x.md', 'file:///C:/bench/x.md'],
    ['12:30.md', '12%3A30.md'],
  ])('%s is %s', (path, uri) => {
    expect(uriOf(path)).toBe(uri);
  });

  test('is an address that resolves, whatever the name of the file', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', minLength: 1 }), (path) => {
        expect(() => new URL(uriOf(path), 'file:///bench/')).not.toThrow();
      }),
    );
  });
});
