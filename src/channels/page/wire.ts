/** What goes between the page and the program. Kept free of everything else: both sides read it. */

/** Something written, a button pressed, or one of the two fixed questions. */
export type Said = {
  /** The phone's own key of it: the same key twice is the same message. */
  key: string;
  text: string;
  /** Milliseconds by the phone's clock: when it was typed, and now. Only the difference is believed. */
  typedAt: number;
  now: number;
  name: string;
  language: 'en' | 'fr' | 'es';
  choose?: { row: number; index: number } | undefined;
  ask?: 'today' | 'week' | undefined;
};

export type Reply = {
  row: number;
  text: string;
  choices: { label: string; undo: boolean }[];
  picture: { alt: string } | null;
  file: { name: string; text: string } | null;
  at: string;
};

export type Answered = { replies: Reply[] };

/** What the page always shows, fresh whenever there is signal. */
export type Board = {
  site: number;
  name: string;
  language: 'en' | 'fr' | 'es';
  timeZone: string;
  emergencyNumber: string | null;
  call: string;
  /** `whats`: the kinds of danger that the text answers. */
  dangers: { whats: string[]; title: string; text: string }[];
};

export type News = { version: string; board: Board; replies: Reply[] };

export type Trouble =
  | 'no-link'
  | 'link-unknown'
  | 'link-ended'
  | 'too-old'
  | 'too-large'
  | 'not-readable'
  | 'too-many'
  | 'ours';

/** Marks that turn the direction of what follows, and control characters: in a log they only hide what stands there. */
export const HIDING =
  /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/g;
