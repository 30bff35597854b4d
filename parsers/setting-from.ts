import type { ParsedMessage } from '#records';
import type { ReadContext } from './context.ts';
import type { Plain } from './text.ts';
import { type DateSpan, findDates, findForecastDates } from './when.ts';

const LINK =
  /\s+(?:as of|as from|starting|from|since|beginning|a partir du|a partir de|a compter du|depuis|des|desde)(?: the| le| el)? *$/;
const COMMAND =
  /^\/?(?:set|regler?|mets|mettre|fija|fijar|pon|poner|ajusta|ajustar|empty|tare|target|objectif|meta|bac vide|carrito vacio|tara)\b/;
const DAY_MS = 86_400_000;
const days = (iso: string) => Date.parse(`${iso.slice(0, 10)}T00:00Z`) / DAY_MS;

/** Of the last such day and the next one the nearer; `since` and a weekday look back. */
function dayMeant(
  past: DateSpan | undefined,
  ahead: DateSpan | undefined,
  said: string,
  back: boolean,
  now: string,
): string | undefined {
  const before = past?.problem ? undefined : past?.when?.slice(0, 10);
  const after = ahead?.problem ? undefined : ahead?.when?.slice(0, 10);
  if (!before || !after || back || !/\d/.test(said)) return before ?? after;
  return days(after) - days(now) < days(now) - days(before) ? after : before;
}

/**
 * A setting with the day from which it holds, which may lie ahead: `set cart tare 16 from 1 may`. Null where what
 * stands before the day is no setting on its own.
 * @source none needed: words
 * @example settingFrom(plain('set target 70 t from 1 jan'), context, read)?.requests[0].from // '2026-01-01'
 */
export function settingFrom(
  message: Plain,
  context: ReadContext,
  read: (text: string) => ParsedMessage,
): ParsedMessage | null {
  const typed = message.original.trim();
  if (typed.length > 160 || typed.includes('\n') || !COMMAND.test(message.text.trim())) return null;
  const atEnd = (span: DateSpan) => /^[\s.!]*$/.test(typed.slice(span.end));
  const past = findDates(typed, [], context).find(atEnd);
  const ahead = findForecastDates(typed, [], context).find(atEnd);
  const start = past?.start ?? ahead?.start;
  if (start === undefined) return null;
  const folded = typed.slice(0, start).normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase();
  const own = /^(?:from|since|depuis|desde|des|a partir d[ue]|as of) /.exec(
    typed.slice(start).normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase(),
  );
  const link = LINK.exec(folded);
  if (!link && !own) return null;
  const cut = own ? start : Array.from(folded.slice(0, link!.index)).length;
  const rest = read(typed.normalize('NFC').slice(0, cut).trim());
  const only =
    rest.requests.length === 1 && rest.requests[0]!.request === 'setting' ? rest.requests[0]! : null;
  if (!only || rest.records.length + rest.doubts.length + rest.unread.length > 0) return null;
  const back = /since|depuis|desde/.test((link?.[0] ?? '') + (own?.[0] ?? ''));
  const from = dayMeant(past, ahead, typed.slice(start), back, context.nowLocal);
  return from ? { ...rest, requests: [{ ...only, from, said: typed }] } : null;
}
