import type { Understood } from '../../model/observation.ts';
import type { Measure } from '../../model/reading.ts';
import type { Taken } from '../../model/refusal.ts';
import { tidy } from '../../quantity/index.ts';

type Tries = Extract<Measure, { kind: 'tries' }>;
type Counted = Extract<Understood, { kind: 'tries' }>;

const most = 9999;
const counted = /^(\d+|all|none|no) ?(?:of|out of|\/|in) ?(\d+)(?: ?(?:tries|times|starts))?$/i;

/** How often something worked, as it was typed: `3 of 10`, `3/10`, `all of 10`. */
export function readTries({ enough }: Tries, typed: string): Taken<Counted> {
  const text = tidy(typed);
  const forms = [`${enough} of ${enough}`, `0 of ${enough}`];
  if (text === '') return refuse('Nothing was typed', forms);
  const [, word = '', tries = ''] = counted.exec(text) ?? [];
  const of = Number(tries);
  if (word === '' || tries.length > String(most).length || of > most) {
    return refuse(
      `"${text.slice(0, 64)}" does not say how often it worked: type how many of how many tries`,
      forms,
    );
  }
  if (of === 0) return refuse('With no try nothing is known: try it at least once', forms);
  const good = /^all$/i.test(word) ? of : /^\d/.test(word) ? Number(word) : 0;
  if (good > of) {
    const turned = good <= most ? [`${of} of ${good}`] : forms;
    return refuse(`${word.slice(0, 8)} of ${of} is more than there were tries`, turned);
  }
  return { ok: true, value: { kind: 'tries', good, of } };
}

const refuse = (text: string, offers: readonly string[]): Taken<never> => ({
  ok: false,
  refusal: { text, offers },
});
