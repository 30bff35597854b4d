import type { ParsedMessage } from '#records';

/** A message with each piece that a reader took underlined and named, so that a wrong reading is found in a minute. */
export function explained(text: string, reading: ParsedMessage): string {
  const flat = text.replaceAll('\n', '⏎');
  const pieces = [...reading.explain].sort((a, b) => a.start - b.start);
  const lines = [flat];
  for (const piece of pieces) {
    const width = Math.max(1, piece.end - piece.start);
    const assumed = piece.assumed?.length ? ` (assumed: ${piece.assumed.join(', ')})` : '';
    lines.push(`${' '.repeat(piece.start)}${'~'.repeat(width)} ${piece.rule}${assumed}`);
  }
  for (const record of reading.records) lines.push(`  record  ${JSON.stringify(record)}`);
  for (const request of reading.requests) lines.push(`  request ${JSON.stringify(request)}`);
  for (const doubt of reading.doubts) {
    lines.push(
      `  doubt   ${doubt.why} ${JSON.stringify(doubt.record)} choices: ${doubt.choices.map((c) => c.say).join(' | ')}`,
    );
  }
  for (const piece of reading.unread) lines.push(`  unread  ${piece}`);
  return `${lines.join('\n')}\n`;
}
