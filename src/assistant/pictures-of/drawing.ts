import type { DrawName } from '#charts';
import type { Manner, PictureSpec, Words } from '../ports.ts';
import type { Line, Say } from '../say.ts';

/** A text of a picture before it is words: one thing to say, or short parts side by side. */
export type Text = { line: Line };

export const text = (line: Line): Text => ({ line });

/** What a picture shows, with things to say where it has texts. */
export type Unsaid<T> = T extends string
  ? string extends T
    ? Text
    : T
  : { [Key in keyof T]: Unsaid<T[Key]> };

/** A picture that goes with a reply or a post, until the words are put in. */
export type Drawing = { draw: DrawName; alt: Line[]; data: unknown };

/**
 * The picture as the outbox keeps it. One that cannot be made is complained of and left out: the lines of the reply
 * must not be lost with it.
 */
export function pictureOf(
  drawing: PictureSpec | (() => Drawing | null) | null,
  {
    words,
    manner,
    complain,
  }: { words: Words; manner: Manner; complain: (what: string, error: unknown) => void },
): PictureSpec | null {
  if (typeof drawing !== 'function') return drawing;
  try {
    const made = drawing();
    return made && specOf(made, words, manner);
  } catch (error) {
    complain('a picture could not be made', error);
    return null;
  }
}

/** Puts the words in: what the outbox keeps holds texts and numbers alone. */
function specOf(drawing: Drawing, words: Words, how: Manner): PictureSpec {
  const said = (part: unknown): unknown => {
    if (Array.isArray(part)) return part.map(said);
    if (typeof part !== 'object' || part === null) return part;
    const entries = Object.entries(part);
    const [only] = entries;
    if (entries.length === 1 && only?.[0] === 'line') return words.text([only[1] as Line], how);
    return Object.fromEntries(entries.map(([name, value]) => [name, said(value)]));
  };
  return { draw: drawing.draw, alt: words.text(drawing.alt, how), data: said(drawing.data) };
}

export type Ticks = { min: number; max: number; ticks: { at: number; text: Text }[] };

/** Steps of 1, 2 or 5 over a span, at most `most` of them, whole steps at both ends. */
export function ticksOf(low: number, high: number, most: number, say: (value: number) => Say): Ticks {
  const rough = Math.max(high - low, 1e-9) / most;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((each) => each * power).find((each) => each >= rough * 0.999) ?? 10 * power;
  const min = Math.floor(low / step + 1e-9) * step;
  const max = Math.max(Math.ceil(high / step - 1e-9) * step, min + step);
  const ticks: Ticks['ticks'] = [];
  for (let i = 0; min + i * step <= max + step / 2; i += 1) {
    const at = Number((min + i * step).toPrecision(12));
    ticks.push({ at, text: text(say(at)) });
  }
  return { min: ticks[0]!.at, max: ticks.at(-1)!.at, ticks };
}
