import type { Lexicon } from '../../lexicon.ts';
import { doings } from './doings.ts';
import { everyday } from './everyday.ts';
import { foods } from './foods.ts';
import { more } from './more.ts';
import { ordinary } from './ordinary.ts';
import { asking, talk } from './talk.ts';
import { things } from './things.ts';

export const en: Lexicon = {
  language: 'en',
  words: [things, doings, talk, asking, more, foods, ordinary],
  everyday,
  elisions: '',
  commaGroups: true,
  sourceWords: {
    kitchen: 'kitchen|kit|kitch|ktchn|kitchens',
    east: 'east|e',
    west: 'west|w',
    north: 'north|n',
    south: 'south|s',
    cafeteria: 'cafeteria|caf|cafe|caff|cafetaria',
    cafe: 'cafe|coffee shop|coffeeshop',
    'day centre': 'day centre|day center|daycentre|daycenter|day ctr|day care',
    school: 'school|schools',
    'market stall': 'market stall|market|stall|mkt stall|market stand',
    market: 'market|mkt',
    stall: 'stall|stand',
    restaurant: 'restaurant|resto',
    canteen: 'canteen',
    bakery: 'bakery',
    farm: 'farm',
    hotel: 'hotel',
    hospital: 'hospital',
    church: 'church',
    garden: 'garden',
    library: 'library',
    grocery: 'grocery',
    nursery: 'nursery',
    main: 'main',
    upper: 'upper',
    lower: 'lower',
    staff: 'staff',
  },
};
