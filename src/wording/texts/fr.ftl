### Ce que dit Heaphand, en français. Court, simple, les mots de l'équipe.
### {$entry} est le numéro d'une ligne du cahier.

## Par Telegram
telegram-not-known =
    Je tiens le cahier de l'équipe d'un seul site, et ce chat n'en fait pas partie.
    Pour m'utiliser ici, demandez à la personne qui s'occupe de moi le mot qui ouvre la porte à un groupe.
telegram-let-in =
    Ce groupe tient maintenant le cahier de { $site }.
    Écrivez ce que vous avez fait : « bac 61,5 kg », « B 58 ». « aide » en montre plus.
    Pour reprendre une ligne, bouton Annuler ou « annule » : effacer un message ne change rien au cahier.
telegram-cannot-hear =
    Je n'entends pas les messages de ce groupe : le mode confidentiel est actif.
    Nommez-moi admin, ou coupez ce mode dans mes réglages de bot et ajoutez-moi de nouveau.
    D'ici là : /log bac 61,5, ou répondez à un de mes messages.
telegram-cannot-read = Je ne lis que du texte. Écrivez-le, ou mettez les mots sous la photo.
telegram-gap =
    J'ai été absent plus d'une journée. Il manque peut-être des messages :
    renvoyez ce qui n'est pas au cahier.
telegram-which-site = Vous êtes de plusieurs sites. C'est pour lequel ? (/site pour changer plus tard.)
telegram-unreached = { $has ->
    [no] Une alerte est arrivée et aucun coordinateur n'est connu ici : que la personne responsable regarde tout de suite.
   *[yes] { $who } : une alerte est arrivée et aucun coordinateur n'a pu être joint directement. Regardez ici tout de suite.
  }
    Pour être prévenu directement, ouvrez une conversation avec moi et appuyez sur Démarrer.
telegram-topic-chosen = Le bilan de la semaine et la ligne du matin arriveront ici.
menu-today = Ce qu'il y a à faire
menu-week = La semaine en chiffres
menu-piles = L'état
menu-mix = Le mélange du jour
menu-undo = Reprendre ma dernière ligne
menu-log = Noter quelque chose : /log bac 61,5
menu-help = Ce que je comprends
menu-year = L'année et son objectif
menu-settings = Les réglages du site
menu-share = Un lien pour qui n'a pas de compte
menu-export = Le cahier en tableur
menu-report = Un rapport à remettre
menu-here = Bilan et ligne du matin dans ce fil

## Noms des choses
place-pile = tas { $name }
place-bay = case { $name }
place-drum = { $named ->
    [yes] tambour { $name }
   *[no] tambour
  }
place-exit = sortie
place-ambient = air ambiant
place-floor = plancher
place-lift = lève-bac

material-food-scraps = restes
material-wood-chips = copeaux
material-sawdust = sciure
material-leaves = feuilles
material-cardboard = carton
material-paper = papier
material-straw = paille
material-grass = gazon
material-coffee-grounds = marc de café
material-garden-waste = déchets verts
material-manure = fumier
material-finished-compost = compost fini
material-water = eau
material-residue = résidus
material-leachate = lixiviat
material-overs = refus

container-cart = { $count ->
    [one] bac
   *[other] { $shown } bacs
  }
container-bucket = { $count ->
    [one] seau
   *[other] { $shown } seaux
  }
container-bag = { $count ->
    [one] sac
   *[other] { $shown } sacs
  }
container-bale = { $count ->
    [one] botte
   *[other] { $shown } bottes
  }
container-barrel = { $count ->
    [one] baril
   *[other] { $shown } barils
  }
container-barrow = { $count ->
    [one] brouette
   *[other] { $shown } brouettes
  }
container-loader-bucket = { $count ->
    [one] godet
   *[other] { $shown } godets
  }

point-top = haut
point-middle = milieu
point-bottom = bas
point-north = nord
point-south = sud
point-east = côté est
point-west = ouest
point-front = avant
point-back = arrière
point-core = cœur
point-edge = bord

feel-dry = sec
feel-right = juste bien
feel-wet = mouillé
feel-dripping = ça dégoutte
layer-mature-compost = compost mûr
layer-wood-chips = copeaux
layer-geotextile = géotextile
layer-tarp = bâche
layer-unspecified = couverture
mode-automatic = automatique
mode-manual = manuel
mode-off = arrêt
fan-off = arrêté
fan-low = bas
fan-high = haut
topic-odour = odeur
topic-leachate = lixiviat
topic-flies = mouches
topic-pests = rongeurs
topic-freezing = gel
topic-fault = panne
topic-power = panne de courant
topic-spill = déversement
topic-contamination = contamination
topic-sharps = objet piquant
topic-complaint = plainte
topic-smoke = fumée
topic-injury = personne blessée
topic-other = autre
strength-none = aucune
strength-faint = faible
strength-strong = forte
chore-sweep = balayage
chore-wash-lift = lève-bac lavé
chore-wash-containers = bacs lavés
chore-clean-tools = outils nettoyés
chore-clean-spill = déversement nettoyé
chore-check-fan = ventilateur vérifié
chore-check-stop-button = arrêt d'urgence testé
chore-check-scale = balance vérifiée
chore-check-thermometer = thermomètre vérifié
chore-check-odour = ronde d'odeurs
chore-lock-gate = barrière fermée à clé
chore-inspect = inspection
chore-watered = arrosage
weather-rain = pluie
weather-frost = gel
weather-snow = neige
weather-heat = chaleur
weather-wind = vent
qualifier-not-detected = non détecté
choice-start = le commencer
choice-each = chacun
choice-all = pour tous
choice-both = pour les deux
choice-net = net
choice-gross = brut
choice-same = même bac
choice-another = un autre bac
choice-yes = oui
choice-no = non
choice-full = plein
choice-ready = prêt
choice-today = aujourd'hui
choice-drop = laisser tomber
kind-weigh-in = pesée
kind-temperature = température
kind-moisture = humidité
kind-turning = retournement
kind-cover = couverture
kind-discharge = vidange
kind-transfer = transfert
kind-removal = sortie du site
kind-lab-result = résultat du labo
kind-pile = tas
kind-level = niveau

date-today = aujourd'hui
date-yesterday = hier, { $day }
date-tomorrow = demain, { $day }
date-at = { $date } { $clock }

## Lignes du cahier
what-material = { $material }
what-container = { $container }
what-container-of = { $container } { DE($material) }
what-load = { $count ->
    [one] charge
   *[other] { $count } charges
  }
line-net = #{ $entry } { CAP($what) } { $net } net ({ $gross } − { $tare })
line-pending = #{ $entry } { CAP($what) } { $gross } brut, net en attente : tare inconnue
line-weighed = #{ $entry } { CAP($what) } { $kg }
line-volume = #{ $entry } { CAP($what) } { $litres }
line-counted = #{ $entry } { CAP($what) }
line-temperature = #{ $entry } { CAP($place) } { $values }
line-moisture = #{ $entry } { CAP($place) }, au toucher : { $feel }
line-moisture-percent = #{ $entry } { CAP($place) } { $pct } d'eau
line-turned = #{ $entry } Retourné : { $pile }
line-turned-into = #{ $entry } Retourné : { $pile } vers { $to }
line-covered = #{ $entry } Couvert : { $pile }, { $layer }
line-uncovered = #{ $entry } Découvert : { $pile }, sans { $layer }
line-discharge = #{ $entry } Tambour vidé
line-discharge-to = #{ $entry } Tambour vidé sur { $pile }
line-transfer = #{ $entry } { CAP($from) } vers { $to }
line-drum-setting = #{ $entry } { CAP($place) }, réglage
line-level = #{ $entry } { CAP($what) }, niveau
line-problem = #{ $entry } Problème noté : { $topic }
line-resolved = #{ $entry } Terminé : { $topic }
line-chore = #{ $entry } { CAP($chore) }
line-weather = #{ $entry } Météo annoncée : { $weather }, { $date }
line-weather-observed = #{ $entry } Météo vue : { $weather }
line-removal = #{ $entry } Sorti du site : { $material }
line-screening = #{ $entry } Tamisé : { $pile }
line-delivery = #{ $entry } Livré : { $material }
line-rejected = #{ $entry } Refusé : { $what }
line-pile-started = #{ $entry } Commencé : { $pile }
line-pile-full = #{ $entry } { CAP($pile) }, plein et fermé
line-pile-finished = #{ $entry } { CAP($pile) }, terminé
line-pile-ready = #{ $entry } { CAP($pile) }, dit prêt
line-pile-emptied = #{ $entry } { CAP($pile) }, vide
line-pile-joined = #{ $entry } { CAP($pile) } fusionné avec { $with }
line-pile-split = #{ $entry } { CAP($pile) } séparé { DE($with) }
line-pile-moved = #{ $entry } { CAP($pile) } est maintenant { $to }
line-sample = #{ $entry } { $count ->
    [one] Échantillon
   *[other] { $count } échantillons
  } { DE($pile) }
line-lab = #{ $entry } Labo, { $place } : { $analyte } { $value }
line-density = #{ $entry } { CAP($place) } : masse volumique { $density }
line-hours = #{ $entry } { $people ->
    [one] Une personne
   *[other] { $people } personnes
  }, { $hours } h
line-note = #{ $entry } Note : { $has ->
    [no] les mots en ont été effacés
   *[yes] { $text }
  }
line-setting = #{ $entry } Réglé : { $what }
line-void = #{ $entry } annule #{ $old }
line-duty = #{ $entry } Tâche : { $name } ({ $every })
line-duty-removed = #{ $entry } Tâche retirée : { $name }
line-duty-claim = #{ $entry } À vous : { $duty }
line-duty-release = #{ $entry } Rendu : { $duty }
line-duty-postpone = #{ $entry } Remis : { $duty } { $until }
line-duty-done = #{ $entry } Fait : { $duty }

part-kg = { $kg }
part-litres = { $litres }
part-containers = { $what }
part-estimate-litre = environ { $kg } (estimé, { $factor } kg/L{ $hasRange ->
    [yes] {" "}; { $low }–{ $high }
   *[no] {""}
  })
part-estimate = environ { $kg } (estimé, { $each } chacun{ $hasRange ->
    [yes] {" "}; { $low }–{ $high }
   *[no] {""}
  })
part-no-estimate = poids inconnu
part-fill = plein à { $pct }
part-from = { DE($source) }
part-into = dans { $place }
part-off = { DE($place) }
part-to = vers { $to }
part-at = { $place }
part-words = { $text }
part-contaminated = contaminé
part-of-which = dont { $what } { $kg }
part-lowest-highest = min { $low }, max { $high }
part-depth = à { $depth } de profondeur
part-mode = { $mode }
part-every = aux { $min }
part-fan = ventilateur { $fan }
part-strength = { $strength }
part-reads = { $reads } pour { $against }
part-mm = { $mm }
part-overs = refus { $amount }
part-approximate = environ
part-replaces = remplace #{ $old }
part-date = { $date }
part-clock = { $clock }

assumed-unit-other = lu comme { $typed }
assumed-date-carried = même jour que plus haut
assumed-place-carried = même endroit que plus haut
assumed-spelling = lu malgré une faute
assumed-pile-successor = le tas qu'il est devenu
assumed-same-again = comme avant

setting-tare = tare { $container } { $kg }
setting-litres = { $container } : { $litres }
setting-factor = { $container }, plein : { $kg } net
setting-moisture = { $material } { $pct } d'eau
setting-target = objectif { $tonnes } par an
setting-other = { $name } { $value }
setting-week = bilan de la semaine, { $day } { $clock }
setting-morning = ligne du matin, { $clock }
setting-ratio = recette { $chips } de copeaux pour { $food } de restes
setting-no-recipe = pas de recette ; retour à la fenêtre habituelle
setting-accepts = { $has ->
    [in] on prend { $in }
    [out] on refuse { $out }
   *[both] on prend { $in } ; on refuse { $out }
  }
setting-nearby = gens fragiles à côté : { $nearby ->
    [wards] hôpital ou foyer
    [classrooms] école
   *[none] personne
  }
setting-cautions = { $on ->
    [on] rappels de prudence du jour : oui
   *[off] rappels du jour : non ; cadenassage, piqûres et feu restent
  }
setting-cap = plafond par { $per } { $kg }
setting-cap-off = plus de plafond par { $per }
setting-paper = { $what } { $name } expire { $date }
setting-paper-off = { $what } { $name } n'est plus suivi
setting-every = { $what } tous les { $days ->
    [one] jours
   *[other] { $days } jours
  }
setting-wards = côté à préserver des odeurs : { $point }
setting-wards-off = aucun côté à préserver des odeurs
setting-name-turn-pile = retournement en maturation
settings-also = { CAP($what) }
cap-over = Plafond par { $per } dépassé : { $kg } sur { $cap }, jusqu'à { $date }. Le permis décide de ce qui peut encore entrer.
part-wind-from = du { $point }
part-wind-to = vers les { $near }
permit-permit = permis
permit-training = formation
near-wards = chambres
near-classrooms = salles de classe
near-people = voisins
compass-north = nord
compass-north-east = nord-est
compass-east = est
compass-south-east = sud-est
compass-south = sud
compass-south-west = sud-ouest
compass-west = ouest
compass-north-west = nord-ouest
setting-keep = mots des messages gardés { $days ->
    [one] 1 jour
   *[other] { $days } jours
  }
setting-name-unit-mass = poids en
setting-name-unit-temperature = températures en
setting-name-unit-volume = volumes en
setting-name-unit-length = longueurs en
setting-name-time-zone = fuseau horaire
setting-name-day-order = ordre des dates
setting-name-languages = langues
setting-name-week-starts = début de semaine
setting-name-year-starts = mois de début d'année
setting-name-rule-set = règle de chaleur
setting-name-safety-emergencynumber = numéro d'urgence
setting-name-safety-address = adresse
setting-name-safety-isolator = sectionneur
setting-name-safety-firstaider = secouriste
setting-name-aeration = aération
setting-name-name = nom
setting-name-place = lieu
setting-name-page-address = adresse de la page
setting-name-holds = charge habituelle
setting-name-bulk-density = masse volumique

more-entries = … et { $count } lignes de plus, toutes au cahier.

## Doutes : la question qui règle la chose
doubt-too-heavy = #{ $entry } { $said } : trop lourd pour ça. Lequel ?
doubt-too-light = #{ $entry } { $said } : trop léger, même vide il pèse plus. Lequel ?
doubt-negative = #{ $entry } { $said } : moins que rien. Combien ça pesait ?
doubt-each-or-all = #{ $entry } { $said } : chacun, ou pour tous ?
doubt-count-differs = #{ $entry } { $said } : le compte et les poids ne vont pas ensemble. Lequel est bon ?
doubt-gross-or-net = #{ $entry } { $said } : avec le contenant, ou sans ?
doubt-tare-unlikely = #{ $entry } { $said } : un brut et une tare, ou une fourchette ?
doubt-other-unit = #{ $entry } { $said } : loin de l'habitude, peut-être l'autre unité. Laquelle ?
doubt-which-unit = #{ $entry } { $said } : °C ou °F ?
doubt-impossible-temperature = #{ $entry } { $said } : impossible. Relire la sonde ?
doubt-impossible-value = #{ $entry } { $said } : impossible. Lequel ?
doubt-number-ambiguous = #{ $entry } { $said } : quel nombre ?
doubt-either-or = #{ $entry } { $said } : lequel ?
doubt-no-material = #{ $entry } { $said } : qu'y avait-il dedans ?
doubt-no-place = #{ $entry } { $said } : quel tas ?
doubt-unknown-place = #{ $entry } { $said } : { $place }, inconnu ici. Le commencer, ou lequel ?
doubt-ceased-place = #{ $entry } { $said } : { $place } n'existe plus. Lequel ?
doubt-which-places = #{ $entry } { $said } : quels tas ?
doubt-date-impossible = #{ $entry } { $said } : ce jour n'existe pas. Quel jour ?
doubt-date-contradicts = #{ $entry } { $said } : le jour et la date ne vont pas ensemble. Quel jour ?
doubt-date-today-or-last = #{ $entry } { $said } : aujourd'hui, ou il y a une semaine ?
doubt-date-in-future = #{ $entry } { $said } : c'est encore à venir. Quel jour ?
doubt-date-too-old = #{ $entry } { $said } : c'est bien loin. Quel mois ?
doubt-same-cart = #{ $entry } On dirait { $said }, noté tout à l'heure. Le même bac ou un autre ?
doubts-same-cart = { $entries } : on dirait { $said }, notés tout à l'heure. Les mêmes bacs ou d'autres ?
doubt-full-or-ready = #{ $entry } { $said } : plein, ou prêt à servir ?
doubt-unclear = #{ $entry } { $said } : pas sûr de comprendre.
doubts-wait = { $count ->
    [one] Pas encore compté.
   *[other] Rien de cela n'est encore compté.
  }
danger-if-true = Si c'est vrai, feu proche : N'OUVREZ PAS, NE RETOURNEZ PAS. Tous à l'écart, ventilateur coupé si sans danger, appelez les pompiers. Ne mouillez pas à moitié.

answered-already = #{ $entry } a déjà sa réponse : voir #{ $by }.
dropped = { $count ->
    [one] { $entries } laissé tomber. Reste au cahier, pas compté.
   *[other] { $entries } laissés tomber. Ils restent au cahier, pas comptés.
  }
button-choice = { $choice }
button-drop = Laisser tomber
button-name = { $who }
button-undo = { $count ->
    [one] Annuler
   *[other] Annuler les { $count }
  }
button-undo-entry = Annuler #{ $entry }
button-gone = Ce bouton n'est plus connu. Écrivez-le plutôt.

## Corriger
undone = { $count ->
    [one] Annulé : { $entries }. Reste au cahier, pas compté.
   *[other] Annulés : { $entries }. Restent au cahier, pas comptés.
  }
undone-already = #{ $entry } était déjà annulé (#{ $by }).
replaced-already = #{ $entry } est remplacé par #{ $by }. Pour annuler celui-là : « annule #{ $by } ».
not-yours = #{ $entry } vient de quelqu'un d'autre : cette personne ou la coordination peut l'annuler.
no-such-entry = Il n'y a pas de #{ $entry } au cahier.
nothing-to-undo = Rien de vous à annuler.
amend-which = Quelle ligne devient { $to } ? Répondez à son message, ou « annule » et renvoyez-la.
edited = { $count ->
    [one] Message modifié : { $entries } est remplacé.
   *[other] Message modifié : { $entries } sont remplacés.
  }
left-over = Pas lu : { $pieces }{ $more ->
    [0] {""}
   *[other] {" "}et { $more } autres
  }
what-was-number = { $text } : c'était quoi ? Rien de noté.
kept-unread = Votre message est gardé, mais quelque chose a mal tourné de notre côté. On va regarder.

## Ce qui manque
ask-tare = Combien pèse ce contenant vide ({ $container }) ? Juste le nombre, ou « { $container } vide 15,5 ».
ask-safety =
    Pour une urgence, réglez une fois ce qui n'est pas encore connu ici :
    règle numéro d'urgence … · règle adresse … · règle secouriste …{ $hasDrum ->
    [yes] {" "}· règle sectionneur …
   *[no] {""}
  }
ask-nearby = Des gens fragiles à côté ? « règle gens fragiles hôpital », « école » ou « personne » : on saura quand ne pas retourner.
ask-ambient = Combien fait-il dehors ? « ambiant 12 » : l'écart avec l'air dit comment va le tas.
completed = #{ $entry } : { $net } net ({ $gross } − { $tare })

## Réglages
coordinators-only = Seule la coordination peut changer ça.
setting-unknown = « { $name } » ne se règle pas. Essayez « réglages ».
setting-out-of-range = Cette valeur ne va pas pour { $name }. Rien de changé.
rule-set-readings = Des relevés hebdomadaires ne montrent jamais { $needed } { $unit }{ $hasTurns ->
    [yes] {" "}avec { $turns } brassages
   *[no] {""}
  } : un jour sans relevé ne prouve rien. Un tas fermé se relève chaque jour.
settings-head = { $site }, { $zone }
settings-units = Unités : { $mass }, °{ $temperature }
settings-target = Objectif : { $tonnes } par an
settings-no-target = Objectif : aucun (« règle objectif 60 t »)
settings-tare = Tare { $container } : { $kg }
settings-no-tare = Tare { $container } : inconnue
settings-rule-set = Règle de chaleur : { $name }
settings-no-rule-set = Règle de chaleur : aucune (« règle norme vessel-3d »)
settings-nearby = Gens fragiles à côté : { $nearby ->
    [wards] hôpital ou foyer
    [classrooms] école
    [none] personne
   *[unsaid] pas dit, donc supposés proches (« règle gens fragiles personne »)
  }
settings-how = Pour changer, « règle … » : règle tare bac 15,5 · règle unités lb F · règle fuseau Europe/Paris · règle bilan lundi 7:00

## Urgences : quoi faire maintenant, dans l'ordre
emergency-drum = APPUYEZ SUR L'ARRÊT ROUGE, COUPEZ LE COURANT. Personne n'y met la main, personne n'entre. Appelez { $has ->
    [no] votre numéro d'urgence
   *[yes] le { $number }
  } tout de suite.
emergency-drum-then = { $hasIsolator ->
    [yes] Coupure : { $isolator }.{" "}
   *[no] {""}
  }Ne tournez pas le tambour pour dégager quelqu'un. Personne n'entre, même pour secourir.
emergency-hurt = Arrêtez les machines. Vérifiez que c'est sûr avant d'approcher.
emergency-hurt-then = Restez avec la personne. Ne la déplacez que pour la sortir du danger.
emergency-fire = Tout le monde recule, du côté d'où vient le vent. N'ouvrez pas, ne retournez pas.
emergency-fire-then = Ventilateur arrêté seulement si c'est sans danger. Ne mouillez pas à moitié.
emergency-gas = Dehors et loin, en remontant le vent. Aucun interrupteur, aucune flamme.
emergency-needle = Ne mettez pas la main, ne versez pas. Couvercle fermé, étiquette, bac de côté.
emergency-needle-then = On la retire à la pince, dans un contenant à aiguilles, par une personne formée. Suivez la procédure du site.
emergency-needle-pricked = Piqué ? Eau courante et savon, puis un médecin tout de suite : les heures comptent.
emergency-pricked = Eau courante et savon, maintenant. Puis un médecin tout de suite : les heures comptent.
emergency-pricked-then = Laissez l'aiguille où elle est : personne ne la prend à la main.
emergency-help = Quelqu'un de blessé ou en danger ? Arrêtez les machines. Personne n'y met la main, personne n'entre.
emergency-help-then = Que se passe-t-il, et où ?
emergency-call = Appelez { $has ->
    [no] votre numéro d'urgence
   *[yes] le { $number }
  } maintenant.
emergency-call-fire = Appelez les pompiers : { $has ->
    [no] votre numéro d'urgence
   *[yes] { $number }
  }.
emergency-call-away = Appelez { $has ->
    [no] votre numéro d'urgence
   *[yes] le { $number }
  } d'assez loin.
emergency-call-clinic = Appelez { $has ->
    [no] votre numéro d'urgence ou la clinique
   *[yes] le { $number } ou la clinique
  }.
emergency-address = Dites où : { $text }
emergency-first-aider = Secouriste : { $text }
alarm = Urgence signalée{ $has ->
    [no] {""}
   *[yes] {" "}par { $who }
  } : { $what }.
danger-caught = quelqu'un est pris
danger-inside-drum = quelqu'un est dans le tambour
danger-hurt = quelqu'un est blessé
danger-reaching-in = quelqu'un met la main dedans
danger-unwell = quelqu'un ne va pas bien
danger-fire = feu
danger-smoke = fumée
danger-burnt-smell = odeur de brûlé
danger-needle = aiguille
danger-pricked = quelqu'un s'est piqué
danger-gas = gaz
danger-help = appel à l'aide
alarm-said = « { $text } »

## Prudence sur le moment
caution-gloves = Gants. Lavez-vous les mains avant de manger, boire ou fumer. Les règles du site d'abord.
caution-dust = Sec, poussiéreux ? Mouillez d'abord, dos au vent, masque ajusté (N95, FFP2 ou mieux). Les règles du site d'abord.
caution-wards = Vent vers des gens fragiles ou des prises d'air ? Alors on ne retourne ni ne tamise. Les règles du site d'abord.
caution-wind = Grand vent : retournez et tamisez à une heure plus calme, dos au vent. Les règles du site d'abord.
caution-lift = Lève-bac : chaîne mise, personne entre lui et la machine quand il bouge. Suivez la procédure du site.
caution-lock-out = Avant d'ouvrir ou d'entrer : arrêt enfoncé, courant cadenassé et étiqueté par qui y travaille. Suivez la procédure du site.
caution-electrician = Dans un panneau électrique : électricien qualifié seulement. Les codes locaux s'appliquent.
caution-guards = Les protecteurs restent en place quand ça tourne ; on les ôte courant cadenassé. Suivez la procédure du site.
caution-pinch = Tambour en marche : mains, manches et cheveux loin des rouleaux et de la chaîne. Suivez la procédure du site.
caution-hot-core = Chaud dedans, et la vapeur brûle : ouvrez doucement, dos au vent. Les règles du site d'abord.
caution-lifting = Lourd : roulez-le, prenez le lève-bac, ou soyez deux. Les règles du site d'abord.
caution-tetanus = Lavez toute coupure aussitôt. Vaccin du tétanos à jour ? Demandez à la clinique.
caution-clean-tools = Du frais au fini : outils, contenants et bottes propres d'abord. Les règles du site d'abord.
caution-sharps = Piquant ou coupant : pas la main, ne versez pas. Pince et contenant à aiguilles, personne formée. Suivez la procédure du site.
caution-fire = Fumée ou bien trop chaud là : n'ouvrez pas, ne retournez pas, éloignez le monde. Si ça fume, appelez les pompiers.

## Langue, personnes, vie privée
language-set = D'accord, en français.
language-unknown = Anglais, français ou espagnol : laquelle ?
forgotten =
    Votre nom, vos messages et ce qu'ils disaient sont effacés, notes comprises.
    Les lignes restent, sous le seul numéro { $number } : chaque ligne du cahier est enchaînée à la précédente, et les poids doivent encore tomber juste.
    Les sauvegardes d'avant gardent le nom jusqu'à ce que de nouvelles les remplacent.
person-numbered = personne n° { $number }
role-whom = Répondez à un message de la personne avec « nomme coordonnateur », ou choisissez :
role-given = { $who } coordonne maintenant aussi.
role-had = { $who } coordonne déjà.
role-who = À la coordination : { $list }
role-nobody = Personne ne coordonne encore ici.

## Listes de lignes
mine-nothing = Rien de noté par vous aujourd'hui.
mine-head = { $count ->
    [one] De vous aujourd'hui, une ligne :
   *[other] De vous aujourd'hui, { $count } lignes :
  }
show-who = Noté par { $who }, { $date }
show-pictures = { $count ->
    [one] Une photo gardée.
   *[other] { $count } photos gardées.
  }
shown-voided = #{ $entry } a été annulé ou remplacé : voir #{ $by }.
why-nothing = Aucun calcul dans ma dernière réponse. Demandez après un mélange, la place du tambour, le stock, une preuve, un total.

accepts-yes = { CAP($what) } : oui, c'est sur la liste du site.
accepts-no = { CAP($what) } : non, la liste du site le laisse dehors.
accepts-not-on-list = { CAP($what) } n'est pas sur la liste du site. Mettez de côté et demandez à la coordination.

paper-export = Le cahier du { $from } au { $to }, en fichier :
paper-whole = Tout le cahier jusqu'au { $to }, en fichier :
paper-report = Le rapport du { $from } au { $to } :
paper-coordinators = Seule la coordination peut avoir le cahier en fichier.
paper-failed = Le fichier n'a pas pu être fait. Sur la machine : npm run -s { $what }
paper-saved = Fichier : { $path }
guest-sets-nothing = D'ici, rien ne se règle : demandez à une personne responsable de l'envoyer dans le groupe.
guest-too-late = #{ $entry } date de plus d'une heure : demandez à une personne responsable de l'annuler.
share-link = Une page pour { $site } : avec ce lien, on note et on demande, sans compte.
share-address = { $link }
share-print = À imprimer et à accrocher près de la balance. « partage nouveau » met fin à tous les liens et en fait un neuf.
share-old-ended = Tous les liens d'avant ont pris fin : accrochez celui-ci.
share-here-only = Cette adresse ne marche peut-être que sur cette machine : pour les téléphones, d'abord « fixe adresse de la page https://… ».
share-no-page = La page est fermée ici : lancez sans --no-page, ou « fixe adresse de la page https://… ».

## Aide
help-log = Noter ce qui est fait : bac 61,5 kg, copeaux 12 · 3 bacs 61 58 70 · B 41 43 39, ambiant 12 · retourné B · couvert B avec bâche
help-log-drum = Tambour : vidé le tambour sur C · tambour auto 45 min ventilateur bas · tambour plein aux 3/4
help-log-piles = Tas : commencé tas E · C est plein · fusionné A avec B · 3 brouettes de C vers B
help-ask = Demander : quoi faire · semaine · année · état · comment va B ? · 3 bacs arrivent, combien de copeaux ? · pourquoi
help-mend = Corriger : annule · pardon 56,2 pas 58,2 · c'était C pas B · ou répondre au message
help-set = Régler : bac vide 16,2 · règle objectif 60 t · réglages · english please
help-danger = Blessé, fumée, aiguille : dites-le simplement. D'abord, appelez votre numéro d'urgence.
new-1 = { $site } : bienvenue. Huit lignes pour commencer sans risque ; les consignes du site passent d'abord.
new-2-call = Urgence : { $number }{ $hasAddress ->
    [yes] , nous sommes à { $address }
   *[no] {""}
  }
new-2-no-call = Urgence : aucun numéro réglé ici, demandez avant de commencer
new-2-aid = premiers soins : { $who }
new-3 = Les tas sont chauds dedans : vapeur et 60 °C ou plus. Ouvrez lentement, dos au vent, ne montez jamais sur une pente.
new-3-drum = Jamais le bras ni le corps dans le tambour. Arrêt enfoncé et courant verrouillé{ $hasIsolator ->
    [yes] {" "}({ $isolator })
   *[no] {""}
  } avant que quiconque l'ouvre.
new-4 = Gants, mains lavées après, rien à manger ici. Matière sèche et poussiéreuse : mouillez-la, et masque ajusté
new-4-near = { $near } à côté{ $hasPoint ->
    [yes] {" "}(au { $point })
   *[no] {""}
  } : on ne retourne pas quand le vent y va
new-5 = Pesez chaque { $container } plein ; ses { $tare } à vide sont retirés pour vous : « { $container } { $gross } »
new-5-no-tare = Pesez chaque { $container } plein ; dites une fois sa tare : « { $container } vide 16 »
new-6 = Ajoutez les copeaux que dit la réponse, puis serrez une poignée : une goutte ou deux, c'est bon.
new-6-recipe = Ici { $chips } de copeaux pour { $food } d'aliments, puis serrez une poignée : une goutte ou deux, c'est bon.
new-7 = Aiguille ou objet piquant : pas la main. Couvercle fermé, de côté, dites-le ici.
new-8 = Un doute ? « quoi faire » pour les tâches, « aide » pour les mots.

## Le mélange
limit-recipe = la recette
limit-structure = le structurant
limit-moisture-high = l'eau
limit-moisture-low = le sec
limit-cn-low = C:N
limit-cn-high = C:N
limit-cap = les fines
limit-stock = la réserve
limit-room = la place dans le tambour
unit-days = jours
unit-hours = h
state-open = en remplissage
state-closed = fermé
state-ready = prêt
state-gone = parti

mix-basis-typical = valeurs typiques
mix-basis-test = d'après votre test
mix-of = { CAP($place) }
mix-also-add = Et { $one }{ $what } { DE($material) } (environ { $kg }).
mix-enough = Mélange du jour : environ { $pct } d'eau ({ $range }). Assez de copeaux ; pressez pour voir : une goutte ou deux.
mix-wet-add = Mouillé : environ { $pct } d'eau ({ $range }, { $basis }). Ajoutez { $one }{ $what } { DE($material) } (environ { $kg }){ $hasSqueeze ->
    [yes] , puis pressez : une goutte ou deux
   *[no] {""}
  }.
mix-add = Environ { $pct } d'eau ({ $range }, { $basis }), { $asks }. Ajoutez { $one }{ $what } { DE($material) } (environ { $kg }){ $hasSqueeze ->
    [yes] , puis pressez : une goutte ou deux
   *[no] {""}
  }.
mix-squeeze = Environ { $pct } d'eau ({ $range }, { $basis }). Pressez une poignée : une goutte ou deux, c'est bon.
mix-squeeze-or-add = Environ { $pct } d'eau ({ $range }, { $basis }). Pressez : une goutte ou deux ; si ça coule, ajoutez { $one }{ $what } { DE($material) } (environ { $kg }).
mix-infeasible = Environ { $pct } d'eau ({ $range }) : pas réglable avec ce qu'il y a ici ({ $limit }{ $hasOther ->
    [yes] , { $other }
   *[no] {""}
  }). { $hasBest ->
    [yes] Au mieux : { $one }{ $what } { DE($material) }, pour environ { $after }.
   *[no] Rien ici n'aide.
  }
mix-nothing-today = Rien de pesé aujourd'hui. « 3 bacs arrivent, combien de copeaux ? » pour prévoir.
mix-nothing-there = Rien pour le mélange n'est allé à { $place } aujourd'hui.
mix-no-food-today = Aucun reste pesé aujourd'hui : pas de mélange à calculer.
mix-hand-right = Bon d'après votre test : environ { $pct } d'eau ({ $range }).
mix-hand-dry = Sec d'après votre test : environ { $pct } d'eau ({ $range }). On ne sait pas combien il y a dedans : pas de chiffre.
mix-hand-wet = Mouillé d'après votre test : environ { $pct } d'eau ({ $range }). On ne sait pas combien il y a dedans : pas de chiffre.
planned = Environ { $kg } de restes ({ $low } à { $high }) : { $hasAdd ->
    [yes] { $one }{ $what } { DE($material) } (environ { $chips })
   *[no] pas plus de copeaux, ceux qui y sont suffisent
  }.
planned-published = Environ { $kg } de restes, poids publiés ({ $low } à { $high }) : { $hasAdd ->
    [yes] { $one }{ $what } { DE($material) } (environ { $chips })
   *[no] pas plus de copeaux
  }. Pesez pour être sûr.
planned-no-weight = On ne sait pas ce que pèse ce contenant ici ({ $container }) : pesez-en, ou réglez ses litres.
planned-first-on-floor = D'abord 1 { $what } au fond du tambour.
room-yes = Oui : le tambour serait plein à environ { $fill }.
room-no = Non. Videz d'abord environ { $kg }{ $hasDays ->
    [yes] {" "}; la plus vieille charge { $days ->
        [0] est d'aujourd'hui
        [one] y est depuis 1 jour
       *[other] y est depuis { $days } jours
      }
   *[no] {""}
  }.
room-look = Le calcul est grossier : regardez par la fenêtre, et envoyez « tambour plein aux 3/4 ».
room-unknown = Le volume du tambour n'est pas connu ici : pas de calcul de place.
room-no-drum = Ce site n'a pas de tambour.
why-drum = { $loads ->
    [one] Un apport
   *[other] { $loads } apports
  } au cahier, moins ce qui est sorti et ce qui a fondu : environ { $kg } dedans.
why-mix-part = { CAP($material) } { $kg } : { $pct } d'eau ({ $range }), C { $carbon } %, N { $nitrogen } % du sec ({ $from }).
figure-said = comme dit
figure-measured = mesuré
figure-site = réglé ici
figure-learned = appris ici
figure-published = publié
figure-memory = de mémoire
figure-derived = calculé
mix-taken-typical-values = Admis : valeurs typiques, leur écart est dans la réponse.
mix-taken-left-out = Laissé de côté : { $material }, aucune table ne le connaît.
mix-taken-test = Admis : votre propre test jusqu'au prochain apport.
why-formula = { $formula }
formula-mix = Eau : la masse de chaque charge fois son eau, sur la masse totale. C:N : tout le carbone sur tout l'azote, jamais une moyenne.
why-mix-density = Masse volumique { $density } ; air { $air } % selon deux formules publiées, { $likely } % avec tout l'écart.
why-source = Source : { $text }

## Chaleur
band-asked-for = { CAP($place) } { $celsius } : aussi chaud que votre règle le demande. Pas plus longtemps qu'il ne faut ; relisez aujourd'hui, et vérifiez s'il est sec.
band-turn-soon = { CAP($place) } { $celsius } : chaud. À retourner ces jours-ci ; regardez si c'est sec.
band-act-today = { CAP($place) } { $celsius } : trop chaud. Retournez aujourd'hui, faites plus petit, vérifiez l'eau ; relisez aujourd'hui.
band-fire-watch = { CAP($place) } { $celsius } : veille de feu. Lisez à plusieurs profondeurs, eau à portée, avertissez la coordination.
band-do-not-open = { CAP($place) } { $celsius } : N'OUVREZ PAS, NE RETOURNEZ PAS. Tout le monde recule, ventilateur arrêté si c'est sûr, appelez les pompiers. Ne mouillez pas à moitié.
band-act-at-once = { CAP($place) } { $celsius } : N'OUVREZ PAS, NE RETOURNEZ PAS. Tout le monde recule, appelez les pompiers maintenant. Ne mouillez pas à moitié.
band-smoke = { CAP($place) } fume (#{ $entry }) : N'OUVREZ PAS, NE RETOURNEZ PAS. Tous à l'écart, ventilateur coupé si sans danger, appelez les pompiers. Ne mouillez pas à moitié.
band-smoke-somewhere = Fumée vue (#{ $entry }), on ne sait où : N'OUVREZ ET NE RETOURNEZ RIEN. Tous à l'écart, ventilateur coupé si sans danger, appelez les pompiers.
heat-rise = { CAP($place) } : { $rise } de plus que l'air ({ $ambient }{ $standIn ->
    [yes] {", prévision"}
   *[no] {""}
  }).
heat-near-ambient = { CAP($place) } : { $rise } de plus que l'air ({ $ambient }{ $standIn ->
    [yes] {", prévision"}
   *[no] {""}
  }), près de l'ambiant.
heat-just-turned = { CAP($place) } { $celsius } : brassé il y a moins d'un jour, une valeur basse ne dit encore rien. Relevez demain.
proof-met = { CAP($place) } : { $counted } sur { $needed } { $unit } au chaud. Durée et température atteintes sur ces lectures ; votre autorité décide.
proof-not-yet = { CAP($place) } : { $counted } sur { $needed } { $unit } au chaud. Prochain relevé au plus tard { $date }, sinon le compte s'arrête.
proof-none = { CAP($place) } : 0 sur { $needed } { $unit } au chaud pour l'instant.
proof-cannot-show = { CAP($place) } : pas montrable avec ces lectures ({ $counted } sur { $needed } { $unit }).
vectors-met = Attraction des vecteurs (mouches, rats) : acquise, { $counted } jours à plus de { $level }, moyenne de plus de { $above }.
vectors-not-yet = Attraction des vecteurs (mouches, rats) : { $counted } sur { $needed } jours à plus de { $level } d'affilée ; la moyenne doit dépasser { $above }.
vectors-not-shown = Attraction des vecteurs (mouches, rats) : pas montrée. Il y faut un relevé par jour pendant { $needed } jours, tous à plus de { $level }, moyenne de plus de { $above }.
vectors-cool = Attraction des vecteurs (mouches, rats) : plus de { $level } pendant { $needed } jours, mais la moyenne de { $mean } ne dépasse pas { $above }.
regulator-decides = Votre autorité décide ; ceci n'est que ce que montre le cahier.

## Ce qui ne va pas, ce qui peut sortir, le tambour
heat-not-judged = À { $depth } de profondeur : montré, non jugé. La règle demande de { $from } à { $to }.
proof-turns = brassages { $counted } sur { $needed }
reason-no-readings = aucun relevé encore
reason-not-at-depth = aucun relevé entre { $fromCm } et { $toCm } de profondeur
reason-in-doubt = { $readings } relevés douteux depuis { $since } : la sonde a échoué à sa vérification
reason-too-short = { $counted } sur { $needed } { $unit } de suite
reason-turns-short = { $counted } brassages à chaud sur { $needed }
reason-mean-too-low = la moyenne est de { $meanCelsius } ; il faut plus de { $aboveCelsius }
reason-low = { $celsius } ({ $localDate }) est sous { $levelCelsius }
reason-above-ceiling = plus de { $upperCelsius } ({ $localDate }), le plafond de la règle
reason-just-turned = { $celsius } ({ $localDate }) : tout juste brassé, non jugé
reason-gap-within = trop de temps entre deux relevés { $from } : ce temps ne prouve rien
reason-gap = aucun relevé entre { $from } et { $to } : ce jour ne prouve rien
reason-fresh = matière fraîche { $localDate } (#{ $entry }) : le compte recommence
reason-joined-unproven = réuni { $localDate } (#{ $entry }) avec du non prouvé : le compte recommence
reason-proof-in-doubt = ce qui est venu { $localDate } (#{ $entry }) était prouvé par une sonde qui a échoué : le compte recommence
reason-cover-unproven = couvert { $localDate } d'un compost non prouvé (#{ $entry })
reason-still-open = il reçoit encore de la matière
reason-aeration-unknown = personne n'a dit si les tuyaux sont soufflés
reason-aeration-breathing = des tuyaux qui ne font que respirer ne sont pas une aération forcée
reason-fed-daily = le tambour est alimenté chaque jour : la matière fraîche recommence le compte
reason-exit-only = la température de sortie seule ne prouve rien
reason-one-point = un point ne suffit pas : plusieurs, et le plus froid décide
reason-residence-unknown = le séjour minimal n'est pas réglé ({ $neededHours } h demandées)
reason-residence-short = séjour minimal de { $hours } h sur { $neededHours } h
reason-short-circuit-unknown = personne n'a dit que rien ne passe plus vite
reason-short-circuit = une partie passe plus vite
reason-prove-in-closed-pile = à prouver dans le tas fermé
why-rule = { CAP($place) }, règle { $rule } : { $level } ou plus pendant { $needed } { $unit } ; le point le plus bas entre { $from } et { $to } décide.
why-counted = { $has ->
    [yes] Compté : { $counted } sur { $needed } { $unit }, depuis { $since }.
   *[no] Rien ne compte encore.
  }
why-day = { $date } : { $how ->
    [counts] plus basse { $celsius }, compte
    [low] plus basse { $celsius }, trop basse
    [above-ceiling] plus basse { $celsius }, trop chaude pour la règle
    [shadow] plus basse { $celsius }, tout juste brassé
    [not-at-depth] pas de lecture à la profondeur demandée
    [in-doubt] la sonde est en doute
   *[none] pas de lecture
  }
why-reason = Parce que : { $reason }.
why-stage = { CAP($place) } : le plus chaud { $hottest }, air { $air }{ $standIn ->
    [yes] {", prévision"}
   *[no] {""}
  } (moyenne des derniers jours) : { $stage }.
why-forecast = Prévision : l'écart à l'air depuis le dernier brassage décroît en exponentielle ; { $readings } jours de relevés, intervalle 4 fois sur 5.
why-symptom = Selon le cahier
why-stock = Usage : environ { $kg } par jour sur deux semaines, jours sans usage compris.
why-stock-formula = Reste : le dernier compte, plus les livraisons, moins l'usage. Jours : le reste sur l'usage moyen par jour.
taken-depth-unknown = Admis : les relevés sans profondeur sont pris entre { $fromCm } et { $toCm }.
taken-approximate-reading = Admis : les relevés « environ » tels quels ({ $readings }).
taken-piece-size = Admis : aucun morceau de plus de { $mm } mm.
taken-held-in-vessel = Admis : tout est resté dedans tout le temps.
taken-aeration-forced = Admis : l'air est soufflé. Dites-le : « set aeration forced » ou « set aeration breathing ».
taken-roofed = Admis : sous un toit.
taken-gap-between-readings = Admis : entre deux relevés d'au plus { $minutes } min, c'est resté chaud.
taken-days-by-readings = Admis : un jour compte par son relevé. En heures pleines : « règle décompte des jours 72 h ».
taken-turn-spacing-by-dates = Admis : au moins { $days } jours entre brassages, selon les dates.
taken-inherited-proof = Admis : la preuve du tas d'où il vient (#{ $entry }).
taken-ambient-mean = Admis : l'air en moyenne de { $days } jours.
taken-ambient-stays = Admis : l'air reste comme il est ({ $celsius }).
taken-volume-unknown = Admis : le tas n'est pas tout petit (volume inconnu).
taken-lab-unit = Admis : le résultat est en { $unit }.
taken-site-band-limited = Admis : { $celsius } pour { $band } ; celle-là ne peut être relevée.
taken-regulator-accepts = Admis : votre autorité accepte cette preuve au tambour. Demandez d'abord.
stage-heating = monte en chaleur
stage-active = actif
stage-cooling = refroidit
stage-curing = mûrit
stage-near-ambient = proche de l'air
stage-cannot-tell = on ne peut dire
pile-stage = { $stage }
cannot-tell-stale = dernier relevé trop ancien
cannot-tell-just-turned = tout juste brassé, trop tôt
cannot-tell-frozen = gelé, on ne peut dire
cannot-tell-cold-core = trop froid pour dire
cannot-tell-dry = sec, on ne peut dire
cannot-tell-tiny = petit tas, on ne peut dire
cannot-tell-no-ambient = air inconnu
cannot-tell-never-hot = n'a jamais été chaud
ready-nothing-missing = Rien ne manque dans ce cahier. Allez voir, puis envoyez « { $send } ».
ready-not-yet = Pas prêt
ready-cannot-tell = On ne peut dire
lacks-been-hot = n'a pas été chaud
lacks-age = { $days } sur { $needed } jours depuis la matière fraîche
lacks-curing = mûri { $days } sur { $needed } jours
lacks-turned = brassé { $turns } fois sur { $needed }
lacks-near-ambient = { $riseC } au-dessus de l'air
lacks-no-reheating = il a rechauffé
lacks-labs = résultats de laboratoire
lacks-wait = du temps
lacks-turn = un brassage
lacks-reading = un nouveau relevé
lacks-reading-after-turn = un relevé deux jours après un brassage
lacks-ambient-reading = la température de l'air
lacks-moisture-check = un test de la poignée
lacks-moisture-mended = humidité à corriger
lacks-milder-weather = un brassage par temps plus doux
lacks-thaw = un dégel
lacks-start-date = sa date de départ
lacks-more = { $count } de plus
forecast = Proche de l'air vers { $on } ({ $from } à { $to }, 4 fois sur 5).
forecast-open = Proche de l'air vers { $on } au mieux ({ $from } ou plus tard ; pas encore de fin).
no-forecast-too-few-readings = Pas encore de prévision : il faut trois jours de relevés depuis le dernier brassage.
no-forecast-not-falling = Pas de prévision : l'écart ne baisse pas.
no-forecast-frost = Pas de prévision à travers le gel.
no-forecast-no-ambient = Pas de prévision : il manque la température de l'air de ces jours.
cause-likely = Sans doute { $cause }
cause-perhaps = Peut-être { $cause }
cause-unknown = Cela ne va avec aucune cause connue ici. Demandez à un responsable.
ask-ammonia-or-rotten = Odeur d'ammoniac, ou de pourri ?
ask-drips-or-crumbles = Pressez une poignée : elle goutte, tient, ou s'émiette ?
ask-drips-or-not = Pressez une poignée : elle goutte ?
ask-rain-or-mix = Est-ce la pluie, ou le mélange lui-même ?
ask-added-or-left = A-t-il été arrosé ou mélangé, ou laissé tranquille ?
ask-food-showing = Voit-on des restes en surface ?
answer-ammonia-or-rotten-ammonia = ammoniac
answer-ammonia-or-rotten-rotten = pourri
answer-drips-or-crumbles-drips = elle goutte
answer-drips-or-crumbles-crumbles = elle s'émiette
answer-drips-or-crumbles-right = elle tient
answer-drips-or-not-drips = elle goutte
answer-drips-or-not-right = pas de goutte
answer-rain-or-mix-rain = la pluie
answer-rain-or-mix-mix = le mélange
answer-added-or-left-added = arrosé ou mélangé
answer-added-or-left-left = laissé tranquille
answer-food-showing-yes = restes visibles
answer-food-showing-no = aucun reste visible
cause-fire-risk = proche du feu
cause-just-turned = seulement le brassage
cause-frozen = gelé
cause-too-rich = trop riche (trop d'azote)
cause-no-air = pas d'air dedans
cause-too-wet = trop humide
cause-too-dry = trop sec
cause-too-lean = trop pauvre (trop de bois)
cause-too-small = tas trop petit
cause-too-large = tas trop gros
cause-too-much-air = trop d'air
cause-air-blocked = air bouché
cause-still-starting = il démarre encore
cause-spent = presque plus rien à manger
cause-uneven = inégal
cause-rain = la pluie
cause-fresh-food-bare = des restes frais à nu
cause-spills = des débordements
cause-thin-bulking = trop peu de matière grossière
cause-woody = morceaux de bois
cause-overfed-drum = trop d'apports d'un coup
cause-not-done-before = il n'était pas fini avant
cause-watered-or-mixed = l'eau ou le mélange l'a réveillé
cause-probe = la sonde
cause-work-and-wind = le brassage, et le vent
cure-add-water-while-turning = ajouter de l'eau en brassant
cure-add-dry-carbon = ajouter des copeaux ou feuilles secs
cure-add-coarse-chips = ajouter de gros copeaux
cure-add-fine-material = ajouter du plus fin
cure-add-nitrogen = ajouter des restes ou de l'herbe
cure-cover-mature-compost = couvrir de compost mûr
cure-cover-fresh-food = couvrir aussitôt les restes
cure-cover-from-rain = abriter de la pluie
cure-insulate = isoler
cure-turn = brasser
cure-turn-outside-in = brasser le dehors vers le dedans
cure-make-bigger = le faire plus gros
cure-make-smaller = le faire plus petit
cure-check-air = vérifier que l'air entre
cure-fan-on = ventilateur en marche
cure-less-air = moins d'air
cure-squeeze-test = presser une poignée : une goutte ou deux, c'est bien
cure-read-again-tomorrow = relever demain
cure-read-at-depth = relever en profondeur
cure-wait = attendre
cure-wait-for-thaw = attendre le dégel
cure-leave-undisturbed = ne pas y toucher
cure-start-with-hot-material = démarrer avec de la matière chaude
cure-check-readiness = demander s'il est prêt
cure-keep-curing = laisser mûrir
cure-drain-pad = drainer l'aire
cure-collect-liquid = recueillir le jus
cure-return-liquid-to-unsanitised-only = le jus ne va que sur des tas non prouvés
cure-same-day-cover = couvrir les restes le jour même
cure-clean-spills = nettoyer les débordements
cure-closed-containers = garder les bacs fermés
cure-screen-out-overs = tamiser les refus
cure-shred = broyer
cure-feed-less = alimenter moins quelques jours
cure-turn-drum-more = tourner le tambour plus souvent
cure-note-wind-and-work = noter le vent et le travail en cours
cure-turn-when-wind-is-away = brasser quand le vent s'éloigne des voisins
cure-check-probe = vérifier la sonde dans la glace fondante
cure-do-not-open-or-turn = NE PAS OUVRIR NI BRASSER
cure-people-back = tout le monde recule
cure-fan-off-if-safe = ventilateur arrêté seulement si c'est sûr
cure-call-fire-service = appeler les pompiers
cure-do-not-half-wet = ne pas mouiller à moitié
fault-elsewhere = N'utilisez plus : courant coupé et cadenassé avant d'ouvrir. Réparation par du personnel formé seulement. Notez l'heure.
spill-first = Écartez les gens, absorbez avec des copeaux, balayez, loin des égouts ; puis « débordement nettoyé ».
contamination-first = Mettez de côté, ne triez pas les piquants à la main. Quelle source ? Dites-le : cela va dans son retour.
complaint-asks = Pour l'autorité, encore à noter
complaint-when = quand
complaint-where = où
complaint-nature = quelle odeur
complaint-strength = quelle force (nulle, faible, forte)
complaint-wind = vent
complaint-weather = temps
complaint-being-done = ce qui se faisait
complaint-done-about-it = ce qui a été fait
complaint-who-answers = qui répond
complaint-how = Répondez à ce message, ou envoyez « note : … #{ $entry } ». Gardez le nom du plaignant hors du groupe : donnez-le directement à la coordination.
complaint-complete = Plainte #{ $entry } : tout ce que l'autorité demande est noté.
stopped-people = Personne à l'intérieur, pas même un bras ; tous à l'écart, protecteurs en place. Un cadenas : seul qui l'a mis l'ôte. Votre procédure décide.
stopped-jam = Un blocage se libère avec force : laissez-le au personnel formé.
stopped-power = Demandez au fournisseur ou à un électricien ; n'ouvrez aucun tableau.
stopped-loads = Arrêtez les apports. Notez l'heure et la chaleur (« { $log } ») ; surveillez chaleur et odeur. Appelez { $has ->
    [yes] { $whom }
   *[no] un responsable
  }{ $hasNow ->
    [yes] {" "}maintenant
   *[no] {""}
  }{ $hasHours ->
    [yes] {" "}après { $hours } h
   *[no] {""}
  }.
resolved-none = Aucun problème de ce genre n'était ouvert.
resolved-after = Ouvert depuis { $date } (#{ $old }){ $has ->
    [yes] . Fait : { $done }
   *[no] {""}
  }.
probe-failed = Écart de { $off } : les relevés{ $has ->
    [yes] {" "}depuis { $since }
   *[no] {" "}jusqu'ici
  } ne prouvent rien avant une bonne vérification. Prenez-en un autre.
probe-good = Bon : à { $within } près de { $against }.
probe-good-again = De nouveau bon. Les relevés d'avant{ $has ->
    [yes] {" "}depuis { $since }
   *[no] {""}
  } restent douteux : ils ne prouvent rien.
probe-unclear = Pas jugé : dans la glace fondante il doit lire { $against } (à { $within } près).
drum-interval-outside-site-rule = Toutes les { $everyMin } : hors de la règle du site ({ $low } à { $high }).
drum-interval-outside-check-value = Toutes les { $everyMin } : des machines d'un type tournent souvent toutes les { $low } à { $high } (usage courant). Le fabricant décide.
drum-fan-low-in-normal-running = En marche normale, bas suffit ; haut sèche et refroidit.
drum-fan-lowest-while-freezing = Par gel : ventilateur au plus bas ou arrêté, { $maxHours } h au plus. Le tambour a besoin d'air : remettre ensuite.
drum-fan-off-for-a-time = Arrêté encore { $leftHours } h au plus : le tambour a besoin d'air. Je le rappellerai ici.
drum-fan-back-on = Le tambour a besoin d'air : remettre le ventilateur au bas.
drum-odour-wetness-first = D'abord l'humidité : pressez une poignée du tambour ; une goutte ou deux, c'est bien, sinon des copeaux.
drum-odour-then-more-air = Ensuite plus d'air : un cran de ventilateur.
drum-odour-mind-the-exhaust = Voyez où part l'air : voisins, fenêtres, vent.
fan-reminder = { CAP($place) } : le ventilateur est arrêté depuis { $hours } h. Il faut de l'air : remettre au bas (« tambour ventilateur bas »).
drum-level-room = Environ { $litres } dedans (environ { $kg }) ; place pour environ { $room }.
drum-level-full = Environ { $litres } dedans (environ { $kg }) : plein. Videz avant le prochain apport.
discharge-oldest = Le plus ancien était là depuis { $days ->
    [one] 1 jour
   *[other] { $days } jours
  }.
discharge-proven = Il va sur { $place }, chaleur prouvée dans le tambour, si votre autorité l'accepte.
discharge-fresh = Cela compte comme frais sur { $place } : ses jours de chaleur commencent.
drum-fill = environ { $pct } plein ({ $range })
drum-fill-level = environ { $pct } plein ({ $range }, vu { $date })
drum-empty = { CAP($place) } : vide, d'après le cahier
drum-no-volume = volume inconnu ici
drum-coldest = le plus froid (#{ $entry }, { $days ->
    [0] d'aujourd'hui
    [one] 1 jour
   *[other] { $days } jours
  }) a vu { $celsius } au plus
drum-unbooked = du plus ancien n'est pas dans le cahier
drum-feed = Reçoit environ { $kg } par jour (moyenne de 7 jours)
due-fill = il sera plein
due-stay = le plus ancien a fait son temps
drum-due = prochaine vidange dans environ { $days ->
    [one] 1 jour
   *[other] { $days } jours
  } ({ $why })
drum-due-now = videz maintenant ({ $why })
drum-due-not = pas de vidange en vue : il fond aussi vite qu'il reçoit
drum-due-unknown = prochaine vidange inconnue : aucun apport depuis 7 jours
drum-proof-ways = Un tambour alimenté chaque jour prouve la chaleur en cuve si votre autorité l'accepte (« règle voie tambour en cuve »), sinon dans le tas fermé.
drum-proof-pile = La chaleur se prouve dans le tas fermé, pas dans le tambour.
stock-unknown = { CAP($material) } : jamais compté ici. Envoyez « { $material } 2 m3 » ou une livraison.
stock-left = { CAP($material) } : il reste environ { $litres } (environ { $kg }).
stock-short = { CAP($material) } : on en a pris plus que le cahier n'en connaît. Comptez : « reste 2 m3 de { $material } ».
stock-none = { CAP($material) } : il n'en reste plus. Commandez maintenant.
stock-no-use = Aucun usage depuis deux semaines, donc pas de jours à donner.
stock-days = { $days ->
    [0] Moins d'un jour
    [one] Environ 1 jour
   *[other] Environ { $days } jours
  } au rythme actuel ({ $low }{ $hasHigh ->
    [yes] {" "}à { $high }
   *[no] {" "}ou plus
  }).{ $order ->
    [yes] {" "}Commandez maintenant.
   *[no] {""}
  }
doubt-held-pile = #{ $entry } { $place } est bloqué : rien n'en sort sans l'accord d'un responsable.
choice-allow = autoriser
choice-not-taken = rien pris
hold-laid = { CAP($place) } est BLOQUÉ ({ $why }) : rien n'en sort sans l'accord d'un responsable.
hold-trace = { $count ->
    [0] Rien n'est sorti de { $place } d'après le cahier.
    [one] Du compost est sorti une fois de { $place } : voyez qui l'a reçu.
   *[other] Du compost est sorti { $count } fois de { $place } : voyez qui l'a reçu.
  }
lab-vessel = Essai en vase : { $rise } de plus que la pièce, classe { $class } (V stable, I frais{ $edge ->
    [yes] {" "}; entre deux classes, la moins stable est retenue
   *[no] {""}
  }){ $mature ->
    [yes] , et mûr au test des 8 °C après 21 jours de maturation
   *[no] {""}
  }. Cela ne dit rien de la chaleur du tas lui-même.
hold-still = { CAP($place) } reste BLOQUÉ ({ $why }) jusqu'à l'accord d'un responsable.
hold-stays = Reste bloqué par #{ $entry } : seul un responsable peut l'annuler.
hold-said = un responsable l'a dit
button-trace = Suivre { $place }
setting-hold = { $place } bloqué : { $why }
setting-hold-off = blocage de { $place } levé
removal-unproven = { CAP($place) } : noté, mais
gap-hold = bloqué ({ $why }, #{ $entry }, { $date })
gap-no-rule-set = aucune règle de chaleur choisie
gap-not-yet = { $counted } jours ou heures chauds montrés sur { $needed }
gap-cannot-show = ses relevés ne peuvent montrer la chaleur
gap-vectors = attraction des vecteurs { $counted } sur { $needed } jours
gap-lab-failed = { $analyte } { $value }, limite { $max } { $unit }
gap-lab-unclear = { $analyte } : le résultat ne permet pas de dire
gap-lab-missing = { $count ->
    [one] 1 résultat de laboratoire manque
   *[other] { $count } résultats de laboratoire manquent
  }
gap-lab-without-sample = le résultat #{ $entry } n'a pas d'échantillon
gap-problem = encore ouvert : { $topic } (#{ $entry })
gap-not-ready = { $count ->
    [one] 1 signe de maturité manque
   *[other] { $count } signes de maturité manquent
  }
full-read-daily = Relevez { $place } chaque jour désormais : un jour sans relevé ne prouve rien.
ready-but = Noté. Le cahier ne le montre pas
joined-held = Le blocage suit : { $place } est bloqué ({ $why }).
joined-proven = Les deux ont été assez chauds : { $place } le reste d'après ces relevés.
joined-restarts = Les deux n'étaient pas prouvés : le compte de { $place } recommence.
split-proven = { CAP($place) } emporte sa preuve de chaleur.
split-unproven = { CAP($place) } emporte ses relevés ; pas encore assez chaud.
transfer-restarts = Ce qui est venu n'était pas prouvé : le compte de { $place } recommence.
cover-unproven = Ce compost ne vient pas d'un tas prouvé : il peut ramener ce que la chaleur a tué.
trace-held = Non. { CAP($place) } est BLOQUÉ ({ $why }, #{ $entry }, { $date }) : seul un responsable peut le laisser sortir.
trace-may = { CAP($place) } : rien ne manque dans ce cahier.
trace-not-yet = { CAP($place) } : pas encore.
trace-missing = Il manque
trace-went = Allé chez
trace-to = { $to } { $amount } ({ $date }, #{ $entry })
trace-nobody = Personne n'en a encore reçu.
trace-in = Venu de
trace-no-source = Aucune source dans le cahier pour { $place }.
trace-kin = Réuni avec ou séparé de
rule-set-minutes = Il faut { $needed } { $unit } sans trou : relevés à { $minutes } au plus. Ni par semaine ni par jour cela ne se montre.
ask-aeration = Les tuyaux sont-ils soufflés par un ventilateur, ou respirent-ils seulement ? Respirer n'est pas une aération forcée.
answer-aeration-forced = soufflés
answer-aeration-breathing = ils respirent seulement
qualifier-found = trouvé
fact-wet = humide
fact-dry = sec
fact-moisture-right = humidité bonne
fact-moisture-unknown = pas de test récent de la poignée
fact-just-turned = brassé il y a moins d'un jour
fact-frozen = gelé
fact-deep-cold = air sous zéro
fact-been-hot = a été chaud
fact-never-hot = jamais chaud
fact-young = moins d'une semaine
fact-old = trois semaines ou plus
fact-rich-mix = C:N sous 20
fact-lean-mix = C:N au-dessus de 40
fact-fan-off = ventilateur arrêté
fact-small = moins de 1 m³
fact-hot = plus de 65 °C
fact-fire-hot = chaud comme avant un feu
fact-smoke = fumée

## Tas et tambour
no-piles = Pas encore de tas : envoyez « commencé tas A ».
place-unknown = { CAP($place) } : inconnu ici.
pile-became = { CAP($place) } est maintenant { $successor }.
pile-state = { CAP($place) }, { $state }
pile-last = { $values } ({ $date })
pile-rise = { $rise } de plus que l'air{ $standIn ->
    [yes] {" (prévision)"}
   *[no] {""}
  }
pile-no-reading = pas encore de lecture
pile-turns = { $count ->
    [one] retourné 1 fois
   *[other] retourné { $count } fois
  }
pile-held = EN ATTENTE : { $why }
pile-last-turn = Dernier retournement : { $date }.
pile-covered = Couvert ({ $layer }) { $date }.
pile-uncovered = Découvert ({ $layer }) { $date }.
pile-feel = Au toucher, { $date } : { $feel }.
pile-problem = Ouvert : { $topic } (#{ $entry }, { $date }).
drum-holds = { CAP($place) } : environ { $kg } dedans
drum-oldest = Apport le plus ancien (#{ $entry }) { $days ->
    [0] d'aujourd'hui
    [one] depuis 1 jour
   *[other] depuis { $days } jours
  }
drum-set = Réglage : { $mode }
drum-read = Lu { $low } à { $high } ({ $date }).
history-nothing = Rien au cahier sur { $place }.
trace-source = { $source } { $kg } ({ $one ->
    [yes] { $from }
   *[no] { $from } à { $to }
  })

## Aujourd'hui
weekday-monday = Lun
weekday-tuesday = Mar
weekday-wednesday = Mer
weekday-thursday = Jeu
weekday-friday = Ven
weekday-saturday = Sam
weekday-sunday = Dim
today-head = { $day } : { $count ->
    [one] 1 tâche
   *[other] { $count } tâches
  }
today-nothing = { $day } : rien à faire.
today-job = { $n } { $what } : { $why }
today-by = pour { $date }
today-since = dû depuis { $date }
today-taken = pris par { $who }
today-more = … et { $count } de plus
today-later = Plus tard : { $what } ({ $why })
today-send = Envoyez « { $first } »
today-send-two = Envoyez « { $first } » ou « { $second } »

duty-keep-away = Restez loin { DE($place) }
duty-read-pile = Lire { $place }
duty-read-drum = Lire { $place }
duty-read-ambient = Lire l'air ambiant
duty-turn-pile = Retourner { $place }
duty-cover-pile = Couvrir { $place }
duty-discharge-drum = Vider { $place }
duty-count-stock = Compter la réserve : { $material }
duty-order-stock = Commander : { $material }
duty-make-room = Faire de la place pour un tas
duty-mind-cap = Surveiller le plafond par { $per }
duty-ask-source = Demander à { $source }
duty-answer-doubt = #{ $entry } { $said }
duty-weigh-empty = Peser vide : { $container }
duty-look-again = { CAP($topic) } (#{ $entry })
duty-sweep = Balayer le plancher
duty-wash-lift = Laver le lève-bac
duty-wash-containers = Laver les bacs
duty-clean-tools = Nettoyer les outils
duty-check-scale = Vérifier la balance
duty-check-thermometer = Vérifier le thermomètre
duty-check-fan = Vérifier le ventilateur
duty-check-stop-button = Tester l'arrêt d'urgence
duty-release-pile = Libérer { $place }
duty-take-sample = Prendre un échantillon : { $place }
duty-chase-results = Relancer le labo : { $place }
duty-season-chips = Copeaux secs sous un toit
duty-season-exit = Isoler la sortie
duty-reweigh-empty = Repeser vide : { $container }
duty-renew-permit = Renouveler : { $what } { $name }
duty-own-duty = { CAP($name) }

why-smoke = fumée vue (#{ $entry }) ; n'ouvrez pas, ne retournez pas
why-too-hot = { $celsius }, trop chaud
why-proving = jour { $day } sur { $needed } ; sans lecture, aujourd'hui ne comptera pas
why-closed-unproven = fermé, chaleur pas encore prouvée
why-weekly = dernière lecture { $date }
why-never-read = pas lu depuis { $date }
why-last-read = dernière lecture { $date }
why-rise-unknown = sans ça, l'écart { DE($place) } est inconnu
why-turns-for-proof = retournement { $turn } sur { $needed } tant que c'est chaud
why-smells = ça sent (#{ $entry })
why-rise-stalled = bloqué à { $celsius } depuis { $date }
why-turns-in-curing = { $turns } retournements sur { $needed } en maturation
why-rain-expected = pluie { $date }
why-snow-expected = neige { $date }
why-turned-open = découvert depuis le retournement, { $date }
why-filling = plein à { $pct }
why-stayed = plus vieille charge : { $days } jours dedans
why-used-more-than-known = on a pris plus que le cahier n'en connaît
why-days-left = environ { $days } jours de reste
why-none-open = { $count ->
    [one] le seul tas ne prend pas de matière fraîche
   *[other] aucun des { $count } tas ne prend de matière fraîche
  }
why-nearly-full = { $place }, le dernier ouvert, est plein à { $pct }
why-near-cap = { $kg } sur { $cap }, jusqu'à { $date }
why-over-cap = { $kg }, plus que { $cap }, jusqu'à { $date } ; refuser des chargements
why-not-come = rien depuis { $date }, d'habitude tous les { $days } jours
why-answer-doubt = en attente d'une réponse
why-nets-wait = { $count ->
    [one] un poids net attend
   *[other] { $count } poids nets attendent
  }
why-still-open = ouvert depuis { $date }
why-floor-used = servi { $date }
why-lift-used = servi { $date }
why-containers-used = servis { $date }
why-tools-used = servis { $date }
why-check-failed = échec { $date }
why-last-checked = dernière vérification { $date }
why-never-checked = pas vérifié depuis { $date }
why-frost-expected = gel { $date }
why-cold-air = l'air est à { $celsius }
why-weighed-empty = dernière pesée à vide { $date }
why-from-site-file = pas pesé depuis { $date }
why-runs-out = expire { $date }
why-ran-out = expiré { $date }
why-own-last-done = fait la dernière fois { $date }
why-own-never-done = prévu { $date }, pas encore fait
why-nothing-missing = plus rien ne manque au registre ; allez voir, puis dites-le
why-results-missing = il manque { $count } résultats de labo, tout le reste y est
why-sampled = échantillon du { $date }, pas encore de résultat
later-frozen = gelé
later-windy = { $blows ->
    [towards] vent { $hasFrom ->
        [yes] du { $from } {""}
       *[no] {""}
      }vers les { $near }
   *[unknown] vent, sans direction connue ; des { $near } sont proches
  }
later-closed = fermé jusqu'à { $date }
later-postponed = remis à { $date }{ $hasReason ->
    [yes] {" : "}{ $reason }
   *[no] {""}
  }

log-reading = { $place } { $celsius }
log-turned = retourné { $place }
log-covered = couvert { $place }
log-discharged = vidé le tambour
log-level = reste { $litres } { DE($material) }
log-delivery = livraison { $material } { $litres }
log-load-from = bac { $kg } { DE($source) }
log-answer = { $choice }
log-empty = { $container } vide { $kg }
log-resolved = plus de { $topic }
log-check = { $chore }
log-chore = { $chore }
log-done-item = fait 1
log-emptied = { $place } est vide
log-started = commencé { $place }
log-set-date = règle { $what } { $name } { $date }
log-own-done = fait { $name }
log-sample = échantillon { $place }
log-release = { $place } est prêt
log-lab-result = { $place } labo plomb 40 mg/kg

duty-which = Laquelle ? « fait 2 », avec son numéro dans la liste.
duty-not-there = { $item } : pas dans la liste du jour. Demandez « quoi faire » d'abord.
duty-send-figure = { $duty } : envoyez le chiffre lui-même, « { $log } ».
duty-not-by-word = { $duty } : ça s'en va seulement quand le cahier montre que c'est fini.
duty-noted-claim = #{ $entry } À vous : { $duty }
duty-noted-release = #{ $entry } Rendu : { $duty }
duty-noted-postpone = #{ $entry } Remis à demain : { $duty }
duty-noted-until = #{ $entry } Remis à { $until } : { $duty }
duty-noted-done = #{ $entry } Fait : { $duty }
own-none = Pas encore de tâche à vous : « chaque vendredi : vérifier les extincteurs ».
own-line = { $name } : { $every }
weekday-full-monday = lundi
weekday-full-tuesday = mardi
weekday-full-wednesday = mercredi
weekday-full-thursday = jeudi
weekday-full-friday = vendredi
weekday-full-saturday = samedi
weekday-full-sunday = dimanche
nth-first = premier
nth-second = deuxième
nth-third = troisième
nth-fourth = quatrième
nth-last = dernier
often-as-said = { $said }
often-once = { $date }
often-workdays = chaque jour ouvrable
often-weekends = chaque fin de semaine
often-weekday = chaque { $days }
often-other-weekday = un { $day } sur deux
often-days = { $count ->
    [one] chaque jour
   *[other] tous les { $count } jours
  }
often-weeks = { $count ->
    [one] chaque semaine
   *[other] toutes les { $count } semaines
  }
often-months = { $count ->
    [one] chaque mois
   *[other] tous les { $count } mois
  }
often-years = { $count ->
    [one] chaque année
   *[other] tous les { $count } ans
  }
often-month-day = le { $day } du mois
often-month-end = le dernier jour du mois
often-month-nth = le { $nth } { $day } du mois
often-year = le { $date } chaque année
often-day = { $day }
often-and = { $first } et { $rest }
often-comma = { $first }, { $rest }
duty-how-often = Tous les combien ? Rien de noté encore : « chaque vendredi : { $name } », « toutes les 2 semaines : { $name } », « le 1er mars : { $name } ».
closed-not = Le site n'est pas fermé.
closed-open = #{ $entry } De nouveau ouvert dès aujourd'hui.
closed-when = Fermé jusqu'à quand ? « fermé jusqu'au 2 janvier »
closed-noted = #{ $entry } Fermé { $from } à { $to }. Ce qui peut attendre attend ; tas chauds et problèmes ouverts restent.
handover-head = { $count ->
    [0] Rien de noté depuis { $date }.
    [one] Une ligne depuis { $date } :
   *[other] { $count } lignes depuis { $date } :
  }
handover-earlier = … et { $count } avant celles-là.
line-sum = Ensemble { $kg } net
week-changed-more = Ça fait { $kg } de plus pour la semaine { DE($week) }, déjà envoyée.
week-changed-less = Ça fait { $kg } de moins pour la semaine { DE($week) }, déjà envoyée.

## Semaine et année
pace-ahead = en avance sur l'objectif
pace-on-course = dans l'objectif
pace-behind = en retard sur l'objectif
pace-reached = objectif atteint
pace-cannot-tell = trop tôt pour le dire
per-week = semaine
per-month = mois
week-head = Semaine du { $from } au { $to }
week-head-so-far = Semaine en cours, depuis le { $from }
week-feed = Reçu : { $kg } net ({ $loads ->
    [one] 1 charge
   *[other] { $loads } charges
  })
week-no-feed = Reçu : rien de pesé{ $over ->
    [yes] {""}
   *[no] {" encore"}
  }
week-estimated = plus environ { $kg } estimés
week-pending = { $count ->
    [one] 1 net en attente
   *[other] { $count } nets en attente
  }
week-special = Dont { $material } { $kg } ; sans cela { $without }
week-compared = Semaine d'avant { $before }{ $hasUsual ->
    [yes] , d'habitude { $usual }
   *[no] {""}
  }
week-source = { $hasSource ->
    [yes] { $source }
   *[no] sans source
  } { $kg }
week-source-of = { $material }{ $hasSource ->
    [yes] {" "}{ $source }
   *[no] {""}
  } { $kg }
week-chips = Copeaux { $kg }
week-chips-per = { $ratio } pour 1 de restes, en poids
week-mix = mélange environ { $pct } d'eau ({ $range }){ $hasCn ->
    [yes] , C:N environ { $cn }
   *[no] {""}
  }
week-contaminated = Contaminé : { $loads } sur { $of } charges{ $hasSource ->
    [yes] {" "}{ DE($source) }
   *[no] {""}
  }
week-rejected = Refusé : { $count }{ $hasSource ->
    [yes] {" "}{ DE($source) }
   *[no] {""}
  }
week-problem-ended = { CAP($topic) } (#{ $entry }), fini { $date }
week-problem-open = Ouvert : { $topic } (#{ $entry }) depuis { $date }
week-held = En attente : { $count } (voir « quoi faire »)
week-pile = { $low } à { $high } ({ $date })
week-pile-one = { $low } ({ $date })
week-proof-met = assez longtemps au chaud sur ces lectures
week-proof-not-yet = { $counted } sur { $needed } { $unit } au chaud
week-proof-cannot-show = chaleur pas montrable
week-turnings = { $count ->
    [one] 1 retournement
   *[other] { $count } retournements
  }
week-chores = { $count ->
    [one] 1 corvée
   *[other] { $count } corvées
  }
week-checks = { $count ->
    [one] 1 vérification
   *[other] { $count } vérifications
  }
week-hours = { $hours } h de travail
week-removed = { $kg } de compost sorti
week-removed-litres = { $litres } de compost sorti
week-missed = { $count ->
    [one] 1 tâche encore ouverte
   *[other] { $count } tâches encore ouvertes
  }
week-thanks = Merci à { $who }.
year-feed = Année : { $kg } depuis { $from }
year-target = { $pct } de { $tonnes }
year-no-target = pas d'objectif
year-forecast = Probable : { $low } à { $high } en fin d'année, { $pace }.
year-needed = Pour y arriver : environ { $kg } par semaine d'ici la fin.
year-cap-within = Plafond par { $per } : { $kg } sur { $cap }.
year-cap = Limite dépassée pour un mois ou une semaine ({ $per }) : { $kg } sur { $cap }.
why-year = Rythme : le reçu, plus la moyenne des { $weeks } dernières semaines pleines pour les jours restants ; l'intervalle tient 4 fois sur 5 (loi de Student).
yield-litres = Compost sorti : { $litres } pour { $per } d'aliments (grands sites { $low } à { $high })
yield-kg = { $kg } pour { $per } d'aliments
balance-nothing = Rien n'est entré depuis { $from } : pas de bilan.
balance-in = Entré depuis { $from } : { $kg } (aliments { $feed }, copeaux et autres { $chips }{ $hasWater ->
    [yes] , eau { $water }
   *[no] {""}
  }){ $hasEstimated ->
    [yes] , dont { $estimated } estimés
   *[no] {""}
  }
balance-out = Sorti, pesé : compost { $kg }, refus et autres { $residue }{ $hasLitres ->
    [yes] . Non pesé, donc hors bilan : { $litres } de compost
   *[no] {""}
  }
balance-lost = Parti en gaz et vapeur, selon les publications : { $low } à { $high }
balance-left = Dans les tas ou inexpliqué : { $low } à { $high }
balance-too-much = { $kg } de plus sont sortis que possible : une pesée est fausse, ou un apport manque au cahier.
balance-ash = { CAP($place) } par ses cendres ({ $first } → { $last }, #{ $entry } ; départ selon { $from }) : { $dry } de la masse sèche perdue{ $hasRange ->
    [yes] {" "}({ $range })
   *[no] {""}
  }, { $organic } de la matière organique
balance-ash-suspect = { CAP($place) } : cendres { $last } (#{ $entry }), moins qu'au départ ({ $first }, selon { $from }). Terre dans le premier échantillon, ou un autre tas ? La perte reste inconnue.
balance-no-ash = Pas de bilan des cendres : il faut les cendres ou la matière organique du laboratoire (« C labo cendres 35 % ») et les apports.
ash-from-result = un résultat antérieur
ash-from-intake = les apports, valeurs typiques
why-balance = Masse entrée moins masse sortie ; { $low } à { $high } partent en gaz et vapeur. Ce qui reste est dit, sans forcer le compte.
why-ash = Les cendres restent quand le reste part : perte = 1 − cendres au départ ÷ cendres à la fin.
analyte-ash = cendres

## La page
page-title = Cahier de compost
page-volunteer = bénévole
page-loading = Un instant …
page-emergency = Urgence
page-emergency-close = Fermer
page-emergency-call = Appeler le { $number }
page-emergency-rules = Les règles du site et les services locaux passent d'abord.
page-emergency-none = La fiche de sécurité vient avec la première connexion. D'ici là : arrêtez les machines, éloignez-vous, appelez votre numéro d'urgence.
page-log = Ce qui a été écrit et répondu
page-empty = Écrivez ce que vous avez fait, par exemple : bac 61,5
page-field = Qu'avez-vous fait ?
page-send = Envoyer
page-today = Aujourd'hui
page-week = Semaine
page-words = bac|copeaux|seau|retourné
page-letters = abc
page-digits = 123
page-keys-letters = Clavier avec lettres
page-keys-digits = Clavier avec chiffres
page-waiting = En attente d'envoi
page-sending = Envoi
page-no-answer = Gardé dans le chat, rien à noter.
page-chosen = Choisi : { $label }
page-offline = Pas de réseau. Ce que vous écrivez reste sur ce téléphone et part plus tard.
page-online = Connecté
page-busy = Beaucoup à faire : l'envoi reprend tout seul dans un moment.
page-too-old = Pas envoyé : écrit il y a plus de deux semaines. Écrivez-le à nouveau avec sa date.
page-refused = Pas envoyé : trop long ou illisible.
page-kept-answer = Pas de réseau : la réponse de { $when }.
page-no-kept-answer = Pas de réseau, et pas de réponse d'avant.
page-not-kept = Ce téléphone ne garde rien pour plus tard (fenêtre privée ?) : restez à portée du réseau.
page-name-ask = Votre prénom, pour que l'équipe sache qui écrit
page-name-save = C'est moi
page-name-skip = Passer
page-name-change = Prénom : { $name }
page-name-none = Prénom : aucun
page-language = Langue
page-ended-head = Ce lien a pris fin
page-ended = L'équipe en a accroché un nouveau. Scannez le nouveau code près de la balance, ou demandez à une personne responsable. Ce qui attend encore sur ce téléphone partira avec le nouveau lien.
page-unknown-head = Ce lien n'est pas connu
page-unknown = Scannez encore le code près de la balance, ou demandez le lien à une personne responsable.
page-no-link = Pour écrire ici, il faut le lien du site : scannez le code près de la balance.
page-file = Fichier : { $name }
page-script = Cette page a besoin de JavaScript.
dirt-gloves = gants
dirt-cutlery = couverts
dirt-glass = verre
dirt-metal = métal
dirt-plastic = plastique
dirt-bags = sacs
dirt-foam = mousse
dirt-cups = gobelets
dirt-cardboard = carton
dirt-napkins = serviettes
dirt-stones = cailloux
feedback-nothing = Rien à dire depuis 30 jours{ $has ->
    [yes] {" "}pour { $source }
   *[no] {""}
  }.
feedback-clean = { $source } : { $loads ->
    [one] 1 bac
   *[other] { $loads } bacs
  } en 30 jours, tous propres. Remerciez-les.
feedback-dirty = { $source } : { $dirty } bacs sales sur { $loads } en 30 jours{ $hasFound ->
    [yes] , surtout { $found }
   *[no] {""}
  }.

## Images

chart-number = { $value }
chart-day = { $day }
chart-weekday = { $day }
chart-month = { $day }
chart-mass = { $kg }
chart-tonnes = { $tonnes }
chart-source = { $source }
chart-source-none = source non dite
chart-source-others = { $count } autres
chart-axis-date = date
chart-axis-month = mois
chart-axis-temperature = température, °{ $unit }
chart-axis-mass-day = { $unit } reçus par jour
chart-axis-mass-week = { $unit } reçus par semaine
chart-axis-year = { $unit } reçus depuis le début de l'année
chart-axis-moisture = eau, % de la masse
chart-axis-cn = C/N
chart-heat-title = { CAP($place) } : { $high } au plus chaud
chart-heat-title-rise = { CAP($place) } : { $rise } au-dessus de l'air
chart-heat-title-near = { CAP($place) } : { $rise } au-dessus de l'air, proche maintenant
chart-heat-title-near-on = { CAP($place) } : { $rise } au-dessus de l'air, proche vers le { $day }
chart-heat-last = dernière lecture { $date } : { $low } à { $high }
chart-heat-last-one = dernière lecture { $date } : { $high }
chart-heat-proof-met = { $counted } { $unit } sur { $needed } assez chauds : durée et chaleur atteintes
chart-heat-proof-not-yet = { $counted } { $unit } sur { $needed } assez chauds
chart-heat-proof-cannot-show = { $counted } { $unit } sur { $needed } : ces lectures ne peuvent pas le montrer
chart-heat-between = proche de l'air du { $from } au { $to } (4 fois sur 5)
chart-heat-between-open = proche de l'air le { $from } au plus tôt, sans date limite connue
chart-heat-hottest = point le plus chaud
chart-heat-lowest = point le plus froid
chart-heat-read = lu dans le tas
chart-heat-ambient = air ambiant
chart-heat-level = hygiénisation { $level }
chart-heat-counted = comptés : { $counted } { $unit } sur { $needed }
chart-heat-turned = retourné
chart-heat-covered = couvert
chart-heat-uncovered = découvert
chart-heat-forecast = probable
chart-heat-band = 4 fois sur 5
chart-heat-near = { $day }
chart-heat-alt = { $count } lectures depuis { $from }, la plus chaude { $high } ({ $on })
chart-week-title = Du { $from } au { $to } : { $kg } reçus{ $hasUsual ->
    [yes] , d'habitude { $usual }
   *[no] {""}
  }
chart-week-title-so-far = { $kg } reçus depuis le { $from }{ $hasUsual ->
    [yes] , d'habitude { $usual } par semaine
   *[no] {""}
  }
chart-week-estimated = dont environ { $kg } estimés
chart-week-usual-day = d'habitude ce jour-là
chart-week-weeks = { $unit } par semaine, selon le premier jour
chart-week-alt-day = { $day } { $kg }
chart-week-alt-before = semaine d'avant { $kg }
chart-estimated = estimé d'après le volume
chart-chips = copeaux
chart-year-title = { $tonnes } reçues depuis le { $from }
chart-year-title-forecast = { $tonnes } reçues depuis le { $from }, probablement { $low } à { $high } au { $to }
chart-year-pace = { $pace }
chart-year-needed = environ { $kg } par semaine désormais pour l'atteindre
chart-year-total = reçu, au { $day }
chart-year-weighed = pesé seul
chart-year-target = objectif { $tonnes }
chart-year-forecast = probable, 4 fois sur 5
chart-mix-title = Mélange du jour : { $pct } d'eau
chart-mix-title-add = Mélange du jour : { $pct } d'eau, ajoutez { $one }{ $what } { DE($material) }
chart-mix-title-enough = Mélange du jour : { $pct } d'eau, assez de copeaux
chart-mix-title-squeeze = Mélange du jour : environ { $pct } d'eau, pressez pour savoir
chart-mix-title-squeeze-wet = Mélange du jour : environ { $pct } d'eau. Pressez ; si ça coule, { $one }{ $what } { DE($material) }
chart-mix-title-infeasible = Mélange du jour : { $pct } d'eau, pas réglable avec ce qu'il y a ici
chart-mix-sub = eau { $range } %, C/N { $cn } ({ $cnRange })
chart-mix-window = bon : eau { $range } %, C/N { $hasTop ->
    [yes] { $cn } à { $top }
   *[no] { $cn } et plus
  }
chart-mix-now = maintenant
chart-mix-after = avec { $one }{ $what } { DE($material) }{ $more ->
    [0] {""}
   *[other] {" "}et le reste
  }
chart-mix-never = plus de { $pct } : jamais
chart-mix-alt-after = avec cela { $pct } d'eau, C/N { $cn }
chart-saved = Image : { $path }

## Le mélange et le tambour : ce qui est derrière une réponse, et leurs réglages
mix-recipe-add = Selon votre recette : ajoutez { $one }{ $what } { DE($material) } (environ { $kg }). Cela fait environ { $after } d'eau.
mix-recipe-enough = Votre recette est respectée : environ { $pct } d'eau ({ $range }, { $basis }).
recipe-none = Pas de recette du site (« régler recette 1 copeaux : 1 restes en volume »).
mix-enough-tested = Mélange du jour : environ { $pct } d'eau ({ $range }, { $basis }). Rien à ajouter.
mix-over-never = La recette seule le laisse trop mouillé (environ { $after } ; jamais plus de 65 %). Des copeaux secs jusqu'à une goutte ou deux en pressant.
mix-packed = Tassé : { $density }, environ { $air } d'air seulement (il en faut 40 %). Des copeaux grossiers, ou retournez.
mix-solves = Il faudrait une chose de plus : { $solve }.
mix-more-solves = Il faudrait plus { DE($solve) }.
mix-room-solves = Videz d'abord un peu : pas de place pour ce qu'il faut.
asks-structure = il manque de structurant
asks-moisture-high = c'est mouillé
asks-moisture-low = c'est sec
asks-cn-low = il manque de carbone
asks-cn-high = il manque d'azote
asks-cap = trop de fines
asks-recipe = votre recette
asks-stock = la réserve est courte
asks-room = il n'y a pas de place
planned-short = C'est le mieux possible ici ({ $limit }{ $hasOther ->
    [yes] , { $other }
   *[no] {""}
  }) : pas assez.
room-too-young = Le plus ancien n'a pas encore ses { $days } jours : ce qui sort n'est pas fini.
room-stands = Non : le tambour est arrêté (#{ $entry }). Aucun apport avant qu'il tourne.
drum-stands-no-loads = Le tambour est arrêté (#{ $entry }) : plus d'apports avant qu'il tourne.
drum-stands = { CAP($place) } arrêté { $hours ->
    [0] à l'instant
   *[other] depuis { $hours } h
  } (#{ $entry }) : plus d'apports.
drum-inside = Dedans : { $material } environ { $kg }
drum-inside-also = { $material } { $kg }
why-drum-full = Le tambour contient { $litres } ; { $pct } compte comme plein ({ $from }).
why-drum-shrink = Il fond de { $shrink } % par jour environ ({ $low }–{ $high }).
formula-drum-fill-by-level = Remplissage : le niveau vu, fondu depuis, plus les apports depuis, moins ce qui est sorti depuis.
formula-drum-fill-by-loads = Remplissage : les litres de chaque apport, fondus selon ses jours ; le fin comble une partie des vides des copeaux.
formula-correction-by-recipe = À ajouter : le moins de contenants entiers qui respectent votre recette.
formula-correction-fewest-containers = À ajouter : le moins de contenants entiers qui respectent tout cela, avec la réserve et la place.
drum-taken-first-in-first-out = Admis : le premier entré sort le premier.
drum-taken-level-by-eye = Admis : un niveau à l'œil vaut à un dixième du tambour près.
why-room = Admis : { $what }, environ { $kg } de restes ({ $from }), avec ses copeaux environ { $litres }.
why-accepts = { $has ->
    [yes] Lu sur la liste du site (#{ $entry }), rien d'autre.
   *[no] Lu sur la liste du site (son fichier), rien d'autre.
  }
why-accepts-how = Oui seulement sous son nom ; un non vaut aussi pour ce qui y ressemble. Changer : « régler accepte pain, pas de viande ».
why-planned = Admis : { $what }, environ { $kg } de restes en tout ({ $from }).
figure-common = usage courant
why-mix-water = Cela fait environ { $pct } d'eau ({ $range }){ $hasCn ->
    [yes] , C:N environ { $cn } ({ $cnRange })
   *[no] {""}
  }.
why-mix-aim = But : { $range } % d'eau, jamais plus de { $never } ; C:N { $hasTop ->
    [yes] { $cn } à { $top }
   *[no] { $cn } ou plus
  } ; au moins { $floor } L de structurant pour 1 L de restes.
why-mix-recipe = But : votre recette, { $chips } de copeaux pour { $food } de restes { $by }. Elle passe avant la fenêtre habituelle.
why-recipe = Votre recette passe avant la fenêtre habituelle. « enlever la recette » l'annule.
by-volume = en volume
by-mass = en masse
why-mix-limiting = Ce qui en demande le plus : { $limit }.
why-drum-rules = { $hasRule ->
    [yes] Votre règle : toutes les { $low } à { $high }.
   *[no] Aucun intervalle n'est réglé ici (régler intervalle tambour 40-60).
  } Ventilateur arrêté { $hours } h au plus ({ $from }).
why-call-set = Qui appeler et quand : réglé ici.
why-call-unset = Personne n'est réglé : « régler appel tambour Sam 555 0100 », « régler appel tambour après 4 heures ».
stopped-call-now = { CAP($place) } arrêté depuis { $hours } h (#{ $entry }). Appelez { $has ->
    [yes] { $whom }
   *[no] un responsable
  } maintenant. Arrêtez les apports ; notez la chaleur.
setting-mix-water = viser { $low } à { $high } % d'eau dans le mélange
setting-mix-cn = C:N du mélange { $low } à { $high }
setting-drum-interval = tambour toutes les { $low } à { $high } min
setting-drum-call = si le tambour s'arrête, appeler { $whom }
setting-drum-call-hours = appeler quand le tambour est arrêté { $number } h
setting-drum-days = tambour : { $number } jours dedans
setting-drum-full = tambour plein à { $number } %
setting-drum-least-hours = tambour : au moins { $number } h dedans
setting-fan-off-hours = ventilateur arrêté { $number } h au plus
setting-carbon = { $material } : carbone { $number } % { $hasFresh ->
    [yes] du frais
   *[no] du sec
  }
setting-nitrogen = { $material } : azote { $number } % { $hasFresh ->
    [yes] du frais
   *[no] du sec
  }
setting-ash = { $material } : cendres { $number } % { $hasFresh ->
    [yes] du frais
   *[no] du sec
  }
setting-density = { $material } { $number } kg/m³
setting-cn = { $material } C:N { $number }
analyte-bulk-density = masse volumique
analyte-lead = plomb
analyte-cadmium = cadmium
analyte-copper = cuivre
analyte-zinc = zinc
analyte-nickel = nickel
analyte-arsenic = arsenic
analyte-mercury = mercure
analyte-chromium = chrome
analyte-cobalt = cobalt
analyte-molybdenum = molybdène
analyte-selenium = sélénium
analyte-faecal-coliforms = coliformes fécaux
analyte-faecal-coliform = coliformes fécaux
analyte-foreign-matter = corps étrangers
analyte-plastic = plastique
analyte-glass = verre
analyte-metal = métal
analyte-nitrogen = azote
analyte-phosphorus = phosphore
analyte-potassium = potassium
analyte-carbon = carbone
analyte-organic-matter = matière organique
analyte-ammonium = ammonium
analyte-nitrate = nitrate
analyte-stability = stabilité
analyte-maturity = maturité
analyte-self-heating = auto-échauffement
cite-from-memory = de mémoire
cite-common-practice-no-source = usage courant, sans source
cite-common-practice-on-one-kind-of-machine-no-source = usage courant sur un type de machine, sans source
cite-the-site-and-local-codes-come-first = le site et les règles locales passent d'abord
cite-seen-as-a-copy = vu en copie
cite-the-site-s-settings = les réglages du site
cite-the-site = le site
cite-the-rest = le reste
cite-seen = vu
cite-nitrogen = azote
cite-carbon = carbone
cite-range = écart
cite-by-definition = par définition
cite-of-volatile-solids-in-days = des solides volatils en 12 jours
cite-carbon-and-ash = carbone et cendres
cite-moisture-and-nitrogen = humidité et azote
mix-loose = D'après votre seau : { $density }, environ { $air } d'air. Assez aéré.
mix-left-out-load = Pas dans ce calcul : #{ $entry }, poids inconnu.
why-factor-litre = { CAP($material) } : { $factor } kg/L selon les valeurs publiées ({ $low }–{ $high }) ; elles varient beaucoup.
why-factor-learned = Un ({ $container }) : { $each }, appris de ceux pesés ici (19 sur 20 entre { $low }–{ $high }).
why-factor-set = Un ({ $container }) : { $each }, réglé ici.
setting-band = { $band } dès { $celsius }
setting-depth = lectures jugées de { $from } à { $to } de profondeur
setting-lab-standard = limites de laboratoire { $name }
setting-day-count = { $way ->
    [hours-72] jours comptés en heures entières
   *[other] un jour compte par son relevé
  }
setting-aeration = { $way ->
    [forced] tuyaux soufflés par un ventilateur
    [breathing] tuyaux qui ne font que respirer
   *[other] pas de tuyaux
  }
setting-vectors = { $on ->
    [on] attraction des vecteurs exigée
   *[other] attraction des vecteurs laissée de côté
  }
settings-heat = Chaleur
setting-one-of = Au choix : { $values }. Rien n'a changé.
heat-band-do-not-open = ne pas ouvrir
heat-band-act-at-once = agir aussitôt
heat-band-turn-soon = retourner bientôt
heat-band-act-today = trop chaud, agir aujourd'hui
heat-band-fire-watch = guetter le feu
setting-drum-way = chaleur du tambour prouvée { $way }
drum-way-in-vessel = dans le tambour même
drum-way-closed-pile = dans le tas fermé
drum-call-line = S'il s'arrête : appeler { $whom }{ $hasHours ->
    [yes] {" "}après { $hours } h
   *[no] {""}
  }.
drum-call-nobody = Personne n'est nommé : « régler appel tambour Sam 555 0100 ». D'ici là, la coordination.
accepts-in = Accepté : { $list }.
accepts-out = Refusé : { $list }.
accepts-no-list = Pas encore de liste : « régler accepte pain, pas de viande ».
