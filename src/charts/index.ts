// Pictures: numbers and texts that are handed in → SVG → PNG. Deterministic: no clock, no zone, no language,
// no fonts of the machine. The heavy libraries are read when the first picture is drawn.
export type { Axis, HeatData, MixData, WeekData, YearData } from './data.ts';
export { type DrawName, drawSvg, isDrawn } from './svg.ts';

/** The drawing of a picture as PNG. Rejects on a name that nothing draws, and on data of another shape. */
export async function draw(spec: { draw: string; data: unknown }): Promise<Buffer> {
  const { drawPng } = await import('./png.ts');
  return drawPng(spec);
}
