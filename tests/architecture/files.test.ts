import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const tracked = execFileSync('git', ['ls-files', '-co', '--exclude-standard'], { encoding: 'utf8' })
  .split('\n')
  .filter((path) => path !== '' && existsSync(path));
const sources = tracked.filter((path) => /^(engine|player|editor)\/.*\.tsx?$/.test(path));

describe('the files of the project', () => {
  test('stand in the fixed folders', () => {
    const top = new Set(tracked.map((path) => path.split('/')[0] ?? ''));
    const fixed = [
      'README.md',
      'DEVELOPERS.md',
      'package.json',
      'engine',
      'trees',
      'editor',
      'player',
      'tests',
      'schema',
    ];
    const tools = [
      'package-lock.json',
      'tsconfig.json',
      'biome.json',
      'knip.json',
      'vite.config.ts',
      'vitest.config.ts',
    ];
    const others = [...top].filter((name) => !name.startsWith('.') && ![...fixed, ...tools].includes(name));
    expect(others).toEqual([]);
  });

  test('are small: no source has more than 400 lines', () => {
    const long = sources.filter((path) => readFileSync(path, 'utf8').split('\n').length > 400);
    expect(long).toEqual([]);
  });

  test('are called in kebab-case', () => {
    const odd = sources.filter(
      (path) => !/^[a-z0-9-]+(\.config|\.bench)?\.tsx?$/.test(path.split('/').at(-1) ?? ''),
    );
    expect(odd).toEqual([]);
  });
});
