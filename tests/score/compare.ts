/** A reading as far as a case can state it: fields that a case leaves out are not compared. */
export interface ExpectedReading {
  readonly records?: readonly Fields[];
  readonly requests?: readonly Fields[];
  readonly doubts?: readonly { readonly kind: string; readonly about?: string }[];
}

/** What came out of the reader, as plain data. */
export interface GotReading {
  readonly records: readonly Fields[];
  readonly requests: readonly Fields[];
  readonly doubts: readonly { readonly record: Fields }[];
}

type Fields = Readonly<Record<string, unknown>>;

type FaultCode =
  | 'record-missing'
  | 'record-extra'
  | 'record-wrong'
  | 'request-missing'
  | 'request-extra'
  | 'request-wrong'
  | 'doubt-missing'
  | 'doubt-extra';

interface Fault {
  readonly code: FaultCode;
  /** The kind of record or doubt, or the name of the request. */
  readonly kind: string;
  readonly field?: string;
  readonly got?: unknown;
  readonly expected?: unknown;
}

/** How a whole message came out, the worst of its faults first. */
export interface Verdict {
  readonly faults: readonly Fault[];
  readonly exact: boolean;
  /** Something meant was not found. */
  readonly missed: boolean;
  /** A doubt came where a record was meant. */
  readonly askedNeedlessly: boolean;
  /** A record with a wrong value, or a record where a doubt or nothing was meant. */
  readonly silentWrong: boolean;
  /** The message was mere talk and a record came of it. */
  readonly recordOutOfTalk: boolean;
  /** The message was mere talk and a request or a doubt came of it. */
  readonly answerToTalk: boolean;
}

/** Conversion rounds: a case states kg to two decimals, celsius to one, cm and litres to two. */
const toleranceOf: Readonly<Record<string, number>> = {
  kg: 0.006,
  tareKg: 0.006,
  celsius: 0.06,
  upTo: 0.06,
  depthCm: 0.02,
  litres: 0.02,
  fraction: 0.006,
};
const EXACT_ENOUGH = 1e-6;

/** Fields in the writer's own words: case, outer spaces and a closing full stop do not matter. */
const ownWords = new Set(['reason', 'to', 'note', 'text', 'value', 'what', 'material', 'source']);

const isNothing = (value: unknown): boolean => value === null || value === undefined;

function sameText(field: string, got: string, expected: string): boolean {
  if (!ownWords.has(field)) return got === expected;
  const plain = (text: string) => text.trim().replace(/[.!]$/u, '').toLowerCase();
  return plain(got) === plain(expected);
}

function sameValue(field: string, got: unknown, expected: unknown): boolean {
  if (isNothing(expected)) return isNothing(got) || (Array.isArray(got) && got.length === 0) || got === false;
  if (Array.isArray(expected)) {
    return (
      Array.isArray(got) &&
      got.length === expected.length &&
      expected.every((each, index) => sameValue(field, got[index], each))
    );
  }
  if (typeof expected === 'number' && typeof got === 'number') {
    return Math.abs(got - expected) <= (toleranceOf[field] ?? EXACT_ENOUGH);
  }
  // A label, a point or a list number may be held as a number or as text: `5` and `"5"` name one cart.
  if (typeof expected !== 'object' && typeof got !== 'object' && !isNothing(got)) {
    return sameText(field, String(got), String(expected));
  }
  if (typeof expected === 'object' && typeof got === 'object' && got !== null) {
    return wrongFields(got as Fields, expected as Fields).length === 0;
  }
  return false;
}

function wrongFields(got: Fields, expected: Fields): string[] {
  return Object.keys(expected).filter((field) => !sameValue(field, got[field], expected[field]));
}

function groupBy<T>(items: readonly T[], keyOf: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    groups.set(key, [...(groups.get(key) ?? []), item]);
  }
  return groups;
}

function compareLists(
  name: 'record' | 'request',
  got: readonly Fields[],
  expected: readonly Fields[],
): Fault[] {
  const keyOf = (item: Fields) => String(item[name === 'record' ? 'kind' : 'request']);
  const gotByKind = groupBy(got, keyOf);
  const expectedByKind = groupBy(expected, keyOf);
  const faults: Fault[] = [];
  for (const kind of new Set([...expectedByKind.keys(), ...gotByKind.keys()])) {
    const wanted = expectedByKind.get(kind) ?? [];
    const found = gotByKind.get(kind) ?? [];
    for (let index = 0; index < Math.max(wanted.length, found.length); index += 1) {
      const want = wanted[index];
      const have = found[index];
      if (want === undefined) faults.push({ code: `${name}-extra`, kind, got: have });
      else if (have === undefined) faults.push({ code: `${name}-missing`, kind, expected: want });
      else {
        for (const field of wrongFields(have, want)) {
          faults.push({
            code: `${name}-wrong`,
            kind,
            field,
            got: have[field] ?? null,
            expected: want[field],
          });
        }
      }
    }
  }
  return faults;
}

function compareDoubts(got: GotReading['doubts'], expected: ExpectedReading['doubts'] = []): Fault[] {
  const gotByKind = groupBy(got, (doubt) => String(doubt.record.kind));
  const expectedByKind = groupBy(expected, (doubt) => doubt.kind);
  const faults: Fault[] = [];
  for (const kind of new Set([...expectedByKind.keys(), ...gotByKind.keys()])) {
    const wanted = expectedByKind.get(kind) ?? [];
    const found = gotByKind.get(kind) ?? [];
    for (const doubt of found.slice(wanted.length)) faults.push({ code: 'doubt-extra', kind, got: doubt });
    for (const doubt of wanted.slice(found.length)) {
      faults.push({ code: 'doubt-missing', kind, expected: doubt.about ?? null });
    }
  }
  return faults;
}

/**
 * Compares a reading with what a case states: records in order within their kind and field by field for the
 * fields stated, requests likewise by name, doubts by kind and number; anything more than stated is a fault.
 */
export function compareReading(got: GotReading, expected: ExpectedReading): Verdict {
  const faults = [
    ...compareLists('record', got.records, expected.records ?? []),
    ...compareLists('request', got.requests, expected.requests ?? []),
    ...compareDoubts(got.doubts, expected.doubts),
  ];
  const has = (...codes: FaultCode[]) => faults.some((fault) => codes.includes(fault.code));
  const isTalk = [expected.records, expected.requests, expected.doubts].every(
    (part) => (part ?? []).length === 0,
  );
  const recordOutOfTalk = isTalk && has('record-extra');
  const askedNeedlessly = !isTalk && has('doubt-extra');
  return {
    faults,
    exact: faults.length === 0,
    missed: has('record-missing', 'request-missing', 'doubt-missing') && !has('record-extra', 'doubt-extra'),
    askedNeedlessly,
    silentWrong: !recordOutOfTalk && has('record-wrong', 'record-extra'),
    recordOutOfTalk,
    answerToTalk: isTalk && has('request-extra', 'doubt-extra'),
  };
}
