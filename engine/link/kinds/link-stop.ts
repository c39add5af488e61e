import { fillInlines } from '../fill-values.ts';
import type { LinkKind } from './link-kind.ts';

export const linkStop: LinkKind<'stop'> = ({ syntax, base, values }) => ({
  section: { ...base, kind: 'stop', reason: fillInlines(syntax.reason, values) },
  sound: true,
});
