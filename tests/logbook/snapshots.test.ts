import { describe, expect, it } from 'vitest';
import { openBook } from '#logbook';
import { Site } from '#records';

describe('snapshots', () => {
  it('are kept for the last weeks, and one a quarter before them', () => {
    const book = openBook(':memory:', { now: () => '2026-11-24T00:00:00.000Z' });
    const { id } = book.addSite(Site.parse({ name: 'Fern', timeZone: 'UTC' }), '2020-01-01T00:00:00.000Z');
    const start = Date.parse('2020-01-06T00:00:00.000Z');
    const WEEK = 7 * 86_400_000;
    const at = (week: number) => new Date(start + week * WEEK).toISOString();
    for (let week = 0; week < 300; week += 1) book.saveSnapshot(id, at(week), { week } as never);
    const found = new Set<string>();
    for (let week = 0; week < 300; week += 1) found.add(book.snapshotBefore(id, at(week))!.at);
    // 12 weeks and the one before them, and 23 quarters of which the last weeks cover one.
    expect(found.size).toBeGreaterThanOrEqual(13 + 20);
    expect(found.size).toBeLessThanOrEqual(13 + 24);
    for (let week = 288; week < 300; week += 1) expect(book.snapshotBefore(id, at(week))!.at).toBe(at(week));
    expect(book.snapshotBefore(id, at(5))!.at).toBe(at(0));
    book.close();
  });
});
