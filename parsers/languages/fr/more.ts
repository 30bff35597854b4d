import type { Words } from '../../lexicon.ts';

/** The rest of the French words: links, checks, laboratory terms, and what turns up beside a trouble. */
export const more: Words = {
  // A link that says something lies on a pile, not in it.
  atop: 'par dessus|par dessus le|dessus|au dessus de|par dessus la',
  be: 'est|sont|etait|etaient|c est|etre|ete|reste|rendu|etait a',
  // What opens a clause that only tells when or why.
  aside:
    'pour que|pour laisser|pour aerer|au cas ou|pour secher|pour la nuit|pour l hiver|avant|avant de|avant la|avant le|avant que|apres|apres la|apres le|parce que|car|puisque|pendant que|pour que|a cause de|a cause du|a cause de la',
  // What is said of the air before its degrees.
  itis: 'il fait|il faisait|on a',
  numero: 'numero|num|nr|n°',
  between: 'entre',
  fill: 'avec couvercle|avec le couvercle|avec son couvercle|sans couvercle|apres brassage|avant brassage|apres le brassage|avant le brassage|apres avoir brasse|oublie de noter|oublie d ecrire|oublie de marquer|j ai oublie de noter|j avais oublie de noter|oublie de mettre|oublie de dire|pas note|pour le registre|voici aujourd hui|partout|d un bord a l autre|dans l ensemble|en general',
  neg: 'oublie de|j ai oublie de|j ai oublie|oublie|on a oublie de|on a oublie',
  shifted: 'deplace|deplacee|demenage|bouge|transfere|deplaces',
  gave: 'donne|on a donne|donnee',
  turnname:
    'a brasser|a retourner|brasser|retourner|tourner|melanger|brassage|retournement|brasse tu|on brasse tu|retourne tu|on retourne tu',
  rangeword: 'a|et|jusqu a',
  degree:
    'chaud|chaude|tiede|frais|chauffe|chauffe bien|monte|fume pas mais chauffe|bien chaud|refroidit|encore chaud|ca chauffe',
  because:
    'il y avait|y avait|contenait|a cause de|avec plein de|avec|parce que|plein de|pleins de|pleine de|trop de|cause|car|a cause de|a cause du|puisque|etait|avait|plein d|rempli de|remplis de|contamine avec|raison|a cause des|il y avait|y avait|bourre de|contamine par',
  testweight:
    'poids de|poids etalon|poids test|masse etalon|poids temoin|poids de reference|poids de test|poids|poids indique|etalon|poids de controle|kg indique|poids etalon de|pesee de controle|poids controle|masse de controle|controle de pesee|poids etalon indique|poids de calibration|masse etalon de|pese etalon|le poids etalon',
  'analyte:moisture': 'humidite|teneur en eau|taux d humidite|teneur en humidite',
  'analyte:ash': 'cendres|cendre|taux de cendres',
  'analyte:pH': 'ph',
  'analyte:E. coli': 'e coli|ecoli|e. coli|e . coli|escherichia coli',
  'analyte:Salmonella': 'salmonelle|salmonelles|salmonella',
  'analyte:faecal-coliforms': 'coliformes fecaux|coliformes|coliforme fecal',
  'analyte:EC': 'ce labo|conductivite|conductivite electrique|salinite|ec|sels solubles',
  'analyte:C:N':
    'cn|c n|rapport cn|rapport c n|c / n|c : n|ratio c n|rapport c / n|ratio cn|rapport carbone azote|c sur n|ratio c / n|rapport c : n|rapport c sur n',
  'analyte:dry matter': 'matiere seche|siccite|solides totaux|matieres seches',
  'analyte:lead': 'plomb',
  'analyte:cadmium': 'cadmium',
  'analyte:copper': 'cuivre',
  'analyte:zinc': 'zinc',
  'analyte:nickel': 'nickel',
  'analyte:arsenic': 'arsenic',
  'analyte:mercury': 'mercure',
  'analyte:chromium': 'chrome',
  'analyte:nitrogen': 'azote|azote total',
  'analyte:phosphorus': 'phosphore',
  'analyte:potassium': 'potassium',
  'analyte:carbon': 'carbone|carbone organique',
  'analyte:organic-matter': 'mo|taux de matiere organique|teneur en matiere organique',
  'analyte:ammonium': 'ammonium',
  'analyte:nitrate': 'nitrate|nitrates',
  'analyte:stability': 'respiration|stabilite',
  'analyte:maturity': 'maturite|indice de maturite',
  'analyte:self-heating': 'auto echauffement|autoechauffement|essai d auto echauffement|dewar|essai dewar',
  'labunit:MPN/g': 'npp / g|npp par g|mpn / g|npp|npp par gramme',
  'labunit:MPN/4 g': 'npp / 4 g|mpn / 4 g|npp par 4 g',
  'labunit:CFU/g': 'ufc / g|ufc par g|ufc|cfu / g|ufc par gramme',
  'labunit:mg/kg': 'mg / kg|mg par kg|ppm',
  'labunit:dS/m': 'ds / m|ds par m|ds m',
  'labunit:mS/cm': 'ms / cm',
  below: 'sous|moins de|inferieur a|en dessous de|<|moins que|plus petit que',
  above: 'plus de|superieur a|au dessus de|>|depasse|plus que|plus grand que',
  absent:
    'non detecte|non detectee|nd|absent|absente|negatif|negative|pas detecte|absence|non detectes|non detectees|indetectable|aucune detection|pas detectee|rien de detecte|non decele|non decelee',
  sink: 'marche|ferme|jardin|jardins|champ|champs|depotoir|enfouissement|residents|voisins|citoyens|jardiniers|potager|plates bandes|parc|egout|ecocentre|serre|clients|plate bande|jardin communautaire|municipalite|ville|dechets|conteneur a dechets|verger|pelouse|paysagiste|horticulture|rosiers|ecole|jardin des patients|potager des patients|dump|benevoles|garderie',
  toword:
    'donne a|donne au|envoye a|envoye au|parti au|parti a|livre a|livre au|vendu a|parti chez|donnes aux|livre aux|remis a|remis au|parti pour|remis aux',
  seen: 'vu|vue|vus|il y a|y a|y a des|trouve|remarque|apercu|vient de|autour|pres|dans|partout|encore|plein|pleine|de retour|entendu|senti|attrape|mort|vivant|sort|sur|ya|y avait|ya des|ca|la|courait|creuse|creuse dans|trous|trou|nid|une|gros|beaucoup|bcp|quelques|plusieurs|rode|signes|traces|traces de|se promene|a cote|aussi|mange|ronge|bruit|coule en dessous de|en dessous|en dessous de|en dessous du|par dessous|court|courir|tourne autour|tournent autour|qui tournent|bizarre|drole|traine|trainent|se tiennent|rendu dans|partout sur|qui pue|en masse|une gang|a mort',
  // Rooms and grounds about a site: no place that the log knows.
  border: 'cloture|limite du terrain|bord du terrain|perimetre',
  spot: 'hangar|cabanon|garage|bureau|batisse|site|local|local du tambour|cour|remise|salle du tambour|entrepot|partout au site',
  // The writer among those who worked.
  'self:one': 'moi|moi meme|je',
  // Words that announce an entry made late.
  forgotten:
    'oublie|j ai oublie|on a oublie|oublie hier|en retard|rattrapage|oublie de noter|oublie d ecrire|j ai oublie de noter|oublie de marquer|j avais oublie|en rattrapage|je l avais oublie|manque',
  gloss:
    'sort|sortent|sorti|sortie|presse|se tient|brille|tient|forme une boule|reste en boule|vraiment|besoin d eau|salon|hangar|cabanon|garage|bureau|cour|entree|stationnement|local|remise a outils|batisse|brun|brune|noir|noire|vert|verte',
  there: 'la|y|ca',
  ok: 'ok|correct|correcte|bon|bonne|beau|fonctionne|passe|tout va bien|rien a signaler|tout est beau|marche bien|fonctionne bien|ras|tout est correct|impeccable|en ordre|conforme|bien|tout est ok|rien de special|tout beau|fait|aucun probleme|pas de probleme',
  done: 'fait|faite|fini|termine|complete|faites|faits|c est fait',
  self: 'moi|je|nous|on|seul|seule',
  'amend:change': 'change|corrige|remplace|modifie|changer',
  'amend:instead': 'au lieu de|plutot que|a la place de|au lieu du',
  'amend:':
    'c etait|devrait etre|aurait du etre|je voulais dire|c est|en fait|c etait plutot|en fait c etait|mets|le dernier c etait|ca devrait etre|ca aurait du etre|plutot|erreur|correction|c etait bien|erreur c etait|je me suis trompe|je me suis trompe c etait|desole|pardon|oups|faute de frappe|la derniere c etait|le dernier etait|lire|il fallait lire|faut lire',
  was: 'etait|est|c est|c etait',
  need: 'faut|il faut|besoin|on a besoin|ajouter|j ai besoin|il me faut|il nous faut|faut il|mettre|je mets|on met|devrait on mettre',
  dateword:
    'aujourd hui|cette semaine|cette annee|maintenant|ce soir|demain|en ce moment|ce mois ci|ce matin|jusqu ici|a date|encore|la|jusqu a maintenant|a ce jour|ce temps ci|bientot',
  'order:dmy': 'jour d abord|jour mois annee|jj / mm / aaaa|jj / mm|jour en premier',
  'order:mdy': 'mois d abord|mois jour annee|mm / jj / aaaa|mois en premier',
  'order:ymd': 'annee d abord|annee mois jour|aaaa - mm - jj|annee en premier',
  per: 'par|pour|a',
  yearword: 'an|annee|par an|annuellement|par annee|annuel|annuelle',
  'byword:volume': 'en volume|par volume',
  'byword:mass': 'en poids|par poids|en masse',
  'chorename:sweep': 'balayer|balai|le balayage|le balai|le plancher',
  'chorename:wash-lift':
    'laver le leve bac|nettoyer le leve bac|lavage du leve bac|le leve bac|laver le lift',
  'chorename:wash-containers':
    'laver les bacs|laver les seaux|lavage des bacs|le lavage des bacs|nettoyer les bacs|les bacs|lavage des seaux|les seaux|le lavage des seaux',
  'chorename:clean-tools':
    'nettoyer les outils|laver les outils|nettoyage des outils|les outils|le nettoyage des outils',
  'chorename:check-fan': 'verifier le ventilateur|verification du ventilateur|verifier la fan',
  'chorename:check-scale': 'verifier la balance|verification de la balance|calibrer la balance|la balance',
  'chorename:check-thermometer': 'verifier le thermometre|verification du thermometre|le thermometre',
  'chorename:check-stop-button':
    'tester l arret d urgence|verifier l arret d urgence|test d arret d urgence|tester le bouton d arret|le test de l arret d urgence|le bouton d arret',
  'chorename:check-odour': 'verifier les odeurs|ronde d odeurs|la ronde d odeurs|les odeurs',
  'chorename:lock-gate': 'barrer la barriere|fermer la barriere|verrouiller la barriere|la barriere|barrer',
  'chorename:inspect': 'inspecter|l inspection|la ronde|faire la ronde|la tournee',
  'chorename:watered': 'arroser|l arrosage',
  'chorename:squeeze-test': 'le test du poing|le test de la poignee|test du poing',
  'chorename:temperature':
    'les temperatures|prendre les temperatures|les temps|prise de temperature|la prise de temperature|les lectures',
  'chorename:turning': 'le brassage|le retournement',
  fell: '',
  qualifier: 'sous',
};
