import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { renderAsync } from '@resvg/resvg-js';
import { FAMILY } from './style.ts';
import { drawSvg } from './svg.ts';

const fonts = join(dirname(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/package.json')), 'ttf');

/** Twice the size, so that letters are crisp; with our own fonts alone, because a bare machine has none. */
export async function drawPng(spec: { draw: string; data: unknown }): Promise<Buffer> {
  const image = await renderAsync(drawSvg(spec), {
    fitTo: { mode: 'zoom', value: 2 },
    font: {
      loadSystemFonts: false,
      fontFiles: ['DejaVuSansCondensed.ttf', 'DejaVuSansCondensed-Bold.ttf'].map((name) => join(fonts, name)),
      defaultFontFamily: FAMILY,
      sansSerifFamily: FAMILY,
    },
  });
  return image.asPng();
}
