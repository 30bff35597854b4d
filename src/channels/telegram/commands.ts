import type { Language } from '#records';

/** Menus, by the names that are typed; what each is for stands in the wording as `menu-NAME`. */
export const COMMANDS = ['today', 'week', 'piles', 'mix', 'undo', 'log', 'help'] as const;
export const COORDINATOR_COMMANDS = ['year', 'settings', 'share', 'export', 'report', 'here'] as const;

export type ReadText = {
  /** The text as if it had been said without a slash: `/undo 3` is `undo 3`, `/log cart 61` is `cart 61`. */
  text: string;
  command: string | null;
  /** Meant for another bot in the chat: not ours to read, not even as plain text. */
  forAnother: boolean;
};

const LEADING = /^\s*\/([a-z][a-z0-9_]{0,31})(?:@([a-z0-9_]+))?(?=\s|$)\s*/i;

/** Reads a leading command in any case, with or without the bot's name behind it. */
export const readCommand = (text: string, username: string): ReadText => {
  const found = LEADING.exec(text);
  if (!found) return { text, command: null, forAnother: false };
  const command = found[1]!.toLowerCase();
  const rest = text.slice(found[0].length);
  const forAnother = found[2] !== undefined && found[2].toLowerCase() !== username.toLowerCase();
  if (command === 'log') return { text: rest, command, forAnother };
  if (command === 'start') return { text: 'help', command, forAnother };
  return { text: `${command.replaceAll('_', ' ')} ${rest}`.trim(), command, forAnother };
};

/** The word that somebody writes to let their group in: alone, or behind `/start`. */
export const claimedWord = (text: string, username: string): string | null => {
  const { command, forAnother } = readCommand(text, username);
  if (forAnother || (command !== null && command !== 'start')) return null;
  const word = (command === 'start' ? text.replace(LEADING, '') : text).trim();
  return word === '' ? null : word;
};

/** An app's language, where it is one that we speak. */
export const languageOf = (code: string | undefined): Language | null => {
  const head = code?.slice(0, 2).toLowerCase();
  return head === 'en' || head === 'fr' || head === 'es' ? head : null;
};
