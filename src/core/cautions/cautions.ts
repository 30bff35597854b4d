import { CAUTIONS, type Caution, type Occasion, type Trigger } from './data.ts';

const MACHINE = /^(drum|exit|lift)\b/;

const within = (list: readonly string[] | undefined, value: unknown): boolean =>
  list === undefined || list.includes(String(value ?? ''));

function holds(trigger: Trigger, occasion: Occasion): boolean {
  const { record } = occasion;
  if (record.kind !== trigger.kind) return false;
  const place = record.place ?? record.pile ?? null;
  const each = Number(record.kg ?? 0) / Math.max(1, Number(record.count ?? 1));
  return (
    within(trigger.topic, record.topic) &&
    within(trigger.chore, record.chore) &&
    within(trigger.material, record.material) &&
    within(trigger.container, record.container) &&
    within(trigger.feel, record.feel) &&
    within(trigger.expects, record.expects) &&
    (!trigger.machine || place === null || MACHINE.test(String(place))) &&
    (trigger.eachFromKg === undefined || each >= trigger.eachFromKg) &&
    (trigger.hotFromCelsius === undefined ||
      (!occasion.keptAway && (occasion.hottestCelsius ?? 0) >= trigger.hotFromCelsius)) &&
    (!trigger.keptAway || occasion.keptAway) &&
    (!trigger.windy || occasion.windy) &&
    (!trigger.drum || occasion.hasDrum) &&
    (!trigger.peopleAtRisk || occasion.peopleAtRisk)
  );
}

/**
 * The cautions due for what was just logged, the most pressing first; each once, however many lines call for it.
 * Where nobody may open something, nothing is said that presumes it is opened.
 * @source see each caution in data.ts
 * @example cautionsFor([{ record: { kind: 'screening' }, hottestCelsius: null, keptAway: false, windy: false, hasDrum: false, peopleAtRisk: false }]).map((caution) => caution.id) // ['dust', 'clean-tools']
 */
export function cautionsFor(occasions: readonly Occasion[]): Caution[] {
  return CAUTIONS.filter(({ on }) =>
    on.some((trigger) => occasions.some((occasion) => holds(trigger, occasion))),
  );
}
