import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { caseFilesUnder, casesIn } from '../score/cases.ts';
import { compareReading } from '../score/compare.ts';
import { read } from '../score/reader.ts';

const families = fileURLToPath(new URL('../../fixtures/messages/families', import.meta.url));

describe('messages by family, each read exactly as written beside it', () => {
  for (const path of caseFilesUnder(families))
    it(path.slice(families.length + 1), () => {
      const cases = casesIn(path);
      expect(cases.length).toBeGreaterThan(0);
      const missed = cases
        .filter((one) => !compareReading(read(one.text, one.site, one.at), one.expect).exact)
        .map((one) => `${one.id}: ${one.text}`);
      expect(missed).toEqual([]);
    });
});
