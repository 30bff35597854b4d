import type { SiteRow } from '#assistant';
import { localTimeOf } from '#core';
import type { LineIn } from '#papers';
import { contextForSite, type ReadContext, readMessage } from '#parsers';

export type TypedLog = { lines: LineIn[]; doubts: { row: number; say: string }[] };

/** As many letters as are read at once: a message is never longer, and neither is what is read here. */
const MOST_LETTERS = 4000;
/** A line that any day can have: it shows whether the line before it carries a date on. */
const PROBE = 'ambient 12';

/**
 * A log as it was typed, read as messages are, each date carrying on until the next. What is no entry is said with the
 * number of its line; none is lost because the text is long.
 */
export function readTyped(text: string, { site }: SiteRow, now: string): TypedLog {
  const context = contextForSite(site, localTimeOf(now, site.timeZone));
  const log: TypedLog = { lines: [], doubts: [] };
  let date: string | null = null;
  let block: { row: number; text: string }[] = [];
  const close = () => {
    if (block.length > 0) readBlock(block, date, context, log);
    block = [];
  };
  for (const [i, line] of text.split(/\r?\n/).entries()) {
    if (line.trim() === '') continue;
    const carried = carriedBy(line, context);
    const letters = block.reduce((sum, each) => sum + each.text.length + 1, 0);
    if (carried || letters + line.length > MOST_LETTERS) close();
    if (carried) date = carried;
    block.push({ row: i + 1, text: line });
  }
  close();
  return log;
}

/** The date that a line sets for those after it. */
function carriedBy(line: string, context: ReadContext): string | null {
  const { records } = readMessage(`${line}\n${PROBE}`, context);
  return records.find(({ said }) => said === PROBE)?.when?.slice(0, 10) ?? null;
}

function readBlock(
  block: readonly { row: number; text: string }[],
  date: string | null,
  context: ReadContext,
  { lines, doubts }: TypedLog,
): void {
  const parsed = readMessage(block.map(({ text }) => text).join('\n'), context);
  const rowOf = (said: string | null | undefined): number => {
    const first = (said ?? '').split('\n')[0]!.trim();
    return (block.find(({ text }) => first !== '' && text.includes(first)) ?? block[0]!).row;
  };
  for (const { said, why } of parsed.doubts)
    doubts.push({ row: rowOf(said), say: `"${said ?? ''}": ${why}, left out` });
  for (const words of parsed.unread)
    doubts.push({ row: rowOf(words), say: `"${words}": not understood, left out` });
  for (const request of parsed.requests)
    doubts.push({ row: block[0]!.row, say: `asks for "${request.request}": no entry, left out` });
  for (const [i, record] of parsed.records.entries()) {
    const row = rowOf(record.said);
    const localDate = record.when?.slice(0, 10) ?? date;
    if (!localDate) doubts.push({ row, say: `"${record.said ?? record.kind}": no date, left out` });
    else
      lines.push({
        row,
        localDate,
        record: { ...record, when: record.when ?? localDate },
        typed: parsed.typed[i] ?? null,
      });
  }
  doubts.sort((a, b) => a.row - b.row);
}
