import { cruise, type ICruiseResult, type IForbiddenRuleType } from 'dependency-cruiser';
import { describe, expect, test } from 'vitest';

/** Who may import whom. A folder may use what stands to its left in its line. */
const lines: readonly (readonly string[])[] = [
  [
    'model',
    'names',
    'library',
    'combinations',
    'quantity',
    'formula',
    'doubt',
    'scale',
    'suspects',
    'diagnostics',
    'source',
    'parse',
    'facts',
    'read',
    'link',
    'paths',
    'rules',
    'analysis',
    'foreign',
    'emit',
    'board',
    'compile.ts',
    'cases',
    'compile-file.ts',
    'check-file.ts',
    'cli',
  ],
  [
    'model',
    'names',
    'combinations',
    'quantity',
    'formula',
    'doubt',
    'scale',
    'suspects',
    'next',
    'board',
    'run',
    'cases',
    'figures',
    'practice',
    'job',
    'cli',
  ],
  ['model', 'markup', 'outline', 'scxml', 'map', 'cli'],
  ['model', 'quantity', 'formula', 'scale', 'outline', 'paper', 'cli'],
  ['model', 'markup', 'diagnostics', 'reports', 'cli'],
  ['engine', 'player', 'editor'],
];

const inside = (part: string): string =>
  ['engine', 'player', 'editor'].includes(part) ? `^${part}/` : `^engine/${part}`;

const backwards: readonly IForbiddenRuleType[] = lines
  .flatMap((line) =>
    line.map((part, index) => ({
      name: `${part} uses nothing to its right`,
      severity: 'error' as const,
      from: { path: inside(part) },
      to: { path: line.slice(index + 1).map(inside) },
    })),
  )
  .filter(({ to }) => to.path.length > 0);

const only = (name: string, packages: string, allowed: string): IForbiddenRuleType => ({
  name,
  severity: 'error',
  from: { path: '^(engine|player|editor)/', pathNot: allowed },
  to: { path: packages },
});

const forbidden: readonly IForbiddenRuleType[] = [
  { name: 'no circles', severity: 'error', from: {}, to: { circular: true } },
  ...backwards,
  only(
    'Markdown and YAML are parsed in one place',
    'node_modules/(mdast-util|micromark|yaml/)',
    '^engine/parse/',
  ),
  only('the machine runs in one place', 'node_modules/xstate/', '^engine/run/'),
  only('maps are laid out in one place', 'node_modules/elkjs/', '^engine/map/'),
  only(
    "disk and terminal are the command's",
    '^(node:)?(fs|path|process|readline|util|os|child_process)',
    '^(engine/cli|player/build)/',
  ),
  only("the screen is the player's", 'node_modules/(preact|@preact|idb)/', '^(player|editor)/'),
  {
    name: 'a bench does not read the text of board sheets',
    severity: 'error',
    from: { path: '^engine/', pathNot: '^engine/(board/(sheet/|compile-board)|compile-file|cli|cases)' },
    to: { path: '^engine/board/(sheet/|compile-board)' },
  },
  {
    name: 'what a bench asks of a board sheet needs no compiler',
    severity: 'error',
    from: { path: '^engine/board/', pathNot: '^engine/board/(sheet/|compile-board)' },
    to: {
      path: '^engine/(parse|facts|read|link|paths|rules|analysis|emit|compile|diagnostics|source|library)',
    },
  },
  {
    name: 'nothing on the bench compiles',
    severity: 'error',
    from: { path: '^player/', pathNot: '^player/build/' },
    to: {
      path: '^engine/(parse|facts|read|link|paths|rules|analysis|emit|compile|diagnostics|source|board/(sheet/|compile-board))',
    },
  },
];

describe('the arrows between the folders', async () => {
  const { output } = await cruise(['engine', 'player'], {
    ruleSet: { forbidden: [...forbidden] },
    validate: true,
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    exclude: { path: '^player/gallery' },
  });
  const { summary, modules } = output as ICruiseResult;

  test('all run one way', () => {
    expect(summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`)).toEqual([]);
  });

  test('were looked at: the engine and the player hold modules', () => {
    expect(modules.filter(({ source }) => source.startsWith('engine/')).length).toBeGreaterThan(80);
    expect(modules.filter(({ source }) => source.startsWith('player/')).length).toBeGreaterThan(20);
  });
});
