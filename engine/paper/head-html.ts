import { type Child, element } from '../markup/index.ts';
import { signalWords } from '../model/prose.ts';
import type { Setting } from '../model/setting.ts';
import { settingText } from '../scale/index.ts';
import { blank, ticks } from './blanks.ts';
import { hazardsHtml, meanings } from './hazard-html.ts';
import type { PaperContext } from './paper-context.ts';
import { blocksHtml } from './prose-html.ts';

/** What stands above the first section: what it is for, the hazards, what is needed, what to note of this board. */
export function headHtml(context: PaperContext): Child {
  const { tree } = context;
  const place = { ...context, within: '' };
  return [
    element(
      'header',
      {},
      element('h1', {}, tree.title),
      element('p', { class: 'symptom' }, element('b', {}, 'Symptom: '), tree.symptom),
      tree.boards.length > 0 && element('p', {}, element('b', {}, 'For: '), tree.boards.join('; ')),
      element(
        'p',
        { class: 'fields' },
        ['Board, serial number', 'Owner', 'Technician', 'Date'].map((field) => [
          element('span', { class: 'field' }, `${field} `, blank('medium')),
          ' ',
        ]),
      ),
    ),
    element(
      'section',
      { class: 'hazards' },
      element('h2', {}, 'Hazards'),
      hazardsHtml(tree.hazards, place),
      element(
        'dl',
        { class: 'words' },
        signalWords.map((word) => [element('dt', {}, word.toUpperCase()), element('dd', {}, meanings[word])]),
      ),
    ),
    tree.blocks.length > 0 && element('section', {}, blocksHtml(tree.blocks, place)),
    element(
      'section',
      {},
      element('h2', {}, 'Before you begin'),
      toolsHtml(context),
      settingsHtml(tree.settings),
    ),
  ];
}

function toolsHtml({ tree }: PaperContext): Child {
  const tools = new Set([
    ...tree.readings.flatMap((reading) => reading.with),
    ...tree.faults.flatMap((fault) => fault.tools),
  ]);
  return (
    tools.size > 0 &&
    element('p', { class: 'tools' }, element('b', {}, 'Tools: '), ticks([...tools].toSorted()))
  );
}

function settingsHtml(settings: readonly Setting[]): Child {
  if (settings.length === 0) return null;
  const heads = ['Setting', 'What it is', 'Usually', 'On this board'];
  return element(
    'table',
    { class: 'settings' },
    element(
      'thead',
      {},
      element(
        'tr',
        {},
        heads.map((head) => element('th', {}, head)),
      ),
    ),
    element(
      'tbody',
      {},
      settings.map((setting) =>
        element(
          'tr',
          {},
          element('td', {}, element('code', {}, setting.id)),
          element('td', {}, setting.is),
          element('td', {}, setting.usual === null ? '' : settingText(setting.usual)),
          element('td', { class: 'space' }, settingSpace(setting)),
        ),
      ),
    ),
  );
}

const settingSpace = (setting: Setting): Child =>
  setting.kind === 'quantity'
    ? [blank('short'), ` ${setting.unit}`]
    : ticks(
        setting.options.map(({ name, means }) => [
          name,
          means === null ? '' : element('small', {}, `: ${means}`),
        ]),
      );
