import { type Element, element, printXml } from '../markup/index.ts';

/** One thing that was tried. */
export interface ReportCase {
  readonly name: string;
  /** The file it comes from. */
  readonly file: string;
  /** Null where nobody took the time. */
  readonly seconds: number | null;
  readonly failure: { readonly message: string; readonly text: string } | null;
}

export interface ReportSuite {
  readonly name: string;
  readonly cases: readonly ReportCase[];
}

/**
 * Results as JUnit XML in its strict form, the one that the tasks of Apache Ant write and that the published schema
 * describes: times and a host are demanded, so what nobody measured is 0 and the host is `localhost`.
 * @param at when it ran: ISO 8601, of which the first nineteen characters are taken (the schema wants no time zone)
 */
export const junitOf = (suites: readonly ReportSuite[], at: string): string =>
  printXml(
    element(
      'testsuites',
      {},
      suites.map((suite, index) => suiteElement(suite, index, at.slice(0, 19))),
    ),
  );

function suiteElement({ name, cases }: ReportSuite, index: number, timestamp: string): Element {
  return element(
    'testsuite',
    {
      id: index,
      name: named(name, 'suite'),
      package: 'deadboard',
      timestamp,
      hostname: 'localhost',
      tests: cases.length,
      failures: cases.filter(({ failure }) => failure !== null).length,
      errors: 0,
      time: secondsText(cases.reduce((sum, { seconds }) => sum + (seconds ?? 0), 0)),
    },
    element('properties'),
    cases.map(caseElement),
    element('system-out'),
    element('system-err'),
  );
}

const caseElement = ({ name, file, seconds, failure }: ReportCase): Element =>
  element(
    'testcase',
    { name: named(name, 'case'), classname: named(file, 'file'), time: secondsText(seconds ?? 0) },
    failure && element('failure', { type: 'failed', message: failure.message }, failure.text),
  );

/** The schema wants names of at least one character once white space is trimmed. */
const named = (name: string, otherwise: string): string => (name.trim() === '' ? otherwise : name);

const secondsText = (seconds: number): string => seconds.toFixed(3);
