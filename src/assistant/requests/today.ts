import type { Picture } from '#core';
import type { Draft } from '../draft.ts';
import type { Line } from '../say.ts';

export function today(_draft: Draft): void {}
export function morningLines(_picture: Picture, _when: { now: string; today: string }): Line[] {
  return [];
}
