import { sense, type Tok } from './tokens.ts';

const counts = (tok: Tok) =>
  (tok.k === 'n' && tok.n!.unit === null && Number.isInteger(tok.n!.value) && tok.n!.value < 60) ||
  sense(tok, 'article') === '1';

const opens = (tok: Tok | undefined) =>
  sense(tok, 'and') !== undefined || (tok?.k === 'p' && (tok.s === ',' || tok.s === '+'));

/**
 * Says again the container that a writer leaves out of the second of two loads:
 * `deux brouettes de sciure et une de copeaux`, `2 carts east kitchen 59 64 and 1 from the cafeteria 70`.
 */
export function containersSaidAgain(tokens: readonly Tok[]): Tok[] {
  if (!tokens.some((tok) => sense(tok, 'container') !== undefined)) return tokens as Tok[];
  const out: Tok[] = [];
  let container: Tok | null = null;
  for (let i = 0; i < tokens.length; i++) {
    const tok = tokens[i]!;
    if (tok.k === 'p' && ['\n', '.', '?', '!', ';'].includes(tok.s)) container = null;
    if (sense(tok, 'container') !== undefined) container = tok;
    out.push(tok);
    if (!container || container === tok || !counts(tok) || !opens(tokens[i - 1])) continue;
    const prep = sense(tokens[i + 1], 'prep');
    if (prep !== 'of' && prep !== 'from') continue;
    let k = i + 2;
    while (sense(tokens[k], 'definite') !== undefined) k++;
    const what = tokens[k];
    if (sense(what, 'material') === undefined && sense(what, 'source') === undefined) continue;
    if (sense(tok, 'container') !== undefined) continue;
    const many = tok.k === 'n' && tok.n!.value > 1;
    out.push({
      ...container,
      a: tok.b,
      b: tok.b,
      senses: container.senses.filter((one) => many || one.cls !== 'plural'),
    });
  }
  return out;
}
