import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';

const run = (tool: string, ...args: string[]): { status: number | null; said: string } => {
  const { status, stdout, stderr } = spawnSync('npx', ['--no-install', tool, ...args], { encoding: 'utf8' });
  return { status, said: `${stdout}${stderr}` };
};

describe('the tools', () => {
  test('find no type error', () => {
    expect(run('tsc', '-p', '.')).toEqual({ status: 0, said: '' });
  });

  test('find the code formatted and free of lint', () => {
    const { status, said } = run('biome', 'check', '.');
    expect(status, said).toBe(0);
  });

  test('find no export, file or package that nobody uses', () => {
    const { status, said } = run('knip');
    expect(status, said).toBe(0);
  });
});
