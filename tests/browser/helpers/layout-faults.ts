import type { Page } from 'playwright-core';

/** What is wrong with how a screen is laid out: one sentence for each fault. */
export const layoutFaults = (page: Page): Promise<readonly string[]> => page.evaluate(findFaults);

/** Runs in the page. Least heights in CSS px: 44 for what a hand goes for, 24 for the rest (WCAG 2.2, 2.5.8). */
function findFaults(): readonly string[] {
  const faults: string[] = [];
  const nameOf = (element: Element) =>
    `${element.tagName.toLowerCase()}.${element.className} "${(element.textContent ?? '').trim().slice(0, 40)}"`;
  const seen = (element: Element) => {
    const { width, height } = element.getBoundingClientRect();
    return width > 1 && height > 1 && element.checkVisibility({ visibilityProperty: true });
  };
  const sheet = document.querySelector('dialog[open]');
  const within = sheet ?? document.body;
  const all = (selector: string) => [...within.querySelectorAll(selector)].filter(seen);

  const { scrollWidth } = document.documentElement;
  if (scrollWidth > innerWidth) faults.push(`the page is ${scrollWidth - innerWidth} px too wide`);
  if (sheet !== null && sheet.scrollWidth > sheet.clientWidth) faults.push('the sheet scrolls sideways');

  for (const target of all('button, a[href], input, textarea, select, summary, [role="button"]')) {
    const inProse = target.closest('.prose, .task, .why') !== null && target.matches('a');
    const hit = target.matches('input:is([type="radio"], [type="checkbox"])')
      ? (target.closest('label') ?? target)
      : target;
    const { width, height } = hit.getBoundingClientRect();
    const least = target.matches('.action, .option, .offer, .position, .field-input, .words-input') ? 44 : 24;
    if (!inProse && (height < least - 0.5 || width < 23.5))
      faults.push(`${nameOf(target)} is ${width.toFixed(0)} × ${height.toFixed(0)} px`);
  }

  for (const figure of all('.figure')) {
    const lines = new Set([...figure.getClientRects()].map(({ bottom }) => Math.round(bottom)));
    if (lines.size > 1) faults.push(`${nameOf(figure)} is broken over ${lines.size} lines`);
    const { left, right } = figure.getBoundingClientRect();
    if (figure.closest('.table, pre') === null && (left < -0.5 || right > innerWidth + 0.5))
      faults.push(`${nameOf(figure)} sticks out`);
  }

  const value = /\d[\d.,]*\s(?:[pnµmkMG]?(?:V|A|Ω|Hz|s|F|W)(?:pp|rms)?|°C|%)(?![\p{L}\p{N}])/gu;
  const texts = document.createTreeWalker(within, NodeFilter.SHOW_TEXT);
  for (let node = texts.nextNode(); node !== null; node = texts.nextNode()) {
    if (node.parentElement === null || !seen(node.parentElement)) continue;
    for (const match of (node.textContent ?? '').matchAll(value)) {
      const range = document.createRange();
      range.setStart(node, match.index);
      range.setEnd(node, match.index + match[0].length);
      const lines = new Set([...range.getClientRects()].map(({ bottom }) => Math.round(bottom)));
      if (lines.size > 1)
        faults.push(`"${match[0]}" is broken over two lines in ${nameOf(node.parentElement)}`);
    }
  }

  for (const main of all('.action-main')) {
    main.scrollIntoView({ block: 'nearest' });
    const { left, top, width, height } = main.getBoundingClientRect();
    const there = document.elementFromPoint(left + width / 2, top + height / 2);
    if (there === null || !main.contains(there)) faults.push(`${nameOf(main)} cannot be reached`);
    if (main.closest('.desk') !== null && (top < 0 || top + height > innerHeight))
      faults.push(`${nameOf(main)} is not in sight`);
  }

  for (const control of all('button, a[href], input, textarea, summary, [tabindex="0"]')) {
    (control as HTMLElement).focus();
    const { left, top, right, bottom } = control.getClientRects()[0] ?? control.getBoundingClientRect();
    const [x, y] = [left + Math.min((right - left) / 2, 20), top + Math.min((bottom - top) / 2, 20)];
    const middle = (Math.max(top, 0) + Math.min(bottom, innerHeight)) / 2;
    const own = [control, control.closest('label')].some((one) =>
      [y, middle].some((at) => one?.contains(document.elementFromPoint(x, at))),
    );
    if (!(control as HTMLButtonElement).disabled && !own)
      faults.push(`${nameOf(control)} is covered or out of sight when it has the focus`);
  }
  return faults;
}
