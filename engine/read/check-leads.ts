import { leadLines } from './leads/index.ts';
import type { PartOf } from './parts.ts';
import { type ReadContext, report } from './read-context.ts';

type LeadPart = PartOf<'lead'>;

/** Reports lead lines that do not go together. */
export function checkLeads(leads: readonly LeadPart[], doubtful: boolean, context: ReadContext): void {
  for (const lead of leads) checkNames(lead, context);
  checkTwice(leads, context);
  checkClash(leads, context);
  if (!doubtful) checkAlone(leads, context);
}

function checkNames({ lead }: LeadPart, context: ReadContext): void {
  if (!('names' in lead)) return;
  const seen = new Set<string>();
  for (const { name, from, to } of lead.names) {
    if (seen.has(name)) report(context, { code: 'name-twice', word: lead.word, name }, { from, to });
    seen.add(name);
  }
}

function checkTwice(leads: readonly LeadPart[], context: ReadContext): void {
  const seen = new Set<string>();
  for (const { lead, span } of leads) {
    if (seen.has(lead.word)) report(context, { code: 'lead-line-twice', word: lead.word }, span);
    seen.add(lead.word);
  }
}

/** A section is one thing: two lead lines that each make a section cannot both have it. */
function checkClash(leads: readonly LeadPart[], context: ReadContext): void {
  const makers = leads.filter(({ lead }) => leadLines[lead.word].makes !== null);
  const first = makers[0]?.lead.word;
  for (const { lead, span } of makers) {
    if (first === undefined || lead.word === first) continue;
    report(context, { code: 'lead-line-clash', first, second: lead.word }, span);
  }
}

/** `Then` without `Do`, `Prove` without `Fault`, `Only if` without either. */
function checkAlone(leads: readonly LeadPart[], context: ReadContext): void {
  const words = new Set<string>(leads.map(({ lead }) => lead.word));
  for (const { lead, span } of leads) {
    const needs = leadLines[lead.word].completes;
    if (needs.length > 0 && !needs.some((word) => words.has(word)))
      report(context, { code: 'lead-line-alone', word: lead.word, needs }, span);
  }
}
