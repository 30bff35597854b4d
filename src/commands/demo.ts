import type { Assistant } from '#assistant';
import { addDays, instantOf, localDateOf, weekdayOf } from '#core';
import type { OpenedBook } from '#logbook';

export const DEMO_NAME = 'Larkspur Hospital grounds (made up)';
const DAYS = 150;
const CREW = ['Ana', 'Bram', 'Chidi'];

/** A small generator of its own, so that the made-up months are the same on every machine. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1_664_525 + 1_013_904_223) % 4_294_967_296;
    return state / 4_294_967_296;
  };
}

type Line = { at: string; from: string; text: string };

/**
 * Some months in the life of a made-up site, as its crew would have texted them. Invented numbers, for the demo
 * alone: three carts a working day, chips, a drum emptied each week, piles read daily while hot and weekly after.
 */
function demoConversation(now: string, zone: string): Line[] {
  const random = seeded(20);
  const between = (low: number, high: number): number => Math.round((low + random() * (high - low)) * 2) / 2;
  const today = localDateOf(now, zone);
  const lines: Line[] = [];
  const piles = ['A', 'B', 'C'];
  /** When each pile was closed, by the day's index. */
  const closed: Record<string, number> = {};
  let filling = 0;
  for (let day = 0; day < DAYS; day++) {
    const date = addDays(today, day - DAYS);
    const weekday = weekdayOf(date);
    if (weekday === 'saturday' || weekday === 'sunday') continue;
    const who = CREW[day % CREW.length]!;
    const write = (clock: string, text: string): void => {
      lines.push({ at: instantOf(`${date}T${clock}`, zone), from: who, text });
    };
    write('08:40', `main kitchen cart ${between(48, 72)} kg`);
    write('09:10', `ward kitchen cart ${between(38, 60)}${random() < 0.06 ? ' contaminated' : ''}`);
    if (random() < 0.7) write('09:30', `staff canteen cart ${between(35, 66)}`);
    write('09:45', `chips ${between(22, 34)} kg`);
    const ambient = Math.round(14 - day / 14 + random() * 4);
    if (weekday === 'friday') {
      const pile = piles[filling % piles.length]!;
      write('14:00', `emptied the drum onto ${pile}`);
      write('14:20', `covered ${pile} with mature compost`);
      if (day % 35 > 27) {
        write('14:30', `pile ${pile} is full`);
        closed[pile] = day;
        filling += 1;
        const next = piles[filling % piles.length]!;
        if (closed[next] !== undefined && day - closed[next] > 40) {
          write('14:40', `emptied pile ${next}, 9 barrows of finished compost to the rose garden`);
          delete closed[next];
          write('14:50', `started pile ${next}`);
        }
      }
    }
    for (const [pile, since] of Object.entries(closed)) {
      const age = day - since;
      const due = age <= 9 || weekday === 'wednesday';
      const rise = age < 3 ? 30 + age * 8 : 50 * Math.exp(-(age - 3) / 22);
      if (due) {
        const middle = Math.round(ambient + rise + random() * 3);
        write('10:15', `${pile} ${middle - 2} ${middle + 4} ${middle + 1}, ambient ${ambient}`);
      }
      if (age > 9 && age % 15 === 0) write('11:00', `turned ${pile}`);
    }
    if (weekday === 'thursday') write('15:30', 'swept, gate locked');
    if (random() < 0.03) write('13:00', 'strong smell by the drum');
    if (random() < 0.04) write('13:30', 'smell gone');
  }
  return lines;
}

/** Fills an empty book with the made-up months, in one transaction. */
export function fillDemo(book: OpenedBook, assistant: Assistant, site: number, now: string): void {
  const zone = book.siteById(site).site.timeZone;
  book.write(() => {
    demoConversation(now, zone).forEach((line, i) => {
      const received = assistant.receive({
        site,
        channel: 'demo',
        chat: 'demo',
        thread: null,
        message: `demo-${i}`,
        edit: null,
        sentAt: line.at,
        receivedAt: line.at,
        sender: { id: line.from, name: line.from, coordinator: false, language: null },
        private: false,
        text: line.text,
        pictures: [],
        replyTo: null,
        choose: null,
      });
      book.markSent(
        received.outgoing.map((row) => ({ id: row.id, sentAs: null })),
        line.at,
      );
    });
  });
}
