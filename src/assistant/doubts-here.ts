import type { Picture } from '#core';
import type { Entry } from '#records';
import type { Draft } from './draft.ts';

/** A word answers a doubt that was asked or listed in its chat within this time; a number does as long as it is open. */
const ANSWERABLE_MIN = 12 * 60;
const REMEMBERED = 20;

type Named = { entry: number; at: string };

const keyOf = (draft: Draft): string => `doubts:${draft.incoming.chat}`;
const namedIn = (draft: Draft): Named[] => draft.book.memo<Named[]>(draft.siteId, keyOf(draft)) ?? [];

/** Remembers that doubts were put before a chat, by asking or in a list. */
export function rememberDoubts(draft: Draft, entries: readonly number[]): void {
  if (entries.length === 0) return;
  const others = namedIn(draft).filter(({ entry }) => !entries.includes(entry));
  const named = entries.map((entry) => ({ entry, at: draft.now }));
  draft.book.setMemo(draft.siteId, keyOf(draft), [...others, ...named].slice(-REMEMBERED));
}

type Held = Picture['held'][number];

/** Carts asked about here within the hour that somebody has answered for: `same` said again is no new cart. */
export function answeredTwins(draft: Draft): Entry[] {
  return namedIn(draft)
    .filter(({ at }) => Date.parse(draft.now) - Date.parse(at) <= 60 * 60_000)
    .map(({ entry }) => draft.book.entry(draft.siteId, entry))
    .filter((entry): entry is Entry => entry?.held?.why === 'same-cart' && entry.voidedBy !== null)
    .reverse();
}

/** The open doubts of the site, the sender's own first, then the newest; `words`: whether a word may answer it here. */
export function openDoubts(draft: Draft): { line: Held; words: boolean; own: boolean }[] {
  const { held } = draft.picture();
  if (held.length === 0) return [];
  const named = new Map(namedIn(draft).map(({ entry, at }) => [entry, at]));
  const isRecent = (at: string | undefined): boolean =>
    at !== undefined && Date.parse(draft.now) - Date.parse(at) <= ANSWERABLE_MIN * 60_000;
  const isOwn = (entry: number): boolean =>
    draft.person !== null && draft.book.entry(draft.siteId, entry)?.person === draft.person.id;
  return held
    .slice(-REMEMBERED)
    .reverse()
    .map((line) => ({ line, words: isRecent(named.get(line.entry)), own: isOwn(line.entry) }))
    .sort((a, b) => Number(b.own) - Number(a.own));
}
