import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect } from 'vitest';

const good = readFileSync('tests/helpers/bench-tree.md', 'utf8');
const front = /^---\n[\s\S]*?\n(?=---\n)/.exec(good)?.[0] ?? '';
const body = good.slice(front.length);
/** What the page of the language promises: schema/README.md, Limits. */
export const megabytes = 512;

const inFacts = (text: string): string => `${front}${text}\n${body}`;
const inSection = (text: string): string => `${good}\n## Last\n\n${text}`;
const reading = (name: string, rest: string): string =>
  inFacts('').replace('\nreadings:\n', `\nreadings:\n  ${name}: { is: x, source: x, ${rest} }\n`);
const deep = (open: string, close: string, times: number): string => open.repeat(times) + close.repeat(times);

/** A file, or a folder of files of which the first is checked. */
export const hostile: Readonly<Record<string, string | Readonly<Record<string, string>>>> = {
  '10 MB of text': `${good}${'A line that goes on. '.repeat(500_000)}`,
  '10 MB on one line of facts': inFacts(`x: "${'a'.repeat(10_000_000)}"`),
  'an alias bomb': inFacts(
    [
      'a: &a [x, x, x]',
      ...'bcdefghijklmnop'
        .split('')
        .map(
          (name, at) =>
            `${name}: &${name} [*${'abcdefghijklmno'[at]}, *${'abcdefghijklmno'[at]}, *${'abcdefghijklmno'[at]}]`,
        ),
    ].join('\n'),
  ),
  'keys that every object has': inFacts(
    '__proto__: { polluted: yes }\nconstructor: { prototype: { polluted: yes } }\nhasOwnProperty: 1',
  ),
  'readings called like what every object has': reading('__proto__', 'options: [a, b], normal: a'),
  'lists 10,000 deep': inSection(deep('- ', '', 10_000)),
  'quotes 10,000 deep': inSection(deep('> ', '', 10_000)),
  'brackets 10,000 deep': inSection(deep('[', ']', 10_000)),
  'YAML lists 10,000 deep': inFacts(`x: ${deep('[', ']', 10_000)}`),
  'YAML tables 10,000 deep': inFacts(`x: ${deep('{ a: ', ' }', 10_000)}`),
  'growing runs of backticks': inSection(
    Array.from({ length: 1000 }, (_, at) => '`'.repeat(at + 1)).join(' a '),
  ),
  '20,000 readings': inFacts('').replace(
    '\nreadings:\n',
    `\nreadings:\n${Array.from({ length: 20_000 }, (_, at) => `  r${at}: { is: x }`).join('\n')}\n`,
  ),
  'a formula 10,000 brackets deep': reading(
    'f',
    `unit: V, scale: "a < ${deep('(', ')', 10_000)} < b", normal: a`,
  ),
  'a formula of 10,000 terms': reading(
    'f',
    `unit: V, scale: "a < ${'1 V + '.repeat(10_000)}1 V < b", normal: a`,
  ),
  'a scale of 5,000 bands': reading(
    'f',
    `unit: V, scale: "b0 ${Array.from({ length: 5000 }, (_, at) => `< ${at} V < b${at + 1}`).join(' ')}", normal: b0`,
  ),
  'a number of 100,000 digits': reading('f', `unit: V, expect: ${'9'.repeat(60_000)} V ± 1 %`),
  '64 members that can each be wrong in four ways': reading(
    'f',
    `each: [${Array.from({ length: 64 }, (_, at) => `m${at}`).join(', ')}], options: [a, b, c, d, e], normal: a`,
  ),
  'derived readings that go round': reading('f', 'from: g * 2, scale: a < 1 < b, normal: a').replace(
    '\nreadings:\n',
    '\nreadings:\n  g: { is: x, source: x, from: f * 2, scale: a < 1 < b, normal: a }\n',
  ),
  'a beep pattern of 10,000 beeps': reading(
    'f',
    `beeps: { ${'long '.repeat(10_000)}: a, none: b }, normal: b`,
  ),
  'a jumper table of a million positions': {
    'board.md': `---\nformat: 1\nkind: board\ntitle: B\nboards: [x]\njumpers:\n${Array.from({ length: 20 }, (_, at) => `  JP${at}: { is: x, positions: [a, b] }`).join('\n')}\ntables:\n  bus:\n    JP0 a: 1 MHz\n---\n`,
  },
  'files that use each other': {
    'trees/a.md': good.replace('kind: tree\n', 'kind: tree\nuses: [../common/s0.md]\n'),
    ...Object.fromEntries(
      Array.from({ length: 60 }, (_, at) => [
        `common/s${at}.md`,
        `---\nformat: 1\nkind: shared\ntitle: S\nuses: [s${(at + 1) % 60}.md]\n---\n`,
      ]),
    ),
  },
  'a procedure that follows itself twice': {
    'trees/a.md': `${good}\n## Last\n\nFollow [P](../procedures/p.md).\n\n- done → [Clock](#clock)\n`,
    'procedures/p.md':
      '---\nformat: 1\nkind: procedure\ntitle: P\nends: [done]\n---\n\n## A\n\nFollow [P](p.md).\n\n- done → [B](#b)\n\n## B\n\nFollow [P](p.md).\n\n- done → [C](#c)\n\n## C\n\nEnd `done`.\n',
  },
  'procedures that double 20 times': {
    'trees/a.md': `${good}\n## Last\n\nFollow [P](../procedures/p0.md).\n\n- done → [Clock](#clock)\n`,
    ...Object.fromEntries(
      Array.from({ length: 21 }, (_, at) => [
        `procedures/p${at}.md`,
        at === 20
          ? '---\nformat: 1\nkind: procedure\ntitle: P\nends: [done]\n---\n\n## A\n\nEnd `done`.\n'
          : `---\nformat: 1\nkind: procedure\ntitle: P\nends: [done]\n---\n\n## A\n\nFollow [P](p${at + 1}.md).\n\n- done → [B](#b)\n\n## B\n\nFollow [P](p${at + 1}.md).\n\n- done → [C](#c)\n\n## C\n\nEnd \`done\`.\n`,
      ]),
    ),
  },
  'a case of 100,000 answers': {
    'case.md': `---\nformat: 1\nkind: case\ntitle: C\ntree: tree.md\n---\n\n${'1. back\n'.repeat(100_000)}\nLeads to a mended board.\n`,
    'tree.md': good,
  },
};

/** Checks a hostile file with little memory: it ends by itself, and in words. */
export function endsInWords(name: string): void {
  const given = hostile[name] ?? '';
  const files = typeof given === 'string' ? { 'tree.md': given } : given;
  const at = mkdtempSync(join(tmpdir(), 'deadboard-hostile-'));
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(at, path)), { recursive: true });
    writeFileSync(join(at, path), text);
  }
  const [first = ''] = Object.keys(files);
  const { status, stdout, stderr, signal } = spawnSync(
    process.execPath,
    [`--max-old-space-size=${megabytes}`, 'dist/cli/deadboard.js', 'check', join(at, first)],
    { encoding: 'utf8', maxBuffer: 1e9 },
  );
  rmSync(at, { recursive: true, force: true });
  expect(signal).toBeNull();
  expect(stderr).not.toMatch(/^\s+at .*:\d+:\d+/m);
  expect([0, 1]).toContain(status);
  expect(`${stdout}${stderr}`).toMatch(/\d+ files?: \d+ errors?/);
}
