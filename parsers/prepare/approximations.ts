// Figures said roughly, and figures between which the writer cannot tell.
import type { Sense } from '../lexicon.ts';
import { sense, type Tok } from '../tokens.ts';
import { punct } from './near.ts';

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
