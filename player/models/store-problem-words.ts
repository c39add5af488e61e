import type { StoreProblem } from '../ports/stored.ts';

/** What happened, what was kept, what to do now. */
export function storeProblemWords(problem: StoreProblem): string {
  switch (problem.kind) {
    case 'full':
      return 'There is no room left on this device, so nothing was entered. Save the job as a file, free some space, then enter it again';
    case 'moved-on':
      return 'Another window went on with this job, so this was not entered. The job is shown as it stands now';
    case 'gone':
      return 'This job is not on this bench. If you have its file, take it in from the bench';
    case 'unavailable':
      return `This browser does not keep data now (${problem.detail}), so nothing was entered. Private windows refuse it: use a normal one. Save the job as a file to be safe, then try again`;
  }
}
