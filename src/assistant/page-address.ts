/** The address under which phones reach the page, as it is put before a link; null where it cannot be one. */
export function pageAddress(typed: string): string | null {
  if (typed.length > 200 || !URL.canParse(typed)) return null;
  const url = new URL(typed);
  if (!['https:', 'http:'].includes(url.protocol) || url.username || url.password || url.search || url.hash)
    return null;
  return `${url.origin}${url.pathname.replace(/\/+$/, '')}/`;
}
