/** English words one letter away from a word of the trade, and words in their own right: no slips of the pen. */
export const everyday = `
    able ache aches achieve aching acme acre adder agree ain alas ale alike amp ample ana anger anna ant
    ants apache apaches ape aqua arc ares argue arise arms army arrow arrows art arts assemble ave babe
    babes babies bah bail bait bale ban bands bane bang bangs bare barn bars barton bases bash basil bat
    bates bath baton bats battling beaches beads beak beams beast beat beating beats beck becket beeping
    beers begin begs beige bel bend bets bias bid bids bind bio bird birds bite bites bits biz blacked
    blade blades blaring bless blinded bloke boa board bob boil bold bolt bombs bond bonds bong bonny
    boo booking boot booze bop bore bored borg born borrow bounce bound bounds bow boxes braces brad
    brag brain brake brat brats bree breed breeze brent brew bribe bribes bride bruise bruiser bruises
    buck bucking bug bugs build bull bulls bumped bun bunk buns burned burning busts butch buys cabbie
    cabs cage cages cain cakes cam camped camps candy cane cans cape caper cared career careful cares
    cargo carl carved cashed cashier cater cave caves cease chad chaos chaps chase chases cheat cheating
    cheek cheer chew chi chic chick chimp chimps choking chop chopper chops chow chuck clip clipped
    clips clot clover coal coco cod code coil coin coke col cola cole color colt commerce compartment
    compete condo cone cons convert coop cope cops cord cords cork corp cot cows cox cram craps crash
    crates crave creme cries crime crop crops cross cub cubs cuddle cue cuff cult cures curse cursed
    curses curt cute cuter daddies daddy dads dam damn dang dare dares dart darts deaf dean dears debate
    debt deceived decree deed deeds deer demo dent depart der dial died dies digs din ding dink dipped
    dipping dis diver doe doggy dome don dong donna donor doom dope dora dork dot douche dove drain
    draining drama dread drew drone drought drug drugs duck dull dunk dusted ear ears ease easier easy
    eater eating eats edgy eel eels eights eject elevator emerged ended ends enter eta event events
    exist extra facts faculty faggot faggots fail fails fame fang fangs far fare farming farrow fart
    farted farts fat fate faxed fay fears feast feat feed feeds feelings fest fiddle fight fights filed
    files filmed finch find finds fink fired fits fixes fixing fleet flier flights flips flood flour
    focus foggy fold folding fool fooling ford fore forms fought foul fours frail fret fried fries frog
    fund funk furs fuse gag gage gain gained gaining gala gall gasps gay gays gaze gears gee geek geeks
    gen gene genes genie gents gestapo gets giant giants gifted gills gin glad glance glare gloss goats
    gods gold gong gook gorilla gorillas grace grant grasp gray greed grew grid grim grinning grips grow
    grows guest guests guilt guns guts habit hag hail hale hallway halt hanks harm harp hart hatched
    hate hath hating hats haul haunt haze heal healing heals hearing hears heave heck heel heels height
    heist heller hen hens hep herbs herd hero hers hick hide hides hilly hind hip hips hire hires hitch
    hobo holler holt holy hong hoo hood hook hooking hoot hopped horn horns hos host hound hounds
    hovering huddle hue hula hulk hull hump hums hung hunk hut hutch idle inc ink intro irritated itch
    itches jacks jade jag jail jane jars jay jess jest jet jets jogging joins jube jug jugs juicy jun
    keel keen keeping kent key killed kin kinds knowing lace lack lacks lad lads lag lakes lama lambs
    lame lamp lands lane lanes lang laps lard lass latch laws lay lays lazy leader leading leads lean
    leaned leaning leap leaping leaps least ledge legs lens lest lice licked lied lies life lifting lilo
    lime lin lint litter live liver lives loaf loan loaned lobe lodge lodged loft logo logs lone loner
    longing loo loot lord lords loser loss loud louder louse loved lover lovers loves lull lump lung
    lure lured mac mace mach macho mack made mag maids mail major male males malls mama mambo manage
    mangy manly mar mara marge maria married marrow mars mart mashed mast matched mate mater mats maze
    meal medal meddle medic meek meet meets mel melt melts memento mental menus merrier mesa mess met
    meth mic mick midge mike mill mills milo milt mina mind minded minds miner mines mining mink mint
    mints miss missed mist mite moans moat mock mojo mold mole mood moor moose moot morse most motto
    mound mouth mow mule muse mute nacho nag nail nails narc narrow narrows nature nay neat nerd ness
    newt nicked nitro nod noose nose nosy oats oil oils ole olive ops ora orange oranges ore otter
    outrage outs oversee pace packs pact paddy pads paint pal pale palm palms palp pals panda pang pans
    panties pants parson paste pat patch patent pea peace peach peak peaks pear peas pee peed peek peel
    peeping peer peers perk perks perv pet peter peters pets phase phil pier pierce pig pigs pike pills
    pin pinch pines ping pink pins pip pipe piper pipes pit pitched pits pity plaque plaza plight plug
    plugs plum plump pod pods poet poets poison poking pol pole poles pond pony pope popped pops pores
    pork ports posing posse postal pot pouch pours pow pox prayed premise president presidents prevent
    prevents prey prince princes prom prone pros prove proved puck puke puli pulse pun punk puny pup
    pure purse puss quest quid quill quote rack raffle rag rage rags raided rail railing raised raising
    ram ramp rand rank rare rash rate rates rations rave raw ray rays reach reap rec recent reception
    recharge reed reef refugee refugees regent rents replacement rescue resent reset rests retard
    reverse reward rice riddle rides riding ring rink rip ripped ripper ripping rips rise rises risking
    rite rites river roads roar rob robe robes rod rods rogue rom roman roo rook root rope ropes rot
    rouge rover rube rude ruin ruined ruining rum rump rung ruse rushed rusty saddle sage sail sails
    sake sal sands sane sank sap sauce save saves savings sax scalp scare scared scares scent scold
    scoot screaming screw seal sealed sears seas seating seed seeds seeing seek seeking seeks seem seer
    sees selling sells sen senior serge serve sets sewn shack shaft shaking shank shave shell shelling
    shells shelly shifting shops sic sight sights silk simple sinking sins sinus sire sirree skill
    skilled skills skipped slam slap slapped slave slaves slay sleeping slipped slips slob slope slot
    slots slowed slower slowing slugged smack snob snoop snoring snot snowball snuck sod soda soft sole
    solid sons sore sorts sought sound sounds sow sox spank spare spell spelled spelling spend spies
    spit spunk squealing stab staked stale stalk stares staring stark starling starring stars startling
    starved starving stating stature stealing stepped sticking sticks sticky stiff sting stoop stork
    stow strap strapped straps stray stripped struck stuff suck sucks sudden sue sued suite sulking sums
    sung sunk suture swab sweat swell swelling swells swift swoop tab table tabs tack tad tag tags tail
    tails tale tales tally tam tame tan tang tango tapped taps tar tart taste tasted tasty taught taxes
    tea teach tearing tears teen tenor tens tent tents terror thou tiara tides tie ties tiger tight
    tights tile tiles timber tin tips tires toad toe toes tone tones tong tony toot tore tornado toss
    toupee tow tox toys tracked trade trades trail trained training traitor tram trap traps tray tribe
    tribes trick tricked trim trio trip tripping trips trot troy truce trunk tube tubes tuck tunes
    tuning turbo twas type unlocked user uses vail vain valor vase vast vault venue vest vested vet vibe
    vice vile vines visa viva voice vote voters votes vow wack wager waiter wales wand war ward ware
    warn warp warped wars wart wave wear wearing wears wedge weeping wen wench wept wheat whip whipped
    whipper whips wide wild windows wine wines wing wings wink wins wire wise wished wit witch wits wool
    wore worm worn wound wounds wrapped wright yang yarn yin york yorkers your yours youth yuck zipper`;
