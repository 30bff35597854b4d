import { answeredTwins, openDoubts } from './doubts-here.ts';
import type { Draft } from './draft.ts';
import type { Choice, ChoiceAct, OutgoingRow } from './ports.ts';
import { asksForMore, repliedEntries } from './questions.ts';
import { type Say, say } from './say.ts';

/** After this long a typed answer no longer belongs to the buttons that were offered. */
const ANSWERABLE_MIN = 12 * 60;

type Offered = { at: string; outgoing: number };

const keyOf = (draft: Draft): string => `offered:${draft.incoming.chat}`;

/** Remembers the questions with buttons that this reply asks; a later reply without any forgets them. */
export function rememberOffered(draft: Draft, rows: readonly OutgoingRow[]): void {
  const asks = rows.find((row) => row.about === null && row.choices.some(isAnswer));
  const offered: Offered | null = asks ? { at: draft.now, outgoing: asks.id } : null;
  if (offered === null && draft.book.memo(draft.siteId, keyOf(draft)) === null) return;
  if (rows.length > 0) draft.book.setMemo(draft.siteId, keyOf(draft), offered);
}

/**
 * What was typed as it stands on a button: the same as pressing it. Of the last reply here, or of a doubt that is
 * still open, also when others have written since and whoever wrote it reads another language.
 */
export function typedChoice(draft: Draft, labelsOf: (say: Say) => string[]): ChoiceAct | null {
  const said = fold(draft.incoming.text);
  if (said === '' || said.length > 60) return null;
  // A message that answers another one speaks of that alone.
  if (draft.incoming.replyTo) return ofOpenDoubt(draft, said, labelsOf, 'replied');
  const own = ofOpenDoubt(draft, said, labelsOf, 'own');
  // What was asked of the sender, or of anybody since, comes before a doubt of somebody else's that the number fits.
  if (own || (isNumber(said) && asksForMore(draft))) return own;
  return (
    ofLastReply(draft, said) ??
    ofOpenDoubt(draft, said, labelsOf, 'all') ??
    ofAnsweredTwin(draft, said, labelsOf)
  );
}

function ofLastReply(draft: Draft, said: string): ChoiceAct | null {
  const offered = draft.book.memo<Offered>(draft.siteId, keyOf(draft));
  if (!offered || Date.parse(draft.now) - Date.parse(offered.at) > ANSWERABLE_MIN * 60_000) return null;
  const row = draft.book.outgoing(offered.outgoing);
  const answers = row?.choices.filter(isAnswer) ?? [];
  const named = answers.find(({ label }) => fold(label) === said);
  return (named ?? nodded(answers, said) ?? inOtherWords(answers, said))?.act ?? null;
}

const IT = /^(?:it is|its|it's|it|elle|il|ca|eso|ella|esta|la|el) /;

/** `ça goutte` for `elle goutte`, `drips` for `it drips`: of the answers to what was asked last. */
function inOtherWords(answers: readonly Choice[], said: string): Choice | undefined {
  const bare = (text: string): string => text.replace(IT, '').replace(/^s'/, '');
  return answers.find(({ act, label }) => {
    if (act.do !== 'ask' || act.request.request !== 'diagnose') return false;
    return bare(fold(label)) === bare(said) || (DOES[String(act.request.to)]?.test(bare(said)) ?? false);
  });
}

/** What a squeezed handful does, in the forms that people say it. */
const DOES: Readonly<Record<string, RegExp>> = {
  drips: /^(?:drip\w*|dripped|goutt\w*|degoul\w*|gote\w*|escurr\w*)$/,
  crumbles: /^(?:crumbl\w*|falls apart|emiett\w*|desmoron\w*|se desmorona\w*)$/,
  right: /^(?:holds?(?: together)?|held|tient|aguanta\w*)$/,
};

const NODS: Readonly<Record<string, RegExp>> = {
  yes: /^(?:yes|yep|yeah|y|oui|ouais|si|sip)$/,
  no: /^(?:no|nope|n|non)$/,
};

/** `does food show?` can be answered with a plain yes or no: it was asked last, and speaks of nothing else. */
function nodded(answers: readonly Choice[], said: string): Choice | undefined {
  return answers.find(({ act }) => {
    const to = act.do === 'ask' && act.request.request === 'diagnose' ? String(act.request.to) : '';
    return NODS[to]?.test(said) ?? false;
  });
}

/** The sender's own doubts come first, then the newest; of a word that fits two buttons of one doubt nobody can tell. */
function ofOpenDoubt(
  draft: Draft,
  said: string,
  labelsOf: (say: Say) => string[],
  whose: 'own' | 'replied' | 'all',
): ChoiceAct | null {
  const replied = whose === 'replied' ? repliedEntries(draft) : [];
  for (const { line, words, own } of openDoubts(draft)) {
    if (whose === 'replied' ? !replied.includes(line.entry) : !isNumber(said) && !words) continue;
    if (whose === 'own' && !own) continue;
    const fitting = line.doubt.choices.flatMap(({ say: name }, choice) => {
      if (EVERYDAY.includes(name)) return [];
      const labels = labelsOf(say('button-choice', { choice: { term: name, of: 'choice' } })).map(fold);
      const fits = isNumber(said) ? labels.includes(said) : labels.some((label) => isSaidOf(label, said));
      return fits ? [choice] : [];
    });
    if (fitting.length === 1) return { do: 'answer', entry: line.entry, choice: fitting[0]! };
  }
  return null;
}

/** The second of two people to say `same` hears that it was answered, rather than logging their last cart once more. */
function ofAnsweredTwin(draft: Draft, said: string, labelsOf: (say: Say) => string[]): ChoiceAct | null {
  for (const { number, held } of answeredTwins(draft)) {
    const choice = held!.choices.findIndex(({ say: name }) =>
      labelsOf(say('button-choice', { choice: { term: name, of: 'choice' } }))
        .map(fold)
        .some((label) => isSaidOf(label, said)),
    );
    if (choice >= 0) return { do: 'answer', entry: number, choice };
  }
  return null;
}

/** Words that mean something of their own in a chat: they answer only what was asked last. */
const EVERYDAY: readonly string[] = ['yes', 'no', 'today'];

const isNumber = (said: string): boolean => /^-?\d+(?:\.\d+)?$/.test(said);

const ARTICLE = /^(?:the|a|an|le|la|les|un|une|el|los|las) /;

/** The whole label, or all of it but the thing that it ends with: `same` for `same cart`, `autre` for `un autre bac`. */
function isSaidOf(label: string, said: string): boolean {
  const [whole, told] = [label.replace(ARTICLE, ''), said.replace(ARTICLE, '')];
  return whole === told || whole.replace(/ \S+$/, '') === told;
}

/** Undo and drop have their own words; who may decide is no word to be typed by the way. */
const isAnswer = ({ act }: Choice): boolean =>
  act.do === 'answer' || (act.do === 'ask' && act.request.request !== 'role');

const fold = (text: string): string =>
  text
    .normalize('NFD')
    .replaceAll(/[̀-ͯ]/g, '')
    .toLowerCase()
    .replaceAll(/(?<=\d),(?=\d)/g, '.')
    .replaceAll(/[\s!¿?]+|\.(?!\d)/g, ' ')
    .trim();
