import { readFileSync } from 'node:fs';
import type { Words } from '#assistant';
import { LANGUAGES } from '#records';
import { CARDS, whatToDo } from '../../src/assistant/emergency.ts';
import { MANNER } from './cautions-table.ts';

type Heard = { text: string; dangers: { what: string }[] };

const heardIn = (language: string): Heard[] =>
  JSON.parse(readFileSync(new URL(`../../fixtures/danger/${language}.json`, import.meta.url), 'utf8')).cases;

/** For each language the first phrase of the danger cases that is heard as this alone. */
const examples = (what: string): string =>
  LANGUAGES.map((language) => {
    const heard = heardIn(language).find(({ dangers }) => dangers.length === 1 && dangers[0]!.what === what);
    return heard ? `“${heard.text}”` : '';
  })
    .filter(Boolean)
    .join(', ');

const SAFETY = {
  emergencyNumber: 'NUMBER',
  address: 'ADDRESS',
  isolator: 'ISOLATOR',
  firstAider: 'FIRST-AIDER',
};

/** The table of DEVELOPERS.md: what is heard as which emergency, and what the reply opens with. */
export function emergenciesTable(words: Words): string {
  const rows = CARDS.map(({ whats, source }) => {
    const heard = whats.map((what) => `\`${what}\` ${examples(what)}`.trim()).join('<br>');
    const texts = LANGUAGES.map((language) =>
      words
        .text(whatToDo([{ what: whats[0]! }], SAFETY), { ...MANNER, language })
        .replaceAll(/[\u00a0\u202f]/g, ' ')
        .replaceAll('\n', ' / '),
    );
    return `| ${heard} | ${texts.join('<br>')} | ${source} |`;
  });
  return ['| heard as | the reply opens with | source |', '| --- | --- | --- |', ...rows].join('\n');
}
