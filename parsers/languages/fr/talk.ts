import type { Words } from '../../lexicon.ts';

/** Small words, numbers, units and the marks of talk, in French. */
export const talk: Words = {
  fill: 'de plus|le|mon|la|les|l|un|une|des|est|sont|etait|etaient|c|ce|cet|cette|ces|j|je|jai|on|nous|a|ai|as|ont|avons|ici|la bas|bon|ben|ok|okay|salut|bonjour|bonsoir|allo|merci|svp|s il vous plait|stp|tout le monde|encore|maintenant|aussi|fait|faite|faits|deja|juste|seulement|tous|toutes|tout|toute|fin de quart|fin de journee|fin du quart|mon|ma|mes|notre|nos|son|sa|ses|leur|leurs|vient de|viens de|venons de|d|qu|s|m|t|n|y|et voila|voila|coudonc|hey|oui|autre|autres|vraiment|tres|bien|pas mal|environ de|il|elle|ils|elles|c est|cest|etre|ete|ca|total de|chacune d elles|enfin|du coup|donc|alors|premier|deuxieme|dernier|derniere|petit|petite|grosse|gros|nouveau|nouvelle|par|journee|ouf|bonne journee|bonne soiree|a demain|a plus|desole|desolee|matin|ce matin la|quart fini|fin|tantot|pareil|yo|coucou|super|parfait merci|cool|bravo|excellent|tiens|fini pour aujourd hui|termine pour aujourd hui|meme|autour|les gars|la gang|gang|boss|chef|rapport du jour|mise a jour|petite mise a jour|voici|dedans|l un|l une|lui|plein de|jour|jours|pis la|tk|entk|fiou|yes|hop|allez|ah|oh|eh|x|chose|niveau du|cote du|genre|apres midi|soir|depuis|dernieres|plusieurs|peu|un peu|me|te|se|moi|toi|au complet|toute la gang|c fait|cfait|tout fait|tout est fait|j|jviens|jviens de|jviens d|viens d|vient d|de retour du site|toujours|apres diner|apres souper|avant diner|salut equipe|allo equipe|a l heure du diner|avant de partir|apres la pause|semble|a l air|parait|avec le tracteur|avec le chargeur|avec le loader|au tracteur|ya|y a|il y a|y avait|il y avait|yavait|de bord|j ai|on a|nous avons|ils ont|puis|ensuite|bleu|bleue|rouge|jaune|vieux|vieille|lourd|gris|a soir|a matin|ce midi|a midi|tse|faque|fak|bin|ben la|cet aprem|aprem|en passant|de meme|pour vrai|pour la nuit|pour la fin de semaine|pour le weekend|pour la journee|jusqu a demain matin|pour le conge',
  definite: 'le|la|les|l',
  negwas: 'c etait pas|ce n etait pas|c est pas|c etaient pas',
  'prep:from':
    'de|du|des|depuis|provenant de|venant de|provenant du|venant du|d|de chez|provenance|en provenance de|en provenance du|de la|hors de',
  'prep:to': 'a|au|aux|vers|pour|jusqu a|chez|a la',
  'prep:into': 'dans|en|dedans',
  'prep:on':
    'sur|dessus|par dessus|au dessus de|pres du|pres de|a cote du|a cote de|autour du|autour de|proche du|proche de|derriere le|devant le|contre|sous|le long de|par dessus le|autour des|a cote des|pres des|sur le|chez|en bas de|au bas de|au pied de|au bord de|en arriere de|en avant de|a l arriere de|en haut de|en dessous de|en dessous du|par dessous|en dessous|au pied du|au pied des|au bord du|en haut du|sous la|sous le tas|sous les|le long du|en arriere du|en avant du|a l arriere du|devant la|derriere la|autour de la|pres de la|proche de la|proche des|a cote de la',
  'prep:off': 'hors',
  'prep:out': 'hors du|hors de|en dehors de',
  'prep:in': 'dans|en',
  'prep:with': 'avec|w|plus',
  'prep:of': 'de|d|du|des',
  'prep:at':
    'a|@|est a|sont a|rendu a|monte a|descendu a|indique|affiche|atteint|au|lit|lecture|donne|dit|rendus a|montre|mesure|est rendu a|a monte a|grimpe a|frole|tourne autour de|passe a|rendue a|marque|tombe a',
  'prep:for': 'pour',
  and: 'et|pis|ainsi que',
  numand: 'et',
  next: 'puis|ensuite|mais|apres|apres ca|pis|et puis|et apres',
  'article:1': 'un|une',
  tempword:
    'temp|temperature|temperatures|temps|tempe|lecture|lectures|sonde a|temperature du|temperature de|temp du|chaleur du|t|releve de temperature|prise de temperature|temperature de la|thermometre a|degres dans|lecture de|pris les temps|pris les temperatures|pris la temperature|prise des temperatures|pris les lectures|a baisse a|est tombe a|a monte a|est descendu a|est monte a|a descendu a|a chute a|a grimpe a|est redescendu a|est remonte a|a refroidi a|est passe a|est rendu a|thermometre dit|le thermometre dit|sonde dit|la sonde dit|thermo dit|la sonde indique|le thermometre indique|le thermometre affiche|thermometre affiche|sonde affiche|le thermometre donne|la sonde donne|tire a|tient a|se tient a|plafonne a|stable a|toujours a|encore a|ca lit|on lit|lit a|joue autour de',
  both: 'les deux|les deux tas|les 2 tas|les 2|deux tas|les deux piles',
  all: 'tous les|toutes les|tous|chacun des|chaque|les',
  total:
    'total|au total|en tout|ensemble|en totalite|tout ensemble|pour les deux|pour les trois|pour tous|combine|poids total|somme|les deux ensemble|les trois ensemble|pour le tout|pour tout|pour l ensemble|combines|en total|tt|totalise|a deux|a trois|reunis',
  each: 'chacun|chaque|chacune|par bac|par seau|piece|ch|par sac|par brouette|l unite|par contenant',
  net: 'net|nets|nette|sans le bac|sans bac|sans le seau|sans seau|sans tare|tare enlevee|bac non compris|poids net|sans le contenant|tare deduite|seau non compris|hors tare|tare retiree|net de tare|tare soustraite|sans compter le bac|sans compter le seau|moins le bac|bac enleve|contenu seulement|bac exclu|une fois le bac enleve',
  gross:
    'brut|brute|bruts|avec le bac|avec bac|bac compris|bac inclus|avec le seau|avec seau|poids brut|tare comprise|tare incluse|seau compris|seau inclus|bac avec|avec le contenant|avec tare|contenant compris|contenant inclus|incluant le bac|y compris le bac|en brut|incluant le seau',
  tare: 'tare|poids a vide|moins|a vide|moins tare|tares|moins la tare|poids vide|tare de|moins tare de',
  emptyadj: 'vide|vides|a vide|vide et propre|vide propre',
  approx:
    'environ|a peu pres|autour de|a peu|approx|~|presque|env|environs|dans les|vers les|plus ou moins|aux environs de|aux alentours de|grosso modo|quelque chose comme|pas loin de|autour des|peut etre|approximativement|alentour de|genre|je dirais|une bonne|un bon|pres de|a vue de nez|proche de|dans le coin de|estime|estimes|estimation|mettons|disons|probablement|a quelques kilos pres',
  lowof: 'debut|bas|bas des',
  midof: 'milieu|mi|milieu des',
  highof: 'fin|haut|haut des',
  or: 'ou|ou bien|ou peut etre|soit|ou etait ce',
  unsure:
    'pas sur|pas sure|je crois|pas certain|pas certaine|illisible|je sais pas|je pense|me souviens plus|mal lu|difficile a lire|balance sautait|pas lisible|je me rappelle plus|je sais plus|balance sautillait|balance instable|peut etre|j arrive pas a lire|arrive pas a lire|difficile a dire|pas moyen de lire|plus sur|plus certain|je sais plus trop|la balance etait instable|balance bougeait|chais pas|chu pas sur|chu pu sur|la balance jumpait|la balance niaisait|j ai oublie lequel|me rappelle plus|on voit mal|j hesite|balance folle|entre les deux',
  correct:
    'non attends|attends non|pardon|excuse|je veux dire|plutot|non pardon|oups|desole|non|correction|erreur|scuse|euh non|scusez|ah non|nan|je voulais dire|oups non|non c est|non desole|attendez|attends|oops|excusez|euh pardon|non non|pas ca|oups pardon|rectification|woops|ou plutot|euh|non plutot|correction c est|je me trompe|je me suis trompe|non scuse|ah non c est|desolee|non excuse|attends c est|oups c est',
  neg: 'pas|pus|ne|n|aucun|aucune|jamais|sans|rien|personne|plus de|non|ni|pas encore|point|pas eu|guere|nul|nulle|pantoute|pas de|pas d|ya pas|y a pas|nenni|pu',
  intent:
    'faut|il faut|faudrait|il faudrait|va falloir|doit|dois|devrait|devrais|devons|on va|je vais|vais|va|vont|allons|a faire|pense a|pensez a|oubliez pas|oublie pas|penser a|besoin de|a besoin|a besoin de|veux|veut|voudrais|prevoir|prevu de|demain on|pourrais tu|peux tu|pouvez vous|quelqu un peut|pourriez vous|faudra|il faudra|falloir|j aimerais|esperons|n oubliez pas|n oublie pas|devra|devrons|pourrait|peut etre qu|doivent|mettez|mets|tourner|brasser|retourner|couvrir|vider|bientot|prochain|prochaine|avant de|compte|comptons|ira|ferai|fera|ferons|feront|voulons|souhaite|rappel|rappelle|penses|il reste a|reste a|j essaie|essayer|essaierai|tantot on|attendre|attendez que|pret pour|fais|faites|idealement|a prevoir|demande|demandez|ferais|quelqu un pourrait|qui peut|quelqu un doit|sera|serait|seront|aurait|prendrai|envisage|passerai|viendra|vas|plus tard|tout a l heure|a verifier|mettrai|mettra|tournerai|pourriez|brassera|brasserai|viderai|viendrai|retournera|retournerai|couvrirai|couvrira|vont livrer|livrera|compter|voulait|voulais|aimerais|pourra|pourrai|tannant de|aurait fallu|aurait du|j aurais du|on aurait du|failli|j ai failli|pas eu le temps de|pas eu le temps|oublie de|j ai oublie de|on a oublie de|faudrait que|tanne de|pas eu la chance de',
  cond: 'si|quand|lorsque|des que|au cas ou|a moins|sinon|une fois que|aussitot que|chaque fois que|lorsqu|s il|s ils|advenant|pourvu|en cas de|tant que',
  ask: 'qui|quoi|ou est|pourquoi|comment|combien|quel|quelle|quels|quelles|est ce que|est ce qu|as tu|avez vous|a t on|y a t il|qu est ce|qu est ce que|qu est ce qu|quand est ce|on a tu|c est quoi|c est qui|c est quand|est il|est elle|quelqu un a|avons nous|a tu|est tu|sont ils|faut il|doit on|on peut|peut on|puis je|je peux|faut tu|y a tu|vous avez|t as|tu as|as t on|tu as tu|est ce|lequel|laquelle|ou sont|avez|qui c|a qui|ya tu|es tu|a t il|a t elle|c tu|c est tu|etes vous|qu est ce qu on a rentre|qu est ce qu on a fait|combien on a rentre|combien on a pris|c etait comment|comment a ete|ca a donne quoi|qu est ce qui est rentre|on a rentre combien|on a pris combien|combien est rentre',
  hearsay:
    'cahier dit|l an passe|l annee passee|parait que|il parait|parait|j ai lu|selon|d apres|le journal|aux nouvelles|a la tele|ils disent|il dit|elle dit|mon voisin|dans le temps|le registre dit|le cahier|l article|il m a dit|elle m a dit|ma mere|facebook|le livre|le manuel|le site web|chez nous|chez moi|l autre site|mon chum|ma blonde|mon tas|mon jardin|l ete passe|l hiver passe|dans le livre|sur internet|d habitude|normalement|en general|en theorie|autrefois|avant on|la norme|la regle|reve|j ai reve|le record|minimum requis|le registre|le tableau dit|mon frere|ma soeur|mon pere|pour l annee|maison|a la maison|au chalet|mon compost|toujours dit|video|youtube|la radio|ma belle mere|mon fils|ma fille|on m a dit|capacite|contient|a une capacite|theorie|en moyenne|moyenne|depuis le debut de l annee',
  money:
    '$|€|£|piastres|dollars|dollar|euros|euro|piasse|piasses|prix|coute|coutent|paye|cout|couts|facture|vendre|rabais|dois|argent|cher|sous|cennes|tarif|budget|loyer|deneigement|billets|solde',
  deep: 'profond|profondeur|de profondeur|de profond|profonde|creux|de creux|en profondeur|prof|sous la surface|de fond|sous terre|au fond|a l interieur|d epais',
  'unit:kg': 'kg|kgs|kilo|kilos|kilogramme|kilogrammes|k|kil|klg',
  'unit:g': 'g|gramme|grammes|gr',
  'unit:lb': 'lb|lbs|livre|livres|lb.',
  'unit:oz': 'oz|once|onces',
  'unit:t': 't|tonne|tonnes',
  'unit:L': 'l|litre|litres|ltr|lt|lit',
  'unit:mL': 'ml|millilitres',
  'unit:gal': 'gal|gallon|gallons|gallons us',
  'unit:m3': 'm3|metres cubes|metre cube|m cube|m cubes|mcube|metre cubes|metres cube',
  'unit:yd3': 'verges cubes|verge cube|v3|verges|verge|vg3|yd3|vg cube|verges cube',
  'unit:ft3': 'pi3|pieds cubes|pied cube|ft3|pieds cube',
  'unit:cm': 'cm|centimetres|centimetre',
  'unit:mm': 'mm|millimetres|millimetre',
  'unit:m': 'm|metre|metres',
  'unit:in': 'po|pouce|pouces|in',
  'unit:ft': 'pi|pied|pieds|ft',
  'unit:C':
    'c|celsius|deg c|degres c|degres celsius|degre c|degre celsius|centigrades|degre celcius|degres celcius|celcius|dc',
  'unit:F': 'f|fahrenheit|deg f|degres f|degres fahrenheit|farenheit|degre f',
  'unit:deg': 'deg|degre|degres|degr|dg',
  'unit:min': 'min|minute|minutes|mins|mn',
  'unit:h': 'h|heure|heures|hrs|hres',
  'unit:d': 'jour|jours|j',
  'unit:%': 'pourcent|pour cent|pct|pour-cent',
  'numw:0': 'zero',
  'numw:1': 'un bac seul',
  'numw:2': 'deux|une paire de|couple de|une couple',
  'numw:3': 'trois',
  'numw:4': 'quatre',
  'numw:5': 'cinq',
  'numw:6': 'six',
  'numw:7': 'sept',
  'numw:8': 'huit',
  'numw:9': 'neuf',
  'numw:10': 'dix',
  'numw:11': 'onze',
  'numw:12': 'douze|une douzaine de|douzaine',
  'numw:13': 'treize',
  'numw:14': 'quatorze',
  'numw:15': 'quinze',
  'numw:16': 'seize',
  'numw:17': 'dix sept',
  'numw:18': 'dix huit',
  'numw:19': 'dix neuf',
  'numw:20': 'vingt|vingts',
  'numw:21': 'vingt et un|vingt et une',
  'numw:30': 'trente',
  'numw:31': 'trente et un|trente et une',
  'numw:40': 'quarante',
  'numw:41': 'quarante et un|quarante et une',
  'numw:50': 'cinquante',
  'numw:51': 'cinquante et un|cinquante et une',
  'numw:60': 'soixante',
  'numw:61': 'soixante et un|soixante et une',
  'numw:70': 'soixante dix|septante',
  'numw:71': 'soixante et onze',
  'numw:77': 'soixante dix sept',
  'numw:78': 'soixante dix huit',
  'numw:79': 'soixante dix neuf',
  'numw:80': 'quatre vingt|quatre vingts|huitante|octante',
  'numw:81': 'quatre vingt un|quatre vingt une',
  'numw:90': 'quatre vingt dix|nonante',
  'numw:97': 'quatre vingt dix sept',
  'numw:98': 'quatre vingt dix huit',
  'numw:99': 'quatre vingt dix neuf',
  'numw:100': 'cent|cents',
  'numw:1000': 'mille|mil',
  decimal: 'virgule|point',
  'plus:0.5': 'et demi|et demie|et demis',
  'plus:0.25': 'et quart|et un quart',
  'plus:0.75': 'et trois quarts',
  'frac:0.5':
    'demi|demie|moitie|la moitie du|a moitie|a demi|mi|a la moitie|moitie d un|moitie d une|la moitie de la|une moitie de',
  'frac:0.25': 'quart de|le quart d un|un quart d un|quart|le quart d une|un quart d une|au quart',
  'frac:0.75':
    'trois quarts de|trois quarts|trois quarts d un|trois quarts d une|aux trois quarts|aux 3 / 4|trois quart|3 quarts|trois quart de|au trois quarts|aux 3 quarts|les 3 quarts d un',
  'frac:0.3333333333333333': 'un tiers de|le tiers d un|tiers|un tiers d un|au tiers|un tiers d une',
  'frac:0.6666666666666666': 'deux tiers|deux tiers de|aux deux tiers|deux tiers d un|deux tiers d une',
  ofit: 'dont|la dedans|la dessus|de ca|de ce total',
  minus: 'moins',
  'letter:A': 'ah|ha',
  'letter:B': 'be|bay',
  'letter:C': 'ce|se|cey',
  'letter:D': 'de|dey',
  'letter:E': 'eu',
  'strength:faint': 'legere|leger|faible|petite|un peu|legerement|petit|faiblement|mineure|subtile',
  'strength:strong':
    'forte|fort|mauvaise|terrible|horrible|grosse|tres forte|beaucoup de|plein de|bien de|enormement de|grave|super fort|bcp de|enorme|epouvantable|insupportable|intense|tres fort|une tonne de|ben|full|vraiment fort|vraiment forte|fortement|atroce|degueulasse|violent|violents|violente|forts|fortes|intenses|gros|grosses|pas mal',
  more: 'un autre|une autre|encore un|encore une|1 autre|et un autre|et une autre|plus un autre|et encore un',
  same: 'pareil|meme chose|idem|encore pareil|la meme|comme avant|pareil que tantot|meme affaire|encore la meme chose|meme poids',
};

/** What people ask for in French. */
export const asking: Words = {
  'req:today':
    'qu est ce qu il y a a faire|que faut il faire|que faut il faire aujourd hui|qu est ce qu il faut faire aujourd hui|que reste t il a faire|que reste a faire|quoi faire|a faire aujourd hui|qu est ce qu on a a faire|qu est ce qui reste a faire|taches|liste|taches du jour|quoi faire aujourd hui|qu y a t il a faire|qu est ce qui est du|quoi a faire|c est quoi le plan|le programme|qu est ce qu on fait|qu est ce que je fais|que reste t il a faire|qu est ce qu il faut faire|quoi de prevu|il reste quoi a faire|reste quoi a faire|qu est ce qu il reste a faire|que faire|que dois je faire|qu est ce que je dois faire|quoi d autre a faire|on fait quoi|on fait quoi aujourd hui|je fais quoi|liste des taches|c est quoi les taches|c est quoi la job|qu est ce qu il y a a faire aujourd hui|que faire aujourd hui|qu est ce qu on doit faire|c est quoi qui reste a faire|programme du jour|y a quoi a faire|quelles sont les taches|y reste quoi a faire|la liste du jour|montre la liste|qu est ce qui presse|quelles taches|c est quoi la suite|a faire|qu est ce qui nous reste a faire|quoi de du|quelles taches restent|qu avons nous a faire|y a tu de quoi a faire|c est quoi l ouvrage|taches a faire|quoi faire ce matin|c est quoi la liste|les taches|qu est ce qui reste|il reste tu quelque chose a faire|on a quoi aujourd hui|c est quoi aujourd hui|je fais quoi aujourd hui',
  'req:week':
    'semaine|cette semaine|resume|resume de la semaine|resume hebdo|bilan|bilan de la semaine|comment va la semaine|sommaire|hebdo|sommaire de la semaine|la semaine passee|combien cette semaine|on est rendu ou cette semaine|bilan hebdo|comment a ete la semaine|semaine derniere|total de la semaine|combien cette semaine en tout|combien on a pris cette semaine|total cette semaine|on a fait combien cette semaine|resume semaine|chiffres de la semaine|recap de la semaine|rapport de la semaine|ca donne quoi cette semaine|combien on a recu cette semaine|combien on a fait cette semaine|ca a donne quoi cette semaine|resume hebdomadaire|bilan hebdomadaire|on est a combien cette semaine|on est rendu a combien cette semaine|graphique de la semaine|image de la semaine|c etait comment la semaine passee|combien on a rentre cette semaine|combien la semaine passee|on a fait quoi cette semaine|qu est ce qu on a fait cette semaine|qu est ce qu on a rentre cette semaine|ca donne quoi la semaine|les chiffres de la semaine|montre la semaine|resume de semaine|combien de bacs cette semaine|combien de kilos cette semaine|semaine passee|la semaine derniere',
  'req:year':
    'annee|cette annee|depuis le debut de l annee|combien cette annee|total annuel|total de l annee|combien on a recu cette annee|bilan annuel|l annee jusqu ici|combien on a ramasse cette annee|on est rendu a combien cette annee|combien avons nous recu cette annee|combien on a composte cette annee|bilan de l annee|combien de tonnes cette annee|on en est ou cette annee|ca va l annee|cumul annuel|cumul de l annee|on est rendu ou cette annee|ou en est on cette annee|cible atteinte|resume de l annee|total cette annee|on a detourne combien cette annee|combien depuis janvier|on a pris combien cette annee|combien de kilos cette annee|on est tu proche de la cible|comment va l annee|combien on a traite cette annee|on est rendus a combien cette annee|ou on en est avec la cible|rendu ou par rapport a la cible|total depuis janvier|combien depuis le debut de l annee|total depuis le debut de l annee|ou en sommes nous cette annee|combien on a pris cette annee|combien de restes cette annee|graphique de l annee|image de l annee',
  'req:mine':
    'qu est ce que j ai note|mes entrees|qu est ce que j ai inscrit|mes notes|ce que j ai note|qu est ce que j ai entre|j ai note quoi|mes inscriptions|j ai inscrit quoi|j ai entre quoi|montre mes entrees|mes enregistrements|qu ai je note|qu est ce que j ai envoye|liste mes entrees|qu ai je inscrit|qu est ce que j ai mis|j ai mis quoi|qu ai je enregistre|qu est ce que j ai enregistre|j ai logge quoi|mes saisies|qu est ce que j ai rentre|qu ai je entre|qu est ce que j ai logge|montre moi ce que j ai note|montre ce que j ai note|mes lignes|rappelle moi ce que j ai note|rappelle moi ce que j ai entre|c est quoi que j ai entre|qu est ce que j ai ecrit|j ai ecrit quoi|mes entrees d aujourd hui|mes affaires|montre mes affaires|qu est ce que j ai log',
  'req:mix':
    'melange|comment est le melange|combien de copeaux|combien de brf|combien de sciure|combien de copeaux il faut|combien de brouettes de copeaux|combien de structurant|mix|combien de copeaux ajouter|combien de seaux de copeaux|il faut combien de copeaux|faut combien de copeaux|melange du jour|combien de copeaux faut il|le melange est il correct|combien de copeaux on met|combien de copeaux je mets|faut tu plus de copeaux|le melange est tu correct|combien de brf il faut|combien de feuilles|le melange est bon|est ce qu il faut plus de copeaux|combien de copeaux de plus|combien de sacs de copeaux|assez de copeaux|combien de copeaux faut|de combien de copeaux on a besoin|combien de copeaux pour ca|on met combien de copeaux|je mets combien de copeaux|il manque combien de copeaux|comment va le melange|combien de copeaux mettre|combien faut il de copeaux|le mix est tu bon|besoin de combien de copeaux|ca prend combien de copeaux',
  coming:
    'arrivent|s en viennent|s en vient|prevus|a venir|attendus|pour|attendu|qui arrivent|demain|avec|vont arriver|qui s en viennent|on attend|si j ai|j ai|on a|on va avoir',
  'req:help':
    'aide|commandes|comment ca marche|que peux tu faire|instructions|a l aide commandes|aide moi|comment on fait|qu est ce que je peux dire|mode d emploi|besoin d aide|qu est ce que tu peux faire|tu fais quoi|menu|comment j inscris un bac|comment noter un bac|comment ca fonctionne|tu sais faire quoi|qu est ce que tu sais faire|comment utiliser|quoi ecrire|qu est ce que j ecris|quelles commandes|liste des commandes|aide svp|comment on note|comment je note un bac|comment je note|comment t utiliser',
  'req:status':
    'etat|comment va|comment vont|statut|ou en est|ou en est le|comment se porte|etat du|etat de|comment ca va|ca va comment|ou en sont|est ce qu il faut retourner|est ce qu il faut brasser|on devrait brasser|devrait on retourner|devrait on brasser|quelle temperature|c est quoi la temperature du|dernier brassage|status|les tas|c est quoi l etat du|doit on brasser|doit on retourner|comment est|va comment|quoi de neuf avec|des nouvelles du|dernier retournement|a quelle temperature est|quand brasser|quand retourner|quand est ce qu on brasse|quand est ce qu on retourne|peut on tamiser|ou en est on avec|quand a t on brasse|quand a ete brasse|comment il va|comment elle va|se porte comment|la temperature du|est ce qu on brasse|est ce qu on retourne|est ce qu on devrait brasser|est ce qu on devrait retourner|etat des|etats|donne moi l etat du|il est rendu ou|on devrait tu brasser|on devrait tu retourner|devrais je brasser|devrais je retourner|faut il retourner|faut il brasser|faut tu brasser|faut tu retourner|dois je brasser|dois je retourner|est rendu a combien|a combien est|ca va tu|va tu bien',
  about:
    'on brasse|est pret|est|pret|il fait combien|rendu ou|on retourne|prete|quand|assez chaud|tas|on devrait retourner|faut brasser|faut retourner|est ce que|chauffe|chauffe t il|chauffe tu|chauffe bien|est a combien|est il pret|est elle prete|est tu pret|est tu prete|fini|est il|est elle|est tu|doit etre brasse|doit etre retourne|montre|montre moi|je brasse|besoin d etre brasse|a besoin d etre brasse|rendu|rendu a combien|faut|c est quoi|temperature de|faudrait brasser|faudrait retourner|faudrait il brasser|faudrait il retourner|pret a tamiser|mur|est ce que je devrais brasser|sa temperature',
  'req:evidence':
    'preuve|preuves|preuve du|preuve de|preuves du|preuves de|montre la preuve du|montre les preuves du',
  'req:history':
    'historique|historique de|historique du|histoire du|dernieres lectures|lectures du|lectures passees|releves du|registre du|montre l historique|graphique du|graphique de|graphique|courbe du|toutes les lectures|toutes les lectures du|dernieres lectures du|courbe de|tendance du|historique des|historique pour|anciennes lectures du|courbe|montre les lectures du|montre moi l historique du|journal du|passe du|evolution du|evolution de|lectures de|donne moi l historique du|image de|image du|image|montre l image de|montre le graphique de|montre le graphique du',
  'req:undo':
    'annule|annuler|annule ca|efface ca|efface|enleve ca|supprime ca|annule le dernier|efface le dernier|oublie ca|annule la derniere|efface la derniere|defais|retire ca|annule la derniere entree|supprime le dernier|supprime la derniere|efface la derniere entree|enleve le dernier|annulez|supprime|retire le dernier|annule mon dernier|annule ma derniere entree|annule dernier|annule les|efface les|supprime les|annule l entree|oublie la derniere|oublie le dernier|enleve la derniere|retire la derniere|supprime la derniere entree|annule ca svp|annule le dernier bac|efface mon dernier|efface ma derniere entree|biffe ca|undo|annule cela|annule l inscription|ignore ca|ignore le dernier|ignore la derniere|laisse faire le dernier|laisse tomber le dernier|defaire|raye ca|scrap ca|annule derniere|annule tout ca|enleve mon dernier|enleve ma derniere entree|supprime mon dernier|biffe le dernier|biffe la derniere|enleve ce que je viens d ecrire|efface ce que je viens d ecrire|annule ce que je viens d envoyer|annule ce que j ai ecrit|efface ca svp|enleve les|retire les|oublie mon dernier|oublie ma derniere|efface les derniers|annule les derniers|annule mes|efface mes|supprime ma derniere|scrap le dernier|scrape ca|flushe ca|flush ca',
  last: 'dernier|derniere|derniers|dernieres',
  entries: 'entrees|entree|lignes|ligne|inscriptions|choses|enregistrements|inscription',
  'req:done':
    'fait|faite|c est fait|fini|termine|complete|numero|coche|finie|c fait|terminee|faits|faites|regle|j ai fait|j ai fini|done|j ai termine|cochez|cocher|completee|est fait|est faite|est fini|est finie|est termine|c est regle|sont faits|est coche|c est termine|bien fait',
  'req:claim':
    'je prends|je m occupe|je m occupe de|je m occupe du|je vais faire|je fais|je vais prendre|c est moi qui fais|j prends|je m en occupe|laissez moi|je peux faire|je ferai|je prendrai|c est a moi|je vais m occuper de|je vais m occuper du|je m en charge|je me charge de|je me charge du|jm occupe de|jm occupe du|moi je prends|moi je fais|je peux prendre|mets moi sur|jprends|je veux faire|je veux prendre|a moi|je vais m occuper des|je me charge des|je m occupe des|je m occupe de la|je reserve|donne moi|donnez moi|reserve moi|je vais me charger de',
  'req:release':
    'je peux pas faire|peux pas faire|je ne peux pas faire|quelqu un d autre peut prendre|je laisse|je rends|je ne pourrai pas faire|je redonne|je laisse tomber|je lache|pourrai pas faire|je me retire|je me desiste|j abandonne|je ne peux plus faire|je peux plus faire|laisse a un autre|je ne pourrai pas|je pourrai pas faire|je libere|je pourrai pas|je remets|j peux pas faire|enleve moi|je rends le|je passe mon tour pour|peux plus faire|pas capable de faire|je redonne le|je pourrai finalement pas faire|libere|je n aurai pas le temps de faire|j aurai pas le temps de faire|je peux finalement pas faire|je ne ferai pas|je ferai pas|je lache le|je donne ma place pour|je vais pas pouvoir faire|je vais pas faire|je debarque de|je me retire du|jpeux pas faire|jpeux pu faire|je peux pu faire|peux pu faire|je rends la|j ai pas le temps de faire|oubliez moi pour',
  'req:postpone':
    'reporte|reporter|remets|remettre|remet a demain|reporte a demain|plus tard|repousse|a plus tard|remets a demain|remettre a demain|on remet|on reporte|pousse a demain|repousse a demain|decale|reporte a|remets a|remet|a reporter|reportez|decaler|repousser|repousse a|decale a|on repousse|on remet a demain|peut attendre|attendra|remis a|pas aujourd hui|reporte a lundi|on reporte a|reporte au|repousse au|remettons|reportons|saute',
  'req:why':
    'pourquoi|pourquoi ca|comment ca se fait|explique|explique toi|pour quelle raison|pourquoi tu demandes ca|explique ca|c est pourquoi|comment ca|pourquoi donc|explique moi|pourquoi tu dis ca|d ou ca sort|raison|pour quoi faire',
  'req:show':
    'montre|montre entree|voir entree|voir|affiche|montre l entree|affiche l entree|montre moi l entree|voir l entree|montre moi|montre le|c est quoi l entree|details de|montre la|ouvre l entree|details|detail de l entree|fais voir|affiche le|ouvre|consulte|c etait quoi l entree|montrer|afficher|details de l entree',
  'req:export':
    'exporte|export|exporter|telecharger|donnees excel|fichier excel|csv|excel|tableur|exporte les donnees|envoie les donnees|envoie moi les donnees|exporte tout|telecharge les donnees|exporte en excel|exporte en csv|envoie le fichier excel|chiffrier|donne moi les donnees|telecharger les donnees|exportation|export des donnees|exporter les donnees|sors les donnees|envoie moi le csv|envoie moi un excel|le fichier excel svp|envoie excel',
  'req:report':
    'rapport|rapport svp|rapport mensuel|rapport annuel|envoie le rapport|fais un rapport|fais le rapport|rapport pour l inspecteur|sors le rapport|rapport du mois|genere un rapport|rapport pour la ville|genere le rapport|rapport pdf|envoie moi le rapport|pdf|donne moi le rapport|j ai besoin du rapport|rapport de conformite|produis le rapport|sort le rapport|prepare le rapport|cree un rapport|rapport trimestriel|rapport a imprimer|besoin d un rapport|rapport pour|le rapport|imprime le rapport',
  'req:share':
    'partage nouveau|nouveau lien|partage nouveau lien|partage|partager|lien de partage|lien a partager|page publique|partager la page|donne moi un lien|partage les chiffres|lien public|envoie le lien|partage la page|partage le lien|cree un lien|partager les chiffres|partage le bilan|partage le resume|partage avec|lien pour partager|affiche a partager|partage les resultats|donne un lien|lien svp',
  'req:accepts':
    'est ce qu on prend|on prend tu|on accepte|peut on mettre|est ce que ca va au compost|est accepte|accepte t on|on peut mettre|est ce qu on accepte|on prend|ca va au compost|peut on composter|est ce qu on peut mettre|est compostable|compostable|on peut tu mettre|je peux mettre|accepte|est ce que je peux mettre|va au compost|vont au compost|puis je mettre|acceptez vous|prend on|acceptes|acceptees|acceptee|peut on ajouter|on peut composter|est ce permis|dans le compost|on accepte tu|sont acceptes|sont acceptees|est ce qu on peut composter|ca va dans le bac|va dans le bac|ca se composte|se composte|se compostent|sont compostables|peut aller au compost|peuvent aller au compost|ca va tu au compost|est ce qu on peut ajouter|est ce que ca se composte|on peut jeter|est ce qu on composte|peut on jeter|compostables|dans le tambour on peut mettre|on peut tu composter|est ce qu on peut jeter|on peut ajouter|est acceptee|vont dans le bac|a t on le droit de mettre|permis|permise|au compost|vont dedans|va dedans|ca va dedans|vont au bac|va au bac',
  'req:language':
    'langue|parle|en francais|reponds en|passe en|change la langue|parle moi en|langue en|change de langue|repond en|parle en|francais svp|reponds moi en|passe a|mets en|en francais svp|change pour|ecris en|mets la langue en|switch en|langue a|je parle|parlez|repondez en|changer la langue',
  'lang:en': 'anglais|english',
  'lang:fr': 'francais|french',
  'lang:es': 'espagnol|spanish',
  'req:forget-me':
    'oublie moi|supprime mes donnees|efface mes donnees|enleve mon nom|efface mon nom|oubliez moi|supprime mon nom|retire mon nom|efface moi|supprime moi|efface tout sur moi|retire mes donnees|supprimez mes donnees|effacez mes donnees|efface mes infos|supprime mes infos|enleve mes donnees|retire moi|je veux etre oublie',
  'req:role':
    'coordonnateur|coordonnatrice|coordinateur|coordinatrice|est coordonnateur|role|mon role|c est qui le coordonnateur|quel est mon role|c est quoi mon role|qui est coordonnateur|qui est le coordonnateur|qui est la coordonnatrice|je suis le coordonnateur|je suis la coordonnatrice|nomme coordonnateur|nomme|roles|est la coordonnatrice|est le coordonnateur|fais coordonnateur|c est qui la coordonnatrice|est maintenant coordonnatrice',
  'req:settings':
    'reglages|parametres|montre les reglages|liste des reglages|voir les reglages|montre les parametres|configuration|reglages actuels|quels sont les reglages|c est quoi les reglages|voir les parametres|affiche les reglages|affiche les parametres|parametres du site|reglages du site|liste les reglages|quels sont les parametres',
  'req:handover':
    'qu est ce qui s est passe|quoi de neuf|releve|mets moi a jour|qu est ce que j ai manque|que s est il passe|il s est passe quoi|quoi de nouveau|passation|qu est ce que j ai rate|changement de quart|j ai manque quoi|s est passe quoi|qu est ce qui a ete fait|quoi de neuf depuis|ca dit quoi depuis|qu est ce qu il y a eu|mise au courant|mets moi au courant|mettez moi a jour|y s est passe quoi|qu est ce qui s est fait|rattrapage|resume depuis|qu est ce qui est arrive|j ai rate quoi|passage de quart|transmission|mets moi au parfum|recap',
  since: 'depuis|de|apres|sur|pendant|durant',
  'req:new-here':
    'je suis nouveau|je suis nouvelle|nouveau ici|premiere journee|premier jour|c est ma premiere journee|c est mon premier jour|mon premier jour|ma premiere journee|nouvelle ici|chu nouveau|chu nouvelle|je commence aujourd hui|nouvelle benevole|nouveau benevole|je suis un nouveau benevole|je viens d arriver|par ou commencer|je suis nouvelle ici|je suis nouveau ici|premiere fois ici|comment commencer|je commence ici|je viens de commencer|je debute|c est ma premiere fois|je suis une nouvelle benevole|premier quart',
  'req:room':
    'de la place pour|place pour|y a t il de la place|il reste de la place|est ce qu il reste de la place pour|a t on de la place pour|reste t il de la place pour|on a de la place pour|y a tu de la place pour|il y a de la place pour|est ce qu il y a de la place pour|avons nous de la place pour|est ce qu on a de la place pour|on a tu de la place pour|assez de place pour|de la place|il reste t il de la place pour|reste t il de la place|est ce qu il reste de la place|reste tu de la place pour|il reste tu de la place pour|y reste tu de la place pour|il reste de la place pour|y a t il de la place pour|assez de place|ca rentre|rentrent|peut on prendre|peut on mettre|est ce qu on peut prendre|on peut tu prendre|y a tu de la place|a t on de la place|reste de la place|reste de la place pour|y a encore de la place pour|encore de la place pour|encore de la place|il y a encore de la place pour|combien de place|combien de place reste t il|combien de place il reste|est ce que ca rentre',
  'req:trace':
    'peut on donner|on peut donner|donner|d ou vient|qu y a t il dans|trace|est ce qu on peut donner|pret a donner|on peut tu donner|peut on distribuer|est ce que je peux donner|provenance du|qu est ce qu il y a dans|tracabilite|peut on utiliser|est ce qu on peut distribuer|d ou vient le|peut on epandre|peut etre donne|on peut distribuer|tracabilite du|est ce qu on peut utiliser|peut on vendre|qu est ce qui est entre dans|securitaire a donner|bon a donner|peut on le donner|c est quoi qu il y a dans|y a quoi dans|securitaire a donner|est ce qu on peut epandre|origine du|pret a etre donne|est ce que les gens peuvent prendre|je peux donner|puis je donner|peut on sortir|peut on offrir|d ou provient|qu est ce qui a ete mis dans|qu a t on mis dans|on a mis quoi dans|peut il etre donne|pouvons nous donner',
  'req:feedback':
    'qu est ce que je dis a|qu est ce que je dis au|je dis quoi a|je dis quoi au|retour pour|commentaire pour|message pour|qu est ce qu on dit a|qu est ce qu on dit au|on dit quoi a|on dit quoi au|que dire a|que dire au|retroaction pour|que dois je dire a|que dois je dire au|qu est ce que je peux dire a|qu est ce que je peux dire au|je raconte quoi a|feedback pour|commentaires pour|je dis quoi|on dit quoi|que puis je dire a|quoi dire a|quoi dire au|qu est ce que je dis|qu est ce que je devrais dire a|qu est ce que je devrais dire au|quoi dire|que dire|quel message pour|un mot pour|feedback|retour a|qu est ce qu on dit|que dit on a|que dit on au',
  'req:closed':
    'ferme|fermes|on est ferme|on est fermes|on ferme|ferme du|conge|conge du|fermeture|fermeture du|site ferme|le site est ferme|le site sera ferme|on sera ferme|on sera fermes|nous sommes fermes|sera ferme|fermeture du site|vacances|nous serons fermes|relache|serons fermes|est ferme|conge de|ferme le|on ferme du|on va etre fermes|on va fermer|on va fermer du|fermes du|fermes le|on est en conge|on est en vacances|en conge|en vacances|personne ici du|conge|conge le|site ferme du|site ferme le',
  until: 'jusqu au|jusqu a|au|a|jusque|jusqu',
  'req:duty':
    'nouvelle tache|ajoute une tache|ajouter une tache|rappelle nous|rappelle nous de|nouveau devoir|nouvelle corvee|ajoute la tache|rappelle moi de|rappel|ajoute un rappel|nouvelle tache hebdo|nouvelle tache quotidienne|cree une tache|nouvelle tache hebdomadaire|ajoute une corvee|nouvelle routine',
  'set!:set':
    'regle|mets|mettre|change|fixe|definis|definir|set|configure|ajuste|reglage|changer|modifie|fixer|mettez|regler|etablis|change le|change la|mets la|mets le|entre',
  'set:units': 'unites|unite',
  'set:target': 'objectif|cible|objectif annuel|cible annuelle|but|objectif de l annee|cible de l annee',
  'set:time-zone': 'fuseau|fuseau horaire|zone horaire',
  'set:day-order':
    'ordre des dates|format de date|ordre de date|dates|format des dates|ordre du jour et du mois',
  'set:summary':
    'resume|sommaire|bilan|resume hebdo|resume de la semaine|bilan de la semaine|resume hebdomadaire|sommaire hebdo',
  'set:morning': 'liste du matin|message du matin|matin|note du matin|rappel du matin|message matinal',
  'set:rule-set': 'regle sanitaire|norme|ensemble de regles|regles|jeu de regles|norme sanitaire',
  'set:recipe': 'recette|ratio|proportion|recette du melange|ratio de melange',
  'set:moisture': 'humidite|teneur en eau|humidite de|humidite des|taux d humidite',
  'set:factor': 'facteur|pese plein|poids plein|plein pese|facteur de|facteur du|poids d un plein|contient',
  'set:litres': 'volume|capacite|contient|litres|grandeur|contenance|de|fait',
  'set:tare': 'tare|poids a vide|a vide|vide|poids vide',
  'set:language': 'langues',
  'set:cautions': 'rappels de prudence|prudence|rappels',
  'set:keep-messages': 'garder les messages|garde les messages|conservation des messages',
  'set:aeration': 'aeration',
  aeration: 'forcee|passive|retournee|statique|andain|active|naturelle',
  'set:safety:emergencyNumber': 'numero d urgence|urgence|telephone d urgence|no d urgence|numero urgence',
  'set:safety:address': 'adresse|notre adresse|adresse du site',
  'set:safety:isolator':
    'sectionneur|interrupteur principal|disjoncteur principal|point de cadenassage|interrupteur general',
  'set:safety:firstAider': 'secouriste|premiers soins',
  'set:accepts':
    'accepte|on accepte|on prend|on ne prend plus|on n accepte plus|on ne prend pas|on n accepte pas|on prend plus|on accepte plus|on accepte maintenant|on prend maintenant|n accepte plus|ne prend plus|n accepte pas|on accepte desormais|on prend desormais|n acceptez plus|accepter',
  refuse:
    'on ne prend plus|on n accepte plus|on ne prend pas|on n accepte pas|on prend plus|on accepte plus|n accepte plus|ne prend plus|n accepte pas',
  yes: 'oui|ouais|ouaip|exact|exactement|c est ca|correct|d accord|ok|certain|mets en|en effet|oui oui|affirmatif|tout a fait|bien sur|oui svp',
  noans:
    'non|nope|nan|ni l un ni l autre|laisse faire|laisse tomber|oublie ca|annule|aucun|aucune|non merci|pas besoin',
  'choice:first': 'le premier|la premiere|premier|premiere|1er|1ere|le 1er|la 1ere',
  'choice:second':
    'le deuxieme|la deuxieme|deuxieme|le second|la seconde|le dernier|l autre|2e|le 2e|la 2e|second|seconde',
  'choice:each': 'chacun|chacune|chaque|par bac|chaque bac',
  'choice:all': 'tous|tous ensemble|au total|total|les deux|en tout|ensemble|pour les deux|au complet',
  'weekday:monday': 'lundi|lun|lundis',
  'weekday:tuesday': 'mardi|mardis',
  'weekday:wednesday': 'mercredi|mer|mercredis',
  'weekday:thursday': 'jeudi|jeu|jeudis',
  'weekday:friday': 'vendredi|ven|vendredis',
  'weekday:saturday': 'samedi|sam|samedis',
  'weekday:sunday': 'dimanche|dim|dimanches',
};
