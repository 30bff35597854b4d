import { ashBalance, batchAt, MASS_LOSS, massBalance, YIELD_LITRES_PER_KG, yearSoFar } from '#core';
import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import { type Line, say } from '../say.ts';
import { sourceLine } from '../why/pile.ts';

/** `mass balance`, `yield`, `ash balance of C`: what went in, what came out, and what nobody can explain. */
export function balance(draft: Draft, request: Request): void {
  const place = request.place ?? null;
  if (place === null) draft.lines.push(...yieldLines(draft), ...massLines(draft));
  const ash = ashLines(draft, place);
  if (ash.length > 0) draft.lines.push(...ash);
  else if (place !== null || request.what === 'ash') draft.lines.push(say('balance-no-ash'));
  draft.why.push(
    say('why-balance', { low: { pct: MASS_LOSS.low * 100 }, high: { pct: MASS_LOSS.high * 100 } }),
  );
  draft.why.push(sourceLine(MASS_SOURCE), sourceLine(YIELD_SOURCE));
  if (ash.length > 0) draft.why.push(say('why-ash'), sourceLine(ASH_SOURCE));
}

const MASS_SOURCE =
  'extension statement, 40 to 50 % (from memory); Karnchanawong & Suriyanon, 2011, 59 to 62 % (seen)';
const YIELD_SOURCE = 'Washington State Department of Ecology, facility totals 2015 to 2020 (seen)';
const ASH_SOURCE = 'Haug, 1993; Paredes et al. (from memory)';

const ofYear = (draft: Draft) => {
  const { from } = yearSoFar(draft.picture(), draft.today);
  return { from, sums: massBalance(draft.picture(), from, draft.today) };
};

/** Compost out for what came in, beside what large sites have; nothing where no compost has left. */
export function yieldLines(draft: Draft): Line[] {
  const { kgPerKg, litresPerKg } = ofYear(draft).sums.yield;
  if (kgPerKg === null && litresPerKg === null) return [];
  // A hundred of the site's own unit of mass: a share of one is no figure that anybody pictures.
  const kg = draft.manner.units.mass === 'lb' ? 45.359237 : 100;
  const per = { kg, digits: 0 };
  const parts: Line = [];
  if (litresPerKg !== null) {
    parts.push(
      say('yield-litres', {
        litres: { litres: litresPerKg * kg },
        per,
        low: { litres: YIELD_LITRES_PER_KG.low * kg },
        high: { litres: YIELD_LITRES_PER_KG.high * kg },
      }),
    );
  }
  if (kgPerKg !== null) parts.push(say('yield-kg', { kg: { kg: kgPerKg * kg, digits: 0 }, per }));
  return [parts];
}

/** In, out, what goes off by the published range, and what is left: in the piles, or not explained. */
export function massLines(draft: Draft): Line[] {
  const { from, sums } = ofYear(draft);
  const { inKg, outKg, expectedLossKg, unexplainedKg, compostLitres } = sums;
  const all = inKg.feed + inKg.bulking + inKg.water;
  if (all === 0) return [say('balance-nothing', { from: { date: from } })];
  const mass = (kg: number) => ({ kg, digits: 0 });
  const lines: Line[] = [
    say('balance-in', {
      from: { date: from },
      kg: mass(all),
      feed: mass(inKg.feed),
      chips: mass(inKg.bulking),
      water: mass(inKg.water),
      estimated: mass(inKg.estimated),
      hasEstimated: { text: inKg.estimated > 0 ? 'yes' : 'no' },
      hasWater: { text: inKg.water > 0 ? 'yes' : 'no' },
    }),
    say('balance-out', {
      kg: mass(outKg.compost),
      residue: mass(outKg.residue + outKg.other),
      litres: { litres: compostLitres },
      hasLitres: { text: compostLitres > 0 ? 'yes' : 'no' },
    }),
    say('balance-lost', { low: mass(expectedLossKg.low), high: mass(expectedLossKg.high) }),
  ];
  lines.push(
    unexplainedKg.high < 0
      ? say('balance-too-much', { kg: mass(-unexplainedKg.high) })
      : say('balance-left', { low: mass(Math.max(0, unexplainedKg.low)), high: mass(unexplainedKg.high) }),
  );
  return lines;
}

/** How much each pile with a result of ash has lost. */
export function ashLines(draft: Draft, place: string | null = null): Line[] {
  const picture = draft.picture();
  const places = place === null ? Object.keys(picture.places) : [place];
  return places.flatMap((where): Line[] => {
    const batch = batchAt(picture, where);
    const ash = batch ? ashBalance(picture, batch, draft.today) : null;
    if (!ash) return [];
    const args = {
      place: { place: where },
      entry: { entry: ash.entry },
      first: { pct: ash.firstPct.typical },
      last: { pct: ash.lastPct },
      from: { term: ash.from, of: 'ash-from' },
    };
    if (ash.suspect) return [say('balance-ash-suspect', args)];
    return [
      say('balance-ash', {
        ...args,
        dry: { pct: ash.dryLossPct.typical },
        hasRange: { text: ash.from === 'intake' ? 'yes' : 'no' },
        range: { pctRange: [Math.max(0, ash.dryLossPct.low), ash.dryLossPct.high] },
        organic: { pct: ash.organicLossPct.typical },
      }),
    ];
  });
}
