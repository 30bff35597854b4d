import type { ParsedMessage } from '#records';
import { COMPASS, compassPoint } from './compass.ts';
import type { Plain } from './text.ts';

const WIND = /\b(?:winds?|windy|breeze|gusts?|vents?|rafales?|viento|vientos|rafagas?)\b/;

/** Those whose windows a smell must not reach. */
const PEOPLE =
  '(?:wards?|classrooms?|patients?|beds|windows|neighbou?rs|houses|buildings?|people|chambres|services|salles(?: de classe)?|classes|fenetres|voisins|maisons|batiments?|gens|salas|habitaciones|aulas|pacientes|ventanas|vecinos|casas|edificios?|gente)';

const FROM = new RegExp(
  `(?:\\b(?:out of|from|de|du|del)(?: the| le| la| el| l')? ?(?<behind>${COMPASS})\\b)|\\b(?<before>${COMPASS})(?= (?:winds?|vents?|viento)\\b)|(?<=\\b(?:vents?|vientos?) (?:fort |forts |fuerte |fuertes )?)(?<after>${COMPASS})\\b`,
);
const TO = new RegExp(
  `\\b(?:blow(?:ing|s)? )?(?:towards?|onto|at|to|over|vers|en direction (?:de|des|du)|sur|hacia|contra|a)(?: the| le| la| les| el| los| las| l')? ?${PEOPLE}\\b`,
);

/**
 * Wind with where it blows from (`wind from the south-west tomorrow`) or onto whom (`wind towards the wards today`):
 * the rest is read as it is, and the wind in it keeps its direction. Null where the rest holds no wind.
 * @source none needed: words
 */
export function readWind(message: Plain, read: (text: string) => ParsedMessage): ParsedMessage | null {
  const text = message.text.trim();
  if (text.length > 120 || text.includes('\n') || !WIND.test(text)) return null;
  const from = FROM.exec(text);
  const to = TO.exec(text);
  const cut = to ?? from;
  if (!cut) return null;
  const windFrom = from
    ? compassPoint(from.groups?.behind ?? from.groups?.before ?? from.groups?.after ?? '')
    : null;
  let rest = text;
  for (const each of [to, from]) if (each) rest = rest.replace(each[0], ' ');
  const parsed = read(rest.replaceAll(/\s+/g, ' ').trim());
  const winds = parsed.records.filter((record) => record.kind === 'weather' && record.expects === 'wind');
  if (winds.length !== 1 || parsed.records.some(({ kind }) => kind !== 'weather')) return null;
  if (parsed.requests.length + parsed.doubts.length + parsed.danger.length + parsed.unread.length > 0)
    return null;
  const said = message.original.trim();
  return {
    ...parsed,
    records: parsed.records.map((record) => ({
      ...record,
      ...(record === winds[0] && windFrom ? { windFrom } : {}),
      ...(record === winds[0] && to ? { windTo: 'wards' } : {}),
      said,
    })) as ParsedMessage['records'],
  };
}
