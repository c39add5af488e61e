/** The text of a tree with `checks` checks, a reading for each, and a fault for every tenth: prose, hazards and tables as
 *  people write them. Nothing but readings is asked, 4.98 V leads from each check to the next and from the
 *  last to the first. The same number gives the same text. */
export function bigTree(checks: number): string {
  const numbers = Array.from({ length: checks }, (_, index) => index);
  const faults = numbers.filter((number) => number % 10 === 0);
  return [
    '---',
    'format: 1',
    'kind: tree',
    'title: A very long board',
    'symptom: Nothing moves',
    'boards: [486]',
    'readings:',
    ...numbers.map(reading),
    'faults:',
    ...faults.map(fault),
    '---',
    '',
    '# A very long board',
    '',
    '> **Caution** The supply holds mains voltage. Keep it closed.',
    '',
    ...numbers.map((number) => check(number, checks)),
    ...faults.map(faultSection),
    '## End of the line',
    '',
    'Stop: No check is left.',
    '',
  ].join('\n');
}

const scales = [
  'expect: 5 V ± 5 %',
  'scale: none < 0.5 V < low < 4.75 V < good < 5.25 V < high',
  'expect: at least 2.4 V',
  'expect: 4 V .. 5.25 V',
];

const reading = (number: number): string =>
  [
    `  point_${number}:`,
    `    is: Level at point ${number} of the long board`,
    '    unit: V',
    `    ${scales[number % scales.length]}`,
    ...(number % scales.length === 1 ? ['    normal: good'] : []),
    '    with: [meter]',
    '    power: on',
    `    points: [pin ${number} of the long connector, ground]`,
    '    minutes: 2',
    '    source: common practice',
  ].join('\n');

const fault = (number: number): string =>
  [
    `  part_${number}:`,
    `    is: Part ${number} is dead`,
    `    weight: ${1 + (number % 7)}`,
    `    shows: { point_${number}: low }`,
    '    source: common practice',
  ].join('\n');

const check = (number: number, checks: number): string => {
  const next = `[Point ${(number + 1) % checks}](#point-${(number + 1) % checks})`;
  const part = number - (number % 10);
  return [
    `## Point ${number}`,
    '',
    `Black lead on a mounting-hole ground, red on **pin ${number}** of the long connector; the board is powered and`,
    'the cards are out. A reading that *wanders* by more than a few millivolts is no reading: clean the pin and take it again.',
    '',
    ...(number % 5 === 0
      ? ['> **Caution** The pins stand close. One slip kills the chip behind them.', '']
      : []),
    ...(number % 7 === 0
      ? [
          '| pin | colour | goes to |',
          '| --- | :---: | --- |',
          `| ${number} | red | \`point_${number}\` |`,
          '| next | black | ground |',
          '',
        ]
      : []),
    `Read \`point_${number}\`.`,
    '',
    `- good → ${next}`,
    `- point_${number} is low → [Part ${part}](#part-${part}), it sits beside the pin`,
    '- cannot read → [End of the line](#end-of-the-line), nothing can be said without this pin',
    `- otherwise → [Part ${part}](#part-${part})`,
    '',
    'Write the value down, not "ok": the next bench will ask for it.',
    '',
  ].join('\n');
};

const faultSection = (number: number): string =>
  [
    `## Part ${number}`,
    '',
    `Fault \`part_${number}\`.`,
    '',
    'Power off. Lift one leg and look again; if the level comes back, change the part for one of the same value.',
    '',
    `Prove \`point_${number}\`.`,
    '',
  ].join('\n');
