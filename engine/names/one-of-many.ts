/** That one of many alike which was found in a band. */
export interface OneOfMany {
  readonly band: string;
  /** The reading that stands for all of them. */
  readonly group: string;
}

/** `the short one of rails`, taken apart; null for any other name. */
export function oneOfMany(name: string): OneOfMany | null {
  const [, band, group] = /^the (\S+) one of (\S.*)$/.exec(name) ?? [];
  return band === undefined || group === undefined ? null : { band, group };
}

export const nameOfOne = ({ band, group }: OneOfMany): string => `the ${band} one of ${group}`;
