import type { Draft } from './draft.ts';
import type { Choice, ChoiceAct, OutgoingRow } from './ports.ts';

/** After this long a typed answer no longer belongs to the buttons that were offered. */
const ANSWERABLE_MIN = 12 * 60;

type Offered = { at: string; outgoing: number };

const keyOf = (draft: Draft): string => `offered:${draft.incoming.chat}`;

/** Remembers the questions with buttons that this reply asks; a later reply without any forgets them. */
export function rememberOffered(draft: Draft, rows: readonly OutgoingRow[]): void {
  const asks = rows.find((row) => row.about === null && row.choices.some(isAnswer));
  const offered: Offered | null = asks ? { at: draft.now, outgoing: asks.id } : null;
  if (offered === null && draft.book.memo(draft.siteId, keyOf(draft)) === null) return;
  if (rows.length > 0) draft.book.setMemo(draft.siteId, keyOf(draft), offered);
}

/** What was typed word for word as it stands on a button of the last reply here: the same as pressing it. */
export function typedChoice(draft: Draft): ChoiceAct | null {
  const offered = draft.book.memo<Offered>(draft.siteId, keyOf(draft));
  if (!offered || Date.parse(draft.now) - Date.parse(offered.at) > ANSWERABLE_MIN * 60_000) return null;
  const said = fold(draft.incoming.text);
  const row = draft.book.outgoing(offered.outgoing);
  return row?.choices.find((choice) => isAnswer(choice) && fold(choice.label) === said)?.act ?? null;
}

/** Undo and drop have their own words. */
const isAnswer = ({ act }: Choice): boolean => act.do === 'ask' || act.do === 'answer';

const fold = (text: string): string =>
  text
    .normalize('NFD')
    .replaceAll(/[̀-ͯ]/g, '')
    .toLowerCase()
    .replaceAll(/[\s.!¿?]+/g, ' ')
    .trim();
