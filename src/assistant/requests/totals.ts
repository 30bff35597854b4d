import type { Picture } from '#core';
import type { Draft } from '../draft.ts';
import type { Book } from '../ports.ts';
import type { Line } from '../say.ts';

export function week(_draft: Draft): void {}
export function year(_draft: Draft): void {}
export function weekLines(
  _picture: Picture,
  _weekFrom: string,
  _today: string,
  _parts: { book: Book; siteId: number },
): { lines: Line[]; totalKg: number } {
  return { lines: [], totalKg: 0 };
}
