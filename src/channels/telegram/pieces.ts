import type { InlineKeyboardButton } from 'grammy/types';
import type { OutgoingRow, PaperFile } from '#assistant';

/** The messenger's own bounds, in UTF-16 units as it counts them. */
const MAX_TEXT = 4096;
const MAX_CAPTION = 1024;
/** Beyond so many messages a text goes as a file: a phone that buzzes five times is no answer. */
const MAX_PARTS = 2;

type Keyboard = InlineKeyboardButton[][];

/** One message of a reply, in the order in which they go out. */
export type Piece =
  | { send: 'text'; text: string; keyboard: Keyboard }
  | { send: 'drawing'; caption: string; keyboard: Keyboard }
  | { send: 'kept-photo'; file: string; caption: string }
  | { send: 'document'; name: string; text: string; caption: string }
  | { send: 'paper'; file: PaperFile };

/** Cuts a text at line ends, so that each part fits; a line that is too long itself is cut at a space. */
export const cutText = (text: string, limit: number): string[] => {
  const parts: string[] = [];
  let rest = text;
  while (rest.length > limit) {
    const line = rest.lastIndexOf('\n', limit);
    const space = rest.lastIndexOf(' ', limit);
    let at = line > 0 ? line : space > 0 ? space : limit;
    // Never between the two halves of one sign.
    if (at === limit && /[\uD800-\uDBFF]/.test(rest[at - 1]!)) at -= 1;
    parts.push(rest.slice(0, at));
    rest = rest.slice(rest[at] === '\n' || rest[at] === ' ' ? at + 1 : at);
  }
  if (rest !== '' || parts.length === 0) parts.push(rest);
  return parts.filter((part) => part.trim() !== '');
};

/** Buttons name the reply and their place in it, and nothing else: what they do is kept in the log book. */
const keyboardOf = (row: OutgoingRow): Keyboard =>
  row.choices.map(({ label }, index) => [
    { text: label.slice(0, 60) || '·', callback_data: `${row.id}:${index}` },
  ]);

/** What a row goes out as. Buttons hang on the last text, where the eye is. */
export const piecesOf = (row: OutgoingRow): Piece[] => {
  const keyboard = keyboardOf(row);
  const pieces: Piece[] = [];
  const kept = keptFiles(row);
  const drawn = row.picture !== null && kept === null;
  if (drawn && row.text.length <= MAX_CAPTION) pieces.push({ send: 'drawing', caption: row.text, keyboard });
  else {
    const parts = cutText(row.text, MAX_TEXT);
    if (parts.length > MAX_PARTS) {
      pieces.push({ send: 'text', text: parts[0]!, keyboard });
      pieces.push({ send: 'document', name: 'answer.txt', text: row.text, caption: '' });
    } else
      for (const [index, text] of parts.entries())
        pieces.push({ send: 'text', text, keyboard: index === parts.length - 1 ? keyboard : [] });
    if (drawn)
      pieces.push({
        send: 'drawing',
        caption: cutText(row.picture!.alt, MAX_CAPTION)[0] ?? '',
        keyboard: [],
      });
  }
  for (const file of kept ?? []) pieces.push({ send: 'kept-photo', file, caption: '' });
  if (row.file && 'paper' in row.file) pieces.push({ send: 'paper', file: row.file });
  else if (row.file) pieces.push({ send: 'document', name: row.file.name, text: row.file.text, caption: '' });
  return pieces;
};

/** Pictures of people, kept by the messenger's own ids, are sent back rather than drawn. */
const keptFiles = (row: OutgoingRow): string[] | null => {
  if (row.picture?.draw !== 'kept') return null;
  const { files } = row.picture.data as { files?: unknown };
  return Array.isArray(files) ? files.filter((file): file is string => typeof file === 'string') : [];
};
