export { drawMap } from './draw-map.ts';
export type { LaidOutMap } from './laid-out-map.ts';
export { layOut } from './lay-out.ts';
export type { MapGraph } from './map-graph.ts';
export { mapOf } from './map-of.ts';
