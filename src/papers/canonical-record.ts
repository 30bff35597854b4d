/** Fields that say how a record was told, not what it says. */
const TOLD = new Set(['said', 'when']);

/** JSON with keys in order, without what is null and without how it was told. */
export function canonicalOf(value: unknown, top = true): string {
  if (Array.isArray(value)) return `[${value.map((each) => canonicalOf(each, false)).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value ?? null);
  const fields = Object.entries(value)
    .filter(([key, field]) => field !== null && field !== undefined && !(top && TOLD.has(key)))
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${fields.map(([key, field]) => `${JSON.stringify(key)}:${canonicalOf(field, false)}`).join(',')}}`;
}
