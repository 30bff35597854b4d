import type { Words } from '../../lexicon.ts';

/** What people do on a compost site, in English. */
export const doings: Words = {
  turn: 'a turn|turned|flipped|turning done on|gave a turn|gave a turn to|turned over|forked over|re turned|tuned|turned the|turnd|turned by hand|turned with the loader|just turned|aerated|got turned|was turned|were turned|have been turned|has been turned|been turned|finished turning|done turning|turning|turn done|flipped over|turned again|re flipped|gave it a turn|tossed and turned|stirred|stirred up|rolled|turned with the skid steer|turned with the tractor|turned by loader|turned with loader|turned w the loader|turned over with the loader|fluffed|fluffed up',
  cover:
    'covered|capped|blanketed|tucked in|covered up|re covered|recovered|coverd|is covered|was covered|are covered|got covered|covering|under cover|put the cover on|put a cover on|put cover on|put covers on|cover on|covered with|topped with|topped|layered|layer of|a layer of',
  'cover:tarp':
    'tarped|tarped over|tarped up|tarped down|put a tarp over|put the tarp over|threw a tarp over|threw the tarp over|put the tarp back on|pulled the tarp over|dragged the tarp over|put a tarp on|put the tarp on|put tarps on|put tarp on|laid a tarp over|laid the tarp over',
  uncover:
    'uncovered|untarped|took the cover off|took cover off|cover off|covers off|pulled the cover off|removed the cover|took covers off|opened up|cover removed|unwrapped|take off the cover|pulled back the cover|uncoverd',
  empty:
    'emptied|dumped|tipped out|unloaded|emptied out|cleaned out|emptyed|cleared|cleared out|emptied the|dumped out|tipped',
  discharge:
    'discharge|discharged|drum out|drum output|output|came out|drum discharge|drum emptied|discharging|drum output to|discharged from drum|drum dump|unloaded drum|drum unload|drum unloaded',
  move: 'swapped|switched|moved|shifted|transferred|hauled|took|wheeled|carted|transfered|moved over|pushed|carried|trucked|relocated|move done|forked|shoveled|shovelled',
  relocated: 'relocated|renamed|became|is now|now called',
  split: 'split|divided|split off|split in two|split into|splitted|split in half|split up',
  join: 'joined|merged|combined|joined with|merged into|merged with|combined with|mixed together|joined to|joined up|joined together|added onto|combined into|consolidated|consolidated into',
  start:
    'started|began|new pile|started building|start of|built|begun|started a new pile|starting|set up|opened|start|kicked off|started up|building|started filling',
  full: 'full|is full|filled up|topped out|full now|filled|at capacity|chock full|full up|to the brim|brim full',
  finish:
    'is done curing|is all done|all cured|finished|done curing|finished curing|is finished|is done|complete|completed|closed out',
  ready:
    'ready|ready for screening|is ready for screening|ready to be screened|is ready to be screened|is ready|ready to use|ready to go|ready to screen|ready for use|cured|is cured|all cured|matured|is ready to use|is ready to go|is ready to screen|is ready for use|is ready to give away|is ready now',
  deliver:
    'delivery|delivered|delivery of|dropped off|truckload|truckload of|truck load of|arrived|drop off|brought|got a load of|load of|took delivery of|a load of|got a delivery of|got delivered|new load of|truck brought|deliverd|delivry|came in|were delivered|was delivered|got in|received|restocked|restock|stocked up|bought|dumped off|truck dropped|truck dropped off|tree guys dropped|new stock|stock in|came|has come|have come|is here|are here|showed up|got dropped off|got dropped|were dropped off|was dropped off|dropped|just came|landed|dumped|got here|truck came with|came today|tree company dropped|arborist dropped|arborists dropped',
  reject:
    'turned away|refused|rejected|sent back|sent away|turned down|did not accept|wouldnt take|didnt take|turnd away|refusing|turned back|said no to|declined|reject|refused to take|wouldnt accept|did not take|didnt accept',
  screen:
    'screened|sieved|sifted|screening|screen run|ran the screen|trommelled|trommeled|ran through the screen|siftd|sieve|screened out|sifting|sieving',
  sample:
    'sample|samples|sampled|took a sample|took samples|lab sample|lab samples|sample for the lab|grab sample|grab samples|composite sample|samples taken|sample taken|sample sent|sent a sample|took sample|sampling|samples sent|pulled a sample|pulled samples|collected samples|collected a sample|sample pulled|subsamples|lab sample taken|sample was taken|samples were taken|took the sample|took lab samples|grabbed a sample|grabbed samples|got a sample|sampling done|bagged a sample|sent sample',
  lab: 'lab|lab result|lab results|lab says|result|results|lab report|lab came back|analysis|lab test|from the lab|from lab|tested at|test result|test results|lab work|lab numbers|labs|results in|came back|results back|lab analysis|lab reports|tests',
  givenaway: 'sold|gave away|given away|donated|handed out|gave out|shipped|shipped out|hauled away|sent out',
  remove:
    'took out|taken away|left the site|went to|sold|gave away|given away|collected|picked up|shipped|hauled away|took away|gave|given|spread on|delivered to|donated|out to|removed|handed out|sent to|off to|pulled|pulled out|picked out|picked|taken to|hauled to|hauled off|took home|left for|went out|went off|sent|sent off|out of|pumped out|pumped|drained|disposed of|to landfill|loaded|took to|spread|dug out|fished out|gave out|bagged up|left|dropped at|used|carried off|shipped out|sent out|went|skimmed',
  add: 'brought|brought in|dropped|sent over|sent us|gave us|brings|hauled in|carried in|threw|chucked|chucked in|shovelled in|shoveled in|shovelled|threw on|dumped on|added|add|put in|mixed|mixed in|mixd|loaded|tipped in|put|in|threw in|dumped in|tossed in|blended|fed|layered in|went in|into the mix|mix|with|plus|load|loaded in|topped up with|dumped|tipped|received|got|brought in|came in|brought|arrived|dropped off|took in|bulked|bulked with|mixing|emptied|collected|picked up|weighed|weighed in|weighed in at|weighs|weigh|weight|weighing|wt|log|logged|intake|input|in today|filled|fed in|today in|weighs in at|logging|record|scale says|on the scale|comes to|came to|clocked|chucked in|scaled|worth of|new',
  water:
    'watered|wet down|hosed|hosed down|soaked down|sprinkled|watering done|gave water|gave water to|misted|added water|added water to|sprayed|gave it a drink|wetted|wetted down|watered down|irrigated|put water on|sprayed water on|gave some water',
  washed:
    'washed|rinsed|hosed|hosed down|hosed out|hosed off|cleaned|cleaned out|scrubbed|scrubbed out|washed out|rinsed out|washed down|disinfected|sanitized|sanitised|pressure washed|power washed',
  tools: 'tools|shovels|forks|tool|pitchforks|rakes|spades',
  'chore:sweep':
    'swept|swept up|sweeping done|floor swept|swept the floor|swept floor|swept the pad|swept up the pad|sweeped|swept around|brushed up|swept pad|pad swept|sweeped up|broomed|swept out|did the sweeping|floors swept|swept the slab|swept and tidied',
  'chore:wash-lift':
    'washed the lift|washed lift|lift washed|hosed the lift|cleaned the lift|lift cleaned|cleaned lift|hosed down the lift|hosed off the lift|rinsed the lift|scrubbed the lift|washed down the lift|power washed the lift|pressure washed the lift|hosed lift|lift hosed|lift hosed down',
  'chore:wash-containers':
    'carts washed|washed carts|washed the carts|bins washed|washed bins|washed the bins|rinsed the carts|rinsed carts|carts rinsed|buckets washed|washed buckets|washed the buckets|cleaned the carts|cleaned carts|carts cleaned|rinsed buckets|rinsed the buckets|buckets rinsed|bins rinsed|rinsed the bins|hosed out the bins|hosed out the carts|bins cleaned|cleaned the bins|buckets cleaned|cleaned the buckets|scrubbed the buckets|scrubbed the carts|washed totes|totes washed|washed out the bins|washed out the carts|washed out the buckets|scrubbed the bins|rinsed out the buckets|rinsed out the carts|washed all the carts|washed all the buckets|washed all the bins|carts all washed|buckets all washed|cleaned buckets|cleaned bins|washed the totes|hosed out the buckets|hosed the carts|hosed the bins|rinsed out the bins|rinsed bins|carts are washed|washed containers|containers washed|washed the containers|carts are all washed|bins are all washed|totes are all washed|buckets are all washed|all carts washed|all bins washed|all the carts are washed|all the bins are washed|totes rinsed|totes cleaned|washed the totes out|washed the bins out|washed the carts out|rinsed the totes|bins hosed|carts hosed|bins scrubbed|carts scrubbed|bins are clean|carts are clean|bins all clean|carts all clean',
  'chore:clean-tools':
    'cleaned tools|tools cleaned|cleaned the tools|washed tools|washed the tools|tools washed|rinsed tools|rinsed the tools|cleaned the shovels|washed the shovels|cleaned shovels|cleaned the forks|shovels cleaned|tools rinsed|cleaned up the tools|disinfected the tools|tools are clean|cleaned forks and shovels|wiped down the tools|cleaned all the tools|disinfected tools|tools disinfected|hosed off the tools',
  'chore:clean-spill':
    'cleaned up the spill|cleaned up spill|spill cleaned|cleaned the spill|cleaned up yesterdays spill|mopped up the spill|spill cleaned up|mopped up spill|cleaned spill|cleared the spill|wiped up the spill|cleaned up a spill|spill is cleaned up|mopped the spill|hosed the spill|spill mopped up|cleaned up that spill|spill is cleaned|dealt with the spill|washed the spill',
  'chore:check-fan':
    'checked the fan|checked fan|fan checked|fan check|fan ok|fan is ok|fan running fine|fan works|fan is working|fan check ok|fan fine|checked the fans|fan good|fans ok|fan check done|fan tested|tested the fan|tested fan|checked blower|blower checked|blower ok|checked the blower',
  'chore:check-stop-button':
    'checked the stop button|stop button checked|tested the stop button|stop button tested|stop button works|e stop tested|tested e stop|tested the e stop|e stop works|checked stop button|tested stop button|tested the emergency stop|emergency stop tested|emergency stop works|stop button ok|emergency stop checked|checked the emergency stop|estop tested|tested the estop|tested estop|checked the e stop|e stop checked|e stop ok|checked e stop|stop button test ok|estop works|estop ok|estop checked|stop button test done|tested emergency stop|emergency stop ok|stop button good|red button tested|tested the red button|checked estop|tested the red stop button|red stop button works|red stop button tested',
  'chore:check-scale':
    'checked the scale|scale check|scale checked|checked scale|calibrated the scale|scale calibrated|scale test|tested the scale|scale ok|scale is ok|verified the scale|scale verified|scale reads|tested scale|calibrated scale|scale check ok|scale tested|scale good|scale check done|scale calibration|scale accurate|scale is good|checked the scales',
  'chore:check-thermometer':
    'checked the thermometer|thermometer check|thermometer checked|checked thermometer|ice water test|thermometer reads|calibrated the thermometer|thermometer calibrated|probe checked|checked the probe|probe calibrated|calibrated the probe|ice test|tested the thermometer|thermometer ok|ice bath|probe check|thermometer in ice|probe in ice water|ice water|thermometer tested|boiling water|in boiling water|probe reads|thermometer check ok|checked probe|ice point check|thermo check|probe in ice|ice bath test|ice bath check|calibrated thermometer|calibrated probe|thermometer in ice water|ice slush|in ice slush|slush|in slush|ice water slush|in crushed ice|crushed ice|thermometer in ice slush|probe in ice slush|thermometer in slush|in a cup of ice|cup of ice|in an ice bath|slush test|ice slush test|in ice',
  'chore:check-odour':
    'odour check|odor check|smell check|checked for smells|checked for odour|checked for odor|sniff test|odour check done|odor check done|walked the fence line|checked odour|checked odor|odour patrol|checked for smell|odor round|odour round|smell check done|checked the smell|sniff check|checked for odours|checked for odors|fence line sniff|did the odour check|did the odor check|did the sniff test|checked smells|did the odour round|did the odor round|did the smell round|smell round|smell round done|odour walk|odor walk|did the smell check|did a smell check|walked the fence|sniffed around|nose check',
  'chore:lock-gate':
    'gate locked|locked the gate|locked gate|locked up|gate is locked|locked up the gate|gate shut|gate closed|gates locked|locked the gates|closed the gate|shut the gate|gate closed and locked|all locked up|gate padlocked|locked gates|gate lockd|padlocked the gate|locked everything up|gates shut|gates closed|closed and locked the gate|chained the gate',
  'chore:inspect':
    'inspected|inspection|walked the site|site inspection|did the rounds|inspection done|walk around|walkaround|walked round|looked over|inspectd|site walk|checked the site|inspection ok|did the inspection|visual inspection|rounds done|did my rounds|looked over the site|walk round|daily inspection|weekly inspection|did a walk around|walk through|walkthrough|checked over|did an inspection|gave a once over|site check|site check done|did the walk around|did the walkaround',
  check: 'checked|check|tested|looked at|checkd|checking',
  fix: 'fixed|its turning again|its running again|its going again|its working again|it is turning again|it is running again|it runs again|it turns again|repaired|working again|back on|running again|unjammed|cleared|sorted|solved|resolved|back up|back online|works again|mended|unstuck|is fixed|up and running|restored|replaced|freed|unblocked|back to normal|fine now|ok now|good now|all good now|is back|dealt with|patched|sorted out|up and running again|turning again|thawed|thawed out|defrosted|back in action|good as new|going again|power is back|powers back|all clear|power back|fixd|power is back on|power back on|unclogged|cleaned up|running fine again|works now|working now|goes again|running ok again',
  gone: 'gone|went away|no more|cleared up|stopped|no longer|gone away|is gone|are gone|disappeared|dried up|left|all gone|is over|over|has gone|have gone|cleared|much better|better now|no sign of|under control',
  'mode:automatic': 'auto|automatic|on auto|on automatic|auto mode|automatic mode|to auto',
  'mode:manual': 'manual|on manual|manual mode|by hand|hand mode|to manual',
  'mode:off':
    'turned off|switched off|off|shut off|shut down|stopped|powered down|is off|turned it off|switchd off|shut it down',
  'mode:on': 'turned on|switched on|turned back on|started up|powered up|powered on',
  set: 'set to|switched|at|set|running|run|running on|put on|switched to|changed to|now on|turned to|turned down to|turned up to|setting|settings|turned up|turned down|rotating|rotate|turns|turning|rotates|is on|goes|rotation|cycle|cycles|kept on|left on|back to|going|set at|changed|put to|interval|set the|spinning|rotations',
  every: 'every|turn every|turn it every|rotate every|spin every|each|once every|per|all',
  'speed:low': 'low|slow|on low|min speed|minimum|low speed|to low',
  'speed:high': 'high|fast|full|max|full speed|on high|full blast|maximum|high speed|on full|to high',
  'speed:off': 'off|stopped',
  fan: 'fan|blower|fans|ventilator|air fan',
  'down-to':
    'down to|left|remaining|only|still have|have|in stock|on hand|about|low|out of|running low|we have|got left|weve got|stock|stock of|up to|now at|level|is at|are at|at|sitting at|left of|pile of|remains|stock at',
  hourword: 'hours|hrs|hr|hour|h|man hours|person hours|work hours|volunteer hours|labour hours|labor hours',
  work: 'worked|work|on site|labour|labor|put in|shift|volunteering|here for|working|spent|turning piles|volunteered|of work|of labour|of labor|on shift|logged|volunteer time|time|staff time|man hours|crew time|each|turning|did|were here|was here|put in about|clocked',
  note: 'note|nb|memo|note to self|for the record|fyi note|remark|note for the log|log note|noted|write down|jot down|please note',
};
