import type { Words } from '../../lexicon.ts';

/** Small words, numbers, units and the marks of talk, in English. */
export const talk: Words = {
  fill: 'the|at last|sun side|shade side|sunny side|shady side|back|today|my|a|an|is|was|are|were|it|its|this|that|just|here|there|so|ok|okay|hi|hey|hello|morning|afternoon|evening|all|again|now|i|we|ive|weve|did|done|please|pls|thanks|thx|ty|thank you|good|nice|lol|haha|guys|folks|btw|fyi|end of day|eod|done for today|end of shift|also|too|another|some|more|our|my|his|her|their|be|been|being|has|had|have|got|today so far|shift done|boss|update|quick update|hiya|yo|yep|yeah|as|per|say|says|said|finally|already|only|really|pretty|very|both of them|still|he|she|they|them|those|these|total of|one|ones|first|last one|then|next|me|us|um|uh|er|hmm|well|like|whole|single|full day|sir|everyone|everybody|chief|cheers|great|sorry|oops|um|a new|worth|side|each one|the one|end|apiece|gotta go|bye|see ya|wow|yay|phew|done here|thats it|that is all|thats all|all done|all good|all set|sweet|yup|roger|copy|np|no worries|load|loads|round|rounds|batch of|same|other|other one|second|third|day|time|inside|log|entry|logging|for the log|note that|reporting|heads up|k|x|am|pm|little|bit|small|fresh|some of|lots|nicely|good job|good work|way|right now|so far|just now|the usual|usual|as usual|looks|looking|seems|after lunch|before lunch|after break|at lunch|first thing|in the morning|after dinner|before leaving|end of the day|before i left|this time|hi team|hey team|morning team|thanks team|team update|by myself|with the loader|with loader|with the tractor|teh|hte|tje|te|thje|the new|our new|overnight|aft|arvo|this aft|this arvo|even|everything|right away|for now|on shift|onsite|on site now|lately|by the way|ppl|anymore|any more|after all|anyways|afterall|at the end|blue|red|yellow|grey|gray|half day|blue one|that last|this last|pretty much|for the night|for the weekend|for the day|till morning|until morning|for the long weekend|for the holidays',
  definite: 'the',
  'prep:from': 'from|frm|fr|off of|via|courtesy of',
  'prep:to': 'to|onto|on to|over to|toward',
  'prep:into': 'into|in to|in2',
  'prep:on':
    'on|back on|back over|through|all through|all over|along|over|on top of|atop|around|near|by|beside|next to|behind|close to|under|beneath|across|against|outside of',
  'prep:off': 'off of|off|away',
  'prep:out': 'out|out of',
  'prep:in': 'in|inside of|within',
  'prep:with': 'with|w|wi|using|plus|along with|incl|including',
  'prep:of': 'of|o',
  'prep:at':
    'at|is at|are at|was at|sitting at|at about|@|reading|reads|read|shows|showing|hit|reached|sits at|sitting at|came in at|up to|now at|registering|measures|measured|measuring|clocking|hitting|averaging|avg|temp of|is reading|currently|went up to|dropped to|came to',
  'prep:for': 'for',
  and: 'and|n|und',
  next: 'then|so|but|after that|also|and then|afterwards|next up',
  'article:1': 'a|an|one',
  tempword:
    'tempature|temprature|temperture|tempeture|temperatur|tempratures|tempatures|temp|temps|temperature|temperatures|tmp|probed|probe reading|degree reading|deg reading|probe temp|core temp of|took temps|temp check|temp reading|heat reading|thermometer in|down to|cooled to|cooled down to|cooled off to|warmed to|warmed up to|heated up to|climbed to|dropped down to|crept up to|sitting at|holding at|holding|peaked at|topped out at|came up to|came down to|back up to|back down to|rose to|fell to|got up to|got to|maxed out at|bottomed at|probe in|probe at|probe reads|probe says|thermo in|thermometer says|thermometer reads|a bit low at|a bit high at|low at|high at|still at|steady at|stuck at|stable at|creeping up to|went down to|gone up to|gone down to|hovering around|hovering at|hovers around|maxed at|came in at|tops at|running at|cruising at|humming along at|sits around|sits at',
  minus: 'minus|negative',
  both: 'both|both piles|both of the piles',
  all: 'all|every|all the|all of the|each of the',
  total:
    'total|in total|altogether|all together|together|combined|in all|all up|all told|for all|for the lot|tot|sum|between them|for both|ttl|total weight|total for all|for all of them|for the pair|for all three|all in',
  each: 'each|apiece|ea|a piece|per cart|per bucket|per bin|per barrow|per bag|a pop|each one|every one|per tote',
  net: 'no bucket|no cart|no bin|without bucket|without cart|without a bucket|not counting bucket|net|nett|net weight|without the cart|without the bucket|without the bin|minus the cart|minus the bucket|less the cart|tare taken off|tared|after tare|not counting the bucket|not counting the cart|not counting the bin|cart not included|bucket not included|food only|contents only|just the food|net of tare|scraps only|tare off|w/o cart',
  gross:
    'gross|with the cart|with cart|with the bucket|with bucket|gross weight|including the cart|including the bucket|with the bin|incl cart|cart included|cart and all|bucket and all|bucket included|incl bucket|bin included|including cart|including bucket|tare included|bin and all|including the bin|incl tare|w cart',
  tare: 'tare|tare weight|tares|empty weight|less|minus|tare is|tare was|weighs empty|own weight|minus tare|less tare',
  emptyadj: 'empty|clean and empty',
  approx:
    'about|approx|approximately|around|roughly|circa|ca|almost|nearly|maybe|abt|~|approx.|more or less|give or take|ish|somewhere around|close to|just under|just over|like|estimate|est|estimated|a good|probably|near|say about|some|rough',
  lowof: 'low|the low|in the low|lower',
  midof: 'mid|the mid|in the mid|middle',
  highof: 'high|upper|the high|in the high',
  ish: 'ish',
  or: 'or|or maybe|or was it|or else|either',
  unsure:
    'cant read|not sure|unsure|i think|cant tell|unclear|was jumping|dont remember|idk|couldnt read|hard to read|scale was jumping|scale jumping|jumping around|couldnt tell|smudged|cant remember|forget which|not sure which|dont know which|maybe|cant make it out|who knows|hard to tell|scale was bouncing|cant quite read it|scale kept jumping|scale was acting up|scale is jumping|cant read my writing|cant read my handwriting|cant read it|couldnt read it|hard to say|cant read the scale',
  correct:
    'no wait|wait no|sorry|i mean|make that|actually|correction|scratch that|oops|no sorry|sorry no|meant|i meant|er no|no make that|rather|wait|no its|my bad|no i mean|strike that|no actually|oh wait|oops no|uh no|should be|hang on|hold on|typo|whoops|sry|oops i mean|ah no|oops sorry|wait i mean|wait sorry|sorry i mean|sorry i meant|wait its|no no|no it was|wrong|hmm no|nope',
  neg: 'not|no|didnt|did not|havent|have not|hasnt|has not|never|wasnt|isnt|arent|werent|without|none|cant|cannot|couldnt|wont|nobody|no one|dont|doesnt|yet to|nothing|neither|nor|wasnt able|aint|didn t|hadnt|no more|shouldnt|wouldnt|barely|hardly|nope|zero',
  intent:
    'need to|needs to|need|needs|will|going to|gonna|should|must|have to|has to|gotta|got to|want to|wants to|plan to|planning to|planned|lets|let us|ill|well be|were going to|about to|want|could you|can you|can someone|please turn|may need|might need|supposed to|tomorrow we|remember to|dont forget|forget to|would|could|might|may|shall|ought to|wanna|hoping to|hope to|reminder|remind|to be|would like|wait to|someone should|somebody should|try to|has yet to|intend to|thinking of|thinking about|due for|ready for|time to|better|id like to|we could|wish|hopefully|wanting|someone needs to|who can|can anyone|can somebody|next week|ask|next time|needing|until|before we|prepare|get ready|soon|later|due to be|scheduled|aim to|aiming|looks ready to|once|make sure|be sure to|trying to|todo|to do|to-do|shoulda|shouldve|coulda|couldve|woulda|wouldve|tried to|was gonna|were gonna|bout to|havent had time to|didnt get to|never got to|never got around to|ran out of time to|someone pls',
  cond: 'if|unless|when|whenever|in case|once|as soon as|would have|should it|assuming|provided|had we',
  ask: 'who|can|may|whos|what|whats|where|wheres|why|whys|how|hows|which|when is|when was|did you|did we|did anyone|did anybody|did someone|has anyone|have we|have you|is there|are there|are we|is it|was it|do we|do you|does|does anyone|anyone|anybody|can we|can i|should we|should i|shall we|is the|was that|who turned|who did|could we|may i|whose|will we|is that|isnt it|right|do i|has anybody|has somebody|did somebody|is pile|is bay|whens|have they|has the|did the|what did we take in|how did we do|what came in|how much came in|how much did we take in|how did|how was|what did we do|what did we get|how many came in|how much did we do|what all came in',
  hearsay:
    'diary|last year|apparently|i heard|heard|told me|tells me|reckons|according to|the book says|records show|the app|the article|article|facebook|on tv|i read|the sheet says|the log says|supposedly|rumour|rumor|they said|he said|she said|used to|years ago|in the old days|when i was|the poster|website|youtube|the manual says|manual says|the book|textbook|the paper says|newspaper says|i dreamt|dreamed|dreamt|remember when|last summer|last winter|last season|back in|other site|at home|my own|our neighbours|the other garden|says the|spec says|for the year|the spreadsheet|spreadsheet|spreadsheet says|the plan says|magazine|neighbours compost|the guideline|guidelines say|ideally|normally|usually|typically|average|always|in theory|on paper|another site|across town|record is|the record|minimum is|the rule is|rule|the label says|label says|rated|capacity|holds',
  money:
    '$|€|£|bucks|dollars|dollar|cents|usd|cad|price|costs|cost|paid|owe|owes|euros|sold for|for sale|per ton|on sale|charge|cheap|expensive|fee|fees|budget',
  deep: 'deep|down|depth|in deep|below|below surface|under the surface|depth of|deep in|beneath the surface|at depth',
  'unit:kg': 'kg|kgs|kilo|kilos|kilogram|kilograms|keys|kilogrammes|kgm|k g',
  'unit:g': 'g|grams|gram|gr|grammes',
  'unit:lb': 'lb|lbs|pound|pounds|ibs|lbd|pnds|pds',
  'unit:oz': 'oz|ounce|ounces',
  'unit:t': 't|tonne|tonnes|ton|tons|metric tons|metric tonnes',
  'unit:L': 'l|litre|litres|liter|liters|ltr|ltrs|lts|lt',
  'unit:mL': 'ml|millilitres|milliliters',
  'unit:gal': 'gal|gals|gallon|gallons|gl',
  'unit:m3': 'm3|cubic metres|cubic meters|cubic metre|cubic meter|cu m|cubes|cube|cbm|m cubed',
  'unit:yd3': 'yd3|cubic yards|cubic yard|yards|yard|yd|yds|cu yd|cu yds|cy|cuyd',
  'unit:ft3': 'ft3|cubic feet|cubic foot|cu ft|cf|cuft',
  'unit:cm': 'cm|cms|centimetres|centimeters|centimeter|centimetre',
  'unit:mm': 'mm|millimetres|millimeters|mils',
  'unit:m': 'm|metre|metres|meter|meters',
  'unit:in': 'in|inch|inches|ins',
  'unit:ft': 'ft|foot|feet',
  'unit:C': 'c|celsius|centigrade|deg c|degrees c|degrees celsius|degc|degree c|degree celsius|degs c',
  'unit:F':
    'f|fahrenheit|deg f|degrees f|degrees fahrenheit|degf|farenheit|degree f|degs f|fahr|degrees farenheit',
  'unit:deg': 'deg|degs|degree|degrees|dgr',
  'unit:min': 'min|mins|minute|minutes',
  'unit:h': 'h|hr|hrs|hour|hours',
  'unit:d': 'd|day|days',
  'unit:%': 'percent|pct|per cent',
  'numw:0': 'zero',
  'numw:1': 'one',
  'numw:2': 'two|couple of|a couple of|couple|a couple|pair of|a pair of',
  'numw:3': 'three',
  'numw:4': 'four',
  'numw:5': 'five',
  'numw:6': 'six',
  'numw:7': 'seven',
  'numw:8': 'eight',
  'numw:9': 'nine',
  'numw:10': 'ten',
  'numw:11': 'eleven',
  'numw:12': 'twelve|a dozen|dozen',
  'numw:13': 'thirteen',
  'numw:14': 'fourteen',
  'numw:15': 'fifteen',
  'numw:16': 'sixteen',
  'numw:17': 'seventeen',
  'numw:18': 'eighteen',
  'numw:19': 'nineteen',
  'numw:20': 'twenty',
  'numw:30': 'thirty',
  'numw:40': 'forty|fourty',
  'numw:50': 'fifty',
  'numw:60': 'sixty',
  'numw:70': 'seventy',
  'numw:80': 'eighty',
  'numw:90': 'ninety',
  'numw:100': 'hundred|a hundred',
  'numw:1000': 'thousand',
  decimal: 'point',
  'plus:0.5': 'and a half|n a half',
  'plus:0.25': 'and a quarter',
  'plus:0.75': 'and three quarters',
  'frac:0.5': 'half a|half an|half of a|half of the|a half|half|one half',
  'frac:0.25': 'quarter of a|a quarter of a|a quarter|quarter|one quarter of a|one quarter',
  'frac:0.75':
    'three quarters of a|three quarters|three quarter|three fourths|three fourths of a|three quarters of the',
  'frac:0.3333333333333333': 'a third of a|third of a|a third|one third',
  'frac:0.6666666666666666': 'two thirds of a|two thirds',
  ofit: 'incl|including|of it|of that|of which|of this|of them',
  'letter:A': 'ay|eh',
  'letter:B': 'bee|be|bea',
  'letter:C': 'see|sea|cee',
  'letter:D': 'dee',
  'letter:E': 'ee',
  'strength:faint': 'faint|slight|slightly|mild|a little|a bit|light|weak|a bit of|small|minor|tiny',
  'strength:strong':
    'strong|bad|really bad|awful|terrible|horrible|heavy|strongly|badly|very bad|intense|a lot of|lots of|big|huge|serious|loads of|tons of|many|nasty|severe|really strong|very strong|pretty bad|overpowering|so bad|wicked|really|gross smell|super',
  more: 'another|one more|and another|plus another|1 more|and one more',
  same: 'same again|same|the same again|ditto|same as before|same as last time|same as last|repeat',
};

/** What people ask for in English. */
export const asking: Words = {
  'req:today':
    'whats due today|whats due|what is due|what needs doing|what do we have to do|to do list|todo list|jobs today|whats on today|what is there to do|what needs to be done|whats next|what do i do|what should i do|what should we do|what now|whats to do|whats left to do|what jobs are left|what needs doing today|whats on the list|whats left|what do we need to do|what do i need to do|what has to be done|whats on for today|duties|chores today|chores|the list|jobs|any jobs|tasks|tasks today|what are todays jobs|todays jobs|todays list|show me the list|list for today|what is due today|anything due|whats there to do|anything to do|what still needs doing|what else needs doing|what have we got on today|what needs done|to dos|whats outstanding|anything left to do|due today|jobs for today|what chores are left|whats due now|what should i be doing|what do we got to do|what are we supposed to do|whats up today|whats the plan|whats the plan today|agenda|what needs to get done|whats to be done|what must be done|task list|job list|whats on|what do we have today|what have we got today|what is on today|what do i have today|what needs doing still|chores left|whats still to do|whats my list|what have i got today|whats on the board|anything left|anything still to do|what do you need me to do',
  'req:week':
    'week|how did we do this week|how did last week go|how was last week|this week|weekly summary|the week|summary|how was the week|week so far|hows the week|weekly|week summary|last week|summary of the week|hows this week|this week so far|how are we doing this week|hows the week going|weekly report|weekly numbers|how much this week|how much did we take in this week|weekly total|weekly totals|how much have we taken in this week|totals for the week|total this week|numbers for the week|show week|show the week|hows the week looking|intake this week|this weeks numbers|this weeks total|this weeks totals|week chart|chart of the week|week graph|graph of the week|week picture|picture of the week|what did we take in last week|what came in last week|what did we do last week|how much last week|how much did we take in last week|how did we do last week|how many carts last week|how many carts this week|hows our week|how are we doing for the week|what came in this week|what did we take in this week|what have we taken in this week|what have we done this week|what did we do this week|recap of the week|week recap|weekly recap|numbers this week|last weeks numbers|last weeks total|last weeks totals|whats the total this week|whats this weeks total|tally for the week|where are we at this week|how heavy was the week',
  'req:year':
    'total for the year|the total for the year|year end total|yearly numbers|numbers for the year|year|what have we taken in this year|what did we take in this year|this year|year so far|year to date|ytd|how much this year|how much have we taken in this year|yearly total|total this year|annual total|how are we doing this year|how much have we done this year|hows the year|year total|totals for the year|so far this year|how much food this year|how much have we composted this year|how many tonnes this year|how many tons this year|how much have we collected this year|year summary|hows the year going|how far along are we for the year|how far to the target|are we on target|how close are we to the target|how much food have we taken this year|how much so far this year|how much did we take in this year|the year so far|annual summary|intake this year|yearly summary|how are we doing on the target|how are we doing against target|where are we against the target|how much have we diverted this year|show year|how much have we diverted|total for the year so far|whats our total for the year|whats the total this year|yearly totals|how much food scraps so far this year|how many kg this year|how many pounds this year|how many lbs this year|how many kilos this year|how much food waste this year|how much food scraps this year|year chart|chart of the year|year graph|graph of the year|year picture|picture of the year',
  'req:mine':
    'what did i log|what have i logged|what i logged|my entries|my log|show my entries|what did i enter|what did i put in|my records|show me what i logged|mine|what have i put in|what did i send|list my entries|what i entered|what did i log today|what have i logged today|my stuff|my logs|show my log|did i log anything|what have i entered|what did i record|remind me what i logged|what i logged today|show what i logged|what did i send today|what did i write|what did i log this morning|list what i logged|what were my entries|what was my last entry|did my entries go in|what have i sent',
  'req:mix':
    'mix|the mix|hows the mix|how many chips|how much chips|how many chips do we need|how much bulking|whats the mix|mix check|how many barrows of chips|how many buckets of chips|how much sawdust|how many chips do i need|how much chips do i need|chips needed|how many bags of chips|recipe check|how much carbon|do we need more chips|how much chips should i add|how many chips to add|how much chips to add|mix today|todays mix|is the mix ok|is the mix right|how is the mix|whats our mix|how much wood chips|how many wood chips|how many chips for that|how much chips for that|should i add chips|do i need more chips|enough chips|how many chips should i add|how much bulking do we need|chip ratio|how many chips should we add|how much chips should we add|hows the mix looking|how many wood chips do we need|how much browns|how much brown|how many chips we need|how much leaves|how many leaves|how much do i add|how many barrows chips|how much sawdust do we need|is our mix ok|hows todays mix',
  coming:
    'coming|coming in|expected|planned|on the way|arriving|to come|due in|tomorrow|expecting|will have|im getting|getting|for|with|if i have|we have|there are|got|ive got|have',
  'req:help':
    'help|commands|how does this work|what can you do|how do i use this|instructions|help me|how to|help please|what can i say|what can i type|how do i log|menu|usage|how do you work|manual please|what are the commands|list commands|show commands|what do i type|how do i log a cart|bot help|guide',
  'req:status':
    'status|hows|how is|how are|how are the|state of|status of|whats up with|how is it going with|hows it going|how about|what about|should we turn|should i turn|is it time to turn|do we need to turn|when did we last turn|whats the temp of|what temp is|how hot is|how warm is|whats the temperature of|can we screen|can i turn|shall we turn|any news on|check on|whats happening with|can we turn|whats going on with|how old is|how long has|do i need to turn|piles status|status report|status update|when should we turn|when should i turn|when do we turn|when do i turn|how is the|whats with|tell me about|whats the latest on|latest on|whats the status of|how did|when can we turn|how far along is|how are things in|pile status|how has|the state of|status on|piles|when was|when is|show me|when will|how long till|how long until|hows the|how is pile|hows pile|what is|whats',
  about:
    'doing|looking|coming along|ready to turn|does|need turning|needs turning|last turned|is|are|ready yet|is ready|temp of|temperature of|is done|show|hot enough|hot enough yet|sanitised yet|time to turn|finished yet|been cooking|cooking|be ready|is ok|doing ok|going|should|be turned|doing today|do|does it need turning|is it hot enough|ready|hot|too hot|warm|cool|is it ready|sanitized yet|sanitised|sanitized|been doing|holding up|lately',
  'req:evidence':
    'evidence|evidence for|evidence of|proof of|proof for|show the evidence for|show me the evidence for|show me the proof for|readings that count for',
  'req:history':
    'history|history of|history for|log for|log of|past readings|show history|readings for|all readings|temps for|temperature history|record of|records for|past temps|show me the history of|history on|show readings|readings from|previous readings|last readings|last readings for|story of|chart of|chart for|graph of|graph for|graph|chart|show me the readings for|show the log for|past readings for|show the history of|what happened to|curve|curve for|trend|trend for|timeline of|timeline|timeline for|full history|what have we done to|last temps|temps history|whats the history of|picture of|picture for|picture|pic of|show me the picture of|show the picture of|show me the graph of|show me the chart of',
  'req:undo':
    'undo|cancel my last one|cancel my last entry|cancel the last one|undo that|take that back|delete that|remove that|scratch that last one|delete last|undo last|undo the last one|delete the last one|remove the last entry|cancel that|undo last entry|delete last entry|undo it|undo please|ignore that|ignore that last one|forget that last one|forget that|scratch that|delete the last entry|cancel last|cancel the last one|cancel last entry|take back|undo the last|undo my last|undo my last one|delete my last|delete my last entry|take that last one back|please undo|remove the last one|remove last|delete it|strike the last one|strike that|disregard that|disregard|disregard last|disregard my last|undo my last entry|scrap that|scrap that last one|scrap the last one|erase that|erase last|never mind that last one|delete the last|undo last one|take back the last one|didnt mean to log that|wipe that|void that|void last|void the last one|undo the last entry|scratch the last|scratch last|scratch my last|scratch the last one|kill the last|kill the last one|drop the last one|nuke the last one|cancel the last|cancel my last|delete my last one|remove my last|remove my last entry|undo the last thing|take off the last one|scrub that|nix that|undo what i just sent|delete what i just sent|erase the last|erase the last one|pull that last one|scratch that entry|cancel that last one|cancel that last entry|void my last|toss that last one',
  last: 'last|latest|previous',
  entries: 'entries|entry|things|ones|records|lines',
  'req:done':
    'done|did|finished|completed|complete|tick off|done with|check off|ticked off|mark done|number|mark|marked|is done|is finished|taken care of|is taken care of|all done|is complete|got done|are done|was done|are finished|done and dusted|is all done|is sorted|knocked out|crossed off|checked off',
  'req:claim':
    'ill take|ill do|i will do|i will take|i got|mine|claim|im on|im doing|i can do|ill handle|i can take|dibs on|leave to me|ill get|put me down for|im taking|i call|ive got|i will handle|ill grab|i can handle|ill look after|i take|sign me up for|let me do|let me take|give me',
  'req:release':
    'release|cant do|i cant do|someone else take|hand back|give back|cannot do|wont get to|unclaim|drop|cant make|someone else do|someone else can do|someone else can have|cant get to|cant do anymore|give up|im giving back|putting back|take me off|i wont get to|somebody else take|wont be able to do|not able to do|unable to do|not going to get to|cant manage|cant do it|not gonna get to|wont be doing|cant take|cant cover|dropping|letting go of|giving up|have to give up|i have to drop|gotta drop|wont manage',
  'req:postpone':
    'postpone|push|delay|later|do later|put off|move to tomorrow|skip|snooze|defer|tomorrow instead|until tomorrow|push back|hold off on|reschedule|put off until|leave until|leave for|move|leave till|push to|postpone until|postpone to|delay until|not today|can wait|can wait until|can wait till|hold off|bump|bump to',
  'req:why':
    'why|why is that|why so|how come|why that|whats the reason|reason|why do you ask|why do you say that|explain|explain that|why do i have to|whats that for|what for|why do we|says who|explain please|why the|why is that one|whys|why is|why are|how come we',
  'req:show':
    'show|show entry|show me entry|show me|see entry|open entry|look up|details of|details|view|what was entry|what was|whats entry|show me number|show number|pull up|display|show record',
  'req:export':
    'export|export data|download data|spreadsheet please|csv|excel|download|export everything|send the data|send me the data|workbook|give me the data|export csv|send spreadsheet|send me the spreadsheet|get the data|export to excel|as a spreadsheet|data export|download csv|export the log|send me a csv|send me the spreadsheet please|export the data|data dump|export all|send csv|send excel|send me an excel|backup please',
  'req:report':
    'report|report please|monthly report|send the report|annual report|send report|make a report|make the report|inspector report|report for the inspector|compliance report|pdf|report for|generate report|generate a report|print report|printable report|i need a report|the report|create report|quarterly report|yearly report|report for the city|month report|send me the report|create a report|get report|make me a report|give me a report|can i get a report|the monthly report|report for the month|send me the monthly report|this months report|last months report|print the report|report for last month|i need the report',
  'req:share':
    'share new|share new link|new link|share again|share|share this|link to share|share link|public page|share the numbers|share page|give me a link|share with the board|share summary|sharing|share the page|share board|share our numbers|share the link|share the summary|get a link|send me a link|share with|card to share|make a share link|poster',
  'req:accepts':
    'can we take|do we take|can i put|can i put in|accept|do we accept|is allowed|are allowed|allowed|go in|okay to add|ok to add|can go in|can go in|may go in|is ok|are ok|compostable|can you compost|can we compost|do you take|can we put|does go in|can i compost|can i add|can we add|ok in the|ok to put|okay to put|go in the compost|go in the cart|accepted|can we accept|go in the drum|is it ok to put|do go in|go in the bin|go in the bucket|go in the pile|allowed in|can i throw|can i throw in|can we throw|can i toss|can i toss in|ok to compost|are we allowed|am i allowed to add|are accepted|is accepted|may i add|may i put|can they go in|can it go in|do we compost|is it ok to add|are we taking|be composted|go into the compost|are fine|is fine|in the compost|into the compost|does the drum take|can the drum take|is it okay to add|to compost|should we accept|should we take|okay to compost|do we still take|ok to go in',
  'req:language':
    'language|set language|switch to|speak|change language to|in english please|language to|talk|talk to me in|use|answer in|reply in|set language to|change to|change language|please speak|write in|respond in|i speak|prefer|can you speak|do you speak',
  'lang:en': 'english|anglais|ingles|en',
  'lang:fr': 'french|francais|frances',
  'lang:es': 'spanish|espagnol|espanol',
  'req:forget-me':
    'forget me|delete my data|remove my name|erase me|delete me|forget my name|remove my data|erase my data|remove me|delete everything about me|delete my name|erase my name|wipe my data|forget about me|remove all my data|delete my personal data|delete all my data|delete my info|remove my info|i want to be forgotten|please forget me',
  'req:role':
    'coordinator|is coordinator|make coordinator|make a coordinator|make him coordinator|make her coordinator|make them coordinator|make him a coordinator|make her a coordinator|make them a coordinator|as coordinator|role|my role|whats my role|make me coordinator|who is coordinator|whos coordinator|im the coordinator|i am the coordinator|who is the coordinator|whos the coordinator|is the coordinator|set role|add coordinator|roles|is now coordinator',
  'req:settings':
    'settings|show settings|list settings|what are the settings|current settings|show me the settings|all settings|whats set|site settings|view settings|see settings|our settings',
  'req:handover':
    'what happened|handover|catch me up|what did i miss|what has happened|whats happened|hand over|shift handover|whats new|catch up|bring me up to date|whats been happening|fill me in|what went on|what has been going on|whats been going on|anything happen|what was done|what got done|bring me up to speed|get me up to speed|what have i missed|hand off|shift report|recap',
  since: 'since|from|after|over|on|during',
  'req:new-here':
    'im new here|new here|im new|first day|my first day|i am new|i am new here|first time here|its my first day|first shift|just started here|new volunteer|new to this|first day here|how do i start|how do i get started|getting started|just joined|i just joined|new volunteer here|im a new volunteer',
  'req:room':
    'room for|room|space for|is there room for|is there room|do we have room for|do we have room|is there space for|can we fit|will fit|can we take more|have room for|fit|is there any room|any room for|room in the|space|have space for|is there any room for|room left|space left|enough room for|have space|do we have space for|do we have space|enough space for|how much room|how much space|room left in|will the drum take|will it fit|can the drum fit|fit in the drum|can the drum take',
  'req:trace':
    'can we give away|give away|can i give away|whats in|trace|where did come from|what went into|where did go|where did the compost|can we give out|ok to give away|is safe to give away|safe to use|may we give away|can we sell|can we hand out|can we use|can we spread|safe to give|can be given away|be given away|be given out|safe to spread|safe to hand out|origin of|whats been put in|what is in|traceability|where did it go|what was put in|can we release|good to give away|safe to give away|cleared to give away|where did it come from|can it be given away|ok to give out|ok to use on the garden|ready to give away|can people take|can we let people take|what came into|can we share|what all went into|whats gone into|can we distribute|ok to distribute',
  'req:feedback':
    'what do i tell|feedback for|feedback|what should i tell|what to tell|message for|what can i tell|what do we tell|give feedback to|what do i say to|what should we tell|what should i say to|thank you note for|what shall i tell|what shall we tell|feedback to|what can we tell|what do we say to|how did they do|anything to tell|news for',
  'req:closed':
    'closed|were closed|we are closed|site closed|closed from|closing|shut from|holiday from|we re closed|site is closed|site will be closed|will be closed|site shut|shutdown from|closed for|closed on|shutting down|closed until|closing from|well be closed|the site is closed|no pickup|closing for|were shut|closed next|were closed from|well be closed from|we are closed from|shut|shut on|site closed from|no one here|nobody here|off from|shut down|closing up',
  until: 'until|till|to|through|thru|til',
  'req:duty':
    'new duty|add duty|add a duty|new job|add job|remind us|remind us to|duty|add a job|new chore|add chore|add a chore|add task|new task|reminder to|weekly duty|daily duty|monthly duty|new weekly duty|new weekly job|new daily job|add a weekly job|add a weekly duty|add a task|remind me to|remind everyone to|set a reminder to|set a reminder|please remind us to',
  'set:units': 'units|unit',
  'set:target':
    'target|goal|yearly target|annual target|target for the year|year target|annual goal|yearly goal|target this year',
  'set:time-zone': 'time zone|timezone|tz|time zone to|timezone to',
  'set:day-order': 'day order|date order|date format|dates|day first|month first|date style',
  'set:summary': 'summary|weekly summary|weekly report|week summary|digest',
  'set:morning': 'morning|morning message|morning list|morning note|daily list|morning post|daily message',
  'set:rule-set': 'rule set|ruleset|rules|rule|pathogen rule|sanitising rule|sanitizing rule|standard',
  'set:recipe': 'recipe|mix recipe|ratio|mix ratio|recipe to|our recipe',
  'set:moisture': 'moisture|mc|moisture content|wet basis|percent moisture|water content',
  'set:factor':
    'factor|weighs full|full weighs|bucket factor|full weight|per full|full bucket holds|holds about|holds',
  'set:litres': 'volume|size|capacity|holds|litres|liters|gallons|is',
  'set:tare': 'tare|empty weight|weighs empty|tare weight|empty',
  'set:language': 'languages|language list',
  'set:cautions': 'cautions|daily cautions|safety lines|caution',
  'set:keep-messages': 'keep messages|message retention|keep words',
  'set:aeration': 'aeration',
  aeration: 'forced|passive|turned|static|blower|windrow|active|natural|forced air',
  'set:safety:emergencyNumber':
    'emergency number|emergency phone|emergency|emergency line|number to call in an emergency',
  'set:safety:address': 'address|our address|site address|the address',
  'set:safety:isolator':
    'isolator|main switch|isolator is|disconnect|main breaker|shut off switch|shutoff|kill switch|lock out point|lockout point',
  'set:safety:firstAider': 'first aider|first aid|first aider is|first aid person|first aider today',
  'set:accepts':
    'accept|we accept|we take|we now accept|we dont take|we do not accept|we dont accept|we now take|no longer accept|stop accepting|start accepting|accepts|do not accept|dont accept|now accept|we no longer accept|we no longer take|accepting',
  refuse:
    'we dont take|we do not accept|we dont accept|no longer accept|stop accepting|do not accept|dont accept|we no longer accept|we no longer take',
  yes: 'yes|yep|yeah|y|yup|sure|correct|right|ok|okay|thats right|exactly|affirmative|yes please|thats it',
  noans: 'no|nope|nah|n|wrong|neither|drop it|forget it|never mind|nevermind|skip it|cancel|none',
  'choice:first': 'the first|first|first one|the first one|1st|the former',
  'choice:second':
    'the second|second|second one|the second one|2nd|the latter|the last|the other|last one|the last one',
  'choice:each': 'each|apiece|per cart|each one',
  'choice:all': 'all|both|together|total|for both|in total|all together|for all|combined|the lot',
  'weekday:monday': 'monday|mon|mondays',
  'weekday:tuesday': 'tuesday|tue|tues|tuesdays',
  'weekday:wednesday': 'wednesday|wed|wednesdays',
  'weekday:thursday': 'thursday|thu|thurs|thursdays',
  'weekday:friday': 'friday|fri|fridays',
  'weekday:saturday': 'saturday|sat|saturdays',
  'weekday:sunday': 'sunday|sun|sundays',
  'set!:set': 'set|change|make|update|use|adjust',
};
