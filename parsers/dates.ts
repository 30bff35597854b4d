import type { DoubtCode } from '#records';
import type { ReadContext } from './context.ts';
import type { Plain } from './text.ts';

/** A date said in the message, by positions in its plain text. */
export type DateSpanLike = {
  start: number;
  end: number;
  when?: string | undefined;
  problem?: DoubtCode | undefined;
  choices: string[];
};

/** The dates said in a message, in order. */
export function datesIn(message: Plain, context: ReadContext): DateSpanLike[] {
  const out: DateSpanLike[] = [];
  const day = (n: number) =>
    new Date(Date.parse(context.nowLocal.slice(0, 10)) + n * 86_400_000).toISOString().slice(0, 10);
  for (const match of message.text.matchAll(/\b(yesterday|ystd|today|tomorrow|tmrw|hier|demain)\b/g))
    out.push({
      start: match.index,
      end: match.index + match[0].length,
      when: day(/^(y|h)/.test(match[0]) ? -1 : /^today/.test(match[0]) ? 0 : 1),
      choices: [],
    });
  return out;
}
