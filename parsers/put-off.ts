import type { ParsedMessage, Request } from '#records';
import { type Plain, sliceOf } from './text.ts';

const HEAD =
  /^(?:postpone|push|delay|put off|skip|snooze|defer|reschedule|leave|bump|move|hold off|can wait|not today|not now|later|reporte|remets|remet|remettre|repousse|decale|saute|pas aujourd'hui|plus tard|on reporte|on remet|pospon|posponer|pospongo|aplaza|atrasa|retrasa|deja|dejar|mueve|pasa|hoy no|mas tarde)\b/;
const NOT_TODAY =
  /^(?:not today|not now|pas aujourd'hui|pas maintenant|hoy no|ahora no)[:,]? ?(?:job |number |the |le |la |el |no\.? ?|#)?(?<n>\d{1,2})$/;
const REASON =
  /(?: ?[,;:] ?| - | because (?:of )?| since | parce qu(?:e |')| car | a cause d(?:e |'|u )| porque | por falta de )/;

/**
 * A job put off with the reason: `postpone 2 till friday, no key`. Null where it is no job put off, or what stands
 * behind it is something of its own.
 * @source none needed: words
 * @example putOff(plain('not today 2, no key'), read)!.requests[0] // { request: 'postpone', items: [2], reason: 'no key' }
 */
export function putOff(message: Plain, read: (text: string) => ParsedMessage): ParsedMessage | null {
  const { text } = message;
  if (text.length > 160 || text.includes('\n') || text.includes('?') || !HEAD.test(text.trim())) return null;
  const lead = text.length - text.trimStart().length;
  const bare = text.trim().replace(/[.!\s]+$/, '');
  const alone = NOT_TODAY.exec(bare);
  if (alone) return said(message, { request: 'postpone', items: [Number(alone.groups!.n)] });
  const link = REASON.exec(
    bare.replace(/^(?:not today|not now|pas aujourd'hui|hoy no)[:,]/, (all) => `${all.slice(0, -1)} `),
  );
  if (!link) return null;
  const head = bare.slice(0, link.index);
  const from = link.index + link[0].length;
  const reason = sliceOf(message, lead + from, lead + bare.length).trim();
  if (reason === '' || !/\p{L}/u.test(reason)) return null;
  const bareHead = NOT_TODAY.exec(head);
  if (bareHead) return said(message, { request: 'postpone', items: [Number(bareHead.groups!.n)], reason });
  const first = read(sliceOf(message, lead, lead + link.index));
  const only =
    first.requests.length === 1 && first.requests[0]!.request === 'postpone' ? first.requests[0]! : null;
  if (!only || first.records.length + first.doubts.length + first.unread.length > 0) return null;
  const rest = read(reason);
  if (rest.records.length + rest.requests.length + rest.doubts.length + rest.danger.length > 0) return null;
  return said(message, { ...only, reason });
}

const said = (message: Plain, request: Request): ParsedMessage => ({
  records: [],
  requests: [{ ...request, said: message.original.trim() }],
  doubts: [],
  unread: [],
  assumed: [],
  typed: [],
  danger: [],
  explain: [],
});
