import { contextForSite, readMessage } from '#parsers';
import { Site } from '#records';
import type { GotReading } from './compare.ts';

const checked = new WeakMap<object, Site>();

/** The site of a file, checked and completed once, so that a thousand cases do not check it a thousand times. */
function siteOf(file: object): Site {
  const known = checked.get(file) ?? Site.parse(file);
  checked.set(file, known);
  return known;
}

/** Reads one message as if it were sent at a local time to a site about which only its file is known. */
export function read(text: string, siteFile: object, atLocal: string): GotReading {
  return readMessage(text, contextForSite(siteOf(siteFile), atLocal));
}
