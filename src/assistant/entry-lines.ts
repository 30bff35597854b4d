import { BULK_DENSITY } from '#core';
import type { BookKind, BookRecordOf, Entry } from '#records';
import type { Draft } from './draft.ts';
import { oftenSay } from './often.ts';
import { type Arg, type Say, say } from './say.ts';
import { settingSay } from './setting-says.ts';
import { weighIn } from './weigh-in-line.ts';

type LineOf<K extends BookKind> = (
  record: BookRecordOf<K>,
  number: { entry: Arg },
  draft: Draft,
  entry: Entry,
) => Say[];

/** How much, in the way it was said; empty where nothing was said. */
type Amount = {
  kg?: number | null;
  litres?: number | null;
  container?: string | null;
  count?: number | null;
};
function amountParts(amount: Amount): Say[] {
  if (amount.kg != null) return [say('part-kg', { kg: { kg: amount.kg } })];
  if (amount.litres != null) return [say('part-litres', { litres: { litres: amount.litres } })];
  if (amount.container && amount.count != null) {
    return [say('part-containers', { what: { container: amount.container, count: amount.count } })];
  }
  return [];
}

const place = (name: string | null | undefined): Arg => ({ place: name ?? '' });
const term = (of: string, name: string): Arg => ({ term: name, of });

const temperature: LineOf<'temperature'> = (record, { entry }) => {
  const values: Arg = {
    celsiusList: record.celsius,
    points: record.points ?? null,
    upTo: record.upTo ?? null,
  };
  const parts = [say('line-temperature', { entry, place: place(record.place), values })];
  const high = Math.max(...record.celsius, ...(record.upTo ?? []).map((value) => value ?? -Infinity));
  const low = Math.min(...record.celsius);
  if (record.celsius.length > 1) {
    parts.push(say('part-lowest-highest', { low: { celsius: low }, high: { celsius: high } }));
  }
  if (record.depthCm != null) parts.push(say('part-depth', { depth: { cm: record.depthCm } }));
  return parts;
};

const LINES: { [K in BookKind]: LineOf<K> } = {
  'weigh-in': weighIn,
  temperature,
  moisture: (r, { entry }) => [
    r.percent != null
      ? say('line-moisture-percent', { entry, place: place(r.place), pct: { pct: r.percent } })
      : say('line-moisture', { entry, place: place(r.place), feel: term('feel', r.feel ?? 'right') }),
  ],
  turning: (r, { entry }) => [
    r.movedTo
      ? say('line-turned-into', { entry, pile: place(r.pile), to: place(r.movedTo) })
      : say('line-turned', { entry, pile: place(r.pile) }),
  ],
  cover: (r, { entry }) => [
    say(r.on ? 'line-covered' : 'line-uncovered', {
      entry,
      pile: place(r.pile),
      layer: term('layer', r.layer),
    }),
  ],
  discharge: (r, { entry }) => [
    r.pile ? say('line-discharge-to', { entry, pile: place(r.pile) }) : say('line-discharge', { entry }),
    ...amountParts(r),
  ],
  transfer: (r, { entry }) => [
    say('line-transfer', { entry, from: place(r.from), to: place(r.to) }),
    ...amountParts(r),
  ],
  'drum-setting': (r, { entry }) => {
    const parts = [say('line-drum-setting', { entry, place: place(r.place ?? 'drum') })];
    if (r.mode) parts.push(say('part-mode', { mode: term('mode', r.mode) }));
    if (r.everyMin != null) parts.push(say('part-every', { min: { min: r.everyMin } }));
    if (r.fan) parts.push(say('part-fan', { fan: term('fan', r.fan) }));
    return parts;
  },
  level: (r, { entry }) => [
    say('line-level', { entry, what: r.place ? place(r.place) : { material: r.material ?? '' } }),
    ...(r.fraction != null ? [say('part-fill', { pct: { pct: r.fraction * 100 } })] : amountParts(r)),
  ],
  problem: (r, { entry }) => [
    say('line-problem', { entry, topic: term('topic', r.topic) }),
    ...(r.place ? [say('part-at', { place: place(r.place) })] : []),
    ...(r.strength ? [say('part-strength', { strength: term('strength', r.strength) })] : []),
  ],
  resolved: (r, { entry }, draft) => {
    const open = draft.before.problems.find((p) => p.entry === r.entry);
    const topic = r.topic ?? open?.topic ?? 'other';
    const where = r.place ?? open?.place ?? null;
    return [
      say('line-resolved', { entry, topic: term('topic', topic) }),
      ...(where ? [say('part-at', { place: place(where) })] : []),
    ];
  },
  chore: (r, { entry }) => [
    say('line-chore', { entry, chore: term('chore', r.chore) }),
    ...(r.place ? [say('part-at', { place: place(r.place) })] : []),
    ...(r.reads != null && r.against != null
      ? [say('part-reads', { reads: { number: r.reads }, against: { number: r.against } })]
      : []),
  ],
  weather: (r, { entry }, draft) => [
    r.observed
      ? say('line-weather-observed', { entry, weather: term('weather', r.expects) })
      : say('line-weather', {
          entry,
          weather: term('weather', r.expects),
          date: { date: r.when ?? draft.today },
        }),
    ...(r.mm != null ? [say('part-mm', { mm: { mm: r.mm } })] : []),
    ...(r.windFrom ? [say('part-wind-from', { point: term('compass', r.windFrom) })] : []),
    ...(r.windTo ? [say('part-wind-to', { near: term('near', 'wards') })] : []),
  ],
  removal: (r, { entry }) => [
    say('line-removal', { entry, material: { material: r.material } }),
    ...amountParts(r),
    ...(r.pile ? [say('part-off', { place: place(r.pile) })] : []),
    ...(r.to ? [say('part-to', { to: { text: r.to } })] : []),
    ...(r.source ? [say('part-from', { source: { source: r.source } })] : []),
  ],
  screening: (r, { entry }) => [
    say('line-screening', { entry, pile: place(r.pile) }),
    ...amountParts(r),
    ...(r.overs ? amountParts(r.overs).map((part) => say('part-overs', { amount: { say: part } })) : []),
  ],
  delivery: (r, { entry }) => [
    say('line-delivery', { entry, material: { material: r.material } }),
    ...amountParts(r),
  ],
  'rejected-load': (r, { entry }) => [
    say('line-rejected', {
      entry,
      what: r.container
        ? { container: r.container, count: r.count ?? 1 }
        : { say: say('what-load', { count: { count: r.count ?? 1 } }) },
    }),
    ...(r.kg != null ? [say('part-kg', { kg: { kg: r.kg } })] : []),
    ...(r.source ? [say('part-from', { source: { source: r.source } })] : []),
    ...(r.reason ? [say('part-words', { text: { text: r.reason } })] : []),
  ],
  pile: (r, { entry }) => [
    say(`line-pile-${r.event}`, {
      entry,
      pile: place(r.pile),
      with: place(r.with),
      to: place(r.to),
    }),
  ],
  sample: (r, { entry }) => [
    say('line-sample', { entry, pile: place(r.pile), count: { count: r.count ?? 1 } }),
  ],
  'lab-result': (r, { entry }) => {
    if (r.analyte === BULK_DENSITY && r.value != null)
      return [say('line-density', { entry, place: { place: r.place }, density: { kgPerM3: r.value } })];
    return [
      say('line-lab', {
        entry,
        place: place(r.place),
        analyte: term('analyte', r.analyte),
        value:
          r.qualifier === 'not-detected' || r.value == null
            ? term('qualifier', r.qualifier ?? 'found')
            : { text: `${r.qualifier ?? ''}${r.value ?? ''}${r.unit ? ` ${r.unit}` : ''}` },
      }),
    ];
  },
  hours: (r, { entry }) => [
    say('line-hours', { entry, people: { count: r.people ?? 1 }, hours: { number: r.hours } }),
  ],
  note: (r, { entry }) => [
    say('line-note', { entry, text: { text: r.text }, has: { text: r.text === '' ? 'no' : 'yes' } }),
  ],
  setting: (_r, { entry }, draft, line) => [
    say('line-setting', { entry, what: { say: settingSay(line.record as BookRecordOf<'setting'>, draft) } }),
  ],
  void: (r, { entry }) => [say('line-void', { entry, old: { entry: r.voids } })],
  duty: (r, { entry }) => [
    say(r.removed ? 'line-duty-removed' : 'line-duty', {
      entry,
      name: { text: r.name },
      every: { say: oftenSay(r) },
    }),
  ],
  'duty-note': (r, { entry }) => [
    say(`line-duty-${r.act}`, {
      entry,
      duty: { text: r.duty },
      until: r.until ? { date: r.until } : { text: '' },
    }),
  ],
};

/** The short line that the reply gives to an entry: number, what was understood, value, day if not today, what was assumed. */
export function entryLine(draft: Draft, entry: Entry): Say[] {
  const record = entry.record as BookRecordOf<BookKind>;
  const parts = (LINES[record.kind] as LineOf<BookKind>)(
    record as never,
    { entry: { entry: entry.number } },
    draft,
    entry,
  );
  if ('approximate' in record && record.approximate) parts.push(say('part-approximate'));
  if (entry.localDate !== draft.today) {
    const when = typeof record.when === 'string' ? record.when : entry.localDate;
    parts.push(say('part-date', { date: { date: when } }));
  } else if (typeof record.when === 'string' && record.when.length > 10) {
    parts.push(say('part-clock', { clock: { clock: record.when.slice(11) } }));
  }
  for (const code of entry.assumed) {
    if (SAID_ASSUMPTIONS.has(code)) {
      parts.push(say(`assumed-${code}`, { typed: { text: entry.typed ?? '' } }));
    }
  }
  return parts;
}

/** Assumptions that could surprise; those that the line shows anyway (a cart's gross, food scraps) are not repeated. */
const SAID_ASSUMPTIONS = new Set([
  'unit-other',
  'date-carried',
  'place-carried',
  'spelling',
  'pile-successor',
  'same-again',
]);
