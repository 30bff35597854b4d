// What was found becomes the message's records, requests and doubts, each with its date and what was typed.
import type { Assumption, Doubt, FieldRecord, ParsedMessage, Request, Taken } from '#records';
import type { ReadContext } from './context.ts';
import type { Item } from './reading.ts';
import type { SaidDate } from './said-dates.ts';
import { type Plain, sliceOf, spanOf } from './text.ts';

/** A reading with nothing in it. */
export const emptyMessage = (): ParsedMessage => ({
  records: [],
  requests: [],
  doubts: [],
  unread: [],
  assumed: [],
  typed: [],
  danger: [],
  explain: [],
});

/** One thing found: where it stands (`a` to `b`, by positions in the plain text), by which rule, on what date. */
export type Found = {
  item: Item;
  a: number;
  b: number;
  at: number;
  rule: string;
  date: SaidDate | null;
  carried: boolean;
};

/** Puts what was found into the reading, in its order. */
export function emit(
  out: ParsedMessage,
  found: readonly Found[],
  message: Plain,
  context: ReadContext,
): void {
  for (const one of found) {
    const said = sliceOf(message, one.a, one.b);
    const [start, end] = spanOf(message, one.a, one.b);
    const assumed: Assumption[] = 'record' in one.item ? [...(one.item.assumed ?? [])] : [];
    if (one.carried) assumed.push('date-carried');
    const taken: Taken = { start, end, rule: one.rule, said, ...(assumed.length > 0 && { assumed }) };
    const last = out.explain.at(-1);
    if (!last || last.start !== start || last.rule !== one.rule) out.explain.push(taken);
    if ('request' in one.item) {
      pushRequest(out, { ...one.item.request, said });
      continue;
    }
    const dated = <T extends { kind: string }>(record: T): T => ({
      ...record,
      ...whenOf(record, one.date),
      said,
    });
    if ('doubt' in one.item) {
      out.doubts.push(mapDoubt(one.item.doubt, dated, said));
      continue;
    }
    const record = dated(one.item.record);
    if (one.date?.problem && record.kind !== 'weather') {
      out.doubts.push({
        record: bareWhen(record),
        why: one.date.problem,
        choices: [
          ...one.date.choices.map((choice) => ({
            say: choice,
            record: { ...record, when: choice } as FieldRecord,
          })),
          { say: 'drop', record: null },
        ],
        said,
      });
      continue;
    }
    const old = tooOld(record, context);
    if (old) {
      out.doubts.push({ ...old, said });
      continue;
    }
    out.records.push(record);
    out.assumed.push(assumed);
    out.typed.push(one.item.typed ?? null);
  }
}

/** Older by more than two weeks than the last readings of its place: more likely another month was meant. */
function tooOld(record: FieldRecord, context: ReadContext): Doubt | null {
  const place = (record as { place?: string }).place ?? (record as { pile?: string }).pile;
  const last = place ? context.book?.lastReadings[place]?.[0]?.localDate.slice(0, 10) : undefined;
  const when = record.when ?? undefined;
  if (!last || !when) return null;
  const day = (text: string) => Date.parse(text.slice(0, 10)) / 86_400_000;
  if (day(last) - day(when) <= 14) return null;
  const months = [context.nowLocal.slice(0, 7), last.slice(0, 7)];
  const likely = [...new Set(months)]
    .map((month) => `${month}${when.slice(7)}`)
    .filter(
      (one) =>
        !Number.isNaN(day(one)) &&
        one.slice(0, 10) <= context.nowLocal.slice(0, 10) &&
        day(last) - day(one) <= 14,
    );
  return {
    record,
    why: 'date-too-old',
    choices: [...likely, when]
      .map((say) => ({ say, record: { ...record, when: say } as FieldRecord }))
      .concat([{ say: 'drop', record: null as never }]),
  };
}

function whenOf(record: { kind: string }, date: SaidDate | null): { when?: string } {
  const when =
    record.kind === 'weather' && !('observed' in record && record.observed) ? date?.ahead : date?.when;
  return when && !('when' in record) ? { when } : {};
}

const bareWhen = (record: FieldRecord) => {
  const { when: _when, ...rest } = record;
  return rest;
};

function pushRequest(out: ParsedMessage, request: Request): void {
  const same = out.requests.some(
    (have) =>
      have.request === request.request &&
      have.place === request.place &&
      have.name === request.name &&
      request.request !== 'answer',
  );
  if (!same) out.requests.push(request);
}

function mapDoubt(doubt: Doubt, dated: <T extends { kind: string }>(record: T) => T, said: string): Doubt {
  return {
    ...doubt,
    said,
    record: dated(doubt.record),
    ...(doubt.records && { records: doubt.records.map(dated) }),
    choices: doubt.choices.map((choice) => ({
      ...choice,
      record: choice.record && dated(choice.record),
      ...(choice.records && { records: choice.records.map(dated) }),
    })),
  };
}
