import type { OpenedBook } from '#logbook';

const DAY_MS = 86_400_000;
const MEMO = 'talk-emptied-to';

/** Raw text of talk that made no line is not kept beyond a day; what was gone through before is not looked at again. */
export function emptyOldTalk(book: OpenedBook, now: string): void {
  const before = new Date(Date.parse(now) - DAY_MS).toISOString();
  for (const { id } of book.sites()) {
    const from = book.memo<string>(id, MEMO) ?? '';
    if (from >= before) continue;
    book.write(() => {
      book.blankTexts(id, { from, before }, 'talk');
      book.setMemo(id, MEMO, before);
    });
  }
}
