import type { SignalWord } from '../../model/prose.ts';

/** What can hurt somebody who does as a text tells. */
export type RiskKind = 'mains' | 'charge' | 'tube' | 'heat' | 'hot-part' | 'cell';

/** One kind of danger: the words that tell to meet it, and how it must be warned of. */
export interface RiskRow {
  /** Why the row is there, and why it is no wider. */
  readonly why: string;
  /** How the checker calls it. */
  readonly is: string;
  /** Work that brings a hand or a tool to it, as it is ordered: `open`. Expressions. */
  readonly verbs: readonly string[];
  /** What the work is done on or with. Expressions. */
  readonly things: readonly string[];
  /** Words between verb and thing. */
  readonly gap: number;
  /** Orders that need no thing: `reflow` is heat whatever it is done to. */
  readonly alone: readonly string[];
  /** The words that warn of it enough, the one to propose first. */
  readonly signals: readonly SignalWord[];
  /** A hazard above the first section that speaks of this covers all sections. */
  readonly spokenOf: RegExp;
}

const handling = [
  'open',
  'touch',
  'measure',
  'probe',
  'check',
  'test',
  'clip',
  'hook',
  'lift',
  'solder',
  'unsolder',
  'desolder',
  'resolder',
  'remove',
  'replace',
  'change',
  'swap',
  'bridge',
  'short',
  'cut',
  'bend',
  'pull',
  'unscrew',
  'adjust',
  'work on',
  'work in',
  'reach into',
  'take (?:apart|off|out)',
];

const opening = ['open', 'unscrew', 'take apart', 'dismantle', 'reach into', 'work (?:in|inside)'];

/** Plugging, unplugging and switching is how mains is made safe. */
const notThePlug = "(?!['’]?s?[\\s-]+(?:plug|lead|cord|cable|switch|socket|outlet|lamp|is|off|out|on)\\b)";
const supply = '(?:power[\\s-]+)?(?:supply|supplies|psu|adapter|power[\\s-]+brick)';
const lid = '(?:lid|cover|case|housing|shell|shield|box)';

export const riskTable: Readonly<Record<RiskKind, RiskRow>> = {
  mains: {
    why: 'Mains kills. The plug, the lead and the switch are left out: to pull them is the safe thing, and "the supply" alone is its low-voltage plug as often as not.',
    is: 'work on mains voltage',
    verbs: handling,
    things: [
      `mains\\b${notThePlug}`,
      '(?:line|live)[\\s-]+(?:voltage(?![\\s-]+drop)|side|wires?|conductors?|terminals?|contacts?|fuse|input)',
      'primary[\\s-]+(?:side|fuse|winding|circuit|rectifier|switch|transistor|mosfet|heat[\\s-]?sink)',
      `(?:inside|interior)\\s+(?:of\\s+)?(?:the|a|an|its)\\s+(?:\\w+\\s+)?${supply}`,
      `(?:fuse|rectifier|bridge)\\s+(?:of|in|inside)\\s+(?:the|a|an|its)\\s+(?:\\w+\\s+)?${supply}`,
      `${supply}['’]s\\s+(?:own\\s+)?(?:fuse|rectifier|inside)`,
    ],
    gap: 6,
    alone: [
      `(?:open|remove|unscrew|lift|take off)\\s+(?:off\\s+)?(?:the\\s+)?${supply}['’]s\\s+(?:\\w+\\s+)?${lid}`,
      `(?:open|remove|unscrew|lift|take|pull)\\s+(?:off\\s+)?the\\s+${lid}\\s+(?:off\\s+)?(?:of|off|from)\\s+(?:the|a|an)\\s+(?:\\w+\\s+)?${supply}`,
      `(?:${opening.join('|')})\\s+(?:(?:up|the|a|an|its|old|atx|at|dead|bad)\\s+){0,3}${supply}\\b(?!['’]?s?[\\s-]+(?:rail|line|plug|leg|pin|lead|jumper|link|track|trace))`,
    ],
    signals: ['warning', 'danger'],
    spokenOf: /\bmains\b|\bline voltage\b|\bprimary\b|\blive\b|\bhigh voltage\b/i,
  },
  charge: {
    why: 'The capacitors behind the rectifier keep more than 300 V after the plug is out. A capacitor of the board has no such name, and letting one discharge by itself is safe.',
    is: 'work on a charged capacitor',
    verbs: [...handling, 'discharge', 'bleed'],
    things: [
      '(?:bulk|filter|reservoir|smoothing|primary|mains|flash|charged|high[\\s-]+voltage)[\\s-]+(?:electrolytic[\\s-]+)?(?:capacitors?|caps?|electrolytics?)',
      `(?:capacitors?|caps?|electrolytics?)\\s+(?:of|in|inside)\\s+(?:the|a|an|its)\\s+(?:\\w+\\s+)?${supply}`,
      `${supply}['’]s\\s+(?:\\w+\\s+)?(?:capacitors?|caps?|electrolytics?)`,
    ],
    gap: 6,
    alone: [
      '(?:discharge|bleed)\\s+(?:(?:the|its|all|both|large|big|main)\\s+){0,3}(?:capacitors?|caps?|electrolytics?)',
    ],
    signals: ['warning', 'danger'],
    spokenOf: /\bcapacitors?\b|\bcharged?\b|\bmains\b|\bhigh voltage\b/i,
  },
  tube: {
    why: 'A picture tube keeps kilovolts for days and implodes when it is struck. To look at it, or to turn the brightness up, is harmless.',
    is: 'work on a picture tube or its high voltage',
    verbs: [...handling, 'discharge', 'unplug', 'turn'],
    things: [
      '(?:crt|picture[\\s-]+tube|cathode[\\s-]+ray[\\s-]+tube)\\b(?![\\s-]+(?:controller|chip|socket on the board|registers?|connector on the board))',
      'neck\\s+of\\s+the\\s+(?:\\w+\\s+)?tube',
      'neck[\\s-]+board',
      'tube[\\s-]+(?:neck|base|socket)',
      'anode(?:[\\s-]+(?:cap|cup|lead|clip|connection|terminal))?',
      'eht\\b',
      'high[\\s-]+voltage[\\s-]+(?:lead|side|supply|section|transformer|cable|of the)',
      'high[\\s-]+tension',
      'flyback',
      'line[\\s-]+output[\\s-]+transformer',
    ],
    gap: 6,
    alone: [
      `(?:${opening.join('|')})\\s+(?:(?:up|the|a|an|its|old)\\s+){0,3}(?:monitor|crt|television|tv)\\b`,
      `(?:open|remove|unscrew|take)\\s+(?:off\\s+)?the\\s+(?:back|rear|${lid})\\s+(?:cover\\s+)?(?:of|off|from)\\s+the\\s+(?:monitor|display|television|tv)`,
    ],
    signals: ['danger', 'warning'],
    spokenOf: /\btubes?\b|\banode\b|\bEHT\b|\bhigh voltage\b|\bkilovolts?\b|\bCRT\b|\bmonitor\b/i,
  },
  heat: {
    why: 'Hot air, irons and reflowing burn skin and light what is near. Plain soldering is daily work for whoever holds an iron: a tool that is named counts, and reflowing a part; a joint or a leg is reflowed with the iron.',
    is: 'work with hot tools',
    verbs: [
      'use',
      'take',
      'apply',
      'aim',
      'point',
      'blow',
      'hold',
      'heat',
      'preheat',
      'warm',
      'melt',
      'loosen',
      'lift',
      'remove',
      'replace',
      'change',
      'swap',
      'solder',
      'unsolder',
      'desolder',
      'resolder',
      'go over',
      'touch',
      'work',
      'fix',
    ],
    things: [
      'hot[\\s-]+air\\b',
      'heat[\\s-]+gun',
      '(?:soldering|hot)[\\s-]+iron',
      '(?:rework|soldering|hot[\\s-]+air)[\\s-]+(?:station|tool)',
      'pre-?heater',
      'hot[\\s-]+plate',
      'blow[\\s-]?torch',
    ],
    gap: 8,
    alone: [
      'reflow\\b(?![\\s-]+(?:oven|profile|temperature|solder))(?!(?:\\s+[\\w-]+){0,4}\\s+(?:joints?|pins?|legs?|tails?|leads?|wires?|contacts?|posts?)\\b)',
    ],
    signals: ['caution', 'warning', 'danger'],
    spokenOf: /\bhot\b|\bheat\b|\birons?\b|\bburns?\b|\bsolder(?:ing)?\b/i,
  },
  'hot-part': {
    why: 'Heat sinks and parts that are said to be hot burn the finger that tests them. Other parts are touched with a probe all day.',
    is: 'work on hot parts',
    verbs: [
      'touch',
      'feel',
      'grip',
      'grab',
      'press on',
      'lay (?:a|your|one) finger on',
      'put (?:a|your|one) finger on',
    ],
    things: [
      'heat[\\s-]?sinks?\\b(?![\\s-]+(?:clip|screw|paste|compound))',
      'hot[\\s-]+(?:part|parts|chip|chips|resistor|resistors|regulator|transistor|diode|spot)',
      '(?:load|dummy)[\\s-]+resistors?',
    ],
    gap: 2,
    alone: [],
    signals: ['caution', 'warning', 'danger'],
    spokenOf: /\bhot\b|\bheat\b|\bburns?\b/i,
  },
  cell: {
    why: 'Cells burst when they are soldered, charged, shorted, cut or heated. To measure one or to put a fresh one in its holder is harmless.',
    is: 'work on a cell that can burst',
    verbs: [
      'solder',
      'unsolder',
      'desolder',
      'resolder',
      'heat',
      'warm',
      'charge',
      'recharge',
      'short',
      'bridge',
      'cut',
      'puncture',
      'drill',
      'crush',
      'grind',
    ],
    things: [
      "(?:(?:lithium|coin|button|nicd|nickel[\\s-]+cadmium|barrel|backup|cmos|rtc|clock)[\\s-]+){0,4}(?<!(?:memory|bit|load|ram)[\\s-])(?:cell|cells|battery|batteries|barrel[\\s-]+pack|accumulator)\\b(?!['’]?s?[\\s-]+(?:holder|clip|socket|connector|contacts?|traces?|tracks?|jumper|cover|door|compartment|line|rail|input|circuit|diode))",
    ],
    gap: 4,
    alone: [],
    signals: ['warning', 'caution', 'danger'],
    spokenOf: /\bcells?\b|\bbatter(?:y|ies)\b|\blithium\b/i,
  },
};

export const riskKinds = Object.keys(riskTable) as readonly RiskKind[];
