import type { Language } from '#records';
import { languageOfVotes, lexiconOf, votesOf } from './lexicon.ts';
import { GLUED, LINE, SYMBOL, type Token, WORD } from './tokens.ts';

/**
 * Gives every token the words of its sentence's language: the one of most words in the sentence, then in the
 * whole text, then the first given. Words of the other languages stay known behind it.
 */
export function setLexicons(tokens: Token[], languages: readonly Language[]): void {
  if (languages.length < 2) {
    const only = lexiconOf(languages.length ? languages : ['en']);
    for (const token of tokens) token.lexicon = only;
    return;
  }
  const overall = byVote(tokens, 0, tokens.length, languages);
  for (let from = 0; from < tokens.length; ) {
    let to = from + 1;
    while (to < tokens.length && !startsSentence(tokens, to)) to++;
    const lexicon = lexiconOf(
      from === 0 && to === tokens.length ? overall : byVote(tokens, from, to, overall),
    );
    for (; from < to; from++) tokens[from]!.lexicon = lexicon;
  }
}

function byVote(
  tokens: Token[],
  from: number,
  to: number,
  languages: readonly Language[],
): readonly Language[] {
  const counts = { en: 0, fr: 0, es: 0 };
  for (let i = from; i < to; i++) {
    const token = tokens[i]!;
    if (token.kind === WORD) for (const language of languageOfVotes(votesOf(token.key))) counts[language]++;
  }
  let best = languages[0]!;
  for (const language of languages) if (counts[language] > counts[best]) best = language;
  return best === languages[0] ? languages : [best, ...languages.filter((language) => language !== best)];
}

function startsSentence(tokens: Token[], at: number): boolean {
  const token = tokens[at]!;
  if (token.gap === LINE) return true;
  const before = tokens[at - 1]!;
  return token.gap !== GLUED && before.kind === SYMBOL && '.!?;'.includes(before.key);
}
