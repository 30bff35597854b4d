import type { ReadContext } from '#parsers';
import type { Request, RequestName } from '#records';
import { amend } from '../amend.ts';
import type { Draft } from '../draft.ts';
import { say } from '../say.ts';
import { undo, undoLast } from '../undo.ts';
import { accepts } from './accepts.ts';
import { answer } from './answer.ts';
import { balance } from './balance.ts';
import { closed } from './closed.ts';
import { diagnose } from './diagnose.ts';
import { duties } from './duties.ts';
import { feedback } from './feedback.ts';
import { handover } from './handover.ts';
import { help, newHere } from './help.ts';
import { mine, show } from './lines-back.ts';
import { mix } from './mix.ts';
import { paper } from './paper.ts';
import { forgetMe, language, role } from './people.ts';
import { recipe } from './recipe.ts';
import { room } from './room.ts';
import { setting, settings } from './setting.ts';
import { share } from './share.ts';
import { history, status } from './status.ts';
import { stock } from './stock.ts';
import { today } from './today.ts';
import { week, year } from './totals.ts';
import { trace } from './trace.ts';
import { why } from './why.ts';

type Answer = (draft: Draft, request: Request, context: ReadContext) => void;

/** What answers each request. A name that is missing here does not compile. */
const ANSWERS: Record<RequestName, Answer> = {
  today,
  week,
  year,
  mine,
  mix,
  help,
  status,
  history,
  undo: (draft, request) =>
    request.entry == null ? undoLast(draft, request.count ?? 1) : undo(draft, [request.entry]),
  amend: (draft, request) => amend(draft, request),
  done: duties,
  claim: duties,
  release: duties,
  postpone: duties,
  answer,
  setting,
  settings,
  duty: duties,
  closed,
  why,
  show,
  export: paper,
  report: paper,
  share,
  accepts,
  language,
  'forget-me': forgetMe,
  role,
  handover,
  'new-here': newHere,
  room,
  trace,
  feedback,
  balance,
  diagnose,
  stock,
  recipe,
};

/** A link that hangs by the scale may log and ask: what the site is, and who may what, is not for it to change. */
const NOT_FOR_GUESTS: readonly RequestName[] = [
  'setting',
  'duty',
  'closed',
  'role',
  'share',
  'export',
  'report',
];

export function answerRequest(draft: Draft, request: Request, context: ReadContext): void {
  if (draft.incoming.guest && NOT_FOR_GUESTS.includes(request.request)) {
    draft.lines.push(say('guest-sets-nothing'));
    return;
  }
  ANSWERS[request.request](draft, request, context);
}
