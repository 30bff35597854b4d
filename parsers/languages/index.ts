// The languages of the crews: each a folder of words as data. A new language is one folder and one line here.
// No reader knows a language; readers know concepts, and these lists give each concept its words.
import type { Language } from '#records';
import type { Lexicon } from '../lexicon.ts';
import { en } from './en/index.ts';
import { es } from './es/index.ts';
import { fr } from './fr/index.ts';

export const LEXICONS: Readonly<Record<Language, Lexicon>> = { en, fr, es };
