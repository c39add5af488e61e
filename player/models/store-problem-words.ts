import type { StoreProblem } from '../ports/stored.ts';

/** What happened and what to do now, without a final full stop. */
export function storeProblemWords(problem: StoreProblem): string {
  switch (problem.kind) {
    case 'full':
      return 'There is no room left on this device. Free some space, then try again';
    case 'moved-on':
      return 'Another window went on with this job. It is shown as it stands now';
    case 'gone':
      return 'This job is not on this bench. If you have its file, take it in from the bench';
    case 'unavailable':
      return `This browser keeps no data now (${problem.detail}). A private window refuses it: use a normal one, then try again`;
  }
}
