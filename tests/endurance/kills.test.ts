import { join } from 'node:path';
import { expect, test } from 'vitest';
import { folder } from '../logbook/samples.ts';
import { killOften } from './kills.ts';

test('killed six times in the middle of its work, every message is in the book once and every reply came', async () => {
  const account = await killOften({ kills: 6, seed: 20260512, path: join(folder(), 'site.db') });
  expect(account.problems).toEqual([]);
  expect(account.kills).toBe(6);
  expect(account.messages).toBeGreaterThan(20);
  expect(account.lines).toBeGreaterThan(10);
  expect(account.replies).toBeGreaterThan(10);
}, 120_000);
