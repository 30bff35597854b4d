import type { Words } from '../../lexicon.ts';

/** What things on a compost site are called in English. */
export const things: Words = {
  'container:cart':
    'cart|carts|bin|bins|tote|totes|toter|toters|wheelie|wheelies|wheelie bin|wheelie bins|wheeled bin|wheeled bins|wheely bin|wheely bins|green cart|green carts|green bin|green bins|cartload|cartloads|cart load|cart loads|cartful|trolley bin',
  'container:bucket':
    'bucket|buckets|pail|pails|bucketful|bucketfuls|bucket load|bucket loads|bkt|bkts|caddy|caddies',
  'container:bag': 'bag|bags|sack|sacks|bagful|bagfuls|sackful',
  'container:bale': 'bale|bales',
  'container:barrel': 'barrel|barrels|steel drum of|55 gallon drum',
  'container:barrow':
    'barrow|barrows|wheelbarrow|wheelbarrows|wheel barrow|wheel barrows|barrowload|barrowloads|barrow load|barrow loads|barrowful|barrowfuls|wheelbarrow loads|wheelbarrow load|wheelbarrowfuls',
  'container:loader-bucket':
    'loader bucket|loader buckets|loader scoop|loader scoops|bucket loader|loader load|loader loads|skid steer bucket|skid steer buckets|tractor bucket|tractor buckets|front end loader bucket|scoop|scoops|loaderbucket|loaderbuckets',
  plural:
    'carts|bins|totes|toters|wheelies|wheelie bins|buckets|pails|bags|sacks|barrels|barrows|wheelbarrows|loader buckets|barrow loads|barrowloads|bkts|caddies|scoops|loads',
  'material:food-scraps':
    'food scraps|scraps|food waste|food|kitchen scraps|kitchen waste|leftovers|slops|food scrap|foodscraps|foodwaste|veg scraps|veggie scraps|organics|plate waste|prep waste|peelings|vegetable scraps|fruit and veg|fruit scraps|wet waste|kitchen peelings',
  'material:wood-chips':
    'chips|wood chips|woodchips|wood chip|woodchip|chip|chippings|w chips|w chip|wd chips|wood shreds|bark chips|wc chips|arborist chips|chipped wood|shredded wood|bulking',
  'material:sawdust': 'sawdust|saw dust|sawdst|shavings|wood shavings|planer shavings|s dust',
  'material:leaves': 'leaves|leaf|dry leaves|leaf litter|fallen leaves|dead leaves|shredded leaves',
  'material:cardboard': 'cardboard|carton|cartons|shredded cardboard|torn cardboard|card board',
  'material:paper': 'paper|shredded paper|newspaper|newsprint|paper towels|paper towel',
  'material:straw': 'straw|hay|spoiled hay',
  'material:grass':
    'grass|grass clippings|clippings|lawn clippings|grass cuttings|cut grass|mowings|grass clipping',
  'material:coffee-grounds':
    'coffee grounds|grounds|coffee|spent coffee|used coffee grounds|coffee ground|spent grounds|used grounds|espresso grounds|cofee grounds',
  'material:garden-waste':
    'garden waste|yard waste|green waste|weeds|prunings|hedge trimmings|trimmings|garden trimmings|yard trimmings|plant waste|garden clippings|garden debris|hedge clippings',
  'material:manure': 'manure|horse manure|chicken manure|muck|horse muck|cow manure|dung|chicken litter',
  'material:finished-compost':
    'finished compost|compost|ready compost|screened compost|product|fines compost',
  'material:mature-compost':
    'mature compost|old compost|aged compost|cured compost|mature|biofilter compost|matured compost|mature comp',
  'material:water': 'water|h2o',
  'material:residue':
    'residue|residues|rubbish|trash|garbage|plastic|plastics|plastic bits|junk|contaminants|contamination picked|contaminant|film plastic|plastic bags|cutlery|plastic cutlery|picked out plastic|forks|plastic forks|gloves|glove|spoons|plastic spoons|knives|cans|wrappers|styrofoam cups|tin cans|twist ties|rubber gloves|straws and lids|foil trays|milk cartons|coffee pods|condiment packs|ketchup packets|napkin rings|elastics',
  'material:leachate': 'leachate|runoff|run off|run-off|bin juice|compost juice|seepage',
  'material:overs': 'overs|oversize|oversized|over size|rejects|tailings|screen overs',
  fines: 'fines|screened|unders|fine',
  'pilehead:pile': 'pile|piles|heap|heaps|windrow|windrows|pil|batch|stack|row',
  'pilehead:bay': 'bay|bays|stall no',
  'pilehead:drum': 'drum|drums|tumbler|vessel|composter|digester',
  many: 'piles|heaps|windrows|bays|drums|batches',
  'place:exit':
    'exit|outlet|discharge end|drum exit|exit end|out end|drum outlet|discharge chute|exit of the drum',
  'place:ambient':
    'ambient|amb|air|air temp|outside|outside temp|outdoor|outdoors|ambient temp|ambient air|outside air|air temperature|ambient temperature|outdoor temp|ambiant|shade temp|ambt|ambnt',
  'place:floor': 'floor|pad|slab|work floor|concrete|tipping floor|receiving area',
  'place:lift': 'lift|cart lift|tipper|bin lift|bin lifter|cart tipper|hoist|lifter|bin tipper',
  'point:top': 'top|upper|tops',
  'point:middle': 'middle|mid|center|centre|midle|mids|mdl|halfway',
  'point:bottom': 'bottom|btm|bot|lower|base|bttm',
  'point:north': 'north|north side|north end|nth|n side|n end',
  'point:south': 'south|south side|south end|sth|s side|s end',
  'point:east': 'east|east side|east end|e side|e end',
  'point:west': 'west|west side|west end|w side|w end',
  'point:front': 'front|front end',
  'point:back': 'back|rear|back end',
  'point:core': 'core|heart|inside|deep inside',
  'point:edge': 'edge|edges|outer|side edge|outer edge',
  'layer:geotextile':
    'geotextile|geo textile|fabric|fleece|compost fleece|geo|textile|breathable cover|breathable fabric|geo fabric|landscape fabric|compost cover|geotex|geotextil',
  'layer:tarp':
    'tarp|tarps|tarpaulin|tarpaulins|plastic sheet|plastic sheeting|poly sheet|blue tarp|silage cover',
  'layer:unspecified': 'cover|covers|lid|blanket|cap',
  'feel:dry':
    'dry|too dry|very dry|bone dry|dusty|parched|dried out|pretty dry|a bit dry|bit dry|crumbly|way too dry|dry as a bone|drying out|on the dry side|kinda dry|fairly dry|dryish|really dry|so dry|super dry|gone dry|crumbled apart|crumbled right apart|crumbles apart|fell right apart|crumbled to dust|crumbled in my hand|turned to dust|powdery',
  'feel:right':
    'just right|about right|feels right|perfect|moist|damp|good moisture|a drop or two|drop or two|couple of drops|a couple of drops|one drop|two drops|couple drops|wrung out sponge|wrung sponge|like a wrung out sponge|moisture good|moisture ok|moisture fine|nicely moist|nice and moist|1 drop|2 drops|few drops|a few drops|spot on|moisture right|1 or 2 drops|a drop|one or two drops|nice moisture',
  'feel:wet':
    'sopping|sopping wet|drenched|swampy|sludgy|wet|too wet|very wet|soggy|sodden|waterlogged|soaked|soaking|way too wet|a bit wet|bit wet|too moist|mushy|sloppy|soupy|kinda wet|pretty wet|really wet|on the wet side|wettish|super wet|fairly wet|so wet|sloppy wet|saturated|soaking wet',
  'feel:dripping':
    'dripping|squeezes out water|drips|dripping wet|streaming|runs when squeezed|drips when squeezed|water runs out|running out when squeezed|dripped|water dripping|drips when you squeeze it|dripping when squeezed|water runs through fingers|a stream of water|pouring water|drips a lot|water pours out|water ran out of it|water ran out|water runs out of it',
  squeeze:
    'squeeze test|squeeze|squeezed|squeezes|squeeze tests|moisture|moisture content|moisture test|hand test|fist test|feels|feel|felt|squeezing|handful|grab test|mc|moisture reading|ball test|a handful|moisture level|squeezed a handful|when squeezed|when you squeeze it|when i squeeze it|moist test',
  'topic:odour':
    'smell|smells|smelly|stink|stinks|stinky|odour|odor|odours|odors|reeks|reek|stench|pong|whiff|ammonia|rotten eggs|rotten egg|stank|smelled|smelt|smelling|stinking|pongs|whiffy|rotten smell|sour smell|ammonia smell|smells bad|bad smell|smells like ammonia|smells like rotten eggs|smells of ammonia|smells rotten|smells sour',
  'topic:leachate':
    'leachate|leaking|leak|puddle|puddles|leachate pooling|leachate puddle|juice|liquid pooling|juice running|liquid|seeping|runoff|brown water|brown liquid|black liquid|leachate running|leachate leaking|pooling|ooze|oozing|brown juice|leaks|black juice',
  'topic:flies':
    'flies|fly|maggots|fruit flies|gnats|maggot|larvae|swarm of flies|flys|fruit fly|house flies',
  'topic:pests':
    'rat|rats|mouse|mice|raccoon|raccoons|rodent|rodents|vermin|seagulls|gulls|crow|crows|fox|foxes|pests|bear|skunk|skunks|possum|rat droppings|mouse droppings|rat hole|rat holes|burrow|burrows|raccoons digging|racoon|racoons|bears|droppings|coyote|squirrels|wasps|wasp nest|wasps nest|cockroaches|groundhog|opossum',
  'topic:freezing':
    'frozen|froze|frozen solid|freezing up|iced up|ice|frozen shut|freezing|icy|frozen up|iced over|froze up|froze shut|froze solid',
  'topic:fault':
    'broken|broke|jammed|jam|stuck|not working|isnt working|wont turn|wont start|wont move|not turning|not rotating|stopped working|seized|dead|tripped|fault|faulty|error|alarm|squeaking|grinding|grinding noise|leaking oil|broke down|busted|knackered|acting up|cracked|bent|flat tire|flat tyre|belt slipped|belt snapped|chain off|wont run|out of order|stopped turning|doesnt work|not spinning|malfunction|malfunctioning|wont lift|wont go up|wont budge|isnt turning|isnt running|not running|on the fritz|error light|making a noise|making noise|making a grinding noise|making a weird noise|weird noise|snapped|blocked|clogged|plugged|down again|quit working|quit|conked out|packed up|packed in|stopped rotating|making a funny noise|strange noise|wont come down|wont close|wont open|wont rotate|wont spin|doesnt turn|broken down|burnt out|came loose|fell off|not lifting|clunking|rattling|noisy|stopped by itself|has a flat|flat|wont start up|is shot|shot|kaput|toast|is off by a lot|is way off|reads wrong|reading wrong|out of whack|crapped out|gave up|died|wont turn over|is leaking hydraulic|wont latch|wont lock|wont charge|battery dead|dead battery|out of gas|no gas|overheating|overheated|jammed up|locked up and jammed|making a racket|squealing|screeching|burning out|keeps stopping|keeps tripping|keeps jamming|jams|ripped|torn|leaking air|slipping|came off|wont go|isnt working right|not working right|playing up',
  'topic:power':
    'no power|power out|power cut|power outage|power is out|power off|lost power|blackout|outage|breaker tripped|electricity out|power failure|no electricity|power went out|power is off|hydro is out|hydro out|powers out|breaker keeps tripping|electricity is off|no hydro|hydros out|no juice|power down|lights out|power has been out|power been out|electricity went out|power fail|breaker went|power keeps cutting out|no lights',
  'topic:spill':
    'spill|spilled|spilt|spillage|tipped over|knocked over|tipped all over|spills|dumped over|fell over and spilled',
  'topic:contamination':
    'contamination|contaminated load|plastic in|glass in|plastic in the|found plastic|found a bag of|found glass|found metal|found forks|forks in|glass bottle|found cutlery|contaminents|plastic everywhere|lots of plastic|bag of plastic|plastic bag in|found|plastic mixed in|lots of plastics|glass found|broken glass|styrofoam|glass|foil|metal',
  'topic:complaint':
    'complaint|complained|complaining|complaints|complains|complain|to complain|called to complain|complained about|complaining about|is complaining|are complaining|not happy about|unhappy about|fed up with|upset about|called about|phoned about|emailed about',
  contaminated:
    'contaminated|contaminated with|contaminated by|dirty|gloves in it|forks in it|contam|contamd|contaminated with plastic|dirty load|had plastic in it|plastic in it|with plastic in it|contaminants in it|had plastic|plastic inside|lots of plastic in it|contamination in it|contaminated load|some plastic in it|with contamination|had forks in it|had glass in it|has plastic in it|w plastic in it|contaminatd|contaminted|plastic bags in it|plastic mixed in|had contamination|some contamination|contamination|has contamination|glass in it|contaminated w|full of forks|full of gloves|had gloves in it|gloves inside|had forks|gloves mixed in|plastic forks in it|forks mixed in|glass mixed in|had glass|full of cutlery|plastic cups in it|cups in it|cans in it|had a glove in it|contaminated again',
  machine:
    'fan|blower|aerator|motor|engine|gearbox|belt|chain|door|hatch|lid|paddle|paddles|pump|hose|scale|scales|thermometer|probe|thermo|loader|tractor|skid steer|screener|screen|trommel|chipper|shredder|gate|sensor|panel|control panel|e stop|stop button|emergency stop|wheel|tire|tyre|light|lights|grinder|mixer|auger|conveyor|hydraulics|winch|cable|tap|sink|pressure washer|hinge|roller|rollers|bearing|wheel bearing|stop switch|estop|timer|display|remote|cart wheel|bin wheel',
  person:
    'neighbour|arborist|arborists|tree guys|tree guy|tree service|tree crew|truck|driver|city|town crew|delivery guy|farmer|supplier|company|contractor|neighbor|neighbours|neighbors|neighbour next door|resident|residents|visitor|visitors|lady|guy|man|woman|someone|somebody|nurse|nurses|staff|patient|patients|people|crew|volunteer|volunteers|student|students|person|helper|helpers|colleagues|workers|of us|folk|hands|ppl|folks|peeps|guys|bodies|staffers|us|interns|coworkers|team members',
  'weather:rain':
    'rain|raining|rained|showers|storm|storms|thunderstorm|thunderstorms|downpour|heavy rain|rainfall|rainy|rain storm|rainstorm|drizzle',
  'weather:frost':
    'frost|freeze|hard frost|ground frost|hard freeze|freezing temps|frosty|deep freeze|cold snap|below freezing|deep frost|killing frost|black ice frost',
  'weather:snow': 'snow|snowing|snowed|blizzard|snowfall|flurries|heavy snow|snow storm|snowstorm|snowy',
  'weather:heat':
    'heat wave|heatwave|heat|hot weather|heat warning|hot spell|heat advisory|scorcher|scorching|extreme heat|very hot',
  'weather:wind':
    'wind|winds|high winds|high wind|windy|strong wind|strong winds|gale|gales|gusts|big wind|big winds|windstorm|gusty|wind warning|wind storm|strong gusts',
  forecast:
    'forecast|expected|coming|calling for|due|on the way|predicted|warning|warnings|in the forecast|they are calling for|forecasted|supposed to|they say|theyre calling for|forecast says|forecast is|coming in|heading our way|on its way|gonna|going to|will|theyre saying|calls for|expecting|might|possible|likely|rolling in|moving in|tonight maybe|radio says|announced|starting|calling it|saying|on the radar|in the cards|storm watch|watch|advisory|alert',
  observed:
    'had|got|fell|last night it|rain gauge|gauge|came down|in the gauge|of it fell|rained|snowed|overnight|in the rain gauge|fell last night|of precip|in the bucket gauge',
};
