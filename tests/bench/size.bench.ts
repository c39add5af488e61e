import { firstLoad, jobLoad } from '../helpers/first-load.ts';
import type { Figure } from './figure.ts';

/** What the browser fetches before the first screen stands; build the player first. */
export async function bench(): Promise<readonly Figure[]> {
  const { script, style } = firstLoad();
  return [
    { name: "player's first load, script, gzipped", value: script.gzip / 1024, unit: 'KB', goal: 60 },
    {
      name: 'with a job on the screen, script, gzipped',
      value: jobLoad().gzip / 1024,
      unit: 'KB',
      goal: null,
    },
    { name: "player's first load, style, gzipped", value: style.gzip / 1024, unit: 'KB', goal: null },
  ];
}
