// The readers: one for each kind of thing said. A new kind is one reader and one line in these lists.
// Where two could read the same words, the earlier in the list does.
import type { Reader } from '../reading.ts';
import { delivery, rejected } from './arriving.ts';
import { moisture, turning } from './care.ts';
import { chore } from './chores.ts';
import { hours, labResult, level, sample } from './counts.ts';
import { cover } from './covers.ts';
import { discharge, drumSetting } from './drum.ts';
import { jobs } from './jobs.ts';
import { removal, screening } from './leaving.ts';
import { accepts, lookups, show } from './lookups.ts';
import { pileEvent, transfer } from './moves.ts';
import { paperRequest } from './papers.ts';
import { amend, undo } from './put-right.ts';
import { evidence, language, placeRequest, plainRequest, plannedMix } from './requests.ts';
import { closed, setting, tareSetting } from './settings.ts';
import { strangeMaterial } from './stranger.ts';
import { temperature } from './temperature.ts';
import { problem, resolved } from './troubles.ts';
import { weather } from './weather.ts';
import { weighIn } from './weigh-in.ts';

export const READERS: readonly Reader[] = [
  // An empty container's weight and a load sent back would else pass for intake.
  tareSetting,
  rejected,
  // Words that take something out again come before words that put in.
  transfer,
  discharge,
  removal,
  screening,
  delivery,
  drumSetting,
  level,
  labResult,
  chore,
  resolved,
  weighIn,
  moisture,
  temperature,
  cover,
  turning,
  pileEvent,
  sample,
  hours,
  weather,
  problem,
  // Only what nothing else could read.
  strangeMaterial,
];

export const REQUEST_READERS: readonly Reader[] = [
  undo,
  amend,
  jobs,
  show,
  closed,
  setting,
  plannedMix,
  language,
  lookups,
  accepts,
  // `report last week` asks for no week.
  paperRequest,
  placeRequest,
  plainRequest,
  evidence,
];
