import { type Period, periodSpan } from '#core';
import type { Request } from '#records';
import type { Draft } from '../draft.ts';
import type { PaperSpec } from '../ports.ts';
import { say } from '../say.ts';
import { settingsOf } from '../settings-of.ts';

const PERIODS: readonly string[] = ['week', 'month', 'season', 'year'] satisfies Period[];
const ENDS = { xlsx: 'xlsx', csv: 'zip', json: 'json' } as const;

/** `export` and `report`: a file with the reply, made when it is sent. What it holds of people is for coordinators. */
export function paper(draft: Draft, request: Request): void {
  // `report smell at B` tells of something, and asks for nothing.
  if (request.said === 'report' && draft.entries.length > 0) return;
  if (!draft.mayDecide) {
    draft.lines.push(say('paper-coordinators'));
    return;
  }
  const settings = settingsOf(draft.picture(), draft.today);
  const asked = spanOf(draft, request);
  const spec: PaperSpec =
    request.request === 'report'
      ? { paper: 'report', ...asked, language: draft.manner.language }
      : {
          paper: 'export',
          ...asked,
          format: formatOf(request),
          language: settings.languages[0] ?? 'en',
        };
  const end = spec.paper === 'report' ? 'pdf' : ENDS[spec.format];
  const days = spec.from === WHOLE ? spec.to : `${spec.from}-${spec.to}`;
  const name = `${plainName(settings.name)}-${days}.${end}`;
  draft.lines.push(
    say(spec.from === WHOLE ? 'paper-whole' : `paper-${spec.paper}`, {
      from: { date: spec.from },
      to: { date: spec.to },
    }),
  );
  draft.file = { name, paper: spec, failed: draft.word(say('paper-failed', { what: { text: spec.paper } })) };
}

/** Before any line: the whole book. */
const WHOLE = '0001-01-01';

function spanOf(draft: Draft, request: Request): { from: string; to: string } {
  const { weekStarts, yearStarts } = draft.picture().base;
  const { today } = draft;
  const no = request.request === 'report' ? 'month' : null;
  if (typeof request.from === 'string') {
    const to = typeof request.to === 'string' && request.to < today ? request.to : today;
    return { from: [request.from, to].sort()[0]!, to };
  }
  const said = PERIODS.find((each) => each === request.span) ?? (request.which === 'last' ? 'month' : no);
  if (said === null) return { from: WHOLE, to: today };
  return periodSpan(said as Period, today, { weekStarts, yearStarts }, request.which === 'last');
}

const formatOf = ({ format }: Request): keyof typeof ENDS =>
  format === 'csv' || format === 'json' ? format : 'xlsx';

/** `alder-court-compost-yard` */
const plainName = (name: string): string =>
  name
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-|-$/g, '');
