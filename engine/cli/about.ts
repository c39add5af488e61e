import { version } from '../../package.json';

/** This program's own version. */
export { version };

/** Stands beside the command's folder in the sources and where it is built. */
const page = '../../schema/diagnostics.md';

/** The address of the page that explains every code of a problem. */
export const diagnosticsPage = new URL(page, import.meta.url).href;
