import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { PictureSpec } from '#assistant';
import { draw, isDrawn } from '#charts';

/** Draws what a picture shows, when it is sent; null where nothing here can, and its words must do. */
export async function draws(picture: PictureSpec): Promise<Uint8Array | null> {
  if (isDrawn(picture.draw)) return draw(picture);
  if (picture.draw !== 'share') return null;
  const { qrPng } = await import('#channels/page');
  return qrPng(picture.data);
}

/** The same for a terminal that shows characters alone: a code is printed, anything else is saved beside the book. */
export const drawAsText =
  (bookPath: string, saved: (path: string) => string) =>
  async (picture: PictureSpec, row: number): Promise<string | null> => {
    if (isDrawn(picture.draw)) {
      const path = join(dirname(bookPath), 'pictures', `${row}-${picture.draw}.png`);
      const png = await draw(picture);
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, png);
      return saved(path);
    }
    if (picture.draw !== 'share') return null;
    const { qrText } = await import('#channels/page');
    return qrText(picture.data);
  };
