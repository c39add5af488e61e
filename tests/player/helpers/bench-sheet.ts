import type { CompiledBoard } from '../../../engine/model/compiled-board.ts';

/** One transparent pixel. */
const pixel =
  'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==';

const mhz = (value: string) => ({ value, unit: 'MHz' });

/** The sheet of an invented board for the bench tree: two pictures, two jumpers, a table, references. */
export const benchSheet = (): CompiledBoard => ({
  format: 1,
  kind: 'compiled-board',
  id: 'k5',
  title: 'Kestrel K5',
  boards: ['486'],
  digest: '5'.repeat(64),
  settings: { bus: mhz('40000000') },
  jumpers: [
    { id: 'JP1', is: 'Bus clock', positions: ['1-2', '2-3'] },
    { id: 'JP2', is: 'Bus clock', positions: ['1-2', '2-3', 'open'] },
    { id: 'JP9', is: 'Sound', positions: ['closed', 'open'] },
  ],
  tables: [
    {
      setting: 'bus',
      rows: [
        { at: { JP1: '1-2', JP2: '1-2' }, value: mhz('33000000') },
        { at: { JP1: '1-2', JP2: '2-3' }, value: mhz('40000000') },
        { at: { JP1: '2-3' }, value: mhz('50000000') },
      ],
    },
  ],
  fittings: [
    {
      id: 'memory',
      is: 'Memory in pairs',
      sockets: ['A', 'B', 'C', 'D'],
      together: [
        ['A', 'B'],
        ['A', 'B', 'C', 'D'],
      ],
    },
  ],
  readings: [],
  pictures: [
    { id: 'top', is: 'component side', url: pixel, mirrored: false },
    { id: 'bottom', is: 'solder side', url: pixel, mirrored: true },
  ],
  points: {
    v5: [
      { is: 'slot contact B3', picture: 'top', x: 0.2, y: 0.1 },
      { is: 'slot contact B1, ground', picture: 'top', x: 0.2, y: 0.15 },
    ],
    pg: [{ is: 'plug contact 1', picture: 'top', x: 0.25, y: 0.12 }],
    cpu_clk: [
      { is: 'socket pin C3', picture: 'top', x: 0.7, y: 0.8 },
      { is: 'socket pad C3', picture: 'bottom', x: 0.3, y: 0.8 },
      { is: 'the case', picture: null, x: 0, y: 0 },
    ],
  },
  references: [
    { reading: 'v5', value: { value: '251/50', unit: 'V' }, date: '2026-03-02', instrument: 'bench meter' },
    { reading: 'v5', value: { value: '5', unit: 'V' }, date: '2026-05-09', instrument: 'hand meter' },
  ],
});
