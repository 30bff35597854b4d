import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contextForSite, readMessage } from '#parsers';
import { FieldRecord, Site } from '#records';

const siteNamed = (name: string): Site =>
  Site.parse(JSON.parse(readFileSync(new URL(`../../fixtures/sites/${name}.json`, import.meta.url), 'utf8')));
const contexts = ['hospital', 'allotment'].map((name) => contextForSite(siteNamed(name), '2026-06-17T10:00'));

const words = fc.constantFrom(
  ..."cart carts bin bac seau cubeta bucket pile tas pila B C 2 3 41 66.5 66,5 1/2 ½ 2½ kg lb # ° º °C F % chips copeaux astillas turned brassé volteamos tarp bâche lona north top sur est y et and , . ; : - – — − ? ! \n 61-15.5 no wait yesterday hier ayer 5/9 smell odeur olor drum tambour 3/4 full each total net tare 15.5 café east kitchen the la le 665 -8 @ 2' 18in .5 1,250 \u200f \u200b \u00a0 ４１ Ｂ 🎉 * undo today / # ( ) \" ' ".split(
    ' ',
  ),
);
const messages = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 80 }),
  fc.string({ unit: 'grapheme', maxLength: 80 }),
  fc.array(words, { maxLength: 24 }).map((list) => list.join(' ')),
  fc.array(words, { maxLength: 16 }).map((list) => list.join('')),
);

describe('any message', () => {
  it('is read without throwing, into valid records, and its spans lie inside it apart from each other', () => {
    fc.assert(
      fc.property(messages, fc.constantFrom(...contexts), (text, context) => {
        const read = readMessage(text, context);
        for (const record of read.records)
          expect(FieldRecord.safeParse(record).success, JSON.stringify(record)).toBe(true);
        for (const doubt of read.doubts)
          for (const choice of doubt.choices) {
            if (choice.record)
              expect(FieldRecord.safeParse(choice.record).success, JSON.stringify(choice.record)).toBe(true);
            for (const record of choice.records ?? [])
              expect(FieldRecord.safeParse(record).success).toBe(true);
          }
        expect(read.assumed.length).toBe(read.records.length);
        expect(read.typed.length).toBe(read.records.length);
        const spans = read.explain.filter((one) => one.rule !== 'danger').sort((a, b) => a.start - b.start);
        spans.forEach((span, k) => {
          expect(span.start).toBeGreaterThanOrEqual(0);
          expect(span.end).toBeLessThanOrEqual(text.length);
          expect(span.start).toBeLessThan(span.end);
          if (k > 0) expect(span.start).toBeGreaterThanOrEqual(spans[k - 1]!.end);
        });
      }),
      { numRuns: 1500 },
    );
  });

  it('reads the same however its digits, spaces, dashes and degree signs are typed', () => {
    const context = contexts[0]!;
    const plainly = readMessage('pile B 41 C', context).records.map(({ said: _, ...rest }) => rest);
    for (const text of [
      'pile\u00a0B ４１ C',
      'pile \u200bB 41\u00baC',
      'pile B\u200f 41°C',
      'ｐｉｌｅ Ｂ 41°c',
    ])
      expect(readMessage(text, context).records.map(({ said: _, ...rest }) => rest)).toEqual(plainly);
    expect(readMessage('ambient −12', context).records[0]).toMatchObject({ celsius: [-12] });
  });

  it('keeps what the writer typed as `said`', () => {
    const text = 'Tas B 41 °C';
    expect(readMessage(text, contexts[0]!).records[0]).toMatchObject({ said: text });
  });
});
