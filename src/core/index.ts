// Sums only: weights, mix, heat, curing, drum, duties, week, year, and the picture of a site.
// Pure: no clock, no randomness, no files; every number has its source beside it.

export { type AshBalance, ashBalance } from './ash-balance.ts';
export { MASS_LOSS, type MassBalance, massBalance, YIELD_LITRES_PER_KG } from './balance.ts';
export {
  addDays,
  addMonths,
  daysBetween,
  instantOf,
  localDateOf,
  localTimeOf,
  offsetMinOf,
  type Period,
  periodSpan,
  WEEKDAYS,
  weekdayOf,
  weekOf,
  yearSpan,
} from './calendar.ts';
export { cautionsFor } from './cautions/cautions.ts';
export { CAUTIONS, type Caution, type CautionId, type Occasion, type Trigger } from './cautions/data.ts';
export {
  DRUM_ADVICE,
  type DrumAdvice,
  type DrumAdviceCode,
  type DrumRunning,
  type DrumRunRules,
  drumAdvice,
  INTERVAL_CHECK,
  STOPPED_STEPS,
  type StoppedAdvice,
  type StoppedStep,
  stoppedAdvice,
} from './drum/advice.ts';
export {
  type DischargeDue,
  type DrumNow,
  type DrumRoom,
  type DrumRules,
  dischargeDue,
  drumNow,
  drumRoom,
  type LoadInside,
} from './drum/drum.ts';
export { drumVolumeM3, feedPerDayKg, SHRINK_PER_DAY, type TakenOut, takeOut } from './drum/flow.ts';
export { drumRulesOf } from './drum/rules.ts';
export { type DrumStands, drumStands } from './drum/stands.ts';
export { isCovered } from './duties/cover-pile.ts';
export { feedOfDrum } from './duties/drum.ts';
export {
  type Coded,
  DUTY_KINDS,
  DUTY_LOGS,
  DUTY_WHYS,
  type Duty,
  type DutyContext,
  type DutyKind,
  type DutyLog,
  type DutyRule,
  type DutyWhy,
  type Fact,
  type Facts,
  HOLD_BACKS,
  type HoldBack,
} from './duties/duty.ts';
export { keptAway } from './duties/keep-away.ts';
export { DUTY_RULES, dutiesNow } from './duties/now.ts';
export { dueDate, parseSchedule, type Schedule } from './duties/schedule.ts';
export { dailyUseKg } from './duties/stock.ts';
export { noTurning } from './duties/weather.ts';
export { feedback, type SourceFeedback } from './feedback.ts';
export { AMBIENT_DAYS, type AmbientMean, type AmbientReading, ambientMean } from './heat/ambient.ts';
export {
  COMPLAINT_FIELDS,
  COMPLAINT_STRENGTHS,
  type ComplaintField,
  complaintLacks,
} from './heat/complaint.ts';
export {
  type CannotTell,
  CURING_DEFAULTS,
  type CuringSettings,
  curingSince,
  type PileStage,
  pileStage,
  selfHeatingClass,
  vesselMature,
} from './heat/curing.ts';
export {
  DANGER_ACTIONS,
  DANGER_BAND_DATA,
  DANGER_BANDS,
  type Danger,
  type DangerAction,
  type DangerBand,
  type DangerBandName,
  dangerBand,
  hottestOf,
  lowestOf,
  type SiteBands,
} from './heat/danger-bands.ts';
export { type DrumProofInput, type DrumWay, drumProof } from './heat/drum-proof.ts';
export {
  type Crossing,
  crossing,
  type DecayFit,
  decayFit,
  type FitPoint,
  tNinety,
} from './heat/fit.ts';
export {
  forecastNearAmbient,
  type HeatForecast,
  NEAR_AMBIENT_RISE,
  type NoForecast,
  type RisePoint,
  risesOf,
} from './heat/forecast.ts';
export {
  ANALYTES,
  type Analyte,
  analyteOf,
  judgeLab,
  LAB_STANDARD_DATA,
  LAB_STANDARDS,
  type LabLimit,
  type LabStandardName,
  type LabsOfBatch,
  type LabVerdict,
  labHolds,
  labsOf,
} from './heat/labs.ts';
export { boilingCelsius, PROBE_TOLERANCE_C, probeCheck, probeHolds } from './heat/probe.ts';
export {
  type CriterionState,
  READINESS_CRITERIA,
  type Readiness,
  type ReadinessCriterion,
  type ReadinessInput,
  type ReadinessNeed,
  readiness,
} from './heat/readiness.ts';
export {
  canLeave,
  type Release,
  type ReleaseGap,
  type ReleaseInput,
  type Trace,
  traceOf,
} from './heat/release.ts';
export {
  type Citation,
  classADays,
  compositeSamples,
  DAY_COUNTS,
  type DayCount,
  DEFAULT_DEPTH,
  type DepthRange,
  type HeatMethod,
  looksAtVectors,
  organicStartingCn,
  type ReadingRhythm,
  RULE_SET_DATA,
  type RuleSet,
  readingRhythm,
  readingsADay,
  VECTOR_ATTRACTION,
} from './heat/rule-sets.ts';
export type { EvidenceRow } from './heat/runs.ts';
export {
  type Sanitising,
  type SanitisingReason,
  sanitising,
  vectorAttraction,
} from './heat/sanitising.ts';
export type { HeatHistory, Now, SanitisingOptions } from './heat/stretches.ts';
export {
  CAUSES,
  type Cause,
  CURE_ACTIONS,
  type CureAction,
  HEAT_FACTS,
  type HeatFact,
  NEVER_WHEN,
  SYMPTOM_DATA,
  SYMPTOMS,
  type Symptom,
} from './heat/symptom-data.ts';
export {
  type Diagnosis,
  diagnose,
  type FoundCause,
  factsOf,
  knowledgeOf,
  type PileKnowledge,
} from './heat/symptoms.ts';
export { HEAT_ASSUMPTIONS, type HeatAssumption, type HeatAssumptionCode, type HeatWhy } from './heat/why.ts';
export { type Acceptance, type AcceptsList, acceptance, acceptedLines } from './mix/accepts.ts';
export {
  bulkForFreeAir,
  compacted,
  freeAirByParticlesPct,
  freeAirHaugPct,
  freeAirLinearPct,
} from './mix/air.ts';
export { carbonFromAshPct, lossByAsh, volatileReductionPct } from './mix/ash.ts';
export { correctionFor, PACKED_KG_PER_M3 } from './mix/correction.ts';
export type {
  Added,
  Addition,
  Correction,
  CorrectionInput,
  LimitCode,
  MixLimits,
  MixPlace,
  MixRecipe,
} from './mix/correction-types.ts';
export { LIMIT_CODES } from './mix/correction-types.ts';
export { INGREDIENTS, type Ingredient, ingredientFor, type OwnFigures } from './mix/ingredients.ts';
export { FINES_CAPS, mixLimits, STRUCTURE_PER_FEED } from './mix/limits.ts';
export { type Mix, type MixPart, type MixTest, mixOf, squeezeTest, testHolds } from './mix/mix.ts';
export {
  dryBasisPct,
  dryFromFreshPct,
  moistureByDrying,
  secondMassForMoisture,
  waterToAddKg,
  wetBasisPct,
} from './mix/moisture.ts';
export { mixPartsOf, ownFiguresAt } from './mix/own-figures.ts';
export { additionOf, type Planned, type PlannedLoad, plannedMix } from './mix/planned.ts';
export {
  carbonToNitrogen,
  elementsOf,
  type Matter,
  massesForTwoGoals,
  nitrogenLacking,
  secondMassForCn,
} from './mix/ratio.ts';
export { loadsAt, mixPlace, mixPlaces, siteAdditions, siteLimits } from './mix/site-mix.ts';
export { exactly, propagate, type Spread, spread } from './mix/spread.ts';
export {
  NO_STOCK,
  type StockChange,
  type StockNow,
  stockAfter,
  stockDensity,
  stockNow,
} from './mix/stock.ts';
export { BULK_DENSITY, densityTest, moistureTest, testAt } from './mix/tested.ts';
export { MIX_FORMULAS, type MixFigure, type MixFigureFrom, type MixFormula, type MixWhy } from './mix/why.ts';
export {
  type FeedKg,
  feedBetween,
  feedOf,
  isFeed,
  type SourceAmount,
  type Stream,
  streamsOf,
  sumDays,
  totalsBetween,
  weekStartsAt,
} from './period.ts';
export { dayOf } from './picture/change.ts';
export { emptyPicture, placeOfPile } from './picture/empty.ts';
export { applyEntry, rebuild } from './picture/fold.ts';
export { batchAt, drumName, type PlaceKind, placeKind } from './picture/places.ts';
export {
  drumProofOf,
  labStandardOf,
  proofThen,
  ruleSetOf,
  sanitisingOptionsOf,
  type Vectors,
  vectorsOf,
} from './picture/proof.ts';
export { settingAt, settingsNamed } from './picture/setting-at.ts';
export type * from './picture/types.ts';
export { isGross, type Load, type LoadWeight, litresOf, weighed } from './picture/weighed.ts';
export {
  type PileLine,
  type WeekChange,
  type WeekReport,
  weekChange,
  weekReport,
  weekTotals,
} from './week.ts';
export {
  bucketDensity,
  deviationOf,
  type Estimate,
  estimateKg,
  FOOD_KG_PER_LITRE,
  publishedKgPerLitre,
  type Tally,
  tallyLess,
  tallyMore,
  usualKg,
} from './weights/estimate.ts';
export {
  type BaseContainers,
  netKg,
  type SettingTimeline,
  type SettingValue,
  tareAt,
  type Weighed,
} from './weights/net.ts';
export { sumKg } from './weights/sum-kg.ts';
export { type CapNow, capsNow, type Pace, type YearSoFar, yearSoFar } from './year.ts';
