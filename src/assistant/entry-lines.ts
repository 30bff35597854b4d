import { BULK_DENSITY, type Estimate, settingAt } from '#core';
import type { BookKind, BookRecordOf, Entry } from '#records';
import type { Draft } from './draft.ts';
import { heatSettingSay } from './heat-settings-says.ts';
import { weighed } from './nets.ts';
import { oftenSay } from './often.ts';
import { type Arg, type Say, say } from './say.ts';
import { watchedSay } from './watched-says.ts';

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

/** What was weighed, in few words: `cart 5`, `bucket of coffee grounds`, `chips`. */
function whatSay(record: BookRecordOf<'weigh-in'>, holds: string | null): Say {
  if (!record.container) return say('what-material', { material: { material: record.material } });
  const container: Arg = { container: record.container, count: record.count, label: record.label ?? null };
  return record.material === (holds ?? 'food-scraps')
    ? say('what-container', { container })
    : say('what-container-of', { container, material: { material: record.material } });
}

const weighIn: LineOf<'weigh-in'> = (record, { entry }, draft, line) => {
  const holds = record.container ? (draft.picture().base.containers[record.container]?.holds ?? null) : null;
  const what: Arg = { say: whatSay(record, holds) };
  const weight = weighed(draft.picture(), line);
  const parts: Say[] = [];
  if (weight.is === 'pending')
    parts.push(say('line-pending', { entry, what, gross: { kg: weight.grossKg } }));
  else if (weight.is === 'net' && weight.tareKg !== null) {
    parts.push(
      say('line-net', {
        entry,
        what,
        net: { kg: weight.netKg },
        gross: { kg: weight.grossKg, bare: true },
        tare: { kg: weight.tareKg, bare: true },
      }),
    );
  } else if (weight.is === 'net') parts.push(say('line-weighed', { entry, what, kg: { kg: weight.netKg } }));
  else {
    const { estimate } = weight;
    if (estimate) draft.why.push(...whyEstimate(estimate, record));
    const said = estimate
      ? say(estimate.factorUnit === 'kg/L' ? 'part-estimate-litre' : 'part-estimate', {
          // What is only estimated has no hundredths.
          kg: { kg: estimate.estimatedKg, digits: estimate.estimatedKg < 10 ? 1 : 0 },
          factor: { number: estimate.factor },
          each: { kg: estimate.factor },
          low: { kg: estimate.low, digits: 0, bare: true },
          high: { kg: estimate.high, digits: 0, bare: true },
          hasRange: { text: estimate.high > estimate.low ? 'yes' : 'no' },
        })
      : say('part-no-estimate');
    parts.push(
      record.litres != null
        ? say('line-volume', { entry, what, litres: { litres: record.litres } })
        : say('line-counted', { entry, what }),
      said,
    );
  }
  if (record.fill != null) parts.push(say('part-fill', { pct: { pct: record.fill * 100 } }));
  if (record.source) parts.push(say('part-from', { source: { source: record.source } }));
  if (record.place) parts.push(say('part-into', { place: place(record.place) }));
  if (record.flags?.includes('contaminated')) parts.push(say('part-contaminated'));
  for (const each of record.ofWhich ?? []) {
    parts.push(
      say('part-of-which', {
        what: { material: each.what },
        kg: each.kg != null ? { kg: each.kg } : { text: '' },
      }),
    );
  }
  return parts;
};

/** Where the factor of an estimate comes from, with its spread. */
function whyEstimate(estimate: Estimate, record: BookRecordOf<'weigh-in'>): Say[] {
  const each = estimate.factor > 0 && estimate.estimatedKg > 0 ? estimate.factor / estimate.estimatedKg : 0;
  const material = { material: record.material };
  if (estimate.factorUnit === 'kg/L') {
    const args = {
      material,
      factor: { number: estimate.factor },
      low: { number: estimate.low * each },
      high: { number: estimate.high * each },
    };
    return [
      say('why-factor-litre', args),
      say('why-source', { text: { cite: estimate.source ?? 'the site' } }),
    ];
  }
  return [
    say(estimate.from === 'learned' ? 'why-factor-learned' : 'why-factor-set', {
      container: { container: record.container ?? '', count: 1 },
      each: { kg: estimate.factor, digits: 1 },
      low: { kg: estimate.low * each, digits: 1, bare: true },
      high: { kg: estimate.high * each, digits: 1, bare: true },
    }),
  ];
}

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

/** What a setting says, by name: `cart tare 15.5 kg`, `target 60 t a year`. */
function settingSay(record: BookRecordOf<'setting'>, draft: Draft): Say {
  const [name = '', of = ''] = record.name.split(/:(.*)/s);
  const { value } = record;
  const container: Arg = { container: of, count: 1 };
  if (name === 'tare') return say('setting-tare', { container, kg: { kg: value as number } });
  if (name === 'litres') return say('setting-litres', { container, litres: { litres: value as number } });
  if (name === 'factor') return say('setting-factor', { container, kg: { kg: value as number } });
  if (name === 'moisture')
    return say('setting-moisture', { material: { material: of }, pct: { pct: value as number } });
  if (name === 'hold') {
    const lifted = value === false || value === null || value === 'off';
    return say(lifted ? 'setting-hold-off' : 'setting-hold', {
      place: place(of),
      why: { text: plain(value) },
    });
  }
  if (name === 'target') return say('setting-target', { tonnes: { tonnes: value as number } });
  if (name === 'place') {
    const { latitude, longitude } = value as { latitude: number; longitude: number };
    const where = `${latitude.toFixed(4)}, ${longitude.toFixed(4)}`;
    return say('setting-other', { name: term('setting-name', 'place'), value: { text: where } });
  }
  if (name === 'summary') {
    const { day, at } = value as { day: string; at: string };
    return say('setting-week', { day: term('weekday-full', day), clock: { clock: at } });
  }
  if (name === 'morning') {
    return say('setting-morning', { clock: { clock: (value as { at: string }).at } });
  }
  if (name === 'recipe') {
    if (value === null) return say('setting-no-recipe');
    const { chips, food } = value as { chips: number; food: number };
    return say('setting-ratio', { chips: { number: chips }, food: { number: food } });
  }
  const heat = heatSettingSay(record.name, value);
  if (heat) return heat;
  const watched = watchedSay(record.name, value);
  if (watched) return watched;
  const drum = drumSettingSay(record.name, of, value);
  if (drum) return drum;
  if (name === 'accepts' && value !== null && typeof value === 'object' && !Array.isArray(value)) {
    const { goesIn, staysOut } = newlyAccepted(value as Record<string, boolean>, draft);
    return say('setting-accepts', {
      in: listed(goesIn),
      out: listed(staysOut),
      has: { text: goesIn.length === 0 ? 'out' : staysOut.length === 0 ? 'in' : 'both' },
    });
  }
  if (name === 'people-nearby') return say('setting-nearby', { nearby: { text: String(value) } });
  if (name === 'cautions') return say('setting-cautions', { on: { text: String(value) } });
  if (name === 'keep-messages') return say('setting-keep', { days: { count: value as number } });
  return say('setting-other', { name: term('setting-name', record.name), value: { text: plain(value) } });
}

/** One material by its name; several as they stand in the list. */
const listed = (items: readonly string[]): Arg =>
  items.length === 1 ? { material: items[0]! } : { text: items.join(', ').replaceAll('-', ' ') };

/** Of a list that grew, the lines that are new or were changed; all of it where nothing was. */
function newlyAccepted(
  list: Record<string, boolean>,
  draft: Draft,
): { goesIn: string[]; staysOut: string[] } {
  const before = settingAt(draft.before, 'accepts', draft.today) ?? draft.before.base.accepts;
  const had = (item: string): boolean | undefined =>
    Array.isArray(before)
      ? before.includes(item) || (before.includes(`no ${item}`) ? false : undefined)
      : (before as Record<string, boolean> | null | undefined)?.[item];
  const lines = Object.entries(list);
  const changed = lines.filter(([item, may]) => had(item) !== may);
  const shown = changed.length > 0 ? changed : lines.slice(-1);
  const named = (may: boolean) => shown.filter((line) => line[1] === may).map(([item]) => item);
  return { goesIn: named(true), staysOut: named(false) };
}

const MATERIAL_FIGURES = ['carbon', 'nitrogen', 'ash', 'density', 'cn'];

/** Settings of the drum, of the mix, and figures of a material. */
function drumSettingSay(full: string, of: string, value: unknown): Say | null {
  const [name = ''] = full.split(':');
  const { low, high } = (value ?? {}) as { low?: number; high?: number };
  const range = { low: { number: low ?? 0 }, high: { number: high ?? 0 } };
  if (name === 'mix-water') return say('setting-mix-water', range);
  if (name === 'mix-cn') return say('setting-mix-cn', range);
  if (name === 'drum-interval') return say('setting-drum-interval', range);
  if (name === 'drum-way') return say('setting-drum-way', { way: { term: plain(value), of: 'drum-way' } });
  if (name === 'drum-call') return say('setting-drum-call', { whom: { text: plain(value) } });
  if (MATERIAL_FIGURES.includes(name) && of) {
    const fresh = (value as { fresh?: number } | null)?.fresh;
    return say(`setting-${name}`, {
      material: { material: of },
      number: { number: fresh ?? Number(value) },
      hasFresh: { text: fresh === undefined ? 'no' : 'yes' },
    });
  }
  const number = { number: { number: name === 'drum-full' ? Number(value) * 100 : Number(value) } };
  return PLAIN_DRUM.includes(name) ? say(`setting-${name}`, number) : null;
}

const PLAIN_DRUM = ['drum-days', 'drum-full', 'drum-call-hours', 'fan-off-hours', 'drum-least-hours'];

function plain(value: unknown): string {
  if (value === null || value === undefined) return '';
  if (Array.isArray(value)) return value.map(plain).join(', ');
  if (typeof value === 'object' && ('low' in value || 'fromCm' in value)) {
    const { low, high, fromCm, toCm } = value as Record<string, number>;
    return `${low ?? fromCm}–${high ?? toCm}`;
  }
  if (typeof value === 'object') return Object.values(value).map(plain).join(' ');
  return String(value);
}

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
