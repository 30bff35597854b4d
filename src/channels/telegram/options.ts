import type { Logger } from 'pino';
import type { ChannelBook, Incoming, MakePaper, PictureSpec, Words } from '#assistant';
import type { WebhookOptions } from './webhook.ts';

export const CHANNEL = 'telegram';

export type TelegramOptions = {
  token: string;
  /** Another Bot API server than the usual one. */
  apiRoot?: string;
  /** Sends are paced as the messenger wants it; off only against a stand-in server. */
  limits: boolean;
  book: ChannelBook;
  /** Takes a message in and saves it, before it returns. Throws only where nothing could be saved. */
  receive(incoming: Incoming): unknown;
  words: Words;
  /** What a picture shows, as a PNG; null where it cannot be drawn. */
  draw(picture: PictureSpec, site: number): Promise<Uint8Array | null>;
  /** A file of the book as bytes. */
  make: MakePaper;
  log: Logger;
  /** The site that the first group to say the word is let in to. */
  site: number;
  /** The one-time word; a random one where none is given. */
  claimWord?: string;
  now?: () => Date;
  /** How long to wait for the rest of an album. */
  albumWaitMs?: number;
  pollSeconds?: number;
  /** Updates are posted to this address instead of being fetched. */
  webhook?: WebhookOptions;
};

/** Why the channel ended. Only `stopped` was asked for. */
export type TelegramEnd =
  | { why: 'stopped' }
  | { why: 'conflict' }
  | { why: 'wrong-token' }
  | { why: 'cannot-save'; error: unknown }
  /** The messenger, or a fault of ours, ended it in a way that has no name of its own. */
  | { why: 'failed'; error: unknown };

export type Telegram = {
  /** To be shown to whoever runs the program; null once a group of the site has been let in. */
  claimWord: string | null;
  /** Polling has begun. With no network it stays open until there is one. */
  ready: Promise<void>;
  /** Saves what is in hand and confirms that alone; comes back within ten seconds. */
  stop(): Promise<void>;
  done: Promise<TelegramEnd>;
};
