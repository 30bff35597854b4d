import { readQuantities } from '#parsers/quantities';
import { LANGUAGES, type Language } from '#records';

const BOM = '\ufeff';

/** One line of text as the JSON array of its quantities; `start` and `end` count from the line's own begin. */
function quantitiesLine(line: string, language?: Language): string {
  const text = line.replace(/\r$/, '');
  // Two characters for two, so that the places stay those of the line as typed.
  const broken = text.replaceAll('\\n', '\n ');
  const quantities = readQuantities(broken, language ? [language] : LANGUAGES, {
    ranges: 'split',
    general: true,
  });
  return JSON.stringify(
    quantities.map(({ start, end, value, unit }) => ({
      text: text.slice(start, end),
      start,
      end,
      value,
      unit,
    })),
  );
}

/** `read --quantities`: writes one JSON array for each line that comes in, a blank one included; `write` ends it. */
export async function readQuantitiesCommand(
  lines: AsyncIterable<string>,
  write: (line: string) => void | Promise<void>,
  language?: Language,
): Promise<void> {
  let first = true;
  for await (const line of lines) {
    await write(quantitiesLine(first && line.startsWith(BOM) ? line.slice(1) : line, language));
    first = false;
  }
}
