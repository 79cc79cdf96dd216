"""Classes of words for the rows of signs told in any order: all of a kind, whatever of it is said.

What takes nobody's breath (`nowork`), what the floor is called, what a limb does that hangs (`slack`); and the words
beside which the same means training or a joke. Gathered by us.
"""

CLASSES = """
cannot: can't cannot couldn't impossible struggle struggled struggling unable won't wouldn't
not: aren't barely can't cannot couldn't didn't doesn't don't hardly impossible isn't never no not nothing struggle
    struggled struggling unable wasn't weren't without won't wouldn't
laughter: haha hahaha lmao lol
winded: breath breathless breathlessness gasping panting puff puffed puffing wheezing wheezy winded
nowork: anything awake bed bending bins brushing car chatting cooking couch desk dinner dishes dressed dressing
    eating emails hoover hoovering ironing kettle kitchen laces lying mop night nothing pavement pram reading rest
    resting shoelaces shoes shopping shower showering sitting slightest socks sofa stairs standing talking tea teeth
    telly toilet tying upstairs waking woke
training: bar beer between bike brace bracing burpees cardio carries carry circuit coffee cuppa curl curls deep
    drink finisher fresh held hill hold holding incline intervals jumps lifts lunge lunges machine nose pb pint
    press ran rep reps round rounds row rower rowing rows run running set sets sled sprint sprints squat squats
    stepper superset take taking technique took treadmill warmup wasted water
floor: carpet deck floor grass ground mat tarmac
fell: collapsed collapsing dropping ended ending fall falling fell going hit hitting landed landing went
lifts: amrap bar bench clean deadlift deadlifts deads double heavy jerk lift lunges press pull push rep reps set
    set-up single snatch squat squats triple
gear: baby bar barbell belt bench bench-press cat daughter dog dumbbell dumbbells kettlebell kid machine pad pause
    paused plate plates press sandbag sled son spotter strap support supported toddler vest
burdens: anvil bear boulder bricks buffalo bulldozer bus car caravan cement concrete cow digger elephant fist fridge
    gorilla hippo horse jeep lorry mammoth piano rhino rock sideboard slab sofa steamroller tank tractor truck van
    walrus wardrobe washing-machine whale wrestler
breasts: bosom breast breastbone breasts bust chest ribcage sternum thorax
ill: ache aches aching burning burns crushed crushing discomfort heartburn heaviness heavy hurt hurting hurts
    indigestion oppression pain painful pains pressing pressure squashed squeezed squeezing tight tightening
    tightness
bones: ankle back cheek collar elbow foot heel hip jaw knee kneecap pelvic pubic shin shoulder sit spine tail wrist
water: bladder bladders bowel bowels pee peeing piss pissing poo pooing stool urinate urinating urination urine
    waterworks wee weeing
peed: peed pissed pooed pooped puddle shat soiled urinated wee'd weed wetted wetting
hold: contain control controlling help hold holding keep keeping prevent retain retaining stop stopping
insults: bite bit burn burnt chop cut hammer jab needle nip pinch pinched pinches pinching poke poked poking prick
    pricked pricking prod prodded prodding punch scratch scratching slap slapped stab stabbed stabbing stamp stick
    stuck tap tapped tickle
ends: arm fingers finger foot forearm hand leg thigh toe toes
pairs: arms feet forearms hands legs thighs
worn: belt belts button buttons collar sleeve sleeves strap straps tag vest watch wrap wraps zip
sways: bound burpee burpees double hop jack jacks jog jump jumps lunge rope skip skipping skips step sneeze cough
    swing swings trampoline under unders
seats: bench box carpet chair couch cushion mat pad platform seat sofa stool
strikes: anvil axe bat bolt brick bullet club firework fireworks gun gunshot hammer hatchet lightning mallet
    sledgehammer thunder thunderbolt thunderclap
atonce: abrupt abruptly blink flash instant instantly nowhere sudden suddenly
dreadful: almighty awful bad beastly blinding brutal crippling dreadful ferocious fierce ghastly horrible horrendous
    monstrous pounding rotten sick sore spectacular splitting terrible thumping unholy vicious wicked worst
someone: body bloke fella guy he lad man people person she somebody someone
onme: kneel kneeling kneels perched sat seated sit sits sitting stand standing stands stood
unwilling: declined declines declining disinclined hesitant loath loth refused refuses refusing reluctant unwilling
wetness: bottle chalk coffee drinking grip grips hand hands laughing palms plank rain roof shaker slip slipped
    slippery spill spilled spilt sweat sweating sweaty tap towel water
limbs: arm bicep biceps foot hand leg wrist
slack: dangled dangles dangling flopped flopping floppy flops hanging hangs hung limp
exercises: bar between bridge carries carry deadlift dumbbell grip handle hold knee knees plank press pullup pullups
    rack raise raises rest ring rings rope row rows scap seconds secs strap straps stretch tree weight weights
spent: 's became gets goes gone got is suddenly turned was went
drinks: beetroot coffee coke cola guinness rust stout tea treacle wine
dark: beetroot blackcurrant brown coffee coke cola gravy molasses mud muddy port porter rust rusty stout tar tea
    treacle
bowl: bowl loo pan pot toilet urinal
peeing: pee peed peeing pees piss pissed slash tinkle urinate urinated wee weed wees whizz widdle
alike: color colored colour coloured colours like looked looks resembled same shade tint
heart: heart heartbeat heartrate hr pulse ticker
tendons: achilles bicep biceps calf hammy hamstring lat ligament pec quad tendon tricep triceps
face: cheek eyelid face lip lips mouth smile
slipped: crooked droop drooped drooping dropping fallen falling hanging lopsided sagging saggy skewed slack slid
    slipping twisted uneven wonky
odd: bad fast funny irregular noisy odd rapid shallow strange weird wrong
hurts: agony hurt hurting hurts pain painful pains sharp sore stab stabbing stabs
lifting: deadlift deadlifting deadlifts floor jump jumped jumps lift lifting mat platform rep reps set squat squats
    squatting
"""
"""A class a line."""
