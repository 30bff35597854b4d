import { randomBytes } from 'node:crypto';
import { settingAt } from '#core';
import type { Draft } from '../draft.ts';
import { pageAddress } from '../page-address.ts';
import { say } from '../say.ts';

const NEW = /\b(new|nouveau|nouvelle|nuevo|nueva)\b/i;

/**
 * `share`: a link to the page, to be printed and hung by the scale. Only a hash of a link is kept, so that one made
 * before cannot be shown again: each `share` makes one more, and `share new` ends all that were.
 */
export function share(draft: Draft): void {
  const { book, siteId } = draft;
  if (!draft.mayDecide) {
    draft.lines.push(say('coordinators-only'));
    return;
  }
  const set = settingAt(draft.picture(), 'page-address', draft.today);
  const address = typeof set === 'string' ? pageAddress(set) : book.memo<string>(siteId, 'page-served-at');
  if (!address) {
    draft.lines.push(say('share-no-page'));
    return;
  }
  const isNew = NEW.test(draft.incoming.text);
  if (isNew) book.endLinks(siteId);
  const token = randomBytes(24).toString('base64url');
  book.addLink(siteId, token);
  const link = `${address}#${token}`;
  const { name } = draft.picture().base;
  draft.lines.push(
    say('share-link', { site: { text: name } }),
    say('share-address', { link: { text: link } }),
    say(isNew ? 'share-old-ended' : 'share-print'),
  );
  if (typeof set !== 'string') draft.lines.push(say('share-here-only'));
  draft.drawing = { draw: 'share', alt: `QR: ${name}`, data: { link, token } };
}
