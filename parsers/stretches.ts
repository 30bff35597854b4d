// Sentences of a message, and which date belongs to what was read in them.
import type { ReadContext } from './context.ts';
import { isSoft } from './reading.ts';
import type { Reading } from './runs.ts';
import type { SaidDate } from './said-dates.ts';
import { sense, type Tok } from './tokens.ts';

/** `cuisine est :` on a line of its own: where the loads below it came from. */
export function sourceHeading(sentence: Sentence, more = false): string | null {
  const { tokens } = sentence;
  const last = tokens.at(-1)!;
  // Without its colon only a line of its own, with others below it, is a heading.
  const headed = (last.k === 'p' && last.s === ':') || (sentence.closes && more);
  if (!sentence.opens || sentence.asked || !headed) return null;
  const named = tokens.filter((tok) => sense(tok, 'source') !== undefined);
  const dull = tokens.every(
    (tok) => named.includes(tok) || isSoft(tok) || sense(tok, 'definite') !== undefined,
  );
  return named.length === 1 && dull ? sense(named[0], 'source')! : null;
}

/** `day centre: cart 4 57, cart 6 49.5`: where all the loads of the sentence came from. */
export function ledBySource(tokens: readonly Tok[]): string | null {
  const colon = tokens.findIndex((tok) => tok.k === 'p' && tok.s === ':');
  const head = tokens.slice(0, Math.max(colon, 0)).filter((tok) => sense(tok, 'definite') === undefined);
  return head.length === 1 ? (sense(head[0], 'source') ?? null) : null;
}

/** A line that is only the day's date asks for the day's list. */
export function asksForToday(tokens: readonly Tok[], context: ReadContext): boolean {
  const told = tokens.filter((tok) => !isSoft(tok));
  return told.length === 1 && told[0]!.k === 'd' && told[0]!.date!.when === context.nowLocal.slice(0, 10);
}

/** `closes` where the line ends with it. */
type Sentence = { tokens: Tok[]; asked: boolean; opens: boolean; closes: boolean };

/** Lines, and sentences within lines; a joining word beside a danger ends one too. */
export function sentencesOf(tokens: readonly Tok[], ends: ReadonlySet<Tok>): Sentence[] {
  const out: Sentence[] = [];
  let current: Tok[] = [];
  let opens = true;
  const close = (asked: boolean, line: boolean) => {
    if (current.length > 0) {
      out.push({ tokens: current, asked, opens, closes: line });
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
export function dateAtHead(tokens: readonly Tok[]): { date: SaidDate; alone: boolean } | null {
  const colon = tokens.findIndex((tok) => tok.k === 'p' && tok.s === ':');
  const head = tokens.slice(0, Math.max(colon, 0));
  const dates = head.filter((tok) => tok.k === 'd');
  if (dates.length !== 1 || head.some((tok) => tok.k === 'n' || (tok.k === 'p' && tok.s === ',')))
    return null;
  return { date: dates[0]!.date!.span as SaidDate, alone: head.every((tok) => tok.k === 'd') };
}

/** The date inside a reading, else one that stands alone in its stretch between commas. */
export function dateOf(
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
export function edges(reading: Reading, tokens: readonly Tok[]): [number, number] {
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
