import type { PictureSpec } from '#assistant';
import { addDays } from '#core';
import { startScenario } from '../scenarios/harness.ts';

/** A made-up site with everything a picture can show. */
const SITE = {
  name: 'Plum Hollow',
  timeZone: 'America/St_Johns',
  languages: ['en', 'fr', 'es'],
  containers: {
    cart: { tareKg: 15.5, litres: 240, holds: 'food-scraps' },
    barrow: { tareKg: 14, litres: 85 },
    bucket: { tareKg: 1, litres: 20 },
  },
  drums: [{ name: 'drum', litres: 5000 }],
  piles: ['A', 'B'],
  sources: ['east kitchen', 'west kitchen', 'cafe'],
  targetTonnesPerYear: 14,
  ruleSet: 'vessel-3d',
  yearStarts: 1,
  summary: { day: 'monday', at: '07:30' },
};

export const FIRST = '2026-08-31';
export const TODAY = '2026-11-24';

type Reading = { date: string; hot: number; low: number; air: number };

/** Pile B: hot for five days, turned on 4 October, then cooling by a quarter in a week. */
export const READINGS: Reading[] = [
  ...[44, 58, 61, 62, 60].map((hot, i) => ({ date: addDays('2026-09-20', i), hot, low: hot - 4, air: 14 })),
  ...[52, 46, 43, 36, 34, 29, 27].map((hot, i) => ({
    date: addDays('2026-10-13', i * 7),
    hot: hot - 2,
    low: hot - 8,
    air: 12 - i * 0.5,
  })),
];

/** What is weighed on a working day, carts with their empty weight of 15.5 kg in it. */
export const loadsOn = (day: number) => ({
  east: 55 + ((day * 7) % 11),
  west: 50 + ((day * 5) % 9),
  cafe: day % 2 === 0 ? 45 + (day % 4) : null,
  chips: 24 + (day % 5),
});

/** Twelve weeks of carts, chips and readings, then four questions; the pictures as the outbox keeps them. */
export function autumn() {
  const crew = startScenario(SITE, `${FIRST}T08:00`);
  const say = (date: string, clock: string, text: string) =>
    crew.take({ at: `${date}T${clock}`, from: 'Ana', text });
  const readings = new Map(READINGS.map((reading) => [reading.date, reading]));
  say(FIRST, '08:00', 'started pile B');
  for (let date = FIRST, day = 0; date <= TODAY; date = addDays(date, 1), day += 1) {
    if (day % 7 < 5) {
      const { east, west, cafe, chips } = loadsOn(day);
      say(date, '09:00', `cart ${east} kg east kitchen`);
      say(date, '09:05', `cart ${west} kg west kitchen`);
      if (cafe !== null) say(date, '09:08', `cart ${cafe} kg cafe`);
      if (day % 7 === 2) say(date, '09:09', '2 carts east kitchen');
      say(date, '09:10', `chips ${chips} kg`);
    }
    if (date === '2026-09-20') say(date, '07:00', 'pile B full');
    if (date === '2026-10-04') say(date, '10:00', 'turned B');
    if (date === '2026-10-05') say(date, '11:00', 'covered B with chips');
    const reading = readings.get(date);
    if (reading) {
      say(date, '12:00', `ambient ${reading.air} C`);
      say(date, '12:01', `B ${reading.hot} ${reading.low} C`);
    }
  }
  const pictureOf = (text: string, language: 'en' | 'fr' | 'es' = 'en'): PictureSpec | null => {
    crew.take({ at: `${TODAY}T17:00`, from: 'Zoé', text, language, id: text });
    const message = crew.book.message(crew.site, 'replay', 'group', text, null);
    const [row] = message ? crew.book.outgoingOfMessage(message.id) : [];
    return row?.picture ?? null;
  };
  return { crew, pictureOf };
}
