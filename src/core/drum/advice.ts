/** What the site has set for running its drum. There is no interval that holds for every machine. */
export type DrumRunRules = {
  everyMin?: { low: number; high: number } | null;
  /** Longest that the fan may be off at a stretch (hours), where it is turned off for frost. */
  fanOffMaxHours?: number | null;
};

/**
 * Interval seen on one kind of machine; a check value, never a setting that is advised.
 * @source common practice on one kind of machine, no source.
 */
export const INTERVAL_CHECK = { low: 30, high: 45 } as const;

/** How long a fan may stay off for frost where the site has set nothing, in hours. @source from memory; the drum needs air. */
const FAN_OFF_HOURS = 4;

export const DRUM_ADVICE = [
  'interval-outside-site-rule',
  'interval-outside-check-value',
  'fan-low-in-normal-running',
  'fan-lowest-while-freezing',
  'fan-off-for-a-time',
  'fan-back-on',
  'odour-wetness-first',
  'odour-then-more-air',
  'odour-mind-the-exhaust',
] as const;
export type DrumAdviceCode = (typeof DRUM_ADVICE)[number];

/** One piece of advice, as a code with its figures; `remindInHours` where somebody must be reminded. */
export type DrumAdvice = {
  code: DrumAdviceCode;
  args: Record<string, number | string | null>;
  remindInHours: number | null;
  source: string;
};

/** What is known of the drum's running. `fanOffHours` is how long the fan has been off. */
export type DrumRunning = {
  mode: string | null;
  everyMin: number | null;
  fan: string | null;
  fanOffHours: number | null;
  odour: boolean;
  freezing: boolean;
  /** Whether a squeeze or test says that the mix is too wet; null where nobody looked. */
  tooWet: boolean | null;
};

/**
 * Advice on interval and fan from the rules that the site has set, in the order to be told. For odour:
 * wetness first, then more air, with a look at where the exhaust goes. For a freezing exit the fan is lowest
 * or off for a limited time, with a reminder, since the drum needs air.
 * @source common practice, no source; the site's own rules.
 * @example drumAdvice({ mode: 'automatic', everyMin: 90, fan: 'low', fanOffHours: null, odour: false, freezing: false, tooWet: null }, { everyMin: { low: 40, high: 60 } })[0]!.code // 'interval-outside-site-rule'
 */
export function drumAdvice(running: DrumRunning, rules: DrumRunRules = {}): DrumAdvice[] {
  const list: DrumAdvice[] = [];
  const tell = (
    code: DrumAdviceCode,
    args: DrumAdvice['args'] = {},
    remindInHours: number | null = null,
    source = 'common practice, no source',
  ) => list.push({ code, args, remindInHours, source });
  const longest = rules.fanOffMaxHours ?? FAN_OFF_HOURS;

  const off = running.fan === 'off';
  if (off && (!running.freezing || (running.fanOffHours ?? 0) >= longest))
    tell('fan-back-on', { offHours: running.fanOffHours, maxHours: longest });
  else if (off && running.freezing) {
    const left = Math.max(0, longest - (running.fanOffHours ?? 0));
    tell('fan-off-for-a-time', { maxHours: longest, leftHours: left }, left);
  } else if (running.freezing) tell('fan-lowest-while-freezing', { maxHours: longest }, longest);

  if (running.odour) {
    if (running.tooWet !== false) tell('odour-wetness-first');
    tell('odour-then-more-air', { after: running.tooWet === false ? null : 'wetness' });
    tell('odour-mind-the-exhaust');
  } else if (running.fan === 'high' && !running.freezing) tell('fan-low-in-normal-running');

  const { everyMin } = running;
  if (everyMin !== null && running.mode !== 'off') {
    const rule = rules.everyMin ?? null;
    if (rule && (everyMin < rule.low || everyMin > rule.high))
      tell('interval-outside-site-rule', { everyMin, low: rule.low, high: rule.high }, null, 'the site');
    if (!rule && (everyMin < INTERVAL_CHECK.low || everyMin > INTERVAL_CHECK.high))
      tell(
        'interval-outside-check-value',
        { everyMin, low: INTERVAL_CHECK.low, high: INTERVAL_CHECK.high },
        null,
        'common practice on one kind of machine, no source',
      );
  }
  return list;
}

/** Steps for a drum that stands still, in the order to be told. None of them starts it again. */
export const STOPPED_STEPS = [
  'nobody-inside-or-reaching',
  'everybody-clear',
  'locks-and-tags-stay-until-their-owner-removes-them',
  'guards-in-place',
  'own-procedure-decides',
  'no-new-loads',
  'log-hour-and-temperature',
  'leave-jam-to-trained-people',
  'ask-the-power-company-or-electrician',
  'call-now',
  'call-at',
  'watch-heat-and-smell',
] as const;
export type StoppedStep = (typeof STOPPED_STEPS)[number];

/** What to do about a drum that stands still; `whom` and `afterHours` are the site's own, where set. */
export type StoppedAdvice = {
  steps: { code: StoppedStep; args: Record<string, number | string | null> }[];
  source: string;
};

/**
 * A drum that is stopped, jammed or without power: people clear, no new loads, hour and temperature logged,
 * when to call whom. It never asks anybody to start it, free it or undo a stop: that is for whoever put the
 * lock or tag on, and for the site's own procedure.
 * @source lock-out and tag-out: OSHA 29 CFR 1910.147, from memory; local codes and the site's procedure come first.
 * @example stoppedAdvice({ why: 'no-power', hours: 5, callAfterHours: 4, whom: 'the coordinator' }).steps.some((step) => step.code === 'call-now') // true
 */
export function stoppedAdvice(given: {
  why: 'stopped' | 'jammed' | 'no-power';
  /** How long it has stood, in hours; null where unknown. */
  hours: number | null;
  callAfterHours: number | null;
  whom: string | null;
}): StoppedAdvice {
  const { hours, callAfterHours, whom } = given;
  const late = hours !== null && callAfterHours !== null && hours >= callAfterHours;
  const steps: StoppedAdvice['steps'] = [
    { code: 'nobody-inside-or-reaching', args: {} },
    { code: 'everybody-clear', args: {} },
    { code: 'locks-and-tags-stay-until-their-owner-removes-them', args: {} },
    { code: 'guards-in-place', args: {} },
    { code: 'own-procedure-decides', args: {} },
  ];
  if (given.why === 'jammed') steps.push({ code: 'leave-jam-to-trained-people', args: {} });
  if (given.why === 'no-power') steps.push({ code: 'ask-the-power-company-or-electrician', args: {} });
  steps.push(
    { code: 'no-new-loads', args: {} },
    { code: 'log-hour-and-temperature', args: { hours } },
    { code: 'watch-heat-and-smell', args: {} },
    late
      ? { code: 'call-now', args: { whom, hours } }
      : { code: 'call-at', args: { whom, afterHours: callAfterHours } },
  );
  return { steps, source: 'OSHA 29 CFR 1910.147, from memory; the site and local codes come first' };
}
