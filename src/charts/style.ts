import type { Axis } from './data.ts';

/** Pixels of the drawing before it is doubled: a phone shows it at half to two thirds of this. */
export const WIDTH = 720;
export const MARGIN = 24;

/** Strong on paper white; each is told from the others by its shape and dash as well. */
export const PAPER = '#fdfcf7';
export const INK = '#17201f';
export const SOFT = '#4d5a58';
const RULE = '#d5d8d0';
export const HOT = '#a3230f';
export const COOL = '#144f8c';
export const AIR = '#4d5a58';
export const GOOD = '#1d6b3a';
export const BAND = '#c98a1b';
const PALE_BAND = '#f3dfb6';
/** How a band looks, in the drawing and in its key. */
export const BAND_LOOK = { color: PALE_BAND, borderColor: BAND, borderWidth: 2 };

export const FAMILY = 'DejaVu Sans Condensed';
const TITLE = 33;
export const TEXT = 24;
export const SMALL = 22;

/** Share of the type size that a letter is wide, in the condensed cut: near enough to break lines by. */
function letterWidth(letter: string): number {
  if (/[\u0300-\u036f]/.test(letter)) return 0;
  if (/[\u00a0\u202f]/.test(letter)) return 0.3;
  if (/[ilj.,:;'|!·’]/.test(letter)) return 0.29;
  if (/[ ftrI()[\]\-/]/.test(letter)) return 0.36;
  if (/[mwMW%—…]/.test(letter)) return 0.86;
  if (/[A-Z@&]/.test(letter)) return 0.65;
  return letter.codePointAt(0)! > 0x2e7f ? 1 : 0.57;
}

/** Pixels that a text takes, roughly. */
export function widthOf(text: string, size: number, bold = false): number {
  let share = 0;
  for (const letter of text) share += letterWidth(letter);
  return share * size * (bold ? 1.1 : 1);
}

/** A number stays with its short unit or month, and a sign with what it ends. */
const bound = (text: string): string =>
  text.replaceAll(/(\d) (?=[^\s\d]{1,5}(?:[\s,.)]|$))/g, '$1\u00a0').replaceAll(/ (?=[:;!?%·»])/g, '\u00a0');

/** Breaks a text at spaces so that each line fits; what is too long for the lines ends in dots. */
export function wrapped(text: string, size: number, width: number, most: number, bold = false): string[] {
  const lines: string[] = [];
  for (const word of bound(text)
    .split(' ')
    .filter((each) => each !== '')) {
    const last = lines.at(-1);
    if (last !== undefined && widthOf(`${last} ${word}`, size, bold) <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  const kept = lines.slice(0, most).map((line) => cut(line, size, width, bold));
  if (lines.length > most) kept[most - 1] = cut(`${kept[most - 1]} ……`, size, width, bold);
  return kept;
}

/** A text cut to a width, with dots where something is missing. */
function cut(text: string, size: number, width: number, bold = false): string {
  if (widthOf(text, size, bold) <= width) return text;
  const letters = [...text];
  while (letters.length > 1 && widthOf(`${letters.join('')}…`, size, bold) > width) letters.pop();
  return `${letters.join('').trimEnd()}…`;
}

const GRAPHIC_TEXT = { type: 'text', silent: true } as const;

/** The finding, and under it what it rests on; `top` is where the drawing can begin. */
export function heading(title: string, sub: string): { graphic: object[]; top: number } {
  const width = WIDTH - 2 * MARGIN;
  const graphic: object[] = [];
  let y = 20;
  for (const line of wrapped(title, TITLE, width, 3, true)) {
    graphic.push(textAt(line, MARGIN, y, { size: TITLE, bold: true }));
    y += TITLE * 1.2;
  }
  y += 4;
  for (const line of wrapped(sub, TEXT, width, 3)) {
    graphic.push(textAt(line, MARGIN, y, { fill: SOFT }));
    y += TEXT * 1.25;
  }
  return { graphic, top: y };
}

export function textAt(
  text: string,
  x: number,
  y: number,
  how: { size?: number; bold?: boolean; fill?: string } = {},
): object {
  const { size = TEXT, bold = false, fill = INK } = how;
  return {
    ...GRAPHIC_TEXT,
    left: x,
    top: y,
    style: { text, fill, fontSize: size, fontWeight: bold ? 'bold' : 'normal', fontFamily: FAMILY },
  };
}

/** What a shape or dash stands for; `line`: a dash without a shape on it. */
export type Key = { name: string; icon?: string; itemStyle?: object; line?: boolean };

/** Shapes for the key that keep their proportions. */
export const ICONS = {
  turn: 'path://M12 0L24 12L12 24L0 12Z',
  cover: 'path://M0 0H24V24H0Z',
  uncover: 'path://M0 0H24V24H0Z',
  dash: 'path://M0 0H48V6H0Z',
  dot: 'path://M12 0A12 12 0 1 1 12 24A12 12 0 1 1 12 0Z',
};

/** The key at the foot of a drawing, and how high it is; its rows break where the width ends. */
export function legend(keys: readonly Key[]): { legend: object; height: number } {
  let rows = 1;
  let x = 0;
  const width = WIDTH - 2 * MARGIN;
  for (const { name } of keys) {
    const own = 48 + 5 + widthOf(name, SMALL) + 18;
    if (x > 0 && x + own - 18 > width) {
      rows += 1;
      x = 0;
    }
    x += own;
  }
  const height = rows * 40;
  return {
    height,
    legend: {
      data: keys.map(({ line, ...key }) => (line ? { ...key, itemStyle: { opacity: 0 } } : key)),
      left: MARGIN,
      right: MARGIN,
      bottom: 12,
      itemWidth: 48,
      itemHeight: 18,
      itemGap: 18,
      selectedMode: false,
      textStyle: { fontSize: SMALL, color: INK, fontFamily: FAMILY },
    },
  };
}

/** A value axis whose texts are handed in; nothing is formatted here, so no zone and no locale can creep in. */
export function axisOf(axis: Axis, upright: boolean): object {
  const texts = new Map(axis.ticks.map(({ at, text }) => [at, text]));
  const values = axis.ticks.map(({ at }) => at);
  return {
    type: 'value',
    min: axis.min,
    max: axis.max,
    name: axis.name,
    nameLocation: upright ? 'end' : 'middle',
    nameGap: upright ? 14 : 38,
    nameTextStyle: { fontSize: SMALL, color: SOFT, align: upright ? 'left' : 'center', fontFamily: FAMILY },
    axisLine: { show: true, lineStyle: { color: INK, width: 2 } },
    axisTick: { show: true, customValues: values, length: 7, lineStyle: { color: INK, width: 2 } },
    splitLine: { show: upright, lineStyle: { color: RULE, width: 1 } },
    axisLabel: {
      fontSize: SMALL,
      color: INK,
      fontFamily: FAMILY,
      margin: 10,
      hideOverlap: false,
      customValues: values,
      formatter: (value: number) => texts.get(value) ?? '',
    },
  };
}

/** Room left of the upright axis for its longest text. */
export const leftOf = (axis: Axis): number =>
  MARGIN + 14 + Math.max(...axis.ticks.map(({ text }) => widthOf(text, SMALL)), 20);
