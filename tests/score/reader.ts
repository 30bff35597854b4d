import type { GotReading } from './compare.ts';

/** Reads one message as if it were sent at a local time to a site about which only its file is known. */
export type Read = (text: string, site: unknown, atLocal: string) => GotReading;

interface ParsersFace {
  readonly readMessage: (text: string, context: unknown) => GotReading;
  readonly contextForSite: (site: unknown, atLocal: string) => unknown;
}

/** The reader of messages, taken by name so that the scorer says in words when there is none. */
export async function reader(): Promise<Read> {
  const face: string = '#parsers';
  const { readMessage, contextForSite } = (await import(face)) as ParsersFace;
  return (text, site, atLocal) => readMessage(text, contextForSite(site, atLocal));
}
