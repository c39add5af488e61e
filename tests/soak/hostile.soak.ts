import { describe, test } from 'vitest';
import { endsInWords, hostile, megabytes } from '../properties/hostile-files.ts';

describe(`deadboard check, given no more than ${megabytes} MB, ends in words on`, () => {
  test.each(Object.keys(hostile))('%s', endsInWords);
});
