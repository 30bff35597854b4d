import { existsSync } from 'node:fs';
import type { SiteRow } from '#assistant';
import { localDateOf } from '#core';
import type { OpenedBook } from '#logbook';
import { Language } from '#records';
import { DEFAULT_BOOK } from './backup-folder.ts';
import { open } from './parts.ts';
import { Problem } from './problem.ts';

/** Which book, and which of its sites: what every command about a site takes. */
export const SITE_OPTIONS = { db: { type: 'string' }, site: { type: 'string' } } as const;
/** The same with a span of days, a language, and where the file goes: what every command that makes a file takes. */
export const FILE_OPTIONS = {
  ...SITE_OPTIONS,
  from: { type: 'string' },
  to: { type: 'string' },
  language: { type: 'string' },
  out: { type: 'string' },
} as const;
type SiteValues = { db?: string | undefined; site?: string | undefined };
type FileValues = SiteValues & {
  from?: string | undefined;
  to?: string | undefined;
  language?: string | undefined;
};

/** Opens the book that the flags name for one of its sites, and closes it afterwards. */
export async function withSite<T>(
  values: SiteValues,
  how: { readOnly: boolean },
  work: (book: OpenedBook, row: SiteRow) => Promise<T>,
): Promise<T> {
  const path = values.db ?? DEFAULT_BOOK;
  const book = open(path, how.readOnly);
  try {
    return await work(book, siteIn(book, values.site, path));
  } finally {
    book.close();
  }
}

/** The span and language that the flags give; without `--to` up to the site's today. */
export function fileArgs(
  values: FileValues,
  { site }: SiteRow,
  now: string,
): { from: string | null; to: string; language: Language } {
  const language = Language.safeParse(values.language ?? site.languages[0]);
  if (!language.success) throw new Problem('--language is one of en, fr, es');
  const to = dateArg('to', values.to) ?? localDateOf(now, site.timeZone);
  const from = dateArg('from', values.from);
  if (from !== null && from > to) throw new Problem(`--from ${from} is after --to ${to}`);
  return { from, to, language: language.data };
}

/** Writes a file that is not there yet; what a disk can refuse becomes one plain line. */
export async function intoNew<T>(path: string, write: () => Promise<T>): Promise<T> {
  if (existsSync(path)) throw new Problem(`${path} exists already and is not overwritten`);
  try {
    return await write();
  } catch (error) {
    const { code } = (error ?? {}) as { code?: string };
    if (code === 'ENOENT' || code === 'EACCES' || code === 'ENOSPC' || code === 'EISDIR')
      throw new Problem(`${path} could not be written there (${code})`);
    throw error;
  }
}

/** The site that a command is about: the one named, or the only one. */
function siteIn(book: OpenedBook, name: string | undefined, path: string): SiteRow {
  const sites = book.sites();
  if (name) {
    const row = book.siteByName(name);
    if (!row) throw new Problem(`there is no site "${name}" in ${path}`);
    return row;
  }
  if (sites.length === 0) throw new Problem(`the log book ${path} holds no site yet`);
  if (sites.length === 1) return sites[0]!;
  throw new Problem(
    `the book holds ${sites.length} sites: say which with --site NAME (${sites.map(({ site }) => site.name).join(', ')})`,
  );
}

/** A date as a flag gives it, one that exists. */
function dateArg(name: string, value: string | undefined): string | null {
  if (value === undefined) return null;
  const ms = Date.parse(`${value}T00:00:00Z`);
  if (
    !/^\d{4}-\d{2}-\d{2}$/.test(value) ||
    Number.isNaN(ms) ||
    new Date(ms).toISOString().slice(0, 10) !== value
  )
    throw new Problem(`--${name} is a date like 2026-06-17, not "${value}"`);
  return value;
}
