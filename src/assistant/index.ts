// The one use case: a message comes in, an outcome goes out, and the log book holds both in one transaction.
// What it needs of the outside stands in ports.ts; what it says, before it is words, in say.ts.
export {
  type Assistant,
  type Board,
  type Complain,
  type Home,
  makeAssistant,
  type Received,
} from './assistant.ts';
export { type LineSeen, lineSeen } from './line-seen.ts';
export { gapSay } from './matters/gate.ts';
export { type Drawing, pictureOf } from './pictures-of/drawing.ts';
export { heatDrawing } from './pictures-of/heat.ts';
export { weekDrawing } from './pictures-of/week.ts';
export { yearDrawing } from './pictures-of/year.ts';
export type * from './ports.ts';
export type { Arg, Line, Say } from './say.ts';
export { say } from './say.ts';
export { settingsOf } from './settings-of.ts';
export { type SnapshotsVerdict, snapshotsHold } from './snapshots-hold.ts';
