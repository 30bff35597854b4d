import type { SiteRow } from '#assistant';
import type { OpenedBook } from '#logbook';
import { Problem } from './problem.ts';

/** The site that a command is about: the one named, or the only one. */
export function siteIn(book: OpenedBook, name: string | undefined, path: string): SiteRow {
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
export function dateArg(name: string, value: string | undefined): string | null {
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
