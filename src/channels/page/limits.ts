/** So many at once, and so many a second after that. */
export type Rate = { burst: number; perSecond: number };

/** Above this many known keys those that are full again are let go: a stranger cannot fill the memory. */
const MANY = 5000;

/** A bucket of tokens for each key. `take` says how many seconds to wait, 0 where there was one left. */
export const makeBuckets = (rate: Rate, nowMs: () => number) => {
  const buckets = new Map<string, { left: number; at: number }>();

  const tidy = (now: number): void => {
    for (const [key, { left, at }] of buckets) {
      if (left + ((now - at) / 1000) * rate.perSecond >= rate.burst) buckets.delete(key);
    }
  };

  return {
    take: (key: string): number => {
      const now = nowMs();
      if (buckets.size > MANY) tidy(now);
      const { left, at } = buckets.get(key) ?? { left: rate.burst, at: now };
      const filled = Math.min(rate.burst, left + (Math.max(0, now - at) / 1000) * rate.perSecond);
      const isIn = filled >= 1;
      buckets.set(key, { left: isIn ? filled - 1 : filled, at: now });
      return isIn ? 0 : Math.ceil((1 - filled) / rate.perSecond);
    },
  };
};
