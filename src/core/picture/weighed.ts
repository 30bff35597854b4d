import type { RecordOf } from '#records';
import { type Estimate, estimateKg } from '../weights/estimate.ts';
import { netKg, tareAt } from '../weights/net.ts';
import { settingAt } from './setting-at.ts';
import type { Moment, Picture } from './types.ts';

/** What a load said about its amount: the fields of a record that matter to its weight. */
export type Load = {
  [field in 'container' | 'label' | 'count' | 'fill' | 'kg' | 'basis' | 'tareKg' | 'litres']?:
    | RecordOf<'weigh-in'>[field]
    | null;
} & { material: string };

/** How much a load is. Measured (`netKg`) and estimated are never the same field. */
export type LoadWeight = {
  grossKg: number | null;
  tareKg: number | null;
  /** The tare is not known yet, or is more than the gross: nothing is counted meanwhile. */
  pending: boolean;
  netKg: number | null;
  estimatedKg: number | null;
  /** Litres as said, or as the containers hold where nothing was weighed. */
  litres: number | null;
  estimate: Estimate | null;
};

type Told = Pick<Picture, 'base' | 'settings' | 'factors'>;

/** Whether a weight stands for the container and what is in it, or for what is in it alone. */
export const isGross = (load: Load): boolean =>
  load.basis ? load.basis === 'gross' : load.container != null;

/** Litres that a container holds when full, its own by label before its kind's; null where nobody has said. */
export function litresOf(
  picture: Pick<Picture, 'base' | 'settings'>,
  container: string,
  label: string | null | undefined,
  localDate: string,
): number | null {
  const own = label ? settingAt(picture, `litres:${container} ${label}`, localDate) : undefined;
  const litres = own ?? settingAt(picture, `litres:${container}`, localDate);
  return typeof litres === 'number' ? litres : null;
}

/**
 * What a load weighs at its moment: gross, empty weight and net where it was weighed; an estimate with its factor
 * where only a volume or a number of containers was said; nothing where neither is known. kg and litres, not rounded.
 * @source see tareAt, netKg and estimateKg
 * @example weighed(picture, { material: 'food-scraps', container: 'cart', kg: 66.5 }, now).netKg // 48.5
 */
export function weighed(
  picture: Told,
  load: Load,
  now: Pick<Moment, 'localDate'> & { entry?: number | null; at?: string | null },
): LoadWeight {
  const none = {
    grossKg: null,
    tareKg: null,
    pending: false,
    netKg: null,
    estimatedKg: null,
    estimate: null,
  };
  const litres = load.litres ?? null;
  if (load.kg == null) return { ...none, ...estimated(picture, load, now.localDate) };
  if (!isGross(load)) return { ...none, litres, netKg: load.kg };
  const { settings, base } = picture;
  const tareKg =
    load.tareKg ??
    (load.container
      ? tareAt(
          settings,
          base.containers,
          load.container,
          load.label ?? null,
          now.localDate,
          now.entry ?? null,
          now.at ?? null,
        )
      : null);
  const grossKg = load.kg;
  // A tare told later may be more than what waited for it: that is asked about, never counted as less than nothing.
  if (tareKg === null || tareKg * Math.max(1, Math.ceil(load.count ?? 1)) > grossKg) {
    return { ...none, litres, grossKg, tareKg, pending: true };
  }
  return { ...none, litres, grossKg, tareKg, netKg: netKg({ ...load, kg: grossKg, basis: 'gross' }, tareKg) };
}

function estimated(picture: Told, load: Load, localDate: string) {
  const { container, material } = load;
  const count = container ? (load.count ?? 1) * (load.fill ?? 1) : null;
  const containerLitres = container ? litresOf(picture, container, load.label, localDate) : null;
  const holds = container ? (settingAt(picture, `holds:${container}`, localDate) ?? 'food-scraps') : null;
  const set = container && material === holds ? settingAt(picture, `factor:${container}`, localDate) : null;
  const key = `${container}|${material}`;
  const estimate = estimateKg({
    material,
    count,
    litres: load.litres ?? null,
    containerLitres,
    setKg: typeof set === 'number' ? set : null,
    learned: Object.hasOwn(picture.factors, key) ? picture.factors[key]! : null,
  });
  const litres = load.litres ?? (count !== null && containerLitres !== null ? count * containerLitres : null);
  return { estimatedKg: estimate?.estimatedKg ?? null, litres, estimate };
}
