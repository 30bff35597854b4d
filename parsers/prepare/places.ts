// Names of piles, bays and drums: with their head word, or a bare letter or number.
import type { ReadContext } from '../context.ts';
import { sense, type Tok } from '../tokens.ts';
import { isPileNumber, letterSenses, mayName } from './bare-places.ts';
import { isLetter, isListLink, join, punct } from './near.ts';

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
        // `pile no 2`
        (tokens[k]?.s === 'no' && tokens[k + 1]?.k === 'n') ||
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
    // `bee fifty five, see sixty`: dictated letters, each with its figure.
    const letter = sense(tok, 'letter');
    const heard = tokens[i + 1];
    const after = tokens[i + 2];
    if (
      letter !== undefined &&
      context.piles.includes(`pile ${letter}`) &&
      heard?.k === 'n' &&
      heard.n!.inWords &&
      heard.n!.value >= 20 &&
      (i === 0 || tokens[i - 1]!.k !== 'w') &&
      (after === undefined || after.k !== 'w' || sense(after, 'letter') !== undefined)
    ) {
      out.push({ ...tok, senses: [{ cls: 'place', val: `pile ${letter}`, lang: null }] });
      continue;
    }
    // `p2 141`
    const short = tok.s === 'p' && tokens[i + 1]?.glued && tokens[i + 1]!.k === 'n' ? tokens[i + 1]! : null;
    if (short && context.piles.includes(`pile ${short.n!.value}`)) {
      const val = `pile ${short.n!.value}`;
      out.push(join(tok, short, { k: 'w', senses: [{ cls: 'place', val, lang: null }] }));
      i++;
      continue;
    }
    if (plural && tok.k === 'n' && tok.n!.unit === null && Number.isInteger(tok.n!.value)) {
      const before = out.at(-1);
      const val = `${plural} ${tok.n!.value}`;
      const next = tokens[i + 1];
      const linked = before && (isListLink(before) || sense(before, 'place') !== undefined);
      // `piles 1 2 3 at 141 130 122`: so low a number is a name and no figure.
      const names = tok.n!.value < 20 && next?.k === 'n';
      const figures =
        !names && next && (next.k === 'n' || sense(next, 'point') !== undefined) && !isListLink(before!);
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
        if (putInto(tokens, i)) {
          out.push({
            ...tok,
            n: { ...tok.n!, named: true },
            senses: [...tok.senses, { cls: 'place?', val, lang: null }],
          });
          continue;
        }
        out.push({ ...tok, senses: [...tok.senses, { cls: 'place?', val, lang: null }] });
        continue;
      }
    }
    out.push(tok);
  }
  return out;
}

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
    // `drum 57 60 58` is a list of readings: no site has so many drums.
    if (head === 'drum') return next?.k === 'n' && n.value < 20 ? String(n.value) : null;
    if (head === 'bay' && n.value < 40) return String(n.value);
    if (n.hash) return String(n.value);
    if (!numbered) return n.value < 20 ? String(n.value) : null;
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

/** `half a bucket of leaves in 2`: behind a load and a word for where it went, a pile. */
function putInto(tokens: readonly Tok[], i: number): boolean {
  const before = tokens[i - 1];
  const where = before?.senses.find((one) => one.cls === 'prep')?.val;
  if (before?.k !== 'w' || !where || !['into', 'onto', 'on', 'in', 'to'].includes(where)) return false;
  if (before.senses.some((one) => one.cls === 'prep' && one.val === 'at') || tokens[i + 1]?.k === 'n')
    return false;
  if (before.senses.some((one) => one.cls === 'down-to')) return false;
  for (let k = i - 2; k >= 0 && tokens[k]!.k !== 'p'; k--)
    if (sense(tokens[k], 'material') !== undefined || sense(tokens[k], 'container') !== undefined)
      return true;
  return false;
}
