import { describe, expect, test } from 'vitest';
import { correctionFor, mixLimits } from '#core';

const FOOD = [{ material: 'food-scraps', kg: 160 }];
const given = (room: number | null, stock: number | null) =>
  correctionFor({
    parts: FOOD,
    additions: [{ material: 'wood-chips', container: 'barrow', kg: 24.65, litres: 85, stock }],
    limits: mixLimits({
      place: 'drum',
      recipe: { chips: 1, food: 1, by: 'volume' },
      roomLitres: room,
    }),
  });

// 160 kg ÷ 0.53 kg/L is 302 L of food: 4 barrows of 85 L. The sums need no source; the density is the table's.
describe('what is too little stands in the way', () => {
  test('neither: four barrows', () => expect(given(null, null).add).toMatchObject([{ count: 4 }]));
  test('the stock alone, with what would solve it', () =>
    expect(given(null, 1).blocked).toMatchObject({
      limits: ['stock', 'recipe'],
      together: false,
      best: [{ count: 1 }],
      wouldSolve: 'wood-chips',
    }));
  test('the room alone: no material solves that', () =>
    expect(given(300, null).blocked).toMatchObject({
      limits: ['room', 'recipe'],
      together: false,
      best: [{ count: 3 }],
      wouldSolve: null,
    }));
  test('both together are named together, before the recipe that asks for it', () =>
    expect(given(200, 1).blocked).toMatchObject({
      limits: ['stock', 'room'],
      together: true,
      best: [{ count: 1 }],
      wouldSolve: null,
    }));
});

test('a floor of coarse stuff and a band of C:N that ask for opposite things are both named', () => {
  const got = correctionFor({
    parts: [
      { material: 'food-scraps', kg: 27 },
      { material: 'sawdust', kg: 20.7 },
    ],
    additions: [{ material: 'wood-chips', container: 'barrow', kg: 24.65, litres: 85, stock: null }],
    limits: mixLimits({ place: 'static-pile', cnBand: [25, 40] }),
  });
  expect(got.code).toBe('infeasible');
  expect(got.blocked!.limits.slice(0, 2).sort()).toEqual(['cn-high', 'structure']);
  expect(got.blocked!.together).toBe(true);
});
