/** The eight points of the compass, in the book's own spelling, each with what it is called and where it lies. */
const POINTS: readonly { name: string; degrees: number; words: string }[] = [
  { name: 'north', degrees: 0, words: 'north(?:erly|ern)?|nord|norte|n' },
  {
    name: 'north-east',
    degrees: 45,
    words: 'north[ -]?east(?:erly|ern)?|nord[ -]?est|nor(?:d|te)?[ -]?este|ne',
  },
  { name: 'east', degrees: 90, words: 'east(?:erly|ern)?|est|este|e' },
  {
    name: 'south-east',
    degrees: 135,
    words: 'south[ -]?east(?:erly|ern)?|sud[ -]?est|su(?:d|r)?[ -]?este|se',
  },
  { name: 'south', degrees: 180, words: 'south(?:erly|ern)?|sud|sur|s' },
  {
    name: 'south-west',
    degrees: 225,
    words: 'south[ -]?west(?:erly|ern)?|sud[ -]?ouest|su(?:d|r)?[ -]?oeste|sw|so',
  },
  { name: 'west', degrees: 270, words: 'west(?:erly|ern)?|ouest|oeste|w|o' },
  {
    name: 'north-west',
    degrees: 315,
    words: 'north[ -]?west(?:erly|ern)?|nord[ -]?ouest|nor(?:d|te)?[ -]?oeste|nw|no',
  },
];

// The longer names first, so that `north-east` is not read as north.
const LONGEST_FIRST = [...POINTS].sort((a, b) => b.words.length - a.words.length);

/** A point of the compass in the three languages, in folded text: a pattern for the inside of another. */
export const COMPASS = LONGEST_FIRST.map(({ words }) => words).join('|');

/**
 * The point of the compass that a word in folded text names; null where it names none.
 * @source none needed: words
 * @example compassPoint('nord-est') // 'north-east'
 */
export const compassPoint = (word: string): string | null =>
  LONGEST_FIRST.find(({ words }) => new RegExp(`^(?:${words})$`).test(word))?.name ?? null;
