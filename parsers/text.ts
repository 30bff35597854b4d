/** A message made plain for reading, with the way back to what was typed. */
export type Plain = {
  /** Lower case, without accents, one kind of dash, quote, degree sign and space. */
  text: string;
  /** The same length as `text`, in the writer's own case, for telling `C` from `c`. */
  cased: string;
  /** What was typed. */
  original: string;
  /** For each position of `text` the position in `original`; null where the two are the same. */
  map: Int32Array | null;
};

const ASCII = /^[\x0a\x20-\x7e]*$/;
const SAME: Record<string, string> = {
  '’': "'",
  '‘': "'",
  ʼ: "'",
  '′': "'",
  '´': "'",
  '`': "'",
  '“': '"',
  '”': '"',
  '″': '"',
  '«': ' ',
  '»': ' ',
  '–': '-',
  '—': '-',
  '−': '-',
  '‐': '-',
  '‑': '-',
  '‒': '-',
  º: '°',
  '˚': '°',
  ª: '°',
  œ: 'oe',
  Œ: 'OE',
  æ: 'ae',
  ß: 'ss',
  '×': 'x',
  '…': '.',
  '•': ',',
  '·': ',',
  '→': '>',
  '\r': ' ',
  '\t': ' ',
  '½': '½',
  '¼': '¼',
  '¾': '¾',
  '⅓': '⅓',
  '⅔': '⅔',
  '²': '2',
  '³': '3',
  '℃': '°C',
  '℉': '°F',
  '°': '°',
};
const INVISIBLE =
  /[\u00ad\u061c\u180e\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]|[\ufe00-\ufe0f]|[\u0300-\u036f]/;
const SPACE = /[\s\u00a0\u2000-\u200a\u202f\u205f\u3000]/;
const LETTER = /[\p{L}\p{N}]/u;

function plainChar(char: string): string {
  const known = SAME[char];
  if (known !== undefined) return known;
  if (char === '\n') return '\n';
  if (char <= '~' && char >= ' ') return char;
  if (INVISIBLE.test(char)) return '';
  if (SPACE.test(char)) return ' ';
  const folded = char.normalize('NFKD').replace(/[\u0300-\u036f]/g, '');
  if (folded && ASCII.test(folded)) return folded;
  // Letters of other alphabets stay so that they count as words nobody knows; pictures become spaces.
  return LETTER.test(char) ? char : ' ';
}

/**
 * Makes a message plain: accents, case, fullwidth digits, odd spaces, dashes and quotes become one form;
 * invisible characters vanish. Never throws; linear in the length.
 * @example plain('Ｂ\u00a041º').text // 'b 41°'
 */
export function plain(original: string): Plain {
  if (ASCII.test(original)) return { text: original.toLowerCase(), cased: original, original, map: null };
  const map: number[] = [];
  const parts: string[] = [];
  let at = 0;
  for (const char of original) {
    const out = plainChar(char);
    for (let k = 0; k < out.length; k++) map.push(at);
    parts.push(out);
    at += char.length;
  }
  map.push(original.length);
  const cased = parts.join('');
  const lower = cased.toLowerCase();
  return {
    text: lower.length === cased.length ? lower : cased,
    cased,
    original,
    map: Int32Array.from(map),
  };
}

/** The typed slice behind positions `start` to `end` of the plain text. @example sliceOf(plain('Tas É'), 4, 5) // 'É' */
export function sliceOf(message: Plain, start: number, end: number): string {
  const [from, to] = spanOf(message, start, end);
  return message.original.slice(from, to);
}

/** The same as positions in the typed text. @example spanOf(plain('a b'), 2, 3) // [2, 3] */
export function spanOf(message: Plain, start: number, end: number): [number, number] {
  if (!message.map) return [start, end];
  const from = message.map[start] ?? message.original.length;
  // The last character may be followed by invisible ones: take up to the next visible position.
  const to = message.map[end] ?? message.original.length;
  return [from, to];
}
