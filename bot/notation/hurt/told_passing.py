"""Rows of signs told in any order, as they are dropped in passing among sets: somebody unplugged the legs.

In the language of `bot.notation.hurt.told.told_rows`, with the classes of `bot.notation.hurt.told_classes` and some
of its own. Gathered by us.
"""

from bot.notation.hurt.told import told_rows
from bot.notation.hurt.told_classes import CLASSES

_OWN = """
unplugs: unplugged unplugs disconnected disconnects uninstalled unscrewed amputated
takes: stole stolen took nicked swiped pinched borrowed removed confiscated hid
fades: asleep dead numb gone tingly weak heavy missing wooden
roars: screaming screamed screams roaring roared roars howling howled shrieking shrieked shattered shattering
blows: hit struck kicked clobbered whacked clouted belted smacked thumped walloped clonked coshed
darker: mahogany chestnut whisky whiskey bourbon soy claret merlot burgundy espresso liquorice licorice balsamic
    worcestershire cognac brandy sherry teak walnut conker peat peaty creosote ditchwater dishwater diesel
tendon: achilles bicep biceps calf hammy hamstring pec quad tricep triceps
metal: iron steel metal metallic invisible wire barbed
hoop: band belt clamp corset girdle hoop jacket rope strap vice vise
nobody: nobody noone no-one none empty
sweats: sweat sweating sweats clammy sweaty sick grey gray breath pale
mishaps: wee pee piddle poo number widdle tinkle dribble
"""
_ROWS = """
chest 7: @burdens | camped camping decided lives moved park parking parks perched plonked settled settling squatting |
    me ! @laughter bus doms hips legs quads sore
chest 6: @metal | @hoop | around across over round | breast breastbone chest me ribcage ribs ! bar bench brace braced
    lifting pulls row rows
chest 12: @hoop | around across round | rib ribcage ribs | @sweats ! lifting brace braced bra loosened notch
    resistance pulled press row
chest 8: tight tightness squeeze squeezing squeezed squeezy grip gripped clench clenched ache aching fluttery | chest
    ticker | stairs steps hill climb climbing walk walking | stop stopped stops rest resting ! climber step-ups
    incline mountain doms
fainting 8: wobble wobbled wobbler wobbly swayed swaying whitey whitie | deck floor ground mat ! board box plate plank
fainting 8 sober: all everything | white whited | then next sec second seconds moment suddenly ! snow snowed frost
    paint painted walls wall decorated chalk chalked teeth kit wearing clothes shirts tiles screen app page sheet
    dress
fainting 6 sober: lost lose losing | floor ground room | moment sec second seconds suddenly ! keys phone bet level
    plan bar weight control press plate
fainting 7 sober: lost missing blank cut | minute minutes moment moments film reel time | floor deck ground mat
    ceiling rack | don't can't no cannot remember idea ! plank press app
breath 12: air breath breathing | get gets go goes going getting | in inside | doing helping filling feeding reaching
    satisfying touching | @not nothing ! @laughter bike pump mask tyre ball
breath 13: breath breaths breathe breathing air | halfway half-way midway caught catches hits sticks stops stuck |
    deep full proper big keep trying try ! @laughter hold brace bracing cue between bar
breath 22: attempting attempt tried trying try | air breath breathing wind | isn't never not won't hasn't | come came
    coming ! @laughter bar delivery parcel bus message signal mask tyre bike
breath 12: breath breathing puff wind | hasn't never not isn't won't | caught landed made shown turned reappeared
    rejoined reported ! @laughter coach tyre bar set app
headache 14 sober: @blows | head skull | @nobody | there about around behind beside near ! bar plate rack ball
    @laughter
headache 9: head skull | @roars | blue nowhere sudden suddenly instant flash ! @laughter bar boss kids music baby
headache 10: head skull | lit exploded flared erupted | pain ache agony | second sec flash instant once ! @laughter
    idea bar
no feeling 12: @cannot didn't don't doesn't not | feel know knew sense tell notice noticed | hot boiling cold scalding
    warm freezing burning icy | arm foot hand leg finger fingers ! gym weather room bar shower outside warm-up
no feeling 11: burned burnt cut stood trod | arm foot hand finger fingers leg toe | feel felt notice noticed know |
    didn't never not nothing until till ! @laughter calories pump
no strength 8 sober: @unplugs | my both left right the her | arm arms hand leg legs foot ! cable charger headphones
    phone machine treadmill app lever
no strength 5 sober: somebody someone something they | @unplugs | my | arm arms hand leg legs foot ! charger
no strength 7: somebody someone something they | cut pulled shut switched turned | arm arms leg legs foot hand | off
    plug power out wires strings ! @laughter light lights music fan
no strength 8: somebody someone something they | @takes | my | legs leg arm hand bones ! @laughter day machine press
    bar rest strap wrap sleeve doms sore
no strength 8: arm arms leg legs hand foot | shut switched turned | off ! @laughter glute glutes quads hams muscle
    machine light lights mind app tv music press curl extension heating shower set sets rep reps last
no strength 10: ankle foot hip knee leg | can't cannot couldn't won't wouldn't | bear carry hold support take | weight
    ! @laughter barbell bar more extra heavier rep reps press plate lost
no strength 9: knee leg ankle hip | noise popcorn crack cracked bang sound crunch clunk | folded buckled collapsed
    crumpled ! @laughter chair table deck bench
no grip 9: grip | disappeared evaporated vanished left deserted | hand left right | back just now since still !
    @laughter bar chalk last rep reps straps tape strap
no grip 9: fingers hand hands | don't doesn't not won't | listen cooperate oblige behave ! @laughter coach bar music
    straps cold
stroke 8: half side | left right | @fades | me body myself ! @laughter leg press lever day couch bed bridge lunge
    lunges set rep reps row bench curl raise sore plank
stroke 9 sober: blind curtain shade shutter veil | eye eyes sight vision | across came closed coming down dropped fell
    falling over ! @laughter blinds shower window room spot stage rail fold
stroke 8: face mouth smile cheek | isn't not won't doesn't stopped | moving move work working with joining match !
    @laughter mask bar pulls pull wash
pop 14 sober: @tendon | balled bunched rolled rolling sprang | armpit elbow hip knee shoulder top up | felt heard pop
    popped rip ripped snap tore torn went ! @exercises foam roller rolled-out
control 12 sober: did done had having | @mishaps | bench floor gym machine mat platform rack set squat | choosing
    intending intention knowing meaning noticing realising realizing trying wanting ! before after dog puppy cat baby
    kid toddler child son daughter
control 12: 2 two twos | number no | came come coming escaped exit left made | alone asking by invitation invite
    invited itself own permission warning ! app plate plates pin room locker bus
control 10: bladder bowel bowels pee poo wee | consent invitation permission say-so | @not without ! @laughter gym
    boss
grave 9: crash crashed fell fallen slipped tumbled tripped | ankle arm collarbone elbow hip leg wrist | broke broken !
    pb pr record bar press day
cord 9: legs | dead numb asleep gone disappeared nothing | waist belly hips ! @laughter doms @exercises tired session
    pump
fainting 8 sober: @floor | came jumped leapt rose rushed | up | greet hello hi hug kiss meet say slap ! bar
fainting 12 sober: next | know knew recall remember | bloke faces folk guys lads man men people somebody someone staff
    strangers woman | fanning feet head holding leaning legs lifting looking over shaking slapping ! session week
fainting 7 sober: lights | dimmed dimming flickered flickering | me my ! bike car bedroom flat front hall house room
    gym tree christmas bulb bulbs lamp
fainting 8: came come coming | back round to | lying propped sat sitting slumped sprawled | against floor ground rack
    wall ! break lunch later
fainting 12 sober: go going went | cotton fuzzy gray grey swimmy white wobbly woolly woozy | kneel lie lay sat sit |
    had having me ! hair paint plates
fainting 6 sober: timber | back backwards down fell like over straight went ! deck floor wood yard frame @laughter
fainting 9: cut film gap missing reel skip tape | missing skipped lost blank cut | ceiling floor next then ! cable
    phone app wifi stuntman video
fainting 9 sober: brain head system | crashed froze rebooted reset restarted shut switched | lost moment sec second
    seconds secs ! app phone watch plan
breath 8: air breath breathing puff wind | didn't hasn't haven't isn't never not won't | home ! drive train bus
    @laughter bike
breath 8: @cannot | blow | candle candles ! @laughter
breath 9: breath breathe breathing inhale | nothing nowt | arrives comes enters happens lands reaches ! hold brace
breath 9: lung lungs | holiday resigned strike | hour hours minute minutes mins since still ! @laughter
breath 6: breathing respiration | isn't no not | normalising recovering returned returning settling ! fine good normal
    ok okay technique
headache 14: like | cracked drilled drove fired hammered poured rammed shoved stuck | brain head skull | in inside
    into through ! @laughter bar music plate rack song
headache 8: head skull brain | like | bomb bombs cannon dynamite firework fireworks grenade landmine rocket volcano !
    @laughter ideas music work
headache 10: head skull | axed chopped cleaved cleft cloven halved hacked | @atonce second like went ! @laughter bar
no feeling 9: arm fingers foot hand leg thumb toes | belong belonging belongs stranger stranger's | else somebody
    someone stranger to ! @laughter glove shoe bag
no sense 9: @cannot | feel know tell | shoe shoes sock socks slipper | off on ! heavy loose wet size
stroke 9: cheek face lip lips mouth smile | half just one only | half side | move moving moves work working works up !
    @laughter mask
stroke 10: sound sounding talk talking speaking | like | beers bottle drunk gin pints vodka whisky wine | had i'd none
    sober though ! pub @laughter
stroke 5: everything | double doubled two twos | now see seeing since suddenly ! cost price prices weight load plan
    rent bill sets reps bills @laughter
control 10: dribbled piddled sprinkled tinkled widdled whizzed | floor leggings bench mat meself myself pants platform
    shorts stop warning ! baby cat child dog kid pup puppy toddler rain tap
control 12: 2 two twos | number no | happened arrived ran went | alone itself own warning ! app plate plates pin room
control 14: gone pee peed urinated wee weed | haven't hasn't not nothing | since | can't couldn't nothing won't !
    @laughter gym
pop 12 sober: @tendon | felt heard | go going gone went | bunched elbow shoulder armpit up ! @exercises warm pump
pop 12: @tendon | sounded sounds | branch gun gunshot pistol rifle shot stick twig whip ! bar plates @laughter
pop 12: knee ankle hip | bang crack crunch snap pop | folded buckled crumpled collapsed ! @laughter bar rack
clot 8: calf | boiling hot roasting warm | coals fire iron kettle oven radiator stove toast toaster ! @laughter pump
    foam roller bath
clot 14: calf | fit fits squeeze | boot boots jeans legging leggings sleeve sock trousers | @not | heavy hot red sore
    swollen tight throbbing warm puffy ! gains
urine 9: leak pee peed peeing slash tinkle wee whizz widdle urine jimmy | @darker | 's came color colour dark it is
    like looked looks out was ! ate beetroot beer drank drink drinking drunk eaten paint pub spill spilled spilt table
    floor bar
heart 11 sober: @heart | clappers drum drums jackhammer piston pistons train bongos woodpecker drill engine | after
    half hour hours later minutes mins sat since sitting still ! plan zone cardio music warmup
"""
PASSING = told_rows(_ROWS, f"{CLASSES.strip()}\n{_OWN.strip()}")
"""The rows of what is told in passing."""
