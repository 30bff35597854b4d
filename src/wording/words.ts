import { FluentBundle, FluentResource, type FluentVariable } from '@fluent/bundle';
import type { Arg, Line, Manner, Say, Words } from '#assistant';
import { LANGUAGES, type Language } from '#records';
import * as as from './format.ts';

/** The texts of one language, as the `.ftl` file holds them. */
export type Texts = Readonly<Record<Language, string>>;

type Voice = { bundle: FluentBundle; language: Language };

const capital = (text: string): string =>
  text.replace(/^(#\d+ )?(\p{Ll})/u, (_all, head = '', first) => head + first.toUpperCase());

/** `de copeaux`, `d'eau`: the French word is cut before a vowel. */
const elided = (text: string): string => (/^[aeiouàâéèêëîïôœù]/i.test(text) ? `d'${text}` : `de ${text}`);

/** What a source line says of itself, the longer ones first. */
const CITED =
  /common practice on one kind of machine, no source|common practice, no source|the site and local codes come first|from memory|seen as a copy|the site's settings|moisture and nitrogen|carbon and ash|of volatile solids in 12 days|by definition|range(?= from memory)|carbon(?= from memory)|nitrogen(?= from memory)|the site\b|\bthe rest\b|\bseen\b/g;

/**
 * Makes the port through which an outcome becomes words. A missing text or value is complained of (tests take that
 * for a failure) and never stops a reply. Throws at once on a text file that is not Fluent.
 */
export function makeWords(
  texts: Texts,
  complain: (what: string) => void,
): Words & { has(language: Language, id: string): boolean } {
  const voices = new Map<Language, Voice>();
  for (const language of LANGUAGES) {
    const bundle = new FluentBundle(language, {
      useIsolating: false,
      functions: {
        CAP: ([value]) => capital(String(value ?? '')),
        DE: ([value]) => elided(String(value ?? '')),
      },
    });
    const errors = bundle.addResource(new FluentResource(texts[language]));
    if (errors.length > 0) throw new Error(`texts of ${language}: ${errors.map(String).join('; ')}`);
    voices.set(language, { bundle, language });
  }

  function phrase(voice: Voice, id: string, args: Record<string, FluentVariable>): string {
    const message = voice.bundle.getMessage(id);
    if (!message?.value) {
      complain(`no text "${id}" in ${voice.language}`);
      // A text that a translator has not got to yet is said in English rather than not at all.
      return voice.language === 'en' ? id : phrase(voices.get('en')!, id, args);
    }
    const errors: Error[] = [];
    const text = voice.bundle.formatPattern(message.value, args, errors);
    if (errors.length > 0) complain(`text "${id}" in ${voice.language}: ${errors.map(String).join('; ')}`);
    return text;
  }

  /** A word of the contract in the reader's language; one that only the site knows is its own word. */
  function term(voice: Voice, of: string, name: string, args: Record<string, FluentVariable> = {}): string {
    const id = `${of}-${name.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-')}`;
    return voice.bundle.hasMessage(id) ? phrase(voice, id, args) : name;
  }

  /** What a button offers; a number with all its digits, its point as this language writes it. */
  function choice(voice: Voice, name: string, how: Manner): string {
    const isNumber = /^-?\d+(\.\d+)?( \S+)?$/.test(name);
    if (isNumber) return name.replace('.', as.number(1.5, 1, how).slice(1, 2));
    if (/^\d{4}-\d{2}-\d{2}$/.test(name)) return date(voice, name, how);
    // A place or a material is offered under its name in the reader's language, as the reply names it.
    const named = place(voice, name);
    if (named !== name) return named;
    const said = term(voice, 'choice', name);
    return said === name ? term(voice, 'material', name) : said;
  }

  function place(voice: Voice, name: string): string {
    const [, head, rest] = /^(pile|bay|drum|exit|ambient|floor|lift)(?: (.+))?$/.exec(name) ?? [];
    if (!head) return name;
    return phrase(voice, `place-${head}`, { name: rest ?? '', named: rest ? 'yes' : 'no' }).trim();
  }

  function container(voice: Voice, arg: Extract<Arg, { container: string }>, how: Manner): string {
    const id = `container-${arg.container}`;
    const shown = as.number(arg.count, 2, how);
    if (!voice.bundle.hasMessage(id)) {
      return arg.count === 1
        ? [arg.container, arg.label].filter(Boolean).join(' ')
        : `${shown} ${arg.container}`;
    }
    const word = phrase(voice, id, { count: arg.count, shown });
    return arg.label ? `${word} ${arg.label}` : word;
  }

  function date(voice: Voice, value: string, how: Manner): string {
    const day = value.slice(0, 10);
    const ago = as.daysFrom(day, how.today);
    const named = ago === 0 ? 'today' : ago === 1 ? 'yesterday' : ago === -1 ? 'tomorrow' : null;
    const text = named ? phrase(voice, `date-${named}`, { day: as.day(day, how) }) : as.day(day, how);
    return value.length > 10
      ? phrase(voice, 'date-at', { date: text, clock: as.clock(value.slice(11, 16), how) })
      : text;
  }

  function degrees(voice: Voice, arg: Extract<Arg, { celsiusList: number[] }>, how: Manner): string {
    const values = arg.celsiusList.map((celsius, i) => {
      const high = arg.upTo?.[i];
      const text = as.temperature(celsius, how, false);
      const range = high == null ? text : `${text}–${as.temperature(high, how, false)}`;
      const point = arg.points?.[i];
      return point == null ? range : `${term(voice, 'point', String(point))} ${range}`;
    });
    return `${values.join(', ')} °${how.units.temperature}`;
  }

  /** Titles of books and rules are names; how firm they are is said in the reader's language. */
  const cited = (voice: Voice, source: string): string =>
    source.replace(CITED, (found) => phrase(voice, `cite-${found.replaceAll(/[^a-z]+/g, '-')}`, {}));

  const range = (low: string, high: string): string => (low === high ? low : `${low}–${high}`);

  function value(voice: Voice, arg: Arg, how: Manner): FluentVariable {
    if ('kg' in arg) return as.mass(arg.kg, how, !arg.bare, arg.digits);
    if ('litres' in arg) return as.volume(arg.litres, how);
    if ('celsius' in arg) return as.temperature(arg.celsius, how);
    if ('celsiusList' in arg) return degrees(voice, arg, how);
    if ('rise' in arg) return as.rise(arg.rise, how);
    if ('cm' in arg) return as.length(arg.cm, how);
    if ('mm' in arg) return `${as.number(arg.mm, 1, how)} mm`;
    if ('min' in arg) return `${as.number(arg.min, 0, how)} min`;
    if ('pct' in arg) return `${as.number(arg.pct, 0, how)} %`;
    if ('pctRange' in arg) {
      return range(as.number(arg.pctRange[0], 0, how), as.number(arg.pctRange[1], 0, how));
    }
    if ('kgPerM3' in arg) return as.density(arg.kgPerM3, how);
    if ('kgPerM3Range' in arg) {
      const [low, high] = arg.kgPerM3Range.map((each) => as.density(each, how)) as [string, string];
      return range(low.replace(/ .*/, ''), high);
    }
    if ('tonnes' in arg) {
      return how.units.mass === 'lb'
        ? `${as.number(arg.tonnes * 2204.62262185, 0, how)} lb`
        : `${as.number(arg.tonnes, 2, how)} t`;
    }
    if ('number' in arg) return as.number(arg.number, arg.digits ?? 2, how);
    if ('date' in arg) return date(voice, arg.date, how);
    if ('day' in arg) return as.shortDay(arg.day, how);
    if ('weekday' in arg) return as.weekday(arg.weekday, how);
    if ('month' in arg) return as.month(arg.month, how);
    if ('clock' in arg) return as.clock(arg.clock, how);
    if ('place' in arg) return place(voice, arg.place);
    if ('material' in arg) return term(voice, 'material', arg.material);
    if ('container' in arg) return container(voice, arg, how);
    if ('count' in arg) return arg.count;
    if ('source' in arg) return arg.source;
    if ('entry' in arg) return String(arg.entry);
    if ('term' in arg)
      return arg.of === 'choice' ? choice(voice, arg.term, how) : term(voice, arg.of, arg.term);
    if ('names' in arg) return as.list(arg.names, how);
    if ('say' in arg) return one(arg.say, how);
    if ('cite' in arg) return cited(voice, arg.cite);
    return arg.text;
  }

  function one(say: Say, how: Manner): string {
    const voice = voices.get(how.language)!;
    const args: Record<string, FluentVariable> = {};
    for (const [name, arg] of Object.entries(say.args ?? {})) args[name] = value(voice, arg, how);
    return phrase(voice, say.id, args);
  }

  const line = (says: Line, how: Manner): string =>
    (Array.isArray(says) ? says.map((each) => one(each, how)).join(' · ') : one(says, how)).trimEnd();

  return {
    text: (lines, how) => lines.map((each) => line(each, how)).join('\n'),
    label: one,
    has: (language, id) => voices.get(language)?.bundle.hasMessage(id) ?? false,
  };
}
