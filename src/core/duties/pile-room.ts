import { placeOfPile } from '../picture/empty.ts';
import { coded, type DutyContext, type DutyRule, type Found } from './duty.ts';
import { liveBatches } from './live.ts';

/** A pile this full takes no week's loads any more. @source common practice, no source */
const NEARLY_FULL = 0.85;

/** No pile takes fresh material any more, or the only one that does is nearly full. */
export const pileRoom: DutyRule = {
  name: 'pile-room',
  find: (context) => {
    const { picture, localDate } = context;
    const live = liveBatches(context);
    const used = new Set(live.map(({ name }) => name));
    // A site whose places were never named may start a pile where it likes.
    if (live.length === 0 || picture.base.piles.length === 0) return [];
    if (picture.base.piles.some((pile) => !used.has(placeOfPile(pile)))) return [];
    const open = live.filter(({ state }) => state === 'open');
    const full = open.filter(({ level }) => (level?.fraction ?? 0) >= NEARLY_FULL);
    if (full.length < open.length) return [];
    const ready = live.find(({ state }) => state === 'ready');
    const fullest = full[0];
    return [
      {
        key: 'room:piles',
        kind: 'make-room',
        place: ready?.name ?? null,
        args: {},
        why: fullest
          ? coded('nearly-full', {
              place: { place: fullest.name },
              pct: { pct: fullest.level!.fraction! * 100 },
            })
          : coded('none-open', { count: { count: live.length } }),
        by: localDate,
        risk: 2,
        log: logOf(context, ready?.name ?? null),
        canWait: true,
        doneHoldsDays: 2,
      },
    ];
  },
};

/** What would make room: the pile that is ready is emptied, or another one is started. */
function logOf({ picture }: DutyContext, ready: string | null): Found['log'] {
  if (ready) return { code: 'emptied', args: { place: { place: ready } } };
  const letters = Object.keys(picture.places).flatMap((place) => /^pile ([A-Y])$/.exec(place)?.[1] ?? []);
  const last = letters.sort().at(-1);
  if (!last) return null;
  const next = String.fromCharCode(last.charCodeAt(0) + 1);
  return { code: 'started', args: { place: { place: `pile ${next}` } } };
}
