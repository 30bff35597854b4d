import { sense, type Tok } from './tokens.ts';

/** The joining words, or commas, on either side of a danger: `cart 61.5 and smoke from pile B` is two things said in one breath. */
export function joinersBeside(
  tokens: readonly Tok[],
  dangers: readonly { readonly a: number; readonly b: number }[],
): ReadonlySet<Tok> {
  const joiners = new Set<Tok>();
  const isEdge = (tok: Tok): boolean => tok.k === 'p' && /^[\n?.!;]$/.test(tok.s);
  const walk = (from: number, step: 1 | -1): void => {
    for (let at = from; tokens[at] && !isEdge(tokens[at]!); at += step) {
      const isComma = tokens[at]!.k === 'p' && tokens[at]!.s === ',';
      if (!isComma && sense(tokens[at]!, 'and') === undefined) continue;
      joiners.add(tokens[at]!);
      return;
    }
  };
  for (const { a, b } of dangers) {
    const first = tokens.findIndex((tok) => tok.b > a);
    if (first < 0) continue;
    walk(first - 1, -1);
    const after = tokens.findIndex((tok) => tok.a >= b);
    if (after >= 0) walk(after, 1);
  }
  return joiners;
}
