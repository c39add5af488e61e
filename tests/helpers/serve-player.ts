import { preview } from 'vite';

export interface Served {
  /** With a slash at its end. */
  readonly url: string;
  close(): Promise<void>;
}

/** Serves the built player on a free port of this machine alone. */
export async function servePlayer(): Promise<Served> {
  const server = await preview({
    logLevel: 'silent',
    preview: { host: '127.0.0.1', port: 0, strictPort: true, open: false },
  });
  const url = server.resolvedUrls?.local[0];
  if (url === undefined) throw new Error('the player is not served');
  return { url, close: () => server.close() };
}
