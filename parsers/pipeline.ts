import type { Assumption, Doubt, FieldRecord, ParsedMessage, Request, Taken } from '#records';
import { joinersBeside } from './beside-danger.ts';
import type { ReadContext } from './context.ts';
import { type Danger, readDanger } from './danger.ts';
import { answerIn, onceMore } from './grammar/answers.ts';
import { dutyIn } from './grammar/duty.ts';
import { pointInto } from './grammar/words.ts';
import type { Vocabulary } from './lexicon.ts';
import { readPageAddress } from './page-address.ts';
import { approximations, corrections, places, units, wordNumbers } from './prepare.ts';
import { type Carry, type Item, isSoft } from './reading.ts';
import { datesIn, plainAt, type SaidDate } from './said-dates.ts';
import { type Reading, readSentence } from './sentences.ts';
import { settingFrom } from './setting-from.ts';
import { readEnded, readShort } from './short-asks.ts';
import { type Plain, plain, sliceOf, spanOf } from './text.ts';
import { scan, sense, type Tok, understand } from './tokens.ts';
import { isComplaint } from './trouble-words.ts';
import { containersSaidAgain } from './unsaid.ts';
import { vocabularyFor } from './vocabulary.ts';

const emptyMessage = (): ParsedMessage => ({
  records: [],
  requests: [],
  doubts: [],
  unread: [],
  assumed: [],
  typed: [],
  danger: [],
  explain: [],
});

type Found = {
  item: Item;
  a: number;
  b: number;
  at: number;
  rule: string;
  date: SaidDate | null;
  carried: boolean;
};

/**
 * Reads one message: what goes into the log book, what is asked for, what must be asked about, and what
 * nobody understood. Never throws on any text; linear in its length.
 * @example readMessage('cart 66.5', context).records[0] // { kind: 'weigh-in', container: 'cart', kg: 66.5, basis: 'gross', … }
 */
export function readMessage(text: string, context: ReadContext): ParsedMessage {
  const out = emptyMessage();
  const message = plain(text.length > 20_000 ? text.slice(0, 20_000) : text);
  if (message.text.trim() === '') return out;
  pointInto(message);
  const noted = readNote(message);
  if (noted) {
    out.records.push(noted);
    out.assumed.push([]);
    out.typed.push(null);
    return out;
  }
  const pageAddress = readPageAddress(message);
  if (pageAddress) {
    out.requests.push(pageAddress);
    return out;
  }
  const vocabulary = vocabularyFor(context);
  const danger = readDanger(text);
  const whole = danger.length === 0 ? readWhole(message, context, vocabulary) : null;
  if (whole) return whole;
  const dates = commands(message, vocabulary) ? [] : datesIn(message, context, vocabulary);
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
  tokens = containersSaidAgain(corrections(places(tokens, context)));
  const found: Found[] = [];
  const unread: [number, number][] = [];
  const carry: Carry = { place: null, container: null, source: null };
  let heading: SaidDate | null = null;
  const newDuty = dutyIn(tokens);
  const direct: Item[] | null = newDuty
    ? [{ request: newDuty }]
    : danger.length > 0
      ? null
      : (answerIn(tokens, context) ?? onceMore(tokens, context));
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
    const from = sourceHeading(sentence);
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
    const {
      readings,
      chunks,
      tokens: read,
    } = readSentence(sentence.tokens, sentence.asked, context, vocabulary, carry);
    for (const reading of readings) {
      const own = dateOf(reading, read, chunks) ?? told?.date ?? null;
      // `mañana volteamos la 4`: what is to be done tomorrow has not been done.
      if (own?.future && reading.items.every(isPast)) {
        unread.push(edges(reading, read));
        continue;
      }
      for (const item of reading.items) {
        const [a, b] = edges(reading, read);
        const date = own ?? heading;
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
  const dangers = danger.filter((one) => !isOnlyNamed(one, found, text, message));
  if (dangers.length > 0) alarm(out, found, unread, dangers, { tokens, ends: beside }, message, heading);
  // Whoever complained has a name that no lexicon holds: the message as a whole tells.
  if (found.length === 0 && isComplaint(text)) {
    out.records.push({ kind: 'problem', topic: 'complaint', said: message.original.trim() });
    out.assumed.push([]);
    out.typed.push(null);
    return out;
  }
  emit(out, found, message, context);
  if (dangers.length > 0) out.requests = out.requests.filter((one) => one.request !== 'help');
  for (const [a, b] of unread) {
    const piece = sliceOf(message, a, b).trim();
    if (piece) out.unread.push(piece);
  }
  return out;
}

/**
 * `set emergency number 911` tells whom to call, not that somebody must be called now. Only where the setting is
 * read whole, and only for the number itself and the French word for a power switch: nothing said of a person.
 */
function isOnlyNamed(danger: Danger, found: readonly Found[], text: string, message: Plain): boolean {
  if (!/^(?:[\d ().+-]+|sectionneur)$/i.test(text.slice(danger.start, danger.end))) return false;
  const [a, b] = [plainAt(message, danger.start), plainAt(message, danger.end)];
  return found.some(
    (one) =>
      'request' in one.item &&
      String(one.item.request.name ?? '').startsWith('safety:') &&
      one.a <= a &&
      one.b >= b &&
      // `emergency: call 911` is a cry
      !/^(?:emergenc|urgenc)/.test(message.text.slice(one.a)),
  );
}

/** `cuisine est :` on a line of its own: where the loads below it came from. */
function sourceHeading(sentence: Sentence): string | null {
  const { tokens } = sentence;
  const last = tokens.at(-1)!;
  if (!sentence.opens || sentence.asked || last.k !== 'p' || last.s !== ':') return null;
  const named = tokens.filter((tok) => sense(tok, 'source') !== undefined);
  const dull = tokens.every(
    (tok) => named.includes(tok) || isSoft(tok) || sense(tok, 'definite') !== undefined,
  );
  return named.length === 1 && dull ? sense(named[0], 'source')! : null;
}

/** A record of something done, not of what the weather will be. */
const isPast = (item: Item) => 'record' in item && item.record.kind !== 'weather';

/** Danger enters first, whatever else was read from its words; its place is the one named beside it. */
function alarm(
  out: ParsedMessage,
  found: Found[],
  unread: [number, number][],
  dangers: readonly Danger[],
  { tokens, ends }: { tokens: readonly Tok[]; ends: ReadonlySet<Tok> },
  message: Plain,
  heading: SaidDate | null,
): void {
  for (const danger of dangers) {
    out.danger.push({ what: danger.what, topic: danger.topic });
    const [a, b] = [plainAt(message, danger.start), plainAt(message, danger.end)];
    let from = tokens.findIndex((tok) => tok.b > a);
    let to = from;
    while (from > 0 && tokens[from - 1]!.k !== 'p') from--;
    while (to >= 0 && to < tokens.length && (tokens[to]!.a < b || tokens[to]!.k !== 'p')) to++;
    const near = from >= 0 ? tokens.slice(from, to) : [];
    const placeIn = (some: readonly Tok[]) =>
      some
        .map((tok) => sense(tok, 'place') ?? (tok.n?.named ? sense(tok, 'place?') : undefined))
        .find((one) => one !== undefined && one !== 'ambient');
    // `turned B and her hand is stuck in the drum`: what stands on its own side of the joining word comes first.
    const joined = near.filter((tok) => ends.has(tok));
    const own = near.filter((tok) => joined.every((join) => (join.a < a ? tok.a > join.a : tok.a < join.a)));
    const place = placeIn(own) ?? placeIn(near);
    const record: FieldRecord = { kind: 'problem', topic: danger.topic, ...(place && { place }) };
    for (let k = found.length - 1; k >= 0; k--) {
      const one = found[k]!;
      if (one.a < b && one.b > a) found.splice(k, 1);
    }
    const [start, end] = [near[0]?.a ?? a, near.at(-1)?.b ?? b];
    for (let k = unread.length - 1; k >= 0; k--)
      if (unread[k]![0] < end && unread[k]![1] > start) unread.splice(k, 1);
    found.push({ item: { record }, a, b, at: a, rule: 'danger', date: heading, carried: heading !== null });
  }
  found.sort((x, y) => x.at - y.at);
}

/** `set summary monday 7:00`: in a command that sets something, days and times are values. */
function commands(message: Plain, vocabulary: Vocabulary): boolean {
  const first = /[^\s/]+/.exec(message.text)?.[0] ?? '';
  const node = vocabulary.root.get(first);
  return node?.senses?.some((one) => one.cls === 'set!' && one.val === 'set') ?? false;
}

/** A line that is only the day's date asks for the day's list. */
function asksForToday(tokens: readonly Tok[], context: ReadContext): boolean {
  const told = tokens.filter((tok) => !isSoft(tok));
  return told.length === 1 && told[0]!.k === 'd' && told[0]!.date!.when === context.nowLocal.slice(0, 10);
}

/** A message that is one short question or command as a whole, or says what ended a problem and what was done. */
function readWhole(message: Plain, context: ReadContext, vocabulary: Vocabulary): ParsedMessage | null {
  const short = readShort(message, context, vocabulary);
  if (short) {
    return {
      ...emptyMessage(),
      ...short,
      assumed: short.records.map(() => []),
      typed: short.records.map(() => null),
    };
  }
  const dated = settingFrom(message, context, (piece) => readMessage(piece, context));
  pointInto(message);
  if (dated) return dated;
  if ((context.book?.openProblems.length ?? 0) === 0) return null;
  const ended = readEnded(message, (piece) => readMessage(piece, context));
  pointInto(message);
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

type Sentence = { tokens: Tok[]; asked: boolean; opens: boolean };

/** Lines, and sentences within lines; a joining word beside a danger ends one too. */
function sentencesOf(tokens: readonly Tok[], ends: ReadonlySet<Tok>): Sentence[] {
  const out: Sentence[] = [];
  let current: Tok[] = [];
  let opens = true;
  const close = (asked: boolean, line: boolean) => {
    if (current.length > 0) {
      out.push({ tokens: current, asked, opens });
      current = [];
      opens = false;
    }
    if (line) opens = true;
  };
  for (const tok of tokens) {
    if (tok.k === 'p' && tok.s === '\n') close(false, true);
    else if (tok.k === 'p' && tok.s === '?') close(true, false);
    else if (tok.k === 'p' && (tok.s === '.' || tok.s === '!' || tok.s === ';')) close(false, false);
    else if (ends.has(tok)) close(false, false);
    else current.push(tok);
  }
  close(false, true);
  return out;
}

/** `took temps at 8am: pile 1 129, …`: a date before the colon of a sentence is the date of all that follows it. */
function dateAtHead(tokens: readonly Tok[]): { date: SaidDate; alone: boolean } | null {
  const colon = tokens.findIndex((tok) => tok.k === 'p' && tok.s === ':');
  const head = tokens.slice(0, Math.max(colon, 0));
  const dates = head.filter((tok) => tok.k === 'd');
  if (dates.length !== 1 || head.some((tok) => tok.k === 'n' || (tok.k === 'p' && tok.s === ',')))
    return null;
  return { date: dates[0]!.date!.span as SaidDate, alone: head.every((tok) => tok.k === 'd') };
}

/** The date inside a reading, else one that stands alone in its stretch between commas. */
function dateOf(
  reading: Reading,
  tokens: readonly Tok[],
  chunks: readonly { a: number; b: number }[],
): SaidDate | null {
  for (let k = reading.a; k < reading.b; k++)
    if (tokens[k]!.k === 'd') return tokens[k]!.date!.span as SaidDate;
  for (const chunk of chunks) {
    const inside = reading.a >= chunk.a && reading.a < chunk.b;
    const alone = tokens
      .slice(chunk.a, chunk.b)
      .every(
        (tok) =>
          tok.k === 'd' || isSoft(tok) || tok.senses.some((s) => s.cls === 'article' || s.cls === 'prep'),
      );
    if (!inside && !alone) continue;
    for (let k = chunk.a; k < chunk.b; k++)
      if (tokens[k]!.k === 'd') return tokens[k]!.date!.span as SaidDate;
  }
  return null;
}

/** Where the reading begins and ends in the text, without the fillers at its edges. */
function edges(reading: Reading, tokens: readonly Tok[]): [number, number] {
  let a = reading.a;
  let b = reading.b - 1;
  const dull = (tok: Tok) =>
    isSoft(tok) ||
    (tok.k === 'w' &&
      tok.senses.length > 0 &&
      tok.senses.every((s) => s.cls === 'fill' || s.cls === 'and' || s.cls === 'next'));
  while (a < b && dull(tokens[a]!)) a++;
  while (b > a && dull(tokens[b]!)) b--;
  return [tokens[a]!.a, tokens[b]!.b];
}

function emit(out: ParsedMessage, found: readonly Found[], message: Plain, context: ReadContext): void {
  for (const one of found) {
    const said = sliceOf(message, one.a, one.b);
    const [start, end] = spanOf(message, one.a, one.b);
    const assumed: Assumption[] = 'record' in one.item ? [...(one.item.assumed ?? [])] : [];
    if (one.carried) assumed.push('date-carried');
    const taken: Taken = { start, end, rule: one.rule, said, ...(assumed.length > 0 && { assumed }) };
    const last = out.explain.at(-1);
    if (!last || last.start !== start || last.rule !== one.rule) out.explain.push(taken);
    if ('request' in one.item) {
      pushRequest(out, { ...one.item.request, said });
      continue;
    }
    const dated = <T extends { kind: string }>(record: T): T => ({
      ...record,
      ...whenOf(record, one.date),
      said,
    });
    if ('doubt' in one.item) {
      out.doubts.push(mapDoubt(one.item.doubt, dated, said));
      continue;
    }
    const record = dated(one.item.record);
    if (one.date?.problem && record.kind !== 'weather') {
      out.doubts.push({
        record: bareWhen(record),
        why: one.date.problem,
        choices: [
          ...one.date.choices.map((choice) => ({
            say: choice,
            record: { ...record, when: choice } as FieldRecord,
          })),
          { say: 'drop', record: null },
        ],
        said,
      });
      continue;
    }
    const old = tooOld(record, context);
    if (old) {
      out.doubts.push({ ...old, said });
      continue;
    }
    out.records.push(record);
    out.assumed.push(assumed);
    out.typed.push(one.item.typed ?? null);
  }
}

/** Older by more than two weeks than the last readings of its place: more likely another month was meant. */
function tooOld(record: FieldRecord, context: ReadContext): Doubt | null {
  const place = (record as { place?: string }).place ?? (record as { pile?: string }).pile;
  const last = place ? context.book?.lastReadings[place]?.[0]?.localDate.slice(0, 10) : undefined;
  const when = record.when ?? undefined;
  if (!last || !when) return null;
  const day = (text: string) => Date.parse(text.slice(0, 10)) / 86_400_000;
  if (day(last) - day(when) <= 14) return null;
  const months = [context.nowLocal.slice(0, 7), last.slice(0, 7)];
  const likely = [...new Set(months)]
    .map((month) => `${month}${when.slice(7)}`)
    .filter(
      (one) =>
        !Number.isNaN(day(one)) &&
        one.slice(0, 10) <= context.nowLocal.slice(0, 10) &&
        day(last) - day(one) <= 14,
    );
  return {
    record,
    why: 'date-too-old',
    choices: [...likely, when]
      .map((say) => ({ say, record: { ...record, when: say } as FieldRecord }))
      .concat([{ say: 'drop', record: null as never }]),
  };
}

function whenOf(record: { kind: string }, date: SaidDate | null): { when?: string } {
  const when =
    record.kind === 'weather' && !('observed' in record && record.observed) ? date?.ahead : date?.when;
  return when && !('when' in record) ? { when } : {};
}

const bareWhen = (record: FieldRecord) => {
  const { when: _when, ...rest } = record;
  return rest;
};

function pushRequest(out: ParsedMessage, request: Request): void {
  const same = out.requests.some(
    (have) =>
      have.request === request.request &&
      have.place === request.place &&
      have.name === request.name &&
      request.request !== 'answer',
  );
  if (!same) out.requests.push(request);
}

function mapDoubt(doubt: Doubt, dated: <T extends { kind: string }>(record: T) => T, said: string): Doubt {
  return {
    ...doubt,
    said,
    record: dated(doubt.record),
    ...(doubt.records && { records: doubt.records.map(dated) }),
    choices: doubt.choices.map((choice) => ({
      ...choice,
      record: choice.record && dated(choice.record),
      ...(choice.records && { records: choice.records.map(dated) }),
    })),
  };
}
