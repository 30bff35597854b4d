import type { Answered, News, Said, Trouble } from '../wire.ts';

export type Heard<T> =
  | { is: 'ok'; value: T }
  | { is: 'no-signal'; waitMs: number }
  | { is: 'trouble'; what: Trouble };

const PATIENCE_MS = 20_000;

/** Asks the program. No answer, or a fault of its own, is the same as no signal: try again later. */
async function ask<T>(
  path: string,
  who: { token: string; phone: string },
  body?: unknown,
): Promise<Heard<T>> {
  const cut = new AbortController();
  const timer = setTimeout(() => cut.abort(), PATIENCE_MS);
  try {
    const response = await fetch(path, {
      method: body === undefined ? 'GET' : 'POST',
      headers: { authorization: `Bearer ${who.token}`, 'x-phone': who.phone },
      body: body === undefined ? null : JSON.stringify(body),
      signal: cut.signal,
      cache: 'no-store',
      credentials: 'omit',
    });
    if (response.ok) return { is: 'ok', value: (await response.json()) as T };
    const wait = Number(response.headers.get('retry-after')) * 1000;
    const { trouble } = (await response.json()) as { trouble?: Trouble };
    if (!trouble || trouble === 'ours' || trouble === 'too-many')
      return { is: 'no-signal', waitMs: wait || 15_000 };
    return { is: 'trouble', what: trouble };
  } catch {
    return { is: 'no-signal', waitMs: 0 };
  } finally {
    clearTimeout(timer);
  }
}

export const sayOverLine = (who: { token: string; phone: string }, said: Said) =>
  ask<Answered>('api/say', who, said);

export const newsOverLine = (who: { token: string; phone: string }, language: string | null, after: number) =>
  ask<News>(`api/news?after=${after}${language ? `&language=${language}` : ''}`, who);

export async function pictureOverLine(
  who: { token: string; phone: string },
  row: number,
): Promise<string | null> {
  try {
    const response = await fetch(`api/picture/${row}`, {
      headers: { authorization: `Bearer ${who.token}`, 'x-phone': who.phone },
      credentials: 'omit',
    });
    return response.ok ? URL.createObjectURL(await response.blob()) : null;
  } catch {
    return null;
  }
}

/** Unguessable, also where the page is not served over a secure connection. */
export function random(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(24));
  return btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_');
}
