import type { Words } from '../../lexicon.ts';

/** What things on a compost site are called in French. */
export const things: Words = {
  'container:cart':
    'bac|bacs|bac roulant|bacs roulants|poubelle|poubelles|bac brun|bacs bruns|bac vert|bacs verts|conteneur|conteneurs|bac a roulettes|bacs a roulettes|poubelle roulante|bac de cuisine|poubelle brune|poubelles brunes|poubelle verte|poubelle de cuisine|bac oublie',
  'container:bucket': 'seau|seaux|chaudiere|chaudieres|sceau|sceaux|siau|siaux|seau plein|bioseau|bioseaux',
  'container:bag': 'sac|sacs|poche|poches',
  'container:bale': 'botte|bottes|balle de paille|balles de paille|ballot|ballots',
  'container:barrel': 'baril|barils|tonneau|tonneaux|bidon|bidons',
  'container:barrow': 'brouette|brouettes|brouettee|brouettees|brouette pleine|brouettes pleines',
  'container:loader-bucket':
    'godet|godets|godet de chargeur|godets de chargeur|pelletee|pelletees|godet du tracteur|godets du tracteur|godet de tracteur|godets de tracteur|godet du chargeur|godets du chargeur|pelle de tracteur|godet de loader|godets de loader',
  plural:
    'bacs|bacs roulants|poubelles|conteneurs|seaux|sceaux|chaudieres|sacs|poches|barils|tonneaux|brouettes|godets|godets de chargeur|brouettees|bacs bruns|poubelles brunes',
  'material:food-scraps':
    'restes|restes de table|restes alimentaires|dechets alimentaires|restes de cuisine|dechets de cuisine|residus alimentaires|epluchures|nourriture|matieres organiques|dechets de table|dechets organiques|restes de nourriture|pelures|restants|restants de table|matiere organique|restes de repas|aliments|dechets de repas|organiques',
  'material:wood-chips':
    'copeaux|copeaux de bois|copeau|brf|broyat|bois rameal|bran|plaquettes|bois dechiquete|copaux|bois broye|brf frais|broyat de bois|ripes|ripe|copeaux bois|plaquettes de bois|structurant',
  'material:sawdust': 'sciure|sciure de bois|bran de scie|brin de scie|sciures|planures|ripes de bois|moulee',
  'material:leaves': 'feuilles|feuilles mortes|feuille|feuilles seches|feuilles dechiquetees',
  'material:cardboard': 'carton|cartons|carton dechiquete|carton brun',
  'material:paper': 'papier|papiers|papier dechiquete|journal|journaux|papier journal|essuie tout',
  'material:straw': 'paille|foin|pailles',
  'material:grass':
    'gazon|herbe|tontes|tonte|tonte de gazon|tontes de gazon|herbe coupee|rognures de gazon|gazon coupe|pelouse',
  'material:coffee-grounds':
    'marc de cafe|marc|marcs de cafe|cafe moulu|cafe use|grains de cafe|marc a cafe|moutures de cafe|marcs|mouture',
  'material:garden-waste':
    'dechets verts|dechets de jardin|residus verts|residus de jardin|branches|mauvaises herbes|tailles|tailles de haie|residus vegetaux|vegetaux|dechets vegetaux|desherbage|taille de haie',
  'material:manure':
    'fumier|crottin|fumier de cheval|fumier de poule|fiente|fientes|fumier de vache|crottin de cheval|lisier',
  'material:finished-compost':
    'compost|compost fini|compost pret|compost tamise|compost termine|terreau|compost final',
  'material:mature-compost': 'compost mur|compost mature|vieux compost|compost muri|compost vieux',
  'material:water': 'eau|flotte',
  'material:residue':
    'residus|residu|plastique|plastiques|dechets plastiques|rebuts|indesirables|contaminants|ordures|ustensiles|ustensiles en plastique|bouts de plastique|morceaux de plastique|sacs de plastique|couverts en plastique|gants|gant|fourchettes|cuilleres|canettes|bouteilles|couteaux',
  'material:leachate': 'lixiviat|jus|percolat|lixiviats|jus de compost|jus de bac',
  'material:overs': 'refus|refus de tamis|rejets|grossier|refus de tamisage|refus de crible',
  fines: 'fin|tamise|fins|passant|passants|fines',
  'pilehead:pile': 'tas|pile|piles|andain|andains|amas|lot|rang',
  'pilehead:bay': 'baie|baies|box|case|cases|compartiment|compartiments|casier|loge|travee|cellule',
  'pilehead:drum': 'tambour|tambours|composteur rotatif|cylindre|drum|composteur|digesteur|tambour rotatif',
  many: 'piles|andains|baies|les tas|deux tas|tambours|tas tous|compartiments|des tas',
  'place:exit': 'sortie|sortie du tambour|bout de sortie|sortie tambour|bout du tambour',
  'place:ambient':
    'ambiant|ambiante|amb|air ambiant|exterieur|dehors|air|temperature ambiante|temp ambiante|ext|air exterieur|temperature exterieure|temp exterieure|temp ext|t ambiante|t ext|temp amb',
  'place:floor': 'plancher|dalle|sol|plateforme|aire|aire de travail|beton|aire de reception',
  'place:lift':
    'leve bac|leve bacs|elevateur|monte charge|basculeur|lift|verseur|hayon|leve conteneur|leve-bac|bascule bac|levebac|bascule bacs',
  'point:top': 'haut|dessus|sommet|en haut|surface|au sommet|au dessus',
  'point:middle': 'milieu|centre|mid|mil|au milieu|au centre',
  'point:bottom': 'bas|fond|dessous|en bas|base|au fond|a la base',
  'point:north': 'nord|cote nord|bout nord|au nord',
  'point:south': 'sud|cote sud|bout sud|au sud',
  'point:east': 'est cote|cote est|bout est|a l est',
  'point:west': 'ouest|cote ouest|bout ouest|a l ouest',
  'point:front': 'avant|devant|en avant',
  'point:back': 'arriere|derriere|en arriere',
  'point:core': 'coeur|noyau|interieur|au coeur|dedans profond',
  'point:edge': 'bord|cote|bords|rebord|peripherie|au bord|exterieur du tas',
  'layer:geotextile':
    'geotextile|membrane|toile geotextile|geo|toile respirante|membrane respirante|tissu|toison|feutre|textile|membrane geotextile|voile',
  'layer:tarp': 'bache|baches|toile|bache bleue|plastique noir|tarp|polythene|toile bleue|bachee',
  'layer:unspecified': 'couverture|couvercle|couvertures|housse',
  'feel:dry':
    'sec|seche|trop sec|trop seche|tres sec|tres seche|un peu sec|un peu seche|poussiereux|poussiereuse|pas mal sec|plutot sec|plutot seche|sec sec|asseche|assechee|desseche|dessechee|bien trop sec|bien sec|vraiment sec|secs|sec comme du bois|beaucoup trop sec|pas mal seche|assez sec|trop secs|super sec|sec en titi|s effrite|bien seche|pas assez humide|pas assez mouille|pas assez mouillee|manque d eau|manque d humidite|manque de l eau|trop peu humide|sec comme de la poussiere',
  'feel:right':
    'parfait|parfaite|humide juste|juste bien|correct|correcte|ideal|ideale|bonne humidite|une goutte|une ou deux gouttes|une goutte ou deux|1 goutte ou 2|1 ou 2 gouttes|deux gouttes|2 gouttes|quelques gouttes|comme une eponge essoree|eponge essoree|juste assez humide|humidite parfaite|humidite correcte|humidite ok|bien humide|humide comme il faut|juste humide|comme il faut|a point|1 goutte|une a deux gouttes|humidite ideale|humidite bonne|impeccable|juste ce qu il faut|humide|bonne|bon taux|nickel|humides|pile poil|couple de gouttes',
  'feel:wet':
    'mouille|mouillee|trop mouille|trop mouillee|trempe|trempee|detrempe|detrempee|trop humide|tres humide|gorge d eau|imbibe|pateux|boueux|bien trop mouille|un peu mouille|tres mouille|un peu trop humide|pas mal mouille|sature|saturee|bouetteux|trop trempe|tout trempe|beaucoup trop mouille|vraiment mouille|gluant|tres mouillee|bien trop humide|un peu mouillee|pas mal humide|toute mouillee|tout mouille|bouette|beaucoup trop humide|detrempes|spongieux|trop mouilles|pas mal trempe|super mouille|bien mouille|assez mouille|mouilles|vraiment trop mouille',
  'feel:dripping':
    'degoutte|degouline|goutte|ruisselle|degoutte|l eau coule|coule entre les doigts|ca coule quand on presse|eau qui coule|degoulinant|degoulinante|ca degouline|ca degoutte|pisse l eau|l eau sort|ca coule quand on serre|degoutte quand on presse|degouline quand on serre|degoutant d eau|l eau pisse|l eau degoutte|ca pisse|coule quand on presse|degoutte quand je presse|coule quand je presse|coule quand on serre|ca coule quand je serre|plein d eau qui sort|ca goutte|filet d eau|quand on serre ca coule|coule|ca coule',
  squeeze:
    'test du poing|essore|essoree|j ai essore|j ai presse|test de la poignee|test de poignee|humidite|teneur en eau|test poing|poignee|on presse|je presse|presse|pressee|poing|serre|serree|quand on presse|quand on serre|quand je presse|quand je serre|test d humidite|taux d humidite|test main|au toucher|test de la main|h|test de squeeze|test d eponge|test|en serrant|en pressant|au test du poing|teneur en humidite|test de poing|essai de la poignee|essai du poing|test a la main|squeeze test|poignee test|quand on la presse|presse|en main|dans la main',
  'topic:odour':
    'odeur|odeurs|pue|ca pue|puait|puent|sent mauvais|sentait mauvais|ca sent|sent|senteur|ammoniac|oeufs pourris|sent l ammoniac|ca sent mauvais|empeste|puanteur|sent fort|ca sent fort|odeur d ammoniac|sent pas bon|ca sent pas bon|ca sentait|sent les oeufs pourris|odeur forte|odeur d oeuf pourri|ca sent l ammoniac|mauvaise odeur|odeur de pourri|sent le pourri|pu|ca pu|sent les oeufs|schlingue|cocotte|odeur d oeufs pourris|fouette|ca fouette|ca sent le pourri|mauvaises odeurs|relent|relents',
  'topic:leachate':
    'lixiviat|jus qui coule|flaque|flaques|fuite|fuit|coule par terre|liquide|liquide brun|eau brune|jus brun|mare|percolat|suinte|jus|ca fuit|suintement|jus noir|flaque de jus|liquide noir|ecoulement|jus par terre|eau noire|ca suinte|lixiviat qui coule|flaque brune|flaque noire|grosse flaque|grosse flaque brune|ca coule|coule',
  'topic:flies':
    'mouches|mouche|asticots|asticot|vers blancs|drosophiles|moucherons|mouches a fruits|larves|mouche a fruits|nuee de mouches|plein de mouches',
  'topic:pests':
    'rat|rats|souris|raton|ratons|raton laveur|ratons laveurs|goelands|mouffette|mouffettes|rongeur|rongeurs|vermine|ours|corneilles|corneille|renard|crottes de rat|mulot|mulots|trou de rat|guepes|nid de guepes|goeland|mouettes|mouette|crottes de souris|ecureuils|marmotte|terrier|coquerelles|blaireau|crottes|nid de rats|guepe|coyote|pigeons|ratons-laveurs|corbeaux',
  'topic:freezing':
    'gele|gelee|geles|gelees|glace|pris dans la glace|gele dur|gel bloque|congele|congelee|pris en glace|completement gele|verglas|glacee|gele dur|toute gelee|tout gele|geler|gelait|gele ben dur',
  'topic:fault':
    'brise|brisee|casse|cassee|bloque|bloquee|coince|coincee|en panne|panne|ne tourne plus|tourne plus|tourne pas|marche pas|marche plus|ne marche plus|ne marche pas|ne fonctionne plus|fonctionne pas|fonctionne plus|jamme|jammee|grince|alarme|defectueux|defectueuse|erreur|arrete tout seul|ne part plus|part pas|veut pas partir|veut plus partir|hors service|deraille|crevaison|pneu creve|creve|ne demarre pas|demarre pas|pete|petee|fait du bruit|bruit bizarre|bruit|fait un bruit bizarre|ne leve plus|leve plus|leve pas|veut plus monter|ne monte plus|monte plus|ne descend plus|descend plus|fait un drole de bruit|drole de bruit|pas capable de partir|saute|sautee|bouche|bouchee|mort|morte|ne part pas|ne demarre plus|demarre plus|veut pas demarrer|tourne a vide|a lache|a brise|brises|briser|casse|grincement|coinces|cogne|fendu|fendue|perce|percee|dechire|dechiree|tordu|tordue|fissure|fissuree|ne ferme plus|ferme plus|decroche|claque|a plante|plante|ne repond plus|brule pas|bourre|bourree|tout croche|detraque|detraquee|s est arrete|arrete de tourner|a arrete de tourner|hs|ne s allume plus|s allume plus|ne leve pas|ne veut plus monter|ne veut plus tourner|veut plus tourner|ne fonctionne pas|n a plus de batterie|fait du bruit bizarre|marche pus|marche pu|part pus|part pu|tourne pus|tourne pu|fonctionne pus|fonctionne pu|leve pus|leve pu|monte pus|demarre pus|demarre pu|descend pus|ferme pus|ouvre plus|barre plus|barre pus|vire plus|vire pus|veut rien savoir|fait defaut|fait des siennes|a plat|a saute|est mort|est morte|gosse|niaise|deconne|ca force|force|tourne croche|croche',
  'topic:power':
    'panne de courant|panne d electricite|pas de courant|plus de courant|plus d electricite|coupure de courant|panne electrique|breaker saute|disjoncteur saute|pas d electricite|manque de courant|y a plus de courant|courant coupe|coupure d electricite|panne d hydro|disjoncteur a saute|breaker a saute|sans courant|plus de jus electrique|pu de courant|plus d hydro|pu d electricite|pus de courant|panne d hydro quebec|y a pas de courant|pas de hydro|plus de lumiere|plus de power|pas de power|le courant est coupe|manque d electricite|courant a manque|le courant a lache|breaker a lache|le breaker a saute',
  'topic:spill':
    'deversement|renverse|renversee|deverse|deversee|renversement|echappe par terre|renverses|tombe par terre|a verse|deverse|repandu|repandue|debordement|deborde',
  'topic:contamination':
    'contamination|trouve du plastique|trouve des ustensiles|trouve un sac|trouve du verre|vitre|verre|morceaux de verre|du verre dans|du plastique dans|plastique dans|trouve|metal|styromousse|plastique partout|sacs de plastique dans|vitre cassee|verre casse|ustensiles dans|trouve des fourchettes|contaminants dans|beaucoup de plastique',
  'topic:complaint':
    'plainte|plaintes|se plaint|se plaignent|s est plaint|s est plainte|plaint|plaignent|s est plaint de|a chiale|chiale|s est plainte de|se sont plaints|ont porte plainte|chialent|se plaignait|se plaindre|appele pour se plaindre|pas contents de|pas contente de|pas content de|tannes de|appele pour|a appele pour|ont appele pour',
  contaminated:
    'contamine|contaminee|contamines|contaminees|contamine avec du plastique|plastique dedans|du plastique dedans|avec du plastique|avec du plastique dedans|contamine par du plastique|y avait du plastique|il y avait du plastique dedans|du verre dedans|sac de plastique dedans|contenait du plastique|il y avait du plastique|contamination|souille|souillee|avec des ustensiles dedans|des ustensiles dedans|y avait du plastique dedans|contamine plastique|sale|de la vitre dedans|des sacs dedans|sacs de plastique dedans|du metal dedans|avec du verre|beaucoup de plastique dedans|avec contaminants|contamine avec|contamine par|contaminee avec|contaminee par|contamines avec|contamines par|contamine de|sale avec|plein de gants|plein de plastique|plein de fourchettes|plein d ustensiles',
  machine:
    'ventilateur|fan|soufflerie|souffleur|moteur|engrenage|courroie|chaine|porte|trappe|palette|pompe|tuyau|boyau|balance|thermometre|sonde|chargeur|tracteur|tamis|crible|barriere|capteur|panneau|arret d urgence|bouton d arret|roue|pneu|lumiere|lumieres|broyeur|melangeur|vis|hydraulique|robinet|laveuse|couvercle|bouton rouge|panneau de controle|minuterie|convoyeur|roulement|laveuse a pression|evier|treuil|grille|gate|cadenas|bouton d urgence|pedale|ecran|poignee de porte|roulette|roulettes|charniere|tarare|dechiqueteuse|tamiseur|roues|loader|pepine|bobcat|fourche|mini loader|tracteur a gazon',
  person:
    'voisin|voisins|voisine|resident|residents|visiteur|dame|monsieur|quelqu un|infirmiere|patient|patients|personnes|personne|benevoles|benevole|gars|equipe|etudiants|etudiant|monde|employes|employe|stagiaire|stagiaires|collegues|aidants|aides|gens|jeunes|beneficiaires|pers|voisines|travailleurs|du monde|intervenante|cuisinier|locataire|locataires|pers.|etudiantes|de nous',
  'weather:rain':
    'pluie|pluies|orage|orages|averse|averses|pleut|il pleut|il a plu|a plu|grosse pluie|forte pluie|pleuvoir|pluie forte|va pleuvoir|il mouille|a mouille|va mouiller|de la pluie|fortes pluies|plu|il va pleuvoir|il va mouiller',
  'weather:frost':
    'gel|gel au sol|gelee blanche|risque de gel|froid|grand froid|gros gel|gels|grands froids|il gele|va geler|gelee au sol|gel annonce|il va geler|froid intense|gel cette nuit|frette|grosse frette',
  'weather:snow':
    'neige|tempete de neige|tempete|bordee|bordee de neige|poudrerie|il neige|a neige|il a neige|va neiger|flocons|neiger|de la neige|tempete',
  'weather:heat':
    'canicule|chaleur|vague de chaleur|grosse chaleur|grosses chaleurs|chaleur extreme|tres chaud|chaleurs|caniculaire|alerte de chaleur|chaleur accablante|avertissement de chaleur',
  'weather:wind':
    'vent|vents|gros vent|vent fort|vents forts|rafales|bourrasques|vente|il vente|grand vent|gros vents|grands vents|venter|va venter|il va venter|vents violents|bourrasque|rafale',
  forecast:
    'annonce|annoncee|annonces|annoncees|prevu|prevue|prevus|prevues|meteo annonce|ils annoncent|on annonce|prevision|previsions|attendu|attendue|alerte|s en vient|s en viennent|avertissement|meteo|va|arrive|risque|risque de|a venir|vont|pourrait|possible|attendus|ils prevoient|on prevoit|on attend|demain matin peut etre|environnement canada|la radio annonce|probable|en vue|prevoient|veille de|annoncent|annonce|a partir|des|bulletin|meteomedia|qui s en vient|qui arrive|on nous annonce|ils disent',
  observed:
    'tombe|recu|pluviometre|est tombe|tombee|dans le pluviometre|eu|a plu|il a plu|il est tombe|sont tombes|de tombe|de pluie tombee|tombes|on a eu|on a recu|cumul|recus|tombees|il a tombe|dans la jauge|dans le pluvio|de precipitations|il en est tombe',
};
