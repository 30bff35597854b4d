import type { Picture } from './types.ts';
import { litresOf } from './weighed.ts';

type Quantity = {
  kg?: number | null;
  litres?: number | null;
  container?: string | null;
  count?: number | null;
};

/** Kilograms as weighed, and litres as said or as the containers hold; null where not known. */
export function quantityOf(picture: Picture, said: Quantity, localDate: string) {
  const each = said.container ? litresOf(picture, said.container, null, localDate) : null;
  return {
    kg: said.kg ?? null,
    litres: said.litres ?? (each === null || said.kg != null ? null : each * (said.count ?? 1)),
  };
}
