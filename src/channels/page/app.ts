import { createHash } from 'node:crypto';
import { getConnInfo } from '@hono/node-server/conninfo';
import { type Context, Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import type { Assistant, Complain, OutgoingRow, PictureSpec, Words } from '#assistant';
import type { OpenedBook } from '#logbook';
import { Language } from '#records';
import { makeBuckets } from './limits.ts';
import { CHANNEL, readSaid, toIncoming } from './saying.ts';
import { makeShell, type Shell } from './shell.ts';
import type { Answered, News, Reply, Trouble } from './wire.ts';

export type PageParts = {
  book: OpenedBook;
  assistant: Pick<Assistant, 'receive' | 'board'>;
  words: Words;
  complain: Complain;
  draw?(picture: PictureSpec, site: number): Promise<Uint8Array | null>;
  /** Something came in: what it puts out elsewhere can go. */
  heard?(): void;
  now(): string;
};

const LARGEST_BODY = 24 * 1024;
/** A phone that has been in the shed all day sends what waited at once; nobody types faster than this. */
const PER_LINK = { burst: 120, perSecond: 2 };
const PER_ADDRESS = { burst: 240, perSecond: 4 };
/** Links that are none: guessing is hopeless at this rate, and two slips in a row are not. */
const WRONG_LINKS = { burst: 10, perSecond: 0.2 };

const HEADERS = {
  'content-security-policy':
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; connect-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': 'camera=(), microphone=(), geolocation=(), payment=()',
};

const STATUS = {
  'no-link': 401,
  'link-unknown': 404,
  'link-ended': 410,
  'too-old': 422,
  'too-large': 413,
  'not-readable': 422,
  'too-many': 429,
  ours: 500,
} as const;

export const makeApp = (parts: PageParts): Hono => {
  const { book, assistant, words } = parts;
  const nowMs = () => Date.parse(parts.now());
  const links = makeBuckets(PER_LINK, nowMs);
  const addresses = makeBuckets(PER_ADDRESS, nowMs);
  const wrong = makeBuckets(WRONG_LINKS, nowMs);
  let made: Promise<Shell> | null = null;
  const shell = (): Promise<Shell> => {
    made ??= makeShell(words).catch((error) => {
      made = null;
      throw error;
    });
    return made;
  };

  const trouble = (c: Context, what: Trouble, waitSeconds = 0): Response => {
    if (waitSeconds > 0) c.header('retry-after', String(waitSeconds));
    return c.json({ trouble: what }, STATUS[what]);
  };

  /** The site that a request's link opens, or the answer that it gets instead. */
  const opened = (c: Context): { site: number; phone: string } | Response => {
    const wait = addresses.take(addressOf(c));
    if (wait > 0) return trouble(c, 'too-many', wait);
    const token = /^Bearer ([\w-]{10,100})$/.exec(c.req.header('authorization') ?? '')?.[1];
    if (!token) return trouble(c, 'no-link');
    const link = book.linkSite(token);
    if (!link) {
      const pause = wrong.take(addressOf(c));
      return pause > 0 ? trouble(c, 'too-many', pause) : trouble(c, 'link-unknown');
    }
    if (link.ended) return trouble(c, 'link-ended');
    const pause = links.take(createHash('sha256').update(token).digest('base64'));
    if (pause > 0) return trouble(c, 'too-many', pause);
    const phone = /^[\w-]{20,64}$/.exec(c.req.header('x-phone') ?? '')?.[0];
    return phone ? { site: link.site, phone } : trouble(c, 'not-readable');
  };

  const isOf = (row: OutgoingRow | null, site: number, phone: string): row is OutgoingRow =>
    row !== null && row.site === site && row.channel === CHANNEL && row.chat === phone && !row.private;

  const app = new Hono();
  app.use(async (c, next) => {
    await next();
    for (const [name, value] of Object.entries(HEADERS)) c.res.headers.set(name, value);
    if (c.req.path.startsWith('/api/')) c.res.headers.set('cache-control', 'no-store');
  });
  app.onError((error, c) => {
    parts.complain('a request of the page could not be answered', error);
    return trouble(c, 'ours');
  });

  app.post(
    '/api/say',
    bodyLimit({ maxSize: LARGEST_BODY, onError: (c) => trouble(c, 'too-large') }),
    async (c) => {
      const who = opened(c);
      if (who instanceof Response) return who;
      const read = readSaid(await c.req.text());
      if (read === 'not-readable' || read === 'too-old') return trouble(c, read);
      if (read.choose && !isOf(book.outgoing(read.choose.row), who.site, who.phone))
        return trouble(c, 'not-readable');
      const incoming = toIncoming(read, { ...who, now: parts.now(), words });
      const received = assistant.receive(incoming);
      const rows = received.fresh
        ? received.outgoing
        : received.message
          ? book.outgoingOfMessage(received.message.id)
          : [];
      const own = rows.filter((row) => isOf(row, who.site, who.phone));
      // Marked before it is known to have arrived: the same key again brings the same replies.
      const waiting = own.filter((row) => row.sentAt === null);
      if (waiting.length > 0) book.markSent(waiting.map(asSent), parts.now());
      if (received.fresh) parts.heard?.();
      return c.json({ replies: own.map(replyOf) } satisfies Answered);
    },
  );

  app.get('/api/news', async (c) => {
    const who = opened(c);
    if (who instanceof Response) return who;
    const after = Number(c.req.query('after') ?? 0);
    const waiting = book.waiting(CHANNEL, 1000).filter((row) => isOf(row, who.site, who.phone));
    const had = waiting.filter((row) => row.id <= after);
    if (had.length > 0) book.markSent(had.map(asSent), parts.now());
    const language = Language.safeParse(c.req.query('language'));
    const { version } = await shell();
    return c.json({
      version,
      board: { site: who.site, ...assistant.board(who.site, language.data ?? null, parts.now()) },
      replies: waiting.filter((row) => row.id > after).map(replyOf),
    } satisfies News);
  });

  app.get('/api/picture/:row{[0-9]+}', async (c) => {
    const who = opened(c);
    if (who instanceof Response) return who;
    const row = book.outgoing(Number(c.req.param('row')));
    if (!isOf(row, who.site, who.phone) || !row.picture) return trouble(c, 'not-readable');
    const png = await parts.draw?.(row.picture, row.site);
    if (!png) return trouble(c, 'not-readable');
    return c.body(Buffer.from(png), 200, { 'content-type': 'image/png' });
  });

  app.get('/*', async (c) => {
    const { version, assets } = await shell();
    const asset = assets.get(c.req.path.slice(1));
    if (!asset) return c.text('', 404);
    const tag = `"${version}"`;
    c.header('etag', tag);
    c.header('cache-control', 'no-cache');
    c.header('vary', 'accept-encoding');
    if (c.req.header('if-none-match') === tag) return c.body(null, 304);
    c.header('content-type', asset.type);
    if (!/\bgzip\b/.test(c.req.header('accept-encoding') ?? '')) return c.body(new Uint8Array(asset.body));
    c.header('content-encoding', 'gzip');
    return c.body(new Uint8Array(asset.gzip));
  });
  return app;
};

const asSent = (row: OutgoingRow) => ({ id: row.id, sentAs: `p${row.id}` });

const replyOf = (row: OutgoingRow): Reply => ({
  row: row.id,
  text: row.text,
  choices: row.choices.map(({ label, act }) => ({ label, undo: act.do === 'undo' })),
  picture: row.picture ? { alt: row.picture.alt } : null,
  // One that is made is for coordinators, and nobody is one by a link.
  file: row.file && 'text' in row.file ? row.file : null,
  at: row.createdAt,
});

/** Behind a proxy on this machine, the address that the proxy itself saw. */
const addressOf = (c: Context): string => {
  const address = getConnInfo(c).remote.address ?? '';
  const isLocal = /^(::ffff:)?127\.|^::1$/.test(address);
  const told = isLocal ? c.req.header('x-forwarded-for')?.split(',').at(-1)?.trim() : undefined;
  return told || address;
};
