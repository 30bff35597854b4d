import type { Words } from '../../lexicon.ts';

/** The rest of the English words: links, checks, laboratory terms, and what turns up beside a trouble. */
export const more: Words = {
  numand: 'and|n',
  // A link that says something lies on a pile, not in it.
  atop: 'over|over top of|over the top of|on top of|overtop|overtop of',
  be: 'is|was|are|were|been|being|its|be',
  // What opens a clause that only tells when or why.
  aside:
    'to let|to let it|so it can|so it|to keep|to help|to cool|to dry|to air|to dry out|for the night|for the weekend|for the storm|for the winter|just in case|after|before|because|cause|cuz|bc|since|while|due to|because of|on account of|right after|just after|just before|right before|as it|so that',
  // What is said of the air before its degrees.
  itis: 'its|it is|it was|its about|it hit',
  numero: 'number|num|nr',
  between: 'between',
  rangeword: 'to|and|thru|through',
  degree:
    'hot|warm|cool|cooking|heating up|heating|running hot|getting hot|nice and hot|steaming|cooling down|cooling|climbing|still hot|cooking away|cold|lukewarm|toasty|gone cold|cooled off|cooled down|stone cold|chilly|dropping|rising|warming up|warming|going cold',
  because:
    'because of|on account of|it had|there was|there were|filled with|had some|with|because|full of|too much|cause|cuz|since|for|due to|was|were|had|contaminated with|reason|packed with|loaded with|all full of|all through|mixed in with|stuffed with',
  testweight:
    'weight reads|kg weight reads|test weight|check weight|weight read|known weight|calibration weight|weight shows|weight showed|weight weighs|weight says|weight came up|test block|standard weight|reference weight|test weight reads|weight comes up|weight',
  'analyte:moisture': 'moisture|moisture content|mc|water content|humidity',
  'analyte:ash': 'ash|ash content|ashes',
  'analyte:pH': 'ph',
  'analyte:E. coli': 'e coli|ecoli|e. coli|e . coli',
  'analyte:Salmonella': 'salmonella',
  'analyte:faecal-coliforms': 'faecal coliforms|fecal coliforms|faecal coliform|fecal coliform|coliforms|fc',
  'analyte:EC': 'ec|conductivity|electrical conductivity|soluble salts|salinity',
  'analyte:C:N':
    'cn|c n|cn ratio|c : n|c / n|c to n|c : n ratio|carbon to nitrogen|c n ratio|c to n ratio|carbon nitrogen ratio|c / n ratio|carbon to nitrogen ratio',
  'analyte:dry matter': 'dry matter|total solids|dry solids|solids',
  'analyte:lead': 'lead',
  'analyte:cadmium': 'cadmium|cd',
  'analyte:copper': 'copper|cu',
  'analyte:zinc': 'zinc|zn',
  'analyte:nickel': 'nickel',
  'analyte:arsenic': 'arsenic',
  'analyte:mercury': 'mercury',
  'analyte:chromium': 'chromium',
  'analyte:nitrogen': 'nitrogen|total nitrogen|total n|tn|tkn',
  'analyte:phosphorus': 'phosphorus',
  'analyte:potassium': 'potassium',
  'analyte:carbon': 'carbon|total carbon|organic carbon|toc',
  'analyte:organic-matter': 'organic matter|om',
  'analyte:ammonium': 'ammonium|nh4',
  'analyte:nitrate': 'nitrate|no3|nitrates',
  'analyte:stability': 'respiration|stability|oxygen uptake',
  'analyte:maturity': 'maturity|maturity index',
  'analyte:self-heating':
    'self heating|self heating rise|self heating test|selfheating|dewar|dewar rise|dewar test',
  'labunit:MPN/g': 'mpn / g|mpn per g|mpn per gram|mpn|mpn g',
  'labunit:MPN/4 g': 'mpn / 4 g|mpn per 4 g',
  'labunit:CFU/g': 'cfu / g|cfu per g|cfu per gram|cfu|cfu g',
  'labunit:mg/kg': 'mg / kg|mg per kg|mg kg|ppm|milligrams per kilo',
  'labunit:dS/m': 'ds / m|ds per m|ds m',
  'labunit:mS/cm': 'ms / cm|ms per cm|ms cm',
  qualifier: 'under|over',
  below: 'below|under|less than|lower than|<|beneath',
  above: 'above|more than|greater than|over|higher than|>|exceeds',
  absent:
    'not detected|nd|none detected|absent|negative|non detect|undetected|not found|undetectable|non detected|was not detected|came back negative',
  sink: 'farm|garden|gardens|field|fields|landfill|dump|residents|neighbours|members|gardeners|community garden|plots|beds|flower beds|nursery|park|sewer|transfer station|customers|public|landscapers|landscaper|allotment holders|plot holders|orchard|greenhouse|city|town|trash|garbage|dumpster|skip|grounds crew|lawn|lawns|rose garden|rose beds|church|families|parents|home',
  toword:
    'out to|off to|over to the|went to|given to|delivered to|sent to|taken to|hauled to|spread on|sold to|donated to|took to|dropped at',
  seen: 'running out|running out of|coming out of|leaking out|leaking out of|dripping out|dripping out of|pooling under|saw|seen|noticed|there is|theres|there are|got|found|spotted|have|has|coming from|around|in|by|near|caught|swarm of|lots of|many|some|a few|few|everywhere|digging in|digging|got into|getting into|all over|again|came back|back|acting|wont|from|full of|heard|smelled|dead|alive|chewed|running around|nest|hole|signs of|evidence of|caught in|trapped|noise|again today|coming from under|out from under|leaking out|leaking from|seeping out|seeping from|draining out|got in|got at|run|ran|weird|strange|funny|odd|landing on|hanging around|circling|hovering|buzzing|nesting in|living in|loads|tons|lots|ton of|bunch of|at it again|under|from under|since|coming|dripping',
  // Rooms and grounds about a site: no place that the log knows.
  border: 'fence|fence line|fenceline|boundary|boundary line|property line|site boundary|perimeter',
  spot: 'shed|barn|office|building|hut|workshop|garage|site|yard|drum room|compost room|compost shed|drum shed|compost building|whole site|shop|in the compost shed|in the compost room|in the compost building|compost area|compost site',
  // The writer among those who worked.
  'self:one': 'me|myself|i|and i|and me',
  // Words that announce an entry made late.
  forgotten:
    'forgot|i forgot|forgotten|almost forgot|forgot this|forgot this one|forgot one|missed|missed one|missed this|late entry|late log|late|sorry late|sorry for the late log|catching up|catch up|from before|backlog|forgot to log|forgot to enter|forgot to write down',
  gloss:
    'squeezed|came out|come out|really|test|poke|holds together|stays together|falls apart|glistening|shiny|needs water|needs chips|out',
  there: 'there|it',
  ok: 'ok|okay|good|fine|passed|all good|works|works fine|working|working fine|passes|all ok|in order|done|no problems|nothing to report|no issues|all fine|all clear',
  done: 'done|did|finished|completed',
  self: 'me|myself|i|we|us|alone',
  'amend:change': 'change|changed|edit|fix|correct|replace|update',
  'amend:instead': 'instead of|in place of|rather than',
  'amend:':
    'should be|should have been|should read|meant|that was|it was|was actually|supposed to be|make it|make that|actually|it should be|that should be|that should say|should say|i meant|meant to say|last one was|last one should be|the last one was|last was|that was actually|typo|its|sorry',
  was: 'was|is|it was|that was|it is|were|really',
  need: 'need|do we need|do i need|needed|should i add|to add|we need|i need',
  dateword:
    'today|this week|this year|now|tonight|yet|tomorrow|right now|this month|this morning|so far|to date|currently|at the moment|these days|this season|last time|soon',
  'order:dmy': 'day first|day month year|dd / mm / yyyy|dd / mm|dd - mm - yyyy',
  'order:mdy': 'month first|month day year|mm / dd / yyyy|mm / dd|mm - dd - yyyy',
  'order:ymd': 'year first|year month day|yyyy - mm - dd',
  per: 'per|a|each|for every|for each|to',
  yearword: 'year|annum|yr|annually|yearly|a year|per year',
  'byword:volume': 'by volume|volume|by vol',
  'byword:mass': 'by weight|by mass|weight|mass',
  'chorename:sweep': 'sweep|sweeping|the sweeping|the floor',
  'chorename:wash-lift': 'wash lift|wash the lift|washing the lift|lift washing|lift wash|the lift wash',
  'chorename:wash-containers':
    'wash carts|wash the carts|washing carts|washing the carts|cart washing|wash buckets|wash bins|wash the bins|wash the buckets|cart wash|bucket washing|washing buckets|washing the buckets|washing the bins|bin washing|the carts|the buckets',
  'chorename:clean-tools':
    'clean tools|clean the tools|cleaning tools|tool cleaning|cleaning the tools|the tools',
  'chorename:check-fan': 'check fan|check the fan|fan check|checking the fan|the fan check',
  'chorename:check-scale': 'check scale|check the scale|scale check|checking the scale|the scale check',
  'chorename:check-thermometer':
    'check thermometer|check the thermometer|thermometer check|the thermometer check|checking the thermometer',
  'chorename:check-stop-button':
    'check stop button|test the stop button|stop button test|check the stop button|stop button check|test the e stop|the stop button|e stop test|the stop button test',
  'chorename:check-odour':
    'check odour|odour check|check odor|odor check|smell check|sniff test|the odour check|the odor check',
  'chorename:lock-gate':
    'lock gate|lock the gate|locking up|locking the gate|lock up|the gate|gate locking|gate lock up',
  'chorename:inspect':
    'inspect|inspection|site inspection|the inspection|the rounds|walk around|inspecting|site walk',
  'chorename:watered': 'watering|water|the watering|water the piles',
  'chorename:squeeze-test': 'squeeze test|the squeeze test|squeeze tests',
  'chorename:temperature':
    'temps|temperatures|the temps|temperature round|temp round|the temperatures|taking temps|take temps|probing',
  'chorename:turning': 'turning',
  fell: '',
  fill: 'w / lid|with lid|with a lid|with the lid|w lid|lid on|with its lid|no lid|without lid|without the lid|after turning|before turning|after the turn|after a turn|before the turn|forgot to log|forgot to write down|forgot to write|forgot to record|forgot to enter|forgot to add|forgot to put down|forgot to mention|forgot to say|forgot to report|forgot to tell you|forgot to post|forgot this|forgot this one|late log|late entry|never logged|didnt log|here is today|heres today|here is yesterday|heres yesterday|log for today|todays log|for the log|for the record|for the book',
  neg: 'forgot to|forgot|i forgot|i forgot to|forgot about|forgetting to',
  shifted: 'moved|shifted|relocated|moved over|was moved',
  gave: 'gave|given|got',
  turnname: 'turning|to be turned|be turned|turn',
  negwas: 'it wasnt|that wasnt|wasnt',
};
