import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { junitOf } from '../../../engine/reports/index.ts';
import { parsedXml } from '../../helpers/xml.ts';

const at = '2026-03-01T08:00:00.000+01:00';
const passed = { name: 'Cold joint', file: 'cases/cold-joint.md', seconds: 0.25, failure: null };
const failed = {
  name: 'Weak "reference"',
  file: 'cases/weak.md',
  seconds: null,
  failure: { message: 'Leads to <Crystal>', text: 'Parted at Clocks\r\n& went on' },
};

const attribute = (text: string, path: string): string | undefined =>
  parsedXml(text, (document) => document.get(path)?.content);

describe('junitOf()', () => {
  const text = junitOf([{ name: 'cases', cases: [passed, failed] }], at);

  test('counts what was tried and what failed, and adds up the time', () => {
    expect(attribute(text, '/testsuites/testsuite/@tests')).toBe('2');
    expect(attribute(text, '/testsuites/testsuite/@failures')).toBe('1');
    expect(attribute(text, '/testsuites/testsuite/@time')).toBe('0.250');
  });

  test('tells when it ran, without a time zone', () => {
    expect(attribute(text, '/testsuites/testsuite/@timestamp')).toBe('2026-03-01T08:00:00');
  });

  test('tells of a failure what is wrong and where, as it was said', () => {
    expect(attribute(text, '//testcase[2]/@name')).toBe(failed.name);
    expect(attribute(text, '//failure/@message')).toBe(failed.failure.message);
    expect(attribute(text, '//failure')).toBe(failed.failure.text);
  });

  test('is well-formed, whatever the words', () => {
    const word = fc.string({ unit: 'binary' });
    fc.assert(
      fc.property(word, word, word, word, (name, file, message, more) => {
        const said = junitOf(
          [{ name, cases: [{ name, file, seconds: 1, failure: { message, text: more } }] }],
          at,
        );
        expect(attribute(said, '/testsuites/testsuite/@tests')).toBe('1');
      }),
      { numRuns: 500 },
    );
  });
});
