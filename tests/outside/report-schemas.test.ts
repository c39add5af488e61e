import { readdirSync, readFileSync } from 'node:fs';
import sarif from '@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json' with { type: 'json' };
import { Ajv } from 'ajv';
import fc from 'fast-check';
import junitSchema from 'jest-junit-reporter/src/__tests__/fixtures/junit.xsd?raw';
import { XmlDocument, XsdValidator } from 'libxml2-wasm';
import { describe, expect, test } from 'vitest';
import { compileTree } from '../../engine/compile.ts';
import { junitOf, sarifOf } from '../../engine/reports/index.ts';

// found: OASIS "Static Analysis Results Interchange Format (SARIF) Version 2.1.0", its JSON schema (rtm.5) as the package
// @microsoft/jest-sarif carries it. It is written in draft 4, of which it uses nothing that draft 7 reads otherwise.
const { $schema: _draft, id: _id, ...sarifSchema } = sarif;
const validSarif = new Ajv({
  strict: false,
  allErrors: true,
  validateFormats: false,
  unicodeRegExp: false,
}).compile(sarifSchema);

// found: "JUnit test result schema for the Apache Ant JUnit and JUnitReport tasks", Windy Road Technology 2011, as the
// package jest-junit-reporter carries it: the strictest of the forms in use. It is `junitSchema`.

const options = { version: '1.0.0', helpUri: 'https://example.org/schema/diagnostics.md' };

describe('SARIF against its published schema (@microsoft/jest-sarif)', () => {
  test('is valid for every file of the fixtures that has a problem', () => {
    const files = readdirSync('tests/fixtures/diagnostics').map((code) => {
      const path = `tests/fixtures/diagnostics/${code}/input.md`;
      const text = readFileSync(path, 'utf8');
      return { path, text, diagnostics: compileTree(text, { id: 'input' }).diagnostics };
    });
    expect(files.flatMap(({ diagnostics }) => diagnostics).length).toBeGreaterThan(100);
    const valid = validSarif(JSON.parse(sarifOf(files, options)));
    expect(valid, JSON.stringify(validSarif.errors?.slice(0, 3))).toBe(true);
  });

  test('is valid for no files at all', () => {
    expect(validSarif(JSON.parse(sarifOf([], options)))).toBe(true);
  });

  test('is refused once a place is not counted from 1, so the schema is really asked', () => {
    const text = '---\nformat: 1\nkind: tree\n---\n';
    const { diagnostics } = compileTree(text, { id: 'x' });
    const log = JSON.parse(sarifOf([{ path: 'x.md', text, diagnostics }], options));
    log.runs[0].results[0].locations[0].physicalLocation.region.startLine = 0;
    expect(validSarif(log)).toBe(false);
  });
});

describe('JUnit XML against its published schema (jest-junit-reporter)', () => {
  const problemsOf = (text: string): readonly string[] => {
    const schema = XmlDocument.fromString(junitSchema);
    const document = XmlDocument.fromString(text);
    const validator = XsdValidator.fromDoc(schema);
    try {
      validator.validate(document);
      return [];
    } catch (error) {
      return [(error as Error).message];
    } finally {
      validator.dispose();
      document.dispose();
      schema.dispose();
    }
  };
  const at = '2026-03-01T08:00:00.000+01:00';

  test('is valid whatever was tried', () => {
    const word = fc.string({ unit: 'binary' });
    const one = fc.record({
      name: word,
      file: word,
      seconds: fc.option(fc.double({ min: 0, max: 1e6, noNaN: true })),
      failure: fc.option(fc.record({ message: word, text: word })),
    });
    fc.assert(
      fc.property(fc.array(fc.record({ name: word, cases: fc.array(one) })), (suites) => {
        expect(problemsOf(junitOf(suites, at))).toEqual([]);
      }),
    );
  });

  test('is refused without a time, so the schema is really asked', () => {
    expect(problemsOf(junitOf([{ name: 'x', cases: [] }], 'today'))).not.toEqual([]);
  });
});
