import type { WeekData } from './data.ts';
import {
  axisOf,
  BAND,
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
  SOFT,
  TEXT,
  textAt,
  WIDTH,
  wrapped,
} from './style.ts';

/** Each source has its own shade and its own hatch, so that it is told apart on a grey print as well. */
const LOOKS = [
  { color: COOL },
  {
    color: BAND,
    decal: { symbol: 'rect', dashArrayX: [1, 0], dashArrayY: [3, 6], rotation: Math.PI / 4, color: INK },
  },
  {
    color: '#7fb3d9',
    decal: {
      symbol: 'circle',
      dashArrayX: [
        [8, 8],
        [0, 8, 8, 0],
      ],
      dashArrayY: [6, 0],
      symbolSize: 0.7,
      color: INK,
    },
  },
  {
    color: HOT,
    decal: { symbol: 'rect', dashArrayX: [1, 0], dashArrayY: [2, 7], rotation: 0, color: PAPER },
  },
  {
    color: '#c9cec6',
    decal: { symbol: 'rect', dashArrayX: [1, 0], dashArrayY: [2, 5], rotation: -Math.PI / 4, color: INK },
  },
];

const PLOT = 300;
const WEEKS_PLOT = 180;

/** The days of a week by source with the chips beside, and under them the weeks before. */
export function weekChart(data: WeekData): { option: object; height: number } {
  const { graphic, top } = heading(data.title, data.sub);
  const series: object[] = [];
  const names: Key[] = [];
  data.sources.forEach(({ name, values }, i) => {
    const look = LOOKS[i % LOOKS.length]!;
    names.push({ name });
    series.push({
      type: 'bar',
      barWidth: '40%',
      barGap: '8%',
      name,
      stack: 'in',
      data: values.map((value) => value || null),
      itemStyle: {
        color: look.color,
        borderColor: INK,
        borderWidth: 1.5,
        ...(look.decal ? { decal: look.decal } : {}),
      },
    });
  });
  if (data.estimated) {
    names.push({ name: data.estimated.name });
    series.push({
      type: 'bar',
      barWidth: '40%',
      name: data.estimated.name,
      stack: 'in',
      data: data.estimated.values.map((value) => value || null),
      itemStyle: { color: PAPER, borderColor: INK, borderWidth: 2, borderType: [5, 4] },
    });
  }
  if (data.chips) {
    names.push({ name: data.chips.name });
    series.push({
      type: 'bar',
      name: data.chips.name,
      stack: 'chips',
      barWidth: '24%',
      data: data.chips.values.map((value) => value || null),
      itemStyle: {
        color: GOOD,
        borderColor: INK,
        borderWidth: 1.5,
        decal: {
          symbol: 'rect',
          dashArrayX: [1, 0],
          dashArrayY: [2, 5],
          rotation: Math.PI / 2,
          color: PAPER,
        },
      },
    });
  }
  if (data.usual) {
    names.push({ name: data.usual.name, icon: ICONS.dash });
    series.push({
      type: 'scatter',
      name: data.usual.name,
      symbol: 'rect',
      symbolSize: [72, 6],
      z: 5,
      itemStyle: { color: INK, opacity: 1 },
      data: data.usual.values.map((value) => value || null),
    });
  }
  const key = legend(names);
  const dayTop = top + 46;
  const keyTop = dayTop + PLOT + 48;
  let y = keyTop + key.height + 8;
  const grids: object[] = [{ left: leftOf(data.y), right: MARGIN, top: dayTop, height: PLOT }];
  const xAxes: object[] = [categories(data.days, 0)];
  const yAxes: object[] = [{ ...axisOf(data.y, true), gridIndex: 0 }];
  if (data.weeks) {
    const { weeks } = data;
    y += 14;
    graphic.push(textAt(weeks.title, MARGIN, y, { bold: true }));
    y += 64;
    grids.push({ left: leftOf(data.y), right: MARGIN, top: y, height: WEEKS_PLOT });
    xAxes.push(
      categories(
        weeks.bars.map(({ text }) => text),
        1,
      ),
    );
    yAxes.push({
      ...axisOf({ ...weeks.y, name: '' }, true),
      gridIndex: 1,
      axisLabel: { show: false },
      axisTick: { show: false },
      splitLine: { show: false },
    });
    series.push({
      type: 'bar',
      xAxisIndex: 1,
      yAxisIndex: 1,
      barWidth: '62%',
      data: weeks.bars.map((bar) => ({
        value: bar.value,
        itemStyle: bar.this
          ? { color: COOL, borderColor: INK, borderWidth: 3 }
          : { color: '#dfe3dc', borderColor: SOFT, borderWidth: 1.5 },
        label: {
          show: true,
          position: 'top',
          formatter: bar.shown,
          color: INK,
          fontSize: SMALL,
          fontWeight: bar.this ? 'bold' : 'normal',
          fontFamily: FAMILY,
        },
      })),
    });
    y += WEEKS_PLOT + 46;
  }
  for (const line of data.foot ? wrapped(data.foot, TEXT, WIDTH - 2 * MARGIN, 3) : []) {
    graphic.push(textAt(line, MARGIN, y + 10));
    y += TEXT * 1.3;
  }
  return {
    height: Math.ceil(y + 24),
    option: {
      graphic,
      legend: { ...key.legend, top: keyTop, bottom: null },
      grid: grids,
      xAxis: xAxes,
      yAxis: yAxes,
      series: series.map((one) => ({ silent: true, ...one })),
    },
  };
}

const categories = (names: readonly string[], gridIndex: number): object => ({
  type: 'category',
  gridIndex,
  data: [...names],
  axisLine: { lineStyle: { color: INK, width: 2 } },
  axisTick: { show: false },
  axisLabel: { interval: 0, fontSize: SMALL, color: INK, fontFamily: FAMILY, margin: 10 },
});
