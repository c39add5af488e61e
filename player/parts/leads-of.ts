/** One lead of an instrument and the point it touches. */
export interface Lead {
  readonly lead: string;
  readonly colour: 'red' | 'black' | 'plain';
  readonly point: string;
}

/** Tools with a return lead that goes to ground when only one point is named. */
const grounded = ['meter', 'scope', 'oscilloscope', 'counter', 'logic probe', 'probe'];
const channelled = ['scope', 'oscilloscope'];

/** Which lead goes where. With one point the other lead is on ground; with two, the second point is
 *  black for a meter and channel 2 for a scope. */
export function leadsOf(points: readonly string[], tools: readonly string[]): readonly Lead[] {
  const [first, second, ...rest] = points;
  if (first === undefined) return [];
  const has = (list: readonly string[]) => tools.some((tool) => list.includes(tool.toLowerCase()));
  const ground: Lead = { lead: has(channelled) ? 'Clip' : 'Black lead', colour: 'black', point: 'ground' };
  if (has(channelled)) {
    const channels = points.map(
      (point, index): Lead => ({
        lead: `Channel ${index + 1}`,
        colour: index === 0 ? 'red' : 'plain',
        point,
      }),
    );
    return [
      ...(points.length === 1 ? [{ lead: 'Tip', colour: 'red', point: first } as const] : channels),
      ground,
    ];
  }
  if (!has(grounded)) return points.map((point) => ({ lead: 'At', colour: 'plain', point }));
  if (second === undefined) return [{ lead: 'Red lead', colour: 'red', point: first }, ground];
  return [
    { lead: 'Red lead', colour: 'red', point: first },
    { lead: 'Black lead', colour: 'black', point: second },
    ...rest.map((point): Lead => ({ lead: 'Then', colour: 'plain', point })),
  ];
}
