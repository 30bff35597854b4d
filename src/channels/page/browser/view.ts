import type { Board, Reply } from '../wire.ts';
import type { Slip } from './store.ts';

export type Texts = Record<string, string>;

export const by = <T extends HTMLElement>(id: string): T => document.getElementById(id) as T;

/** An element with text in it. Always as text: nothing that somebody wrote is ever read as markup. */
export function made(tag: string, className: string, text = ''): HTMLElement {
  const element = document.createElement(tag);
  if (className) element.className = className;
  if (text) element.textContent = text;
  return element;
}

export const filled = (text: string | undefined, args: Record<string, string>): string =>
  (text ?? '').replace(/\{(\w+)\}/g, (hole, name: string) => args[name] ?? hole);

/** How long an undo is offered: later it would only be refused. */
const UNDO_MS = 3_600_000;

export type Show = {
  texts: Texts;
  language: string;
  timeZone: string | undefined;
  now: number;
  /** Rows whose buttons have been pressed on this phone. */
  pressed: ReadonlySet<number>;
  press(row: number, index: number, label: string): void;
  picture(row: number): Promise<string | null>;
};

export function slipOf(slip: Slip, show: Show): HTMLLIElement {
  const { texts } = show;
  const item = made('li', `slip ${slip.state}`) as HTMLLIElement;
  item.dataset.key = slip.key;
  const at = made('time', 'at', clock(slip.typedAt, show)) as HTMLTimeElement;
  at.dateTime = new Date(slip.typedAt).toISOString();
  item.append(at);
  const text = slip.choose ? filled(texts.chosen, { label: slip.text }) : slip.text;
  const typed = made('p', 'typed', text);
  typed.dir = 'auto';
  item.append(typed);
  for (const reply of slip.replies) item.append(...replyOf(reply, show));
  const state =
    slip.state === 'waiting'
      ? texts.waiting
      : slip.state === 'sent'
        ? slip.replies.length === 0
          ? texts['no-answer']
          : ''
        : texts[slip.state];
  if (state) item.append(made('p', 'state', state));
  return item;
}

function replyOf(reply: Reply, show: Show): HTMLElement[] {
  const parts: HTMLElement[] = [];
  if (reply.text) {
    const text = made('p', 'reply', reply.text);
    text.dir = 'auto';
    parts.push(text);
  }
  if (reply.picture) {
    // Its words stand there until it is, and for good where it cannot be had.
    const { alt } = reply.picture;
    const words = made('p', 'reply', alt);
    parts.push(words);
    void show.picture(reply.row).then((source) => {
      if (!source) return;
      const image = made('img', '') as HTMLImageElement;
      image.alt = alt;
      image.src = source;
      words.replaceWith(image);
    });
  }
  if (reply.file) {
    const details = made('details', '');
    details.append(
      made('summary', '', filled(show.texts.file, { name: reply.file.name })),
      made('pre', 'reply', reply.file.text),
    );
    parts.push(details);
  }
  const isFresh = show.now - Date.parse(reply.at) < UNDO_MS;
  const open = reply.choices
    .map((choice, index) => ({ ...choice, index }))
    .filter(({ undo }) => !undo || isFresh);
  if (open.length > 0 && !show.pressed.has(reply.row)) {
    const row = made('div', 'row choices');
    for (const { label, index } of open) {
      const button = made('button', '', label) as HTMLButtonElement;
      button.type = 'button';
      button.addEventListener('click', () => show.press(reply.row, index, label));
      row.append(button);
    }
    parts.push(row);
  }
  return parts;
}

export function clock(at: number, show: Pick<Show, 'language' | 'timeZone' | 'now'>): string {
  const zone = show.timeZone ? { timeZone: show.timeZone } : {};
  const day = (time: number) => new Date(time).toLocaleDateString('en-CA', zone);
  const time = new Date(at).toLocaleTimeString(show.language, {
    hour: 'numeric',
    minute: '2-digit',
    ...zone,
  });
  if (day(at) === day(show.now)) return time;
  return `${new Date(at).toLocaleDateString(show.language, { day: 'numeric', month: 'short', ...zone })} ${time}`;
}

/** Whom to call, then what to do in each danger; what is known to have happened stands before all else. */
export function fillCard(
  card: HTMLElement,
  board: Board | undefined,
  texts: Texts,
  whats: readonly string[] = [],
): void {
  if (!board) {
    card.replaceChildren(made('p', '', texts['emergency-none']));
    return;
  }
  const told = (danger: Board['dangers'][number]) => danger.whats.some((what) => whats.includes(what));
  const parts: HTMLElement[] = board.dangers.filter(told).flatMap(sectionOf);
  const number = board.emergencyNumber?.replaceAll(/[^\d+*#]/g, '');
  if (number && board.emergencyNumber) {
    const call = made(
      'a',
      'call',
      filled(texts['emergency-call'], { number: board.emergencyNumber }),
    ) as HTMLAnchorElement;
    call.href = `tel:${number}`;
    parts.push(call);
  }
  parts.push(made('p', '', board.call));
  parts.push(...board.dangers.filter((danger) => !told(danger)).flatMap(sectionOf));
  parts.push(made('p', 'state', texts['emergency-rules']));
  card.replaceChildren(...parts);
}

const sectionOf = ({ title, text }: Board['dangers'][number]): HTMLElement[] => [
  made('h2', '', title[0]!.toUpperCase() + title.slice(1)),
  made('p', '', text),
];
