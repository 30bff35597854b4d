// Danger among what was found: it enters first, and what was only named is no cry.
import type { FieldRecord, ParsedMessage } from '#records';
import type { Danger } from './danger/index.ts';
import type { Found } from './found.ts';
import { plainAt, type SaidDate } from './said-dates.ts';
import type { Plain } from './text.ts';
import { sense, type Tok } from './tokens.ts';

/**
 * `set emergency number 911` tells whom to call, not that somebody must be called now. Only where the setting is
 * read whole, and only for the number itself and the French word for a power switch: nothing said of a person.
 */
export function isOnlyNamed(danger: Danger, found: readonly Found[], text: string, message: Plain): boolean {
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

/** `smoke on 2`: behind such a word a bare number is a pile. */
const isOn = (tok: Tok | undefined) =>
  tok !== undefined &&
  tok.senses.some((one) => one.cls === 'prep' && ['on', 'in', 'from', 'off'].includes(one.val));

/** Danger enters first, whatever else was read from its words; its place is the one named beside it. */
export function alarm(
  out: ParsedMessage,
  found: Found[],
  unread: [number, number][],
  dangers: readonly Danger[],
  { tokens, ends }: { tokens: readonly Tok[]; ends: ReadonlySet<Tok> },
  message: Plain,
  heading: SaidDate | null,
): void {
  const isTold = dangers.some(({ what }) => what !== 'help');
  const cried: { topic: string; record: { place?: string } }[] = [];
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
        .map(
          (tok, k) =>
            sense(tok, 'place') ?? (tok.n?.named || isOn(some[k - 1]) ? sense(tok, 'place?') : undefined),
        )
        .find((one) => one !== undefined && one !== 'ambient');
    // `turned B and her hand is stuck in the drum`: what stands on its own side of the joining word comes first.
    const joined = near.filter((tok) => ends.has(tok));
    const own = near.filter((tok) => joined.every((join) => (join.a < a ? tok.a > join.a : tok.a < join.a)));
    // `smoke!! back of pile 3`: the one place that a short cry names, where nothing else was told of it
    const only = found.length === 0 && tokens.length < 14 ? placeIn(tokens) : undefined;
    const place = placeIn(own) ?? placeIn(near) ?? only;
    const record: FieldRecord = { kind: 'problem', topic: danger.topic, ...(place && { place }) };
    // `is that smoke on 2?? yes smoke!!` is one: said again, it needs a place of its own to be another.
    const same = cried.find(
      (one) => one.topic === danger.topic && (!place || !one.record.place || one.record.place === place),
    );
    if (same && place) same.record.place = place;
    if (!same && !(danger.what === 'help' && isTold))
      cried.push({ topic: danger.topic, record: record as { place?: string } });
    for (let k = found.length - 1; k >= 0; k--) {
      const one = found[k]!;
      if (one.a < b && one.b > a) found.splice(k, 1);
    }
    const [start, end] = [near[0]?.a ?? a, near.at(-1)?.b ?? b];
    for (let k = unread.length - 1; k >= 0; k--)
      if (unread[k]![0] < end && unread[k]![1] > start) unread.splice(k, 1);
    // `help, he is bleeding`: the cry is no second trouble.
    if (danger.what === 'help' && isTold) continue;
    if (!same)
      found.push({ item: { record }, a, b, at: a, rule: 'danger', date: heading, carried: heading !== null });
  }
  found.sort((x, y) => x.at - y.at);
}
