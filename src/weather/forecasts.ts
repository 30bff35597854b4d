import type { Assistant, Book, Complain } from '#assistant';
import { expectations, meanCelsius } from './expect.ts';
import { Daily, fetchForecast } from './fetch.ts';
import { addressFor, type WeatherService } from './service.ts';

/** A forecast is made anew a few times a day; asking more often gives the same one. */
const FRESH_MS = 3 * 3_600_000;
/** After a day and a half without a new one the old one says too little. @source common practice, no source */
const USED_MS = 36 * 3_600_000;

/** The last good forecast of a site, with the address it came from: a site that moves has none yet. */
type Kept = { fetchedAt: string; address: string; daily: unknown };

export type Forecasts = {
  /** Fetches what has become old, and puts into the book what is to be expected; one look at a time. */
  look(now: string): Promise<void>;
  /** Gives up what is under way; to be waited for before the book is closed. */
  ended(): Promise<void>;
};

/** Keeps the forecast of each site that has a place. `warn` hears once where a service answers what is no forecast. */
export function forecasts(parts: {
  service: WeatherService;
  book: Pick<Book, 'sites' | 'memo' | 'setMemo'>;
  assistant: Pick<Assistant, 'placeOf' | 'foresee'>;
  warn: (line: string) => void;
  complain: Complain;
  timeoutMs?: number;
}): Forecasts {
  const { service, book, assistant, warn, complain, timeoutMs } = parts;
  const stop = new AbortController();
  let running: Promise<void> = Promise.resolve();
  let warned = false;

  async function lookAt(site: number, now: string): Promise<void> {
    const place = assistant.placeOf(site, now);
    if (!place) return;
    const address = addressFor(service, place);
    const age = ({ fetchedAt }: Kept) => Math.abs(Date.parse(now) - Date.parse(fetchedAt));
    const before = book.memo<Kept>(site, 'forecast');
    let kept = before?.address === address ? before : null;
    if (!kept || age(kept) >= FRESH_MS) {
      const answer = await fetchForecast(address, service.fields, {
        stop: stop.signal,
        ...(timeoutMs ? { timeoutMs } : {}),
      });
      if (stop.signal.aborted) return;
      if (answer.ok) {
        kept = { fetchedAt: now, address, daily: answer.daily };
        book.setMemo(site, 'forecast', kept);
      } else if (answer.why === 'not-understood' && !warned) {
        warned = true;
        warn('WEATHER_URL answers with something that is no forecast; see WEATHER_FIELDS in the README');
      }
    }
    const daily = kept && age(kept) < USED_MS ? Daily.safeParse(kept.daily).data : null;
    assistant.foresee(
      site,
      (today) =>
        daily
          ? { expected: expectations(daily, today), meanCelsius: meanCelsius(daily, today) }
          : { expected: [], meanCelsius: null },
      now,
    );
  }

  return {
    look(now) {
      running = running
        .then(async () => {
          for (const { id } of book.sites()) {
            if (!stop.signal.aborted) await lookAt(id, now);
          }
        })
        // A fault of ours in one look does not keep the next from being taken.
        .catch((error) => complain('the forecast could not be dealt with', error));
      return running;
    },
    ended() {
      stop.abort();
      return running;
    },
  };
}
