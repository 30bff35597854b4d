import { expect, test } from 'vitest';
import { emptyOldTalk } from '../../src/commands/tidy.ts';
import { cart, incoming, memoryBook, now, site } from '../logbook/samples.ts';

test('talk is emptied a day after it came; what made a line, and what failed by our fault, stays', () => {
  const book = memoryBook();
  const { id } = book.addSite(site('Ferry Lane'), now());
  const at = (receivedAt: string) => ({ receivedAt });
  book.saveMessage(incoming(id, '1', at('2026-05-12T08:00:00.000Z')), null, 'done');
  const logged = book.saveMessage(incoming(id, '2', at('2026-05-12T08:00:00.000Z')), null, 'done');
  book.append(id, [cart(61.5)], logged.id);
  book.saveMessage(incoming(id, '3', at('2026-05-12T08:00:00.000Z')), null, 'failed');
  book.saveMessage(incoming(id, '4', at('2026-05-13T07:00:00.000Z')), null, 'done');
  const kept = () =>
    ['1', '2', '3', '4'].filter((key) => book.message(id, 'telegram', '-100', key, null)?.text !== '');
  emptyOldTalk(book, '2026-05-13T08:00:00.000Z');
  expect(kept()).toEqual(['1', '2', '3', '4']);
  emptyOldTalk(book, '2026-05-13T08:00:00.001Z');
  expect(kept()).toEqual(['2', '3', '4']);
  emptyOldTalk(book, '2026-05-14T07:00:00.001Z');
  expect(kept()).toEqual(['2', '3']);
});
