import type { Lexicon } from '../../lexicon.ts';
import { doings } from './doings.ts';
import { everyday } from './everyday.ts';
import { foods } from './foods.ts';
import { more } from './more.ts';
import { ordinary } from './ordinary.ts';
import { asking, talk } from './talk.ts';
import { things } from './things.ts';

export const es: Lexicon = {
  language: 'es',
  words: [things, doings, talk, asking, more, foods, ordinary],
  everyday,
  elisions: '',
  commaGroups: false,
  sourceWords: {
    '&link': 'de la|del|de|de el',
    kitchen: 'cocina|cocinas',
    east: 'este|oriente',
    west: 'oeste|poniente',
    north: 'norte',
    south: 'sur',
    cafeteria: 'cafeteria|comedor|caf',
    cafe: 'cafe|cafeteria|cafecito',
    'day centre': 'centro de dia|guarderia',
    school: 'escuela|esc|colegio|primaria|escuelita',
    'market stall':
      'mercado|puesto|puesto del mercado|puesto de mercado|tianguis|puesto del tianguis|mercadito|market|stall',
    market: 'mercado',
    stall: 'puesto',
    restaurant: 'restaurante|restaurant',
    canteen: 'comedor',
    bakery: 'panaderia',
    farm: 'granja',
    hotel: 'hotel',
    main: 'principal',
  },
};
