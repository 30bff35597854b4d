// Units, signs and ranges join the numbers they belong to.
import type { Unit } from '#records';
import type { ReadContext } from '../context.ts';
import { type Num, sense, type Tok } from '../tokens.ts';
import { punct } from './near.ts';

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
    // `0.6 in of rain`
    const fallen = sense(next, 'prep') === 'of' && sense(tokens[k + 2], 'weather') !== undefined;
    if (!fallen && sense(next, 'deep') === undefined && next !== undefined && !(next.k === 'p')) return null;
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
