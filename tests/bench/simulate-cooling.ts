import type { AmbientReading } from '#core';
import { batchOf, momentAt, readingAt, turnAt } from '../core/heat/build.ts';

/** A seeded generator (mulberry32), so that a simulated season can be run again. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let z = Math.imul(state ^ (state >>> 15), state | 1);
    z ^= z + Math.imul(z ^ (z >>> 7), z | 61);
    return ((z ^ (z >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/**
 * One pile after a turn: it warms for a day or two, then its rise decays. Ambient wanders from day to day and over
 * the day, the probe is off by up to a few degrees, readings come every one to five days, some are never made and
 * the newest are not yet logged when the forecast is asked for. `truthDays` is when the rise without noise is down
 * to 5 °C, in days from the moment of asking.
 */
export function simulateCooling(seed: number) {
  const random = seeded(seed);
  const between = (low: number, high: number) => low + (high - low) * random();
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const start = between(18, 45);
  const halfLife = between(4, 25);
  const warming = between(0.3, 1);
  const noise = between(0.5, 3);
  const every = between(1, 5);
  const missing = between(0, 0.4);
  const riseAt = (t: number) => start * 2 ** (-t / halfLife) * (1 - Math.exp(-t / warming));
  const end = halfLife * Math.log2(start / 5);
  const asked = end * between(0.35, 0.95);

  const mean = between(9, 18);
  const trend = between(-0.05, 0.05);
  const dailyMeans: number[] = [];
  let wander = 0;
  for (let day = -14; day <= Math.ceil(end) + 14; day++) {
    wander = 0.7 * wander + 1.2 * normal();
    dailyMeans.push(Math.max(4, mean + trend * day + wander));
  }
  const outside = (t: number) => dailyMeans[Math.floor(t) + 14]!;
  // A pile feels the weather of the last week, not of the hour.
  const felt = (t: number) => [0, 1, 2, 3, 4, 5, 6].reduce((sum, back) => sum + outside(t - back), 0) / 7;

  const ambient: AmbientReading[] = [];
  for (let day = -7; day < asked; day++) {
    if (random() < missing) continue;
    ambient.push({ ...momentAt(day, 100_000 + day), celsius: outside(day) + 0.8 * normal() });
  }
  const late = between(0, 3);
  const readings = [];
  for (let t = between(1.1, 1.1 + every); t < asked - late; t += every * between(0.7, 1.3)) {
    if (random() < missing) continue;
    readings.push(readingAt(t, Math.round((felt(t) + riseAt(t) + noise * normal()) * 2) / 2));
  }
  return {
    batch: batchOf({ readings, turns: [turnAt(0, 1)] }),
    ambient,
    now: momentAt(asked, 999_999),
    truthDays: end - asked,
    noise,
  };
}
