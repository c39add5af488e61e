import { doLine } from './do-line.ts';
import { endLine } from './end-line.ts';
import { faultLine } from './fault-line.ts';
import { followLine } from './follow-line.ts';
import type { LeadLine, LeadWord } from './lead-line.ts';
import { onlyIfLine } from './only-if-line.ts';
import { proveLine } from './prove-line.ts';
import { readLine } from './read-line.ts';
import { stopLine } from './stop-line.ts';
import { thenLine } from './then-line.ts';

/** Every lead line. A new one is a file beside this one and a row here. */
export const leadLines = {
  Read: readLine,
  Do: doLine,
  Then: thenLine,
  Follow: followLine,
  End: endLine,
  Fault: faultLine,
  Prove: proveLine,
  'Only if': onlyIfLine,
  Stop: stopLine,
} satisfies Record<LeadWord, LeadLine>;

export const leadLineList: readonly LeadLine[] = Object.values(leadLines);
