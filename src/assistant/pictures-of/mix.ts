import type { MixData } from '#charts';
import type { Added, Correction, Mix, MixLimits } from '#core';
import { type Arg, type Line, type Say, say } from '../say.ts';
import { type Drawing, text, ticksOf, type Unsaid } from './drawing.ts';

/** C:N beyond this is shown at the edge: chips alone are at several hundred, and nobody mixes by that. */
const CN_MOST = 70;

/** Where a mix lies in the window of water and C:N, how sure that is, and where the advice takes it. */
export function mixDrawing(correction: Correction, limits: MixLimits, today: string): Drawing | null {
  const { before, after, add } = correction;
  if (!before.moisturePct || !before.cn) return null;
  const moves = add.length > 0 && after.moisturePct !== null && after.cn !== null;
  const mixes = moves ? [before, after] : [before];
  const water = mixes.flatMap(({ moisturePct }) => [moisturePct!.low, moisturePct!.high]);
  const ratios = mixes.flatMap(({ cn }) => [cn!.low, Math.min(cn!.high, CN_MOST)]);
  const { low, high, never } = limits.moisturePct;
  const x = ticksOf(Math.min(...water, low - 8), Math.max(...water, never + 3), 6, (value) =>
    say('chart-number', { value: { number: value } }),
  );
  const y = ticksOf(
    Math.min(...ratios, limits.cnLow - 8),
    Math.max(...ratios, (limits.cnHigh ?? limits.cnLow) + 8),
    6,
    (value) => say('chart-number', { value: { number: value } }),
  );
  const title = titleOf(correction);
  const sub = subOf(before, today);
  const window = say('chart-mix-window', {
    range: { pctRange: [low, high] },
    cn: { number: limits.cnLow, digits: 0 },
    top: { number: limits.cnHigh ?? 0, digits: 0 },
    hasTop: { text: limits.cnHigh === null ? 'no' : 'yes' },
  });
  const data: Unsaid<MixData> = {
    title: text(title),
    sub: text(sub),
    x: { ...x, name: text(say('chart-axis-moisture')) },
    y: { ...y, name: text(say('chart-axis-cn')) },
    window: {
      name: text(window),
      xLow: low,
      xHigh: high,
      yLow: limits.cnLow,
      yHigh: Math.min(limits.cnHigh ?? y.max, y.max),
    },
    never: { x: never, text: text(say('chart-mix-never', { pct: { pct: never } })) },
    now: placeOf(before, say('chart-mix-now')),
    after: moves ? placeOf(after, say('chart-mix-after', addedArgs(add))) : null,
  };
  const alt: Line[] = [title, sub, window];
  if (moves) {
    alt.push(
      say('chart-mix-alt-after', {
        pct: { pct: after.moisturePct!.typical },
        cn: { number: after.cn!.typical, digits: 0 },
      }),
    );
  }
  return { draw: 'mix', alt, data };
}

function placeOf({ moisturePct, cn }: Mix, name: Say): Unsaid<MixData>['now'] {
  return {
    name: text(name),
    x: moisturePct!.typical,
    xLow: moisturePct!.low,
    xHigh: moisturePct!.high,
    y: Math.min(cn!.typical, CN_MOST),
    yLow: Math.min(cn!.low, CN_MOST),
    yHigh: Math.min(cn!.high, CN_MOST),
  };
}

function titleOf({ code, add, before, ifWet }: Correction): Say {
  const pct = { pct: { pct: before.moisturePct!.typical } };
  if (code === 'add' && add.length > 0) return say('chart-mix-title-add', { ...pct, ...addedArgs(add) });
  if (code === 'enough') return say('chart-mix-title-enough', pct);
  if (code === 'squeeze-first') {
    return ifWet && ifWet.length > 0
      ? say('chart-mix-title-squeeze-wet', { ...pct, ...addedArgs(ifWet) })
      : say('chart-mix-title-squeeze', pct);
  }
  if (code === 'infeasible') return say('chart-mix-title-infeasible', pct);
  return say('chart-mix-title', pct);
}

const subOf = (before: Mix, today: string): Say[] => [
  say('chart-day', { day: { day: today } }),
  say('chart-mix-sub', {
    range: { pctRange: [before.moisturePct!.low, before.moisturePct!.high] },
    cn: { number: before.cn!.typical, digits: 0 },
    cnRange: { pctRange: [before.cn!.low, before.cn!.high] },
  }),
  say(before.test?.moisturePct ? 'mix-basis-test' : 'mix-basis-typical'),
];

function addedArgs(add: readonly Added[]): Record<string, Arg> {
  const [first] = add;
  return {
    what: { container: first?.container ?? 'barrow', count: first?.count ?? 0 },
    one: { text: first?.count === 1 ? '1 ' : '' },
    material: { material: first?.material ?? 'wood-chips' },
    more: { count: add.length - 1 },
  };
}
