import type { Request } from '#records';
import { paperWord } from '../paper-words.ts';
import { bare, isSoft, type Reader } from '../reading.ts';
import type { Tok } from '../tokens.ts';

const PAPERS = ['export', 'report'] as const;
const BESIDE = new Set(['ask', 'fill', 'greet', 'dateword', 'be']);

/** `export csv`, `export march`, `report last year`, `report 2025`, `export from 1 March to 15 April`. */
export const paperRequest: Reader = {
  rule: 'request paper',
  on: ['req', 'slash'],
  read(tokens, scope) {
    const name = PAPERS.find((each) => tokens.some((tok) => asksFor(tok, each)));
    if (!name) return null;
    const said = saidOf(tokens, name);
    if (!said) return null;
    const { dates, years, months, ...fields } = said;
    const span = dates.length > 0 ? datesOf(dates) : monthOrYear(months, years, scope.context.nowLocal);
    if (!span) return null;
    return [{ request: bare({ request: name, ...fields, ...span }) as Request }];
  },
};

const asksFor = (tok: Tok, name: string): boolean =>
  tok.senses.some(({ cls, val }) => cls === 'req' && val === name);

type Said = {
  format?: 'xlsx' | 'csv' | 'json';
  span?: 'week' | 'month' | 'season' | 'year';
  which?: 'last';
  dates: string[];
  months: number[];
  years: number[];
};

/** What the words beside the name say; null where one says something else. */
function saidOf(tokens: readonly Tok[], name: string): Said | null {
  const said: Said = { dates: [], months: [], years: [] };
  for (const tok of tokens) {
    const own = asksFor(tok, name);
    // `last month` is a date that names no day: its words are read like any others.
    if (tok.k === 'd' && tok.date?.when) {
      said.dates.push(tok.date.when.slice(0, 10));
      continue;
    }
    if (tok.k === 'n') {
      const { value, unit, decimals } = tok.n!;
      if (unit !== null || decimals > 0 || value < 2000 || value > 2100) return null;
      said.years.push(value);
      continue;
    }
    if (tok.k === 'p') {
      if (!isSoft(tok) && !own) return null;
      continue;
    }
    for (const word of tok.s.split(/[ ']/)) {
      const says = paperWord(word);
      if (!says) {
        // The words of its own name say no more than that: `send me the report`.
        if (own || tok.senses.some(({ cls }) => BESIDE.has(cls))) continue;
        return null;
      }
      if ('format' in says) said.format = says.format;
      else if ('span' in says) said.span = says.span;
      else if ('month' in says) said.months.push(says.month);
      else if ('last' in says) said.which = 'last';
    }
  }
  if (name === 'report') delete said.format;
  return said.months.length > 1 || said.years.length > 1 || said.dates.length > 2 ? null : said;
}

function datesOf(dates: readonly string[]): { from: string; to?: string } | null {
  const [from, to] = dates;
  if (to !== undefined && to < from!) return null;
  return { from: from!, ...(to !== undefined && { to }) };
}

/** A month with no year is the most recent one, this month among them. */
function monthOrYear(
  [month]: readonly number[],
  [year]: readonly number[],
  nowLocal: string,
): { from?: string; to?: string } {
  if (month === undefined) return year === undefined ? {} : { from: `${year}-01-01`, to: `${year}-12-31` };
  const now = { year: Number(nowLocal.slice(0, 4)), month: Number(nowLocal.slice(5, 7)) };
  const its = year ?? (month > now.month ? now.year - 1 : now.year);
  const days = month === 2 ? (isLeap(its) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;
  const head = `${its}-${String(month).padStart(2, '0')}`;
  return { from: `${head}-01`, to: `${head}-${days}` };
}

const isLeap = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
