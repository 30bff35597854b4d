import { describe, expect, test } from 'vitest';
import { HOSPITAL, startScenario } from './harness.ts';

/** English that no French or Spanish reply may hold; names, units and codes of rules aside. */
const ENGLISH =
  /(?<!\p{L})(?:the|and|of|with|set|not|pile|drum|cart|bucket|chips|today|yesterday|week|year|net weight|about|call|open|nobody|day count|hours)(?!\p{L})/iu;
const ISOLATION = /[\u2066-\u2069\u200e\u200f\u202a-\u202e]/;

type Step = [said: string, expected: RegExp, from?: string];

const FRENCH: Step[] = [
  ['aide', /^Noter ce qui est fait/],
  ['bac vide 15,5', /tare bac 15,5 kg$/],
  ['règle objectif 60 t', /objectif 60 t par an$/],
  ['règle bilan lundi 7:00', /bilan de la semaine, lundi 7 h 00$/],
  ["règle numéro d'urgence 911", /numéro d'urgence 911$/],
  ['règle adresse 12 chemin du Bois', /12 chemin du Bois/],
  ['règle secouriste Rosa', /Rosa/],
  ['règle gens fragiles hôpital', /hôpital ou foyer$/],
  ['règle norme vessel-3d', /règle de chaleur vessel-3d/],
  ['réglages', /Tare bac : 15,5 kg/],
  ['3 bacs 61 58,5 70', /Bac 43 kg net \(58,5 − 15,5\)[\s\S]*Ensemble 143 kg net/, 'Marie'],
  ['copeaux 2 brouettes', /2 brouettes de copeaux/, 'Marie'],
  ['B 41 43 39, ambiant 12', /Tas B 41, 43, 39 °C/, 'Marie'],
  ['pourquoi', /Admis : un jour compte par son relevé/, 'Marie'],
  ['retourné C', /Retourné : tas C/, 'Marie'],
  ['bac 665', /trop lourd pour ça\. Lequel \?\nPas encore compté\./, 'Marie'],
  ['66,5', /Bac 51 kg net \(66,5 − 15,5\)/, 'Marie'],
  ['tambour 3/4 plein', /Tambour, niveau · plein à 75 %/, 'Marie'],
  ['vidé le tambour sur C', /Tambour vidé sur tas C/, 'Marie'],
  ['ça sent mauvais à B', /odeur · tas B/, 'Marie'],
  ["plus d'odeur à B", /Terminé : odeur · tas B/, 'Marie'],
  ['annule', /^Annulé : #\d+\. Reste au cahier, pas compté\.$/, 'Marie'],
  [
    'la main de Luc est coincée dans le tambour',
    /^APPUYEZ SUR L'ARRÊT ROUGE, COUPEZ LE COURANT\. [^\n]*Appelez le 911 tout de suite\.\nDites où : 12 chemin du Bois\n/,
    'Marc',
  ],
  ["aujourd'hui", /Personne blessée \(#\d+\) : ouvert depuis aujourd'hui/, 'Marie'],
  ['semaine', /^Semaine en cours, depuis le 23 nov[\s\S]*Merci à Marie et Marc\.$/, 'Marie'],
  ['année', /de 60 t/, 'Marie'],
  ['comment va B ?', /^Tas B/, 'Marie'],
  ['3 bacs qui arrivent, combien de copeaux ?', /brouettes de copeaux/, 'Marie'],
  ['C 71 72', /trop chaud/, 'Marie'],
  ['tambour bloqué', /Avant d'ouvrir ou d'entrer : arrêt enfoncé/, 'Marie'],
  ['oublie-moi', /Les lignes restent, sous le seul numéro/, 'Marie'],
];

const SPANISH: Step[] = [
  ['ayuda', /^Anote lo que hizo/],
  ['carrito vacío 15,5', /tara carrito 15,5 kg$/],
  ['pon meta 60 t', /meta 60 t al año$/],
  ['pon resumen lunes 7:00', /resumen de la semana, lunes 7:00$/],
  ['pon número de emergencia 112', /número de emergencia 112$/],
  ['pon dirección calle del Bosque 12', /calle del Bosque 12/],
  ['pon primeros auxilios Rosa', /Rosa/],
  ['pon gente delicada escuela', /gente delicada cerca: escuela$/],
  ['pon norma vessel-3d', /regla de calor vessel-3d/],
  ['ajustes', /Tara carrito: 15,5 kg/],
  ['3 carritos 61 58,5 70', /Carrito 43 kg neto \(58,5 − 15,5\)[\s\S]*En total 143 kg neto/, 'Beto'],
  ['astillas 2 carretillas', /2 carretillas de astillas/, 'Beto'],
  ['B 41 43 39, ambiente 12', /Pila B 41, 43, 39 °C/, 'Beto'],
  ['por qué', /Supuesto: las lecturas sin profundidad/, 'Beto'],
  ['volteamos la C', /Volteo: pila C/, 'Beto'],
  ['carrito 665', /¿Cuál\?\nTodavía no cuenta\./, 'Beto'],
  ['66,5', /Carrito 51 kg neto \(66,5 − 15,5\)/, 'Beto'],
  ['huele mal la pila B', /olor · pila B/, 'Beto'],
  ['ya no huele la pila B', /Resuelto: olor · pila B/, 'Beto'],
  ['deshacer', /^Deshecho: #\d+\. Queda en la bitácora, no cuenta\.$/, 'Beto'],
  [
    'la mano de pedro está atorada en el tambor',
    /^APRIETEN EL PARO ROJO, CORTEN LA LUZ\. [^\n]*Llamen ya al 112\.\nDigan dónde: calle del Bosque 12\n/,
    'Ana',
  ],
  ['hoy', /Alguien herido \(#\d+\): abierto desde hoy/, 'Beto'],
  ['semana', /^Esta semana, desde el 23 nov[\s\S]*Gracias a Beto y Ana\.$/, 'Beto'],
  ['año', /de 60 t/, 'Beto'],
  ['¿cómo va la B?', /^Pila B/, 'Beto'],
  ['vienen 3 carritos, ¿cuántas astillas?', /carretillas de astillas/, 'Beto'],
  ['C 71 72', /demasiado/, 'Beto'],
  ['tambor atascado', /Antes de abrir o entrar: paro apretado/, 'Beto'],
  ['olvídame', /Las líneas se quedan, solo con el número/, 'Beto'],
];

describe.each([
  ['fr', FRENCH],
  ['es', SPANISH],
] as const)('a set-up, a day, a doubt and an emergency in %s', (language, steps) => {
  test('every reply is said in that language, with its numbers as it writes them', () => {
    const containers = { ...HOSPITAL.containers, cart: { litres: 240, holds: 'food-scraps' } };
    const crew = startScenario({ ...HOSPITAL, languages: [language], containers, sources: ['Roche'] });
    for (const [said, expected, from] of steps) {
      const setup = from === undefined ? { from: 'Luc', coordinator: true } : { from };
      const turn = crew.say(said, setup);
      const [reply] = turn.replies;
      const text = (reply?.text ?? '').replaceAll(/[\u00a0\u202f]/g, ' ');
      expect(text, said).toMatch(expected);
      const told = [text, ...turn.posts.map((post) => post.text)].join('\n');
      const ours = told
        .split('\n')
        .filter((line) => !/^(?:Source|Fuente)/.test(line))
        .join('\n')
        .replaceAll(
          /«[^»]*english please[^»]*»|english please|vessel-3d|Fernhill Hospital grounds|Europe\/\w+/gi,
          '',
        );
      expect(ours, said).not.toMatch(ENGLISH);
      expect(told, said).not.toMatch(ISOLATION);
      expect(ours, said).not.toMatch(/\d\.\d(?!\d{2})|undefined|NaN|[{}]/);
      for (const choice of reply?.choices ?? []) expect(choice, said).not.toMatch(ENGLISH);
    }
  });
});
