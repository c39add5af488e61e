import { test } from 'vitest';
import { mangledFiles } from './mangled-files.ts';
import { mangledJobs } from './mangled-jobs.ts';
import { mangledTexts } from './mangled-texts.ts';

test('compileTree() keeps its laws on 1,000 mangled texts (npm run soak takes more)', () => {
  mangledTexts(1000);
});

test('checkFile() keeps its laws on 300 mangled files of every kind (npm run soak takes more)', () => {
  mangledFiles(300);
});

test('a job file is refused in words or can be walked on, 1,000 times mangled (npm run soak takes more)', () => {
  mangledJobs(1000);
});
