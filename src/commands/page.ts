import { randomBytes } from 'node:crypto';
import type { Assistant, Complain, PictureSpec, Words } from '#assistant';
import type { OpenedBook } from '#logbook';
import { Problem } from './problem.ts';

export type OverPage = {
  /** What to open on this machine: the address with the site's link; null where no port was free. */
  link: string | null;
  close(): Promise<void>;
};

type Flags = { port?: string | undefined; host?: string | undefined };

/** The page beside the terminal. Each start makes one more link, since of those before only a hash is kept. */
export async function overPage(
  parts: {
    book: OpenedBook;
    assistant: Assistant;
    words: Words;
    site: number;
    complain: Complain;
    draw(picture: PictureSpec, site: number): Promise<Uint8Array | null>;
    heard(): void;
  },
  flags: Flags,
): Promise<OverPage> {
  const { book, site } = parts;
  const { PortTaken, startPage } = await import('#channels/page');
  const port = flags.port === undefined ? undefined : portOf(flags.port);
  try {
    const page = await startPage({ ...parts, host: flags.host, port, now: () => new Date().toISOString() });
    book.setMemo(site, 'page-served-at', page.address);
    const token = randomBytes(24).toString('base64url');
    book.addLink(site, token);
    return { link: `${page.address}#${token}`, close: page.close };
  } catch (error) {
    if (!(error instanceof PortTaken)) throw error;
    if (flags.port !== undefined || flags.host !== undefined)
      throw new Problem(
        `the page cannot be opened at ${error.message}: it is in use, or not of this machine`,
      );
    book.setMemo(site, 'page-served-at', null);
    return { link: null, close: async () => {} };
  }
}

function portOf(typed: string): number {
  const port = Number(typed);
  if (!/^\d{1,5}$/.test(typed) || port > 65_535) throw new Problem('--port must be a port number');
  return port;
}
