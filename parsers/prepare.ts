import type { Unit } from '#records';
import type { ReadContext } from './context.ts';
import type { Sense } from './lexicon.ts';
import { type Num, num, sense, type Tok } from './tokens.ts';

const isWord = (tok: Tok | undefined) => tok?.k === 'w';
const punct = (tok: Tok | undefined, s: string) => tok?.k === 'p' && tok.s === s;
const join = (a: Tok, b: Tok, more: Partial<Tok>): Tok => ({ ...a, b: b.b, ...more });

/** Numbers in words become numbers: `sixty six point five`, `forty one`, `two and a half`. */
export function wordNumbers(tokens: readonly Tok[]): Tok[] {
  if (!tokens.some((tok) => tok.senses.some((s) => s.cls === 'numw' || s.cls === 'plus' || s.cls === 'frac')))
    return tokens as Tok[];
  const out: Tok[] = [];
  for (let i = 0; i < tokens.length; ) {
    const tok = tokens[i]!;
    const previous = out.at(-1);
    const plus = sense(tok, 'plus');
    if (plus !== undefined && previous?.k === 'n' && previous.n!.to === undefined) {
      previous.n = { ...previous.n!, value: previous.n!.value + Number(plus), decimals: 1 };
      previous.b = tok.b;
      previous.s += ` ${tok.s}`;
      i++;
      continue;
    }
    const frac = sense(tok, 'frac');
    if (frac !== undefined) {
      out.push({ ...tok, k: 'n', n: num(Number(frac), { fraction: true, decimals: 1, inWords: true }) });
      i++;
      continue;
    }
    // `the 79 one`: a pronoun behind a figure counts nothing.
    const pronoun =
      sense(tok, 'numw') === '1' &&
      sense(tok, 'article') !== undefined &&
      previous?.k === 'n' &&
      // `pile 3 one forty one` dictates hundreds
      !(Number(sense(tokens[i + 1], 'numw') ?? 0) >= 10);
    if (sense(tok, 'numw') === undefined || pronoun) {
      out.push(tok);
      i++;
      continue;
    }
    const [value, end, decimals] = cardinal(tokens, i);
    // A lone `one` is more often a pronoun; it stays a word that may count.
    out.push(join(tok, tokens[end - 1]!, { k: 'n', s: 'n', n: num(value, { inWords: true, decimals }) }));
    i = end;
  }
  return out;
}

function cardinal(tokens: readonly Tok[], start: number): [number, number, number] {
  let total = 0;
  let part = -1;
  let i = start;
  const valueAt = (k: number) => {
    const v = tokens[k] && tokens[k]!.k === 'w' ? sense(tokens[k], 'numw') : undefined;
    return v === undefined ? undefined : Number(v);
  };
  for (;;) {
    let k = i;
    if (part >= 0 && (sense(tokens[k], 'numand') !== undefined || punct(tokens[k], '-'))) k++;
    const v = valueAt(k);
    if (v === undefined) break;
    const joined = k > i;
    if (part < 0) part = v;
    else if (part === 1 && !joined && v >= 10 && v < 100 && total === 0) part = 100 + v;
    else if (v === 1000) {
      total += Math.max(part, 1) * 1000;
      part = 0;
    } else if (v === 100) {
      // `dos ciento` is no two hundred
      if (part === 0 || part >= 100 || sense(tokens[k], 'numstart') !== undefined) break;
      part *= 100;
    } else if (part === 0 && total > 0) part = v;
    else if (part >= 100 && part % 100 === 0 && v < 100) part += v;
    else {
      const tens = part % 100;
      const fits = tens >= 20 && tens % 10 === 0 && (v < 10 || ((tens === 60 || tens === 80) && v < 20));
      if (!fits || (joined && v >= 20)) break;
      part += v;
    }
    i = k + 1;
  }
  let value = total + Math.max(part, 0);
  let decimals = 0;
  if (sense(tokens[i], 'decimal') !== undefined) {
    let k = i + 1;
    let digits = '';
    const first = valueAt(k);
    if (first !== undefined && first >= 10 && first < 100) {
      const [two, end] = cardinal(tokens, k);
      digits = String(two);
      k = end;
    } else for (let v = first; v !== undefined && v < 10; v = valueAt(++k)) digits += String(v);
    if (digits) {
      value = Number(`${value}.${digits}`);
      decimals = digits.length;
      i = k;
    }
  }
  return [value, i, decimals];
}

const GLUED_ONLY = new Set<string>(['m', 'd', 'g', 't', 'h', 'a']);

/** Units join the number before them; `4 lb 6 oz` becomes one number; `135-140` one with its `to`. */
export function units(tokens: readonly Tok[], context: ReadContext): Tok[] {
  const out: Tok[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const tok = tokens[i]!;
    if (tok.k !== 'n') {
      out.push(tok);
      continue;
    }
    if (tok.n!.unit !== null) {
      // Read before: a second pass over mended words leaves it as it is.
      out.push(tok);
      continue;
    }
    const n: Num = { ...tok.n! };
    let end = i;
    const before = out.at(-1);
    if (punct(before, '#') && tok.glued) {
      n.hash = true;
      out.pop();
    }
    const sign = out.at(-1);
    if (
      sign &&
      punct(sign, '-') &&
      tok.glued &&
      !sign.glued &&
      out.at(-2)?.k !== 'n' &&
      (!isLineStart(out) || isCold(tokens[i + 1]))
    ) {
      n.value = -n.value;
      n.negative = true;
      out.pop();
    }
    const word = out.at(-1);
    if (
      word &&
      sense(word, 'minus') !== undefined &&
      (out.at(-2)?.k !== 'n' || sense(out.at(-3), 'pilehead') !== undefined) &&
      n.value >= 0
    ) {
      n.value = -n.value;
      n.negative = true;
      n.byWord = word.a;
      out.pop();
    }
    let unit = unitAt(tokens, end + 1, tok, context);
    // `135-140`, `61.5 - 15.5`, `40 - 43 C`
    const dash = tokens[end + 1];
    if (
      !unit &&
      punct(dash, '-') &&
      tokens[end + 2]?.k === 'n' &&
      !punct(tokens[end + 3], '-') &&
      !namesLine(tok, dash!, tokens[end + 2]!, out, context) &&
      dash!.glued === tokens[end + 2]!.glued
    ) {
      const second = tokens[end + 2]!;
      n.to = second.n!.value;
      n.decimals = Math.max(n.decimals, second.n!.decimals);
      end += 2;
      unit = unitAt(tokens, end + 1, second, context);
    } else if (
      unit &&
      unit.unit !== 'deg' &&
      punct(tokens[unit.end], '-') &&
      tokens[unit.end + 1]?.k === 'n'
    ) {
      const second = tokens[unit.end + 1]!;
      const again = unitAt(tokens, unit.end + 2, second, context);
      if (again?.unit === unit.unit) {
        n.to = second.n!.value;
        unit = again;
      } else if (!again && second.n!.unit === null) {
        n.to = second.n!.value;
        unit = { unit: unit.unit, end: unit.end + 2 };
      }
    }
    if (unit) {
      n.unit = unit.unit;
      end = unit.end - 1;
      // `twenty-three pounds and a half`
      const plus = sense(tokens[end + 1], 'plus');
      if (plus !== undefined && n.to === undefined) {
        n.value += Number(plus);
        n.decimals = 1;
        end++;
      }
      const minor = tokens[end + 1];
      if (minor?.k === 'n' && n.to === undefined) {
        const small = unitAt(tokens, end + 2, minor, context);
        const whole = n.decimals === 0 && minor.n!.value > 0;
        if (whole && n.unit === 'lb' && small?.unit === 'oz' && minor.n!.value < 16) {
          n.value += minor.n!.value / 16;
          n.decimals = 2;
          end = small.end - 1;
        } else if (whole && n.unit === 'ft' && small?.unit === 'in' && minor.n!.value < 12) {
          n.value += minor.n!.value / 12;
          n.decimals = 2;
          end = small.end - 1;
        }
      }
    }
    let a = tok.a;
    if (n.byWord !== undefined) a = n.byWord;
    else if (n.hash || n.negative) a -= 1;
    out.push({ ...tok, a, b: tokens[end]!.b, n, glued: n.hash || n.negative ? false : tok.glued });
    i = end;
  }
  return out;
}

/** `1 - 135` opening a line: a pile of the site and its reading, no range. */
function namesLine(tok: Tok, dash: Tok, value: Tok, out: readonly Tok[], context: ReadContext): boolean {
  const before = out.at(-1);
  if (before !== undefined && !punct(before, '\n')) return false;
  if (dash.glued || value.glued || value.n!.value < 20) return false;
  return context.piles.includes(`pile ${tok.n!.value}`);
}

/** `-4 outside` opens a line with frost, `-4 carts` with a bullet. */
const isCold = (next: Tok | undefined) => sense(next, 'place') === 'ambient' || punct(next, '°');

const isLineStart = (out: readonly Tok[]) => {
  const before = out.at(-2);
  return before === undefined || punct(before, '\n');
};

function unitAt(
  tokens: readonly Tok[],
  k: number,
  number: Tok,
  context: ReadContext,
): { unit: Unit | 'deg'; end: number } | null {
  const tok = tokens[k];
  if (!tok) return null;
  if (tok.k === 'p') {
    if (tok.s === '%') return { unit: '%', end: k + 1 };
    if (tok.s === '#' && tok.glued && !(tokens[k + 1]?.k === 'n' && tokens[k + 1]!.glued))
      return { unit: 'lb', end: k + 1 };
    if (tok.s === "'" && tok.glued) return { unit: 'ft', end: k + 1 };
    if (tok.s === '"' && tok.glued) return { unit: 'in', end: k + 1 };
    if (tok.s === '°') {
      const scale = sense(tokens[k + 1], 'unit');
      if ((scale === 'C' || scale === 'F') && (tokens[k + 1]!.glued || !isPileLetter(tokens, k + 1, context)))
        return { unit: scale, end: k + 2 };
      return { unit: 'deg', end: k + 1 };
    }
    return null;
  }
  const unit = sense(tok, 'unit') as Unit | 'deg' | undefined;
  if (!unit) return null;
  const spaced = !tok.glued;
  if (tok.s.length === 1) {
    if (spaced && (unit === 'C' || unit === 'F') && isPileLetter(tokens, k, context)) return null;
    // `à 1 m : 63`
    const ends = tok.s === 'm' && number.n!.value <= 4 && (tokens[k + 1]?.k ?? 'p') !== 'w';
    if (spaced && GLUED_ONLY.has(tok.s) && !(tok.s === 't' || tok.s === 'h') && !ends) return null;
    if (spaced && (tok.s === 'h' || tok.s === 't') && number.n!.fraction) return null;
  }
  if (unit === 'in' && tok.s === 'in' && spaced) {
    const next = tokens[k + 1];
    // `carts 51 and 58 in`
    for (let j = k - 2; j >= Math.max(0, k - 7) && tokens[j]!.k !== 'p'; j--)
      if (sense(tokens[j], 'container') !== undefined && sense(next, 'deep') === undefined) return null;
    if (sense(next, 'deep') === undefined && next !== undefined && !(next.k === 'p')) return null;
  }
  if (unit === 'deg') {
    const next = tokens[k + 1];
    const scale = sense(next, 'unit');
    if ((scale === 'C' || scale === 'F') && !(next!.s.length === 1 && isPileLetter(tokens, k + 1, context)))
      return { unit: scale, end: k + 2 };
  }
  return { unit, end: k + 1 };
}

/** `B 41 C 22`: a letter that is a pile of the site and has its own figure or word after it is the pile. */
function isPileLetter(tokens: readonly Tok[], k: number, context: ReadContext): boolean {
  const tok = tokens[k]!;
  if (!context.piles.includes(`pile ${tok.s.toUpperCase()}`)) return false;
  let next = tokens[k + 1];
  let step = 1;
  while (
    next &&
    (sense(next, 'prep') === 'at' ||
      punct(next, ':') ||
      punct(next, '=') ||
      sense(next, 'be') !== undefined ||
      sense(next, 'point') !== undefined)
  )
    next = tokens[k + ++step];
  if (!next || (next.k === 'p' && next.s !== '-')) return false;
  if (next.k === 'n') return true;
  return ['feel', 'turn', 'cover', 'topic', 'full', 'finish', 'ready', 'start', 'uncover', 'squeeze'].some(
    (cls) => sense(next, cls) !== undefined,
  );
}

const EAST = new Set(['est', 'este']);

/** `est 50 ouest 47`: beside the other points of the compass `est` and `este` are the east, else `is` and `this`. */
function compass(tokens: readonly Tok[]): readonly Tok[] {
  if (!tokens.some((tok) => EAST.has(tok.s))) return tokens;
  const point = (tok: Tok | undefined) => sense(tok, 'point');
  return tokens.map((tok, k) => {
    if (!EAST.has(tok.s) || tokens[k + 1]?.k !== 'n') return tok;
    let before = k - 1;
    while (before >= 0 && point(tokens[before]) === undefined && tokens[before]!.s !== '\n') before--;
    const told = point(tokens[before]) !== undefined && tokens.slice(before, k).some((one) => one.k === 'n');
    // `nord de C est 51`: the point before it still wants its figure
    if (point(tokens[before]) !== undefined && !told) return tok;
    const after = tokens.slice(k + 2).find((one) => point(one) !== undefined || one.s === '\n');
    return told || point(after) === 'west'
      ? { ...tok, senses: [{ cls: 'point', val: 'east', lang: null }] }
      : tok;
  });
}

const MAYBE = /^(?:maybe|perhaps|possibly|or maybe|peut[ -]etre|quizas?|tal vez|a lo mejor)$/;
const OR: readonly Sense[] = [{ cls: 'or', val: '', lang: null }];

/** `cart 61 maybe 66`, `bucket 13, maybe 18`: two figures of one load between which the writer cannot tell. */
function undecided(tokens: readonly Tok[]): readonly Tok[] {
  const out: Tok[] = [];
  tokens.forEach((tok, k) => {
    const next = tokens[k + 1];
    if (tok.k === 'w' && MAYBE.test(tok.s) && next?.k === 'n') {
      let at = out.length - 1;
      if (punct(out[at], ',')) at--;
      const was = out[at];
      const head = out[at - 1];
      const near = was?.k === 'n' && next.n!.value > was.n!.value / 3 && next.n!.value < was.n!.value * 3;
      const load = sense(head, 'container') !== undefined || sense(head, 'material') !== undefined;
      if (near && load) {
        out.length = at + 1;
        out.push({ ...tok, senses: OR });
        return;
      }
    }
    out.push(tok);
  });
  return out;
}

/** `about 60`, `low 80s`, `~41` keep their number, marked approximate. */
export function approximations(typed: readonly Tok[]): Tok[] {
  const tokens = undecided(compass(typed));
  const out: Tok[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const tok = tokens[i]!;
    if (tok.k === 'n') {
      const n = tok.n!;
      const s = tokens[i + 1];
      const tens = n.value % 10 === 0 && n.unit === null && n.to === undefined && n.value >= 10;
      const plural = tens && s?.k === 'w' && s.s === 's' && s.glued;
      const before = out.at(-1);
      const band = ['lowof', 'midof', 'highof'].find((cls) => before && sense(before, cls) !== undefined);
      if (plural || (tens && band && sense(tokens[i - 2], 'article') !== undefined)) {
        const add = band === 'lowof' ? 2 : band === 'midof' ? 5 : band === 'highof' ? 8 : 0;
        if (band) out.pop();
        out.push({
          ...tok,
          a: band ? before!.a : tok.a,
          b: plural ? s!.b : tok.b,
          n: { ...n, value: n.value + add, approximate: true },
        });
        if (plural) i++;
        continue;
      }
      if (before && (sense(before, 'approx') !== undefined || punct(before, '~'))) {
        out.pop();
        out.push({ ...tok, a: before.a, n: { ...n, approximate: true }, glued: before.glued });
        continue;
      }
      if (s && sense(s, 'ish') !== undefined) {
        out.push({ ...tok, b: s.b, n: { ...n, approximate: true } });
        i++;
        continue;
      }
    }
    out.push(tok);
  }
  return out;
}

/** A word that puts right what was just said; a bare `no` does so between commas. */
const corrects = (tokens: readonly Tok[], k: number) =>
  sense(tokens[k], 'correct') !== undefined ||
  (sense(tokens[k], 'neg') !== undefined &&
    tokens[k]!.s.length <= 3 &&
    ((punct(tokens[k - 1], ',') && punct(tokens[k + 1], ',')) || correctsLoad(tokens, k)));

/**
 * `cart 36 no 63`, `carrito 131... no, 113`: behind a load's figure a `no` takes it back. The Spanish `no` also
 * means `not`, so there it needs its comma.
 */
function correctsLoad(tokens: readonly Tok[], k: number): boolean {
  if (tokens[k]!.s !== 'no' && tokens[k]!.s !== 'non') return false;
  let was = k - 1;
  while (punct(tokens[was], ',') || punct(tokens[was], '.') || punct(tokens[was], '-')) was--;
  let now = k + 1;
  while (punct(tokens[now], ',')) now++;
  if (tokens[was]?.k !== 'n' || tokens[now]?.k !== 'n') return false;
  const head = tokens[was - 1];
  const meant = head?.senses.find((one) => one.cls === 'container' || one.cls === 'material');
  if (!meant) return false;
  return meant.lang !== 'es' || now > k + 1;
}

/** A slip put right in the same breath: `42 lb no wait 24` is 24 lb, `turned B, no wait C` is C. */
export function corrections(tokens: readonly Tok[]): Tok[] {
  if (!tokens.some((_, k) => corrects(tokens, k))) return tokens as Tok[];
  const out: Tok[] = [...tokens];
  for (let i = 1; i < out.length - 1; i++) {
    if (!corrects(out, i)) continue;
    let left = i - 1;
    while (left >= 0 && (isFiller(out[left]!) || out[left]!.k === 'p') && out[left]!.s !== '\n') left--;
    let right = i + 1;
    while (
      right < out.length &&
      (isFiller(out[right]!) ||
        sense(out[right], 'correct') !== undefined ||
        (out[right]!.k === 'p' && out[right]!.s !== '\n'))
    )
      right++;
    const was = out[left];
    const now = out[right];
    if (!was || !now) continue;
    // `no era 24 era 42` puts an earlier message right.
    if (sense(out[left - 1], 'negwas') !== undefined) continue;
    if (correctsLoad(out, i))
      // `bac 71, non 77 désolé`
      while (sense(out[right + 1], 'correct') !== undefined || sense(out[right + 1], 'amend') !== undefined)
        out.splice(right + 1, 1);
    if (was.k === 'n' && now.k === 'n') {
      const n = { ...now.n!, unit: now.n!.unit ?? was.n!.unit };
      if (sense(was, 'place?') !== undefined && n.unit === null) n.unit = null;
      out.splice(left, right - left + 1, { ...now, a: was.a, n, senses: now.senses, glued: false });
      i = left;
      continue;
    }
    // `B 45 I mean C 45`, `pile 2 130, sorry pile 3 130`: the place goes with its figure.
    if (was.k === 'n' && now.k === 'w' && sense(now, 'place') !== undefined) {
      let p = left - 1;
      while (p >= 0 && out[p]!.k === 'n') p--;
      if (sense(out[p], 'place') !== undefined) {
        const figures = out.slice(p + 1, left + 1);
        const own = out[right + 1]?.k === 'n';
        out.splice(p, right - p + 1, { ...now, a: out[p]!.a }, ...(own ? [] : figures));
        i = p;
        continue;
      }
    }
    if (
      was.k === 'n' &&
      now.k === 'n' &&
      sense(was, 'place?') !== undefined &&
      sense(now, 'place?') === undefined
    )
      continue;
    for (const cls of ['place', 'container', 'material', 'source', 'feel', 'layer', 'point'] as const) {
      if (was.k === 'w' && now.k === 'w' && sense(was, cls) !== undefined && sense(now, cls) !== undefined) {
        out.splice(left, right - left + 1, { ...now, a: was.a });
        i = left;
        break;
      }
    }
  }
  return out;
}

const isFiller = (tok: Tok) =>
  tok.k === 'w' &&
  tok.senses.some((s) => s.cls === 'fill' || s.cls === 'article') &&
  sense(tok, 'place') === undefined;

/** Pile and bay names: `pile B`, `bay 3`, `piles A and B`, a bare `B`; numbers that may name a pile are marked. */
export function places(tokens: readonly Tok[], context: ReadContext): Tok[] {
  const out: Tok[] = [];
  const numbered = context.piles.some((pile) => /^pile \d+$/.test(pile));
  let plural: string | null = null;
  for (let i = 0; i < tokens.length; i++) {
    const tok = tokens[i]!;
    const head = sense(tok, 'pilehead');
    if (head !== undefined) {
      let k = i + 1;
      while (
        sense(tokens[k], 'numero') !== undefined ||
        punct(tokens[k], '#') ||
        (punct(tokens[k], '-') && tokens[k]!.glued)
      )
        k++;
      const label = tokens[k];
      // `les 4 tas à 51`: counted piles have no letter behind them.
      const counted = label?.s === 'a' && tokens[i - 1]?.k === 'n';
      const name = label && !counted && labelOf(label, tokens[k + 1], head, context, numbered);
      if (name) {
        plural = sense(tok, 'many') !== undefined ? head : null;
        const val = head === 'pile' && name === '' ? head : `${head} ${name}`;
        out.push(
          join(tok, label!, { k: 'w', senses: [{ cls: 'place', val: canonical(val, context), lang: null }] }),
        );
        i = k;
        continue;
      }
      if (head === 'drum' && sense(tok, 'container') === undefined) {
        const drum = context.drums[0]?.name ?? 'drum';
        out.push({
          ...tok,
          senses: [
            { cls: 'place', val: context.drums.length > 0 ? drum : 'drum', lang: null },
            { cls: 'drum', val: '', lang: null },
            ...tok.senses,
          ],
        });
        continue;
      }
      out.push(tok);
      continue;
    }
    if (plural && tok.k === 'n' && tok.n!.unit === null && Number.isInteger(tok.n!.value)) {
      const before = out.at(-1);
      const val = `${plural} ${tok.n!.value}`;
      const next = tokens[i + 1];
      const linked = before && (isListLink(before) || sense(before, 'place') !== undefined);
      const figures = next && (next.k === 'n' || sense(next, 'point') !== undefined) && !isListLink(before!);
      if (linked && !figures && context.piles.includes(val)) {
        out.push({ ...tok, k: 'w', senses: [{ cls: 'place', val, lang: null }] });
        continue;
      }
    }
    if (!isListLink(tok) && sense(tok, 'fill') === undefined)
      if (tok.k !== 'w' || !isLetter(tok)) plural = tok.k === 'p' && tok.s === '\n' ? null : plural;
    if (
      numbered &&
      sense(tok, 'onename') !== undefined &&
      sense(tokens[i - 1], 'pilearticle') !== undefined
    ) {
      out.push({ ...tok, senses: [{ cls: 'place', val: 'pile 1', lang: null }] });
      continue;
    }
    if (tok.k === 'w' && isLetter(tok)) {
      const senses = letterSenses(tok, tokens, i, out, context);
      out.push(senses ? { ...tok, senses } : tok);
      continue;
    }
    if (
      tok.k === 'n' &&
      numbered &&
      tok.n!.unit === null &&
      Number.isInteger(tok.n!.value) &&
      !tok.n!.fraction
    ) {
      const val = `pile ${tok.n!.value}`;
      if (isPileNumber(tok, tokens[i - 1], tokens[i + 1])) {
        out.push({
          ...tok,
          n: { ...tok.n!, named: true },
          senses: [...tok.senses, { cls: 'place?', val, lang: null }],
        });
        continue;
      }
      if (context.piles.includes(val) && mayName(tokens, i)) {
        out.push({ ...tok, senses: [...tok.senses, { cls: 'place?', val, lang: null }] });
        continue;
      }
    }
    out.push(tok);
  }
  return out;
}

/** Words that a pile's number can be followed by; any other word makes it a count of something. */
const AFTER_PLACE = [
  'fill',
  'prep',
  'and',
  'feel',
  'point',
  'tempword',
  'be',
  'topic',
  'turn',
  'cover',
  'uncover',
  'full',
  'finish',
  'ready',
  'squeeze',
  'degree',
  'next',
  'start',
  'empty',
  'deep',
  'strength',
  'seen',
  'into',
  'because',
  'approx',
  'correct',
  'contaminated',
  'gloss',
  'rangeword',
  'join',
  'split',
  'neg',
  'req',
  'about',
  'dateword',
  'add',
  'remove',
  'water',
  'relocated',
  'gone',
  'or',
  'cond',
  'intent',
  'ask',
];
function mayName(tokens: readonly Tok[], i: number): boolean {
  const next = tokens[i + 1];
  if (!next || next.k !== 'w') return true;
  if (
    [
      'container',
      'material',
      'money',
      'person',
      'layer',
      'unit',
      'hourword',
      'sample',
      'many',
      'pilehead',
    ].some((cls) => sense(next, cls) !== undefined) &&
    !next.senses.some((s) => s.cls === 'fill' || s.cls === 'prep')
  )
    return false;
  return next.senses.some((s) => AFTER_PLACE.includes(s.cls));
}

/** `la 3` names a pile, where no word follows that it would count. */
function isPileNumber(tok: Tok, before: Tok | undefined, next: Tok | undefined): boolean {
  if (sense(before, 'pilearticle') === undefined || tok.n!.value < 1 || tok.n!.value > 30) return false;
  return !['container', 'material', 'person', 'hourword', 'money'].some(
    (cls) => sense(next, cls) !== undefined,
  );
}

const isLetter = (tok: Tok) => tok.s.length === 1 && tok.s >= 'a' && tok.s <= 'z';
const isListLink = (tok: Tok) =>
  sense(tok, 'and') !== undefined ||
  (tok.k === 'p' && (tok.s === ',' || tok.s === '+' || tok.s === '&' || tok.s === '/'));

const canonical = (place: string, context: ReadContext) => {
  const drum = context.drums.find(
    (one) => one.name === place || (place === 'drum 1' && one.name === 'drum' && context.drums.length === 1),
  );
  return drum?.name ?? place;
};

function labelOf(
  label: Tok,
  next: Tok | undefined,
  head: string,
  context: ReadContext,
  numbered: boolean,
): string | null {
  if (label.k === 'n') {
    const n = label.n!;
    if (
      n.unit !== null ||
      n.fraction ||
      n.to !== undefined ||
      !Number.isInteger(n.value) ||
      n.value < 1 ||
      n.value > 99 ||
      n.approximate
    )
      return null;
    if (
      context.piles.includes(`${head} ${n.value}`) ||
      context.drums.some((drum) => drum.name === `${head} ${n.value}`)
    )
      return String(n.value);
    if (head === 'drum') return next?.k === 'n' ? String(n.value) : null;
    if (head === 'bay' && n.value < 40) return String(n.value);
    if (n.hash) return String(n.value);
    if (!numbered) return n.value < 30 || next?.k === 'n' ? String(n.value) : null;
    return n.value < 30 || next?.k === 'n' ? String(n.value) : null;
  }
  if (label.k !== 'w') return null;
  const spoken = sense(label, 'letter');
  // `tas de copeaux` is no pile D, `tas dé 50` is.
  if (spoken) return sense(label, 'prep') === undefined || next?.k === 'n' ? spoken : null;
  if (numbered && sense(label, 'onename') !== undefined) return '1';
  if (!isLetter(label) || head === 'drum' || label.accented) return null;
  // `pile a chauffe`, `pile a 45`: an `a` after the head is the letter where a pile A is there.
  const letter = label.s.toUpperCase();
  if (context.piles.includes(`${head} ${letter}`)) return letter;
  if (label.upper || label.senses.length === 0) return letter;
  return null;
}

function letterSenses(
  tok: Tok,
  tokens: readonly Tok[],
  i: number,
  out: readonly Tok[],
  context: ReadContext,
): readonly Sense[] | null {
  if (tok.accented) return null;
  const val = `pile ${tok.s.toUpperCase()}`;
  const known = context.piles.includes(val);
  const next = tokens[i + 1];
  const before = out.at(-1);
  const asPlace: Sense = { cls: 'place', val, lang: null };
  if (!known) {
    if (!tok.upper || tok.s === 'i' || tok.senses.length > 0) return null;
    return [
      { cls: 'place', val, lang: null },
      { cls: 'stranger', val, lang: null },
    ];
  }
  if (tok.upper && !(tok.s === 'a' && before === undefined && next?.k === 'w' && isLowerWord(next)))
    return [asPlace];
  // Lower case: a figure of its own must follow, or a list of places stands around it.
  const figure =
    next?.k === 'n' &&
    (next.n!.unit === null ||
      next.n!.unit === 'C' ||
      next.n!.unit === 'F' ||
      next.n!.unit === 'deg' ||
      next.n!.unit === '%');
  // `pas d'odeur` typed without its apostrophe
  const elided =
    !tok.upper && sense(tok, 'prep') !== undefined && next?.k === 'w' && /^[aeiouhy]/.test(next.s);
  if (elided && sense(next, 'and') === undefined && sense(next, 'be') === undefined) return null;
  // `b there in 10`
  if (sense(next, 'there') !== undefined) return null;
  if (tok.s === 'a') {
    const bound =
      before &&
      (sense(before, 'container') !== undefined ||
        sense(before, 'material') !== undefined ||
        sense(before, 'place') !== undefined ||
        sense(before, 'pilehead') !== undefined ||
        sense(before, 'prep') === 'at');
    const counted =
      sense(tokens[i + 2], 'container') !== undefined || sense(tokens[i + 2], 'material') !== undefined;
    // `turned a and c`, `brassé c et a`
    const done = ['turn', 'cover', 'uncover'].some((cls) => sense(before, cls) !== undefined);
    const linked = before && isListLink(before) && sense(out.at(-2), 'place') !== undefined;
    const ends = next === undefined || (isListLink(next) && (tokens[i + 2]?.s.length ?? 2) === 1);
    if ((done || linked) && ends && !tok.upper) return [asPlace];
    return figure && !bound && !counted ? [asPlace] : null;
  }
  return tok.senses.length === 0 || figure ? [asPlace, ...tok.senses] : [...tok.senses, asPlace];
}

const isLowerWord = (tok: Tok) =>
  isWord(tok) &&
  !tok.upper &&
  !tok.senses.some((s) =>
    [
      'feel',
      'turn',
      'topic',
      'full',
      'finish',
      'ready',
      'prep',
      'cover',
      'fill',
      'point',
      'and',
      'squeeze',
      'tempword',
      'uncover',
      'start',
      'degree',
      'be',
      'gloss',
      'seen',
      'next',
      'empty',
    ].includes(s.cls),
  );
