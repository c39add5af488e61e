/** One trainee's result. */
export interface ClassRow {
  readonly name: string;
  readonly code: string;
  readonly found: boolean;
  readonly rightAtFirst: boolean;
  readonly minutes: number;
  readonly hints: number;
  readonly passed: number;
  readonly harm: number;
}
