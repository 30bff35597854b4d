import { isMassUnit, isVolumeUnit } from '#records';
import { sense, type Tok } from './tokens.ts';

const weighs = (tok: Tok) => tok.k === 'n' && (tok.n!.unit === null || isMassUnit(tok.n!.unit));

const alone = (container: Tok) => container.senses.filter((one) => one.cls !== 'plural');

/** `…, school 22`: behind a load, a source with the weight of the next and nothing else. */
function saysSource(tokens: readonly Tok[], i: number): boolean {
  if (sense(tokens[i], 'source') === undefined || !opens(tokens[i - 1])) return false;
  const weight = tokens[i + 1];
  if (!weight || !weighs(weight)) return false;
  const after = tokens[i + 2];
  return after === undefined || after.s === '\n' || opens(after);
}

const counts = (tok: Tok) =>
  (tok.k === 'n' && tok.n!.unit === null && Number.isInteger(tok.n!.value) && tok.n!.value < 60) ||
  sense(tok, 'article') === '1';

const opens = (tok: Tok | undefined) =>
  sense(tok, 'and') !== undefined || (tok?.k === 'p' && (tok.s === ',' || tok.s === '+'));

const measured = (tok: Tok | undefined) =>
  tok?.k === 'n' && tok.n!.unit !== null && (isMassUnit(tok.n!.unit) || isVolumeUnit(tok.n!.unit));

/** `20 kg de copeaux et 6 de sciure`: the unit of the first holds for the second. */
export function unitsSaidAgain(tokens: readonly Tok[]): Tok[] {
  if (!tokens.some(measured)) return tokens as Tok[];
  const named = (k: number) => {
    let at = k;
    while (
      sense(tokens[at], 'prep') === 'of' ||
      sense(tokens[at], 'prep') === 'from' ||
      sense(tokens[at], 'definite') !== undefined
    )
      at++;
    return sense(tokens[at], 'material') !== undefined ? at : -1;
  };
  return tokens.map((tok, k) => {
    if (tok.k !== 'n' || tok.n!.unit !== null || tok.n!.fraction || k < 3 || !opens(tokens[k - 1]))
      return tok;
    if (named(k + 1) <= k) return tok;
    let was = k - 2;
    while (was >= 0 && tokens[was]!.k === 'w' && k - was < 7) was--;
    const first = tokens[was];
    if (!measured(first) || named(was + 1) !== k - 2) return tok;
    return { ...tok, n: { ...tok.n!, unit: first!.n!.unit } };
  });
}

/**
 * Says again the container that a writer leaves out of the second of two loads:
 * `deux brouettes de sciure et une de copeaux`, `2 carts east kitchen 59 64 and 1 from the cafeteria 70`.
 */
export function containersSaidAgain(tokens: readonly Tok[]): Tok[] {
  if (!tokens.some((tok) => sense(tok, 'container') !== undefined)) return tokens as Tok[];
  const out: Tok[] = [];
  let container: Tok | null = null;
  let weighed = false;
  let sourced = false;
  for (let i = 0; i < tokens.length; i++) {
    const tok = tokens[i]!;
    if (tok.k === 'p' && ['\n', '.', '?', '!', ';'].includes(tok.s)) container = null;
    if (sense(tok, 'container') !== undefined) {
      container = tok;
      weighed = false;
      sourced = sense(tokens[i - 1], 'source') !== undefined;
    }
    if (sense(tok, 'source') !== undefined) sourced = true;
    if (container && saysSource(tokens, i))
      // `buckets: cafe 19, school 22`
      out.push({ ...container, a: tok.a, b: tok.a, senses: alone(container) });
    out.push(tok);
    if (container && weighs(tok) && !opens(tokens[i - 1])) weighed = true;
    if (!container || container === tok || !opens(tokens[i - 1])) continue;
    const prep = sense(tokens[i + 1], 'prep');
    if (prep !== 'of' && prep !== 'from') continue;
    let k = i + 2;
    while (sense(tokens[k], 'definite') !== undefined) k++;
    const what = tokens[k];
    if (sense(what, 'material') === undefined && sense(what, 'source') === undefined) continue;
    if (sense(tok, 'container') !== undefined) continue;
    // `bucket 19.5 lb from the cafe, 23 from school`: behind a weight comes a weight, where no other follows it.
    if (
      weighed &&
      sourced &&
      weighs(tok) &&
      sense(what, 'source') !== undefined &&
      tokens[k + 1]?.k !== 'n'
    ) {
      out.splice(-1, 0, { ...container, a: tok.a, b: tok.a, senses: alone(container) });
      continue;
    }
    if (!counts(tok)) continue;
    // `2 buckets 19 and 22 from the market stall`: the last of the weights, and where they all came from.
    if (weighed && tok.k === 'n' && tok.n!.value > 4 && tokens[k + 1]?.k !== 'n') continue;
    const many = tok.k === 'n' && tok.n!.value > 1;
    out.push({
      ...container,
      a: tok.b,
      b: tok.b,
      senses: many ? container.senses : alone(container),
    });
  }
  return out;
}
