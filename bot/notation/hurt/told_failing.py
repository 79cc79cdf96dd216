"""Rows of signs told in any order, by whole classes of words: what everybody's body does, and this one does not.

In the language of `bot.notation.hurt.told.told_rows`, with the classes of `bot.notation.hurt.told_classes`. Gathered
by us.
"""

from bot.notation.hurt.told import told_rows
from bot.notation.hurt.told_classes import CLASSES

_ROWS = """
chest 8: tightness tight pressure squeezing heaviness | rib ribs ribcage | sweat sweating sick nauseous nausea breath
    behind arm jaw ! belt vest bra @laughter
fainting 9 sober: fell collapsed dropped | don't can't no | know remember idea | how why what ! bar weight asleep plan
    behind plates phone
pop 10: felt feel | @tendons | go going give went | @cannot | push walk press stand lift rise ! pump further heavier
    without
clot 9: calf | balloon football footy loaf log marrow melon trunk | boiling hot red roasting warm ! @laughter foam pump
    roller
clot 4: calf | doubled tripled ballooned ! volume reps sets raises work @laughter
breath 5: @hurts | breath breathe breathing breaths exhale exhaling inhale inhaling ! @laughter back blade blades
    feelings lat lose neck nose see shoulder shoulders throat trap traps watch
breath 15: breath breathing | hasn't haven't not never | recovered returned settled ! @laughter coach set sets soon
breath 6: breathing respiration | @odd | goes gone has is now since still turned went ! @laughter brace bracing cue
    during nose pattern rep reps set sets squat squats technique timing
breath 8: air breath breathing wind | @unwilling can't | back calm normal return settle ! @training @laughter between
    fight hold
breath 9: breath breathing wind | no | hurry inclination intention rush | back calm normal return settle ! @training
    @laughter between fight hold
breath 6: lack out short | air breath puff wind | flat level nothing pavement ! @training @laughter flats
breath 6: pillow pillows upright | air breath breathe breathing ! @training
breath 4: breath | isn't not stays | away back ! @training @laughter hold
breath 5: air breath breathing breaths | agony battle chore fight fighting impossible labored labour laboured
    struggle torture | each every for is just single ! @training @laughter
breath 9: gasping gulp gulped gulping sucking swallowing | air oxygen | @not enough ! @laughter
breath 7: lung lungs | @not | draw expand fill filling get getting inflate inflating open opening take taking work
    working ! @laughter altitude bike cardio fit fitness mountain rower sled
breath 8: air breath | corridor flat hallway shop shops stairs walk walking | pause rest resting stop stopped
    stopping ! @training @laughter
breath 5: breath breathe breathing chest lungs | bubbling bubbly crackling crackly gurgle gurgling rattle rattles
    rattling rattly whistling ! chesty cold cough flu
breath 4: air breath breathing wind | never no not | came come coming return | back ! @laughter con gym hold
    stronger tomorrow will
breath 8 sober: gasp gasping panting puffing wheezing | still | lying minute minutes mins minuts resting seated
    sit sitting ! @laughter @training coffee pint beer
breath 12: air breath breathe breathing | @cannot | lie lying | back down flat ! bench brace bracing hold holding
breath 9: @winded | @nowork ! @training @laughter
breath 8: @winded | climb climbed flight steps upstairs walk walked walking | bus car door gym here just kitchen
    only shop ! @training @laughter
breath 7 sober: breathe breath inhale | nothing nowt | comes enters gets goes went ! hold
chest 5 sober: breastbone chest | itself | clenches clenching closes closing crushing folding squeezes squeezing
    tightening
    twisting wringing
heart 6: @heart | stop stopped stops | beat feel felt moment second ! @laughter bar rate saw watch when
heart 8: fluttering galloping hammering pounding racing thumping | @heart | bed desk lying nothing rest resting sat
    sick sitting sofa tv ! @laughter between cardio interval intervals rest-times rower set sets sprints zone
heart 8: @heart | erratic erratically irregular irregularly uneven unevenly ! @laughter
heart 11: @heart | @cannot stuck | below down lower settle slow under | after ages hour later min mins minutes still
    ! @laughter goal plan strap target warm zone
heart 6: @heart | did do does doing had having | dance flip funny hiccup jig jump loop lurch pause strange thing
    turn weird wobble wobbly ! @laughter cardio monitor plan rate-monitor strap when zone
heart 3: heart heartbeat pulse ticker | flipped flopped hiccuped hiccupping jolted jolting lurched lurches lurching
    paused quivered quivering shuddered somersaulted stalled stalling stumbled stumbling thudded thudding tripped
    wobbling ! @laughter bar broke price saw when
heart 11: jaw | arm blades breastbone chest | down goes going into radiates radiating shooting shoots spreading
    spreads travelling travels up ! @laughter clench clenched clenching
chest 4: breastbone chest | buzzing fizzing gurgling prickle prickles prickling quivering thump thumps ! hair shave
    shaved strap
chest 9: breastbone chest | ache aches heavy hurts pain sore tight tightness | climbing hill stairs steps uphill
    walking ! @gear climber doms step-ups
chest 6: armpit nipple | ache pain sharp stab stabbing stitch | behind beneath under ! @laughter
chest 7: band belt corset girdle rope strap | around round | chest me ribs | squeezes squeezing tight tightening
    tightens ! @laughter ankles knees lifting loosened new notch rack resistance thighs waist
chest 7: @someone | @onme | breast breastbone chest sternum | feels feel felt if like though ! @laughter baby cat
    daughter dog fly kid looks looked machine son toddler
chest 9: band belt corset girdle rope strap vice vise | around round | breast breastbone chest | feels felt like |
    pulled squeezed tightened wrapped tied cinched ! @laughter ankles knees lifting loosened new notch rack resistance
chest 8: @breasts | @burdens somebody somebodys someone someones something somethings | across in on over ! @gear
chest 6: @burdens | parked sat sit sits sitting standing stands stood | me ! @laughter bus doms hips legs quads sore
chest 3: chested | bit heavy tight tightness wheezy ! big flat
chest 4: boob boobs bosom bust thoracic thoracical | @ill ! @bones bra pb pr
chest 6: behind beneath under | bone breastbone sternum | @ill ! @bones
chest 7: bra | feel feels felt | shrank shrunk small smaller tight tighter ! bigger buy dryer new order ordered
    size wash washed wrong @laughter
chest 4: breast breastbone chest | oppressed pressed presses pushed squeezed | hard lot much strong strongly very !
    @gear @bones better load lot-of plan reps sets today
blood 5: cough coughed coughing phlegm spat spit spitting | blood bloody frothy pink red rusty ! band bar drink lips
    preworkout shaker
fainting 7: @floor | came coming rush rushing | up | at towards toward fast saw quick meet ! @laughter bar hands
    knees plank press
fainting 10 sober: feel feels felt | somebody someone they | drew flicked flipped pulled switched turned | curtain
    curtains light lights | down off out ! bulb gym heating radiator room
fainting 5: conscious consciousness | almost barely just keep remain remained stay stayed ! cost self time weight
fainting 6: blood | drained leaving left ran rushed rushing | brain face head ! test to
fainting 9: recall remember | @cannot didn't doesn't don't | hour minutes session workout | any anything bits half
    happened most nothing whole ! @laughter last loaded loads numbers reps weight weights written
fainting 7: distant dreamy faraway floaty spaced spacey spacy unreal | floor held hold kneel knelt lay lie lying sat
    sit stop stopped | all feel feeling felt go went ! @laughter bike meditation yoga
fainting 3 sober: eyesight sight vision | cut disappeared failed failing goes gone left lost went ! app camera
    glasses great lasik lenses screen test
fainting 9: carried helped lifted picked | be been me | off up | deck floor ground platform ! @laughter bar dumbbell
    dumbbells plate plates weight weights
fainting 8 sober: catch catched caught | me | collapsing fainting falling passing swaying toppling ! asleep bar
    behind spot
fainting 5: blank | go going was went | @lifts mid sec second seconds secs ! brain cheque count form mind page sheet
fainting 6: eyes | go gone went | blank blurry dim funny fuzzy spotty strange swimmy weird white wonky ! @laughter
    app eye lashes screen sweat wide
fainting 9: @floor ceiling lights rafters roof | looking staring | next suddenly then ! @laughter plan press
fainting 7 sober: lights | did go gone went | head i knees legs me ! cut early gym in off power street
fainting 5 sober: awake conscious consciousness round | bringing brought poured shaking shook slap slapped splash
    splashed talked threw | me ! alarm bed coffee tea
fainting 5 sober: eyesight sight vision | blank blotchy closing distorted faded fading funny gone grainy jumping
    milky patchy pinhole shaky speckled spotty strange swimmy weird white wobbly | @spent all bit had has my ! app
    camera chart contacts glasses lasik lenses phone screen video
fainting 8 sober: color colors colour colours | disappeared drained faded left washed went | down everything face
    floor kneel kneeling lie sat see sit ! band bands clothes kit paint plates shirt wash
fainting 8 sober: gray green grey pale white | go turned turning went | collapsed dropped fell floor knees lay lie
    sat sit swayed wobbled ! band bar belt hair light lights plate plates shirt
fainting 9 sober: next | knew know remember remembered | @floor chair faces looking lying people sat sitting sofa
    someone staring wall water ! exercise plan session set week weight
fainting 4 sober: losing lost missed missing | sec second seconds secs ! app balance bar between bike clock
    one ones rep reps set sets concentration connection control count focus footing form from grip hold interest
    it my off on pace pb plank position pr rest row rower run sight signal split tension time timer track video wifi
fainting 10 sober: out | for | bit few moment sec second seconds secs while | been was were | @lifts ! action day
    days dinner drinks flu holiday ill injured injury month ride run sick walk week weeks went
fainting 12 across sober: @fell fallen floor | @not | answer answered answering reply replied replying respond responded
    responding | moment people sec second seconds secs somebody someone they ! call email message phone question
    questions text texts
fainting 9 across sober: @floor | @fell | memory recall recollection remember | @not ! many plank press reps weight
headache 4: brain head skull | went | bang boom pop snap ! @laughter bar rack
headache 6: bolt jolt lightning shock zap | brain head skull | across in through ! @laughter
headache 5: bang boom burst crack explosion snap thud whoosh | brain head skull | behind in inside ! @laughter bar
    bench idea music plate rack
headache 20: @strikes | head headache headaches migraine skull | @atonce blinding ! @laughter bar idea lights rack
headache 12 across: like | bashed belted clubbed hit kicked slugged smacked smashed struck thumped walloped whacked |
    head headache skull ! @laughter ball bar bench idea pb rack truck
headache 12: head | @dreadful | @atonce ! @laughter bar idea lift lifted move moved moving news nod nodded pb turn
    turned turning
headache 14: bang blast boom crack pop snap thud thunderclap whoosh | head skull | ever worst ! bar bench music plate
    plates rack song
headache 9: acid boiling burning hot molten scalding | acid lava lead liquid oil petrol water | brain head skull |
    across down in inside into over through ! bath bottle hair shower tap tea wash washed
headache 8: head headache migraine | blind dropped floored puked screamed screaming vomit vomited vomiting | ache
    aching headache knees me pain so ! @laughter bar boss traffic work
stroke 5: word words | wrong | came coming said say saying using ! @laughter app autocorrect meant mean message plan
    sorry
    spelling text typed
stroke 5: repeat repeating | myself | keep keeps kept ! @laughter coach
stroke 4: side | entire left one right whole | dead droopy limp numb paralysed tingly weak | feel feels felt goes
    gone is suddenly went ! @laughter always bench bridge bridges curl curls glute lagging lever lunge lunges plan
    plank press raise raises rep reps row rows set split squat squats stronger than today weaker
stroke 4: word words | can't didn't don't won't wouldn't | come out ! @laughter easily easy how plan swear
stroke 5: @face | @slipped dropped | bit corner half is left one right side suddenly ! @laughter bar dumbbell
    kettlebell phone plate punch saw weight when
stroke 5: speech | broken clear drunk drunken funny fuzzy garbled gone heavy jumbled lazy lost muddled mush odd off
    place scrambled slow slurred strange thick weird went wrong ! app best dictation gave giving mic microphone text
    wedding
stroke 6: eyelid face lip lips mouth smile tongue | @cannot doesn't isn't | behave blow close lift move moving open
    shut smile whistle work working ! @laughter big dry stop
stroke 7 sober: sentence sentences word words | @cannot | find form get out pronounce say saying speak ! @laughter
    app breath describe enough explain fast for good grateful happy how love pb plan pr proud rude swear thank
    thanks
stroke 11: babble babbling garbage gibberish gobbledygook jibberish nonsense rubbish | said saying speak speaking
    spoke talked talking | aware knew know notice noticed realise realised realize realized sense ! @laughter always
    he ignore lads online podcast politics she spotter they you
no feeling 10 posed: @insults | @ends | @not wouldn't | clue feel feeling felt idea know knowing notice noticed sense !
    @laughter @worn back bar barbell bell chest curl curls dumbbell glute glutes hurt hurts how lats pain plate stretch
    when
no feeling 10 posed: pinch pinched pinches pinching poke poked poking prick pricked pricking prod prodded slap slapped
    | @pairs | @not wouldn't | feel feeling felt notice noticed sense ! @laughter @worn back bar barbell chest glutes
    hurt hurts lats pain stretch
no feeling 6: pinch pinched pinches pinching poke poked prick pricked touch | @ends @pairs | nothing ! @laughter floor
    ground hurt hurts pain
no feeling 8: touch touched touches touching | @ends @pairs | can't don't doesn't | feel know notice sense tell !
    @laughter floor ground hurt hurts pain stretch
no feeling 14: pinch pinched pinches pinching poke poked pokes poking prick pricked rub rubbed rubbing slap slapped
    stroke stroked stroking touch touched touches touching | @ends @pairs | nothing nowt | feel feels feeling felt !
    @laughter chalk floor ground hurt hurts pain
no feeling 10: rub rubbed rubbing stroke stroked stroking | @ends @pairs | can't don't doesn't | feel know notice sense
    tell ! @laughter chalk floor ground hurt hurts pain stretch
no feeling 9: arms legs | can't | feel | them ! @laughter burn chest core glutes lats much quads stretch tomorrow
    working
no feeling 7: feet finger fingers foot hand toe toes | can't don't | feel | it them ! @laughter burn chest glute glutes
    hamstring hamstrings lats like much quads stretch working
no feeling 9: @ends @pairs | @not | attached belong belongs mine ! @laughter
no feeling 8: anaesthetic anaesthetised anesthetic novocain novocaine | feel feels felt like | arm face feet finger
    fingers foot hand hands leg lip thigh toe toes ! @laughter
no feeling 6: arm feet fingers foot hand hands leg toes | @cannot doesn't hasn't | wake woke woken ! @laughter alarm
    bed early
no feeling 9: area bit patch spot strip | feel feeling sensation | can't don't no nothing ! hurt hurts muscle pain
    sore working
no feeling 5: dead | area patch spot strip | down in of on over ! bar grass lift rep signal sticking zone
no feeling 6: ankle cheek face heel lip shin sole thumb | feel feeling feels | anything nothing ! @laughter bad
    different fine great hurt hurts off pain wrong
no feeling 5: arm arms feet foot hand hands leg legs | alien detached disconnected foreign unplugged | are feel
    feels felt is like ! @laughter cable mind muscle strap
no strength 6: arm foot hand leg | useless | is now since suddenly ! @laughter after fried pump pumped straps tired
    today
no strength 8: knee knees leg legs | buckle buckled buckles buckling | car home stairs walk walking ! @laughter bar
    carries carry lunge lunges rep reps set squat squats
no strength 8: leg legs | can't won't wouldn't | tried try trying | get move stand up walk ! @laughter bar hole rep
    reps squat squats weight
no strength 11: leg legs | buckled folded gave give gone went | @cannot | stand up walk ! @laughter bar hole press
    rep reps set sets squat squats weight
no strength 11: legs | @cannot | bear carry hold support | me myself ! @laughter bar doms hole rep reps sore squat
    squats weight
no strength 12: arm finger fingers foot hand leg toes wrist | ask order say tell told | doesn't don't not won't | close
    go grip lift move open raise rise ! @laughter coach you
no strength 7: arm | @cannot | bring get hold lift raise | up ! @laughter bar doms enough fast high higher hurting
    hurts overhead pain pump pumped sore soreness weight without
no strength 5: arms legs | don't won't | answer obey | me ! @laughter
no strength 10: legs | no without zero | force life power strength | bed chair sofa stairs stand standing toilet
    walk ! @laughter doms press rep reps set squat squats
no strength 4: @limbs | @slack ! car window sunburnt @exercises @laughter
no strength 8: bicep biceps calf hammy hamstring pec quad tricep triceps | balled bunched curled dangling drooped
    drooping hanging hangs hung rolled | blind felt go gone it it's just now pop snap spring up went ! @exercises
    @laughter foam rolled-out roller
no grip 8: grip handshake squeeze | feeble gone lost nothing weak weaker | lately nowhere overnight sudden suddenly
    ! @laughter bar last rep reps straps
no grip 3: foot forefoot toes | drop dropping drops slapping slaps ! @laughter bar box jump jumps on plate set sets
    weight
no grip 8: finger fingers thumb | @cannot | curl meet pinch snap straighten together touch wiggle ! @laughter bar
    fat floor fully hurting hurts pain reach sore toes without
no grip 12: grip | fraction half quarter third | left one right | since suddenly used was ! @laughter rack rep reps
    strap straps
no grip 8: drop dropped dropping drops | cup cups cutlery glass glasses keys mug mugs pen pens phone | always keep
    keeps lately since suddenly twice ! @laughter bar foot lifts toe weight weights
no grip 9: grip | disappeared gone nothing vanished zero | completely overnight suddenly went | hand left right side
    ! @laughter bar chalk last rep reps tape
no grip 6: fist fists | @cannot ! @laughter bump doms pump pumped
no grip 7: bottle button buttons cup doorknob fork glass jar kettle key keys knife laces lid mug pen pencil
    shoelaces spoon tap toothbrush zip | @cannot | do fasten get grip hold lift manage open pick squeeze tie turn
    undo unscrew use work write ! @laughter app car chalk cooked dead doms find fried gym locker pump pumped sore
    stuck sweat sweaty toast
cord 11: back | both | feet legs | buzzing fizz fizzing pins tingle tingles ! @laughter doms pump
pop 10: bicep biceps | bunched lump short shorter | black bruised pop popped snap snapped ! @laughter curl head
pop 8: ankle elbow hip knee shoulder | jammed locked seized stuck | clunk crack cracked pop popped snap snapped !
    @laughter lockout out
pop 6: @tendons | came come detach detached pulled rip ripped snap snapped tear tore | away bone clean off !
    @laughter band curl machine pin pulldown roller
pop 10 sober: achilles calf heel | bang crack cracked exploded pop popped snap snapped twang | hit kicked shot
    struck whacked ! @laughter
pop 10: achilles bicep biceps calf hammy hamstring pec quad tricep triceps | ball bulge crater dent gap hole hollow
    lump | can't looks pop popped rip ripped snap snapped tore torn weird won't ! @laughter ball-slams foam form
    massage massage-ball roll roller
grave 8: ankle arm elbow finger foot knee wrist | wrong | angle direction way | bent facing pointing points sticking
    twisted ! @laughter lift
grave 6: bone | bent crooked odd poking sticking weird wrong | in is look looks out through ! @laughter broth
    chicken dog funny idle
grave 9: ankle arm collarbone elbow finger forearm knee leg shoulder thumb wrist | funny odd strange weird wrong |
    shape shaped ! @laughter bar body build curl handle muscle
clot 6: arm calf leg shin thigh | red | hot warm ! @laughter band bands bath pump sun sunburn
clot 12: calf | puffy swelled swelling swells swollen ! @laughter calves pump pumped
clot 10: arm calf leg thigh | bigger puffy swelled swelling swells swollen thicker | cast coach drive flight journey
    operation overnight plane surgery ! haha lol pump pumped
control 6: leak leaked leaking peed peeing weed wetting | @lifting ! @laughter after before between bottle break
    hose need needed pipe power quick radiator roof shaker sink stop tap tension then toilet water went
control 7: leak leaked leaking leaks | each every when whenever | @sways ! @laughter air bottle energy force grip hose
    machine power pipe pressure roof shaker sink tap tension toilet basement ceiling radiator
control 9: accident leak leaked leaking leaks | drenched sodden soaked soaking wet | knickers leggings pants shorts
    trousers underwear ! bottle hose pipe rain roof shaker sweat tap
control 7 sober: dribble dribbled dribbling leak leaked leaking leaks | without | feeling knowing meaning noticing
    realising realizing sensing ! bag bottle ceiling grip hose pipe roof shaker tap tyre
control 14 sober: brown | code | feel felt knew know notice noticed sense sensed | didn't never not no
control 14 sober: pooed pooped soiled | feel felt notice noticed | didn't never not no ! dog kid puppy
control 6: poo pooed pooped soiled | @lifting bit little pants shorts ! @laughter after baby before between break
    dog kid need needed then went
control 7: @water | @cannot ability doesn't don't isn't not powerless | @hold ! @laughter bar break carry coffee
    drinking good grip hang
    laughing plank water
control 9: @peed | @not | @hold ! @laughter @wetness
control 9: wet | @cannot | control help prevent stop ! @laughter @wetness
control 9: wet | @cannot | hold keep | bench floor in mat myself platform ! @laughter @wetness
    back clothes foot footing pad place position seat shirt stance top
control 5: leak leaked leaking | no without | control ! @laughter @wetness
control 9: trickle trickled trickling | leg legs | feel feeling felt idea knew know notice noticed | @not ! @laughter
    @wetness blood
control 4: @water | escape escaped escapes ! @laughter
control 9: accident | @cannot | @hold ! @laughter bar dumbbell weights plates baby bike car cat child dog kid kids
    puppy road son traffic work
control 6: @water @peed | didn't without | intending mean meaning meant realise realising try trying want wanted
    wanting willing ! @laughter @wetness
control 6: @water | alone itself own | came come comes emptied emptying empties going goes left opened out ran run
    runs starts went ! @laughter gym home
control 9: control | lose losing lost no without zero | @water loo toilet ! @laughter app
    bar remote tv
control 4: bladder bladders bowel bowels | dead failed failing gone lazy lost numb shot ! @laughter full small tiny
control 8: bathroom loo toilet | nothing | came come comes | out ! gym queue
control 9: loo saddle toilet wipe wiping | feel feeling sense | @not | sat sit sitting wipe ! floor kit machine need
    sweat
control 8: sat sit sitting | balloon cotton cushion foam pillow sponge wool | like ! cloud coccyx comfortable comfy
    tailbone
urine 5: pass passed passing | black brown cola dark orange red rusty tea | water ! band bottle plate
urine 8: what | came comes | out | @dark ! bottle can fridge hose machine nose pipe radiator shaker sink tap
urine 16: @bowl | @dark | @alike | @peeing ! ate cistern drank drink drinking eaten paint painted pub spill spilled
    spilt tiles
urine 4: peeing pissing weeing | @drinks ! after before drank drink drinking then
"""
FAILING = told_rows(_ROWS, CLASSES)
"""The rows of what fails."""
