### What Heaphand says, in English. Short, plain, the words a crew uses.
### {$entry} is the number of a line in the log book.

## Over Telegram
telegram-not-known =
    I keep the log book of one site's crew, and this chat is not one of theirs.
    To use me here, ask whoever runs me for the word that lets a group in.
telegram-let-in =
    This group now keeps the log book of { $site }.
    Send what you did: "cart 61.5 kg", "B 58". "help" shows more.
    To take something back press Undo or send "undo": deleting a message changes nothing in the book.
telegram-cannot-hear =
    I cannot hear plain messages in this group: privacy mode is on.
    Make me an admin here, or turn privacy mode off in my bot settings and add me again.
    Until then: /log cart 61.5, or answer one of my messages.
telegram-cannot-read = I read text only. Please write it, or put the words under the picture.
telegram-gap =
    I was away for more than a day. Messages of that time may be missing:
    please send again what is not in the book.
telegram-which-site = You belong to more than one site. Which one is this for? (/site changes it later.)
telegram-unreached = { $has ->
    [no] An alarm came in and no coordinator is known here: whoever is in charge, please look here now.
   *[yes] { $who }: an alarm came in and no coordinator could be reached directly. Please look here now.
  }
    To be told directly, open a chat with me and press Start.
telegram-topic-chosen = The week and the morning line come here from now on.
menu-today = What needs doing today
menu-week = The week in figures
menu-piles = How the piles are
menu-mix = The mix of today
menu-undo = Take back what I logged last
menu-log = Log something: /log cart 61.5
menu-help = What I understand
menu-year = The year against the target
menu-settings = The settings of the site
menu-share = A link for people with no account
menu-export = The book as a spreadsheet
menu-report = A report to hand in
menu-here = Put the week and the morning line into this topic

## Names of things
place-pile = pile { $name }
place-bay = bay { $name }
place-drum = { $named ->
    [yes] drum { $name }
   *[no] drum
  }
place-exit = exit
place-ambient = ambient
place-floor = floor
place-lift = lift

material-food-scraps = food scraps
material-wood-chips = chips
material-sawdust = sawdust
material-leaves = leaves
material-cardboard = cardboard
material-paper = paper
material-straw = straw
material-grass = grass
material-coffee-grounds = coffee grounds
material-garden-waste = garden waste
material-manure = manure
material-finished-compost = finished compost
material-water = water
material-residue = residue
material-leachate = leachate
material-overs = overs

container-cart = { $count ->
    [one] cart
   *[other] { $shown } carts
  }
container-bucket = { $count ->
    [one] bucket
   *[other] { $shown } buckets
  }
container-bag = { $count ->
    [one] bag
   *[other] { $shown } bags
  }
container-bale = { $count ->
    [one] bale
   *[other] { $shown } bales
  }
container-barrel = { $count ->
    [one] barrel
   *[other] { $shown } barrels
  }
container-barrow = { $count ->
    [one] barrow
   *[other] { $shown } barrows
  }
container-loader-bucket = { $count ->
    [one] loader bucket
   *[other] { $shown } loader buckets
  }

point-top = top
point-middle = middle
point-bottom = bottom
point-north = north
point-south = south
point-east = east
point-west = west
point-front = front
point-back = back
point-core = core
point-edge = edge

feel-dry = dry
feel-right = right
feel-wet = wet
feel-dripping = dripping
layer-mature-compost = mature compost
layer-wood-chips = chips
layer-geotextile = fabric
layer-tarp = tarp
layer-unspecified = cover
mode-automatic = automatic
mode-manual = manual
mode-off = off
fan-off = off
fan-low = low
fan-high = high
topic-odour = smell
topic-leachate = leachate
topic-flies = flies
topic-pests = pests
topic-freezing = frozen
topic-fault = fault
topic-power = no power
topic-spill = spill
topic-contamination = contamination
topic-sharps = sharps
topic-complaint = complaint
topic-smoke = smoke
topic-injury = someone hurt
topic-other = other
strength-none = none
strength-faint = faint
strength-strong = strong
chore-sweep = swept
chore-wash-lift = lift washed
chore-wash-containers = containers washed
chore-clean-tools = tools cleaned
chore-clean-spill = spill cleaned
chore-check-fan = fan checked
chore-check-stop-button = stop button checked
chore-check-scale = scale checked
chore-check-thermometer = thermometer checked
chore-check-odour = smell checked
chore-lock-gate = gate locked
chore-inspect = inspected
chore-watered = watered
weather-rain = rain
weather-frost = frost
weather-snow = snow
weather-heat = heat
weather-wind = wind
qualifier-not-detected = not detected
choice-start = start it
choice-each = each
choice-all = for all
choice-both = for both
choice-net = net
choice-gross = gross
choice-same = same cart
choice-another = another cart
choice-yes = yes
choice-no = no
choice-full = full
choice-ready = ready
choice-today = today
choice-drop = drop it
kind-weigh-in = weight
kind-temperature = temperature
kind-moisture = moisture
kind-turning = turning
kind-cover = cover
kind-discharge = discharge
kind-transfer = transfer
kind-removal = removal
kind-lab-result = lab result
kind-pile = pile
kind-level = level

date-today = today
date-yesterday = yesterday, { $day }
date-tomorrow = tomorrow, { $day }
date-at = { $date } { $clock }

## Lines of the book
what-material = { $material }
what-container = { $container }
what-container-of = { $container } of { $material }
what-load = { $count ->
    [one] load
   *[other] { $count } loads
  }
line-net = #{ $entry } { CAP($what) } { $net } net ({ $gross } − { $tare })
line-pending = #{ $entry } { CAP($what) } { $gross } gross, net pending: no empty weight yet
line-weighed = #{ $entry } { CAP($what) } { $kg }
line-volume = #{ $entry } { CAP($what) } { $litres }
line-counted = #{ $entry } { CAP($what) }
line-temperature = #{ $entry } { CAP($place) } { $values }
line-moisture = #{ $entry } { CAP($place) } feels { $feel }
line-moisture-percent = #{ $entry } { CAP($place) } { $pct } water
line-turned = #{ $entry } Turned { $pile }
line-turned-into = #{ $entry } Turned { $pile } into { $to }
line-covered = #{ $entry } Covered { $pile }: { $layer }
line-uncovered = #{ $entry } Uncovered { $pile }: { $layer } off
line-discharge = #{ $entry } Drum discharged
line-discharge-to = #{ $entry } Drum discharged to { $pile }
line-transfer = #{ $entry } { CAP($from) } onto { $to }
line-drum-setting = #{ $entry } { CAP($place) } set
line-level = #{ $entry } { CAP($what) } level
line-problem = #{ $entry } Problem noted: { $topic }
line-resolved = #{ $entry } Closed: { $topic }
line-chore = #{ $entry } { CAP($chore) }
line-weather = #{ $entry } { CAP($weather) } expected { $date }
line-weather-observed = #{ $entry } { CAP($weather) } seen
line-removal = #{ $entry } Left the site: { $material }
line-screening = #{ $entry } Screened { $pile }
line-delivery = #{ $entry } Delivered: { $material }
line-rejected = #{ $entry } Turned away: { $what }
line-pile-started = #{ $entry } Started { $pile }
line-pile-full = #{ $entry } { CAP($pile) } is full and closed
line-pile-finished = #{ $entry } { CAP($pile) } is finished
line-pile-ready = #{ $entry } { CAP($pile) } is said to be ready
line-pile-emptied = #{ $entry } { CAP($pile) } is empty
line-pile-joined = #{ $entry } { CAP($pile) } joined to { $with }
line-pile-split = #{ $entry } { CAP($pile) } split off { $with }
line-pile-moved = #{ $entry } { CAP($pile) } is now { $to }
line-sample = #{ $entry } { $count ->
    [one] Sample
   *[other] { $count } samples
  } taken from { $pile }
line-lab = #{ $entry } Lab, { $place }: { $analyte } { $value }
line-density = #{ $entry } { CAP($place) }: bulk density { $density }
line-hours = #{ $entry } { $people ->
    [one] One person
   *[other] { $people } people
  }, { $hours } h
line-note = #{ $entry } Note: { $has ->
    [no] its words were removed
   *[yes] { $text }
  }
line-setting = #{ $entry } Set: { $what }
line-void = #{ $entry } takes back #{ $old }
line-duty = #{ $entry } Duty: { $name } ({ $every })
line-duty-removed = #{ $entry } Duty removed: { $name }
line-duty-claim = #{ $entry } Yours: { $duty }
line-duty-release = #{ $entry } Handed back: { $duty }
line-duty-postpone = #{ $entry } Put off: { $duty } { $until }
line-duty-done = #{ $entry } Done: { $duty }

part-kg = { $kg }
part-litres = { $litres }
part-containers = { $what }
part-estimate-litre = about { $kg } (estimated, { $factor } kg/L{ $hasRange ->
    [yes] ; { $low }–{ $high }
   *[no] {""}
  })
part-estimate = about { $kg } (estimated, { $each } each{ $hasRange ->
    [yes] ; { $low }–{ $high }
   *[no] {""}
  })
part-no-estimate = no weight known for it
part-fill = { $pct } full
part-from = from { $source }
part-into = into { $place }
part-off = from { $place }
part-to = to { $to }
part-at = { $place }
part-words = { $text }
part-contaminated = contaminated
part-of-which = of which { $what } { $kg }
part-lowest-highest = lowest { $low }, highest { $high }
part-depth = at { $depth } deep
part-mode = { $mode }
part-every = every { $min }
part-fan = fan { $fan }
part-strength = { $strength }
part-reads = { $against } reads { $reads }
part-mm = { $mm }
part-overs = overs { $amount }
part-approximate = about
part-replaces = replaces #{ $old }
part-date = { $date }
part-clock = { $clock }

assumed-unit-other = read as { $typed }
assumed-date-carried = same day as above
assumed-place-carried = same place as above
assumed-spelling = read through a slip
assumed-pile-successor = the pile it became
assumed-same-again = same as before

setting-tare = empty { $container } { $kg }
setting-litres = { $container } holds { $litres }
setting-factor = a full { $container } weighs { $kg } net
setting-moisture = { $material } { $pct } water
setting-target = target { $tonnes } a year
setting-other = { $name } { $value }
setting-week = weekly summary, { $day } { $clock }
setting-morning = morning line, { $clock }
setting-ratio = recipe { $chips } chips to { $food } food
setting-no-recipe = no recipe; back to the usual window
setting-accepts = { $has ->
    [in] yes to { $in }
    [out] no to { $out }
   *[both] yes to { $in }; no to { $out }
  }
setting-nearby = people at risk nearby: { $nearby ->
    [wards] a hospital or home
    [classrooms] a school
   *[none] none
  }
setting-cautions = { $on ->
    [on] daily cautions on
   *[off] daily cautions off; lock-out, sharps and fire stay
  }
setting-cap = limit for the { $per } { $kg }
setting-cap-off = no limit for the { $per }
setting-paper = { $what } { $name } runs out { $date }
setting-paper-off = { $what } { $name } is not watched any more
setting-every = { $what } every { $days ->
    [one] day
   *[other] { $days } days
  }
setting-wards = people to be kept from smell: to the { $point }
setting-wards-off = no side to be kept from smell
setting-name-turn-pile = turning in curing
settings-also = { CAP($what) }
cap-over = Over the limit for the { $per }: { $kg } of { $cap }, till { $date }. The permit decides what may still come in.
part-wind-from = from the { $point }
part-wind-to = towards the { $near }
permit-permit = permit
permit-training = training
near-wards = wards
near-classrooms = classrooms
near-people = people
compass-north = north
compass-north-east = north-east
compass-east = east
compass-south-east = south-east
compass-south = south
compass-south-west = south-west
compass-west = west
compass-north-west = north-west
setting-keep = words of messages kept { $days ->
    [one] 1 day
   *[other] { $days } days
  }
setting-name-unit-mass = weights in
setting-name-unit-temperature = temperatures in
setting-name-unit-volume = volumes in
setting-name-unit-length = lengths in
setting-name-time-zone = time zone
setting-name-day-order = dates
setting-name-languages = languages
setting-name-week-starts = week starts
setting-name-year-starts = year starts in month
setting-name-rule-set = rule for heat
setting-name-safety-emergencynumber = emergency number
setting-name-safety-address = address
setting-name-safety-isolator = power off at
setting-name-safety-firstaider = first-aider
setting-name-aeration = aeration
setting-name-name = name
setting-name-place = place
setting-name-page-address = page address
setting-name-holds = usual load
setting-name-bulk-density = bulk density

more-entries = … and { $count } more lines, all in the book.

## Doubts: the question that would settle it
doubt-too-heavy = #{ $entry } { $said }: too heavy for that. Which?
doubt-too-light = #{ $entry } { $said }: too light for that, even empty it weighs more. Which?
doubt-negative = #{ $entry } { $said }: less than nothing. What did it weigh?
doubt-each-or-all = #{ $entry } { $said }: each, or for all?
doubt-count-differs = #{ $entry } { $said }: the count and the weights differ. Which holds?
doubt-gross-or-net = #{ $entry } { $said }: with the container, or without?
doubt-tare-unlikely = #{ $entry } { $said }: is that gross and empty weight, or a range?
doubt-other-unit = #{ $entry } { $said }: far from the usual here, it may be the other unit. Which?
doubt-which-unit = #{ $entry } { $said }: °C or °F?
doubt-impossible-temperature = #{ $entry } { $said }: that cannot be. Read it again?
doubt-impossible-value = #{ $entry } { $said }: that cannot be. Which?
doubt-number-ambiguous = #{ $entry } { $said }: which number?
doubt-either-or = #{ $entry } { $said }: which of them?
doubt-no-material = #{ $entry } { $said }: what was in it?
doubt-no-place = #{ $entry } { $said }: which pile?
doubt-unknown-place = #{ $entry } { $said }: { $place } is not known here. Start it, or which one?
doubt-ceased-place = #{ $entry } { $said }: { $place } is no more. Which one?
doubt-which-places = #{ $entry } { $said }: which piles?
doubt-date-impossible = #{ $entry } { $said }: there is no such day. Which day?
doubt-date-contradicts = #{ $entry } { $said }: day and date do not agree. Which day?
doubt-date-today-or-last = #{ $entry } { $said }: today, or a week ago?
doubt-date-in-future = #{ $entry } { $said }: that is still to come. Which day?
doubt-date-too-old = #{ $entry } { $said }: that is long ago. Which month?
doubt-same-cart = #{ $entry } Looks like { $said }, logged a moment ago. Same cart or another?
doubts-same-cart = { $entries } look like { $said }, logged a moment ago. The same carts or others?
doubt-full-or-ready = #{ $entry } { $said }: full, or ready to use?
doubt-unclear = #{ $entry } { $said }: not sure what is meant.
doubts-wait = { $count ->
    [one] Not counted yet.
   *[other] None of these is counted yet.
  }
danger-if-true = If that is true it is near fire: DO NOT OPEN OR TURN IT. People back, fan off only if safe, call the fire service. Do not half wet it.

answered-already = #{ $entry } was answered already: see #{ $by }.
dropped = { $count ->
    [one] { $entries } dropped. It stays in the book, not counted.
   *[other] { $entries } dropped. They stay in the book, not counted.
  }
button-choice = { $choice }
button-drop = Drop it
button-name = { $who }
button-undo = { $count ->
    [one] Undo
   *[other] Undo all { $count }
  }
button-undo-entry = Undo #{ $entry }
button-gone = That button is no longer known. Type it instead.

## Putting right
undone = { $count ->
    [one] Undone: { $entries }. It stays in the book, not counted.
   *[other] Undone: { $entries }. They stay in the book, not counted.
  }
undone-already = #{ $entry } was undone already (#{ $by }).
replaced-already = #{ $entry } was replaced by #{ $by }. To take that back: "undo #{ $by }".
not-yours = #{ $entry } was logged by somebody else: they or a coordinator can undo it.
no-such-entry = There is no #{ $entry } in the book.
nothing-to-undo = Nothing of yours to undo.
amend-which = Which line should become { $to }? Answer its message, or "undo" and send it again.
edited = { $count ->
    [one] Message edited: { $entries } is replaced.
   *[other] Message edited: { $entries } are replaced.
  }
left-over = Not read: { $pieces }{ $more ->
    [0] {""}
   *[other] {" "}and { $more } more
  }
what-was-number = { $text }: what was that? Nothing stored.
kept-unread = Your message is kept, but something went wrong on our side. It will be looked at.

## Asking for what is missing
ask-tare = What does an empty { $container } weigh? Send just the number, or "empty { $container } 16".
ask-safety =
    For an emergency, please set once what is not known here yet:
    set emergency number … · set address … · set first aider …{ $hasDrum ->
    [yes] {" "}· set isolator …
   *[no] {""}
  }
ask-nearby = People nearby whom dust harms more? "set people nearby hospital", "school" or "none": it says when not to turn.
ask-ambient = How warm is the air? Send "ambient 12": the rise over it tells how the pile does.
completed = #{ $entry } now { $net } net ({ $gross } − { $tare })

## Settings
coordinators-only = Only a coordinator can change that.
setting-unknown = "{ $name }" is not something that can be set. Try "settings".
setting-out-of-range = That value cannot be right for { $name }. Nothing changed.
rule-set-readings = Weekly readings can never show { $needed } { $unit }{ $hasTurns ->
    [yes] {" "}with { $turns } turns
   *[no] {""}
  }: a day with no reading proves nothing. Once a pile is closed, read it daily.
settings-head = { $site }, { $zone }
settings-units = Units: { $mass }, °{ $temperature }
settings-target = Target: { $tonnes } a year
settings-no-target = Target: not set ("set target 60 t")
settings-tare = Empty { $container }: { $kg }
settings-no-tare = Empty { $container }: not set
settings-rule-set = Rule for heat: { $name }
settings-no-rule-set = Rule for heat: not set ("set rule set vessel-3d")
settings-nearby = People at risk nearby: { $nearby ->
    [wards] a hospital or home
    [classrooms] a school
    [none] none
   *[unsaid] not said, taken to be near ("set people nearby none")
  }
settings-how = Change with "set …": set cart tare 15.5 · set units lb F · set time zone Europe/Paris · set summary monday 7:00

## Emergencies: what to do now, first things first
emergency-drum = PRESS THE RED STOP, POWER OFF. Nobody reaches in or climbs in. Call { $has ->
    [no] your emergency number
   *[yes] { $number }
  } now.
emergency-drum-then = { $hasIsolator ->
    [yes] Power off at: { $isolator }.{" "}
   *[no] {""}
  }Do not turn the drum to free anybody. Nobody goes in, not even to rescue.
emergency-hurt = Stop the machines. Make sure it is safe before you go near.
emergency-hurt-then = Stay with them. Move them only out of danger.
emergency-fire = Everybody back, upwind. Do not open or turn it.
emergency-fire-then = Fan off only if that is safe. Do not half wet it.
emergency-gas = Out and away, upwind. No switches, no flames.
emergency-needle = Do not reach in, do not tip it. Lid shut, tag it, set it aside.
emergency-needle-then = It is taken out with tongs into a sharps box, only by whoever is trained. Follow the site's procedure.
emergency-needle-pricked = Pricked? Soap and running water, then medical help at once: hours matter.
emergency-pricked = Soap and running water, now. Then medical help at once: hours matter.
emergency-pricked-then = Leave the needle where it is: nobody picks it up by hand.
emergency-help = Hurt or in danger? Stop the machines. Nobody reaches or climbs in.
emergency-help-then = What happened, and where?
emergency-call = Call { $has ->
    [no] your emergency number
   *[yes] { $number }
  } now.
emergency-call-fire = Call the fire service: { $has ->
    [no] your emergency number
   *[yes] { $number }
  }.
emergency-call-away = Call { $has ->
    [no] your emergency number
   *[yes] { $number }
  } from a safe distance.
emergency-call-clinic = Call { $has ->
    [no] your emergency number or clinic
   *[yes] { $number } or your clinic
  }.
emergency-address = Say where: { $text }
emergency-first-aider = First-aider: { $text }
alarm = Emergency reported{ $has ->
    [no] {""}
   *[yes] {" "}by { $who }
  }: { $what }.
danger-caught = somebody is caught
danger-inside-drum = somebody is in the drum
danger-hurt = somebody is hurt
danger-reaching-in = somebody reaches in
danger-unwell = somebody is unwell
danger-fire = fire
danger-smoke = smoke
danger-burnt-smell = burnt smell
danger-needle = needle
danger-pricked = somebody is pricked
danger-gas = gas
danger-help = a call for help
alarm-said = "{ $text }"

## Cautions in the moment
caution-gloves = Gloves on. Wash your hands before you eat, drink or smoke. Site rules come first.
caution-dust = Dry or dusty? Damp it first, stand upwind, wear a fitted respirator (N95, FFP2 or better). Site rules come first.
caution-wards = Wind towards people at risk or air intakes? Then no turning or screening now. Site rules come first.
caution-wind = Windy: turn and screen in a calmer hour, and stand upwind. Site rules come first.
caution-lift = Lift: chain on, nobody between lift and machine while it moves. Follow the site's procedure.
caution-lock-out = Before anybody opens or enters it: stop pressed, power locked and tagged off by the one who works there. Follow the site's procedure.
caution-electrician = Inside of a panel: a licensed electrician only. Local codes hold.
caution-guards = Guards stay on while it runs. They come off only with the power locked off. Follow the site's procedure.
caution-pinch = While the drum turns: hands, sleeves and hair away from rollers and chain. Follow the site's procedure.
caution-hot-core = Hot inside, and steam burns: open it slowly and stand upwind. Site rules come first.
caution-lifting = Heavy: roll it, use the lift, or be two. Site rules come first.
caution-tetanus = Wash cuts at once. Tetanus shot up to date? Ask your clinic.
caution-clean-tools = From raw to finished: clean tools, containers and boots first. Site rules come first.
caution-sharps = Sharps: do not reach in, do not tip it. Tongs and a sharps box, only by whoever is trained. Follow the site's procedure.
caution-fire = Smoke or far too hot there: do not open or turn it, keep people back. If it smokes, call the fire service.

## Language, people, privacy
language-set = English it is.
language-unknown = English, French or Spanish: which?
forgotten =
    Your name, your messages and what they said are removed, notes too.
    The entries stay, under the number { $number } alone: each line of the book is chained to the one before, and the weights must still add up.
    Backups made before now keep the name until newer ones take their place.
person-numbered = person { $number }
role-whom = Answer one of their messages with "make coordinator", or choose:
role-given = { $who } is a coordinator now.
role-had = { $who } is a coordinator already.
role-who = Coordinators: { $list }
role-nobody = Nobody is coordinator here yet.

## Lists of lines
mine-nothing = Nothing logged by you today.
mine-head = { $count ->
    [one] Yours today, one line:
   *[other] Yours today, { $count } lines:
  }
show-who = Logged by { $who }, { $date }
show-pictures = { $count ->
    [one] One picture kept.
   *[other] { $count } pictures kept.
  }
shown-voided = #{ $entry } was taken back or replaced: see #{ $by }.
why-nothing = No sum in my last reply. Ask after one that had: a mix, room in the drum, stock, a proof, a total.

accepts-yes = { CAP($what) }: yes, it is on this site's list.
accepts-no = { CAP($what) }: no, it is on this site's list of what stays out.
accepts-not-on-list = { CAP($what) } is not on this site's list. Set it aside and ask a coordinator.

paper-export = The book from { $from } to { $to }, as a file:
paper-whole = The whole book up to { $to }, as a file:
paper-report = The report from { $from } to { $to }:
paper-coordinators = Only a coordinator can have the book as a file.
paper-failed = The file could not be made. On the machine: npm run -s { $what }
paper-saved = File: { $path }
guest-sets-nothing = From here nothing is set: ask a coordinator to send that in the group.
guest-too-late = #{ $entry } is more than an hour old: ask a coordinator to take it back.
share-link = A page for { $site }: whoever has this link can log and ask, with no account.
share-address = { $link }
share-print = Print it and hang it by the scale. "share new" ends all links there are and makes one new.
share-old-ended = All links from before have ended: hang up this one.
share-here-only = This address may work on this machine alone: for phones, "set page address https://…" first.
share-no-page = The page is off here: start it without --no-page, or "set page address https://…".

## Help
help-log = Log by texting what you did: cart 61.5 kg, chips 12 · 3 carts 61 58 70 · B 41 43 39, ambient 12 · turned B · covered B with tarp
help-log-drum = Drum: emptied drum onto C · drum auto 45 min fan low · drum 3/4 full
help-log-piles = Piles: started pile E · C is full · joined A to B · 3 barrows from C onto B
help-ask = Ask: today · week · year · piles · how is B? · 3 carts coming, how many chips? · why
help-mend = Mend: undo · sorry 56.2 not 58.2 · that was C not B · or answer the message
help-set = Set up: empty cart 16.2 · set target 60 t · settings · french please
help-danger = Somebody hurt, smoke, a needle: just say so. First call your emergency number.
new-1 = { $site }: welcome. Eight lines to start safely; the site's own procedures come first.
new-2-call = Emergency: { $number }{ $hasAddress ->
    [yes] , we are at { $address }
   *[no] {""}
  }
new-2-no-call = Emergency: no number is set here yet, ask before you start
new-2-aid = first aid: { $who }
new-3 = Piles are hot inside: steam and 60 °C and more. Open them slowly, stand upwind, never climb on a slope.
new-3-drum = Never reach or climb into the drum. Stop pressed and power locked off{ $hasIsolator ->
    [yes] {" "}({ $isolator })
   *[no] {""}
  } before anybody opens it.
new-4 = Gloves on, wash hands after, no food here. Dusty, dry stuff: damp it, and a fitted respirator
new-4-near = { $near } are near{ $hasPoint ->
    [yes] {" "}(to the { $point })
   *[no] {""}
  }: no turning when the wind blows that way
new-5 = Weigh each { $container } full; its { $tare } empty are taken off for you: "{ $container } { $gross }"
new-5-no-tare = Weigh each { $container } full; tell its empty weight once: "empty { $container } 16"
new-6 = Add chips as the reply says, then squeeze a handful: a drop or two is right.
new-6-recipe = { $chips } of chips to { $food } of food here, then squeeze a handful: a drop or two is right.
new-7 = Needle or sharp: do not reach in. Lid shut, set aside, say so here.
new-8 = Not sure? Ask "today" for what needs doing, "help" for how to say it.

## The mix
limit-recipe = the recipe
limit-structure = coarse stuff
limit-moisture-high = water
limit-moisture-low = dryness
limit-cn-low = C:N
limit-cn-high = C:N
limit-cap = fines
limit-stock = stock
limit-room = room in the drum
unit-days = days
unit-hours = h
state-open = filling
state-closed = closed
state-ready = ready
state-gone = gone

mix-basis-typical = typical values
mix-basis-test = by your test
mix-of = { CAP($place) }
mix-also-add = And { $one }{ $what } of { $material } (about { $kg }).
mix-enough = Mix today: about { $pct } water ({ $range }). Chips are enough; squeeze to be sure: a drop or two.
mix-wet-add = Wet: about { $pct } water ({ $range }, { $basis }). Add { $one }{ $what } of { $material } (about { $kg }){ $hasSqueeze ->
    [yes] , then squeeze: a drop or two is right
   *[no] {""}
  }.
mix-add = About { $pct } water ({ $range }, { $basis }), { $asks }. Add { $one }{ $what } of { $material } (about { $kg }){ $hasSqueeze ->
    [yes] , then squeeze: a drop or two is right
   *[no] {""}
  }.
mix-squeeze = About { $pct } water ({ $range }, { $basis }). Squeeze a handful: a drop or two is right.
mix-squeeze-or-add = About { $pct } water ({ $range }, { $basis }). Squeeze: a drop or two is right; if it runs, add { $one }{ $what } of { $material } (about { $kg }).
mix-infeasible = About { $pct } water ({ $range }): cannot be put right with what is here ({ $limit }{ $hasOther ->
    [yes] , { $other }
   *[no] {""}
  }). { $hasBest ->
    [yes] Best: { $one }{ $what } of { $material }, to about { $after }.
   *[no] Nothing here helps.
  }
mix-nothing-today = Nothing weighed in today yet. Send "3 carts coming, how many chips?" to plan.
mix-nothing-there = Nothing for the mix went to { $place } today.
mix-no-food-today = No food weighed in today, so there is no mix to work out.
mix-hand-right = Right by your test: about { $pct } water ({ $range }).
mix-hand-dry = Dry by your test: about { $pct } water ({ $range }). How much is in there is not known here, so no number.
mix-hand-wet = Wet by your test: about { $pct } water ({ $range }). How much is in there is not known here, so no number.
planned = About { $kg } food ({ $low } to { $high }): { $hasAdd ->
    [yes] { $one }{ $what } of { $material } (about { $chips })
   *[no] no more chips, those that are in will do
  }.
planned-published = About { $kg } food by published weights ({ $low } to { $high }): { $hasAdd ->
    [yes] { $one }{ $what } of { $material } (about { $chips })
   *[no] no more chips
  }. Weigh to be sure.
planned-no-weight = Nothing known of what a { $container } weighs here: weigh some first, or set its litres.
planned-first-on-floor = First { $what } on the drum's floor.
room-yes = Yes: the drum would be about { $fill } full.
room-no = No. Discharge about { $kg } first{ $hasDays ->
    [yes] ; the oldest load is { $days ->
        [0] of today
        [one] 1 day in
       *[other] { $days } days in
      }
   *[no] {""}
  }.
room-look = The sum is rough: have a look inside the window first, and send "drum 3/4 full".
room-unknown = The drum's volume is not known here, so the room cannot be worked out.
room-no-drum = This site has no drum.
why-drum = { $loads ->
    [one] One load
   *[other] { $loads } loads
  } in the book, less what was taken out and what has shrunk: about { $kg } inside.
why-mix-part = { CAP($material) } { $kg }: { $pct } water ({ $range }), C { $carbon } %, N { $nitrogen } % of the dry mass ({ $from }).
figure-said = as said
figure-measured = measured
figure-site = set here
figure-learned = learned here
figure-published = published
figure-memory = from memory
figure-derived = worked out
mix-taken-typical-values = Taken: typical values, with their spread in the answer.
mix-taken-left-out = Left out: { $material }, no table knows it.
mix-taken-test = Taken: your own test until the next load.
why-formula = { $formula }
formula-mix = Water: each load's mass times its water, over the whole mass. C:N: all the carbon over all the nitrogen, never a mean of ratios.
why-mix-density = Density about { $density }; air { $air } % by two published forms, { $likely } % with all spread.
why-source = Source: { $text }

## Heat
band-asked-for = { CAP($place) } { $celsius }: as hot as your rule asks for. No longer than it takes; read it again today, and look whether it is dry.
band-turn-soon = { CAP($place) } { $celsius }: hot. Turn it in the next days and look whether it is dry.
band-act-today = { CAP($place) } { $celsius }: too hot. Turn it today, make it smaller, check the water; read again today.
band-fire-watch = { CAP($place) } { $celsius }: fire watch. Read several depths, keep water at hand, tell a coordinator.
band-do-not-open = { CAP($place) } { $celsius }: DO NOT OPEN OR TURN IT. People back, fan off only if safe, call the fire service. Do not half wet it.
band-act-at-once = { CAP($place) } { $celsius }: DO NOT OPEN OR TURN IT. People back, call the fire service now. Do not half wet it.
band-smoke = { CAP($place) } smokes (#{ $entry }): DO NOT OPEN OR TURN IT. People back, fan off only if safe, call the fire service. Do not half wet it.
band-smoke-somewhere = Smoke was seen (#{ $entry }), nobody said where: DO NOT OPEN OR TURN. People back, fan off only if safe, call the fire service. Do not half wet it.
heat-rise = { CAP($place) }: { $rise } over the air ({ $ambient }{ $standIn ->
    [yes] {", forecast"}
   *[no] {""}
  }).
heat-near-ambient = { CAP($place) }: { $rise } over the air ({ $ambient }{ $standIn ->
    [yes] {", forecast"}
   *[no] {""}
  }), near ambient.
heat-just-turned = { CAP($place) } { $celsius }: turned within a day, so a low says nothing yet. Read it again tomorrow.
proof-met = { CAP($place) }: { $counted } of { $needed } { $unit } hot. Time and temperature met on these readings; your regulator decides.
proof-not-yet = { CAP($place) }: { $counted } of { $needed } { $unit } hot. Next reading by { $date }, or it counts no further.
proof-none = { CAP($place) }: 0 of { $needed } { $unit } hot so far.
proof-cannot-show = { CAP($place) }: cannot be shown on these readings ({ $counted } of { $needed } { $unit }).
vectors-met = Vector attraction (flies, rats): met, { $counted } days over { $level }, mean over { $above }.
vectors-not-yet = Vector attraction (flies, rats): { $counted } of { $needed } days over { $level } in a row; the mean must be over { $above }.
vectors-not-shown = Vector attraction (flies, rats): not shown. It takes a reading on each of { $needed } days, all over { $level }, the mean over { $above }.
vectors-cool = Vector attraction (flies, rats): over { $level } for { $needed } days, but the mean of { $mean } is not over { $above }.
regulator-decides = Your regulator decides; this is only what the book shows.

## What is wrong, what may leave, the drum
qualifier-found = found
fact-wet = wet
fact-dry = dry
fact-moisture-right = moisture right
fact-moisture-unknown = no squeeze test of late
fact-just-turned = turned within a day
fact-frozen = frozen
fact-deep-cold = air below freezing
fact-been-hot = has been hot
fact-never-hot = never been hot
fact-young = under a week old
fact-old = three weeks old or more
fact-rich-mix = C:N under 20
fact-lean-mix = C:N over 40
fact-fan-off = fan off
fact-small = under 1 m³
fact-hot = over 65 °C
fact-fire-hot = hot as before a fire
fact-smoke = smoke
drum-empty = { CAP($place) }: empty, as far as the book knows
heat-not-judged = At { $depth } deep: shown, not judged. The rule asks for { $from } to { $to } deep.
proof-turns = turns { $counted } of { $needed }
reason-no-readings = no reading yet
reason-not-at-depth = no reading at { $fromCm } to { $toCm } deep
reason-in-doubt = { $readings } readings in doubt since { $since }: the probe failed its check
reason-too-short = { $counted } of { $needed } { $unit } in a row
reason-turns-short = { $counted } of { $needed } turns while hot
reason-mean-too-low = the mean is { $meanCelsius }; over { $aboveCelsius } is asked for
reason-low = { $celsius } ({ $localDate }) is under { $levelCelsius }
reason-above-ceiling = over { $upperCelsius } ({ $localDate }), the rule's ceiling
reason-just-turned = { $celsius } ({ $localDate }): just turned, not judged
reason-gap-within = too long between two readings { $from }: that time proves nothing
reason-gap = no reading between { $from } and { $to }: that day proves nothing
reason-fresh = fresh material { $localDate } (#{ $entry }): the count starts anew
reason-joined-unproven = joined { $localDate } (#{ $entry }) with what was not proven: starts anew
reason-proof-in-doubt = what came in { $localDate } (#{ $entry }) was proven by a probe that failed its check: starts anew
reason-cover-unproven = covered { $localDate } with compost not shown to be proven (#{ $entry })
reason-still-open = still taking material
reason-aeration-unknown = nobody has said whether the pipes are blown
reason-aeration-breathing = pipes that only breathe are no forced aeration
reason-fed-daily = the drum is fed daily, so fresh material restarts it
reason-exit-only = the exit's temperature alone is no proof
reason-one-point = one point is not enough: several, and the coldest decides
reason-residence-unknown = least time inside is not set ({ $neededHours } h asked for)
reason-residence-short = least time inside { $hours } h of { $neededHours } h
reason-short-circuit-unknown = nobody has said that nothing runs through sooner
reason-short-circuit = some runs through sooner
reason-prove-in-closed-pile = prove it in the closed pile
why-rule = { CAP($place) }, rule { $rule }: { $level } or more for { $needed } { $unit }; the lowest point at { $from } to { $to } deep decides.
why-counted = { $has ->
    [yes] Counted { $counted } of { $needed } { $unit }, since { $since }.
   *[no] Nothing counts yet.
  }
why-day = { $date }: { $how ->
    [counts] lowest { $celsius }, counts
    [low] lowest { $celsius }, too low
    [above-ceiling] lowest { $celsius }, too hot for the rule
    [shadow] lowest { $celsius }, just turned
    [not-at-depth] no reading at the depth asked
    [in-doubt] the probe is in doubt
   *[none] no reading
  }
why-reason = Because: { $reason }.
why-stage = { CAP($place) }: hottest { $hottest }, air { $air }{ $standIn ->
    [yes] {", forecast"}
   *[no] {""}
  } (mean of the last days): { $stage }.
why-forecast = Forecast: the rise over the air since the last turn falls like e to the minus t; { $readings } days of readings, 4 in 5 interval.
why-symptom = From the book
why-stock = Use: about { $kg } a day over the last two weeks, days without use counted.
why-stock-formula = What is left: the last count, plus deliveries, less use. Days: what is left over the mean use a day.
taken-depth-unknown = Taken: readings without a depth as at { $fromCm } to { $toCm }.
taken-approximate-reading = Taken: "about" readings as said ({ $readings }).
taken-piece-size = Taken: no piece larger than { $mm } mm.
taken-held-in-vessel = Taken: all of it was inside the whole time.
taken-aeration-forced = Taken: air is blown. Say so: "set aeration forced" or "set aeration breathing".
taken-roofed = Taken: under a roof.
taken-gap-between-readings = Taken: between readings up to { $minutes } min apart it stayed hot.
taken-days-by-readings = Taken: a day counts by its reading. For whole hours: "set day count 72 hours".
taken-turn-spacing-by-dates = Taken: turns at least { $days } days apart, by date.
taken-inherited-proof = Taken: the proof of the pile it came from (#{ $entry }).
taken-ambient-mean = Taken: the air as a mean of { $days } days.
taken-ambient-stays = Taken: the air stays as it is ({ $celsius }).
taken-volume-unknown = Taken: the pile is no small heap (its volume is not known).
taken-lab-unit = Taken: the result is in { $unit }.
taken-site-band-limited = Taken: { $celsius } for { $band }; that one cannot be set higher.
taken-regulator-accepts = Taken: your regulator accepts this way of proving a drum. Ask first.
stage-heating = heating up
stage-active = active
stage-cooling = cooling
stage-curing = curing
stage-near-ambient = near the air
stage-cannot-tell = cannot tell
pile-stage = { $stage }
cannot-tell-stale = last reading too old to tell
cannot-tell-just-turned = just turned, too early to tell
cannot-tell-frozen = frozen, cannot tell
cannot-tell-cold-core = too cold to tell
cannot-tell-dry = dry, cannot tell
cannot-tell-tiny = small heap, cannot tell
cannot-tell-no-ambient = air not known
cannot-tell-never-hot = has never been hot
ready-nothing-missing = Nothing missing on this book. Have a look, then send "{ $send }".
ready-not-yet = Not ready
ready-cannot-tell = Cannot tell yet
lacks-been-hot = has not been hot
lacks-age = { $days } of { $needed } days since fresh material
lacks-curing = cured { $days } of { $needed } days
lacks-turned = turned { $turns } of { $needed } times
lacks-near-ambient = { $riseC } over the air
lacks-no-reheating = it heated again
lacks-labs = laboratory results
lacks-wait = time
lacks-turn = a turn
lacks-reading = a new reading
lacks-reading-after-turn = a reading two days after a turn
lacks-ambient-reading = the air's temperature
lacks-moisture-check = a squeeze test
lacks-moisture-mended = moisture not right
lacks-milder-weather = a turn in milder weather
lacks-thaw = a thaw
lacks-start-date = when it was started
lacks-more = { $count } more
forecast = Near the air about { $on } ({ $from } to { $to }, 4 times in 5).
forecast-open = Near the air about { $on } at best ({ $from } or later; no end to give yet).
no-forecast-too-few-readings = No forecast yet: three days of readings since the last turn are needed.
no-forecast-not-falling = No forecast: the rise does not fall.
no-forecast-frost = No forecast across frost.
no-forecast-no-ambient = No forecast: the air's temperature is missing for those days.
cause-likely = Likely { $cause }
cause-perhaps = Perhaps { $cause }
cause-unknown = That fits no cause known here. Ask a coordinator.
ask-ammonia-or-rotten = Does it smell of ammonia, or rotten?
ask-drips-or-crumbles = Squeeze a handful: does it drip, hold, or crumble?
ask-drips-or-not = Squeeze a handful: does it drip?
ask-rain-or-mix = Is it rain that got in, or the mix itself?
ask-added-or-left = Was it watered or mixed lately, or left alone?
ask-food-showing = Does food show at the surface?
answer-ammonia-or-rotten-ammonia = ammonia
answer-ammonia-or-rotten-rotten = rotten
answer-drips-or-crumbles-drips = it drips
answer-drips-or-crumbles-crumbles = it crumbles
answer-drips-or-crumbles-right = it holds
answer-drips-or-not-drips = it drips
answer-drips-or-not-right = no drip
answer-rain-or-mix-rain = rain
answer-rain-or-mix-mix = the mix
answer-added-or-left-added = watered or mixed
answer-added-or-left-left = left alone
answer-food-showing-yes = food shows
answer-food-showing-no = no food shows
cause-fire-risk = near fire
cause-just-turned = only the turn
cause-frozen = frozen
cause-too-rich = too rich (too much nitrogen)
cause-no-air = no air inside
cause-too-wet = too wet
cause-too-dry = too dry
cause-too-lean = too lean (too woody)
cause-too-small = too small a heap
cause-too-large = too large a heap
cause-too-much-air = too much air
cause-air-blocked = air is blocked
cause-still-starting = it is still starting
cause-spent = little left to eat
cause-uneven = uneven
cause-rain = rain
cause-fresh-food-bare = fresh food lies bare
cause-spills = spills
cause-thin-bulking = too little coarse stuff
cause-woody = woody pieces
cause-overfed-drum = too much fed at once
cause-not-done-before = it was not done before
cause-watered-or-mixed = water or mixing woke it
cause-probe = the probe
cause-work-and-wind = the turn, and the wind
cure-add-water-while-turning = add water while turning
cure-add-dry-carbon = add dry chips or leaves
cure-add-coarse-chips = add coarse chips
cure-add-fine-material = add some finer stuff
cure-add-nitrogen = add food scraps or grass
cure-cover-mature-compost = cover with mature compost
cure-cover-fresh-food = cover fresh food at once
cure-cover-from-rain = keep the rain off
cure-insulate = insulate it
cure-turn = turn it
cure-turn-outside-in = turn the outside in
cure-make-bigger = make it bigger
cure-make-smaller = make it smaller
cure-check-air = check that air gets in
cure-fan-on = fan on
cure-less-air = less air
cure-squeeze-test = squeeze a handful: a drop or two is right
cure-read-again-tomorrow = read it again tomorrow
cure-read-at-depth = read it deep inside
cure-wait = wait
cure-wait-for-thaw = wait for the thaw
cure-leave-undisturbed = leave it alone
cure-start-with-hot-material = start it with some hot material
cure-check-readiness = ask whether it is ready
cure-keep-curing = let it cure on
cure-drain-pad = drain the pad
cure-collect-liquid = collect the liquid
cure-return-liquid-to-unsanitised-only = liquid goes only onto piles not yet proven
cure-same-day-cover = cover food the same day
cure-clean-spills = clean spills
cure-closed-containers = keep containers shut
cure-screen-out-overs = screen the overs out
cure-shred = shred it
cure-feed-less = feed less for a few days
cure-turn-drum-more = turn the drum more often
cure-note-wind-and-work = note the wind and what was being done
cure-turn-when-wind-is-away = turn when the wind blows away from neighbours
cure-check-probe = check the probe in ice slush
cure-do-not-open-or-turn = DO NOT OPEN OR TURN IT
cure-people-back = people back
cure-fan-off-if-safe = fan off only if safe
cure-call-fire-service = call the fire service
cure-do-not-half-wet = do not half wet it
fault-elsewhere = Stop using it: power off and locked out before anybody opens it. Repairs only by trained people. Log the hour.
spill-first = Keep people off, soak it up with chips, sweep, keep it out of drains; then send "cleaned spill".
contamination-first = Set it aside, do not sort sharps by hand. Which source? "contaminated, east kitchen" goes into its feedback.
complaint-asks = For the regulator, still to note
complaint-when = when
complaint-where = where
complaint-nature = kind of smell
complaint-strength = how strong (none, faint, strong)
complaint-wind = wind
complaint-weather = weather
complaint-being-done = what was being done
complaint-done-about-it = what was done about it
complaint-who-answers = who answers
complaint-how = Answer this message, or send "note: … #{ $entry }". Keep the complainer's name out of the group: give it to a coordinator directly.
complaint-complete = Complaint #{ $entry }: what a regulator asks for is all noted.
stopped-people = Nobody inside or reaching in, everybody clear, guards on. Locks and tags stay till their owner takes them off; your procedure decides.
stopped-jam = A jam comes loose with force: leave it to trained people.
stopped-power = Ask the power company or an electrician; do not open any panel.
stopped-loads = No new loads. Log the hour and the heat ("{ $log }"); watch heat and smell. Call { $has ->
    [yes] { $whom }
   *[no] a coordinator
  }{ $hasNow ->
    [yes] {" "}now
   *[no] {""}
  }{ $hasHours ->
    [yes] {" "}after { $hours } h
   *[no] {""}
  }.
resolved-none = No such problem was open.
resolved-after = Open since { $date } (#{ $old }){ $has ->
    [yes] . Done: { $done }
   *[no] {""}
  }.
probe-failed = Off by { $off }: the readings{ $has ->
    [yes] {" "}since { $since }
   *[no] {" "}so far
  } prove nothing until a check is good. Use another one.
probe-good = Good: within { $within } of { $against }.
probe-good-again = Good again. What was read before stays in doubt{ $has ->
    [yes] {" "}from { $since }
   *[no] {""}
  }: it proves nothing.
probe-unclear = Not judged: in ice slush it should read { $against } (within { $within }).
drum-interval-outside-site-rule = Every { $everyMin } is outside the site's rule ({ $low } to { $high }).
drum-interval-outside-check-value = Every { $everyMin }: machines of one kind often run every { $low } to { $high } (common practice). Your maker's rule decides.
drum-fan-low-in-normal-running = In normal running low is enough; high dries and cools it.
drum-fan-lowest-while-freezing = While it freezes: fan lowest or off, at most { $maxHours } h at a time. The drum needs air: back on after that.
drum-fan-off-for-a-time = Fan off for { $leftHours } h more at most: the drum needs air. I shall remind you here.
drum-fan-back-on = The drum needs air: fan back to low.
drum-odour-wetness-first = Look at wetness first: squeeze a handful from the drum; a drop or two is right, else add chips.
drum-odour-then-more-air = Then more air: fan up a step.
drum-odour-mind-the-exhaust = Mind where the exhaust goes: neighbours, windows, the wind.
fan-reminder = { CAP($place) }: the fan has been off for { $hours } h. It needs air: fan back to low ("drum fan low").
drum-level-room = About { $litres } inside (about { $kg }); room for about { $room } more.
drum-level-full = About { $litres } inside (about { $kg }): full. Discharge before the next load.
discharge-oldest = The oldest had been in { $days ->
    [one] 1 day
   *[other] { $days } days
  }.
discharge-proven = It goes to { $place } proven hot in the drum, if your regulator accepts that.
discharge-fresh = It counts as fresh on { $place }: its days of heat start now.
drum-fill = about { $pct } full ({ $range })
drum-fill-level = about { $pct } full ({ $range }, seen { $date })
drum-no-volume = its volume is not known here
drum-coldest = coldest (#{ $entry }, { $days ->
    [0] in since today
    [one] 1 day in
   *[other] { $days } days in
  }) has seen { $celsius } at most
drum-unbooked = older stuff is not in the book
drum-feed = Fed about { $kg } a day (mean of 7 days)
due-fill = by then it is full
due-stay = the oldest has had its stay
drum-due = next discharge in about { $days ->
    [one] 1 day
   *[other] { $days } days
  } ({ $why })
drum-due-now = discharge now ({ $why })
drum-due-not = no discharge in sight: it shrinks as fast as it is fed
drum-due-unknown = next discharge not known: no feed in the last 7 days
drum-proof-ways = A drum fed daily proves heat in-vessel if your regulator accepts ("set drum way in-vessel"), or else in the closed pile.
drum-proof-pile = Heat is proven in the closed pile, not in the drum.
stock-unknown = { CAP($material) }: never counted here. Send "{ $material } down to 2 m3" or a delivery.
stock-left = { CAP($material) }: about { $litres } left (about { $kg }).
stock-short = { CAP($material) }: more was used than the book knows of. Count it: "{ $material } down to 2 m3".
stock-none = { CAP($material) }: none left. Order now.
stock-no-use = No use in the last two weeks, so no days to give.
stock-days = { $days ->
    [0] Less than a day
    [one] About 1 day
   *[other] About { $days } days
  } left at the present use ({ $low }{ $hasHigh ->
    [yes] {" "}to { $high }
   *[no] {" "}or more
  }).{ $order ->
    [yes] {" "}Order now.
   *[no] {""}
  }
doubt-held-pile = #{ $entry } { $place } is on hold: nothing leaves it until a coordinator allows it.
choice-allow = allow it
choice-not-taken = not taken
hold-laid = { CAP($place) } is ON HOLD ({ $why }): nothing leaves it until a coordinator says so.
hold-trace = { $count ->
    [0] Nothing has left { $place } in the book.
    [one] Compost left { $place } once: see who received it.
   *[other] Compost left { $place } { $count } times: see who received it.
  }
lab-vessel = Vessel test: { $rise } over the room, class { $class } (V stable, I fresh{ $edge ->
    [yes] ; on the edge of two, the less stable one is taken
   *[no] {""}
  }){ $mature ->
    [yes] , and mature by the 8 °C test after 21 days of curing
   *[no] {""}
  }. It says nothing of the pile's own rise.
hold-still = { CAP($place) } stays ON HOLD ({ $why }) until a coordinator lifts it.
hold-stays = Still on hold by #{ $entry }: only a coordinator can take that back.
hold-said = a coordinator said so
button-trace = Trace { $place }
setting-hold = { $place } on hold: { $why }
setting-hold-off = hold on { $place } lifted
removal-unproven = { CAP($place) }: stored, but
gap-hold = on hold ({ $why }, #{ $entry }, { $date })
gap-no-rule-set = no rule for heat is set
gap-not-yet = { $counted } of { $needed } hot days or hours shown
gap-cannot-show = heat cannot be shown on its readings
gap-vectors = vector attraction { $counted } of { $needed } days
gap-lab-failed = { $analyte } { $value }, limit { $max } { $unit }
gap-lab-unclear = { $analyte } cannot be told from the result
gap-lab-missing = { $count ->
    [one] 1 laboratory result missing
   *[other] { $count } laboratory results missing
  }
gap-lab-without-sample = result #{ $entry } belongs to no sample
gap-problem = open: { $topic } (#{ $entry })
gap-not-ready = { $count ->
    [one] 1 sign of being ready missing
   *[other] { $count } signs of being ready missing
  }
full-read-daily = Read { $place } every day from now on: a day with no reading proves nothing.
ready-but = Noted. The book does not show it
joined-held = The hold goes along: { $place } is on hold ({ $why }).
joined-proven = Both were hot for long enough: { $place } stays so on these readings.
joined-restarts = Not both were shown hot for long enough: the count of { $place } starts anew.
split-proven = { CAP($place) } takes its proof of heat along.
split-unproven = { CAP($place) } takes its readings along; not yet hot for long enough.
transfer-restarts = What came in was not proven: the count of { $place } starts anew.
cover-unproven = That compost is not shown to come from a proven pile: it may bring back what the heat killed.
trace-held = No. { CAP($place) } is ON HOLD ({ $why }, #{ $entry }, { $date }): only a coordinator can let it go.
trace-may = { CAP($place) }: nothing is missing on this book.
trace-not-yet = { CAP($place) }: not yet.
trace-missing = Missing
trace-went = Went to
trace-to = { $to } { $amount } ({ $date }, #{ $entry })
trace-nobody = Nobody has received from it yet.
trace-in = Came from
trace-no-source = No sources in the book for { $place }.
trace-kin = Joined with or split from
rule-set-minutes = It asks for { $needed } { $unit } without a gap: readings at most { $minutes } apart. Weekly or daily ones can never show it.
ask-aeration = Are the pipes blown by a fan, or do they only breathe? Breathing pipes are no forced aeration.
answer-aeration-forced = blown by a fan
answer-aeration-breathing = they only breathe

## Piles and drum
no-piles = No piles yet: send "started pile A".
place-unknown = { CAP($place) } is not known here.
pile-became = { CAP($place) } is { $successor } now.
pile-state = { CAP($place) }, { $state }
pile-last = { $values } ({ $date })
pile-rise = { $rise } over the air{ $standIn ->
    [yes] {" (forecast)"}
   *[no] {""}
  }
pile-no-reading = no reading yet
pile-turns = { $count ->
    [one] turned once
   *[other] turned { $count } times
  }
pile-held = HELD: { $why }
pile-last-turn = Last turned { $date }.
pile-covered = Covered ({ $layer }) { $date }.
pile-uncovered = Cover off ({ $layer }) { $date }.
pile-feel = Felt { $feel } { $date }.
pile-problem = Open: { $topic } (#{ $entry }, { $date }).
drum-holds = { CAP($place) }: about { $kg } inside
drum-oldest = Oldest load (#{ $entry }) { $days ->
    [0] in since today
    [one] 1 day in
   *[other] { $days } days in
  }
drum-set = Set: { $mode }
drum-read = Read { $low } to { $high } ({ $date }).
history-nothing = Nothing in the book on { $place }.
trace-source = { $source } { $kg } ({ $one ->
    [yes] { $from }
   *[no] { $from } to { $to }
  })

## Today
weekday-monday = Mon
weekday-tuesday = Tue
weekday-wednesday = Wed
weekday-thursday = Thu
weekday-friday = Fri
weekday-saturday = Sat
weekday-sunday = Sun
today-head = { $day }: { $count ->
    [one] 1 job
   *[other] { $count } jobs
  }
today-nothing = { $day }: nothing is due.
today-job = { $n } { $what }: { $why }
today-by = by { $date }
today-since = due since { $date }
today-taken = { $who } has it
today-more = … and { $count } more
today-later = Later: { $what } ({ $why })
today-send = Send "{ $first }"
today-send-two = Send "{ $first }" or "{ $second }"

duty-keep-away = Keep away from { $place }
duty-read-pile = Read { $place }
duty-read-drum = Read { $place }
duty-read-ambient = Read the air
duty-turn-pile = Turn { $place }
duty-cover-pile = Cover { $place }
duty-discharge-drum = Discharge { $place }
duty-count-stock = Count the { $material }
duty-order-stock = Order { $material }
duty-make-room = Make room for a pile
duty-mind-cap = Mind the limit for the { $per }
duty-ask-source = Ask { $source }
duty-answer-doubt = #{ $entry } { $said }
duty-weigh-empty = Weigh an empty { $container }
duty-look-again = { CAP($topic) } (#{ $entry })
duty-sweep = Sweep the floor
duty-wash-lift = Wash the lift
duty-wash-containers = Wash the containers
duty-clean-tools = Clean the tools
duty-check-scale = Check the scale
duty-check-thermometer = Check the thermometer
duty-check-fan = Check the fan
duty-check-stop-button = Check the stop button
duty-release-pile = Release { $place }
duty-take-sample = Take a sample of { $place }
duty-chase-results = Ask for the results of { $place }
duty-season-chips = Dry chips under a roof
duty-season-exit = Insulate the exit
duty-reweigh-empty = Weigh an empty { $container } again
duty-renew-permit = Renew { $what } { $name }
duty-own-duty = { CAP($name) }

why-smoke = smoke was seen (#{ $entry }); do not open or turn it
why-too-hot = { $celsius }, too hot
why-proving = day { $day } of { $needed }; without it today cannot count
why-closed-unproven = closed and not yet proven hot
why-weekly = last read { $date }
why-never-read = not read since { $date }
why-last-read = last read { $date }
why-rise-unknown = without it the rise of { $place } is not known
why-turns-for-proof = turn { $turn } of { $needed } while it is hot
why-smells = it smells (#{ $entry })
why-rise-stalled = stalled at { $celsius } since { $date }
why-turns-in-curing = turned { $turns } of { $needed } times in curing
why-rain-expected = rain { $date }
why-snow-expected = snow { $date }
why-turned-open = open since it was turned { $date }
why-filling = { $pct } full
why-stayed = oldest load { $days } days in
why-used-more-than-known = more was used than the book knows of
why-days-left = about { $days } days left
why-none-open = { $count ->
    [one] the only pile takes no fresh material
   *[other] none of the { $count } piles takes fresh material
  }
why-nearly-full = { $place }, the last open one, is { $pct } full
why-near-cap = { $kg } of { $cap } in, till { $date }
why-over-cap = { $kg } in, over { $cap }, till { $date }; turn loads away
why-not-come = nothing since { $date }, usually every { $days } days
why-answer-doubt = held until somebody answers
why-nets-wait = { $count ->
    [one] one net weight waits
   *[other] { $count } net weights wait
  }
why-still-open = open since { $date }
why-floor-used = used { $date }
why-lift-used = used { $date }
why-containers-used = used { $date }
why-tools-used = used { $date }
why-check-failed = failed { $date }
why-last-checked = last checked { $date }
why-never-checked = not checked since { $date }
why-frost-expected = frost { $date }
why-cold-air = the air is at { $celsius }
why-weighed-empty = last weighed empty { $date }
why-from-site-file = not weighed since { $date }
why-runs-out = runs out { $date }
why-ran-out = ran out { $date }
why-own-last-done = last done { $date }
why-own-never-done = due { $date }, not done yet
why-nothing-missing = nothing is missing on the book; look at it, then say so
why-results-missing = { $count } laboratory results are missing, all else is there
why-sampled = sampled { $date }, no results yet
later-frozen = frozen
later-windy = { $blows ->
    [towards] wind { $hasFrom ->
        [yes] from the { $from } {""}
       *[no] {""}
      }towards the { $near }
   *[unknown] wind, and where it blows is not said; { $near } are near
  }
later-closed = closed till { $date }
later-postponed = put off till { $date }{ $hasReason ->
    [yes] {": "}{ $reason }
   *[no] {""}
  }

log-reading = { $place } { $celsius }
log-turned = turned { $place }
log-covered = covered { $place }
log-discharged = emptied drum
log-level = { $material } down to { $litres }
log-delivery = delivery { $material } { $litres }
log-load-from = { $source } cart { $kg }
log-answer = { $choice }
log-empty = empty { $container } { $kg }
log-resolved = { $topic } gone
log-check = { $chore }
log-chore = { $chore }
log-done-item = done 1
log-emptied = { $place } is empty
log-started = started { $place }
log-set-date = set { $what } { $name } { $date }
log-own-done = done { $name }
log-sample = sample { $place }
log-release = { $place } is ready
log-lab-result = { $place } lab lead 40 mg/kg

duty-which = Which one? "done 2" by its number in "today".
duty-not-there = { $item }: not in today's list. Ask "today" first.
duty-send-figure = { $duty }: send the figure itself, "{ $log }".
duty-not-by-word = { $duty }: that goes only when the book shows it is over.
duty-noted-claim = #{ $entry } Yours: { $duty }
duty-noted-release = #{ $entry } Handed back: { $duty }
duty-noted-postpone = #{ $entry } Put off till tomorrow: { $duty }
duty-noted-until = #{ $entry } Put off till { $until }: { $duty }
duty-noted-done = #{ $entry } Done: { $duty }
own-none = No duties of your own yet: "every friday: check extinguishers".
own-line = { $name }: { $every }
weekday-full-monday = Monday
weekday-full-tuesday = Tuesday
weekday-full-wednesday = Wednesday
weekday-full-thursday = Thursday
weekday-full-friday = Friday
weekday-full-saturday = Saturday
weekday-full-sunday = Sunday
nth-first = first
nth-second = second
nth-third = third
nth-fourth = fourth
nth-last = last
often-as-said = { $said }
often-once = on { $date }
often-workdays = every weekday
often-weekends = every weekend
often-weekday = every { $days }
often-other-weekday = every other { $day }
often-days = { $count ->
    [one] every day
   *[other] every { $count } days
  }
often-weeks = { $count ->
    [one] every week
   *[other] every { $count } weeks
  }
often-months = { $count ->
    [one] every month
   *[other] every { $count } months
  }
often-years = { $count ->
    [one] every year
   *[other] every { $count } years
  }
often-month-day = on day { $day } of the month
often-month-end = on the last day of the month
often-month-nth = on the { $nth } { $day } of the month
often-year = on { $date } each year
often-day = { $day }
often-and = { $first } and { $rest }
often-comma = { $first }, { $rest }
duty-how-often = How often? Nothing stored yet: "every friday: { $name }", "every 2 weeks: { $name }", "on 1 march: { $name }".
closed-not = The site is not closed.
closed-open = #{ $entry } Open again from today.
closed-when = Closed until when? "closed till 2 jan"
closed-noted = #{ $entry } Closed { $from } to { $to }. What can wait stands down; hot piles and open problems stay.
handover-head = { $count ->
    [0] Nothing logged since { $date }.
    [one] One line since { $date }:
   *[other] { $count } lines since { $date }:
  }
handover-earlier = … and { $count } before these.
line-sum = Together { $kg } net
week-changed-more = That makes the week of { $week }, already sent, { $kg } more.
week-changed-less = That makes the week of { $week }, already sent, { $kg } less.

## Week and year
pace-ahead = ahead of the target
pace-on-course = on course
pace-behind = behind the target
pace-reached = target reached
pace-cannot-tell = too early to tell
per-week = week
per-month = month
week-head = Week { $from } to { $to }
week-head-so-far = This week so far, from { $from }
week-feed = In: { $kg } net ({ $loads ->
    [one] 1 load
   *[other] { $loads } loads
  })
week-no-feed = In: nothing weighed{ $over ->
    [yes] {""}
   *[no] {" yet"}
  }
week-estimated = plus about { $kg } estimated
week-pending = { $count ->
    [one] 1 net pending
   *[other] { $count } nets pending
  }
week-special = Of which { $material } { $kg }; without it { $without }
week-compared = Week before { $before }{ $hasUsual ->
    [yes] , usually { $usual }
   *[no] {""}
  }
week-source = { $hasSource ->
    [yes] { $source }
   *[no] no source
  } { $kg }
week-source-of = { $material }{ $hasSource ->
    [yes] {" "}{ $source }
   *[no] {""}
  } { $kg }
week-chips = Chips { $kg }
week-chips-per = { $ratio } to 1 of food, by weight
week-mix = mix about { $pct } water ({ $range }){ $hasCn ->
    [yes] , C:N about { $cn }
   *[no] {""}
  }
week-contaminated = Contaminated: { $loads } of { $of } loads{ $hasSource ->
    [yes] {" "}from { $source }
   *[no] {""}
  }
week-rejected = Turned away: { $count }{ $hasSource ->
    [yes] {" "}from { $source }
   *[no] {""}
  }
week-problem-ended = { CAP($topic) } (#{ $entry }) ended { $date }
week-problem-open = Open: { $topic } (#{ $entry }) since { $date }
week-held = Held: { $count } (ask "today")
week-pile = { $low } to { $high } ({ $date })
week-pile-one = { $low } ({ $date })
week-proof-met = hot long enough on these readings
week-proof-not-yet = { $counted } of { $needed } { $unit } hot
week-proof-cannot-show = heat cannot be shown
week-turnings = { $count ->
    [one] 1 turning
   *[other] { $count } turnings
  }
week-chores = { $count ->
    [one] 1 chore
   *[other] { $count } chores
  }
week-checks = { $count ->
    [one] 1 check
   *[other] { $count } checks
  }
week-hours = { $hours } h of work
week-removed = { $kg } compost left
week-removed-litres = { $litres } compost left
week-missed = { $count ->
    [one] 1 job is still open
   *[other] { $count } jobs are still open
  }
week-thanks = Thanks to { $who }.
year-feed = Year so far: { $kg } since { $from }
year-target = { $pct } of { $tonnes }
year-no-target = no target set
year-forecast = Likely { $low } to { $high } by the year's end: { $pace }.
year-needed = To reach it: about { $kg } a week from now on.
year-cap-within = Limit for a { $per }: { $kg } of { $cap } in.
year-cap = Over the limit for a { $per }: { $kg } of { $cap }.
why-year = Pace: what is in, plus the mean of the last { $weeks } whole weeks for the days left; the span holds 4 times in 5 (prediction interval, t distribution).

yield-litres = Compost out: { $litres } for each { $per } of food in (large sites { $low } to { $high })
yield-kg = { $kg } for each { $per } of food in
balance-nothing = Nothing came in since { $from }: no balance.
balance-in = In since { $from }: { $kg } (food { $feed }, chips and the like { $chips }{ $hasWater ->
    [yes] , water { $water }
   *[no] {""}
  }){ $hasEstimated ->
    [yes] , of it { $estimated } estimated
   *[no] {""}
  }
balance-out = Out, weighed: compost { $kg }, residue and other { $residue }{ $hasLitres ->
    [yes] . Not weighed, so not in it: { $litres } of compost
   *[no] {""}
  }
balance-lost = Off as gas and steam, by the published range: { $low } to { $high }
balance-left = In the piles or not explained: { $low } to { $high }
balance-too-much = { $kg } more came out than can be: a weight is wrong, or something that came in is not in the book.
balance-ash = { CAP($place) } by its ash ({ $first } → { $last }, #{ $entry }; start from { $from }): { $dry } of the dry mass lost{ $hasRange ->
    [yes] {" "}({ $range })
   *[no] {""}
  }, { $organic } of the organic matter
balance-ash-suspect = { CAP($place) }: ash { $last } (#{ $entry }) is less than at the start ({ $first }, from { $from }). Soil in the first sample, or another pile's result? Nothing can be said of its loss.
balance-no-ash = No ash balance: it needs a laboratory's ash or organic matter ("C lab ash 35 %") and what went in.
ash-from-result = an earlier result
ash-from-intake = what came in, typical values
why-balance = Mass in less mass out; { $low } to { $high } of it goes off as gas and steam. What then is left is said, not made to fit.
why-ash = Ash stays while the rest goes: loss = 1 − ash at the start ÷ ash at the end.
analyte-ash = ash
## The page
page-title = Compost log
page-volunteer = volunteer
page-loading = One moment …
page-emergency = Emergency
page-emergency-close = Close
page-emergency-call = Call { $number }
page-emergency-rules = The site's own rules and your local services come first.
page-emergency-none = The safety card comes with the first connection. Until then: stop the machines, get away, call your emergency number.
page-log = What was written and answered
page-empty = Write what you did, for example: cart 61.5
page-field = What did you do?
page-send = Send
page-today = Today
page-week = Week
page-words = cart|chips|bucket|turned
page-letters = abc
page-digits = 123
page-keys-letters = Keyboard with letters
page-keys-digits = Keyboard with digits
page-waiting = Waiting to be sent
page-sending = Sending
page-no-answer = Kept in the chat, nothing to log.
page-chosen = Pressed: { $label }
page-offline = No signal. What you write is kept on this phone and sent later.
page-online = Connected
page-busy = Busy: sending goes on by itself in a moment.
page-too-old = Not sent: written more than two weeks ago. Write it again with its date.
page-refused = Not sent: too long or not readable.
page-kept-answer = No signal: the answer of { $when }.
page-no-kept-answer = No signal, and no answer from before.
page-not-kept = This phone keeps nothing for later (private window?): stay in reach of a signal.
page-name-ask = Your first name, so that the crew knows who wrote
page-name-save = That's me
page-name-skip = Skip
page-name-change = Name: { $name }
page-name-none = Name: none
page-language = Language
page-ended-head = This link has ended
page-ended = The crew has hung up a new one. Scan the new code by the scale, or ask a coordinator. What still waits on this phone goes out with the new link.
page-unknown-head = This link is not known
page-unknown = Please scan the code by the scale again, or ask a coordinator for the link.
page-no-link = To write here you need the site's link: scan the code by the scale.
page-file = File: { $name }
page-script = This page needs JavaScript.
dirt-gloves = gloves
dirt-cutlery = cutlery
dirt-glass = glass
dirt-metal = metal
dirt-plastic = plastic
dirt-bags = bags
dirt-foam = foam
dirt-cups = cups
dirt-cardboard = cardboard
dirt-napkins = napkins
dirt-stones = stones
feedback-nothing = Nothing in the last 30 days{ $has ->
    [yes] {" "}from { $source }
   *[no] {""}
  } to tell.
feedback-clean = { $source }: { $loads ->
    [one] 1 cart
   *[other] { $loads } carts
  } in 30 days, all clean. Thank them.
feedback-dirty = { $source }: { $dirty } of { $loads } carts dirty in 30 days{ $hasFound ->
    [yes] , mostly { $found }
   *[no] {""}
  }.

## Pictures

chart-number = { $value }
chart-day = { $day }
chart-weekday = { $day }
chart-month = { $day }
chart-mass = { $kg }
chart-tonnes = { $tonnes }
chart-source = { $source }
chart-source-none = no source said
chart-source-others = { $count } others
chart-axis-date = date
chart-axis-month = month
chart-axis-temperature = temperature, °{ $unit }
chart-axis-mass-day = { $unit } in a day
chart-axis-mass-week = { $unit } in a week
chart-axis-year = { $unit } in, since the year began
chart-axis-moisture = water, % of the mass
chart-axis-cn = C:N
chart-heat-title = { CAP($place) }: hottest { $high }
chart-heat-title-rise = { CAP($place) }: { $rise } over ambient
chart-heat-title-near = { CAP($place) }: { $rise } over ambient, near it now
chart-heat-title-near-on = { CAP($place) }: { $rise } over ambient, near it about { $day }
chart-heat-last = last read { $date }: { $low } to { $high }
chart-heat-last-one = last read { $date }: { $high }
chart-heat-proof-met = { $counted } of { $needed } { $unit } hot enough: time and heat met
chart-heat-proof-not-yet = { $counted } of { $needed } { $unit } hot enough
chart-heat-proof-cannot-show = { $counted } of { $needed } { $unit } shown: these readings cannot show it
chart-heat-between = near ambient { $from } to { $to } (4 times in 5)
chart-heat-between-open = near ambient { $from } at the soonest, no latest day can be given
chart-heat-hottest = hottest point
chart-heat-lowest = lowest point
chart-heat-read = read in the pile
chart-heat-ambient = air (ambient)
chart-heat-level = sanitising { $level }
chart-heat-counted = counted: { $counted } of { $needed } { $unit }
chart-heat-turned = turned
chart-heat-covered = covered
chart-heat-uncovered = cover off
chart-heat-forecast = likely
chart-heat-band = 4 times in 5
chart-heat-near = { $day }
chart-heat-alt = { $count } readings since { $from }, the hottest { $high } ({ $on })
chart-week-title = { $from } to { $to }: { $kg } in{ $hasUsual ->
    [yes] , usually { $usual }
   *[no] {""}
  }
chart-week-title-so-far = { $kg } in since { $from }{ $hasUsual ->
    [yes] , { $usual } in a usual week
   *[no] {""}
  }
chart-week-estimated = of it about { $kg } estimated
chart-week-usual-day = usual for that day
chart-week-weeks = { $unit } a week, by first day
chart-week-alt-day = { $day } { $kg }
chart-week-alt-before = week before { $kg }
chart-estimated = estimated from volume
chart-chips = chips
chart-year-title = { $tonnes } in since { $from }
chart-year-title-forecast = { $tonnes } in since { $from }, likely { $low } to { $high } by { $to }
chart-year-pace = { $pace }
chart-year-needed = about { $kg } a week from now on to reach it
chart-year-total = came in, to { $day }
chart-year-weighed = weighed alone
chart-year-target = target { $tonnes }
chart-year-forecast = likely, 4 times in 5
chart-mix-title = Mix today: { $pct } water
chart-mix-title-add = Mix today: { $pct } water, add { $one }{ $what } of { $material }
chart-mix-title-enough = Mix today: { $pct } water, chips are enough
chart-mix-title-squeeze = Mix today: about { $pct } water, squeeze to know
chart-mix-title-squeeze-wet = Mix today: about { $pct } water. Squeeze; if it runs, { $one }{ $what } of { $material }
chart-mix-title-infeasible = Mix today: { $pct } water, cannot be put right with what is here
chart-mix-sub = water { $range } %, C:N { $cn } ({ $cnRange })
chart-mix-window = right: water { $range } %, C:N { $hasTop ->
    [yes] { $cn } to { $top }
   *[no] { $cn } and up
  }
chart-mix-now = now
chart-mix-after = with { $one }{ $what } of { $material }{ $more ->
    [0] {""}
   *[other] {" "}and more
  }
chart-mix-never = over { $pct }: never
chart-mix-alt-after = with it { $pct } water, C:N { $cn }
chart-saved = Picture: { $path }

## The mix and the drum: what stands behind an answer, and settings of theirs
mix-recipe-add = By your recipe: add { $one }{ $what } of { $material } (about { $kg }). That makes about { $after } water.
mix-recipe-enough = Your recipe is met: about { $pct } water ({ $range }, { $basis }).
recipe-none = No recipe of your own is set ("set recipe 1 chips : 1 food by volume").
mix-enough-tested = Mix today: about { $pct } water ({ $range }, { $basis }). Nothing to add.
mix-over-never = The recipe alone leaves it too wet (about { $after }; over 65 % is never aimed at). Add dry chips till a squeeze gives a drop or two.
mix-packed = Packed: { $density }, only about { $air } air (40 % or more is wanted). Coarse chips, or turn it.
mix-solves = One more thing would solve it: { $solve }.
mix-more-solves = More { $solve } would solve it.
mix-room-solves = Discharge some first: there is no room for what it needs.
asks-structure = it lacks coarse stuff
asks-moisture-high = it is wet
asks-moisture-low = it is dry
asks-cn-low = it lacks carbon
asks-cn-high = it lacks nitrogen
asks-cap = too many fines
asks-recipe = your recipe
asks-stock = stock is short
asks-room = there is no room
planned-short = That is the best that can be done here ({ $limit }{ $hasOther ->
    [yes] , { $other }
   *[no] {""}
  }): not enough.
room-too-young = The oldest has not had its { $days } days yet: what comes out is not done.
room-stands = No: the drum stands still (#{ $entry }). No new loads until it runs.
drum-stands-no-loads = The drum stands still (#{ $entry }): no more loads until it runs.
drum-stands = { CAP($place) } stands still { $hours ->
    [0] since just now
   *[other] for { $hours } h
  } (#{ $entry }): no new loads.
drum-inside = Inside: { $material } about { $kg }
drum-inside-also = { $material } { $kg }
why-drum-full = The drum holds { $litres }; { $pct } counts as full ({ $from }).
why-drum-shrink = It shrinks by about { $shrink } % a day ({ $low }–{ $high }).
formula-drum-fill-by-level = Fill: the level that was seen, shrunk since, plus the loads since, less what went out since.
formula-drum-fill-by-loads = Fill: the litres of all loads, each shrunk by its days inside; finer stuff fills part of the gaps in the chips.
formula-correction-by-recipe = What to add: the fewest whole containers that meet your recipe.
formula-correction-fewest-containers = What to add: the fewest whole containers that meet all of this, within stock and room.
drum-taken-first-in-first-out = Taken: what went in first comes out first.
drum-taken-level-by-eye = Taken: a level by eye is good to a tenth of the drum.
why-room = Taken: { $what }, about { $kg } food ({ $from }), with its chips about { $litres }.
why-accepts = { $has ->
    [yes] Read off this site's own list (set in #{ $entry }), nothing else.
   *[no] Read off this site's own list (from its file), nothing else.
  }
why-accepts-how = Yes only under its own name; a no holds for what is like it too. To change it: "set accepts bread, no meat".
why-planned = Taken: { $what }, about { $kg } food together ({ $from }).
figure-common = common practice
why-mix-water = That is about { $pct } water ({ $range }){ $hasCn ->
    [yes] , C:N about { $cn } ({ $cnRange })
   *[no] {""}
  }.
why-mix-aim = Aim: { $range } % water, never over { $never }; C:N { $hasTop ->
    [yes] { $cn } to { $top }
   *[no] { $cn } or more
  }; at least { $floor } L of coarse stuff to 1 L of food.
why-mix-recipe = Aim: your recipe, { $chips } chips to { $food } food { $by }. It stands before the usual window.
why-recipe = A recipe of your own stands before the usual window. "clear recipe" takes it back.
by-volume = by volume
by-mass = by mass
why-mix-limiting = What asks for the most: { $limit }.
why-drum-rules = { $hasRule ->
    [yes] Your rule: every { $low } to { $high }.
   *[no] No interval is set here (set drum interval 40-60).
  } Fan off at most { $hours } h ({ $from }).
why-call-set = Whom to call and when: set here.
why-call-unset = Nobody is set to be called: "set drum call Sam 555 0100", "set drum call after 4 hours".
stopped-call-now = { CAP($place) } has stood for { $hours } h (#{ $entry }). Call { $has ->
    [yes] { $whom }
   *[no] a coordinator
  } now. No new loads; log its heat.
setting-mix-water = aim for { $low } to { $high } % water in the mix
setting-mix-cn = C:N of the mix { $low } to { $high }
setting-drum-interval = drum turns every { $low } to { $high } min
setting-drum-call = when the drum stops, call { $whom }
setting-drum-call-hours = call when the drum has stood { $number } h
setting-drum-days = drum: { $number } days inside
setting-drum-full = drum counts as full at { $number } %
setting-drum-least-hours = drum: at least { $number } h inside
setting-fan-off-hours = fan off at most { $number } h
setting-carbon = { $material } carbon { $number } % of the { $hasFresh ->
    [yes] fresh
   *[no] dry
  } mass
setting-nitrogen = { $material } nitrogen { $number } % of the { $hasFresh ->
    [yes] fresh
   *[no] dry
  } mass
setting-ash = { $material } ash { $number } % of the { $hasFresh ->
    [yes] fresh
   *[no] dry
  } mass
setting-density = { $material } { $number } kg/m³
setting-cn = { $material } C:N { $number }
analyte-bulk-density = bulk density
analyte-lead = lead
analyte-cadmium = cadmium
analyte-copper = copper
analyte-zinc = zinc
analyte-nickel = nickel
analyte-arsenic = arsenic
analyte-mercury = mercury
analyte-chromium = chromium
analyte-cobalt = cobalt
analyte-molybdenum = molybdenum
analyte-selenium = selenium
analyte-faecal-coliforms = faecal coliforms
analyte-faecal-coliform = faecal coliforms
analyte-foreign-matter = foreign matter
analyte-plastic = plastic
analyte-glass = glass
analyte-metal = metal
analyte-nitrogen = nitrogen
analyte-phosphorus = phosphorus
analyte-potassium = potassium
analyte-carbon = carbon
analyte-organic-matter = organic matter
analyte-ammonium = ammonium
analyte-nitrate = nitrate
analyte-stability = stability
analyte-maturity = maturity
analyte-self-heating = self-heating
cite-from-memory = from memory
cite-common-practice-no-source = common practice, no source
cite-common-practice-on-one-kind-of-machine-no-source = common practice on one kind of machine, no source
cite-the-site-and-local-codes-come-first = the site and local codes come first
cite-seen-as-a-copy = seen as a copy
cite-the-site-s-settings = the site's settings
cite-the-site = the site
cite-the-rest = the rest
cite-seen = seen
cite-nitrogen = nitrogen
cite-carbon = carbon
cite-range = range
cite-by-definition = by definition
cite-of-volatile-solids-in-days = of volatile solids in 12 days
cite-carbon-and-ash = carbon and ash
cite-moisture-and-nitrogen = moisture and nitrogen
mix-loose = By your bucket: { $density }, about { $air } air. Open enough.
mix-left-out-load = Not in this sum: #{ $entry }, its weight is not known.
why-factor-litre = { CAP($material) }: { $factor } kg/L by published values ({ $low }–{ $high }); they differ much.
why-factor-learned = One { $container }: { $each }, learned from those weighed here (19 in 20 lie in { $low }–{ $high }).
why-factor-set = One { $container }: { $each }, set here.
setting-band = { $band } from { $celsius }
setting-depth = readings judged at { $from } to { $to } deep
setting-lab-standard = laboratory limits of { $name }
setting-day-count = { $way ->
    [hours-72] days counted as whole hours
   *[other] a day counts by its reading
  }
setting-aeration = { $way ->
    [forced] pipes blown by a fan
    [breathing] pipes that only breathe
   *[other] no pipes
  }
setting-vectors = { $on ->
    [on] vector attraction asked for
   *[other] vector attraction left out
  }
settings-heat = Heat
setting-one-of = It can be one of: { $values }. Nothing changed.
heat-band-do-not-open = do not open
heat-band-act-at-once = act at once
heat-band-turn-soon = turn soon
heat-band-act-today = too hot, act today
heat-band-fire-watch = watch for fire
setting-drum-way = drum heat is proven { $way }
drum-way-in-vessel = in the drum itself
drum-way-closed-pile = in the closed pile
drum-call-line = If it stops: call { $whom }{ $hasHours ->
    [yes] {" "}after { $hours } h
   *[no] {""}
  }.
drum-call-nobody = Nobody is named to call: "set drum call Sam 555 0100". Until then, a coordinator.
accepts-in = May go in: { $list }.
accepts-out = Stays out: { $list }.
accepts-no-list = This site has no list yet: "set accepts bread, no meat".
