import type { Entry, EntryKind } from '../model/entry.ts';
import type { Job } from '../model/job.ts';
import { apply, openSession, type Session } from '../run/index.ts';

/** Where the files of a case are, as it names them. */
interface Names {
  readonly title: string;
  readonly tree: string;
  readonly board: string | null;
}

/** A job turned into the text of a case: what was said in order, and where the walk stands now. */
export function caseOf(job: Job, { title, tree, board }: Names): string {
  let session = openSession(job.tree, job);
  const answers: string[] = [];
  for (const entry of job.entries) {
    session = apply(session, entry);
    const answer = answerOf(entry, session);
    if (answer !== null) answers.push(oneLine(answer));
  }
  const settings = job.entries.flatMap((entry) =>
    entry.kind === 'set'
      ? [`  ${entry.setting}: ${JSON.stringify(entry.value === null ? '?' : entry.typed)}`]
      : [],
  );
  const here = session.position.section;
  const end = here === null ? 'a mended board' : `[${here.title}](${fileOf(session, tree)}#${here.id})`;
  return [
    '---',
    'format: 1',
    'kind: case',
    `title: ${JSON.stringify(title)}`,
    `tree: ${JSON.stringify(tree)}`,
    ...(board === null ? [] : [`board: ${JSON.stringify(board)}`]),
    ...(settings.length === 0 ? [] : ['settings:', ...settings]),
    '---',
    '',
    `# ${title}`,
    '',
    ...answers.map((answer, index) => `${index + 1}. ${answer}`),
    '',
    `Leads to ${end}.`,
    '',
  ].join('\n');
}

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** A job that was handed over stands in another file beside the first. */
function fileOf({ loaded }: Session, tree: string): string {
  const folder = tree.slice(0, tree.lastIndexOf('/') + 1);
  return `${folder}${loaded.tree.id}.md`;
}

/** How an entry is said; `after` is the session once it has happened. */
type Say<Kind extends EntryKind> = (
  entry: Extract<Entry, { readonly kind: Kind }>,
  after: Session,
) => string | null;

/** What goes without saying in a case. */
const silent = (): null => null;

const why = (text: string): string => (text === '' ? '' : `: ${text}`);
const now = (board: 'failing' | 'running'): string => (board === 'running' ? ', running now' : '');

const says: { readonly [Kind in EntryKind]: Say<Kind> } = {
  opened: silent,
  set: silent,
  acknowledged: silent,
  did: silent,
  altered: ({ setting, typed }) => `\`${setting}\` := ${typed}`,
  corrected: ({ setting, typed }) => `correct \`${setting}\` := ${typed}`,
  symptom: ({ same }) => (same ? null : 'no'),
  read: ({ observation, board }) => `\`${observation.reading}\` = ${observation.typed}${now(board)}`,
  confirmed: () => 'same',
  unread: ({ why: reason }) => `cannot read${why(reason)}`,
  retaken: ({ manner, observation, board }) =>
    `${manner === 'again' ? 'again' : 'retake'} \`${observation.reading}\` = ${observation.typed}${now(board)}`,
  struck: ({ of, why: reason }) => `strike ${of + 1}${why(reason)}`,
  twin: ({ observation }) => `twin \`${observation.reading}\` = ${observation.typed}`,
  equipped: silent,
  overrode: ({ why: reason }) => `override: ${reason}`,
  arranged: ({ conditions }) =>
    `arrange ${Object.entries(conditions)
      .map(([condition, value]) => `${condition} ${value}`)
      .join(', ')}`,
  runs: ({ touched, undone }) => (undone === 'not tried' ? `runs: ${touched}` : `undone: ${undone}`),
  tree: silent,
  assumed: (_entry, { position }) => (position.section === null ? null : `as if ${position.section.id}`),
  waiting: () => 'wait',
  remedied: ({ which, parts }) =>
    [
      'remedied',
      ...(which === '' && parts.length === 0 ? [] : [`: ${which}`]),
      ...parts.map(({ what, cost }) => `; ${what}${cost === null ? '' : ` = ${cost}`}`),
    ].join(''),
  declined: ({ why: reason }) => `decline${why(reason)}`,
  back: () => 'back',
  went: ({ section }) => `go ${section}`,
  detoured: ({ section, reading }) => `detour \`${reading}\` at ${section}`,
  returned: () => 'return',
  note: ({ text }) => `note: ${text}`,
  todo: ({ text }) => `todo: ${text}`,
  'todo-done': ({ of }) => `todo done ${of + 1}`,
  resumed: ({ same }) => (same ? 'resume' : 'resume changed'),
  closed: ({ mended, note }) => `close${mended ? '' : ' not mended'}${why(note)}`,
  reopened: ({ why: reason }) => `reopen${why(reason)}`,
};

const answerOf = (entry: Entry, after: Session): string | null =>
  (says[entry.kind] as Say<EntryKind>)(entry as never, after);
