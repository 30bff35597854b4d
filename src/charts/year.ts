import type { YearData } from './data.ts';
import {
  axisOf,
  BAND,
  BAND_LOOK,
  COOL,
  FAMILY,
  heading,
  ICONS,
  INK,
  type Key,
  leftOf,
  legend,
  MARGIN,
  SMALL,
  SOFT,
} from './style.ts';

type Api = { coord(point: number[]): number[] };

const PLOT = 400;

/** What came in since the year began, the straight way to the target, and where it is likely to end. */
export function yearChart(data: YearData): { option: object; height: number } {
  const { graphic, top } = heading(data.title, data.sub);
  const names: Key[] = [{ name: data.total.name }];
  const series: object[] = [
    {
      type: 'line',
      name: data.total.name,
      data: data.total.points,
      showSymbol: true,
      symbol: (_value: unknown, { dataIndex }: { dataIndex: number }) =>
        dataIndex === data.total.points.length - 1 ? 'circle' : 'none',
      symbolSize: 16,
      lineStyle: { color: COOL, width: 5 },
      itemStyle: { color: COOL },
      z: 4,
    },
  ];
  if (data.weighed) {
    names.push({ name: data.weighed.name, line: true });
    series.push({
      type: 'line',
      name: data.weighed.name,
      data: data.weighed.points,
      symbol: 'none',
      lineStyle: { color: SOFT, width: 3, type: [3, 5] },
      itemStyle: { color: SOFT },
    });
  }
  if (data.target) {
    names.push({ name: data.target.name, icon: ICONS.turn });
    series.push({
      type: 'line',
      name: data.target.name,
      data: data.target.points,
      showSymbol: true,
      symbol: (_value: unknown, { dataIndex }: { dataIndex: number }) =>
        dataIndex === 1 ? 'diamond' : 'none',
      symbolSize: 18,
      lineStyle: { color: INK, width: 3, type: [12, 7] },
      itemStyle: { color: INK },
    });
  }
  if (data.forecast) {
    const { from, at, low, high, typical, name } = data.forecast;
    names.push({ name, itemStyle: BAND_LOOK });
    // Late in the year there is no room left for them; the title says them as well.
    const roomy = from[0] < data.x.min + 0.7 * (at - data.x.min);
    const text = (formatter: string, up: number) => ({
      show: roomy,
      formatter,
      position: 'left',
      offset: [0, up],
      distance: 10,
      color: INK,
      fontSize: SMALL,
      fontFamily: FAMILY,
    });
    series.push(
      {
        type: 'custom',
        name,
        z: 1,
        color: BAND,
        data: [[0, 0]],
        renderItem: (_params: unknown, api: Api) => ({
          type: 'polygon',
          shape: { points: [from, [at, low], [at, high]].map((point) => api.coord(point)) },
          style: { fill: BAND_LOOK.color, stroke: BAND_LOOK.borderColor, lineWidth: 1.5 },
        }),
      },
      {
        type: 'line',
        data: [from, [at, typical]],
        symbol: 'none',
        lineStyle: { color: COOL, width: 3, type: [6, 6] },
      },
      {
        type: 'line',
        data: [
          { value: [at, low], label: text(data.forecast.lowText, 26) },
          { value: [at, high], label: text(data.forecast.highText, -20) },
        ],
        symbol: 'rect',
        symbolSize: [24, 4],
        showSymbol: true,
        lineStyle: { color: INK, width: 3 },
        itemStyle: { color: INK },
        z: 5,
      },
    );
  }
  const key = legend(names);
  const plotTop = top + 46;
  return {
    height: plotTop + PLOT + 84 + key.height + 12,
    option: {
      graphic,
      legend: key.legend,
      grid: { left: leftOf(data.y), right: MARGIN + 18, top: plotTop, height: PLOT },
      xAxis: axisOf(data.x, false),
      yAxis: axisOf(data.y, true),
      series: series.map((one) => ({ silent: true, clip: false, ...one })),
    },
  };
}
