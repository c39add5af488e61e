import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { pageDumps } from '../helpers/page-dumps.ts';

const page = 'DEVELOPERS.md';
const block = (name: string): RegExp => new RegExp(`(<!-- ${name} -->\n\`\`\`\\w+\n)([\\s\\S]*?)(\`\`\`)`);

describe("the contributors' page", () => {
  const dumps = pageDumps();

  if (process.env.UPDATE === '1') {
    const written = Object.entries(dumps).reduce(
      (text, [name, dump]) =>
        text.replace(block(name), (_all, open, _old, close) => `${open}${dump}\n${close}`),
      readFileSync(page, 'utf8'),
    );
    writeFileSync(page, written);
  }
  const text = readFileSync(page, 'utf8');

  test.each(Object.entries(dumps))('shows what the code makes of the small tree: %s', (name, dump) => {
    expect(block(name).exec(text)?.[2]).toBe(`${dump}\n`);
  });

  test('holds no block that nothing compares', () => {
    const named = [...text.matchAll(/<!-- (\w+) -->/g)].map(([, name]) => name);
    expect(named.toSorted()).toEqual(Object.keys(dumps).toSorted());
  });

  test('names files that exist', () => {
    const paths = [
      ...text.matchAll(/`((?:engine|schema|tests|player|trees)\/[\w./-]+\.(?:tsx?|md|json))`/g),
    ].map(([, path]) => path ?? '');
    expect(paths.length).toBeGreaterThan(10);
    for (const path of paths) expect(() => readFileSync(path), path).not.toThrow();
  });
});
