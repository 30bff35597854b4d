import {
  type Drawing,
  heatDrawing,
  type Manner,
  pictureOf,
  type Words,
  weekDrawing,
  yearDrawing,
} from '#assistant';
import { draw } from '#charts';
import { daysBetween } from '#core';
import type { ReportFacts } from './facts.ts';
import type { Drawn } from './layout.ts';

/** More piles than this stand in the tables alone: a report is read, not scrolled. */
const MOST_PILES = 8;

type Asked = { facts: ReportFacts; manner: Manner; words: Words };

/** What came in: by day for a week, against the target since the year began for anything longer. */
export function intakePictures({ facts, manner, words }: Asked): Promise<Drawn[]> {
  const { atEnd, from, to } = facts;
  const week = daysBetween(from, to) < 7;
  return drawn(
    [() => (week ? weekDrawing(atEnd, from, `${to}T23:59:59.999Z`, manner) : yearDrawing(atEnd, manner))],
    { manner, words },
  );
}

/** How each pile heated, the latest piles first; one that is gone as it was when it went. */
export function heatPictures({ facts, manner, words }: Asked): Promise<Drawn[]> {
  const end = `${facts.to}T23:59:59.999Z`;
  const latest = [...facts.piles].reverse().slice(0, MOST_PILES);
  return drawn(
    latest.map(({ batch }) => () => {
      const gone = batch.goneAt && batch.goneAt.at < end ? batch.goneAt : { at: end, localDate: facts.to };
      const asked = { picture: facts.atEnd, manner: { ...manner, today: gone.localDate }, now: gone.at };
      return heatDrawing(asked, batch.name, batch);
    }),
    { manner, words },
  );
}

async function drawn(
  drawings: readonly (() => Drawing | null)[],
  how: { manner: Manner; words: Words },
): Promise<Drawn[]> {
  const all: Drawn[] = [];
  for (const drawing of drawings) {
    const fail = (what: string, error: unknown): never => {
      throw new Error(what, { cause: error });
    };
    const picture = pictureOf(drawing, { ...how, complain: fail });
    if (picture) all.push({ png: await draw(picture), alt: picture.alt });
  }
  return all;
}
