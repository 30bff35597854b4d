import type { Words } from '#assistant';
import { CAUTIONS, type Trigger } from '#core';
import { LANGUAGES } from '#records';

export const MANNER = {
  units: { mass: 'kg', temperature: 'C', volume: 'L', length: 'cm' },
  timeZone: 'Europe/London',
  dayOrder: 'dmy',
  today: '2026-11-24',
} as const;

const CONDITIONS: [keyof Trigger, (value: never) => string][] = [
  ['machine', () => 'at drum, exit, lift or no place'],
  ['eachFromKg', (kg: number) => `each ${kg} kg or more`],
  ['hotFromCelsius', (celsius: number) => `${celsius} °C or more, and not kept away from`],
  ['keptAway', () => 'smoke open there or too hot to open'],
  ['windy', () => 'wind seen or expected'],
  ['drum', () => 'site has a drum'],
  [
    'peopleAtRisk',
    () => 'people at risk nearby (`peopleNearby`, `set people nearby …`), unless the site says none',
  ],
];

function said(trigger: Trigger): string {
  const lists = (['topic', 'chore', 'material', 'container', 'feel', 'expects'] as const)
    .map((field) => trigger[field]?.join(', '))
    .filter(Boolean);
  const conditions = CONDITIONS.filter(([field]) => trigger[field] !== undefined).map(([field, words]) =>
    words(trigger[field] as never),
  );
  return [`\`${trigger.kind}\``, ...lists.map((list) => `(${list})`), ...conditions].join(' ');
}

/** The table of DEVELOPERS.md: what calls for which caution, what it says, and its source. */
export function cautionsTable(words: Words): string {
  const rows = CAUTIONS.map(({ id, every, on, source }) => {
    const texts = LANGUAGES.map((language) =>
      words.text([{ id: `caution-${id}` }], { ...MANNER, language }).replaceAll('\u00a0', ' '),
    );
    return `| ${id} | ${every} | ${on.map(said).join('; ')} | ${texts.join('<br>')} | ${source} |`;
  });
  return ['| caution | when | on | text | source |', '| --- | --- | --- | --- | --- |', ...rows].join('\n');
}
