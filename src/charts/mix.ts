import type { MixData } from './data.ts';
import {
  axisOf,
  COOL,
  FAMILY,
  GOOD,
  HOT,
  heading,
  ICONS,
  INK,
  type Key,
  leftOf,
  legend,
  MARGIN,
  PAPER,
  SMALL,
  WIDTH,
} from './style.ts';

type Api = { coord(point: number[]): number[] };
type Place = MixData['now'];

const PLOT = 400;
const WINDOW = { color: '#cfe6d4', borderColor: GOOD, borderWidth: 3 };

/** The window of water and C:N, the mix in it or out of it with how sure that is, and where the advice takes it. */
export function mixChart(data: MixData): { option: object; height: number } {
  const { graphic, top } = heading(data.title, data.sub);
  const { window, now, after, never } = data;
  const series: object[] = [
    {
      type: 'custom',
      name: window.name,
      z: 1,
      color: GOOD,
      data: [[0, 0]],
      renderItem: (_params: unknown, api: Api) => {
        const [left, upper] = api.coord([window.xLow, window.yHigh]) as [number, number];
        const [right, lower] = api.coord([window.xHigh, window.yLow]) as [number, number];
        return {
          type: 'rect',
          shape: { x: left, y: upper, width: right - left, height: lower - upper },
          style: { fill: WINDOW.color, stroke: WINDOW.borderColor, lineWidth: WINDOW.borderWidth },
        };
      },
    },
    {
      type: 'line',
      data: [],
      markLine: {
        silent: true,
        symbol: 'none',
        lineStyle: { color: INK, width: 2, type: [12, 6] },
        label: {
          formatter: never.text,
          position: 'end',
          color: INK,
          fontSize: SMALL,
          fontFamily: FAMILY,
        },
        data: [{ xAxis: never.x }],
      },
    },
    ...spreadOf(now, HOT, 'circle', 'solid'),
  ];
  const names: Key[] = [
    { name: window.name, itemStyle: WINDOW },
    { name: now.name, icon: ICONS.dot },
  ];
  if (after) {
    names.push({
      name: after.name,
      icon: ICONS.turn,
      itemStyle: { color: PAPER, borderColor: COOL, borderWidth: 4 },
    });
    series.push(...spreadOf(after, COOL, 'diamond', [7, 5]), {
      type: 'line',
      data: [],
      markLine: {
        silent: true,
        symbol: ['none', 'arrow'],
        symbolSize: 20,
        lineStyle: { color: INK, width: 4, type: 'solid' },
        label: { show: false },
        data: [arrow(data, after)],
      },
      z: 3,
    });
  }
  const key = legend(names);
  const plotTop = top + 56;
  return {
    height: plotTop + PLOT + 84 + key.height + 12,
    option: {
      graphic,
      legend: key.legend,
      grid: { left: leftOf(data.y), right: MARGIN + 16, top: plotTop, height: PLOT },
      xAxis: axisOf(data.x, false),
      yAxis: axisOf(data.y, true),
      series: series.map((one) => ({ silent: true, ...one })),
    },
  };
}

/** The way of the arrow in the numbers of the axes, a little short at both ends so that the marks stay free. */
function arrow({ x, y, now }: MixData, after: Place): object[] {
  const across = ((after.x - now.x) / (x.max - x.min)) * (WIDTH - leftOf(y) - MARGIN);
  const up = ((after.y - now.y) / (y.max - y.min)) * PLOT;
  const gap = Math.min(0.4, 20 / Math.max(1, Math.hypot(across, up)));
  return [gap, 1 - gap].map((share) => ({
    coord: [now.x + share * (after.x - now.x), now.y + share * (after.y - now.y)],
  }));
}

/** A point with a bar along each axis over which it may lie. */
function spreadOf(place: Place, color: string, symbol: string, type: string | number[]): object[] {
  const bar = (data: number[][], upright: boolean): object => ({
    type: 'line',
    data,
    symbol: 'rect',
    symbolSize: upright ? [20, 3] : [3, 20],
    lineStyle: { color, width: 3, type },
    itemStyle: { color },
    z: 4,
  });
  return [
    bar(
      [
        [place.xLow, place.y],
        [place.xHigh, place.y],
      ],
      false,
    ),
    bar(
      [
        [place.x, place.yLow],
        [place.x, place.yHigh],
      ],
      true,
    ),
    {
      type: 'scatter',
      name: place.name,
      data: [[place.x, place.y]],
      symbol,
      symbolSize: 24,
      itemStyle: {
        color: symbol === 'diamond' ? PAPER : color,
        borderColor: color,
        borderWidth: 4,
        opacity: 1,
      },
      z: 6,
    },
  ];
}
