// Numbers in words become numbers: `sixty six point five`, `quatre-vingt-quinze`.
import { num, sense, type Tok } from '../tokens.ts';
import { join, punct } from './near.ts';

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
    // `las dos de la escuela` is both
    if (sense(tok, 'numw') === undefined || pronoun || sense(tok, 'both') !== undefined) {
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
