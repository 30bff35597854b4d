import type { Lexicon } from '../../lexicon.ts';
import { doings } from './doings.ts';
import { foods } from './foods.ts';
import { more } from './more.ts';
import { ordinary } from './ordinary.ts';
import { asking, talk } from './talk.ts';
import { things } from './things.ts';

export const fr: Lexicon = {
  language: 'fr',
  words: [things, doings, talk, asking, more, foods, ordinary],
  elisions: 'l|d|j|n|s|c|m|t|qu|jusqu|lorsqu|puisqu|quelqu|quoiqu|z',
  commaGroups: false,
  sourceWords: {
    '&link': "de l|de la|du|de|d|a l|cote|de l'",
    kitchen: 'cuisine|cuis|cui|cuisines',
    east: 'est|e',
    west: 'ouest|o|oues',
    north: 'nord|n',
    south: 'sud|s',
    cafeteria: 'cafeteria|caf|cafet|cafete|cafetaria',
    cafe: 'cafe',
    'day centre': 'centre de jour|cdj|centre jour|c de jour|garderie de jour',
    school: 'ecole|l ecole',
    'market stall': 'marche|kiosque|kiosque du marche|etal|etal du marche|stand du marche',
    restaurant: 'restaurant|resto',
    canteen: 'cantine',
    bakery: 'boulangerie',
    farm: 'ferme',
    hotel: 'hotel',
    main: 'principale|principal',
    upper: 'haut',
    lower: 'bas',
  },
};
