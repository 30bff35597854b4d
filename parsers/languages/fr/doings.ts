import type { Words } from '../../lexicon.ts';

/** What people do on a compost site, in French. */
export const doings: Words = {
  turn: 'brasse|brassee|retourne|retournee|brasses|vire|viree|retournes|brassage|retournement|brassage fait|retournement fait|tourne|tournee|aere|aeree|brasse|brasser fait|est brasse|est retourne|retourne a la fourche|virees|vire de bord|mele|aeres|brassage de|retournement de|brassees|retournees|brasse au tracteur|avons brasse|avons retourne|a ete brasse|a ete retourne|ete brasse|ete retourne|ont ete brasses|ont ete retournes|on a brasse|on a retourne|fini de brasser|fini de retourner|brassage complete|retournage|retournage de|vient d etre brasse|vient d etre retourne|fourche|revire|reviree|revires|rebrasse|rebrassee|rebrasses|brasse a nouveau|brasse encore|vire a l envers|retourne a la pelle|brasse a la pelle|brasse avec le loader|brasse avec le tracteur|brasse a la fourche',
  cover:
    'couvert|couverte|recouvert|recouverte|couverts|couvertes|recouverts|recouvertes|abrie|abriee|couvre|mis la couverture|remis la couverture|mis une couverture|couverture mise|recouvert de|couvert de|couvert avec|abries|est couvert|est couverte|couvrir fait|on a couvert|on a recouvert|emballe|a couvert de|remis le couvert|couche de|une couche de',
  'cover:tarp':
    'bachee|bache mise|bachees|bache|baches|bache sur|mis la bache|mis la bache sur|remis la bache|remis la bache sur|mis une bache sur|mis la toile sur|remis la toile sur|mis une toile sur',
  uncover:
    'decouvert|decouverte|decouverts|decouvertes|enleve la couverture|retire la couverture|ote la couverture|debache|debachee|debaches|enleve couverture|couverture enlevee|couverture retiree|deballe|defait la couverture',
  empty:
    'vide|videe|vides|videes|deverse|bascule|vide le|vidange|vidangee|vider fait|decharge|dechargee|on a vide|nettoye au complet|desempli|fini de vider|acheve de vider|vide au complet|completement vide|tout vide|vide completement|a fini de vider|termine de vider',
  discharge:
    'decharge du tambour|vidange du tambour|sorti du tambour|vide le tambour|vide tambour|tambour vide|decharge|sortie de tambour|decharge tambour|tambour decharge|tambour vide sur|vidange tambour|tambour vidange|production du tambour|dechargement du tambour|vide le drum|vide le drum|drum vide|decharge le tambour|decharge du drum|decharge drum|tambour sorti|sorti le tambour|decharge le drum|vidange du drum|vider tambour|dechargement tambour|dechargement',
  move: 'deplace|deplacee|transfere|transferee|transfert|transporte|bouge|demenage|amene|transferes|transportes|deplaces|pousse|charroye|transvide|passe|transvase|deplacement|bouge|mis',
  relocated: 'renomme|devient|est maintenant|s appelle maintenant|est devenu|rebaptise|demenage',
  split:
    'divise|divisee|separe|separee|scinde|separe en deux|divise en deux|scindee|coupe en deux|dedouble|divise',
  join: 'fusionne|fusionnee|joint|jointe|combine|combinee|reuni|regroupe|mis ensemble|mele ensemble|fusion|fusionnes|joints|reunis|fusionne avec|jumele|mis avec|melange avec|rassemble|reunies|combines|combine avec|jointes',
  start:
    'commence|commencee|demarre|demarree|nouveau tas|debute|parti|partie|nouvelle pile|debut|part|demarrage|lance|lancee|ouvert|debut de|on a parti|on a commence|creer|cree|debutee',
  full: 'plein|pleine|est plein|rempli|remplie|plein a ras bord|pleins|pleines|est pleine|est rempli|complet|complete|plein au complet|bien plein|ras bord|a pleine capacite|combles|comble',
  finish:
    'fini|finie|termine|terminee|finis|finies|est fini|est finie|est termine|est terminee|acheve|achevee|a fini de murir|fini de murir|completee|a termine',
  ready:
    'pret|prete|est pret|est prete|mur|mure|pret a tamiser|prets|est mur|est mure|pret a utiliser|muri|prete a tamiser|prete a utiliser|pret a etre tamise|pret a l usage|matur|mur|pretes|est pret a utiliser|est prete a utiliser|est pret a tamiser|est prete a tamiser|est bien mur',
  deliver:
    'livraison|livre|livree|livraison de|recu une livraison|voyage de|livres|livrees|recu un voyage de|arrivage|livraison recue|recu|recue|arrive|camion de|recus|arrivee|recues|voyage|arrivage de|on a recu|achat|achete|chargement de|rentre|approvisionnement|le camion a livre|livraison du jour|nous ont livre|se sont fait livrer|fait livrer|livre par camion|reapprovisionnement|stock recu|recu un camion de|recu un chargement de|depose|laisse|livreur passe|le livreur est passe|livreur est passe|le camion est passe|camion passe|le camion a passe',
  reject:
    'refuse|refusee|retourne au client|renvoye|renvoyee|rejete|rejetee|refuses|refusees|rejetes|renvoyes|pas accepte|pas pris|retourne a la cuisine|rejet|refus de|rejetees|renvoyees|renvoye a|on a refuse|refuse de prendre|non accepte|retourne a|dit non a|retourne|retournee|retournes|retourne un|renvoye a la cuisine|pas voulu prendre|on a pas pris|j ai pas pris|retourne au',
  screen:
    'tamise|tamisee|tamisage|crible|criblee|passe au tamis|tamises|criblage|tamisees|passe au crible|tamisage de|on a tamise|tamisage fait|criblage de|cribles',
  sample:
    'echantillon|echantillons|echantillonne|pris un echantillon|preleve|prelevement|preleve un echantillon|echantillons pris|echantillon pris|prelevements|echantillon envoye|pris des echantillons|echantillonnage|preleve des echantillons|envoye un echantillon|echantillons envoyes|preleve|echantillon de|echantillons de|echantillon composite|echantillons preleves|echantillon preleve|pris echantillon|pris echantillons|envoye des echantillons|pris l echantillon|echantillon de labo|echantillon pour le labo|ramasse un echantillon|echantillon labo|fait un echantillon|un echantillon pour le labo',
  lab: 'labo|laboratoire|resultat du labo|resultats du labo|analyse|resultat|resultats|rapport du labo|analyses|resultat labo|resultats labo|du labo|du laboratoire|rapport|resultat d analyse|labo dit|resultat de labo|resultats de labo|analyse labo|resultats d analyse|resultat analyse|resultat du laboratoire|recu du labo|bulletin|rapport de labo|retour du labo|selon le labo|d apres le labo|selon le laboratoire',
  givenaway: 'vendu|vendue|vendus|distribue|distribuee|distribues|expedie|donne|donnes|livre|remis',
  remove:
    'sorti|sortie|sortis|sorties|donne|donnee|donnes|parti|partie|partis|parties|envoye|envoyee|envoyes|pris par|ramasse|livre a|livre au|emporte|emportee|retire|retiree|retires|enleve|enlevee|enleves|envoye a|donne a|donne au|epandu|epandue|etendu|parti pour|parti au|parti a|au depotoir|jete|jetee|evacue|pompe|pompee|vidange|distribue|distribues|distribuee|ramasses|pige|trie|tries|etendue|expedie|livre aux|donnes aux|vendu|vendus|remis a|remis au|ote|apporte a|apporte au|mis au rebut|mis aux ordures|mis au chemin|recupere par|utilise|charge|cede|remis aux|offert|offerts|sorti de|pompe',
  add: 'ajoute|ajoutee|ajoutes|mis|mise|melange|melangee|verse|rajoute|mets|charge|entre|rentre|pese|pesee|pesait|pesent|poids|recu|mis dans|arrive|note|entree|avec|plus|brasse avec|melanges|rentree|log|j ai mis|on a mis|mele avec|incorpore|pese a|vide|verse dans|pese|pesees|entrees|rempli|vient de|amene|apporte|ramasse|recolte|recoltee|recuperes|recupere|apportes|collecte|collectes|jete dedans|ajoute de|poids de|intrant|intrants|ajoutees|rajoutes|enregistre|inscris|inscrire|arrivees|arrives|recus|recue|monte a|indique|au poids|balance dit|apres pesee|versee|verses|mises|apporte par|peses|peser|jviens de peser|viens de peser|mise sur|mis sur|remise sur|remis sur|mise dessus|posee sur|remis|remise|repose|reposee',
  water:
    'arrose|arrosee|arroses|arrosage|arrosage fait|ajoute de l eau|mis de l eau|donne de l eau|humecte|humidifie|vaporise|arrosees|rajoute de l eau|arrosage de|verse de l eau|humidifiee|mis de l eau sur|ajoute de l eau sur|on a arrose|boyaute|mouille|ajoute un peu d eau|mis un peu d eau|donne un peu d eau|remis de l eau|rajoute un peu d eau|verse un peu d eau',
  washed:
    'lave|laves|lavee|lavees|rince|rinces|rincees|nettoye|nettoyes|nettoyee|nettoyees|desinfecte|desinfectes|frotte|frottes',
  tools: 'outils|pelles|fourches|outil|rateaux|pelle',
  'chore:sweep':
    'balaye|balayee|balayage|balaye le plancher|passe le balai|plancher balaye|balai passe|balayer fait|balaye la dalle|dalle balayee|coup de balai|donne un coup de balai|balayage fait|balaye partout|sol balaye|balayes|aire balayee|plancher est balaye|donne un coup de balai|passe un coup de balai|balaye le sol|coup de balai donne|balaye le beton',
  'chore:wash-lift':
    'lave le leve bac|leve bac lave|nettoye le leve bac|lave l elevateur|elevateur lave|lave le lift|lift lave|leve bac nettoye|nettoye l elevateur|nettoye le lift|lift nettoye|elevateur nettoye|lave le basculeur|basculeur lave|rince le leve bac|arrose le leve bac|leve bac rince|rince le lift|lave le leve bac|lavage du leve bac|lavage du lift|leve bacs lave',
  'chore:wash-containers':
    'bacs laves|lave les bacs|lave bacs|bacs nettoyes|nettoye les bacs|seaux laves|lave les seaux|lave les poubelles|rince les bacs|bacs rinces|poubelles lavees|rince les seaux|seaux rinces|lavage des bacs|nettoye les seaux|seaux nettoyes|lavage des seaux|lavage bacs|lave tous les bacs|lave seaux|tous les bacs laves|bacs ont ete laves|rince les poubelles|bacs tous laves|lavage des bacs fait|chaudieres lavees|lave les chaudieres|bacs sont laves|lave tous les seaux|nettoye bacs|lave les bacs roulants|lave les contenants|contenants laves|bacs tous propres|bacs propres|les bacs sont propres|les bacs sont laves|lave les totes|arrose les bacs|bacs arroses|decrotte les bacs|bacs decrottes|passe les bacs au boyau|bacs passes au boyau',
  'chore:clean-tools':
    'nettoye les outils|outils nettoyes|lave les outils|outils laves|outils propres|nettoye outils|rince les outils|outils rinces|nettoyage des outils|lavage des outils|lave outils|desinfecte les outils|outils desinfectes|nettoye les pelles|lave les pelles|pelles lavees|pelles nettoyees|nettoye les fourches|nettoye tous les outils|outils sont propres',
  'chore:clean-spill':
    'nettoye le deversement|deversement nettoye|ramasse le deversement|nettoye le degat|degat nettoye|deversement ramasse|ramasse le degat|essuye le degat|nettoye le jus par terre|degat ramasse|nettoye le deversement d hier|nettoye le degat d hier|eponge le deversement|nettoye la flaque|flaque nettoyee|ramasse ce qui etait tombe|ramasse la flaque|nettoye un deversement|nettoye deversement|deversement est nettoye',
  'chore:check-fan':
    'verifie le ventilateur|ventilateur verifie|ventilateur ok|fan ok|ventilateur correct|teste le ventilateur|verifie ventilateur|ventilateur fonctionne|verifie la fan|fan verifiee|verification du ventilateur|fan verifie|ventilateur marche|ventilateur teste|controle le ventilateur|ventilateur controle|ventilo ok|ventilo verifie|verifie le ventilo|verifie la soufflerie|soufflerie ok|soufflerie verifiee|verification ventilateur|check le ventilateur|check la fan|verif ventilateur|ventilateur marche bien|ventilateur fonctionne bien|inspecte le ventilateur',
  'chore:check-stop-button':
    'teste l arret d urgence|arret d urgence teste|bouton d arret teste|teste le bouton d arret|verifie l arret d urgence|bouton d arret ok|arret d urgence ok|bouton d arret verifie|verifie le bouton d arret|arret d urgence verifie|arret d urgence fonctionne|bouton rouge teste|teste le bouton rouge|arret urgence teste|test de l arret d urgence|test du bouton d arret|bouton d urgence teste|teste le bouton d urgence|test arret d urgence|arret d urgence marche|bouton d arret fonctionne|test du bouton rouge|bouton rouge ok|bouton d urgence ok|test bouton d arret|arret urgence ok|essai de l arret d urgence|verifie arret d urgence|bouton d arret d urgence teste|teste le bouton d arret d urgence|bouton stop teste|teste le bouton stop|test bouton arret',
  'chore:check-scale':
    'verifie la balance|balance verifiee|calibre la balance|balance calibree|test de balance|balance ok|teste la balance|verification balance|balance indique|balance testee|verification de la balance|balance correcte|controle de la balance|controle la balance|balance controlee|etalonne la balance|balance etalonnee|verif balance|test balance|balance juste|calibration de la balance|check la balance|balance est ok|verifie balance|balance est juste',
  'chore:check-thermometer':
    'verifie le thermometre|thermometre verifie|calibre le thermometre|thermometre calibre|thermometre ok|test eau glacee|eau glacee|thermometre indique|sonde verifiee|sonde calibree|teste le thermometre|verification du thermometre|thermometre teste|verification thermometre|bain de glace|glace fondante|dans la glace fondante|glace fondue|test du thermometre|etalonne le thermometre|dans l eau glacee|thermometre dans la glace|controle du thermometre|verifie la sonde|eau et glace|calibre la sonde|test de glace|thermometre dans l eau glacee|sonde dans l eau glacee|dans la glace|test thermometre|verif thermometre|test de l eau glacee|eau bouillante|thermometre lit|sonde indique|sonde lit|thermo verifie|slush|dans la slush|sloche|dans la sloche|glace concassee|dans la glace concassee|dans de la glace|dans eau glacee|verre de glace|thermometre dans la slush|test de la slush',
  'chore:check-odour':
    'verifie les odeurs|ronde d odeurs|test d odeur|verification odeur|verifie l odeur|ronde d odeur|tournee des odeurs|verification des odeurs|ronde odeurs|controle des odeurs|odeurs verifiees|tour des odeurs|fait le tour pour les odeurs|verif odeur|verif odeurs|ronde des odeurs|tournee d odeurs|controle odeur|verification d odeurs|controle odeurs|tour pour les odeurs',
  'chore:lock-gate':
    'barriere barree|barre la barriere|barriere fermee|ferme la barriere|barriere verrouillee|verrouille la barriere|barrure mise|barre la porte|barriere cadenassee|porte barree|ferme a cle|barriere lock|verrouille le portail|portail ferme|portail verrouille|barrieres barrees|cloture barree|portail barre|cadenasse la barriere|barre le portail|cadenas mis|grille fermee|ferme la grille|tout barre|tout est barre|ferme le portail|barre la gate|gate barree|barre la cloture|barriere est barree|barre la grille|grille barree|barriere bien fermee|gate fermee|ferme la gate|verrouille la grille|cadenas pose|mis le cadenas|barre les barrieres|barrieres fermees|porte verrouillee',
  'chore:inspect':
    'inspecte|inspection|inspection faite|fait la ronde|ronde faite|tour du site|fait le tour|inspectee|inspection du site|fait ma ronde|fait la tournee|tournee faite|inspection ok|tour du site fait|ronde de site|inspection visuelle|ronde du site|fait l inspection|visite du site|inspection quotidienne|fait le tour du site|tournee du site|ronde ok|fait une ronde|inspection hebdo|fait une inspection|inspection terminee|ronde d inspection|inspection de routine|inspecte le site|petite ronde|la ronde',
  check: 'verifie|verifiee|teste|testee|controle|controlee|check|checke|verification|examine|regarde',
  fix: 'repare|reparee|arrange|arrangee|regle|reglee|remarche|refonctionne|debloque|debloquee|resolu|repart|reparti|repartie|de retour|marche de nouveau|fonctionne de nouveau|revenu|decoince|decoincee|degele|degelee|remplace|remplacee|change|corrige|reglee|tourne de nouveau|tourne a nouveau|est repare|fonctionne|marche|revenue|tout est beau|remis en marche|redemarre|redemarree|fonctionne a nouveau|marche a nouveau|deboucle|debouche|debouchee|nettoye|repares|remis|fixe|fixee|est revenu|deglace|rebranche|retabli|retablie|tourne|a repris|reprend|ok maintenant|correct maintenant|retourne|ramasse',
  gone: 'parti|partie|partis|parties|disparu|disparue|disparus|disparues|fini|finie|finies|plus de|ne sent plus|sent plus|ne pue plus|pue plus|plus d|il n y a plus de|y a plus de|a disparu|ont disparu|il n y a plus d|est partie|est parti|s est ameliore|s est arrete|passee|passe|terminee|regle|pu de|ya plus de|y a pu de|ya pu de|coule plus|ne coule plus|fuit plus|ne fuit plus|sont parties|sont partis|beaucoup mieux|mieux|aucune trace|a arrete|reste pu de|ne se plaint plus',
  'mode:automatic':
    'auto|automatique|en auto|mode auto|en automatique|sur auto|mode automatique|a auto|a l automatique',
  'mode:manual': 'manuel|en manuel|manuelle|mode manuel|a la main|sur manuel|a manuel',
  'mode:off':
    'arrete|arretee|ferme|fermee|eteint|eteinte|off|a off|stoppe|a l arret|eteindre fait|coupe|coupee|en arret|debranche',
  'mode:on': 'parti|allume|demarre|en marche|repart|allumee|reparti',
  set: 'mis|mis a|regle a|regle|reglee|tourne|en marche|mis sur|sur|mis en|change pour|passe a|ajuste|ajustee|reglage|reglages|rotation|rotations|aux|mise|mise a|mise sur|mise en|tourne aux|mets|monte a|baisse a|remis|remis en|remis a|remis sur|passe en|baisse|monte|tour|tours|passe sur|a|configure|programme|mise au|descendu|tourne a|laisse a|laisse sur|laisse en|roule|garde|reste|reste sur',
  every: 'toutes les|tous les|chaque|a chaque|aux|une fois par|par|tout les|chacune',
  'speed:low':
    'bas|basse|lent|lente|faible|minimum|au minimum|basse vitesse|a bas|a low|petite vitesse|doux|au plus bas|min|low|au bas|vitesse lente|petit|lentement|au ralenti|a basse vitesse|vitesse basse',
  'speed:high':
    'haut|haute|fort|rapide|max|maximum|au maximum|haute vitesse|a haut|a high|au max|high|pleine vitesse|au plus fort|forte|elevee|eleve|a fond|grande vitesse|au plus haut|vitesse rapide|au fort|vitesse haute|a haute vitesse',
  'speed:off': 'arrete|arretee|ferme|fermee|eteint|off|a off',
  fan: 'ventilateur|fan|soufflerie|ventilation|ventilo|souffleur|ventil|ventilateurs',
  'down-to':
    'reste|il reste|rendu a|rendus a|descendu a|en reste|reste environ|il en reste|stock|en stock|niveau|encore|en reserve|il nous reste|on a|il y a|plus que|rendu|rendus|baisse a|reserve|reserve de|est a|sont a|a|inventaire|reste juste|juste|reste plus que|il reste juste|seulement|tombe a|stock de|en bas de|il reste a peu pres|reste a peu pres|il en reste a peu pres|il reste environ',
  hourword: 'heures|heure|h|hres|heures personnes|heures de travail|hrs|heures de benevolat|heures personne',
  work: 'travaille|travail|sur le site|sur place|benevolat|corvee|de travail|ouvrage|travailles|a travailler|passe|de benevolat|d ouvrage|ont travaille|quart|travaillees|heures|presence|presents|present|temps|main d oeuvre|shift|de corvee|au site|ont passe|j ai fait|a brasser|au compost|consacre|a tamiser|a nettoyer|a peleter',
  note: 'note|nb|memo|a noter|remarque|notez',
};
