/** The text of a body, a section in one line: `A: Read v5; low → B; otherwise → C`. */
export function shortBody(...lines: string[]): string {
  return lines
    .map((line) => {
      const [title = '', rest = ''] = line.split(/: (.*)/);
      const [lead = '', ...outcomes] = rest.split('; ');
      const link = (text: string) =>
        text.replace(/→ (\w+)/, (_, name: string) => `→ [${name}](#${name.toLowerCase()})`);
      const leads: readonly [RegExp, (names: string) => string][] = [
        [
          /^Read (.*)/,
          (names) =>
            `Read ${names
              .split(' ')
              .map((name) => `\`${name}\``)
              .join(', ')}.\n\n${outcomes.map((each) => `- ${link(each)}`).join('\n')}`,
        ],
        [/^Do → (.*)/, (name) => `Do: work.\n\nThen → [${name}](#${name.toLowerCase()})`],
        [/^Fault (.*)/, (name) => `Mend.\n\nFault \`${name}\`.\n\nProve \`v5\`, \`pg\`.`],
        [/^Unproved (.*)/, (name) => `Mend.\n\nFault \`${name}\`.`],
        [/^Stop/, () => 'Stop: here.'],
      ];
      const [pattern, write] = leads.find(([each]) => each.test(lead)) ?? [/(.*)/, (text: string) => text];
      return `## ${title}\n\n${write(pattern.exec(lead)?.[1] ?? '')}\n`;
    })
    .join('\n');
}
