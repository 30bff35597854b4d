import { batchAt, drumName, placeKind } from '../picture/places.ts';
import type { Moment, Picture } from '../picture/types.ts';
import { type MixPart, type MixTest, SQUEEZE, squeezeTest, testHolds } from './mix.ts';

/** A moisture test by drying or probe is good to some points. @source from memory. */
const TEST_POINTS = 3;
/** A bucket dropped three times and topped up weighs the same to about a tenth. @source from memory. */
const BUCKET_SHARE = 0.1;

type Tested = Moment & { feel: string | null; percent: number | null };

/**
 * A squeeze or moisture test as a test of the mix; null where there is none, or a feel that no table knows.
 * @source see SQUEEZE; a test in percent is taken as good to 3 points, from memory.
 * @example moistureTest({ entry: 4, at: '2026-05-12T13:00:00.000Z', localDate: '2026-05-12', feel: null, percent: 63 }) // { how: 'moisture-test', moisturePct: { typical: 63, low: 60, high: 66 } }
 */
export function moistureTest(tested: Tested | null | undefined): MixTest | null {
  if (!tested) return null;
  const { feel, percent, at } = tested;
  if (percent !== null) {
    const moisturePct = {
      typical: percent,
      low: Math.max(0, percent - TEST_POINTS),
      high: Math.min(100, percent + TEST_POINTS),
    };
    return { at, how: 'moisture-test', moisturePct };
  }
  return feel !== null && Object.hasOwn(SQUEEZE, feel) ? squeezeTest(feel as keyof typeof SQUEEZE, at) : null;
}

/**
 * A bulk density found with a bucket (kg/m³), as a test of the mix.
 * @source a bucket of known volume: Cooperband 2002; its error from memory.
 * @example densityTest({ at: null, kgPerM3: 500 }) // { how: 'bucket-density', bulkKgPerM3: { typical: 500, low: 450, high: 550 } }
 */
export function densityTest({ at, kgPerM3 }: { at: string | null; kgPerM3: number }): MixTest {
  const bulkKgPerM3 = {
    typical: kgPerM3,
    low: kgPerM3 * (1 - BUCKET_SHARE),
    high: kgPerM3 * (1 + BUCKET_SHARE),
  };
  return { at, how: 'bucket-density', bulkKgPerM3 };
}

/**
 * What the crew found by hand in the mix at a place (a drum, a pile, a bay), as far as no load has come since:
 * the last squeeze or moisture test and the last bucket density, together. Null where nothing speaks for it.
 * @source see `moistureTest` and `densityTest`.
 * @example testAt({ drums: {}, places: {}, batches: {} } as never, 'drum', []) // null
 */
export function testAt(
  picture: Pick<Picture, 'drums' | 'places' | 'batches'>,
  place: string | null,
  parts: MixPart[],
): MixTest | null {
  const found = testsOf(picture, place).filter((test) => testHolds(test, parts));
  const water = found.find((test) => test.moisturePct);
  const density = found.find((test) => test.bulkKgPerM3);
  if (!water || !density) return water ?? density ?? null;
  const at = (water.at ?? '') > (density.at ?? '') ? water.at : density.at;
  return { ...density, ...water, at };
}

function testsOf(picture: Pick<Picture, 'drums' | 'places' | 'batches'>, place: string | null): MixTest[] {
  if (place === null) return [];
  const tests: (MixTest | null)[] = [];
  if (placeKind(picture, place) === 'drum') {
    const name = drumName(picture, place);
    const drum = name === null ? null : (picture.drums[name] ?? null);
    tests.push(moistureTest(drum?.moisture), drum?.density ? densityTest(drum.density) : null);
  } else {
    const batch = batchAt(picture, place);
    const lab = batch?.labs.findLast(({ analyte, value }) => analyte === BULK_DENSITY && value !== null);
    tests.push(
      moistureTest(batch?.moisture.at(-1)),
      lab ? densityTest({ at: lab.at, kgPerM3: lab.value! }) : null,
    );
  }
  return tests.filter((test) => test !== null);
}

/** The analyte under which a bulk density (kg/m³) stands in the book. */
export const BULK_DENSITY = 'bulk-density';
