/** One lead of an instrument and the point it touches. */
export interface Lead {
  readonly lead: string;
  readonly colour: 'red' | 'black' | 'plain';
  readonly point: string;
}

/** Tools with a return lead that goes to ground when only one point is named. */
const grounded = ['meter', 'scope', 'oscilloscope', 'counter', 'logic probe', 'probe'];
const channelled = ['scope', 'oscilloscope'];

const isGround = (point: string) => /\bground\b/i.test(point);

/** Which lead goes where. One point: the other lead is on ground. Two points: the second is black for a
 *  meter; for a scope it is where the clip goes if it is a ground, else channel 2. */
export function leadsOf(points: readonly string[], tools: readonly string[]): readonly Lead[] {
  const has = (list: readonly string[]) => tools.some((tool) => list.includes(tool.toLowerCase()));
  if (points.length === 0) return [];
  if (has(channelled)) return scopeLeads(points);
  return has(grounded) ? meterLeads(points) : points.map((point) => ({ lead: 'At', colour: 'plain', point }));
}

function scopeLeads(points: readonly string[]): readonly Lead[] {
  const last = points.at(-1) ?? '';
  const onGround = points.length > 1 && isGround(last);
  const tips = onGround ? points.slice(0, -1) : points;
  const clip: Lead = { lead: 'Clip', colour: 'black', point: onGround ? last : 'ground' };
  const lead = (index: number) => (tips.length === 1 ? 'Tip' : `Channel ${index + 1}`);
  return [
    ...tips.map(
      (point, index): Lead => ({ lead: lead(index), colour: index === 0 ? 'red' : 'plain', point }),
    ),
    clip,
  ];
}

function meterLeads([red = '', black = 'ground', ...rest]: readonly string[]): readonly Lead[] {
  return [
    { lead: 'Red lead', colour: 'red', point: red },
    { lead: 'Black lead', colour: 'black', point: black },
    ...rest.map((point): Lead => ({ lead: 'Then', colour: 'plain', point })),
  ];
}
