"""Real English words that one slip parts from a cue's word: taken at their word (`plain` is no misspelt `pain`).

The words are those of the SCOWL lists (Spell Checker Oriented Word Lists, K. Atkinson, size 60, American and British),
with gym shorthand of our own, kept where the speller would otherwise read them as a slip; made anew by
`tests/notation/everyday_words.py` when the tables change.
"""

from bot.notation.hurt.rows import word_set

EVERYDAY = word_set(
    """
    aback abashed abdomens abduct abducted abductee abductees abduction abductions abducts abed abetter abjured
    abjuring abnormally abode abort abound abounding abreast abridging abrupter absences absolved abused abut accent
    accidental accidents accounts ace aced aces achieves acing acme acmes acne acre acres acridest action activated
    ad add adders addle adds adjuring adjustor adjustors adoring ads aery afire aflutter afoot afresh aft afterward
    afterword afterwords agave age aged aggravations aggregate aggregated aggregates aggregating aggregation agitate
    agitates agitator agonisingly agonizingly agreed agrees aground aid aide aids ail ailing aim aims airs airy akin
    alb albs ale ales alight alighted alighting alights alignment alignments alike allergen allergenic allergies
    allergist allergy allowing alloying alludes allures ally alms alone alt alter alts ambiance ambulances amid amir
    among amuck amuse amuses analysed analyzed ancient angle angles angling ani animated aniseed anklet anklets
    annexing annoyingly ant anted anteing anticking ants anythings ape aped apes aping appear appeared append
    appended appreciable appreciated appreciates appreciative approved approving apse apter arc arced arched archer
    archers archest arching arcing arcking arcs areas arena ares aria aright arise arising ark arks army arose
    arouses arraying arses art arthritic arthritics arts ash ashed ashes ashing ashy ask asked asks asp asps assn
    asst aster ate atone atop attach attacked attacker attained attaining attracted auction aunts aver avowing aw
    awaking awe awed awes awhile awing awl awoke awry axe axed axes ay aye ayes baa babbling babe backaches backbite
    backed backfire backing backings backsides backslid backslide backslider backslides badder bade badgered badgers
    badness bagged bagging baggy bags bah bailing bails bait baiting baits bake baked bakes baking bald baldly balds
    baled bales balk balking balks ball balled balling balloons balloted balloting ballroom ballsy balm balms
    balusters ban banded banding bandy bane banes bangs bani banished banishes banisters banked banking banks banned
    banning bans barbing bard bare bareness barfing barged barging baring bark barker barks barn barns barred
    barring barroom bars base based bashes basing bask basked basking basks bass bast basted batch batches batching
    bate bated bates bathed bather bathers bathing bathrobe bathrooms bating bats batter battered battering battling
    baud bawls bay baying bays be beach beaching bead beaded beading beads beak beaked beaks beam beaming beams bean
    beaning beans bearable beard bearing bears beast beasts beater beatings beau beaus beck becks bedding beds
    bedside bee beech beef beefing beelines beep beeping beeps beer bees beet beetling beets befriend beg begat
    beggared begging begin begs begun behinds beings belaboured belay belch belching bell belle belling bellowing
    bells bellyached bellyaches belting belts benched bender bending bends benighted bent bents berate berating
    berrying berthing bested besting bests bet beta betas betide bets betted bettered bettering betters betting
    bettor bias bib bibs bid bidders biddy bide biding bids bight bights bike biked bikes biking bill billing
    billowing bills billy bin bind binding binged bingeing binging binning bins birching bis bitching bite bites
    bitter bitters blabbing blacken blackening blackens blacker blackest blackish blacks blame blames blaming
    blanching bland blander blanked blanking blanks blare blared blares blaring blast blaster blasters blasting blat
    blats blaze blazers blazes blazing bleaching bleak bleakness bleat bleated bleating bleats bleeders bleep
    bleeping bleeps blench blenched blenching blend blended blenders blending blends blessing blight blighted
    blighting blights blimp blinder blinders blinds bling blink blinked blinkered blinkers blinking blip blips
    blocked blocking blond blooding bloods bloom blot blotters blotting blow blower blowing blows blued blueing
    bluer blues bluffing bluing blunders blunting blur blurrier blurs blurted blurting blushers blushing bluster
    blustered blustering blusters blustery blvd boar boarders boas boasters boat boaters boating boats bobbing
    bobbled bobbling bobs bode bodes bog boga bogging boggling bogs bogy boiled boinking bola bold bole boles bolls
    bolstered bolsters bolt bond bonding bonds boned bonehead boner boners boney bong bonged bonging bongs bonus
    bony boob booby booed book booked booking books booms boon boor boos boosters boot booth booting boots boozy bop
    bopped bopping bops bordered bordering bore borer bores born borne borrowed bosh bosom bossy bot botch botching
    bottling bottoms bough boughs bought boulder boulders bouncing bounding bounds bout bow bowed bower bowers bowl
    bowls bows boxes boy boyfriends boys bpm bra braced brad bragging brags braiding brained braining braise braised
    braises braising brake braking brambles bran branched branching brand branding brat brats brawn bray brayed
    breach breached breaching breading breadth breadths breastbones breasting breasts breathed breathers breathes
    breathier breathiest breathlessly breathy bred breech breed breeding breeds breezing brew bribing bricked
    bricking bricks bridging bridling brief briefing brig bright brightened brightening brightens brightly
    brightness brilliance brilliancy brilliantly brilliants brimming brine bring brink brisk brisking britches
    broaching broiling broker bronzing brood brooding brook brooked brooking broom broth brothel brothers brow
    browner browns brows browsed browsers browsing bruiser bruisers brunch brunched brunches brunching brunt brushed
    brushing bubbling buck bucked bucketing bucking buckle buckler bucklers bucks bud budged budgeted budging buds
    buff buffed buffered buffing buffs bugged bugger buggers bugled bugling bulge bulges bulked bulking bull bulled
    bulling bullocks bullring bulls bully bumbled bumbles bumbling bummed bumper bumpers bumping bumps bumpy bun
    bunch bunched bunching bundling bung bunging bungled bungling bungs bunked bunking bunny buns bunt bunted bur
    burbling burdening burg burgling burgs buried burly burner burp burped burping burps burr burred burring
    burritos burrowed burrs burs bursted bursts bury burying bus bused bush bushed bushes bushing busied busing buss
    bussed bussing buster busters busting bustled bustling busts busy butchered butchering butches buts butte butted
    butter buttered buttering butters buttons butts buy buys bye byes ca cab cabbing cabled cabling cabs cache
    cached caches caching cackling cactuses cad caddying cadge cadging cads caged cages cagey caging cagy cake caked
    cakes caking cal calculuses calif califs calk calked calking calks caller callings calloused callously
    callousness calls callused calmer calms calved calving cam cambering camel cameo camp camped camping camps
    campuses campy cams candling candying cane caning canning cannoning canonising canonizing cans cant canting
    canto cants cape capes capped capping captured card carding cared careened careening caressed caressing caring
    caroling caroming carousers carouses carp carping carps cars cart carting carts carve carves carving cased
    cashed cashing casing cast castings catalysed catalyzed catcher catchers catchier catchings cater catering
    caters cats catting caucuses caucussed caulking causes causing caves cavorting caw caws cease ceased ceasing
    ceilings cell cellar censused cent cessation cession cessions chad chafes chaff chaffed chaffing chaining
    chairing chalking chammies chammy champ champed champing champs chancing changeling chant chanting chap
    chaplains chapped chapping chaps charging charming charring charting chase chased chasing chat chatting
    cheapness cheat cheating checking cheeking cheeping cheering cheesing chess chests chick chicks chid chidden
    chile chiles chili chilies chill chilled chiller chillers chillest chillier chillies chilliest chills chin chink
    chinking chinning chins chip chipping chips chit chock chocking chocks chocolates chomping choosing chopping
    chore chose chow chowed chowing chroming chubby chuck chucking chuckles chuckling chugging chumming chunks
    chunky churches churls cinch cinched cinches cinching cite citing clack clacked clacking clacks clam clammed
    clamming clamoured clamping clamps clams clan clanging clank clanking clanks clans clap clapped clapping claps
    clash clashing clasp clasped clasping clasps classy clattered clattering clatters clauses clavicles claws clay
    cleaned cleaning cleans clearer clearing cleat cleaved cleaving cleft clenched clenching clerking clew clients
    climbing climbs clime clinch clinched clinching clinging clink clinked clinking clinks clip clipped clipping
    clippings clips cliques clit cloaking clock clocked clocking clocks clod clog cloistered cloisters clomp clomped
    clomping clone cloning clop clopping closed closer closes closet cloth clots clotting clout clouting clove clown
    cloy cloying clubbing cluck clucked clucking clucks clue clueing cluing clump clumped clumping clung clunkier
    clustered clustering clusters clutched clutches clutching clutter cluttered cluttering clutters coaching coal
    cobbled cobbling cock cocked cocking cocks cod coda code codes coding coed coercing coffees coffer cogitated
    cohered cohering coiled coke coked cokes coking col colas colds colicky collage collages collared collaring
    collars collate collated collates collating colleagues colludes collusion colon coloreds colors coloureds
    colours cols colt coma comas comb combing combs comer comers comet comets comfortably comings comm compassed
    complainant complainer complainers complaint completed completer completes completest compliant complied
    complies complying compress compresses compressor comprised compromise compromises compulsion compulsions con
    concealed concealing conceded conceding conceited conceived conceiving concern concerns concerted concertina
    concerting concession concessions conclusion conclusions concreted concreting concurred concurring concussions
    condemned condemning conduced cone cones conferred conferring confessed confession confided confined confuse
    confusedly confuser confusers confuses confusing confusions confute confuted confutes congaing conjured
    conjuring conking conned consciously consciousnesses conscripted conscripting conscription consed conserved
    conserving constable constantly constrict constrictions constrictive constrictor constricts constructed
    constructing construction constructions consumed cont continence continent continued contraception contracted
    contractile contracting contractor contractors contradiction contradictions contraption contraptions contrition
    controls contuse contused contuses contusion contusions convened convening converged converging conversed
    conversing conversion conversions converted converting convicted convince convinces convulsed convulsing
    convulsive coo cooed cooing cook cooked cooker cooking cookouts cooks cooling cooped cooperation cooperative
    coopering cooping coot cop cope copes coping copped copping cops copy cord cords cored cores coring cork corked
    corking corm corn corp cost cot cote cotes cots cotter couched couches couching counteraction counteractions
    counting coupe coupled couples couplet coupling coursing courting cousins cove cover covered covering coves cow
    cower cowing coworkers cows crab crabbed crabbing crabby crabs cracker crackings crackle crackled cracks
    cradling crafting crags cram crammed cramming crams craning crank cranked cranking cranks cranny crap crape
    crapping crappy craps crashed crashing crass crate crating craving craw crawling cray craze crazed crazing
    creakier creaks cream creaming creamy creasing create creatine creating creation creators creek creeping
    cremating cress crest cresting crewed crewing crib cribbed cribbing cribs cricket cricking cricks crimp crimped
    crimping crimps cringing crinkling crippling crisping croak croaked croaking crock crocked crooking crooks croon
    crooned crooning crop cropped cropping crops cross crossing crotches crotchet crotchets crouch crouched crouches
    crouching crowing crown crowned crows cruise cruised cruises cruising crumbed crumbing crumble crumbled crumbles
    crumbling crumbly crumpled crumples crumpling cruncher crunches crunchier crunching crusading crushes crust
    crusted crusting crusty crutch crying cub cubed cubs cuddled cued cues cuffed cuffing cull culled culling culls
    cultured cum cums cunning cunt cup cups curbed curbs curd curds cure curer cures curing curled curly curry
    currying curs cursed cursing curst curt curved cussing cuter cutters dabbing dabbled dabbling dabs dado dados
    dafter daintiness dainty dairying dais dam dame dammed dampened dampening damping dams dancing dandling dank
    danker dappling dare daring darken darkens darling darn darned darning dart darting darts dashed date dated
    dates dating daughters daunt daunting dawdling dawn dazzling dbs dd dding dds deaden deadens deader deadlier
    deadliest deadline deadlines deaf deafened deafness dealings deals dealt dean deans dear dearly dearness dears
    deathless debt debts decks decompressed dedicated deed deeded deeding deeds deem deemed deems deepened deeps
    deer defamed defeated defecate defecates defected defectors deferred deflated deflected deform deforming deforms
    deft dejected dejecting delegated deli delicious delight delighting delights delimited delimiting delinted
    deliriously delirium deliriums delis dell dells delta deltas denials dense dent dents deported deprecated
    depreciate depressed depressing depression dept deranging desecrated desirous desk detached detected detectors
    deviously devolved devouring dew dibble dibbled dibbles dibbling dice diced dices dick dickey dicks diddle die
    dies dig digger digging digs dike diked dikes diking dill dills dime dimming dims din dine ding dinged dinginess
    dinging dings dink dinky dinner dinning dins dint dip dipped dipping dire directors dirk dirtiness dis
    disappears disbands disclosed disco discolor discolors discolour discolours discomfit discomforted discomforts
    discovered discs dish dishonored dishonoured disks dislocations disorient disorients disproved disproving diss
    dissed disses dissing dissociate dissociated dissociates dissociating dissociation distantly distressed ditching
    dithered dithering dive dives diving dizzied dizzier dizzies dizziest doable dock docked docket docking docks
    docs doctoral dodge doe does doff dogging doggy dogs doings dole doling doll dollar dolled dolling dolloping
    dolt dolts dome domes doming don dons donut doodling doom dooming dooms door dope dopey doping dopy dork dorms
    dos dose dosing dot dote dotes doth doting dotting doubled doublet doubling doubly douching dough doughier
    doughtier dour dove dowel dowelling dowels downy doze dozing drab drabs drafting drag drain drained draining
    dram drams draping draughted draughtier drawing drawl drawling drawn draws dray drays dread dreaded dreading
    dreads dreaming dredging dregs drench drenched drenches drenching dress dressed dresses dressing dressings drew
    dribble dribbler dribblers dribbles driblet drilled drilling drip dripped dripping drippings drips driveled
    driveling drizzled drizzling drone droning drool drooled drools droopier dropper droppings dropsy dross drought
    drown drowned drowning drowsing drubbed drubbing drubs drudging drugging drugs drys dual dub dubbing dubs duchy
    duck ducked ducking duckling ducklings dud duded dudes duding duds duel duelling dues duff duke dulled dulling
    dullness dulls dully dulness duly dumb dumbbells dumbness dummy dump dumped dumping dun dune dung dunged dunging
    dungs dunking dunner dunning dupe duping dusk dust dusted dusty dwell dwelled dwelling dwellings dwells dwelt
    dye dyes ea earaches earl earls earn earns earring easel eases easiness east eat eater eaters eating eats eave
    eclectic ed edged edger edgings edgy eds eel eels eery effecting egging eight eighteens eights either ejected
    ejecting eke eked ekes elate elated elected electing elector electoral electors electrical electrify electron
    electronic elegant elephants elevate elevates elevator elf eliciting eliminate eliminates elite ell emitting emo
    employed employing empresses emptier empties enable enacting encoding encoring endowing enduring enervated
    enjoin enjoining enjoins enjoys enormity enormously ensuring entice entirety enuring envoy envying eon equating
    era eras erase erased erasing ere erecting erection erections erects err errs escaping est estrange eta etching
    ether eve evenly ever everyone eves evolved ewe ewes exacting excepting exchanging excluded excluding
    excruciatingly executing executors exerting exes expanded expanding expectant expediting expelling expend
    expended expending expiating exploited exploiting explore explored explorer explores exploring explosives
    exporting exposed exposing expounding expressed expressing expression extends extent extras extremer extremes
    eying fa faced faces facet faceting facing fact faction factored factoring facts factual fad fades fads fag
    fagging fail failings fain fainer faintest faintly fair fairness fake faked fakes faking fallowing falls fame
    famed famished fang fangs fanning fanny far farce fare fared fares faring farm farmer farms farrowed fart
    farther farting farts fascinates fascists fasting fastness fasts fate fated fates fathered fathering fathers
    fating fatness fats fatter faulting favorite favoured favourite fawning fax faxed faxing faze fazed fazing fear
    feared fearing fears feast feasting feat feather feats feature featured features fecal fed feds fee feed feeding
    feedings feeds feelingly fees feinting feints felines felling fells felon felts fem fen fencing fend fender fer
    feral ferrying fest fetal fetching fetter fettered fettering fetters fettle fever fey fez fiat fibre fibs
    fiction fiddle fidgeting fie fiend fiends fife fifes fig fighter fighters fights figment figments figuring
    filament filaments filch filching file filed filing filings filler filling fillings fills filly film fin
    finagling finance finch finches finder finders finds fined fineness finer fines fining finis fink finking finny
    fins fir firearm firearms fires firm firs fish fishing fists fitness fits fitters fitting five fives fix
    fixating fixer fixes fizz fizzling fizzy flack flagging flail flailed flailing flairs flake flaked flakes
    flaking flamage flame flamed flamers flames flaming flank flanking flapping flat flats flattened flattening
    flattens flatter flattered flatterer flattering flatters flattery flatware flaunting flavoring flavorings
    flavoured flavouring flavourings flawed flawing flax flay flayed flaying flays flea flecking fled flee fleecing
    fleeing flees fleet fleeting flesh flew flick flicked flicking flicks flies flight flights flighty flinching
    fling flinging flings flint flints flinty flip flippant flipped flippies flippy flips flirting flit flitting
    floated floater floats flock flocked flocking flocks floes floggings flood flooring floors flopping floss flour
    flouring flouting flow flowed flower flowers flowing flown flue flues fluids flung flunk flunking flunks flunky
    flurry flurrying flushing fluster flustered flustering flusters flute flutes fluttery flux fly flyer flyers foal
    fob fobbing focussed foe foes fog foiled foiling foist foisting fold folding followings foment fondu font foo
    food fool fooling footballer footballs footfall footfalls foothill footing foots fop fops fora foraying forbears
    forced forces forcible ford fords fore forearmed forebear forehand foreheads fores forewarns forge fork forked
    forking formal formally formed fort forte forwards fosters foulness founding foundling founds fount four fox
    foxed fr frack fracked fracking fraction fragiler frags framing frat fray frayed freak freaking freaky freckling
    freezing freighting french fret friction fried friending frigates fright frightened frightening frightens
    frighting frill fringing frisking frittered frittering fritters frizzing fro frock frog frogging frond fronting
    fronts frost frown frowned fruiting frumpy frying ft fuck fucker fucking fuddled fuel fueling fuelling fuels
    fulled fullest fulling fulls fully fulness fum fumbled fumbles fumbling fums fun functional functioned functions
    fund funding funked funking funky funnel funneled funneling funnelled funnelling funner fur furl furls furring
    furrowed fuse fused fusty fuzz fuzziness fuzzing gab gabbed gabbing gabbling gabby gabs gad gads gage gages
    gagging gained gainful gainfully gaining gale gall galled galling gallowses galls gambled gambles gambling game
    gamey gamma gamy gang ganged ganging gangling gangs gap gape gaping gaps garb garbing garbling garbs gardened
    gardenia gardenias gargling garnering garnished garroted gas gashed gashing gassed gassing gate gated gates
    gather gathered gathering gating gaunt gauntness gavel gay gayer gays gaze gazed gear geared gearing gears gee
    geed geeing geek geeks gees gel geld gelling gelt gem gen gender gene generals genial genitalia genitive gent
    gentians gentling gets ghosting gibe gibes gibing gift gifting gig gigging giggle giggled giggles giggling
    giggly gild gilding gill gills ginger ginning gins gird girding girlfriends girls girt gist givens gladdening
    gladdens gladder glade glades gladness glamoured glare glared glares glaring glaze glazed glean gliding glinting
    glistened glistens glittered glittering glitters gloss glove gloved gloving glow glowed glower glowing glue
    glues glut gluten gluts gm gnus goad goat gob gobbing gobbled gobbling gobs god gods gofer gofers goggling
    goings gold golfed golfs goner gong gonk goo goods goody goof gook gooks goon goop goose goosing gore gores
    goriness goring gorse gouging gout gov govt gown grabber grace graced gracing grad grade graded grading grads
    grafting grain grains gram grams grand grandads granddad grandmas grandpas grands grange grant granting grape
    grapefruits graphing grappling grasping grass grassing grate grated gratings grave graved graving gravy grayer
    graying grays grazes grazing greasing greats greed greening greet grep grepping grew greyer greys gribble
    gribbles grid grids griefs grieving grilled grilling grim griming grin grinning grins gripe griping gripped
    grist grit gritting groan groans groom grooming grooving grope groping grossing grouch grounding grounds
    groupers grouping grouses grouting growling grown grows groynes grub grubbed grubbing grubby grubs grueling
    gruelling grumble grumbler grumblers grunting guessing guff guiding gulf gull gulled gulling gulls gum gummed
    gummy gums gun gunner gunners gunning gunny guppy gush gushes gushing gust gusted gusty gut guttered guttering
    gutters gutting gyms gypping gyrating hack hacked hacking hacks hag haggling hags hail hailing hair hake hakes
    hale haled hales haling hall hallow hallowing halls halo halt halted haltering halting halve halves halving
    hammed hammerings hammers hamming hamper hampered hampering hamstrung handedness handing handling handy hanged
    hangings hank hankering hanks hanky happens harboured harden hardened hardening hardier hardy hare hared hares
    haring hark harkened harkening harking harm harms harness harp harpist harpy harrowed harry harrying hart harts
    hash hashed hasp hassled hassles haste hasted hastened hastes hasting hasty hat hatch hatches hatching hater
    haters hath hatred hats hatted hatter hatting haughtier haunting haunts haven haves haw hawed hawing haws hay
    hayed haying hays haze hazed hazes haziness hazing headdress header headers headiest headless headrest headrests
    headsets heady healer heals health heap heaped hear heard hearing hearkened hearkening hears heartaches
    heartbreak heartbreaks heartfelt hearth heartiest heartiness hearts hearty heated heath heating heats heave
    heaved heavies heaviest heaving heck heckling hectors hedge heed heeded heeding heedless heeds heeled heeling
    heft height heightened heightening heightens heir heirs hello helm helps hem hemp hems hen hens hep herb herbs
    herd herded herder herds herniae hernias hero heros hes hew hews hey hgt hi hick hicks hid hide hiding hie
    hieing hies highness highs hiit hiked hiker hikes hilly hilt hilts hims hind hinds hing hinged hinging hings
    hinting hipped hipping hippy hire hiring hiss hissed hisses hissing hitching hitter hive hives hiving ho hoard
    hoarder hoariness hoarse hob hobble hobbles hobby hoc hock hocked hocking hocks hod hoe hoed hoes hog holder
    holders holdings hole holed holing hollowing holy homebody homeboy homering homes homing hone hones honked hooch
    hood hooding hoofing hook hooked hooking hooks hooped hooping hoot hooter hooting hoots hopped hopping hops
    horde hording horn horribly horridly horsed horses horsey horsy hos hose hosing host hostage hosting hotness
    hound hounding hounds housemaid housing hove hover howling hows hp hrs ht hub hubs huddled hue hues huff huffed
    huffing huffs huffy hug huger hugging hugs hull hulled hulling hulls hum humbled humbles humbling hummed humming
    hump humped humping hums hunched hunching hung hungered hunk hunt hunted hunting hunts hurl hurled hurling hurls
    hurry hurrying hurtled hurtling husbanded husbandry hush hushes hushing hustings hut hutches huts hying
    hyperventilation hyphened ice icky idealising idealizing ideals ideas ids ifs ill illness ills imbalance imitate
    imitated imitates imitating imitation immuring imp impending impinged imploded imploding implored imploring
    imported importing imposed imposing impounding impress impresses impressing impression imprinting improper
    improperly improvements improves improvident improvise improvised improvising impugning inability inaction inane
    inaner incense inch inched inches inching incident incing incompletely incredibly incurring ind inducing induing
    infer infighting inflame inflames inflammations inflate inflated inflates info informally informed infrared
    infused infusing infusion inhering injected injecting injures injurious ink inkling inky inning inquires
    inquiries inquiring ins insanely insaner insensitive insider insides instants insure insured insures insuring
    int intenser intently inter intro inure inured inures inuring invitation ion ionising ionizing irate ire
    irregularity irregulars irrigate irrigated irrigates irrigating irrigation irritably irritant irritants
    irritatingly irritations issued itching jack jacket jacking jacks jade jaded jading jag jags jail jailing jam
    jambs jams jangling jar jars jaunt jaunting jaws jay jays jeep jeeps jell jelling jello jells jest jesting jet
    jets jetting jewelling jib jibbing jibs jiffy jig jigger jiggered jigging jiggle jiggled jiggles jiggling jilt
    jingle jingled jingles jingling jive jives jiving jobbing jobs jock jocks joggling join joins jointing joist
    joists joker jolly jolts jot jots jotting jouncing joust joying jugging juggling jugs jumble jumbles jumbling
    jumpier jumps jumpy junction junctions junking junky juries jut juts kbs keels keened keening keens keeping keg
    kegs kelp ken kenneled kenneling kennelled kettle khan kicker kicky kiddy killers killings kiln kilning kilns
    kilo kilos kilt kilter kilts kin kindling kinds king kingly kings kink kinked kinking kinks kinky kiss kissed
    kisses kissing kit kite kith kiting kits knacker kneed kneel kneeled kneeling kneels knelling knew knifed knifes
    knight knighting knightly knit knits knitted knitting knob knobs knocker knotting knowings known knows knuckled
    knuckling kook kooks koshered koshering la lab labium laborer laboring labour labourer labourers labouring
    labours labs lace laced lacing lacked lacking lacks lacy ladder ladders lade laded lades lading lads lag lager
    lagging lags lain lair lake lakes lam lame lament laments lamer laminated laming lammed lamp lams lanced land
    lander landing lands lane lank lanky lap lapped lapping laps larch larches lard larded larder larders lark
    larking lase lased laser lash lashed lasing lass lasts latch latches latching latex lath lather lathered
    lathering lathing laths latter lauded laughing laughter launched lavished law lawful laws lawyer lax laxer
    layers lays lazing lazy lazying lbs lea leaching lead leaded leading leads leaf leafed leafing leafs leakages
    leaky leaned leaning leanings leanness leans leap leaped leaping leaps learn leas lease leased leasing least
    leaved leavened leaving leavings led ledge lee leeching leek leeks leering lees lefts lefty legalising
    legalizing leggin legging leggins legion legions lei leis lemmings lend lender lending lens lent lept lesions
    less lessons lest lets letter lettered lettering letters letting lever lewdness liaising lib libelers lice lick
    licked licking lickings licks lid lids lied lies life lighten lightened lightening lightens lighters
    lighthearted lightheartedness lightly lightness lightning lightnings lii liken likeness likens liker likest lilt
    lilting limb limbless lime limed limes liming limit limitings limn limned limning limo limper limpet limpid
    limps limy lineament lineaments lined lines linger lingers liniment liniments lining linked linking lint linting
    lionising lionizing lips lire lisp lisped lisping list listened listens listing listless liter liters lithe
    litre littered littering litters littler live lived lively liven lives living lix lo loaders loaf loafers loam
    loan loaned loaners loaning lob lobbing lobbying lobe lobed lobs loci locker locket lockouts loco locus lode
    lodger lodgings loft lofting log loge logger logging logs loiters lolled lone lonely loner longed longings longs
    lookouts loom loomed looming looms loon loons loop looped looping loops loosed loosen looser looses loot looted
    looters looting loots lop lope loped loping lopped lopping lops lopsidedly lord lords lore lorn loses loth lots
    loud lounges lounging louse lout loveless lover loves lowed lowers lowing lows lox lucked lucking lucks lug
    lugging lugs lull lulled lulling lulls lumber lumped lumping lumps lumpy lunched lunching lunged lunging lured
    luring lurking lush lushes lust lusted lusty lute lutes lye lynching ma mace maced maces macing maddening
    madders madly madness mads maid mail mailing main mains majoring majors maker makes male males mall malls man
    mane manes manged mangling mangy manly manor mantes mantling many map mapped mapping maps mar march marches
    marching mare mares marinated marinating mark marker marketed marketing marking maroons marred marring marry
    marrying mars marts mas mashed mass massed masses massing mast master mat match matches matching mated math
    maths mating mats matt matte matted matters mattes mattocks matts maundering maw maxes mayor maze mazes mead
    meal mean meanings meanness meat meats med meddle meddled meek meekness meet meetings meg megs meld mellowing
    melons melt melts member mend mender menials menus mere mes mesa mesas mesh meshed messes messing messy met meta
    mete metes mettle mew mews mi mice middles middy mien mightiness mighty migrant migrants migrate migrates
    migrating mike miked mikes miking mil milch mile mill miller milling mills mime min mince mincing minded minding
    minds mined miner mines mingle mingled mingles mingling minim mink minks mins minster mint minting mints minx
    mire misc misled missions missive mist misted mister misters misting misused misuses misusing mite mites mix
    mixed mkay ml mo moan moans moat mobbing mobs mobster mock mocked mocking mocks mod mode mods moire moist
    moister mold moldering molding mole molt moments monger monsters monument moo mooch mooed mooing mooned mooning
    moor moos moose moot mooting mop mope moping mopped mopping mops moraine moraines morally morasses mores morn
    mortally mos moss mosses mote motes moth mothered mothering mothers mottling moulder mouldering moulders
    moulding mound mounding mounds mounting mousers mouthing mouths moved movements mover moves movie mow mower
    mowing mown mows mucking mucks mucky mud muddied muddle muddles muff muffed muffing muffs mugging muggings mugs
    mulch mull mulled mulling mulls mumbled mumbles mumbling mummy mumps munch munched munching mung munged mungs
    munition murders murk murmuring muscled muse mused mush mushes mushing musk muss mussed musses mussing must
    mustering musty mute muter mutes mutt mutter muttered muttering mutters nab nabbing nabs nailing nails naked
    name nap napped napping nappy naps nark narking narrated narrow narrower narrowest narrowly narrows nary natl
    natty naughtier nauseam nauseate nauseates nave nay nays near nearby neared nearing nearness nears neat neatly
    neatness necks needing needled needless needy neg neighbored neighborly neighbors neighboured neighbourly
    neighbours neighs nerd nerds nerved nerves nervy nest nesting nestling net nets nett netter netting nettle
    nettled nettling newer newt nib nibbled nibbling nibs nicer niche nick nicked nicking nickles nicks niece nigger
    nigh nightly nights nighty nine nipper nit nite nits nixed nod node noes noise non nonce nook nooks noose nordic
    normalcy normality nos nosed noses nosey nosh noshing nosing nosy notable notching note nothings noting nu nubs
    nude nuder nuked nuking null nulls number numbest numbly numbs nun nurtured nut oaf oar oars oat oats obit obits
    object objection objections objective objector obliges obliquely obsessions ocher odds ode offed oft oiled oink
    okays okey okie old omega omen omit omitting oneness onrushing onto onus oops op opens operating opine opining
    oppressed oppressing oppression ops opt orally oranges orate orating ordaining ordering ore ores others otter
    ounce our oust ousted ouster outed outing outs oven overbooked overbore overborne overcome overcooked overdo
    overdoes overdoing overdosed overdoses overdue overextend overextends overlay overlong overlooked overrode overs
    overt overtly overtone overtones overuse overwork overworks owe owing owl owns oxen pace paced pacing pack
    packed packing packs pact pacts pad paddle pads page pages paginated paid pail pailful pailfuls pails painfuller
    paint painted painter painting paintings paints pair paired pairing pairs pal palace palate pale paled pales
    paling pall palled palliates palliating palliation palling palls palmed palming palmy palpates palpating
    palpation palpitate palpitated pals pampering pan panel paneling panes pang pangs panicking panned panning pans
    pant panty pap paperback paps par paralyse paralyses paralysis paralyze paralyzes parch parches parching
    pardoning pare parental pares park parking parks parlayed parred parring parroted parry parrying pars parse
    parsed parsing parson part particular particularity particulars parting partners party partying pas passel
    passer passes passion passions passive pasta paste pasted pasting pastoral pastorals pasts pasty pat patch
    patches patching pate patellae patellas pates patine pats patter patting paused pausing pave pavement paving paw
    pawn pawned pawning pawns paws pay payed payer paying pays pbs pct pea peace peak peaking peaks peal pealed pear
    pearlier pearly pears peas pease peat pebbling peck pecking pecks peek peeked peeking peeks peel peeling
    peelings peels peep peeped peeping peeps peered peering peerless peers peeved peeving peg pegging pegs pelt
    pelts pen penalising penalizing pend pending pends penes pennant penning pens pension pensions pent peopled
    peoples pep pepped pepping peppy peps perching perfects performed perilled periods peritoneum perking perming
    persona persons pert perusing pest pestling pet pets petting petty pew pews phalluses photoing phreaking physic
    pick picked picking pickings pickling picks picky pictorial pictorials piddle pie piecing pied pieing piercingly
    piercings pies pig pigged pigging pigment pigments pigs piing pike piked piker pikes piking piled pill pilled
    pilling pillowing pills pimp pimped pimping pin pine pined pines pings pining pinked pinkies pinking pinks
    pinned pinning pint pinto pints pip pipped pipping pips pirates pis pisses pit pitch pitched pitches pitching
    pith pits pitting pitying placed placer places placing plaice plain plains plaint planar plane planed planing
    plank planking plans planter planting plants plastered plasters plated platen plating platters player playmate
    pleaded pleading please pleases pleasing pleasure pleated pleating pled plight plighted plighting plights
    plodders plonking plop plopped plopping plops plot plotters plotting ploughing plow plowed plowing ploy ploys
    plucking plump plumping plunges plunging plunk plunking plunks plush ply plying poaching pock pocked pocking
    pocks pod podding pods poet poi poignancy poignant pointing poke poked pokers pokes pokey pokier poking pol
    poled poll polled polling polls polo pols pomading pomp pond pone pones pooch pooching pooh poohed pool pooled
    pooling poop pooping poops pope popes poppa pore pored pores pork porn portage ported porting ports pose posed
    poser posh posing posit positing poss posting posts posy pot pots potter pottered pottering potting pouch
    pouching pouncing pound pounds pour pouring pout pouting powder powerlessly powers pox pp praised praising prate
    prates prating prawned prawning pray prayed praying prays preached preaching preciously precision predates
    preening prefect prelates premising prep prepping preps pres presaging present presiding pressed pressings
    pressman pressmen pressured pressures pressuring pressurise pressurize presume presuming previous prey preyed
    preying preys pricing prick pricked prickle pricklier priding primate primates priming primping printed printing
    prising privateer privateers privately privater privatest privatise privatises privatizes privets privies
    prizing pro probates probes problematical processing procession proctors professing profession project
    projecting prom prong proofing prop propel propels properer property propped propping props prorates prosecuting
    prospecting prosper protection protections protective protects protest protestant protracting proved proving
    prowlers prowling prows pruning psalm psalms psst psyching pt pub pubs puck pudding puddled puffer puffin
    puffins puffs pug pugs puke pukes puller pullet pulley pullup pulp pulped pulping pulps pulpy pulsations pulsed
    pulses pulsing pump pumped pumper pumpers pun punch punched punches punching punchy punished punk punning puns
    punt punting punts pup pupped pupping pups pureness purl purled purling purls purpler purples purring purse
    pursing pus pushed pusher pushers pushy puss pusses puts putt puttered puttering putters putting pwn pwns qua
    quacking quadricepses quaintness quarrying quay quays queened queening queered queering quelling quenched
    quenching ques quibbled quibbling quid quids quiet quine quipping quire quits quitting quote racer races racked
    racking racks racy rafter rafting rag rage raged rages ragging raging rags raid raiding rail railing rained
    rainfall raining rains rainy raising rake raked rakes raking rally ram rambled rambles rambling rammed ramming
    ramp ramps rams ranched ranching rang range ranged ranging rank rankle rankles rankling rant ranting rants rap
    rape raped raping rapped rapper rapping raps rapture raptures rare rared rareness raring rasher rasping rat
    rates ration rats ratting rattling rave raved raving ravished ray rays raze razed razing re reaching react
    reactions reactive reactor reactors reading reads readying realty ream reaming reap reaper reaping reappears
    reared rearing rearm rearming rearms rears reasons reassure rebating recanting recasting recd recitals reciting
    reclining reconvened reconvening recoveries recovers recovery rector rectors rectory recurred recurring reddened
    redo redress reds reduction reed reeds reek reeking reeks reel reeled reeling reels reenacting ref reffed
    reformed reformer refracting refraction refuting regally regent regular regularly rein reined reining rejected
    rejecting rejection relapsing relating relation relegated religious relishing reliving remaking remembered
    remembers remnant removed remover rend render rending rent rental rentals renting renumber repressed repressing
    repression reprising reproved reproving reputing rerunning rescinding rescuing reserved reset resettling reside
    resold resolve resolver resolves resorted resounding resp respecting respondent responds restarting restrained
    restraining rests resulted retained retaining retaking retarded retarding retched retches retching retired
    retiring retorted retorting retracting retraction retrained retraining retried retrying returnee returnees
    returns reusing rev revere revered revering revising revolted revolve revolved revolver revolves rhombi rhythms
    ribbed ribbing rice riced rich ricing ricking ricks ridding riddle ride ridging riding rids rife rift rifting
    rig rigging righted righter righting rightist rightly rightness rights rigs rill rills rim rime rimming rims
    rind rinds ringed ringer ringers ringing rings rink rinsing ripe ripper rippled rippling rips rir rising risked
    rite riven rm roaching road roam roan roar roasting rob robbed robbing robe robs rocked rocket rocking rocks
    rocky rod rode rods roe roes roiled roiling roistered roisters role roman romping rood roof roofing rook rooked
    rooking rooks rooming roommates rooms roomy root rooting roped ropes roping rose rosy rot rotated rotates rote
    rots rotten rotting rotund rouble roubles rouge roughed roughing roughs rouging rounding rouses rout router
    routing rove roved rover roving rowel rowelling rowels rower rowing rte rub rube rubes rubles ruby ruddy rude
    rue rued rues ruff ruffed ruffing ruffs rug rugs ruin ruing ruining ruled rum rumbaed rumbaing rumble rumbled
    rumbles rumbling rumblings ruminated ruminating rummy rumoured rump rumpled rumples rumpling rums rune rung
    rungs runnel runnels runnier runny runs runt ruptures ruse rushed rushes rushing rusk rusted rusting rusts rut
    ruts rye sable sac sack sacked sacking sacks sacs sad sadden saddening saddled saddles sadly sadness safe
    safeness sag sage sages said sail sailed sailing saint saints sake sale sallow salt salting saluting salve
    salves salving sameness sames sanction sand sanded sanding sands sane sang sap sapling sapped sapping sappy saps
    sarape sarong sass sassed sassing sate sated sates sating saved saver saves savings savoring savoured savouring
    sawing sawn saws sax saying says scab scabbed scabbing scabby scabs scad scag scalding scaling scalloping scalp
    scalping scam scamming scamp scan scanning scant scanting scapulae scapulas scar scare scarfing scaring scarring
    scars scat scathing scatting scenting scheming schooling scold scone scooping scooting scoots scoping scoreless
    scorer scores scorning scotching scouring scout scouting scow scramming scrap scraper scrapes scrapped scrapping
    scraps scratched scratches scratching scrawling screeched screening screens screwing scribbled scribbling
    scrimping scripting scrunch scrunched scrunches scrunchy scrupling scuff scuffs scull sculling scumming scurry
    scurrying scuttling scything sea seal sealed sealing seam seamed seaming seams sear seared sears seas season
    seasons seating seats sect section sections sectors sects secured secures secy sedating sedation sedge seed
    seeded seeding seedling seedlings seeds seeings seek seeking seeks seeming seep seeped seeping seeps seer seers
    sees seething selectors sell selling sells semen send sender sending sensational sensations sensed senses
    sensitise sensitised sensitises sensitively sensitives sensitize sensitized sensitizes sent serape sere serenest
    serer serf serous serve settee setter setting settings settler settles seven sever severed severer severs sew
    sewing sewn sews sex sexing sexting shabby shack shackling shacks shad shade shadiness shading shaft shafting
    shag shagging shah shake shakiness shale shall shallot shallows shalt sham shame shaming shammies shamming
    shammy shams shanks shaped shapes shaping shard share shariah sharing shark sharking sharpened sharpeners
    sharpens sharpers sharpest sharping sharps shave shaving shearing sheathing sheds sheen sheep sheepish sheering
    sheeting shelf shell shelled shelling shells shelving shes shielded shies shift shifting shill shilled shilling
    shills shim shimmering shimming shimmy shimmying shims shine shines shingling shining shinned shinning shinny
    shinnying ship shipped shipping ships shirking shirring shirt shirting shirts shits shitting shlepping shlock
    shoaling shocking shod shoe shoed shoeing shone shoo shooed shooing shook shoon shoos shootings shop shopped
    shopping shops shore shored shores shoring shorn shortages shortcake shorted shortens shortest shorting shortish
    shortwave shots shouldered shout shouts shoved shoving showiness shown shows showy shredder shredders shrew
    shrewder shrilled shriller shrouded shrouding shrugged shrugging shtick shuck shucking shucks shudder shudders
    shun shunning shuns shunting shushing shut shuttered shuttering shutters shutting shuttling sic sicked sicking
    sicks sics sided sides sidle sift sifter sifting sifts sigh sighing sighs sighted sighting sightings sightless
    sightread sights signing silk sill sills silt silting silts sim simile simmering sims sin sine sing singe singed
    singeing singer singers singing singled singling singly sings sink sinking sinned sinner sinning sins sinus sip
    sipped sipping sips sir sire sires siring sirs sis sissy sisters sitars site sites siting sitter sittings situ
    six sized sizer sizes sizing skating skein sketch sketched ski skid skidding skids skies skiff skiing skill
    skills skim skimming skimp skimped skimping skimps skimpy skims skinning skins skipper skippering skirting skis
    skit skits skulk skulls skunking slab slabbed slabbing slabs slack slacked slacking slaking slamming slanders
    slanting slap slapped slapping slaps slashed slashing slat slate slating slats slaughter slave slaving slaw slay
    slayer slaying slays sled sledded sledding sledging sleek sleeking sleepier sleepily sleeps sleepy sleet
    sleeting slenderness slew slewed slewing slicing slick slicked slicking slicks slide slighted slighter slighting
    slightness slights slim slimming slims sling slinging slings slinking slipper slipping slit slits slitting slob
    sloe slog slop sloped sloping slopped slopping sloppy slops slot slots slotting sloughing slower slows slue
    slues slug slugging slugs sluicing sluing slum slumming slump slumping slums slung slunk slurp slurped slurping
    slurps slut sluts smacking smalls smarted smarting smartness smarts smashes smearing smell smelled smelling
    smells smelting smiled smiles smiley smirking smit smite smith smiting smock smocking smocks smolder smolders
    smoothing smother smothered smothering smoulder smoulders smuggle smuggled smuggles smuggling snacking snag
    snagging snail snailing snaking snapper snappier snappish snaps snare snarfing snaring snarling snatching sneak
    sneaking sneering sneezed sneezes sneezing snickered snide sniff snip sniping snipped snipping snippy snips snit
    snitch snits snooping snoots snoozing snore snorer snores snort snorted snorting snorts snot snots snout snow
    snowed snowing snub snubbed snubbing snuck snuggle snuggled snuggles snuggling soak soap soaping soaring soars
    sobbing sober soberness sock socked sockets socking socks sodden soft softball softness solar sold solder
    solders sole soled soles soli solids solved someones somethings someway somewhats sonar soon soot sooth soothing
    sooty sop sopped sopping soppy sops sorceress sorehead soreheads sorest sorrowed sorta sorter sortied sorting
    sorts sot sots sough soughed soughing soughs sound sounder sounding soundings souping sour sourcing sourer
    souring sourness sours sousing south sow sowed sower sowing sown sows spa spacing spade spading spake spam
    spammed spamming spams span spangling spanking spanned spanning spans spar spared spareness sparer spares
    sparing spark sparking sparring spars sparse spas spate spats spatter spatting spawned spawning spay spayed
    spaying spays speaking speaks spear spearing spec speck specking specs spectral speed speeding spell spelled
    spelling spellings spells spending spice spicing spieling spies spike spiking spill spilling spilt spindling
    spines spinet spiny spire spiriting spite spiting spits splashing splat splatting splay splayed splaying splays
    splicing spline splines splinting splits splittings splurging spluttered spluttering splutters spoiled spoiling
    sponging spoofing spooking spool spooling spoon spooned spooning spoor spooring spore spores sporing sport
    sported sporting sports spotted spotters spottier spout spouting spouts spraining sprains sprat sprawled sprayed
    spraying spreading sprightly spring springing sprinkling sprint sprinted sprinting spritzing sprouting spryness
    spuming spun spur spurning spurred spurring spurs spurting sputter sputtered sputtering sputters squab squabs
    squad squads squalling squaring squashing squaw squawking squaws squeak squeaked squeaking squealed squealing
    squeals squeegee squeegeed squeegees squeezer squeezers squinting squiring squirting stabbings stability stabled
    stabler stables stabling stack stacking staff staffing stag staged staging stags staid stain stained staining
    stairs stake staked staking stale staled staling stalk stalking stall stalling stammering stamping stanching
    standings stands stank staple stapling star starching stare stared stares starfish staring stark starkness
    starlight starling starlings starred starring starter startled startling starved starving starvings stashed
    stashing stat stated stating stats stave staved staving staying steak stealing steaming steeling steep steeping
    steering stellar stem stemming stems stepped stepping sterling sternums stew stickier stickies stickpin
    stickpins sticks sticky stiffed stiffen stiffener stiffeners stiffens stiffest stiffing stiffs stifling stile
    stilling stillness stills stilt stingier stingily stingy stink stinking stinks stint stinting stints stippling
    stirring stirs stitched stitching stoat stock stocking stockings stocks stoke stoking stole stolen stolid
    stomachaches stomachs stomp stomped stomping stomps stoned stoner stones stoney stoning stony stood stools stoop
    stooped stooping stoops stopper stoppering storage store stores storing storming stoutness stove stow stowed
    stowing stows strafed strafing straggle straggled straggler stragglers straggles straggling straggly
    straightened straightens straighter straightest straights strainer strainers strains strait straiten straitened
    straitening strand stranded stranding stranger strangle strangled strangles strangling strap strapped strapping
    straps strawed strawing strayed straying strays streaked streaking streamed streaming strengthen strengths strep
    stresses stressing stretch stretcher stretchers stretchier stretchy strewed striated striding strike striking
    stringed stringing strings stringy striped striping stripping strived striving strobe strode stroked strokes
    stroking strop stropped stropping strops strove struck strung strut stub stubbing stubby stubs studding
    stuffiness stumbled stumbles stumbling stumping stun stunk stunning stuns stunt stunting sturdy stuttered
    stuttering stutters styling suave sub subbed subbing subconscious subjected subjecting sublimed subs subside
    subsides subsidies subsidised subsidized subsidy subsisted subsumed suck sucked sucking suckled suckles suckling
    sucklings suction sue sued sues suet suffocation suing suit suite suiting suits sullenly sum summed summering
    summing summit sump sums sundae sundaes sunder sundering sundry sung sunk sunning sunny suns sup superb supers
    supine supper supping supports sureness surer surfing surging suspects sutured swab swabbed swabbing swabs
    swaddle swagging swallow swamping swanking swap swapped swapping swarm swarming swashed swashing swat swatch
    swathing swats swatting sway swayed swaying sways swear swearing swears sweatier sweep sweeping sweepings sweet
    sweets sweller swellings swept swerving swiftness swigging swill swilled swilling swills swine swing swinging
    swings swiping swirling swishing swivelling swoons swoop swooped swooping swop swopped swopping swops swords
    swore sworn swung synching syringing tab tabbed tabbing tabby table tabling tabs tabuing tack tacked tacking
    tackling tacks tad tads tagging tailing tails taint tainted tainting taints taken taker takes talc tale talks
    tall tallness tam tame tampering tamping tams tan tang tangle tangled tangles tangling tangoing tangs tank
    tanking tanks tanning tap tape tapped tapping taps tar tare tared taring tarnished tarp tarps tarred tarring
    tarry tarrying tars tarts task tasking tasting tasty tat tats tatter tatting tattling taunt taunting tbs
    teaching teak teaks teal team teamed teaming tears teary teas tease teased teasing teat teats tee teed teeing
    teem teemed teems tees teethe tel telling tells temperament temperamentally temperaments temping ten tend tended
    tenderest tenderises tenders tending tenon tenons tense tenseness tenser tensions tent tentacles tenth tern
    terribly test testable testicle testifies testing tether tethered tethering text textiles thanking thatching
    thaw thawing thee theirs theme thick thin thine thinking thinks thinning thins tho thong thongs thorn thorough
    thoughts thralled thrashed threaded threat threes thrill thriller thrillers thrills thrived thriving throats
    throaty throe throes throng thronged thronging throws thrumming thudding thuds thugs thumbing thump thumps
    thunderclaps thunders thunk thunks thus thx thy ti tick ticked ticking tickling ticks tide tie ties tiff tighten
    tightest tightly tights tike tikes tile tiling tilled tiller tilling tills timed timeless timer tin tinder tine
    ting tinge tinged tingeing tinges tinging tinglings tings tinkle tinkled tinkles tinkling tinning tins tinseled
    tinseling tinselled tinting tip tipped tipping tippled tippling tips tireless tissue tissues tit tithe title
    titling tits tittle tizzy toad toady toddy toed toenails toffee tog toga toggling togs toil toiled toiler
    toilets toke tokes told toll tolled tom tome tomes toms tone tones tong tongued tongues tonguing tons tony tool
    tooling toot toothaches toothy tooting toots topped topping toppings topple topples toppling tops topside
    topsides tor torch tors tort torte toss tost tot tote totes tots totter tottered tottering totting toughs tour
    tours tousled tousles tousling tout touting tow towel towelling towels tower towing town tows toy toys traced
    tracer traces tracing track tracked tract traction tractors trade trading trail trailed trailing trained trainee
    trainer traipsing tram tramming tramp tramped tramping trampling tramps trams trance trans trapper trapping
    trashes trashing trawling tray trays treading treadle treason treasure treat treating trebled trebles trebling
    tree trekking trellising trembled trembles trembling trench trenched trenches trenching trending tress tresses
    trialed trialing trialled trice trick tricked tricking trickling trickster trifled trig trilled trim trimesters
    trimming trio trip tripled tripling tripped tripping trips tris trite trolled trolling tromping tron troop
    trooped troopers trooping troops trope troth trotters trotting trough trounced trounces trouncing trouped
    trouper troupers troupes trouping trouser troweled troweling truce trucking truckles truckling trues trumping
    trunking trussed trussing trust trusting trusty try ts tsar tsars tsp tub tubby tubes tubs tuck tucking tugging
    tugs tumbled tumbles tumbling tun tuned tunes tuning tunnelings tunnelling tunnellings tunnels tunny tuns turd
    turf turfed turfing turner turns tush tushes tuxes twain twanging twangs twee tweed tweeds tweeted tweeting
    tweets twerk twerked twerking twerks twig twigged twigging twiggy twilled twine twined twines twingeing twining
    twink twinkling twinned twinning twins twirling twister twisters twisting twists twit twitch twits twitted
    twitting tying tyke tzar udder um ump umped umping unattached unbearably unbeatable unbreakable unbuckles
    unbuckling unchanging uncomfortably uncomplaining uncompressed unconcerned unconsciously unconsciousness
    unconvinced uncovered uncovering unction unctions undercarriages unformed unhinging unimpressed unpinning
    unproved unread unreadable unresolved unseal unset unsettling unsnapping unsolved unstopping unstressed
    unsuitable untie untimely unto untrained untroubled unusable upbringing uplifting uppers upraised upsets
    upstanding upstarting upturned upturning urea uric urinates urination urn urns us usable useable user uses
    uttered uttering utters vaginae vain valuations valve valves vamping van vane vanish vanishes vanquished var
    varnished varnishes vars vary varying vase vast vat vats vaunt vaunting veal vectors veep veeps vegan veld vend
    vender venomous vent verb verbose veritable versions verve vesicles vest vesting vet vets vetting vibe viced
    vices vie vies vile vim vine violet visa vised vises visions visiting voice voicing voiding volt volumes vomits
    voting vouch vouching vow vowel vowels vows vying wack wacks wad waddle wade waded wader waders wading wads
    wafer wafers waft wag wage wager wagers wages wagging waggling wags wail wailing waist waists waited waiter
    waiters waiting wake waked wakened wakening wakes waking wale walking walkouts walks walled walling walloping
    wallopings wallowing walls walruses wan wand wands wane wangling wank wanting wants war ward warder wards ware
    warier warmed warmers warms warn warp warred warring wars wart warts warty wash washed washroom wasp waster
    wasters watches watching watery watt wattling wave waver wavering wavers waviness waving wavy wax waxy ways we
    weakened weakens weakest weakling weaknesses weal wealthy wean weaning wear weariness wearing wears weary
    wearying weaving web webs wed wedge weeded weeding weeds weedy weekends weep weeping weepings weeps weer weest
    weft weigh weighted weighting weighty weir weirdo weirs welched welching weld welding welds welled welling wells
    welt welting welts wen wench wenches wend wended wends wens wept west wetness wets wetter whacker whacking whale
    whammies whammy whams whats wheat wheedling wheel wheeling wheels wheezed wheezes wheezier whelp whelping whens
    wheres whet whetting whew whey whiffing whiled whiles whiling whim whine whined whinnying whiny whip whiplashes
    whipping whips whirling whirring whisking whist whit whiten whiter whites whiting whits whiz whizzing wholes
    whom whooping whopping whore whose wick wicker wicket wicks wide wield wifi wig wigging wiggle wiggled wiggles
    wiggling wiggly wight wights wilds wile wiled wiles willing wills wilt wily wimp win wince winced winch winched
    winches winching wincing wind winding wined wines wing winged winger wingers winging wings wining wink winked
    winking winner winning wino wins wipe wipes wire wireless wires wiry wise wises wish wist wit witch witching
    withered withering wits witting wive wives wiz wizes wobbled wobbling woe woes wok woken woks wolf women won
    wont woo wood wooding woods woody wooed woofing wooing woolen woollen woollens wooly word worded wording wordy
    wore worker workings works worlds worm wormed worming worms worn worrier worryings worsen worsting worsts wot
    wound wounding wounds wove wow wows wrack wrangling wrap wrapped wrapping wraps wreak wreaked wreaking wreath
    wreathe wreathed wreathing wreaths wrecker wrecking wren wrenches wrenching wrest wresting wrests wretch
    wretched wretches wriest wriggling wright wring wringing wrinkling writ writable write writs wronging wrongs
    wrought wrung wry wt xor yack yacked yacking yacks yam yammer yammering yams yap yapped yapping yaps yard yaw ye
    yea yearly yeast yell yellowing yelp yelping yep yes yessed yessing yesterdays yew yip yipped yipping yips yock
    yocks yogi yoke yon yore your youth yuck yucked yucking yum yummy yuppy zany zapper zeal zed zeds zeros zest
    zinc zincing zincking zincs zinged zinger zingers zip zipped zipping zips zit zits zone zones zonked zoo zoom
    """
)
