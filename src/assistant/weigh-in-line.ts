import type { Estimate } from '#core';
import type { BookRecordOf, Entry } from '#records';
import type { Draft } from './draft.ts';
import { weighed } from './nets.ts';
import { type Arg, type Say, say } from './say.ts';

/** What was weighed, in few words: `cart 5`, `bucket of coffee grounds`, `chips`. */
function whatSay(record: BookRecordOf<'weigh-in'>, holds: string | null): Say {
  if (!record.container) return say('what-material', { material: { material: record.material } });
  const container: Arg = { container: record.container, count: record.count, label: record.label ?? null };
  return record.material === (holds ?? 'food-scraps')
    ? say('what-container', { container })
    : say('what-container-of', { container, material: { material: record.material } });
}

/** A load as it was understood: net, waiting for its empty weight, or estimated from its volume. */
export function weighIn(
  record: BookRecordOf<'weigh-in'>,
  { entry }: { entry: Arg },
  draft: Draft,
  line: Entry,
): Say[] {
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
  if (record.place) parts.push(say('part-into', { place: { place: record.place } }));
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
}

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
