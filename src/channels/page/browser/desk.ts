import type { Trouble } from '../wire.ts';
import type { Kept } from './store.ts';
import { by, fillCard, filled, made, type Texts } from './view.ts';

type Keys = ReturnType<typeof makeKeys>;

export type Desk = {
  kept: Kept;
  texts: Texts;
  language: string;
  /** Why nothing can be written here, where that is so. */
  stopped: Trouble | null;
  /** The dangers that the card was opened for. */
  alarm: readonly string[];
  keys: Keys;
};

/** All that stands around the log: head, card, name, field and buttons, in the language of the phone. */
export function showDesk(desk: Desk): void {
  const { kept, texts: t, language, keys } = desk;
  document.documentElement.lang = language;
  document.title = kept.board ? `${kept.board.name} · ${t.title}` : (t.title ?? '');
  by('site').textContent = kept.board?.name ?? t.title ?? '';
  by('emergency-word').textContent = by('card').hidden ? t.emergency! : t['emergency-close']!;
  by('card').setAttribute('aria-label', t.emergency!);
  fillCard(by('card'), kept.board, t, desk.alarm);
  by('log').setAttribute('aria-label', t.log!);
  by('empty').textContent = t.empty!;
  for (const [id, text] of [
    ['today', t.today],
    ['week', t.week],
    ['send', t.send],
    ['name-save', t['name-save']],
    ['name-skip', t['name-skip']],
    ['language-word', t.language],
  ] as const)
    by(id).textContent = text ?? '';
  document.querySelector('#say label')!.textContent = t.field!;
  document.querySelector('#name-form label')!.textContent = t['name-ask']!;
  by<HTMLSelectElement>('language').value = language;
  by('rename').textContent = kept.name ? filled(t['name-change'], { name: kept.name }) : t['name-none']!;
  by('name-form').hidden = kept.name !== undefined || desk.stopped !== null || !kept.token;
  keys.show();
  by('words').replaceChildren(
    ...t.words!.split('|').map((word) => {
      const button = made('button', '', word) as HTMLButtonElement;
      button.type = 'button';
      button.addEventListener('click', () => keys.put(word));
      return button;
    }),
  );
  showStop(t, kept.token ? desk.stopped : 'no-link');
}

function showStop(t: Texts, what: Trouble | null): void {
  const stop = by('stop');
  by('desk').hidden = what !== null;
  stop.hidden = what === null;
  if (what === null) {
    stop.replaceChildren();
    return;
  }
  const [head, text] =
    what === 'link-ended'
      ? [t['ended-head'], t.ended]
      : what === 'no-link'
        ? ['', t['no-link']]
        : [t['unknown-head'], t.unknown];
  stop.replaceChildren(...(head ? [made('h2', '', head)] : []), made('p', '', text));
}

/** Which keyboard the field asks for, and the words that are one tap away. */
export function makeKeys(field: HTMLTextAreaElement, texts: () => Texts) {
  function show(): void {
    const t = texts();
    const isDigits = field.inputMode === 'decimal';
    by('keys').textContent = isDigits ? t.letters! : t.digits!;
    by('keys').setAttribute(
      'aria-label',
      `${isDigits ? t.letters : t.digits}: ${isDigits ? t['keys-letters'] : t['keys-digits']}`,
    );
  }

  function take(mode: 'decimal' | 'text'): void {
    field.inputMode = mode;
    show();
    // A keyboard that is open changes only when the field is left and entered again.
    field.blur();
    field.focus();
  }

  return {
    show,
    turn: (): void => take(field.inputMode === 'decimal' ? 'text' : 'decimal'),
    put: (word: string): void => {
      const before = field.value;
      const between = before && !/\s$/.test(before) ? (/[\d.,]$/.test(before) ? ', ' : ' ') : '';
      field.value = `${before}${between}${word} `;
      take('decimal');
      field.setSelectionRange(field.value.length, field.value.length);
    },
  };
}

/** Into the room between head and desk: from its start where it is taller than that. */
export function reveal(item: Element | undefined): void {
  if (!item) return;
  const root = document.documentElement;
  const covers = (each: Element | null): number =>
    each && getComputedStyle(each).position === 'sticky' ? each.getBoundingClientRect().height : 0;
  const [top, bottom] = [covers(document.querySelector('header')), covers(by('desk'))];
  root.style.scrollPadding = `${top}px 0 ${bottom}px`;
  const isTall = item.getBoundingClientRect().height > innerHeight - top - bottom;
  item.scrollIntoView({ block: isTall ? 'start' : 'end' });
}
