import type { MapChart, MapEdge, MapGraph, MapNode } from './map-graph.ts';
import type { Sized } from './size-node.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A symbol in its place; its text lines count from its own upper left corner. */
export type PlacedNode = MapNode & Sized & Point;

export interface PlacedLine extends MapEdge {
  readonly points: readonly Point[];
}

/** A piece of the map in its place; what is in it counts from the piece's upper left corner. */
export interface PlacedChart extends Pick<MapChart, 'id' | 'heading'>, Point {
  readonly width: number;
  readonly height: number;
  readonly nodes: readonly PlacedNode[];
  readonly lines: readonly PlacedLine[];
}

export interface LaidOutMap extends Pick<MapGraph, 'title' | 'symptom'> {
  readonly width: number;
  readonly height: number;
  readonly charts: readonly PlacedChart[];
}
