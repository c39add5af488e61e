import type { SectionKind } from './section-kind.ts';

export const stop: SectionKind<'Stop'> = {
  kind: 'stop',
  word: 'Stop',
  branches: false,
  build: ({ base, lead }) => ({ ...base, kind: 'stop', reason: lead.reason }),
};
