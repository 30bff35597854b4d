import { readFileSync } from 'node:fs';
import { SITE_FIELDS, Site } from '#records';
import { Problem } from './problem.ts';

/** Reads a site file; unknown fields are warned about on standard error, a bad known one is refused. */
export function readSiteFile(path: string, warn: (line: string) => void): Site {
  let raw: unknown;
  try {
    raw = JSON.parse(readFileSync(path, 'utf8').replace(/^\uFEFF/, ''));
  } catch (error) {
    const missing = (error as { code?: string }).code === 'ENOENT';
    throw new Problem(
      missing ? `there is no site file ${path}` : `the site file ${path} is not readable JSON`,
    );
  }
  const parsed = Site.safeParse(raw);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    const where = issue?.path.join('.') || 'the whole';
    throw new Problem(`the site file ${path} has a bad value: ${where}: ${issue?.message ?? ''}`);
  }
  const known: readonly string[] = SITE_FIELDS;
  for (const field of Object.keys(raw as object)) {
    if (!known.includes(field)) warn(`the site file has a field that is not known and not used: ${field}`);
  }
  return parsed.data;
}
