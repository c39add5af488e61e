import type { EntryKind } from '../../model/entry.ts';
import type { Session } from '../session.ts';
import { acknowledged } from './acknowledged.ts';
import { arranged, equipped, overrode, runs, twin } from './bench.ts';
import { detoured, returned } from './detour.ts';
import { corrected, retaken, struck } from './evidence.ts';
import type { Happening } from './happening.ts';
import { back, closed, reopened, went } from './moving.ts';
import { opened, resumed } from './opening.ts';
import { confirmed, read, unread } from './reading.ts';
import { altered, set } from './setting.ts';
import { symptom } from './symptom.ts';
import { tree } from './tree.ts';
import { assumed, declined, did, remedied, waiting } from './work.ts';

/** Said for the record alone. */
const noted = (session: Session): Session => session;

/** Every kind of entry and what it does. */
export const happenings: { readonly [Kind in EntryKind]: Happening<Kind> } = {
  opened,
  set,
  altered,
  corrected,
  symptom,
  acknowledged,
  read,
  confirmed,
  unread,
  retaken,
  struck,
  twin,
  equipped,
  overrode,
  arranged,
  runs,
  tree,
  assumed,
  waiting,
  did,
  remedied,
  declined,
  back,
  went,
  detoured,
  returned,
  note: noted,
  todo: noted,
  'todo-done': noted,
  resumed,
  closed,
  reopened,
};
