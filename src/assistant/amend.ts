import { type ReadContext, readMessage } from '#parsers';
import {
  type Doubt,
  type Entry,
  FieldRecord,
  type ParsedMessage,
  type Request,
  toCelsius,
  toKg,
} from '#records';
import { offerUndo, rememberLast } from './decide.ts';
import { mustAsk } from './doubting.ts';
import type { Draft } from './draft.ts';
import { entryLine } from './entry-lines.ts';
import { hold } from './holding.ts';
import { matters } from './matters/index.ts';
import { repliedEntries } from './questions.ts';
import { containersOf, lastOfSender } from './reading-context.ts';
import { say } from './say.ts';
import { settingsOf } from './settings-of.ts';
import { keepsHold, mayUndo } from './undo.ts';

type Change = { old: Entry; record: FieldRecord; typed?: string | null };

/** Writes each record in the place of its older line and says so. */
function replace(draft: Draft, changes: readonly Change[]): void {
  const written = changes.map(({ old, record, typed }) => {
    const entry = draft.add(record, {
      voids: [old.number],
      typed: typed ?? old.typed,
      // Where the day did not change the line keeps its moment, so that its place in the book does not.
      ...(record.when === (old.record as { when?: string }).when ? { happenedAt: old.happenedAt } : {}),
    });
    draft.lines.push([...entryLine(draft, entry), say('part-replaces', { old: { entry: old.number } })]);
    return entry;
  });
  const numbers = written.map((entry) => entry.number);
  rememberLast(draft, numbers);
  offerUndo(draft, numbers);
  draft.lines.push(...matters(draft, written));
}

/** Amended lines are asked about as if said for the first time: nothing slips past a hold by a correction. */
function amendTo(draft: Draft, changes: readonly Change[]): void {
  const free: Change[] = [];
  const asked: Doubt[] = [];
  for (const change of changes) {
    if (keepsHold(draft, change.old)) continue;
    const [was, is] = [change.old.record, change.record].map((record) => (record as { pile?: unknown }).pile);
    const doubt = was === is ? null : mustAsk(draft, change.record);
    if (doubt === null) {
      free.push(change);
      continue;
    }
    const { number } = change.old;
    draft.add({ kind: 'void', voids: number, why: 'edit' }, { voids: [number], happenedAt: draft.now });
    draft.lines.push(say('edited', { entries: { text: `#${number}` }, count: { count: 1 } }));
    asked.push(doubt);
  }
  if (free.length > 0) replace(draft, free);
  for (const doubt of asked) hold(draft, doubt);
}

/** An amended value passes the same bounds as one that is said for the first time: degrees of a place, a cart's weight. */
function isPlausible(draft: Draft, record: FieldRecord): boolean {
  if (record.kind === 'temperature') {
    const [low, high] = record.place === 'ambient' ? [-50, 50] : [-30, 85];
    return record.celsius.every((celsius) => celsius >= low && celsius <= high);
  }
  if (record.kind !== 'weigh-in' || record.kg == null || !record.container) return true;
  const { tareKg, litres } = containersOf(draft.picture(), draft.today)[record.container] ?? {};
  const count = record.count ?? 1;
  const tare = record.basis === 'net' ? 0 : (tareKg ?? 0) * count;
  return record.kg > tare && (litres == null || record.kg - tare <= litres * count);
}

/** `sorry 56.2 not 58.2`, `that was C not B`, `*chips 16`: finds the line that is meant and amends it. */
export function amend(draft: Draft, request: Request): void {
  const candidates = amendable(draft, request);
  const to = request.to;
  if (to === undefined || to === null) return;
  for (const entry of candidates) {
    const record = amended(draft, entry.record as FieldRecord, request.from ?? null, to);
    if (record) {
      const checked = FieldRecord.safeParse(record);
      if (!checked.success || !isPlausible(draft, checked.data)) break;
      if (!mayUndo(draft, entry)) {
        draft.lines.push(say('not-yours', { entry: { entry: entry.number } }));
        return;
      }
      amendTo(draft, [{ old: entry, record: checked.data, typed: String(to) }]);
      return;
    }
  }
  draft.lines.push(
    say('amend-which', {
      from: { text: request.from == null ? '' : String(request.from) },
      to: { text: String(to) },
    }),
  );
}

/** Lines that may be meant, likeliest first: the one replied to, the sender's last, then the site's newest. */
function amendable(draft: Draft, request: Request): Entry[] {
  const { book, siteId } = draft;
  const own = lastOfSender(draft)?.entries ?? [];
  const numbers = [...repliedEntries(draft), ...own];
  // Without the wrong value only the last thing said can be meant, and only where it is one thing.
  if (request.from == null && !request.material)
    return numbers.length === 1 ? standingOf(draft, numbers) : [];
  const recent = book
    .latest(siteId, 60)
    .filter((entry) => draft.person === null || entry.person === draft.person.id);
  const entries = [...numbers.map((number) => book.entry(siteId, number)), ...recent].filter(
    (entry): entry is Entry => entry !== null && entry.voidedBy === null && entry.held === null,
  );
  return request.material
    ? entries.filter((entry) => (entry.record as { material?: string }).material === request.material)
    : entries;
}

const NUMBER = /^[*]?\s*(-?\d+(?:[.,]\d+)?)/;
const DATE = /^\d{4}-\d{2}-\d{2}/;
/** A number and its unit and nothing else: `12 may` is a day, `12 people came` is talk. */
const NUMBER_ALONE =
  /^[*]?\s*-?\d+(?:[.,]\d+)?\s*(?:kgs?|kilos?|lbs?|pounds?|livres?|libras?|#|[°º]?\s*[cf]|l|gal|%|cm|in)?\s*[.!]?$/iu;
/** What an answer that puts something right may begin with, in the languages of the crews. */
const IT_WAS =
  /^(?:(?:it|that|this)\s+)?(?:was|is)\s+|^(?:c['’]|ça\s+|ca\s+)?(?:était|etait|est)\s+|^(?:eso\s+)?(?:fue|era|es)\s+/iu;

/** The record with the wrong value replaced; null where this record does not hold what was said to be wrong. */
function amended(
  draft: Draft,
  record: FieldRecord,
  from: string | number | null,
  to: string | number,
): Record<string, unknown> | null {
  const toNumber = DATE.test(String(to)) ? null : asNumber(to);
  if (toNumber === null) return amendedWord(record, from === null ? null : String(from), String(to));
  const fromNumber = from === null ? null : asNumber(from);
  const { units } = settingsOf(draft.picture(), draft.today);
  const close = (a: number, b: number): boolean => Math.abs(a - b) < 0.02;
  if ('celsius' in record) {
    const unit = /f/i.test(String(to)) ? 'F' : /c/i.test(String(to)) ? 'C' : units.temperature;
    const i =
      fromNumber === null
        ? record.celsius.length === 1
          ? 0
          : -1
        : record.celsius.findIndex((c) => close(c, toCelsius(fromNumber, unit)) || close(c, fromNumber));
    if (i < 0) return null;
    return { ...record, celsius: record.celsius.map((c, j) => (j === i ? toCelsius(toNumber, unit) : c)) };
  }
  const massUnit = /lb|#/i.test(String(to)) ? 'lb' : /kg/i.test(String(to)) ? 'kg' : units.mass;
  for (const field of ['kg', 'litres', 'count', 'percent', 'hours', 'value'] as const) {
    const held = (record as Record<string, unknown>)[field];
    if (typeof held !== 'number') continue;
    const value = (number: number): number => (field === 'kg' ? toKg(number, massUnit) : number);
    if (fromNumber === null || close(held, value(fromNumber))) {
      if (field === 'count' && fromNumber === null) continue;
      return { ...record, [field]: value(toNumber) };
    }
  }
  return null;
}

function amendedWord(record: FieldRecord, from: string | null, to: string): Record<string, unknown> | null {
  if (to === 'net' || to === 'gross') return 'basis' in record ? { ...record, basis: to } : null;
  if (DATE.test(to)) return { ...record, when: to };
  for (const field of ['place', 'pile', 'source', 'from', 'to', 'movedTo', 'material'] as const) {
    const held = (record as Record<string, unknown>)[field];
    // The air has one place: a reading of it beside a pile's is not what was meant.
    if (from === null && held === 'ambient') continue;
    if (typeof held === 'string' && (from === null ? field === 'place' || field === 'pile' : held === from)) {
      return { ...record, [field]: to };
    }
  }
  return null;
}

const asNumber = (value: string | number): number | null => {
  if (typeof value === 'number') return value;
  const match = NUMBER.exec(value.trim());
  return match ? Number(match[1]!.replace(',', '.')) : null;
};

const standingOf = (draft: Draft, numbers: readonly number[]): Entry[] =>
  numbers
    .map((number) => standing(draft, number))
    .filter((entry): entry is Entry => entry !== null && entry.held === null);

/** A line as it stands: where it was replaced, the one that took its place; null where it was taken back. */
function standing(draft: Draft, number: number): Entry | null {
  let entry = draft.book.entry(draft.siteId, number);
  while (entry && entry.voidedBy !== null) {
    const next = draft.book.entry(draft.siteId, entry.voidedBy);
    if (!next || next.record.kind === 'void') return null;
    entry = next;
  }
  return entry;
}

/** Replying to an entry's message with `56.2`, `was net`, `yesterday` or `pile C` amends that entry. */
export function amendByReply(draft: Draft, parsed: ParsedMessage, context: ReadContext): boolean {
  const numbers = repliedEntries(draft);
  // A day alone asks for that day's list and a pile alone for how it is, but not where they answer a line.
  const others = parsed.requests.filter(({ request }) => !['amend', 'today', 'status'].includes(request));
  if (numbers.length === 0 || others.length > 0) return false;
  const lines = standingOf(draft, numbers);
  if (lines.length === 0 || parsed.records.length + parsed.doubts.length + parsed.danger.length > 0)
    return false;
  const text = draft.incoming.text.trim().replace(IT_WAS, '');
  const isNumber = NUMBER_ALONE.test(text);
  const to = parsed.requests[0]?.to ?? (isNumber ? text : (dateOrPlace(text, context) ?? basisWord(text)));
  const asks = parsed.requests[0]?.request;
  if (to == null || (asks === 'today' && !DATE.test(String(to)))) return false;
  if (asks === 'status' && draft.incoming.text.includes('?')) return false;
  const changes = lines.flatMap((old): Change[] => {
    const record = amended(draft, old.record as FieldRecord, parsed.requests[0]?.from ?? null, to);
    const checked = record ? FieldRecord.safeParse(record) : null;
    if (!checked?.success || !isPlausible(draft, checked.data)) return [];
    return [{ old, record: checked.data, typed: isNumber ? String(to) : null }];
  });
  if (changes.length === 0) return false;
  // Another day holds for all that the message said; another number or place for one line of it, and which is not known.
  if (changes.length > 1 && !DATE.test(String(to))) {
    draft.lines.push(say('amend-which', { from: { text: '' }, to: { text: String(to) } }));
    return true;
  }
  const notTheirs = changes.find(({ old }) => !mayUndo(draft, old));
  if (notTheirs) draft.lines.push(say('not-yours', { entry: { entry: notTheirs.old.number } }));
  else amendTo(draft, changes);
  return true;
}

/** `yesterday`, `pile C`: read as the date or place of a plain weight, so that the one reader serves here too. */
function dateOrPlace(text: string, context: ReadContext): string | null {
  if (text.length > 40) return null;
  const { records, doubts } = readMessage(`${text}: water 1 kg`, { ...context, book: undefined });
  const [only] = records;
  if (records.length !== 1 || doubts.length > 0 || only!.kind !== 'weigh-in' || only!.kg !== 1) return null;
  return only!.when ?? only!.place ?? null;
}

/** The word for it in any of the languages; `net` and `gross` are what the line holds. */
function basisWord(text: string): 'net' | 'gross' | null {
  if (/(?<!\p{L})net(?:te|to|o|a)?(?!\p{L})/iu.test(text)) return 'net';
  return /(?<!\p{L})(?:gross|brut(?:e|o|a)?)(?!\p{L})/iu.test(text) ? 'gross' : null;
}
