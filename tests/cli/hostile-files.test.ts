import { describe, test } from 'vitest';
import { endsInWords, megabytes } from '../properties/hostile-files.ts';

describe(`deadboard check, given no more than ${megabytes} MB, ends in words on (npm run soak takes more)`, () => {
  test.each([
    '10 MB of text',
    'an alias bomb',
    'YAML lists 10,000 deep',
    'growing runs of backticks',
    'a formula 10,000 brackets deep',
    '64 members that can each be wrong in four ways',
    'a jumper table of a million positions',
    'procedures that double 20 times',
  ])('%s', endsInWords);
});
