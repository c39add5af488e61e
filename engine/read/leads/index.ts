import { doLine } from './do-line.ts';
import { faultLine } from './fault-line.ts';
import type { LeadLine, LeadWord } from './lead-line.ts';
import { proveLine } from './prove-line.ts';
import { readLine } from './read-line.ts';
import { stopLine } from './stop-line.ts';
import { thenLine } from './then-line.ts';

/** Every lead line. A new one is a file beside this one and a row here. */
export const leadLines = {
  Read: readLine,
  Do: doLine,
  Then: thenLine,
  Fault: faultLine,
  Prove: proveLine,
  Stop: stopLine,
} satisfies Record<LeadWord, LeadLine>;

export const leadLineList: readonly LeadLine[] = Object.values(leadLines);
