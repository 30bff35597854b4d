import type { FieldRecord, ParsedMessage } from '#records';
import { alarm, isOnlyNamed } from './alarm.ts';
import { joinersBeside } from './beside-danger.ts';
import type { ReadContext } from './context.ts';
import { readDanger } from './danger/index.ts';
import { emit, emptyMessage, type Found } from './found.ts';
import { answerIn, onceMore } from './grammar/answers.ts';
import { dutyIn } from './grammar/duty.ts';
import type { Vocabulary } from './lexicon.ts';
import { readHeaped, readOneMore } from './one-more.ts';
import { readPageAddress } from './page-address.ts';
import { approximations, corrections, ownSources, places, units, wordNumbers } from './prepare/index.ts';
import { putOff } from './put-off.ts';
import type { Carry, Item } from './reading.ts';
import { datesIn, plainAt, type SaidDate } from './said-dates.ts';
import { readSentence } from './sentences.ts';
import { settingFrom } from './setting-from.ts';
import { readEnded, readMixTest, readShort } from './short-asks.ts';
import { siteDuties } from './site-duties.ts';
import { siteLimit } from './site-limits.ts';
import {
  asksForToday,
  dateAtHead,
  dateOf,
  edges,
  ledBySource,
  sentencesOf,
  sourceHeading,
} from './stretches.ts';
import { type Plain, plain, sliceOf } from './text.ts';
import { scan, understand } from './tokens.ts';
import { isComplaint } from './trouble-words.ts';
import { containersSaidAgain, unitsSaidAgain } from './unsaid.ts';
import { vocabularyFor } from './vocabulary.ts';
import { readWind } from './wind.ts';

/**
 * Reads one message: what goes into the log book, what is asked for, what must be asked about, and what
 * nobody understood. Never throws on any text; linear in its length.
 * @example readMessage('cart 66.5', context).records[0] // { kind: 'weigh-in', container: 'cart', kg: 66.5, basis: 'gross', … }
 */
export function readMessage(text: string, context: ReadContext): ParsedMessage {
  const out = emptyMessage();
  const message = plain(text.length > 20_000 ? text.slice(0, 20_000) : text);
  if (message.text.trim() === '') return out;
  const danger = readDanger(text);
  const noted = readNote(message);
  if (noted) {
    out.records.push(noted);
    out.assumed.push([]);
    out.typed.push(null);
    // `note: smoke from pile 2` is kept as the note it is, and somebody must go and look all the same.
    for (const { what, topic } of danger) {
      out.danger.push({ what, topic });
      out.records.push({ kind: 'problem', topic });
      out.assumed.push([]);
      out.typed.push(null);
    }
    return out;
  }
  const pageAddress = readPageAddress(message);
  if (pageAddress) {
    out.requests.push(pageAddress);
    return out;
  }
  const vocabulary = vocabularyFor(context);
  const whole = danger.length === 0 ? readWhole(message, context, vocabulary) : null;
  if (whole) return whole;
  const undated = commands(message, vocabulary) || chooses(message, vocabulary, context);
  const dates = undated ? [] : datesIn(message, context, vocabulary);
  // The order matters: phrases before numbers in words (`three quarters of`), units before places (`41 C`),
  // places before corrections (`turned B, no wait C`).
  let tokens = understand(
    scan(
      message,
      vocabulary.elisions,
      dates.map((date) => ({
        start: date.start,
        end: date.end,
        token: { when: date.when ?? date.ahead, ahead: date.ahead, span: date },
      })),
    ),
    vocabulary,
    (letter) => context.piles.includes(`pile ${letter.toUpperCase()}`),
  );
  tokens = wordNumbers(tokens);
  tokens = approximations(units(tokens, context));
  tokens = unitsSaidAgain(containersSaidAgain(corrections(places(tokens, context))));
  tokens = ownSources(tokens, (a, b) => sliceOf(message, a, b), vocabulary);
  const found: Found[] = [];
  const unread: [number, number][] = [];
  const carry: Carry = { place: null, container: null, source: null };
  let heading: SaidDate | null = null;
  const newDuty = dutyIn(message, tokens);
  const direct: Item[] | null = newDuty
    ? [{ request: newDuty }]
    : danger.length > 0
      ? null
      : (answerIn(message, tokens, context) ?? onceMore(tokens, context));
  if (direct) {
    const first = tokens[0]!;
    const last = tokens.at(-1)!;
    for (const item of direct)
      found.push({
        item,
        a: first.a,
        b: last.b,
        at: first.a,
        rule: newDuty ? 'request duty' : 'answer',
        date: null,
        carried: false,
      });
  }
  const beside = joinersBeside(
    tokens,
    danger.map(({ start, end }) => ({ a: plainAt(message, start), b: plainAt(message, end) })),
  );
  for (const sentence of direct ? [] : sentencesOf(tokens, beside)) {
    if (sentence.tokens.length === 0) continue;
    const from = sourceHeading(sentence, sentence.tokens.at(-1) !== tokens.at(-1));
    if (from) {
      carry.source = from;
      continue;
    }
    if (asksForToday(sentence.tokens, context) && dates.length === 1 && !message.text.includes('\n')) {
      const only = sentence.tokens.find((tok) => tok.k === 'd')!;
      found.push({
        item: { request: { request: 'today' } },
        a: only.a,
        b: only.b,
        at: only.a,
        rule: 'request',
        date: null,
        carried: false,
      });
      continue;
    }
    for (const tok of sentence.tokens) {
      const said = tok.k === 'd' ? (tok.date!.span as SaidDate) : null;
      if (said?.heading) heading = said;
    }
    if (sentence.opens) carry.place = null;
    const told = dateAtHead(sentence.tokens);
    // `monday: cart 50. tuesday: cart 55`: a date alone before its colon carries on as one that opens a line does.
    if (told?.alone) heading = told.date;
    const source = carry.source;
    carry.source = ledBySource(sentence.tokens) ?? source;
    const {
      readings,
      chunks,
      tokens: read,
    } = readSentence(sentence.tokens, sentence.asked, { message, context, vocabulary, carry });
    carry.source = source;
    for (const reading of readings) {
      const own = dateOf(reading, read, chunks) ?? told?.date ?? null;
      // `mañana volteamos la 4`: what is to be done tomorrow has not been done.
      if (own?.future && reading.items.every(isPast)) {
        unread.push(edges(reading, read));
        continue;
      }
      for (const item of reading.items) {
        const [a, b] = edges(reading, read);
        const day = 'day' in item ? (item.day?.date?.span as SaidDate | undefined) : undefined;
        const date = day ?? own ?? heading;
        if ('record' in item && item.record.kind !== 'weather' && date?.future) {
          // What is dated ahead has not happened: a plan, no entry.
          unread.push([a, b]);
          continue;
        }
        found.push({ item, a, b, at: a, rule: reading.rule, date, carried: !own && heading !== null });
      }
    }
    for (const chunk of chunks) {
      if (chunk.left.length === 0) continue;
      const first = read[chunk.a]!;
      const last = read[chunk.b - 1]!;
      unread.push([first.a, last.b]);
    }
  }
  const asides = headsOnly(found, message);
  const dangers = danger.filter((one) => !isOnlyNamed(one, found, text, message));
  if (dangers.length > 0) alarm(out, found, unread, dangers, { tokens, ends: beside }, message, heading);
  // Whoever complained has a name that no lexicon holds: the message as a whole tells.
  if (found.length === 0 && isComplaint(text)) {
    out.records.push({ kind: 'problem', topic: 'complaint', said: message.original.trim() });
    out.assumed.push([]);
    out.typed.push(null);
    return out;
  }
  emit(out, asides.size > 0 ? found.filter((one) => !asides.has(one)) : found, message, context);
  // `cart 58.5, wait, somebody screams`: whoever cries out asks for no list of words, and puts nothing right.
  if (dangers.length > 0)
    out.requests = out.requests.filter((one) => one.request !== 'help' && one.request !== 'amend');
  for (const [a, b] of unread) {
    const piece = sliceOf(message, a, b).trim();
    if (piece) out.unread.push(piece);
  }
  return out;
}

/** `recap of today` over a list of entries announces them and asks for nothing. */
function headsOnly(found: readonly Found[], message: Plain): ReadonlySet<Found> {
  const entries = found.filter((one) => !('request' in one.item));
  if (entries.length < 2 || message.text.includes('?')) return new Set();
  return new Set(
    found.filter(
      (one) =>
        'request' in one.item &&
        OVERVIEWS.has(one.item.request.request) &&
        !one.item.request.place &&
        one.a < entries[0]!.a,
    ),
  );
}

const OVERVIEWS = new Set(['week', 'handover', 'history', 'today', 'year', 'mine', 'status']);

/** A record of something done, not of what the weather will be. */
const isPast = (item: Item) => 'record' in item && item.record.kind !== 'weather';

/** `set summary monday 7:00`: in a command that sets something, days and times are values. */
function commands(message: Plain, vocabulary: Vocabulary): boolean {
  const first = /[^\s/]+/.exec(message.text)?.[0] ?? '';
  const node = vocabulary.root.get(first);
  return node?.senses?.some((one) => one.cls === 'set!' && one.val === 'set') ?? false;
}

/** `le premier`, `el primero` where one of two was asked for: no first of a month. */
function chooses(message: Plain, vocabulary: Vocabulary, context: ReadContext): boolean {
  const question = context.book?.openQuestion;
  if (question?.about !== 'doubt' || question.doubt.why.startsWith('date-')) return false;
  const [first, ...rest] = message.text.replaceAll(/[.!]/g, '').trim().split(/\s+/);
  if (/\d/.test(message.text)) return false;
  if (rest.length > 3) return false;
  let node = vocabulary.root.get(first ?? '');
  for (const word of rest) node = node?.next?.get(word);
  return node?.senses?.some((one) => one.cls === 'choice') ?? false;
}

/** A message that is one short question or command as a whole, or says what ended a problem and what was done. */
function readWhole(message: Plain, context: ReadContext, vocabulary: Vocabulary): ParsedMessage | null {
  // A check that comes round at the site's own interval is no duty of its own beside it.
  const limit = siteLimit(message, context);
  const duties = limit ? [limit] : siteDuties(message, context);
  const short = duties ? { requests: duties, records: [] } : readShort(message, context, vocabulary);
  if (short) {
    return {
      ...emptyMessage(),
      ...short,
      assumed: short.records.map(() => []),
      typed: short.records.map(() => null),
    };
  }
  const dated = settingFrom(message, context, (piece) => readMessage(piece, context));
  if (dated) return dated;
  const tested = readMixTest(message, context, (piece) => readMessage(piece, context));
  if (tested) return tested;
  const more =
    readOneMore(message, context, vocabulary) ?? readHeaped(message, (piece) => readMessage(piece, context));
  if (more) return more;
  const wind = readWind(message, (piece) => readMessage(piece, context));
  if (wind) return wind;
  const later = putOff(message, (piece) => readMessage(piece, context));
  if (later) return later;
  if ((context.book?.openProblems.length ?? 0) === 0) return null;
  const ended = readEnded(message, (piece) => readMessage(piece, context));
  return ended;
}

/** `note: …` keeps the writer's words as they are. */
function readNote(message: Plain): FieldRecord | null {
  const match = /^\s*(?:note|nota|nb|memo|remarque|apunte)\s*[:-]\s*(\S[\s\S]*)$/.exec(message.text);
  if (!match) return null;
  const start = match[0].length - match[1]!.length;
  const text = sliceOf(message, start, message.text.length).trim().slice(0, 4000);
  return text ? { kind: 'note', text, said: message.original.trim() } : null;
}
