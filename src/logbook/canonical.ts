import { createHash } from 'node:crypto';

/** JSON with keys in order and nothing left out but `undefined`: the same facts give the same bytes. */
export const canonicalJson = (value: unknown): string => {
  if (Array.isArray(value)) return `[${value.map((item) => canonicalJson(item ?? null)).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value ?? null);
  const fields = value as Record<string, unknown>;
  const keys = Object.keys(fields)
    .filter((key) => fields[key] !== undefined)
    .sort();
  return `{${keys.map((key) => `${JSON.stringify(key)}:${canonicalJson(fields[key])}`).join(',')}}`;
};

/** A line as it stands in its table, JSON columns as the text they are. */
export type LineColumns = {
  site: number;
  number: number;
  happened_at: string;
  local_date: string;
  received_at: string;
  person: number | null;
  message: number | null;
  record: string;
  typed: string | null;
  assumed: string;
  held: string | null;
  voids: string;
  pictures: number;
};

/** What the chain of a site begins with. */
export const NO_LINE_BEFORE = '0'.repeat(64);

/**
 * SHA-256 over the canonical JSON of the line and the hash of the line before it in its site. The JSON columns go in
 * as their very bytes, so that a changed blank in them shows as well.
 */
export const lineHash = (line: LineColumns, before: string): string => {
  const text = (value: string | null) => JSON.stringify(value);
  const canonical =
    `{"assumed":${line.assumed},"before":"${before}","happenedAt":${text(line.happened_at)},` +
    `"held":${line.held ?? 'null'},"localDate":${text(line.local_date)},"message":${line.message ?? 'null'},` +
    `"number":${line.number},"person":${line.person ?? 'null'},"pictures":${line.pictures},` +
    `"receivedAt":${text(line.received_at)},"record":${line.record},"site":${line.site},` +
    `"typed":${text(line.typed)},"voids":${line.voids}}`;
  return createHash('sha256').update(canonical).digest('hex');
};

type Path = (string | number)[];
type Words = [path: Path, words: string][];

/** Fields that hold the writer's own words; the text of a note is all of them that the note has. */
const isWords = (key: string, of: object): boolean =>
  key === 'said' || key === 'note' || (key === 'text' && 'kind' in of && of.kind === 'note');

/**
 * Takes the writer's own words out of a record or a doubt, with the way back to each: they are kept outside the
 * chained line, so that they can be forgotten without breaking it.
 */
export const takeSaid = (value: unknown): { rest: unknown; words: Words } => {
  const words: Words = [];
  const walk = (part: unknown, path: Path): unknown => {
    if (Array.isArray(part)) return part.map((item, index) => walk(item, [...path, index]));
    if (typeof part !== 'object' || part === null) return part;
    const rest: [string, unknown][] = [];
    for (const [key, field] of Object.entries(part)) {
      if (isWords(key, part) && typeof field === 'string') words.push([[...path, key], field]);
      else rest.push([key, walk(field, [...path, key])]);
    }
    return Object.fromEntries(rest);
  };
  return { rest: walk(value, []), words };
};

/** Puts the words back where they were. */
export const putSaid = (value: unknown, words: Words): void => {
  for (const [path, said] of words) {
    let part = value as Record<string | number, unknown> | undefined;
    for (const step of path.slice(0, -1)) part = part?.[step] as typeof part;
    if (part) part[path.at(-1)!] = said;
  }
};
