"""Real English words that one slip or a blank parts from a cue's word: taken at their word (`plain` is no `pain`).

The words are those of the SCOWL lists (Spell Checker Oriented Word Lists, K. Atkinson, size 60, American and British),
with gym shorthand of our own, kept where the speller would otherwise read them as a slip; made anew by
`tests/notation/everyday_words.py` when the tables change.
"""

from bot.notation.hurt.rows import word_set

EVERYDAY = word_set(
    """
    aback abashed abashing abbr abdomens abduct abducted abductee abductees abduction abductions abducts abed
    abetter abjured abjuring abler ably abnormally abode abort abound abounding aboveboard abreast abridging
    abrupter absences absenting absents absinthe absolutes absolutest absolve absolved abused abut abutting accent
    accidental accidents accountable accounting accounts ace aced aces achieves acing acknowledge acme acmes acne
    acre acres acridest action activated actualising ad adders additive addle adds adjuring adjustable adjusting
    adjustor adjustors ado adoring adrift ads aery afar afire aflutter afoot afresh aft afterburner aftercare
    afterlife aftermaths aftershock aftershocks afterthought afterward afterword afterwords agave age aged ageing
    aggravations aggregate aggregated aggregates aggregating aggregation agitate agitates agitator agog agonisingly
    agonizingly agreeable agreed agrees aground ahem aid aide aids ail ailed ailing ails aim aims airdrop airdropped
    airdropping airdrops airhead airheads airlift airlifting airlifts airline airport airs airsick airspace airtight
    airworthy airy ajar akin alb albs alder ale ales alight alighted alighting alights alignment alignments alike
    allergen allergenic allergies allergist allergy allover allowing alloying alludes allures ally alms alone
    alongside alt alter alts ambiance amble ambulances amended amid amir ammo among amp ample amt amuck amuse amuses
    analysed analysis analyzed ancients anew angering angle angled angles angling ani animated aniseed anklet
    anklets annexing annoyingly answerable ant anted anteing anther anticking ants anvils anybodies anyplace
    anythings anytime aorta ape aped apes apiece aping appal appalling appear appeared appearing appears appease
    appeased appeasing append appendages appended appending applesauce applied apply applying appraise appraised
    appraises appreciable appreciated appreciates appreciative apprise approved approving apps apse apter arc arced
    arched archenemy archer archers archest arching archive archway arcing arcking arcs areas arena ares
    argumentative arguments aria aright arise arising ark arks armament armband armbands armchair armlets armouring
    armrest army arose arouses arranger arraying arrived arrives arrow arses art arthritic arthritics arts ash ashed
    ashes ashing ashy asked asks asp aspirate aspiration asps assassin assassinating assent assn asst aster
    astounding ate atone atones atop attach attacked attacker attacking attained attaining attender attested attired
    attires attracted attributable attributing attributive attunes auction auctioning audios aught augment auk aunts
    autumns avec aver aviator avoidable avowing aw awaking awe awed awes awhile awing awkwarder awl awoke awry ax
    axed axes axle ay aye ayes baa babbling babe babysat babysit babysits babysitters babysitting backaches backbit
    backbite backbites backbiting backbitten backboard backboards backbone backbones backbreaking backdate backdates
    backdrop backdrops backed backfire backfired background backhand backhanded backhanding backhands backing
    backings backlog backrest backsides backslash backslid backslide backslider backslides backsliding backspace
    backspaces backspin backstabbing backstairs backstop backstopped backstopping backstops backstory backstretch
    backstretches backstroke backtracking backups backward backwater backwaters backwoods backyard backyards badder
    bade badgered badgers badminton badmouth badmouthing badness bagged bagging baggy bags bah bailed bailing
    bailout bails bait baited baiting baits bake baked bakes baking bald balding baldly balds bale baled bales balk
    balked balking balks balled ballet balling ballistics balloonist balloons balloted balloting ballpark ballpoint
    ballpoints ballroom ballsy balm balms balusters ban bandaged bandages bandanas banded banding bandits bandstand
    bandwidth bandy bane banes bangle bangles bani banished banishes banishing banisters bankbook banked bankers
    banking bankroll bankrolled bankrolling banks banned banning banns bans barb barbed barbing bard bare bared
    barefoot bareness barf barfed barfing bargain bargaining bargains barged barging baring baritone baritones bark
    barker barks barn barns barrack barraging barred barring barroom barrow barrows bars bartender base based
    basement baseness bash bashes bashing basing bask basked basking basks bass bast basted basting batch batches
    batching bate bated bates bathed bather bathers bathes bathhouse bathing bathmat bathrobe bathrooms bating bats
    batten battening batter battering batters battle battling baud bawl bawls bay baying bays beach beached beaches
    beaching bead beaded beading beads beady beak beaked beaks beam beaming beams bean beaned beaning bearable beard
    bearing bears bearskin beast beasts beater beatings beau beaus beck becks bedbugs bedclothes bedding bedevil
    bedeviling bedfellow bedrock bedroll bedroom beds bedside bedsore bedsores bedspread bedspreads bedtime bedtimes
    bee beech beef beefing beelines beep beeper beeping beeps bees beetling beets beforehand befriend befriends beg
    begat beget beggared begging begins begs begun behavior beheading behinds behooving behoving beings belaboured
    belay belaying belch belching bellboy belle belled bellhop bellhops belling bellow bellowing bells bellwether
    bellwethers bellyached bellyaches bellyaching bellybutton bellying belonging belting belts beltway bemusing
    benched bender benighted bents berate berated berates berating bereaving beret berms berry berrying berthed
    berthing beset besot bespeaking bested besting bestir bestrid bestriding bests bet beta betaking betas betide
    bets betted bettered bettering betters betting bettor bevelling bewaring bias bib bibs bicker bickers bid
    bidders bidding biddy bide bided bides biding bids bight bights bigmouth biked biking bile bilking billboard
    billet billfold billfolds billing billow billowing bills billy bin bind binding binds binged bingeing binging
    binning bins biped birching birding bis bitching bitter bittern bitters blab blabbing blackball blackballing
    blackballs blackboard blacken blackening blackens blacker blackest blackhead blackheads blackjacked blacklist
    blacklisting blacks blacktop blacktopping blame blames blaming blanched blanching bland blander blanker blanket
    blanking blanks blare blared blares blaring blast blaster blasters blat blats blaze blazers blazes blazing
    bleached bleaches bleaching bleak bleakness bleat bleated bleating bleats bleeders bleep bleeping bleeps blench
    blenched blenches blenching blend blended blenders blending blends blent blessing blest blight blighted
    blighting blights blimp blinder blinders blindfold blindfolded blindfolding blindfolds blinds blindside bling
    blink blinked blinkered blinkering blinkers blinking blip blips blistering bloating blobbing bloc blockading
    blockages blockchain blockhead blockheads blockhouse blocs blogged blogging blond bloodbath blooding bloods
    bloodshot bloodstream bloodying bloom blooming blot blotching blotted blotters blotting blousing blow blower
    blows blubbered bluebell bluebottle blued bluegrass blueing bluenose blueprinted bluer blues bluffing bluing
    blunders blunting blur blurrier blurs blurted blurting blushed blushers blushing bluster blustered blustering
    blusters blustery blvd boar boarders boarding boardinghouse boardroom boardwalk boas boast boasted boasters
    boasting boat boated boaters boating boats bob bobbing bobble bobbled bobbling bobs bode bodes bodybuilding
    bodywork bog boga bogging boggling boggy bogs bogy boil boiled boilings boinking bola bold bolder bole boles
    boll bolls bolstered bolsters bolt bombing bombs bond bonding bonds boned bonehead boneheads boner boners boney
    boneyest bong bonged bonging bongs boning bonus bony boob booby booed bookcase bookend booking bookkeeper
    bookkeeping booklet booklets bookmaking books bookshop bookshops booming booms boon boor boos boosters boosting
    boot booth booting boots boozing boozy bop bopped bopping bops border bordered bordering borders bore bored
    borer borers bores born borne borrowed borrower borrowing bosh bosom bossiness bossing bossy bot botch botching
    bottled bottleneck bottles bottling bottoming bottoms bough boughs bought boulders bouncing bounded bounder
    bounding bounds bout bow bowed bower bowers bowing bowlder bowling bowls bows boxer boxes boxwood boys bpm
    braced bracelet bracelets braces brackish brad brag bragged bragging brags braiding brainchild brainchildren
    brained braining braise braised braises braising brake braked braking brambles bran branched branches branching
    brand branding brass brat brats bravery bravest braving brawling brawn bray brayed braying breach breached
    breaches breaching bread breaded breading breadth breadths breakable breakages breakdown breakdowns breakfasting
    breakneck breakpoints breaks breakthrough breakups breakwater breakwaters breastbones breasted breasting
    breastplate breastplates breasts breaststroke breastwork breathable breathers breathier breathiest breathlessly
    breathtaking breathy bred breech breeches breed breeding breeds breezing brew brewing bribing brickbat bricked
    bricking bricklayer bricklaying bridgehead bridgeheads bridgework bridging bridling brief briefing brig bright
    brightened brightening brightens brightly brightness brilliance brilliancy brilliantly brilliants brimming brine
    brings brink brinks briny brisk brisking brisks britches broached broaches broaching broiling broker brokered
    brokering bromine bronzing brood brooding brook brooked brooking broom broth brothel brothers brow browner
    brownie brownies brownout browns brownstone brownstones brows browsed browsers browsing brr bruins bruiser
    bruisers brunch brunched brunches brunching brunt brush brushed brushing bruskness brutalising bubbling buck
    bucked bucketing bucking buckle buckler bucklers bucks bud budding budged budgeted budging buds buff buffed
    buffer buffered buffering buffers buffeted buffeting buffing buffs bugbear bugged bugger buggers buggy bugled
    bugling buildings builtin bulge bulges bulk bulked bulkiness bulking bulks bulky bull bulled bulletin
    bulletining bullets bulling bullocks bullring bulls bully bullying bumbled bumbles bumbling bummed bummer bumper
    bumping bumps bumpy bun bunch bunched bunches bunching bundling bung bunging bungled bungling bungs bunked
    bunkers bunking bunny buns bunt bunted bur burbling burdening burg burgling burgs buried burliness burly burnout
    burp burped burping burps burr burred burring burritos burrowed burrowing burrs burs bursted bury burying bused
    bush bushed bushelling bushes bushiness bushing bushy busied busies busiest businesses businesslike businessman
    businesswoman busing buss bussed bussing buster busters busting bustled bustling busts busybodies busybody
    busying busyness busywork butchered butchering butches buts butte butted butter buttered buttering butters
    butting buttoning buttons butts buy buys byes byte bytes ca cab cabbed cabbing cabled cabling cabs cache cached
    caches caching cackle cackled cackles cackling cactuses cad caddy caddying cadge cadging cadre cads cafe caged
    cages cagey caging cagy cairn cake caked cakes caking cal calculuses calendaring calfskin calif califs calipers
    calk calked calking calks callable caller callings calloused callousing callously callousness calls callused
    callusing calmer calms cals calved calving cam cambering camel cameo camp camped campers campiest camping camps
    campuses campy cams candied candle candling candying cane caning canning cannonball cannonballs cannoning canny
    canonising canonizing cans cant canted canteen canteens cantered canting canto cants capable cape caper capers
    capes caplets capped capping capsize captured caraway card carding cared careened careening carefree caressed
    caressing caret careworn cargoes caring carjacked carjacking carmine carnal caroling caroming carousers carouses
    carp carpals carped carpel carpentry carpetbag carpeting carpets carping carport carps carryall carryout cars
    carsick cart cartilages carting carts carve carves carving cased caseload caseloads casement casework cash
    cashed cashing casing cask cast casting castings catalysed catalysis catalyzed catcall catcalled catcalling
    catchall catcher catchers catchier catchings catchword catchwords categorise cater catered catering caters cats
    cattail catting catwalk caucuses caucussed caulking causes causing caveman cavemen caves cavorting caw caws
    cease ceases ceasing ceilings cell cellar cello cells censused cent center centers centrists cerebra cerebral
    cessation cessations cession cessions chad chafes chaff chaffed chaffing chaining chains chainsaw chainsawing
    chairing chairlift chairlifts chairman chairperson chairs chairwoman chalkboard chalking chalks chalky chammies
    chammy champ champed champing champs chancing changeable changeling changeover chant chanting chaplains chaplet
    chaplets chapped chapping chaps chapt chapters char charging charming charring chart chartered charting chase
    chased chasing chats chattered chatterer chatting cheap cheapness cheat cheating check checked checking checks
    cheekbones cheeking cheeky cheep cheeping cheeps cheer cheering cheers cheesing chem chess chestnuts chests chi
    chic chick chicks chid chidden childbearing childcare childlike chile chiles chili chilies chill chilled chiller
    chillers chillest chillier chillies chilliest chills chiming china chink chinking chinning chino chins chinstrap
    chinups chip chipped chippers chipping chips chit chock chocked chocking chocks chocolates choir choke chomping
    choosing chop chopped chopper choppers choppiest chopping chops chore chose chow chowed chowing chroming chubby
    chucking chuckled chuckles chuckling chucks chug chugging chumming chump chumps chums chunks chunky churches
    churl churls cider cinch cinched cinches cinching cincture cinctures cindering circuiting cite cited cites
    citing clack clacked clacking clacks claiming clam clambered clambers clammed clamming clamoured clampdown
    clampdowns clamping clamps clams clan clanging clank clanked clanking clanks clans clap clapped clapper clapping
    claps clash clashed clashes clashing clasp clasped clasping clasps classing classmates classroom classy clatter
    clattering clatters clauses claws clay cleaned cleaners cleaning cleans cleanser cleanups clearer clearest
    clearing clearinghouse cleat cleave cleaved cleaver cleaving cleft clenches clerking cleverer cleverness clew
    clickable clients climaxing climbs clime clinch clinched clincher clinches clinching clinging clink clinked
    clinking clinks clip clipper clippers clipping clippings clips cliques clit cloaked cloaking clobber clobbers
    clock clocked clocking clocks clod clog cloistered cloisters clomp clomped clomping clone cloned clones cloning
    clop clopped clopping clops closeout closer closest closet closets cloth clothesline clothespin clothespins
    clots clotted clotting clouded clout clouting clove clover cloves clown clowning cloy cloyed cloying clubbing
    cluck clucked clucking clucks clue clueing cluing clump clumped clumping clung clunked clunkier clustered
    clustering clusters clutched clutches clutching clutter cluttered cluttering clutters coaching coachman coal
    coast coasted coasting coat coating cobble cobbled cobbling cock cocked cocking cockles cocks cocky cod coda
    code codes coding coed coercing coffeehouse coffees coffer cog cogitated cohered cohering coiled coiling coin
    coked cokes coking col colas colder colds colicky collage collages collared collaring collars collate collated
    collates collating colleges colludes collusion colon colorblind coloreds colorfast coloring colors colourblind
    coloureds colourfast colouring colours cols colt columns coma comas comb combing combs comeback comebacks
    comedown comedowns comer comers comet comets comfortably comings comm commanded commander commanders commanding
    commando commandoes commandos commas commend commends commentating commented commenting comments commons
    communes communion compaction companies companionable companions companionway comparison compassed compassion
    compete competed competes complacent complainant complainer complainers complaisant complected completed
    completer completes completest complex complexes compliant complied complies complying component compote
    compress compresses compressing compression compressor comprised compromise compromises compulsion compulsions
    compute concave concealed concealing conceded conceding conceited conceived conceiving concern concerns
    concerted concertina concerting concession concessions conches conclusion conclusions concreted concreting
    concurred concurrent concurrently concurring concussions condemned condemning condensed condoes condoms condone
    conduced cone cones conferred conferring confessed confession confided confine confined conform conforming
    confound confounding confront confronting confuse confusedly confuser confusers confuses confusing confusions
    confute confuted confutes congaing congenital congested conjoint conjured conjuring conking connected conned
    connotative connoting consciences consciously consciousnesses conscripted conscripting conscription consecrate
    consecrated consecrating consed consent consented conserved conserving considerate considered considering
    consign consigning consigns console consoles consolidating consort consorted consorting constable constantly
    constrain constrained constraining constrict constrictions constrictive constrictor constricts constructed
    constructing construction constructions constructor consumed consummating cont contacted contend contended
    contender contentedly contenting contents contest contested context continence continent continued contorted
    contraception contracted contractile contracting contractor contractors contradiction contradictions
    contraptions contrasting contributing contrition controls contuse contused contuses contusion contusions
    convened convening convent convents converged converging conversed conversing conversion conversions converted
    converting convicted convince convinces convulsed convulsing convulsive coo cooed cooing cook cooked cooker
    cookers cooking cookouts cooks cooky cool cooling cooped cooper cooperation cooperative coopering cooping coot
    cop cope coped copes copier coping copped copperhead copperheads coppers coppery copping cops copter copulas
    copy cord corded cords cored cores coring cork corking corks corm corn corned cornering cornerstone cornerstones
    corny corp cosiness cosplay costarred costarring costing cot cote cotes cots cotter cottoning cottonmouth
    cottons cottontail cottonwood couched couches couching countable countdown countdowns counteraction
    counteractions coup coupe coupled couples couplet couplets coupling coups coursing courting cove coverall
    covered covering coverlet coverlets coves cow cower cowering cowhands cowing cowl cows coy crab crabbed crabbing
    crabby crabs crackdown crackdowns cracker crackers crackings crackle crackled crackups cradles cradling crafting
    crag crags cram crammed cramming crams craning crank cranked cranking cranks cranny crape crappiest crapping
    craps crashes crashing crass crate cratered crating craving craw crawling cray craze crazed crazing creakier
    creaks cream creaming creamy crease creased creasing create created creates creatine creating creation creators
    creek creeks creeping cremating cress crest crested cresting crewed crewing crib cribbed cribbing cribs cricket
    cricking cricks cried crimp crimped crimping crimps cringing crinkles crinkling crippled cripples crisping
    critters croak croaked croaking crock crocked crocks crooking crooks croon crooned crooning crop cropped cropper
    croppers cropping crops crossbar crossbones crossfire crossing crossover crosspiece crosspieces crosswalk
    crossword crosswords crotches crotchet crotchets crouched crouches crouching crowding crowing crown crowned
    crowning crows cruise cruised cruises cruising crumbed crumbing crumble crumbled crumbles crumbling crumbly
    crumpet crumpets crumpling cruncher crunchier crunchiest crusading crush crushes crust crusted crusting crusty
    crutch cry cryings ct cu cub cubed cubic cubs cud cuddled cuds cued cuffed cuffing cull culled culling culls
    cult cultured cum cums cunning cunt cupboard cupping cur curbed curbing curbs curd curds cure curer cures curing
    curious curled curling curly currant currents curry currying curs curse cursed curst curt curtail curtaining
    curtains curved curving cushioning cushions cushy cusp cusps cuss cussing custom customary customers customs
    cutback cutbacks cute cuter cutlass cutlets cutoffs cuts cutters cutthroat cutting cuz czar dabbed dabbing
    dabbled dabbling dabs dado dados dafter daintiness dainty dairying dais dale dam dame dammed damming damnable
    damning dampened dampening damping damps dams dancing dandle dandled dandles dandling dandy dank danker dapple
    dappling daring darken darkens darkroom darling darn darned darning dart darting darts dash dashed dashing dated
    dateline dating daughters daunt daunting dawdling dawn dawning daybreak daylight daylights daytime dazzling dbs
    dd dding dds deadbeat deadbeats deaden deadens deader deadlier deadliest deadlines deadlock deadlocked
    deadlocking deadlocks deadwood deaf deafened deafness dealing dealings deals dealt dean deans dear dearly
    dearness dears deathless debauched debt debts decease deceased deceasing deceive deceiver decently decisive
    deckhand deckhands decking decks decline decompressed decrepit dedicated deed deeded deeding deeds deem deemed
    deems deepened deeper deeps deer defaced defamed defeated defecate defecates defected defectors deferred
    deflated deflected deform deforming deforms deft defuse defused defuses defusing deifying dejected dejecting
    delegated deli delicious delight delighting delights delimited delimiting delinted deliriously delirium
    deliriums delis dell dells delta deltas demanded demanding den denials dense dent dental dentistry dents
    deported deprecated depreciate depressed depressing depression depressive dept deranging desecrated desirous
    desists desk desperate desperation detachable detaches detaching detailed detained detected detectors detests
    detracted devil deviously devolved devolving devoting devouring dew dibble dibbled dibbles dibbling dice diced
    dices dicing dick dicker dickers dickey dicks diction diddle die dies dieting differed differently differing
    diffident diffing dig digger digs dike diked dikes diking dill dills dilly dime dimes dimmer dimple dims din
    dine ding dinged dinginess dinging dings dink dinky dinner dinnering dinning dins dint dip dipped dipping dire
    directors dirk dirtiness dis disappears disasters disbands disbursed disbursing disclose disclosed discloses
    disclosing disco discolor discolors discolour discolours discomfit discomforted discomforting discomforts
    discourages discover discovered discovering discredit discreditable discrediting discredits discs dish
    dishonored dishonoured disinter disks dislocations disorient disorients disowning disproved disproving diss
    dissed disses dissing dissociate dissociated dissociates dissociating dissociation distantly distaste distastes
    distending distorted distorting distorts distressed disturbingly ditched ditching dithered dithering dive dives
    diving dizzied dizzier dizzies dizziest doable dock docked docket docking docks docs doctoral doctoring doddered
    dodge doe doer doers doff dogfight dogging doggone doggy doghouse dogs dogwood doings dole doles doling doll
    dollar dolled dolling dolloping dolt dolts dome domes doming dominos don donating dongle dongles donning donor
    dons donut doodling doom dooming dooms doorbell doorman doormat doors doorstep doorsteps doorstop doorstops
    doorway dope doped dopes dopey doping dopy dork dorky dorm dorms dos dose dosed doses dosing dot dote dotes doth
    doting dotting doubled doublet doubling doubly doubting douching dough doughier doughtier dour dove doves dowel
    doweling dowelling dowels downbeat downbeats downfall downfalls downhill downhills downing download downloadable
    downloading downloads downplay downplayed downplaying downplays downright downscale downsize downstream downtime
    downtrodden downturn downturns downwind downy dowsing doze dozes dozing drab drabs draft drafting dragged drain
    drainer draining dram dramas drams draping draughted draughtier drawback drawbacks drawbridge drawbridges
    drawing drawl drawling draws drawstring dray drays dread dreaded dreading dreads dreaming dredging dregs drench
    drenched drenches drenching dress dressed dresses dressing dressings drew dribbler dribblers dribbles driblet
    dried drifts driftwood drilled drilling drinkable drip dripped dripping drippings drips driveled driveling
    drizzled drizzling drone droning drool drooled drools droopier droplet droplets dropout dropper droppings dropsy
    dross drought drowned drownings drowns drowsing drubbed drubbing drubs drudging drug drugging drugs drunker
    drunks dry drying drys dual dub dubbed dubbing dubs duchy duck ducked ducking duckling ducklings dud duded dudes
    duding duds duel dueled duelist duelling duels dues duff duffer duffers duke dulled dulling dullness dulls dully
    dulness duly dumb dumber dumbly dumbness dummy dump dumped dumping dumps dun dune dung dunged dunging dungs dunk
    dunking dunner dunning duns dupe duping dusk dust dusted dustiness dusting dusty dwell dwelled dwelling
    dwellings dwells dwelt dwindles dye dyes ea earaches earfuls earl earls earn earned earning earns earphone
    earphones earring earshot earsplitting earthen earthing easel eases easiness east easygoing eat eater eaters
    eating eats eave eclectic ed edged edger edgings edgy eds eel eels eery effecting egghead eggheads egging eider
    eight eighteens eights either ejected ejecting eke eked ekes elapsing elastics elate elated elates elating
    elbowing elbowroom eldercare elders elected electing elector electoral electors electrical electrician electrify
    electron electronic elegant elephants elevate elevates elevator elf eliciting elides eliding eliminate
    eliminates elite ell ells eloping elsewhere emailing ember emended emending emery emitting emo emoting employ
    employe employed employees employer employers employes employing employs empresses emptier empties enable
    enacting encoding encoring endearing endears ended endings endowing ends enduing enduring enema enervated
    engaged engorged enjoin enjoining enjoins enjoyable enjoys enlarge enlarger enlargers enlarges enlists enormity
    enormously enraged ensuring entente ententes entering entice enticing entirety entrapped entrapping entrusting
    enuring envoy envying eon equating era eras erase erased erasing ere erecting erection erections erects err errs
    erupting escape escapee escapes escaping especial espouse espying est ester esters estrange estranged estranges
    estranging eta etch etched etching ether eve evenhanded evenly evens event ever everybody everyday everyplace
    everywhere eves eviction evils evolved evolving ewe ewes exacting exampled excepting exchanging excluded
    excluding excruciatingly executing executors exerting exes expandable expanded expanding expands expectant
    expediting expelling expend expended expending expiating expiration exploited exploiting explore explored
    explorer explores exploring explosions explosives exponent exporting exposed exposing expounding expressed
    expressing expression expressive extendable extending extends extent extras extremer extremes eyeball eyeballing
    eyeballs eyebrows eyeglass eyelets eyepiece eyepieces eyesore eyesores eyestrain eyeteeth eyetooth eying fa
    fable fabled faced facelift facelifts facepalm facepalming facepalms faces facet faceting facing fact faction
    factored factoring facts factual fad fades fads fagged fagging fags failings fain fainer fainest faintest
    faintly fairground fairness fairs fairway fairways fait fake faked fakes faking falloff falloffs fallout fallow
    fallowing falter fame famed familial familiarising familiarly familiars families famished famishing fancy fang
    fangs fanning faradized farce farces fare fared fares faring farm farmer farms farrow farrowed farrowing farrows
    fart farther farthing farthings farting farts fascinates fascists fastening faster fasting fastness fasts fate
    fated fates fathead fatheads fathered fathering fatherly fathers fating fatness fats fatten fattening fattier
    faultfinding faulting favorite favoured favourite fawning fax faxed faxing faze fazed fazing feared fearful
    fearing fears fearsome feasibility feast feasting feat feather feathers feats feature featured features fecal
    fed feds fee feed feeding feedings feeds feelingly feinting feints felines feller felling fellows fells felon
    felted felting felts fem fen fencing fend fended fender fending fends fer feral ferry ferrying fest fetal
    fetched fetching fetter fettered fettering fetters fettle fever feverishly fevers fey fez fiat fibre fibs
    fiction fictions fiddle fidgeting fie fiend fiends fife fifes fifteens fig fighter fighters fights figment
    figments figuring filament filaments filch filching file filed files filing filings filled filler fillings fills
    filly film filming filters fin finagling finalising finance finch finches finder finders finds fined fineness
    finer fines finessed finessing fingerboard fingered fingering fingerings fingernails fingerprinted fining finis
    finises finishes fink finking finnish finny fins fir firearm firearms fireball fireballs firebomb firebombing
    firebreak firebug firebugs firefight firefighting firefly firehouse fireman fireplace firepower fires fireside
    firetrap firetraps firewall firewalls firewater firewood firm firs firsthand fish fished fishing fists fitness
    fits fitter fitters fitting fittingly fiver fives fixable fixating fixative fixer fixes fizz fizzling fizzy fl
    flab flack flag flagging flail flailed flailing flails flairs flak flake flaked flakes flaking flamage flame
    flamed flamers flames flaming flan flank flanked flanking flapped flapper flappers flaps flashback flashbacks
    flashed flasher flashers flashest flashier flashily flashlight flashlights flashy flask flatbed flatcar flatfeet
    flatfoot flats flatten flattened flattening flattens flatter flattered flatterer flattering flatters flattery
    flatting flattop flatware flaunting flavoring flavorings flavoured flavouring flavourings flaw flawed flawing
    flax flay flayed flaying flays flea flecking fled flee fleecing fleeing flees fleet fleeting flesh fleshed
    fleshes fleshing flew flexing flextime flick flicked flickering flickers flicking flicks flied fliers flies
    flight flights flighty flinched flinching fling flinging flings flint flints flinty flippant flipped flipper
    flippers flippest flippies flippy flirting flit flits flitted flitting float floated floater floats flock
    flocked flocking flocks floe floes flog flogged flogging floggings flogs flood flooding floorboard flooring
    floors flophouse floppier floppies floss flossing flour flouring flouted flouting flowed flower flowering
    flowers flowing flown flows flue flues fluids flunk flunking flunks flunky flurry flurrying flush flusher
    flushes flushing fluster flustered flustering flusters flute flutes fluting fluttery flux flyer flyers flyover
    flypaper flysheet flyspeck flyspecking flytrap flytraps flyweight flyweights foal foaling foaming fob fobbing
    focussed foes fog fogey fogy foiled foiling foils foist foisting foldaway folder folks followings follows
    followups foment foments fondu font foo food foods fool fooling footballer footballs footbridge footbridges
    footfall footfalls foothill foothills foothold footholds footing footlights footlocker footloose footman
    footnoting footrest foots footsore footstep footsteps footstool footwork fop fops fora forages foraying forbear
    forbearing forbears forceps forcible ford forded fording fords fore forearmed forearming forebear forefeet
    forefront foregoing forehand foreheads foremost forenoon fores foresting forevermore forewarns forgave forge
    forged forger forges forgets forgetting forging forgiven forgives forgo forgoes forgoing forgone forked forking
    forklift forklifts forks formal formally formative formed formidable forming forms forswearing fort forte fortes
    fortunes forum forwarding forwards forwent fosters foul foulness founded founding foundling founds fount
    fourfold fours fourscore foursome fourteen fourteens fowl fox foxed fr frack fracked fracking fracks fraction
    fractions frag fragiler frags framing france franking frat fray frayed fraying freak freaking freaky freckles
    freckling freedoms freehand freehold freeholds freeing freeload freeloading freeloads freeman freestanding
    freethinking freeway freewill freighting french freshman freshwater fret friable fried friended friending
    friendship friendships frigates fright frightening frightens frighting frigidly frill fringing frisking fritter
    frittered frittering fritters frizzing fro frock frog frogging frond frontages fronting frontispiece
    frontispieces frontrunner frontrunners fronts frost frosting frown frowned frowning froze fruiting fruition
    frumpy fry frying ft fuck fucker fucking fuddled fuel fueling fuelled fuelling fuels fullback fullbacks fulled
    fullest fulling fulls fully fulness fum fumbled fumbles fumbling fums functional functioned functions fund
    funding funked funking funky funnel funneled funneling funnelled funnelling funner fur furl furls furnished
    furnishing furring furrowed furrowing fuse fused fusing fussiness fusty fuzz fuzziness fuzzing gab gabbed
    gabbing gabbled gabbling gabby gable gabled gabs gad gads gaff gag gage gages gagged gagging gags gained gainful
    gainfully gaining gainsaid gainsay gainsaying gainsays gait gale gall galled galling gallowses galls gals
    gambled gambles gambling game gamey gamma gamy gang ganged ganging ganglia ganglier gangling ganglions gangs gap
    gape gaping gaps garb garbed garbing garble garbles garbling garbs gardened gardenia gardenias gargled gargling
    garnering garnished garroted garroting gas gases gashes gashing gasp gasped gassed gassing gate gated gates
    gather gathered gathering gathers gating gauging gaunt gauntness gavel gay gayer gays gaze gazed gear geared
    gearing gears gee geed geeing geek geeks gees gel geld gelled gelling gels gelt gem gems gen gender gene
    generals genial genitalia genitive gens gent gentians gentile gentled gentlefolk gentlemanly gentlemen gentler
    gentles gentlewoman gentling gently gents germs gestated getaway ghosting ghosts ghostwrite gibbons gibe gibes
    gibing gift gifting gig gigging giggle giggled giggles giggly gild gilding gill gills gilt gin gingersnap
    gingersnaps ginning gins gird girding girls girt gist giveaway givens gladdening gladdens gladder glade glades
    gladiator gladness glads glamoured gland glare glared glares glaring glassing glassy glaze glazed gleaming glean
    gleaned gleaning glides gliding glinting glisten glistened glistening glistens glitter glittered glittering
    glitters glittery gloaming gloated gloating globe globes globing glop gloss gloved gloving glow glowed glower
    glowering glue glues glum glut gluten gluts glutting gm gnash gnashed gnashing gnus goad goading goalies
    goalkeepers goat gob gobbed gobbing gobble gobbled gobbledegook gobbling gobs god gods godsons gofer gofers
    goggling goings gold golds golfed golfing golfs goner gong gonk goo goodby goodbyes goodbys goodnight goods
    goodwill goody goof goofed gook gooks goon goop goose gooses goosing gore gores goriness goring gorse gosh
    gouging gov govt gown gowning grabber grace graced graces gracing grackle grackles grad grade graded grading
    grads grafting grain grains grainy gram grams grandads grandchild grandchildren granddads granddaughters
    grandfathered grandfathering grandfathers grandmas grandmothers grandparent grandpas grands grandsons grandstand
    grandstanding grange grant granting grape grapefruits grapes graphing grappled grappling grasping grasps
    grasshopper grassing grassy grate grated grates gratings grave graved graveling gravels gravely graven graver
    graves gravest graving grayer grayest grayish grays grazes grazing greased greasepaint greases greasier
    greasiest greasy greater greatness greats greed greek greenback greenbacks greenest greenhouse greening greens
    greet greeting grep grepped grepping grew greyer greyest greys gribble gribbles grid grids griefs grieving
    grilled grilling grim grime grimes griming grin grindstone grindstones grinning grins griped griping grippe
    grist grits gritting groan grokking groom grooming grooving grope gropes groping gross grossing grouch grouching
    groundbreaking grounding grounds groundswell groundswells groundwork groupers grouping grouses grousing grouting
    grove grovel grovelling groves growling grown grows groynes grub grubbed grubbing grubby grubs grueling
    gruelling grumbler grumblers grunting guessing guff guiding guitars gulf gulfs gull gulled gullet gulling gulls
    gulp gumdrop gumdrops gummed gummy gun gunner gunners gunning gunny guns gunshots guppy gush gushed gushes
    gushing gushy gust gusted gusting gusts gusty gutsy guttered guttering gutters gutting guys gyms gypping
    gyrating habitable habitat hack hacked hacking hackish hackle hackles hacks hag haggling hags hail hailed
    hailing hails hair hairiest hake hakes hale haled hales halfback halfbacks halftime halftimes haling hall hallow
    hallowing halls halo halt halted haltering halting halve halves halving hamburger hamlets hammed hammerhead
    hammerheads hammerings hamming hamper hampered hampering hampers hamstringing hamstrung handbag handball
    handballs handbill handbook handcar handcuff handcuffing handcuffs handedness handheld handiest handing
    handlebar handled handler handling handmade handout handpick handpicking handset handsets handsome handspring
    handstand handwork handy hangdog hanged hanger hangings hangman hangnail hangnails hangout hank hankering hanks
    hanky happening happenstance happier harboured hardback hardbacks hardball hardcover harden hardened hardening
    hardheaded hardheadedness hardier hardiest hardily hardline hardtop hardwood hardy hare hared hares haring hark
    harked harkened harkening harking harm harms harness harp harpies harpist harpy harrow harrowed harrowing harry
    harrying hart harts harvest hash hashed hashing hasp hasps hassled hassles hassock hassocks haste hasted
    hastened hastening hastes hastiest hasting hasty hat hatch hatches hatching hater haters hath hatred hats hatted
    hatter hatters hatting haughtier haunches haunting haunts haven haves haw hawed hawing hawking haws hay hayed
    haying hays haze hazed hazes haziest haziness hazing headband headbands headboard headdress header headers
    headfirst headiest headless headlight headlights headline headlock headlocks headlong headphone headphones
    headrest headrests headroom headset headsets headstone headstones headstrong headwaters headway headwind
    headword headwords heady healer healing heals healthcare heaped heaping heaps hearing hearkened hearkening hears
    hearsay heartaches heartbreak heartbreaking heartbreaks heartbroken hearten heartening heartfelt hearth
    heartiest heartiness hearts heartsick heartthrob heartthrobs heartwarming hearty heated heath heather heating
    heats heave heaved heavies heaviest heavyset heavyweight heavyweights heckling hectors hedge heed heeded heeding
    heedless heeds heeled heeling heft heightened heightening heightens heir heirs hellos helm helpings helpline
    helpmate helpmates helps hem hemp hems hen hens hep heppest herb herbs herd herded herder herds hereabout
    hereafter herewith heritages herniae hernias hero heros herring herringbone herself hes hew hews heydays hgt
    hick hicks hid hide hideaways hiding hie hied hieing hies highball highballs highboy highchair highjacked
    highlight highlighted highlighter highlighting highlights highness highs hightail hightailing highway highwayman
    hiit hiked hiker hikes hillside hilltop hilly hilt hilts hims himself hind hindering hinds hing hinge hinged
    hinging hings hinting hipped hippest hippies hipping hippy hire hires hiring hiss hissed hisses hitching hitter
    hitters hive hives hiving ho hoard hoarder hoariness hoarse hob hobble hobbles hobby hobnails hobs hoc hock
    hocked hocking hocks hod hods hoe hoed hoes hog hogs hoisting hokey holder holders holdings holdout holdover
    holdups hole holed holes holing hollow hollowing holy homebodies homebody homeboy homecoming homed homemade
    homered homering homeroom homes homesick homespun homestretch homestretches homing hone honed hones hong honk
    honked honking hood hooding hoof hoofing hooked hooking hooks hookups hooky hoop hooped hooping hoops hoot
    hooter hooting hoots hopes hoping hopper horde hording horn horribly horridly horrors horseback horsed horsefly
    horseman horseplay horsepower horses horsetail horsewoman horsey horsy hos hose hoses hosing host hostage hosted
    hosting hothead hotheaded hotheadedness hotheads hothouse hotkeys hotlink hotness hotshot hotshots hound hounded
    hounding hounds hourglass housebound housebreak housebreaking housebroke housebroken houseclean housecleaning
    housed housefly household households househusband househusbands housekeeper housekeeping housemaid housemother
    housetop housewarming housewife housework housing hove hover hovering howl howling hows hp hrs ht hub huddled
    hue hues huff huffed huffs huffy hug huger hugging hugs hulk hulking hulks hull hulled hulling hulls hum humbled
    humbles humbling humbly hummed humming hump humped humping humps hums hunched hunches hunching hundredfold
    hundreds hundredweight hundredweights hungary hungered hungering hungers hunk hunker hunks hunt hunted hunter
    hunting hunts hurl hurled hurling hurls hurry hurrying hurtled hurtling husbanded husbanding husbandry hush
    hushed hushes hushing huskiness husky hussy hustings hut hutches huts hying hype hyped hyperventilation hyphened
    icebound icecaps ices icings icky icy idealised idealising idealist idealized idealizing ideals ideas idk ids
    ifs ilk illness ills imams imbalance imitate imitated imitates imitating imitation immuring imp impending
    impinged imploded imploding implored imploring implying imported importing imposed imposing impounding impress
    impresses impressing impression impressive imprinting improper improperly improvements improves improvident
    improvise improvised improvising impugning inability inaction inactive inane inaner inboard inbound inc
    incapable inced incense inch inched inches inching incident incing inclose inclosed incloses inclosing incomes
    incoming incomplete incompletely inconsiderate incredibly incurring ind indecisive indented indexing
    indifference indifferent induing inelastic inexpensive infantry infantryman infeasible infected infer infested
    infighting inflame inflames inflammations inflatable inflate inflates inflating inflected inflicted info
    informally informative informed informing infrared infused infusing infusion ingrain ingraining ingrate inhabit
    inhabitable inhabiting inhaled inhalers inhales inhering inherit inheriting inherits injected injecting injures
    injurious injustice inking inkling inks inkwell inky inlaying inmates inn innermost inning inpatient inputting
    inquires inquiries inquiring ins insanely insaner insensibility insensibly insensitively insensitivity insider
    insides insight insoles inspiration instance instants instill instilling instruct instructed instruction
    instructors instructs insufferable insulated insuperable insupportable insure insured insures insuring int
    intenser intently inter inters intoning intro intrust intrusted intrusting inure inured inures inuring invents
    investing invitation invoices involving ion ionising ionizing iran irate ire irk ironing irregularity irregulars
    irrigate irrigated irrigates irrigating irrigation irritably irritant irritants irritatingly irritations
    isinglass ism isolated issued itching ix jabber jack jacket jacking jacks jade jaded jading jag jagged jags jail
    jailed jailing jails jam jambs jams jangle jangled jangles jangling jape jars jaunt jaunting jaunty jawboned
    jawbones jaws jay jays jazz jeep jeeps jell jelled jelling jello jells jellybeans jellying jest jested jesting
    jet jets jetted jetting jewelling jib jibbed jibbing jibs jiffy jig jigged jigger jiggering jiggers jigging
    jiggle jiggled jiggles jiggling jilt jilted jilting jimmying jingle jingled jingles jingling jitters jive jives
    jiving jobbed jobbing jobs jock jocks jog joggling join joins jointing joist joists joked joker jolly jolting
    jolts jot jots jotting jouncing joust jousting jowl joying joyriding joystick jug jugging juggling jugs jumble
    jumbles jumbling jumpier jumpsuit jumpy junction junctions juncture junctures junk junking junky juries jury
    justice justness jut jute juts jutting kale kbs keels keened keener keening keens keepers keepsakes keg kegs
    kelp ken kenneled kenneling kennelled kens kerbing kerbs kettles keyboard keyboarding keynoting keypunched
    keystone keystones keystroke keyword keywords khan kickback kickbacks kicker kickers kickoff kickoffs kickstand
    kicky kiddoes kiddy killers killings killjoy kiln kilning kilns kilo kilos kilt kilter kilts kin kindling
    kindred kinds king kingly kings kink kinked kinking kinks kinky kiss kissed kisses kissing kit kite kited kites
    kith kiting kits kitten kittens knack knacker knead kneecapping kneeing kneeled kneeling kneels knell knelling
    knifed knifes knight knighting knightly knit knits knitted knitters knitting knob knobs knocker knockers
    knocking knockout knocks knotting knowable knowings knowledgeable knows knuckled knucklehead knuckleheads
    knuckling koan koans kong kook kooks koshered koshering la lab labeling labelling labium laborer laboring labour
    labourer labourers labouring labours labs lace laced laces lacing lacked lacks lacy ladder ladders lade laded
    lades lading lads ladybug ladybugs ladyfinger ladyfingers ladylike lag lager lagged lagging lags lain lair lake
    lakes lam lama lambing lame lamely lament laments lamer laminated laming lammed lampblack lamppost lampposts
    lams lanced lancing land lander landings landlords lands landward lane lank lanky laos lap lapped lapping laps
    lapsing lapwing larch larches lard larded larder larders larding large larges lark larked larking lase lased
    laser lases lash lashed lashes lashing lasing lasso lasting lasts latch latches latching lateralling latex lath
    lather lathered lathering lathers lathing laths latter laud lauded lauding laughingly launched launches
    launching lavished lawful laws lawsuit lawyer lax laxer layaway layering layers layoffs layover laypeople
    layperson lays laywoman laze lazing lazybones lazying lbs lea leach leached leaching lead leaded leading leads
    leaf leafed leafing leafs leakages leaky leaner leanings leanness leans leap leaped leaping leaps learn learned
    learning leas lease leased leashing leasing least leaved leaven leavened leaves leavings led ledge lee leeched
    leeching leeds leek leeks leering lees leftists leftmost leftover lefts lefty legalised legalising legalized
    legalizing leggin legging leggins legion legions legislate legislating legislative legroom legwork lei leis
    lemmings lend lender lending lends lens lenses lent lept lesions less lessening lessons lest letdown letdowns
    letter lettered lettering letters levelheaded levelheadedness leveling levelling lever levering lewdness
    liaising lib libelers libelling lice lick licked licking lickings licks lids lief lien lies lieu lifeblood
    lifelike lifeline lifelong lifer lifesaving lifetime lifetimes lifework liftoff liftoffs lighten lightened
    lightening lightens lighters lighthearted lightheartedness lighthouse lightly lightness lightninged lightnings
    lightweight lightweights lii likeable liken likeness likening likens liker likest lilt lilted lilting lima limb
    limbering limbless lime limed limes liming limit limitings limn limned limning limo limper limpet limpid limps
    limy lineages lineament lineaments lined lineman lines lineups linger lingered lingerie lingeringly lingerings
    lingers liniment liniments lining linkages linked linking linkups lint linting lionising lionizing lipread
    lipreading lipstick lipsticking lire lisp lisped lisping lisps listed listened listens listing listless liter
    literate liters lithe litre litter littered littering litters littler live lived lively liven livening lives
    living lix lo loadable loaders loading loadstar loadstars loadstone loadstones loaf loafers loafing loam loan
    loaned loaners loaning loans loathing lob lobbing lobbying lobe lobed lobes lobs locating loci lockable locket
    lockjaw lockouts lockstep lockups loco locus lode lodes lodger lodgings loft lofting logbook loge loges logged
    logger logging logo logoffs logrolling logs loitering loiters lolled lone lonely loner longed longhand longing
    longings longs longtime lookout lookouts loom loomed looming looms loon loons loop looped looping loops loosed
    loosen looser looses loot looted looters looting loots lop lope loped lopes loping lopped lopping lops
    lopsidedly lord lords lore lorn losers losses loth lots loudmouth lounges lounging louse louses lousiness lout
    loveable loveless lovemaking lover loves lovesick lowdown lowed lowercase lowers lowing lowly lows lox loxes
    lubber lucked lucking lucks lug lugging lugs lull lulled lulling lulls lumber lumbers lumped lumping lumps lumpy
    lunched lunches lunching lunged lunging lured luring lurking lush lushes lushness lust lusted lustiness lusting
    lusty lute lutes lye lynched lynching mace maced maces machined machines macing madcaps maddened maddening
    madders madhouse madly madness mads madwoman magma maid mail mailed mailing mails maims main mains majoring
    majors maker makers makeshift makeups makings male males malingering mall malls malt mamas mamma manacling
    manageable managed managers manages mandate mandates mandrill mandrills mane manes manfully mange manged manger
    mangle mangled mangles mangling mangoes mangy manhandle manhandles mankind manly manor manpower mans mantes
    mantling mantoes many map mapped mapping maps mar marbled marches marching mare mares marinated marinating mark
    marked marker marketed marketing marking marooning maroons marred marring marrow marry marrying mars marsh mart
    marts marvellously marvelous mash masher mashers mashes mashing mask masked masking mass massed masses massing
    mast master masterworks match matches matching mated materialising math mating mats matt matte matted mattered
    mattering matters mattes mattocks matts maundering maw maws maxes maxing maybes maydays mayor maze mazes mead
    meal mean meanings meanness means meant meatball meatballs meats meaty med meddle meddled mediator meek meekness
    meet meetinghouse meetings meg megahertz megaphone megaphones megaton megs meld melded mellow mellowing melons
    melt melts membership memberships men menage mend mender mending mends menial menials menses mentioning menus
    mercy mere merrymaking mes mesa mesas mesh meshed messages messes messing messy met meta metal mete metes mettle
    mew mews mfg mg mi mice middleman middles middleweight middleweights middy midgets midmost midnight midpoint
    midpoints midstream midsummer midterms midways midweek midweeks midwife midwifes midwinter midyear midyears mien
    miens mightiness mighty migrant migrants migrate migrates migrating mike miked mikes miking mil milch mile miles
    mill miller milling mills mils mime mimes mince minced minces mincing minded minding minds mined miner mines
    mingle mingled mingles mingling minibike minibikes minibus minim minimum minimums ministry mink minks minoring
    minors minster mint minted minting mints minuets minuses minute minuted minuter minutest minx mire mires misc
    miser miserly misers misled missions missive mist misted mister misters misting misused misuses misusing mite
    mites mix mixed mkay ml mo moat moats mobbing mobs mobster mock mocked mocking mocks mod mode modest mods moire
    moist moistening moister mold molded molder moldering molding molds mole moles moleskin molt molting mommy
    monarch moneyed monger mongered mongering monickers monitoring monkeying monkeys monsters monument moo mooching
    mooed mooing moon mooned mooning moons moor moos moose moot mooting mop mope moped moping mopped mopping mops
    moraine moraines moralized morally morasses moreover mores morn morns mortally mortaring morticing mos moss
    mosses mote motes moth motherboard mothered mothering motherly mothers mottle mottling mould moulder mouldering
    moulders moulding mound mounded mounding mounds mounted mounting mousers mousiness mouthful mouthing mouthpiece
    mouthpieces mouths mouthwatering moveable movements mover movie mow mowed mower mowing mown mows mpg mu mucking
    mucks mucky muddied muddle muddles muddying mudslides muff muffed muffing muffle muffler muffles muffs mugging
    muggings mugs mulch mull mulled mullet mulling mulls mumble mumbler mumbles mumbling mummer mumps munch munched
    munches munching mung munged mungs munition murders murk murmuring muscled muse mused mushed mushes mushiness
    mushing mushroom mushrooming musk muskiness musky muss mussed musses mussing mussy mustache mustaches mustering
    mustiness musts musty mutating mute muted muter mutes muting mutinying mutt mutter muttered muttering mutters
    mutton nab nabbed nabbing nabs nagged nailing naked name nap napes napped nappies nappiest napping nappy naps
    nark narked narking narrated narrating narrowest narrows nary nasalized natl natty naught naughtier nauseam
    nauseate nauseates nauseatingly nave nay nays nearby neared nearing nearness nears neat neatest neatly neatness
    necked necking neckline necks necktie needlepoint needless needlework needling needy neg neighbored neighboring
    neighborly neighbors neighboured neighbouring neighbourly neighbours neighs nemeses nephews nerd nerds nerved
    nerves nervy nest nested nesting nestling net nethermost nets nett netted netter netting nettle nettled nettling
    nevermore newborns newer newline newsboy newsflash newsman newspaper newspaperman newspaperwoman newsreel
    newsstand newsworthy newsy newt newts nib nibbled nibbling nibs nicer niche nick nickel nickels nicking nickles
    nicks nieces nigger nigh nightcap nightcaps nightclothes nightfall nightlife nightly nightmares nights
    nightshirt nightstick nighttime nighty ninepin ninepins nineteen nineteens ninny nipper nippiest nit nite nites
    nits nix nixed nobodies nod node nods noes noise noising nominating nominative nonbreakable nonce nonempty
    nonesuch nonevents nonmember nonmembers nonreturnable nonsense nonstick nonstop nonsupport nonviolent nonwhite
    nonzero nook nooks noose nordic norm normalcy normalising normality normative nos nosebleed nosebleeds nosed
    noses nosey nosh noshing nosiness nosing nosy notable notarising notching note nothings noticeable noticeboard
    notices notifying noting notwithstanding notwork novice nth nu nubs nude nuder nuked nuking null nulls numbering
    numbest numbly numbs numbskull numskull nun nuns nursed nurses nurtured nurturing nut nutshell nutting oaf oar
    oars oat oats obeys obit obits object objection objections objective objector obliges obliquely obsessions
    obsolete obtainable obtaining obtains ocher oddball oddballs odder odds ode odes odor offbeat offbeats offed
    offending offered offering offhand offline offload offloading offloads offsets offshoot offshoots offside
    offspring oft ogling oiled oilskin oily oink oinking okaying okays okie olden oman omega omen omens omit
    omitting oneness oneself onetime onrushing onus oops op opals opener openhanded openings openwork operating
    opine opined opining opponents oppress oppresses oppressively oppressor ops opt oracles orally oranges orate
    orating ordaining ordering ore ores others otter ounce oust ousted ouster ousting outages outback outbacks
    outbound outbreak outbuilding outburst outbursts outclass outclasses outclassing outcome outcomes outdoes
    outdoing outdone outdoor outed outermost outgoes outgoing outgrowing outhouse outing outlaid outlast outlasting
    outlawing outlaying outlets outline outlook outlooks outlying outnumber outnumbering outnumbers outpatient
    outperform outperforming outplay outplayed outplaying outplays outpost outposts outputting outraging outreach
    outreached outreaching outright outrunning outruns outs outsets outshining outsize outsold outspread
    outspreading outspreads outstanding outstation outstay outstayed outstaying outstays outstretch outstretched
    outstretches outstretching outtake outwearing outweighs outworn oven ovens overact overacted overacting
    overactive overacts overages overanxious overbear overbearing overbite overbites overblown overboard overbook
    overbooked overbooking overbore overborne overcame overclocked overcome overcomes overcoming overcook overcooks
    overdo overdoes overdoing overdosed overdoses overdraw overdrawing overdrawn overdue overeat overextend
    overextending overextends overflow overflowing overfull overgrowing overhand overhands overhang overhanging
    overhangs overheads overhear overheard overhearing overhears overheat overheated overheating overheats overhung
    overjoy overjoying overjoys overkill overlaid overlay overlaying overlie overload overloading overloads overlong
    overlook overlooked overlooking overlooks overlying overmuch overnight overpass overpay overpaying overplay
    overplayed overplaying overplays overpower overpowering overprice overprices overprinted overprotective overran
    overrate overrated overrating overreach overreached overreaching overreacted overreacting overreaction
    overreacts overriding overrode overrule overrun overrunning overruns overs oversaw overseas oversee overseeing
    overseen oversensitive overshoot overshooting overshoots overshot oversight oversize oversleep oversleeping
    oversleeps overslept oversold overspecialising overspread overspreading overspreads overstay overstayed
    overstaying overstays overstep overstepped overstepping oversteps overstuffed overt overtake overtaking
    overthink overthinking overthought overthrew overthrow overthrowing overthrown overtime overtimes overtly
    overtone overtones overtook overturn overturned overturning overturns overuse overused overview overweight
    overwork overworking overworks overwrite owe owes owing owl owning owns oxen oxygenating paced paces pacing pack
    packed packing packs pact pacts paddle padlock padlocked padlocking padlocks padres page pager pages paginated
    paid pail pailful pailfuls pails painfuller painkiller painter painting paintings paints paintwork pair paired
    pairing pairs palace palatable palate palates paled paleface paler pales paling pall palled pallets palliates
    palliating palliation palling palls palmed palming palmistry palmy palpates palpating palpation palpitate
    palpitated palsy pamper pampering pan panel paneling panelist panes pang pangs panicking panned panning pans
    pant panted panty pap papal papas papaw paperback paperbacks paperboy papergirl papering papers paperweight
    paperweights papery paps par paralyse paralyses paralysing paralytic paralytics paralyze paralyzes parch parches
    parching pardoning pare parent parental pares paris parked parkour parks parkway parlayed paroles parred parring
    parroted parroting parry parrying pars parse parsed parses parsing parson partakes particular particularity
    particulars parting partnering partners partway party partying pas passable passages passbook passel passer
    passes passion passions passive passkey passkeys passport password passwords pasta paste pasted pasting pastoral
    pastorals pasts pasty pat patches patching patchwork pate patellae patellas patent patents pates path patients
    patine pats patter pattered patterning patters patting paunches pauper paused pave pavements paving paw pawls
    pawn pawned pawning pawns paws payable paydays payed payer paying payload payloads payment payoffs payroll pays
    paywall paywalls pbs pct pea peace peach peak peaking peaks peal pealed pealing peals pear pearlier pearly pears
    peas pease peat pebbling pecking pecks peculiarly pecuniary peek peeked peeking peeks peel peelings peels peeped
    peeper peeping peeps peerages peered peering peerless peers peeved peeving peewees peg pegging pegs pelt pelts
    pelves pelvic penalised penalising penalized penalizing penciling pencils pend pended pending pends penes
    penitence penknife penlight penlights penlite pennant penning pens pension pensions pent peon peopled peoples
    pep pepped peppiest pepping peppy peps perceived perceives percentages percents perceptive perchance perching
    perfecting perfects perforating perforce perform performed performing perilled perilling periods peritoneum
    perking permeating perming permissive perms persevere persona personable personages persons perspiration pert
    perused perusing peso pestling pests pet pets petted petting petty pew pews phalluses phish phishers phoned
    phoney phony photoing phreaking physic pi pianos pica pickaxe picked picker pickers pickings pickling pickpocket
    picks pickups picky pictorial pictorials pictured pictures piddle pie pieced piecework piecing pied pieing
    pierce pierces piercingly piercings pies pig pigged pigging pigment pigments pigs piing pike piked piker pikes
    piking pilaster pile piled piles piling pill pilled pilling pillowcase pillowing pillows pills pimp pimped
    pimping pimple pinball pincushion pine pined pines pings pinhead pinheads pining pinked pinkeye pinkies pinking
    pinks pinned pinning pinpoint pinpointing pinpoints pinprick pinpricks pinto pintoes pints pip pipe piper piping
    pipit pipped pipping pips pirates pis pisses pita pitch pitched pitches pitching pitfall pitfalls pith pits
    pitting pity pitying placed placement placer places placing plaice plaid plain plains plaint planar plane planed
    planes planing plank planked planking plans planter planting plants plastered plasters plastics plated platelet
    platelets platen platens platformed platforming platforms plating platters playable playact playacted playacting
    playacts playback playbacks playbill playboy player playgoer playground playhouse playmate playmates playoff
    playoffs playpen playroom plaything playthings pleaded pleading please pleases pleasing pleasure pleated
    pleating pled plied plight plighted plighting plights plodders plonked plonking plop plopped plopping plops plot
    plotters plotting ploughing plow plowed plowing ploy ploys pls plucking plumbed plumbers plumbing plump plumper
    plumping plunges plunging plunk plunking plunks pluralized pluses plush ply plying poaching pock pocked
    pocketbook pocketing pocketknife pocking pocks pod podcasting podding pods poet poi poignancy poignant pointing
    pointy pokers pokes pokey pokier poking poky pol pole poled poles policing poll polled polling polls polo pols
    pomading pomp pond ponds pone pones pooching pooh poohed pool pooled pooling poop pooping poops poorest
    poorhouse pope popes popover poppa pore pored pores pork porn portable portage portages ported portend
    portending portents porting ports pose posed poser poses posh posing posit positing poss postbox postdate
    postdates postdoc posting postman posturing posy pot pots potter pottered pottering potting potty pouch pouching
    pouncing pound pounded pour pouring pout pouting powder powdering powerhouse powering powerlessly powers pox pp
    praised praiseworthy praising prate prates prating prawned prawning pray prayed praying prays pre preach
    preached preaches preaching preambling preciously precision predates preen preening prefect prelates premising
    prep prepping preps pres presaging presentable presenting presently presents preset presiding pressed pressings
    pressman pressmen pressured pressures pressuring pressurise pressurising pressurize presume presuming pretexts
    prettying preventable preventative preventive previous prey preyed preying preys priced pricing prickle prickled
    prickles pricklier pricy priding pried priests primate primates priming primping print printing prise prising
    privateer privateers privately privater privatest privatise privatises privatizes privets privies prizing pro
    probable probates probating probes probing problematical process processed processing procession proctors
    profaning profess professed professing profession programing project projected projecting projects prom prone
    prong proofing prop propel propels properer propertied property propped propping props prorates prorating
    prosecuting prospecting prosper protected protection protections protective protects proteins protestant
    protester protesters protestor protestors protracting proved proving provosts prowess prowlers prowling prows
    pruning pry prying psalm psalms psst psyching pt pub public pubs puck pudding puddled puffball puffballs puffier
    puffin puffins puffs pug pugs puke pukes pullback pullbacks puller pullet pulley pullout pullover pullup pulp
    pulped pulping pulps pulpy pulsations pulsed pulses pulsing pump pumped pumper pumpers pumps pun punch punches
    punching punchy punctual punctuate punctuates punctured punished punishing punk punning puns punt punted punting
    punts pup pupa pupal pupped pupping pups pureeing pureness purge purl purled purling purls purpler purples
    purring purse pursing pus pushed pusher pushers pushiness pushover pushups pushy puss pusses putative puts putt
    puttered puttering putters puttied puttying pwn pwns qua quack quacking quadricepses quaintness quarrying quash
    quashed quashes quashing quay quays queen queened queening queered queering queers quelling quenched quenching
    ques queueing quibbled quibbling quickness quicksand quid quids quieting quilting quine quipping quire quirk
    quits quitters quitting quote racehorse racer racers raceway racked racks racy radiate radiated radiates
    radiation radiators radioactive radioing radios rafter rafting rage raged rages raggedy ragging raging rags
    ragtime ragweed raid raiding rail railed railing rails raindrop raindrops rained rainfall rainfalls raining
    rains rainwater rainy raising rake raked rakes raking rally ram rambled rambles rambling rammed ramming ramp
    ramps rams ranched ranches ranching randoms range ranged ranger ranging rangy rank ranking rankle rankles
    rankling ransack ransacking rant ranted ranting rants rap rape raped rapes raping rapped rapper rappers rapping
    raps rapture raptures rare rared rareness rares raring rash rasher rasp raspiest rasping rasps rat rates
    ratified ration rats ratting rattling rave raved ravel ravelling raves raving ravished ray rays raze razed razes
    razing razor razz reachable reaches react reactions reactive reactor reactors readable readied readjust
    readjusting readout reads readying realest realisable realises realism realist realists realizes realty ream
    reaming reap reaper reaping reappearing reappears reared rearing rearm rearming rearmost rearms rearranging
    rears reasonable reasoning reasons reassure rebating rebellion rebellions rebinding rebinds rebuilding rebuking
    rebuses recalling recalls recanting recasting recd received receiver receives recent recenter recitals reciting
    reclined reclining reconvened reconvening recording recoverable recoveries recovers recovery rector rectors
    rectory recurred recurring redbreast redcaps redden reddens redeemed redhead redheaded redheads rediscover
    rediscovering redistributing redneck redo redrawing redress reds redskin reducing reduction redwood reed reeds
    reedy reefing reek reeking reeks reeled reels reenacting reentry reeving ref refereed refereeing referees reffed
    reffing refiling refilling refined refining refinished refinishing refocusing reformed reformer refracting
    refraction refrained refueling refuelling refuge refuges refunded refunding refute refuted refutes refuting
    regaining regains regaled regally regarded regent regular regularly rehabbed rehashing rein reined reining reins
    rejected rejecting rejection rejoined rekindled rekindling relabelling relapsed relapsing relating relation
    relegated relied religious relished relishing relived reliving remain remainder remained remaining remaking
    remanded remanding remands remarkable remarking remembered remembering remembers remind reminder reminders
    remitted remitting remnant removed remover removing rend render rendered rending rends rent rental rentals
    rented renter renters renting renumber reopened repainted repairable repaired repairing repairman reparation
    repealing repel repelling repels replaying repleting replied replying reporting reposing repressed repressing
    repression repressive reprise reprised reprising reproved reproving reptiles repulsing reputing rerouting
    rerunning rescinded rescinding rescuing reselling resent reserved reset resettling reside resided residing
    resold resolute resolutely resolve resolver resolves resolving resorted resorting resounding resp respecting
    respelling respirator respired respires respite respondent responds restart restarting restarts restate restated
    restates restating restive restoration restored restrain restrained restraining restrooms rests resulted
    resulting resuming retailed retain retained retainer retaining retains retaking retarded retarding retch retched
    retches retching retelling retired retiring retorted retorting retouching retracting retraction retrained
    retraining retried retrying returnable returnee returnees reuse reused reuses reusing rev revaluing revealing
    revel reveling revelling revellings revels revere revered revering reverting revery reviewing reviling revised
    revising reviving revoking revolted revoltingly revolve revolved revolver revolves revving rewinding rewinds
    rheumatic rheumatics rhombi rhythms ribbed ribbing ribbon rice riced rices rich ricing ricking ricks ridding
    riddle ride rider ridging riding rids rife riffing rifling rift rifting rig rigged rigging righted righter
    righting rightist rightly rightmost rightness rights rigs rile riles riling rill rills rim rime rimes rimmed
    rimming rims rind rinds ringed ringer ringers ringlet ringlets rings ringside rink rinse rinsing rioting ripe
    ripoffs ripper rippled rippling rir risen riser rises rising risked rite rites riven rm roach roaching road roam
    roaming roan roans roar roaring roast roasted rob robbed robber robbery robbing robe robs rocked rocket rocks
    rocky rod rode rods roe roes rogered rogering roiled roiling roistered roisters role roles rollback rollbacks
    roman rome romping rood roof roofing rook rooked rooking rooks rooming roommates rooms roomy roosting root
    rooting roped ropes roping rose roses rosiness rosy rot rotated rotates rotation rotations rote rots rotten
    rotting rotund rouble roubles rouge roughed roughhouse roughing roughneck roughnecking roughs rouging roundabout
    rounded roundhouse rounding roundups rouses rousing rout router routing rove roved rover roving rowel roweling
    rowelling rowels rower rowing rps rte rub rubbed rubberising rubberneck rubbernecking rubbers rubbishing
    rubbishy rube rubes rubier rubles ruddy rude rue rued rues ruff ruffed ruffing ruffled ruffs rug rugby rugged
    rugs ruin ruing ruining ruled rum rumbaed rumbaing rumble rumbled rumbles rumbling rumblings ruminated
    ruminating rummer rummy rumoured rump rumple rumpled rumples rumpling rumps rums runabout runaround runaway
    rundown rundowns rune runes rung rungs runnel runnels runnier runoffs runt runts ruptures ruse rushes rusk
    rustiness rusting rustled rustling rusts rut ruts rutted rutting rye sable sac sacked sacking sacks sacs sad
    sadden saddened saddening saddlebag saddled saddles sadly sadness safekeeping safeness safer safes sag saga
    sagas sage sages sagged sago sail sailed sailing sails saint saints sake sale sales sallow salt salting saluting
    salve salves salving sameness sames sample sampled sanction sanctioning sandbag sandbank sandbar sandblasting
    sandbox sanded sanding sandlot sandman sandpaper sandpapering sands sandstone sandy sane sang sank sans sap
    sapling sapped sappiest sapping sappy saps sarape sari sarong sash sass sassed sassing satay sate sated sates
    sating satinwood satisfies satrap saunaing sauntered sauntering saunters sausages saved saver saves savings
    savoring savoured savouring sawhorse sawing sawn saws sax sayings scab scabbed scabbing scabby scabs scad scag
    scags scald scalding scaled scaling scalloping scalped scalping scalps scaly scam scamming scamp scan scanning
    scant scanting scapegoat scapegoating scapulae scar scare scarfing scaring scarring scars scat scathing
    scattered scattering scatters scatting scenting scheming schoolbook schoolboy schoolchild schoolchildren
    schooldays schoolgirl schoolhouse schooling schoolmate schoolmates schoolroom schoolwork schoolyard scoff scoffs
    scold scolded scone scones scooping scooting scoots scoping scoreboard scoreless scorer scores scorning
    scotching scots scouring scout scouting scow scrabble scrabbled scrabbles scramble scrambler scramblers
    scrambles scrammed scramming scrap scraper scrapes scrapped scrapping scrappy scraps scratched scratches
    scratching scrawled scrawling scream screeched screening screenplay screenplays screens screenshot screenshots
    screwing scribbled scribbling scrimping scripting scrolling scruff scruffs scrunch scrunched scrunches
    scrunchies scrunching scrunchy scrupled scruples scrupling scudding scuffing scull sculling scumming scurf
    scurry scurrying scuttling scything sea seal sealed sealing seam seamed seaming seams sear searching seared
    sears seas season seasons seated seating seats secondhand seconding sect section sections sectors sects secular
    secured secures secy sedating sedation sedge seed seeded seeding seedling seedlings seeds seeings seek seeking
    seeks seeming seep seeped seeping seeps seer seers sees seesawing seething selectors selfsame sell selling sells
    semen send sender sending sends sensational sensed sensible sensitise sensitised sensitises sensitively
    sensitives sensitize sensitized sensitizes sent sentenced sentience sequence sequences serape sere serenest
    serer serf serous serve serving setback setbacks settee setter setters setting settings settler settles seven
    sever severed severer severest severs sew sewed sewing sewn sews sex sexing sexting sh shabby shack shackles
    shackling shacks shad shade shadiness shading shads shaft shafted shafting shag shagging shags shah shake
    shakiness shaking shale shall shallot shallows shalt sham shambled shambles shambling shame shaming shammies
    shamming shammy shams shank shanks shaped shapes shaping shard share shares shariah sharing shark sharking
    sharks sharpened sharpeners sharpens sharpers sharpest sharping sharps shattered shattering shatters shave
    shaving shearing sheathed sheathes sheathing shebang shebangs sheds sheen sheep sheepish sheer sheering sheeting
    sheets shelf shell shelled shelling shells shelving sherds shes shielded shies shifting shifts shifty shill
    shilled shilling shills shim shimmering shimming shimmy shimmying shims shinbones shine shines shingling shining
    shinned shinning shinny shinnying ship shipped shippers shipping ships shire shirking shirring shirted shirting
    shirts shirtsleeves shirttail shirtwaist shirtwaists shits shitting shlepping shlock shoaling shocking shod shoe
    shoed shoeing shoelaces shone shoo shooed shooing shook shoon shoos shootings shootout shopkeeper shoplift
    shoplifting shoplifts shopped shopper shopping shoptalk shopworn shore shored shores shoring shorn shortages
    shortcake shortchange shortchanging shortcoming shortcut shorted shortens shortest shortfall shortfalls
    shorthand shorting shortish shortlist shortstop shortstops shortwave shouldered shouldering shout shouts shoved
    shoveling shoving showcase showdown showdowns showering showgirl showiness showman shown showoff showoffs
    showpiece showpieces showplace showroom shows showstopper showy shred shredder shredders shrew shrewder shrews
    shrieking shrift shrike shrilled shriller shrilling shrimping shrink shrivelling shriving shrouded shrouding
    shrugged shrugging shtick shuck shucked shucking shucks shudder shudders shun shunning shuns shunt shunting
    shushed shushing shutdown shutdowns shuteye shutout shuts shutter shuttered shuttering shutters shuttling shying
    sibling sic sickbed sicked sicker sicking sickness sicks sics sidearm sidearms sidebar sidebars sideboard
    sideburns sidecar sidecars sided sidekick sidekicks sidelight sidelights sideline sidelong sidereal sides
    sidesaddle sideshow sidesplitting sidestep sidestepped sidestepping sidesteps sidestroke sidetracking sidewalk
    sidewalks sidewall sidewalls siding sidle sidling sift sifted sifter sifting sifts sigh sighing sighs sighted
    sighting sightings sightless sightread sights sightseeing signal signalling signboard signing signpost
    signposting signposts silk silks sill sills silt silted silting silts sim simile simmer simmering simpering
    simpler simpleton simplex simply sims sin sincerest sine sinfully sing singe singed singeing singer singers
    singing singled singleton singling singly sings sinkable sinks sinned sinner sinning sins sinus sipped sipping
    sir sire sires siring sirs sissy sisters sitars site sited sites siting sitter sitters sittings situ sixteen
    sixteens sizeable sized sizer sizes sizing skating skeet skein sketch sketched skewer ski skid skidding skids
    skies skiff skiing skill skills skim skimming skimp skimped skimping skimps skimpy skims skinhead skinheads
    skinning skinny skins skintight skipper skippering skirting skis skit skits skittered skittering skitters skulk
    skulking skulks skullcap skullcaps skulls skunking sky skying slab slabbed slabbing slabs slacked slacking
    slacks slag slags slaked slaking slam slamming slams slanders slang slanting slap slapped slashed slashes
    slashing slat slate slates slathered slating slats slaughter slave slaving slaw slay slayer slayings slays sled
    sledded sledding sledgehammering sledgehammers sledging sleek sleeking sleeks sleepier sleepily sleepwalk
    sleepwalking sleepyhead sleepyheads sleet sleeting sleets sleety slenderness slew slewed slewing slice slicer
    slices slicing slick slicked slicker slickers slicking slickness slicks slide slider sliders slideshow slighted
    slighter slighting slightness slights slim slimming slims sling slinging slings slink slinking slipcover
    slipknot slipknots slipper slippers slit slithers slits slitter slitting slob slobbered sloe sloes slog slogged
    slop sloped sloping slopped slopping sloppy slops slosh sloshing slot slots slotting slouching sloughing
    slowdown slowdowns slowpoke slows slue slues slug slugging slugs sluiced sluicing sluing slum slumber slummer
    slumming slump slumping slums slunk slurp slurped slurping slurps slush slut sluts sly smacker smacking smacks
    smalls smart smarted smarting smartness smarts smash smashes smattering smearing smell smelled smelling smells
    smelting smiled smiles smiley smiling smirking smit smite smith smiting smitten smock smocked smocking smocks
    smokehouse smolder smolders smoothing smother smothered smothering smothers smoulder smoulders smug smuggle
    smuggled smuggles smuggling smut snack snacked snacking snagging snags snail snailing snails snaked snaking
    snapper snappers snappier snappiest snappish snapshot snapshots snare snarfing snaring snarks snarling snatching
    sneak sneaking sneering sneezed sneezes snicker snickered snickers snide sniff sniggered sniggering snip sniping
    snipped snipping snippy snips snit snitch snits snivelling snooping snoots snoozing snore snorer snores snort
    snorted snorting snorts snot snots snotty snout snow snowed snowing snub snubbed snubbing snuck snuff snuffer
    snuffers snuffs snug snuggle snuggled snuggles snuggling soak soaking soaks soap soaped soaping soaps soared
    soaring soars sob sobbing sober sobering soberness socked sockets socking sod sodden sodding soft softball
    softness soggy soiling sol solace solar solder solders soled soli solids solo solos sols solve solved solves
    somebodies someday somehow someones someplace somersaulted somersaulting somethings sometime sometimes someway
    somewhats somewhere sonar soon soot sooth soothing sooty sop sopped soppiest sopping soppy sops sorceress
    sorehead soreheads sorest sorrowed sorrowing sorry sorter sortied sorting sorts sos sot sots sough soughed
    soughing soughs soulmate soulmates sounder soundings souping sour sourcing sourer souring sourness sours souse
    sousing southbound sow sowed sower sowing sown sows sox soya soybeans spa spaced spaceman spaceship spaceships
    spacesuit spacewalk spacewalking spacial spacing spacy spade spading spain spake spam spammed spamming spams
    span spangled spangles spangling spanking spanks spanned spanning spans spar spared spareness sparer spareribs
    spares sparing spark sparked sparking sparkle sparkled sparkler sparklers sparring spars sparse spas spate spats
    spatter spattered spattering spatters spatting spatulas spawned spawning spay spayed spaying spays speakeasy
    speaks spear spearing spec speccing specialising specials speck specking speckles speckling specs spectral speed
    speeding spellbound spelled spelling spellings spelt spending spewed spewing sphincters spice spiced spicing
    spieling spies spike spiking spill spilling spills spilt spinals spindling spines spinet spinoff spinoffs
    spinster spiny spiral spiraling spire spiriting spitball spitballs spite spitfire spiting spits splash splashed
    splashing splat splats splattered splatting splay splayed splaying splays spliced splicing spline splines
    splinter splinting splittings splurging spluttered spluttering splutters spoiled spoiling spoken spokes sponged
    sponger sponges sponging spongy spoof spoofing spook spooking spool spooling spoonbill spooned spooning spoons
    spoor spooring spore spores sporing sport sported sporting sports sporty spotlight spotlighted spotlighting
    spotlights spotted spotters spottier spouses spout spouting spouts spraining sprains sprang sprat sprawled
    sprayed spraying spreading spreeing sprig sprightly springboard springing springs springtime springy sprinkling
    sprint sprinted sprinter sprinting spritzing sprouting sprung spryness spud spuming spunk spur spurn spurning
    spurred spurring spurs spurting sputter sputtered sputtering sputters spy spying squab squabs squad squads
    squalled squalling squared squaring squashes squashier squashy squatted squatters squaw squawked squawking
    squaws squeaked squeaking squeal squealed squealing squeals squeegee squeegeed squeegees squeezer squeezers
    squint squinted squinting squire squired squiring squirm squirmed squirted squirting squirts squish squishes
    squishier squishing squishy stabbings stability stabled stabler stables stabling stack stacked stacking staff
    staffing stag staged staggeringly staggers staging stags staid stain stained staining stains stair stake staked
    staking stale staled staling stalk stalked stalking stall stalling stammered stammering stampede stampeding
    stamping stanching standings standoff standoffs standout standpoint standpoints stands standstill stank staple
    stapling star starching stare stared stares starfish stark starkness starlight starling starlings starred
    starring starter starters startled startles startling startups starve starves starvings stash stashed stashing
    stat stated stating stationing stats stave staved staving steadying steak stealing steam steaming steeling steep
    steeped steeping steeps steering stellar stem stemming stems stepbrother stepchild stepchildren stepdads
    stepdaughters stepfather stepfathers stepmom stepmoms stepmother stepparents steppe steppes steppingstone
    steppingstones stepsister stepsons sterling sternums stew stewed stewing stews stickier stickies stickpin
    stickpins sticks stickups sticky stiffed stiffen stiffener stiffeners stiffens stiffest stiffing stiffs stifling
    stile stiles stilling stillness stills stilt stilted stinger stingier stingily stingy stink stinking stinks
    stint stinting stints stippling stir stirring stirs stoat stock stocking stockings stocks stoke stokes stoking
    stole stoles stolid stomachaches stomaching stomachs stomp stomped stomping stomps stoned stoner stoners
    stonewall stonewalling stonewalls stonework stoney stoning stony stools stoop stooped stooping stoops stoplight
    stoplights stopover stopper stoppering stopwatch storage store stores storing storming storybook stoutness stove
    stoves stow stowed stowing stows straddled straddling strafed strafing straggle straggled straggler stragglers
    straggles straggling straggly straightaway straightedge straightedges straightened straightening straightens
    straighter straightest straightforward straights strainer strainers strains strait straiten straitened
    straitening strand stranded stranding strangely strangers strangest strangle strangler stranglers strangles
    straps strawed strawing straws stray strayed straying strays streak streaked streaking streamed streaming
    streamline streams strengthen strengths strep stresses stressing stretcher stretchers stretchier stretchy strew
    strewed striated stride striding strife strikeout striker strikes striking stringed stringer stringers stringier
    stringing strings stringy strip stripe striped striping stripling stripped stripper stripping strips strive
    strived striving strobe strode stroked strokes stroking strongbox stronger stronghold strongholds stropped
    stropping strops strove strung strut strutting stub stubbing stubble stubby stubs studding studentship
    studentships stuffiness stuffing stuffs stumbler stumblers stumped stumping stun stunk stunning stuns stunt
    stunting sturdy stutter stutterer stutterers sty styling suave sub subbed subbing subconscious subjected
    subjecting subjective sublimed subs subside subsides subsidies subsidised subsidized subsidy subsisted subsumed
    suchlike sucked suckered suckering suckled suckles suckling sucklings sucks suction suctioning sue sued sues
    suet sufferer sufferers sufferings sufficed sufficing suffixed suffixing suffocated suffocates suffocation
    suffused suffusing sugaring suing suitable suitcase suite suiting suits sulfured sulfuring sulky sullenly sum
    summed summered summerhouse summering summers summertime summery summing summit sump sumps sums sunbather
    sunbathers sunbathing sunblock sunblocks sunburn sunburned sunburning sunburns sunburnt sundae sundaes sunder
    sundered sundering sundown sundowns sundry sung sunk sunlamp sunlamps sunlight sunning sunny sunrise suns
    sunscreen sunsets sunspot sunspots sunstroke sup superb superbest superego superhighway superior superlative
    superman superpower supers supersize superstars supervise supervised supervises supervision supervisors
    supervisory supine supper supping supportable supporting supportive supports suppressed suppressing suppression
    sups surefire sureness surer surfer surfers surfing surge surging suspecting suspects sutured swab swabbed
    swabbing swabs swaddle swag swagger swaggered swaggerer swaggering swagging swags swallow swami swamp swamped
    swamping swan swanking swap swapped swapping swaps swards swarm swarming swash swashed swashing swat swatch
    swathing swats swattered swattering swatters swatting sways swear swears sweater sweatier sweatpants sweatshirt
    sweatshop sweatshops sweep sweeping sweepings sweeps sweet sweets sweller swellhead swellheaded swellheads
    swellings swept swerving swift swiftness swigging swill swilled swilling swills swim swindles swindling swine
    swing swinging swings swipe swiping swirls swirly swished swishing switchable switchback switchbacks switchblade
    switchblades switchboard switching swiveling swivelling swizzling swoons swoop swooped swooping swop swopped
    swopping swops sword swords swore sworn swum swung synching syringing tab tabbed tabbing tabby table tabling
    tabs tabuing tack tacked tacking tackled tackler tackles tackling tacks tad tads tag tagged tagging tags tailed
    tailing taillight taillights tails tailspin tailspins tailwind taint tainted tainting taints taken takeoff
    takeoffs takeout takeover taker takes takings talc tale tales talkative talker talks tall tallness tam tame
    tames tamil taming tamp tamped tampering tamping tams tan tanager tang tangle tangled tangles tangling tangoing
    tangs tank tanked tanking tanks tanning tantrums tap taper tapered tapering taping tapped tapping taps tarball
    tarballs tare tared targeting targets taring tarnished taro tarp tarps tarred tarring tarry tarrying tars tart
    tarts task tasked tasking tasted tasters tasting tasty tat tats tatter tattered tattering tatting tattlers
    tattling taught taunt taunting tax taxing tbs teach teaching teachings teacups teak teakettle teaks teal
    tealight tealights teals team teamed teaming teams teardrop teardrops tearful tearoom tears teary teas tease
    teased teasing teaspoon teat teatime teats tee teed teeing teem teemed teems tees teethe teething tel
    temperament temperamentally temperaments temperate temperatures temping temporise tempting tenable tend tended
    tenderest tenderfeet tenderfoot tendering tenderises tenderising tenders tending tends tenfold tenon tenons
    tenpins tens tense tenseness tenser tenses tensions tent tentacle tentacles tenth term tern terns terribly terry
    test testable testifies testily testing tether tethered tethering textbook textile textiles texting texts
    texturing thai thanksgiving thatching thaw thawing thee thees theirs theme themes thereabout thereafter
    therefrom therein therewith theses thicken thickeners thickens thickest thicket thickets thicknesses thickset
    thighbone thighbones thin thine thinker thinking thinks thinness thinning thins thirsty tho thong thongs thorn
    thorough thou thoughts thralled thrashed threaded threat threefold threes threescore threesome thrill thriller
    thrillers thrills thrived thriving throats throaty throe throes throng thronged thronging throughput throughway
    throwaway throwback throwbacks throws thrum thrumming thrust thrusting thruway thudding thug thugs thumbing
    thumbnail thumbnails thump thunderclaps thunderhead thunderheads thundering thunders thundershower thunderstruck
    thunk thunks thus thwacking thwacks thx thy ti tib tibs tic tick ticked tickers ticket ticking tickle tickles
    tickling ticks tide tides tidying tier ties tiff tighten tightest tightly tightrope tights tike tikes tildes
    tile tiled tiling tillable tilled tiller tilling tills tilts timed timekeeper timeless timepiece timepieces
    timers timescale timeworn tin tincture tinctures tinder tine tines ting tinge tinged tingeing tinges tinging
    tinglings tings tinker tinkering tinkled tinkles tinkling tinning tinny tins tinseled tinseling tinselled tint
    tinted tinting tipi tipped tipping tipple tippled tippling tiptoed tiptoeing tiptop tiptops tireless tiresome
    tissue tissues tit tithe title titled titles titling tits tittered tittering titters tittle tizzy toad toady
    toaster toasting toasts toasty toddle toddled toddlers toddles toddy toed toehold toeholds toffee tog toga
    toggling togs toil toiled toiler toileting toilets toiling toke toked tokes toking toll tolled tolling tolls tom
    tomb tome tomes toms tonal tone tones tong tongued tongues tonguing tons tonsils tonsure tonsuring tony tool
    tooling toot toothaches toothbrushes toothpick toothsome toothy tooting toots topknot topknots topmost topped
    topping toppings topples toppling tops topsails topside topsides tor torching torchlight torquing tors tort
    torte tortured torturer tortures toss tost tot totaling totals tote totes tots totter tottered tottering totters
    totting touchdown touchdowns touchier touchingly touchings touchstone touchstones toughs tour touring tours
    tousled tousles tousling tout touting tow toweling towelling towels tower towering towing town tows toy toying
    toys traceable traced tracer traces tracing track tracked tracks tract traction tractors trade trading trail
    trailed trailer trailing trained trainee trainers traipsed traipsing tram trammed trammeled tramming tramp
    tramped tramping trample tramples trampling tramps trams trance trans translucence transparency transparently
    trapdoor trapper trappers trapping trappings trapshooting trashes trashing traveled traveling trawled trawling
    tray trays treading treadle treadling treason treasure treat treated treaties treating trebled trebles trebling
    treed treeing trees treetop trek trekking trellised trellising trembled trembles trench trenched trenches
    trenching trending tress tresses triad trialed trialing trialled trialling trice trick tricked trickiness
    tricking trickled trickles trickling tricks trickster tricolor tricolour tries trifle trifled trifling trig
    triggered triggering triggers trike trill trilled trilling trim trimesters trimming trims trio trios tripe
    tripled triplet triplets tripling triply tripos tris trite trolled trolling tromped tromping tron troop trooped
    troopers trooping troops trope troth trotters trotting troubleshoot troubleshooting troubleshoots troubleshot
    troublesome trough trounced trounces trouncing trouped trouper troupers troupes trouping trouser troweled
    troweling troy truanting truce trucking truckle truckles truckling truckload truckloads trucks trudging true
    trued trueing trues truest truing trumped trumping trumps trunk trunking truss trussed trussing trustee trustier
    trusties trusts trustworthy trusty tryst trysted trysting ts tsar tsars tsp tub tubby tubes tubs tuck tucker
    tucking tufting tugging tugs tumble tumbled tumbler tumblers tumbles tumbling tun tune tuned tuning tunnelings
    tunnelling tunnellings tunnels tunny tuns turd turds turf turfed turfing turfs turin turks turnabout turner
    turnkey turnkeys turnoff turnoffs turnout turnover turnstiles tush tushes tuxes twain twanging twangs twee tweed
    tweeds tweeted tweeting tweets twerk twerked twerking twerks twiddle twiddles twig twigged twigging twiggy twill
    twilled twine twined twines twingeing twining twink twinkle twinkled twinkling twinks twinned twinning twins
    twirl twirling twister twisters twisting twists twit twitch twits twitted twitters twitting twofold twos twosome
    ty tying tyke typed typeface types typeset typesets typewrite typo tzar udder umber ump umped umping umps
    unattached unbearably unbeatable unblock unblocking unbreakable unbuckles unbuckling unchanging uncles
    uncomfortably uncomplaining uncompressed unconcerned unconsciously unconsciousness unconvinced uncovered
    uncovering unction unctions underact underacted underacting underacts underarm underarms underbelly
    undercarriages underclass underclassman underclothes undercover undercurrent undercut underdog underdone
    underflow underfoot undergoes undergoing undergone underground underhand underhanded underlay underlie underline
    underlying undermine undermining undermost underpants underpass underpay underpaying underpin underpins
    underplay underplayed underplaying underplays underrate underrated underrating underscore undersea undershirt
    undershoot undershooting undershoots undershorts undershot underside undersign undersigning undersigns undersize
    undersold understand understandable understanding understood undertake undertaking undertook underused
    underwater underweight underwent underworld underwrite undisturbed unfamiliar unfinished unforgiving unformed
    unfriendly unhappiest unhinging uniform uniforming unimpressed union unions uniting unloading unlocking unlocks
    unpinning unproved unread unreadable unrealised unrealized unresolved unsatisfied unscrambled unscrewing
    unscrews unseal unset unsettling unsnapping unsolved unstopping unstressed unsuitable unswerving untapped untie
    untimely unto untrained untroubled unusable unzipping unzips upbringing uplifting uppercase upperclassman
    uppercut uppermost uppers upraised upsets upstanding upstarted upstarting upsurge upturned upturning urea urged
    urges uric urinates urination urn urns usable useable user uses uttered uttering utters vaginae vain vale
    valuations valve valves vamp vamping van vane vanish vanishes vanishing vanquished vape var varnished varnishes
    vars vary varying vase vast vat vats vaunt vaunting veal vectors veep veeps vegan veil veiling veld vend vended
    vender vending vends venomous vent verb verbose veritable versions vertebrate vertebrates vertices verve vesicle
    vesicles vessels vested vestiges vesting vet vets vetted vetting vibe viced vices vicing videodisc videotape vie
    vied vies viewing viewpoint viewpoints views vile vim vine violet visa vised vises visioning visions visiting
    voice voiced voicing voiding vole voles volt volumes vomits voting vouch vouching vow vowel vowels vows vulvae
    vulvas vying wack wacks wad waddle wade waded wader waders wadi wading wads wafer wafers waft wafted wafts wag
    wage wager wagers wages wagged wagging waggle waggling wags wail wailed wailing wails waistband waistbands
    waistlines waited waiter waiters waiting waits wake waked wakened wakening wakes waking wale wales waling walked
    walkout walkouts walks walkway wallboard walled walleye walleyed walleyes walling wallis walloping wallopings
    wallowing wallpaper wallpapering walruses wan wand wands wane waned wanes wangle wangled wangles wangling waning
    wank wanked wanking wanks wanting wantonly war warbled warbling ward warded warder warding wards ware wares
    warier wariness warmed warmers warms warmups warn warnings warp warped warping warred warring wars wart warts
    warty wash washed washers washerwoman washing washroom wasp waspish wasps wasted waster wasters wasting
    watchband watchbands watchdog watches watching watchman watchword watchwords waterbed waterboard waterboarding
    watercolor watercolour waterfall waterfalls waterfront watering waterline watermarks watermelon waterpower
    waterside watertight waterway watery watt wattling watts wave waver wavering wavers waviness waving wavy wax
    waxy wayfaring waylaid waylaying ways wayside waywardly weakened weakens weakest weakling weaknesses weal
    wealthy weaned weaning weans wear weariness wears weary wearying weathering weatherising weatherman weave
    weaving web webbing webs wed wedge weeded weeding weeds weedy weekday weekdays weekending weekends weeknight
    weep weeper weeping weepings weeps weer weest weft weigh weighted weighting weightlifting weighty weir weirdo
    weirs welched welching weld welder welding welds welled welling wellington wells wellspring welt welted welting
    welts wen wench wenches wend wended wending wends wens wept west wetback wetbacks wetness wets wetter whacker
    whacking whale whammies whammy whams whatever whatnot wheal wheat wheedling wheel wheeler wheeling wheels
    wheezed wheezes wheezier whelp whelping whens whereat wherein wheres wherever whet whets whetted whetting whew
    whey whiffing whiled whiles whiling whim whimpers whined whiner whiners whines whinnying whiny whip whiplashes
    whippets whipping whips whirling whirring whisker whiskers whiskeys whisking whispered whispering whist
    whistlers whistling whit whitecap whitecaps whiten whiter whites whitewall whitewalls whither whitings whits
    whiz whizzing whoever wholes wholesome whom whomever whooping whoppers whopping whore whose wick wicker wickers
    wicket wicks widen widescreen widespread wield wig wigging wiggled wiggler wiggles wiggling wiggly wight wights
    wildcat wilder wildfire wildlife wildly wilds wile wiled wiles wiling willing willow willpower wills wilt wilted
    wilting wily wimp wimple win winch winched winches winching windbag windbreak windburn windfall windfalls
    winding windlass windowsill windpipes winds windscreen windsock windsocks windups windy wined wineglass wines
    wing winged winger wingers winging wings wining wink winked winking winner winning wino wins wintergreen
    wintering winterising winters wintertime wintery wiped wiper wipers wipes wired wireds wireless wiring wiry wise
    wiser wises wish wishers wist wit witch witching withdraw withdrawing withdrawn withered withering withheld
    withhold withholding withholds withstand withstanding withstood wits witting wive wives wiz wizes wobbled
    wobbles wobblier woe woes wok woken woks wolf womanising womankind womanlike womb womble women won wonderfully
    wondering wont wonted woo woodchuck woodcut wooded wooding woodman woodmen woods woodwind woodwork woodworking
    woody wooed woof woofing wooing woolen woollen woollens wooly woos worded wording wordplay wordy wore workable
    workaround workbench workbook workday workdays worker workers workfare workflow workforce workhorse workhouse
    workingman workings workload workloads workman workmanlike workplace works worksheet workshop workshops
    workstation workweek workweeks worlds worldwide worm wormed worming worms worrier worryings worsen worsting
    worsts worthwhile wot woulds wounder wounding wounds wove wow wows wrack wrangled wrangling wrap wrapper
    wrappers wrapping wraps wreak wreaked wreaking wreath wreathe wreathed wreathes wreathing wreaths wrecker
    wrecking wren wrenches wrenching wrest wrested wresting wrests wretch wretched wretches wriest wriggle wriggling
    wright wring wringing wrinkles wrinkling wristband wristbands wristwatch writ writable writer writes writhe
    writing writs wrongdoing wrongheaded wrongheadedness wronging wrongs wrote wrought wrung wry wt xix xor yack
    yacked yacking yacks yam yammer yammering yammers yams yanking yap yapped yapping yaps yardages yardarm yardarms
    yardstick yaw ye yea yearbook yearly yeast yeh yell yelled yellow yellowing yells yelp yelping yen yep yes
    yessed yessing yesterdays yeti yew yews yip yipped yipping yips yo yock yocks yogi yoke yoked yon yore york
    yours yourself yous youthful yowl yuck yucked yucking yum yummy yup yuppy yups zany zapper zappers zeal zed zeds
    zen zeroing zeros zest zinced zincing zincking zincs zinged zinger zingers zipped zippering zippiest zipping
    zips zit zits zone zones zonked zoo zoom
    """
)
