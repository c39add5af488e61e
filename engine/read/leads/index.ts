import { doLine } from './do.ts';
import { fault } from './fault.ts';
import type { LeadLine, LeadWord } from './lead-line.ts';
import { prove } from './prove.ts';
import { read } from './read.ts';
import { stop } from './stop.ts';
import { then } from './then.ts';

/** Every lead line. A new one is a file beside this one and a row here. */
export const leadLines = {
  Read: read,
  Do: doLine,
  Then: then,
  Fault: fault,
  Prove: prove,
  Stop: stop,
} satisfies Record<LeadWord, LeadLine>;

export const leadLineList: readonly LeadLine[] = Object.values(leadLines);
