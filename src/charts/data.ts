import { z } from 'zod';

/** A point: where on the x axis, where on the y axis, both in the numbers of their axes. */
const Point = z.tuple([z.number(), z.number()]);
const Points = z.array(Point);

/** An axis with the places that have a text; its numbers are in the site's own units, dates are days. */
const Axis = z.object({
  min: z.number(),
  max: z.number(),
  /** What it measures, with its unit. */
  name: z.string(),
  ticks: z.array(z.object({ at: z.number(), text: z.string() })),
});
export type Axis = z.infer<typeof Axis>;

const Line = z.object({ name: z.string(), points: Points });

/** Temperature of one place against time. */
export const HeatData = z.object({
  title: z.string(),
  sub: z.string(),
  x: Axis,
  y: Axis,
  hottest: Line,
  /** Null where each reading is of one point: there is nothing lower. */
  lowest: Line.nullable(),
  ambient: Line.nullable(),
  level: z.object({ y: z.number(), text: z.string() }).nullable(),
  /** The days that count, along the level. */
  counted: z.object({ from: z.number(), to: z.number(), text: z.string() }).nullable(),
  marks: z.array(
    z.object({ name: z.string(), shape: z.enum(['turn', 'cover', 'uncover']), xs: z.array(z.number()) }),
  ),
  forecast: z
    .object({
      /** What the dashed line is, and what the band is. */
      name: z.string(),
      bandName: z.string(),
      line: Points,
      soonest: Points,
      latest: Points,
      near: z.object({
        from: z.number(),
        on: z.number(),
        to: z.number(),
        open: z.boolean(),
        y: z.number(),
        text: z.string(),
      }),
    })
    .nullable(),
});
export type HeatData = z.infer<typeof HeatData>;

/** A week by day and source, and whole weeks before it. Values are in the unit of the y axis. */
export const WeekData = z.object({
  title: z.string(),
  sub: z.string(),
  days: z.array(z.string()),
  y: Axis,
  sources: z.array(z.object({ name: z.string(), values: z.array(z.number()) })),
  /** Estimated from volume: drawn hollow, on top of what was weighed. */
  estimated: z.object({ name: z.string(), values: z.array(z.number()) }).nullable(),
  chips: z.object({ name: z.string(), values: z.array(z.number()) }).nullable(),
  /** The same day of the weeks before, on average. */
  usual: z.object({ name: z.string(), values: z.array(z.number()) }).nullable(),
  weeks: z
    .object({
      title: z.string(),
      y: Axis,
      bars: z.array(z.object({ text: z.string(), value: z.number(), shown: z.string(), this: z.boolean() })),
    })
    .nullable(),
  foot: z.string().nullable(),
});
export type WeekData = z.infer<typeof WeekData>;

/** What came in since the year began, against the target. */
export const YearData = z.object({
  title: z.string(),
  sub: z.string(),
  x: Axis,
  y: Axis,
  total: Line,
  /** Without what was estimated; null where nothing was. */
  weighed: Line.nullable(),
  target: z.object({ name: z.string(), text: z.string(), points: Points }).nullable(),
  forecast: z
    .object({
      name: z.string(),
      from: Point,
      at: z.number(),
      low: z.number(),
      typical: z.number(),
      high: z.number(),
      lowText: z.string(),
      highText: z.string(),
    })
    .nullable(),
});
export type YearData = z.infer<typeof YearData>;

const Place = z.object({
  name: z.string(),
  x: z.number(),
  xLow: z.number(),
  xHigh: z.number(),
  y: z.number(),
  yLow: z.number(),
  yHigh: z.number(),
});

/** Where a mix lies in its window of moisture and C:N. */
export const MixData = z.object({
  title: z.string(),
  sub: z.string(),
  x: Axis,
  y: Axis,
  window: z.object({
    name: z.string(),
    xLow: z.number(),
    xHigh: z.number(),
    yLow: z.number(),
    yHigh: z.number(),
  }),
  never: z.object({ x: z.number(), text: z.string() }),
  now: Place,
  after: Place.nullable(),
});
export type MixData = z.infer<typeof MixData>;
