import type { Equipment } from '../model/instrument.ts';

/** Nothing is known of the technician's bench: no reading is in doubt, and every tool is there. */
export const noEquipment: Equipment = { instruments: [], lacking: [], rule: 'guarded' };
