import type { StoredQuantity } from '../model/exact.ts';
import { fromStored } from './stored.ts';

/** Negative, zero or positive, like a sort function. Meant for quantities of one kind. */
export const compareQuantities = (a: StoredQuantity, b: StoredQuantity): number =>
  fromStored(a).compare(fromStored(b));
