import { z } from 'zod';
import type { Field, WeatherService } from './service.ts';

/** A service that takes longer is as good as none. */
const TIMEOUT_MS = 10_000;
/** A fortnight of days is a few kilobytes; what is much longer is no forecast. */
const MOST_BYTES = 256 * 1024;

// Services put null where they do not know. The ranges are wider than any weather on record: they catch wrong units.
const figures = (low: number, high: number) => z.array(z.number().min(low).max(high).nullable()).max(400);

/** A forecast by day: dates of the place, and beside each what is expected. All lists are of one length. */
export const Daily = z
  .object({
    time: z.array(z.iso.date()).min(1).max(400),
    precipitation_mm: figures(0, 2000).optional(),
    min_celsius: figures(-95, 60).optional(),
    max_celsius: figures(-95, 60).optional(),
    mean_celsius: figures(-95, 60).optional(),
    /** Degrees from north, clockwise, from which the wind blows. */
    wind_from_degrees: figures(0, 360).optional(),
    wind_kmh: figures(0, 500).optional(),
  })
  .refine(({ time, ...lists }) => {
    const given = Object.values(lists).filter((list) => list !== undefined);
    return given.length > 0 && given.every((list) => list.length === time.length);
  }, 'at least one list beside the dates, and all of one length');
export type Daily = z.infer<typeof Daily>;

type Answer = { ok: true; daily: Daily } | { ok: false; why: 'no-answer' | 'not-understood' };

/** Asks once. What goes wrong on the way is `no-answer`; an answer that is no forecast is `not-understood`. */
export async function fetchForecast(
  address: string,
  fields: WeatherService['fields'],
  { stop, timeoutMs = TIMEOUT_MS }: { stop?: AbortSignal; timeoutMs?: number } = {},
): Promise<Answer> {
  const late = AbortSignal.timeout(timeoutMs);
  let text: string | null;
  try {
    const response = await fetch(address, {
      headers: { accept: 'application/json' },
      // Where the place of the site is sent is the operator's choice, not the service's.
      redirect: 'error',
      signal: stop ? AbortSignal.any([stop, late]) : late,
    });
    if (!response.ok || !response.body) {
      await response.body?.cancel();
      return { ok: false, why: 'no-answer' };
    }
    text = await readAtMost(response.body, MOST_BYTES);
  } catch {
    // No network, no name, cut off, too slow: all of it is an ordinary day at a compost site.
    return { ok: false, why: 'no-answer' };
  }
  const daily = text === null ? null : understood(text, fields);
  return daily ? { ok: true, daily } : { ok: false, why: 'not-understood' };
}

async function readAtMost(body: ReadableStream<Uint8Array>, most: number): Promise<string | null> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  // Leaving the loop early gives the rest of the body up.
  for await (const chunk of body as unknown as AsyncIterable<Uint8Array>) {
    size += chunk.byteLength;
    if (size > most) return null;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks).toString('utf8');
}

function understood(text: string, fields: WeatherService['fields']): Daily | null {
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch {
    return null;
  }
  const theirs = z.record(z.string(), z.record(z.string(), z.unknown()).catch({})).safeParse(raw);
  const daily = theirs.success && Object.hasOwn(theirs.data, fields.daily) ? theirs.data[fields.daily]! : {};
  const ours = (Object.entries(fields) as [Field, string][])
    .filter(([name, called]) => name !== 'daily' && Object.hasOwn(daily, called))
    .map(([name, called]) => [name, daily[called]]);
  return Daily.safeParse(Object.fromEntries(ours)).data ?? null;
}
