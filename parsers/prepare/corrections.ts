// A slip put right in the same breath.
import { sense, type Tok } from '../tokens.ts';
import { punct } from './near.ts';

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
        isLink(out[right]!) ||
        (out[right]!.k === 'p' && out[right]!.s !== '\n'))
    )
      right++;
    const was = out[left];
    let now = out[right];
    if (!was || !now) continue;
    // `turned pile 2 i mean 3`, `la 3 está a 141, digo la 2`
    if (
      now.k === 'n' &&
      sense(now, 'place?') !== undefined &&
      out[right + 1]?.k !== 'n' &&
      (was.k === 'w'
        ? sense(was, 'place') !== undefined
        : now.n!.named && !was.n?.named && was.n!.value >= 20)
    )
      now = asPlace(now);
    // `no era 24 era 42` puts an earlier message right.
    let denial = left - 1;
    while (denial > 0 && (isFiller(out[denial]!) || sense(out[denial], 'definite') !== undefined)) denial--;
    if (sense(out[denial], 'negwas') !== undefined) continue;
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
      while (
        p >= 0 &&
        ((out[p]!.k === 'n' && !out[p]!.n!.named) ||
          isFiller(out[p]!) ||
          sense(out[p], 'be') !== undefined ||
          saysAt(out[p]!))
      )
        p--;
      if (
        sense(out[p], 'place') !== undefined ||
        (out[p]?.n?.named && sense(out[p], 'place?') !== undefined)
      ) {
        const figures = out.slice(p + 1, left + 1).filter((tok) => tok.k === 'n');
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

/** `digo de la 2`: what leads up to the thing that is meant. */
const isLink = (tok: Tok) =>
  tok.k === 'w' && tok.senses.length > 0 && tok.senses.every((one) => LINKS.has(one.cls));
const LINKS = new Set(['prep', 'definite', 'article', 'fill', 'pilearticle', 'prepfrom']);

/** A bare number that can name a pile, as the place it names. */
const asPlace = (tok: Tok): Tok => ({
  ...tok,
  k: 'w',
  senses: [{ cls: 'place', val: sense(tok, 'place?')!, lang: null }],
});

const saysAt = (tok: Tok) => tok.senses.some((one) => one.cls === 'prep' && one.val === 'at');

const isFiller = (tok: Tok) =>
  tok.k === 'w' &&
  tok.senses.some((s) => s.cls === 'fill' || s.cls === 'article') &&
  sense(tok, 'place') === undefined;
