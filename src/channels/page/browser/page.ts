import { HIDING, type News, type Trouble } from '../wire.ts';
import { makeKeys, reveal, showDesk } from './desk.ts';
import { newsOverLine, pictureOverLine, random, sayOverLine } from './line.ts';
import { type Kept, openStore, type Slip, type Store } from './store.ts';
import { by, clock, filled, type Show, slipOf, type Texts } from './view.ts';

declare const VERSION: string;

const LANGUAGES = ['en', 'fr', 'es'] as const;
type Language = (typeof LANGUAGES)[number];

const LOOK_EVERY_MS = 25_000;
const LONGEST_REST_MS = 60_000;
/** How long somebody in danger is left without a word. */
const ANSWER_MS = 2000;

async function run(): Promise<void> {
  const allTexts = fetch('texts.json').then((response) => response.json()) as Promise<
    Record<Language, Texts>
  >;
  const store = await openStore();
  const kept = await store.kept();
  if (!kept.phone) kept.phone = random();
  takeLink(kept);
  await store.keep({ phone: kept.phone, ...(kept.token ? { token: kept.token } : {}) });
  const page = makePage(store, kept, await allTexts, await store.slips());
  page.begin();
}

/** The link's token stands behind the `#`: it reaches neither a server's log nor another page. */
function takeLink(kept: Kept): boolean {
  const token = location.hash.slice(1);
  if (!/^[\w-]{10,100}$/.test(token) || token === kept.token) return false;
  kept.token = token;
  return true;
}

function makePage(store: Store, kept: Kept, allTexts: Record<Language, Texts>, slips: Slip[]) {
  const list = by<HTMLOListElement>('slips');
  const field = by<HTMLTextAreaElement>('field');
  const keys = makeKeys(field, () => texts());
  const shown = new Map<string, { mark: string; item: HTMLElement }>();
  let stopped: Trouble | null = null;
  let isOff = false;
  let busySending = false;
  let restMs = 0;
  let timer = 0;
  let lastRow = 0;
  /** The dangers that the card was opened for. */
  let alarm: string[] = [];

  /** What was chosen here, else what the phone speaks; null where it is none of ours. */
  const ownLanguage = (): Language | null => {
    const wanted = [kept.language, ...navigator.languages.map((each) => each.slice(0, 2))];
    return (wanted.find((one) => LANGUAGES.includes(one as Language)) as Language | undefined) ?? null;
  };
  const language = (): Language => ownLanguage() ?? kept.board?.language ?? 'en';
  /** The phone's own way of writing hours and dates in that language. */
  const locale = (): string => navigator.languages.find((each) => each.startsWith(language())) ?? language();
  const texts = (): Texts => allTexts[language()];
  const who = () => ({ token: kept.token ?? '', phone: kept.phone! });
  const isHere = (slip: Slip): boolean => slip.site === null || slip.site === (kept.site ?? slip.site);

  // --- what is seen

  const showFixed = (): void =>
    showDesk({ kept, texts: texts(), language: language(), stopped, alarm, keys });

  function tell(text: string, off = false): void {
    const signal = by('signal');
    if (signal.textContent !== text) signal.textContent = text;
    signal.classList.toggle('off', off);
  }

  /** Only what is new or has changed is touched, so that a screen reader hears it once. */
  function showSlips(anew = false): void {
    const pressed = new Set(
      slips.filter((slip) => slip.choose && isHere(slip)).map((slip) => slip.choose!.row),
    );
    const show: Show = {
      texts: texts(),
      language: locale(),
      timeZone: kept.board?.timeZone,
      now: Date.now(),
      pressed,
      press: (row, index, label) => void write(label, { choose: { row, index } }),
      picture: (row) => pictureOverLine(who(), row),
    };
    const here = slips.filter(isHere);
    by('empty').hidden = here.length > 0 || stopped !== null || !kept.token;
    let after: Element | null = null;
    const atEnd = innerHeight + scrollY >= document.documentElement.scrollHeight - 320;
    let grew = false;
    for (const slip of here) {
      const open = slip.replies.some(
        ({ choices, row, at }) =>
          choices.length > 0 && !pressed.has(row) && show.now - Date.parse(at) < 3_600_000,
      );
      const mark = `${slip.state} ${slip.replies.length} ${open} ${clock(slip.typedAt, show)}`;
      const known = shown.get(slip.key);
      let item = known?.item;
      if (!item || known!.mark !== mark || anew) {
        const fresh = slipOf(slip, show);
        if (item) item.replaceWith(fresh);
        else if (after) after.after(fresh);
        else list.prepend(fresh);
        item = fresh;
        shown.set(slip.key, { mark, item });
        grew = true;
      }
      after = item;
    }
    for (const [key, { item }] of shown) {
      if (here.some((slip) => slip.key === key)) continue;
      item.remove();
      shown.delete(key);
    }
    if (grew && atEnd && after) reveal(after);
  }

  // --- what is written

  async function write(text: string, more: Pick<Slip, 'choose' | 'ask'> = {}): Promise<void> {
    const slip = await store.add({
      key: random(),
      site: kept.site ?? null,
      text,
      typedAt: Date.now(),
      state: 'waiting',
      replies: [],
      ...more,
    });
    slips.push(slip);
    showSlips();
    reveal(shown.get(slip.key)?.item);
    if (slip.text && !slip.choose) watch(slip);
    void send();
  }

  /** Nobody waits for a signal with an arm in a machine: where no answer comes at once, the card opens by itself. */
  function watch(slip: Slip): void {
    const whats = window.dangersIn?.(slip.text) ?? [];
    if (whats.length === 0) return;
    const warn = (): void => {
      if (slip.state !== 'waiting') return;
      alarm = whats;
      showCard(true);
      by('card').focus();
    };
    if (isOff || !navigator.onLine) warn();
    else setTimeout(warn, ANSWER_MS);
  }

  function showCard(isOpen: boolean): void {
    const card = by('card');
    card.hidden = !isOpen;
    document.body.classList.toggle('card-open', isOpen);
    by('emergency').setAttribute('aria-expanded', String(isOpen));
    if (!isOpen) alarm = [];
    showFixed();
    if (isOpen) scrollTo(0, 0);
  }

  // --- what goes out and comes in

  /** What waits goes out in order, each once. Nothing overtakes what waits before it. */
  async function send(): Promise<void> {
    if (busySending || !kept.token || stopped) return;
    busySending = true;
    try {
      for (;;) {
        const slip = slips.find((each) => each.state === 'waiting' && isHere(each));
        if (!slip) break;
        const heard = await sayOverLine(who(), {
          key: slip.key,
          text: slip.text,
          typedAt: slip.typedAt,
          now: Date.now(),
          name: kept.name ?? '',
          language: language(),
          choose: slip.choose,
          ask: slip.ask,
        });
        if (heard.is === 'no-signal') {
          await lost(heard.waitMs);
          break;
        }
        if (heard.is === 'trouble') {
          if (!isOfSlip(heard.what)) {
            end(heard.what);
            break;
          }
          slip.state = heard.what === 'too-old' ? 'too-old' : 'refused';
        } else {
          slip.state = 'sent';
          slip.replies = heard.value.replies;
          found();
        }
        await store.put(slip);
        showSlips();
      }
    } finally {
      busySending = false;
    }
  }

  /** Today and Week: an answer of now, or the last one there was. Never kept for later: it would be of another day. */
  async function look(ask: 'today' | 'week'): Promise<void> {
    const t = texts();
    const said = { key: random(), text: t[ask]!, typedAt: Date.now(), ask };
    tell(t.sending!);
    const heard = await sayOverLine(who(), {
      ...said,
      now: said.typedAt,
      name: kept.name ?? '',
      language: language(),
    });
    if (heard.is === 'ok') {
      found();
      tell('');
      const slip = await store.add({
        ...said,
        site: kept.site ?? null,
        state: 'sent',
        replies: heard.value.replies,
      });
      slips.push(slip);
      showSlips();
      reveal(shown.get(slip.key)?.item);
      return;
    }
    if (heard.is === 'trouble') {
      if (!isOfSlip(heard.what)) end(heard.what);
      return;
    }
    isOff = true;
    const last = slips.filter((slip) => slip.ask === ask && slip.state === 'sent' && isHere(slip)).at(-1);
    const show = { language: locale(), timeZone: kept.board?.timeZone, now: Date.now() };
    tell(last ? filled(t['kept-answer'], { when: clock(last.typedAt, show) }) : t['no-kept-answer']!, true);
    if (last) reveal(shown.get(last.key)?.item);
  }

  async function news(): Promise<void> {
    if (!kept.token) return;
    const asked = kept.token;
    const heard = await newsOverLine(who(), ownLanguage(), lastRow);
    if (asked !== kept.token) return;
    if (heard.is === 'no-signal') return lost(heard.waitMs);
    if (heard.is === 'trouble') return end(heard.what);
    await take(heard.value);
    found();
    await send();
  }

  async function take({ board, replies, version }: News): Promise<void> {
    const changed = JSON.stringify(board) !== JSON.stringify(kept.board) || stopped !== null;
    stopped = null;
    kept.board = board;
    kept.site = board.site;
    for (const slip of slips) {
      if (slip.site === null) {
        slip.site = board.site;
        await store.put(slip);
      }
    }
    await store.keep({ board, site: board.site });
    for (const reply of replies) {
      lastRow = Math.max(lastRow, reply.row);
      if (slips.some((slip) => slip.replies.some(({ row }) => row === reply.row))) continue;
      const typedAt = Date.parse(reply.at);
      const rest = { site: board.site, text: '', typedAt, state: 'sent', replies: [reply] } as const;
      slips.push(await store.add({ key: `row-${reply.row}`, ...rest, replies: [reply] }));
    }
    if (changed) showFixed();
    showSlips();
    if (version !== VERSION) void navigator.serviceWorker?.getRegistration().then((each) => each?.update());
  }

  async function lost(waitMs: number): Promise<void> {
    isOff = true;
    restMs = waitMs || Math.min(LONGEST_REST_MS, Math.max(3000, restMs * 2));
    tell(waitMs ? texts().busy! : texts().offline!, true);
    again(restMs);
  }

  function found(): void {
    restMs = 0;
    if (isOff) tell(texts().online!);
    isOff = false;
    if (!store.lasting) tell(texts()['not-kept']!, true);
  }

  function end(what: Trouble): void {
    if (isOfSlip(what)) return;
    stopped = what;
    tell('');
    showFixed();
    showSlips();
  }

  function again(ms: number): void {
    clearTimeout(timer);
    timer = window.setTimeout(() => {
      again(LOOK_EVERY_MS);
      if (document.visibilityState === 'visible') void news();
    }, ms);
  }

  const now = (): void => {
    again(LOOK_EVERY_MS);
    void news();
  };

  // --- what is pressed

  function listen(): void {
    by('say').addEventListener('submit', (event) => {
      event.preventDefault();
      const text = field.value.replace(HIDING, '').trim();
      if (!text) return;
      field.value = '';
      field.inputMode = 'text';
      keys.show();
      void write(text);
    });
    field.addEventListener('keydown', (event) => {
      if (event.key !== 'Enter' || event.shiftKey || event.isComposing) return;
      event.preventDefault();
      by<HTMLFormElement>('say').requestSubmit();
    });
    by('today').addEventListener('click', () => void look('today'));
    by('week').addEventListener('click', () => void look('week'));
    by('keys').addEventListener('click', keys.turn);
    by('emergency').addEventListener('click', () => showCard(by('card').hidden));
    by('name-form').addEventListener('submit', (event) => {
      event.preventDefault();
      const name = by<HTMLInputElement>('name').value.replace(HIDING, '').trim();
      void called(name || null);
    });
    by('name-skip').addEventListener('click', () => void called(null));
    by('rename').addEventListener('click', () => {
      by('name-form').hidden = false;
      by<HTMLInputElement>('name').value = kept.name ?? '';
      by('name').focus();
    });
    by('language').addEventListener('change', () => {
      kept.language = by<HTMLSelectElement>('language').value;
      void store.keep({ language: kept.language });
      showFixed();
      showSlips(true);
      void news();
    });
    addEventListener('hashchange', () => {
      if (!takeLink(kept)) return;
      stopped = null;
      void store.keep({ token: kept.token! });
      showFixed();
      now();
    });
    addEventListener('online', now);
    addEventListener('offline', () => void lost(0));
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'visible') now();
    });
  }

  async function called(name: string | null): Promise<void> {
    kept.name = name;
    showFixed();
    field.focus();
    await store.keep({ name });
  }

  function stayUpToDate(): void {
    const { serviceWorker } = navigator;
    if (!serviceWorker) return;
    const had = serviceWorker.controller !== null;
    serviceWorker.register('worker.js').catch(() => tell(texts()['not-kept']!, true));
    serviceWorker.addEventListener('controllerchange', () => {
      if (had && field.value === '') location.reload();
    });
  }

  return {
    begin: (): void => {
      showFixed();
      showSlips();
      listen();
      stayUpToDate();
      const reader = document.createElement('script');
      reader.src = 'danger.js';
      document.head.append(reader);
      now();
      void send();
    },
  };
}

const isOfSlip = (what: Trouble): boolean => ['too-old', 'too-large', 'not-readable'].includes(what);

void run();
