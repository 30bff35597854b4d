import type { HeatData } from './data.ts';
import {
  AIR,
  axisOf,
  BAND,
  BAND_LOOK,
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
} from './style.ts';

type Api = { coord(point: number[]): number[] };

const SHAPES = { turn: 'diamond', cover: 'rect', uncover: 'rect' } as const;

/** Temperature against time: what was read, what was done to the pile, and where it is heading. */
export function heatChart(data: HeatData): { option: object; height: number } {
  const { graphic, top } = heading(data.title, data.sub);
  const { forecast, level, counted } = data;
  const series: object[] = [];
  const names: Key[] = [];
  const add = (one: { name?: string }, key: Omit<Key, 'name'> | null = {}): void => {
    series.push({ silent: true, clip: false, ...one });
    if (key && one.name && !names.some(({ name }) => name === one.name))
      names.push({ ...key, name: one.name });
  };

  add(lineOf(data.hottest, HOT, { symbol: 'circle', size: 13, width: 4, dash: 'solid' }));
  if (data.lowest) {
    add(lineOf(data.lowest, COOL, { symbol: 'emptyRect', size: 12, width: 3, dash: [10, 5] }));
  }
  if (data.ambient) {
    add(lineOf(data.ambient, AIR, { symbol: 'triangle', size: 12, width: 2, dash: [3, 5] }));
  }
  if (forecast) {
    const outline = [...forecast.soonest, ...[...forecast.latest].reverse()];
    add(
      {
        name: forecast.bandName,
        ...({
          type: 'custom',
          z: 1,
          color: BAND,
          clip: true,
          data: [[0, 0]],
          renderItem: (_params: unknown, api: Api) => ({
            type: 'polygon',
            shape: { points: outline.map((point) => api.coord(point)) },
            style: { fill: BAND_LOOK.color, stroke: BAND_LOOK.borderColor, lineWidth: 1.5 },
          }),
        } as object),
      },
      { itemStyle: BAND_LOOK },
    );
    const likely = { symbol: 'none', size: 0, width: 3, dash: [14, 7] };
    add(lineOf({ name: forecast.name, points: forecast.line }, HOT, likely), { line: true });
    const { near } = forecast;
    add(
      {
        ...({
          type: 'line',
          data: [
            [near.from, near.y],
            [near.to, near.y],
          ],
          symbol: (_value: unknown, { dataIndex }: { dataIndex: number }) =>
            dataIndex === 1 && near.open ? 'arrow' : 'rect',
          symbolRotate: (_value: unknown, { dataIndex }: { dataIndex: number }) =>
            dataIndex === 1 && near.open ? -90 : 0,
          symbolSize: (_value: unknown, { dataIndex }: { dataIndex: number }) =>
            dataIndex === 1 && near.open ? [14, 14] : [4, 22],
          lineStyle: { color: INK, width: 3 },
          itemStyle: { color: INK },
        } as object),
      },
      null,
    );
    const late = near.on > (data.x.min + data.x.max) / 2;
    add(
      {
        ...({
          type: 'scatter',
          data: [[near.on, near.y]],
          symbol: 'pin',
          symbolSize: 34,
          itemStyle: { color: INK, opacity: 1 },
          z: 5,
          label: {
            show: true,
            formatter: near.text,
            position: late ? 'left' : 'right',
            distance: 14,
            offset: [0, -30],
            color: INK,
            fontSize: SMALL,
            fontFamily: FAMILY,
            backgroundColor: PAPER,
            padding: [3, 6],
          },
        } as object),
      },
      null,
    );
  }
  if (level) add(levelLine(level, labelPlace(data)), null);
  if (counted && level) {
    add({
      ...({
        type: 'line',
        data: [
          [counted.from, level.y],
          [counted.to, level.y],
        ],
        symbol: 'rect',
        symbolSize: [5, 24],
        lineStyle: { color: GOOD, width: 8 },
        itemStyle: { color: GOOD },
        z: 4,
      } as object),
      name: counted.text,
    });
  }
  for (const { name, shape, xs } of data.marks) {
    const look = { color: shape === 'uncover' ? PAPER : INK, borderColor: INK, borderWidth: 3 };
    const foot = data.y.min + 0.035 * (data.y.max - data.y.min);
    add(
      {
        name,
        ...({
          type: 'scatter',
          symbol: SHAPES[shape],
          symbolSize: shape === 'turn' ? 22 : 18,
          itemStyle: { ...look, opacity: 1 },
          z: 6,
          // Turns stand above, covers below: a pile is often covered on the day that it was turned.
          data: xs.map((x) => [x, shape === 'turn' ? data.y.max : foot]),
          markLine: {
            silent: true,
            symbol: 'none',
            label: { show: false },
            lineStyle: { color: INK, width: 1.5, type: [2, 6] },
            data: xs.map((x) => ({ xAxis: x })),
          },
        } as object),
      },
      { icon: ICONS[shape], itemStyle: look },
    );
  }

  const key = legend(names);
  const plotTop = top + 52;
  const height = plotTop + 370 + 84 + key.height + 12;
  return {
    height,
    option: {
      graphic,
      legend: key.legend,
      grid: { left: leftOf(data.y), right: MARGIN + 22, top: plotTop, height: 370 },
      xAxis: axisOf(data.x, false),
      yAxis: axisOf(data.y, true),
      series,
    },
  };
}

type Look = { symbol: string; size: number; width: number; dash: string | number[] };

function lineOf(
  line: { name: string; points: number[][] },
  color: string,
  look: Look,
): { name: string } & object {
  return {
    name: line.name,
    ...({
      type: 'line',
      data: line.points,
      symbol: look.symbol,
      symbolSize: look.size,
      showSymbol: true,
      showAllSymbol: true,
      lineStyle: { color, width: look.width, type: look.dash },
      itemStyle: { color, borderWidth: 2.5 },
      z: 3,
    } as object),
  };
}

const LABEL_PLACES = ['insideStartTop', 'insideEndTop', 'insideStartBottom', 'insideEndBottom'] as const;

/** Where the name of the level covers the fewest points. */
function labelPlace({ level, x, y, hottest, lowest, forecast }: HeatData): (typeof LABEL_PLACES)[number] {
  const points = [...hottest.points, ...(lowest?.points ?? []), ...(forecast?.latest ?? [])];
  const tall = 0.11 * (y.max - y.min);
  const covered = (place: (typeof LABEL_PLACES)[number]): number =>
    points.filter(([px, py]) => {
      const share = (px - x.min) / (x.max - x.min);
      const over = py - (level?.y ?? 0);
      const beside = place.includes('Start') ? share < 0.45 : share > 0.55;
      return (
        beside && (place.endsWith('Top') ? over > -tall / 4 && over < tall : over < tall / 4 && over > -tall)
      );
    }).length;
  return LABEL_PLACES.reduce((best, place) => (covered(place) < covered(best) ? place : best));
}

function levelLine(level: { y: number; text: string }, position: string): object {
  return {
    type: 'line',
    data: [],
    markLine: {
      silent: true,
      symbol: 'none',
      lineStyle: { color: INK, width: 2, type: [12, 6] },
      label: {
        position,
        formatter: level.text,
        color: INK,
        fontSize: SMALL,
        fontFamily: FAMILY,
        backgroundColor: PAPER,
        padding: [2, 4],
      },
      data: [{ yAxis: level.y }],
    },
  };
}
