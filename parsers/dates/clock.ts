// Clock times: `7:15`, `15h45`, `a las 7`, `3:30pm`, `0715` beside a day; never a pile number or a length of time.
import { phraseAt } from './lexicon.ts';
import { isEnd, isInsideNumber, isNumber, isNumberGoingOn, isWord, type Scan } from './scan.ts';

export type TimePiece = {
  readonly from: number;
  readonly to: number;
  readonly minute: number;
  /** said of one half of the day for certain: with am or pm, or on the 24-hour clock */
  readonly isSure: boolean;
};

const halfOf = (scan: Scan, at: number): { end: number; half: 'am' | 'pm' } | null => {
  const token = scan.tokens[at];
  if (token === undefined || token.opensLine) return null;
  const found = phraseAt(scan.lexicon.halves, scan.tokens, at);
  if (found === null) return null;
  const point = scan.tokens[found.end];
  const isAbbreviated =
    point !== undefined && point.text === '.' && point.isGlued && scan.tokens[found.end - 2]?.text === '.';
  return { end: isAbbreviated ? found.end + 1 : found.end, half: found.value };
};

function withHalf(hour: number, half: 'am' | 'pm' | undefined): number | null {
  if (half === undefined || hour > 12) return hour <= 23 ? hour : null;
  if (hour === 12) return half === 'am' ? 0 : 12;
  return half === 'pm' ? hour + 12 : hour;
}

/**
 * A clock time at a token. `isAfterDay`: a day has just been said, so that `0715`, `7` after `at` and `7h` can only
 * be the time of it.
 */
export function readClock(scan: Scan, at: number, isAfterDay: boolean): TimePiece | null {
  const { tokens, lexicon } = scan;
  const first = tokens[at];
  if (first === undefined) return null;
  const ofOne = first.opensLine ? phraseAt(lexicon.clockSureOfOne, tokens, at) : null;
  const sure =
    phraseAt(lexicon.clockSure, tokens, at) ?? (ofOne && tokens[ofOne.end]?.text === '1' ? ofOne : null);
  const isUnsure =
    sure === null &&
    (first.text === '@' || (isWord(first) && first.raw !== 'A' && lexicon.clockUnsure.has(first.text)));
  const i = sure?.end ?? (isUnsure ? at + 1 : at);
  const named = phraseAt(lexicon.namedTimes, tokens, i);
  if (named !== null) return { from: at, to: named.end, minute: named.value, isSure: true };
  const shift = phraseAt(lexicon.minutesBefore, tokens, i);
  if (shift !== null && isNumber(tokens[shift.end]) && !isNumberGoingOn(tokens, shift.end)) {
    const hour = Number(tokens[shift.end]!.text);
    const half = halfOf(scan, shift.end + 1);
    const told = hour <= 12 ? withHalf(hour, half?.half) : null;
    if (told !== null)
      return {
        from: at,
        to: half?.end ?? shift.end + 1,
        minute: told * 60 + shift.value,
        isSure: half !== null,
      };
  }
  const number = tokens[i];
  if (!isNumber(number) || (i > at && number.opensLine)) return null;
  if (isInsideNumber(tokens, i) && tokens[i - 1]?.text !== '@') return null;
  const isLed = sure !== null || isUnsure;
  return (
    readFourDigits(scan, at, i, isAfterDay) ??
    readHourMinute(scan, at, i, isLed, isAfterDay) ??
    readBareHour(scan, at, i, sure !== null, isUnsure, isAfterDay)
  );
}

function readFourDigits(scan: Scan, at: number, i: number, isAfterDay: boolean): TimePiece | null {
  const { tokens, lexicon } = scan;
  const number = tokens[i]!;
  if (number.text.length !== 4 || isNumberGoingOn(tokens, i)) return null;
  const [hour, minute] = [Number(number.text.slice(0, 2)), Number(number.text.slice(2))];
  if (hour > 23 || minute > 59) return null;
  const half = halfOf(scan, i + 1);
  const word = phraseAt(lexicon.hourWords, tokens, i + 1);
  // a quantity has no nought before it, and `0800` at the head of a line is a time
  const isPadded = number.text.startsWith('0') && (number.opensLine || i > at);
  if (!isAfterDay && half === null && word === null && !isPadded) return null;
  if (
    isAfterDay &&
    !number.text.startsWith('0') &&
    half === null &&
    word === null &&
    !isEnd(tokens, i + 1) &&
    !isWord(tokens[i + 1])
  )
    return null;
  const told = withHalf(hour, half?.half);
  if (told === null) return null;
  return { from: at, to: half?.end ?? word?.end ?? i + 1, minute: told * 60 + minute, isSure: true };
}

/** `took 2:30`, `pendant 3h`: a length of time. */
function isAfterDuration({ tokens, lexicon }: Scan, at: number): boolean {
  const before = tokens[at - 1];
  return isWord(before) && !tokens[at]!.opensLine && lexicon.durations.has(before.text);
}

function readHourMinute(
  scan: Scan,
  at: number,
  i: number,
  isLed: boolean,
  isAfterDay: boolean,
): TimePiece | null {
  const { tokens, lexicon } = scan;
  const hour = Number(tokens[i]!.text);
  if (tokens[i]!.text.length > 2 || hour > 24) return null;
  const mark = tokens[i + 1];
  const minutes = tokens[i + 2];
  if (mark === undefined || mark.opensLine) return null;
  if (
    mark.text === ':' &&
    mark.isGlued &&
    isNumber(minutes) &&
    minutes.isGlued &&
    minutes.text.length === 2
  ) {
    if (Number(minutes.text) > 59 || hour > 23 || isNumberGoingOn(tokens, i + 2)) return null;
    if (!isLed && !isAfterDay && isAfterDuration(scan, at)) return null;
    const half = halfOf(scan, i + 3);
    const word = half === null ? phraseAt(lexicon.hourWords, tokens, i + 3) : null;
    const told = withHalf(hour, half?.half);
    if (told === null) return null;
    const isSure = half !== null || hour > 12 || tokens[i]!.text.startsWith('0');
    return {
      from: at,
      to: half?.end ?? word?.end ?? i + 3,
      minute: told * 60 + Number(minutes.text),
      isSure,
    };
  }
  if (phraseAt(lexicon.hourWords, tokens, i + 1)?.end !== i + 2) return null;
  const isLength = isAfterDuration(scan, at);
  if (
    isNumber(minutes) &&
    minutes.text.length === 2 &&
    Number(minutes.text) <= 59 &&
    hour <= 23 &&
    (minutes.isGlued || isLed || isAfterDay)
  ) {
    const next = tokens[i + 3];
    const halved = halfOf(scan, i + 3);
    const isWork = isLength || (isWord(next) && lexicon.durations.has(next.text) && halved === null);
    const told = withHalf(hour, halved?.half);
    if (told === null || isNumberGoingOn(tokens, i + 2) || (isWork && !isLed && !isAfterDay)) return null;
    return {
      from: at,
      to: halved?.end ?? i + 3,
      minute: told * 60 + Number(minutes.text),
      isSure: hour > 5 && !isAfterDay,
    };
  }
  const next = tokens[i + 2];
  const isWork = isLength || (isWord(next) && lexicon.durations.has(next.text));
  const more = phraseAt(lexicon.minutesAfter, tokens, i + 2);
  const halved = halfOf(scan, more?.end ?? i + 2);
  // `7h` at the head of a line is a time; `3h` there may be the hours somebody worked
  const isAtHead = tokens[i]!.opensLine && mark.isGlued && mark.text.length === 1 && hour > 4;
  if (hour > 23 || (!isLed && !isAfterDay && halved === null && (isWork || !isAtHead))) return null;
  const told = withHalf(hour, halved?.half);
  if (told === null) return null;
  const minute = told * 60 + (more?.value ?? 0);
  return {
    from: at,
    to: halved?.end ?? more?.end ?? i + 2,
    minute,
    isSure: halved !== null || (hour > 5 && !isAfterDay),
  };
}

function readBareHour(
  scan: Scan,
  at: number,
  i: number,
  isSure: boolean,
  isUnsure: boolean,
  isAfterDay: boolean,
): TimePiece | null {
  const { tokens, lexicon } = scan;
  const number = tokens[i]!;
  const hour = Number(number.text);
  if (number.text.length > 2 || hour > 23 || isNumberGoingOn(tokens, i)) return null;
  const more = phraseAt(lexicon.minutesAfter, tokens, i + 1);
  const after = more?.end ?? i + 1;
  const half = halfOf(scan, after);
  const word = half === null ? phraseAt(lexicon.hourWords, tokens, after) : null;
  const isLead = isSure || isUnsure;
  if (half !== null && hour <= 12 && hour > 0) {
    return {
      from: at,
      to: half.end,
      minute: withHalf(hour, half.half)! * 60 + (more?.value ?? 0),
      isSure: true,
    };
  }
  if (!isLead) return null;
  const before = tokens[at - 1];
  // without its accent `a 3` is more likely a count than an hour
  if (isUnsure && !isAfterDay && tokens[at]!.raw === 'a') return null;
  if (isUnsure && !isAfterDay) {
    // `tas 2 à 12`, `cart 1 at 12`, `drum at 12` are readings
    if (
      tokens[at]!.text === '@' ||
      (before !== undefined && !tokens[at]!.opensLine && !isPlainWord(scan, before.text))
    )
      return null;
    const isBeforeDay = phraseAt(lexicon.days, tokens, i + 1) !== null;
    if (!isEnd(tokens, i + 1) && word === null && !isBeforeDay) return null;
  }
  // `tas 2 vers 12` may be a reading, `la 2 a las 7` is none
  const isOneWord = tokens[at + 1] === number;
  if (isSure && isOneWord && !isAfterDay && word === null && isNumber(before) && !tokens[at]!.opensLine)
    return null;
  const next = tokens[after];
  if (
    word === null &&
    next !== undefined &&
    !next.opensLine &&
    (lexicon.units.has(next.text) ||
      lexicon.quantityUnits.has(next.text) ||
      ['°', 'º', '%', '#'].includes(next.text))
  )
    return null;
  return {
    from: at,
    to: word?.end ?? after,
    minute: hour * 60 + (more?.value ?? 0),
    isSure: hour > 12 || tokens[i]!.text.startsWith('0'),
  };
}

function isPlainWord(scan: Scan, word: string): boolean {
  return word.length > 1 && /^[a-z]+$/.test(word) && !scan.lexicon.places.has(word);
}
