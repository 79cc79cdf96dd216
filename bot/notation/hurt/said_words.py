"""The words by which a joint is known to be well, or in a matter of form: what is left over is a hurt in doubt."""

from bot.notation.hurt.rows import word_set

SPOKEN_OF = word_set(
    """
    knee kneecap patella elbow wrist ankle achilles shin shoulder hip groin neck spine rib ribcage collarbone
    tailbone coccyx sacrum meniscus
    """
) | {"lower back", "back", "upper back", "mid back", "hip flexor", "shoulder blade", "rotator cuff", "ac joint"}
MUSCLES = word_set("hamstring hammy calf quad adductor")
"""Muscles of which one alone is spoken of where it hurts."""
AT_WORK = word_set(
    """
    burn burning fire fired firing cooked toast fried smoked dead screaming squeeze contraction contracting growing
    bigger grow growth burned shaking shake shaky trembling pop popping failed failing failure activate activated
    activating engaging targeted hit focus curl curls raise raises press day machine pumping twitching
    """
)
BE = word_set("'s is was feels felt feel seems seemed has had been are were got getting gets having keeps kept")
SMALL = word_set(
    """
    a an the bit little wee touch tad slightly somewhat rather quite very really so super pretty still just also all
    again today now a-bit kinda kind sort of like been being having had got getting feeling feel felt some more too
    this that it to be as well being tbh really ever always definitely probably maybe fairly proper in on my me i is
    was 's has have gets get currently already actually both not quite only mine up at with for from there here
    """
)
NO_HURT = word_set(
    """
    100% hundred percent light slow slower fast faster lazy late early soft quick good fine ok okay great well
    better best perfect alright solid happy fresh strong
    stronger
    normal healthy lovely
    nice amazing brilliant improved improving improvement healed recovered recovering sorted cured fixed behaving
    behaved cooperating quiet silent calm settled holding held coping stable steady loose looser free freer smooth
    smoother clear cleared ready comfortable supported safe secure protected ace spot top sound cool super superb
    fantastic excellent grand dandy decent pleased likes loves loved loving enjoys enjoyed enjoying thank thanks
    million dollars bucks quid brand new gold magic champion peachy mint grateful thankful
    bulletproof

    tight tighter tightness stiff stiffer stiffness sore tired fatigued pumped warm warmed warming cold heavy weaker
    stretched limited limiting limits limit mobile immobile flexible inflexible restricted

    high higher low lower out in down straight bent flat neutral rounded rounding arched arching caving caved flared
    flaring rounds round caves cave flares flare drifts shifts moves move rises rise drops lifts lift bend turns turn
    drifting drift dropping dropped drop tucked tuck shifting shifted shift rising rose lifting lifted moving
    tracking working work worked engaged locked over above below under past behind touching next level parallel
    square braced packed extended extending flexed flexing bending bends straightening rotating rotated turning turned
    pointing close closer wide wider narrow forward forwards back backwards away apart together position place line
    angle width depth hinging hinge popping-up pressed against resting rested parked sliding first last second
    main focus weak-point point spotlight mobility warmups warmup rehab physio exercises exercise stretch stretches
    band pad machine sleeve sleeves belt wraps wrap strap straps brace tape taped strapped mark done finished next
    measured size inches cm brother sister mum dad checked seen scanned assessed looked operated replaced replacement
    surgery op year years birthday grown grew growing wider broader drill drills bits relaxed relax twisting
    twist swinging tipping tilting sagging piking hiking hiked
    swaying leaning creeping winging shrugging shrugged popping sinking dipping relaxes stacked stack aligned
    alignment tall long set organised organized
    """
)
UNHURT_NOUNS = NO_HURT | word_set(
    """
    tension range motion movement strength stability control room sweat drive bend pump towel support confidence
    difference power flexibility warmth activation shrug rotation twist extension flexion break arch more less
    burn fatigue tiredness workout session set sets reps rep times time weight load plate plates weights much lot lots
    change snap kick throw crease height bounce speed lean slack minute minutes day days week weeks bar
    massage roll foam ice heat gel cream lotion cushion cushions blanket sun hair tattoo scarf shave wind gym coach
    app
    """
)
LEADS = word_set("in with from around at inside behind round")
SOME = word_set("a an some slight slightly little small tiny this weird strange odd funny big proper constant")
HAD = word_set(
    """
    had felt feel got getting get have with there's feeling is was there having noticed notice still again bit had
    suffered experiencing experienced slight of just only and but also
    """
)
CHEST_WELL = (NO_HURT | AT_WORK) - {
    "tight",
    "tighter",
    "tightness",
    "heavy",
    "warm",
    "warmed",
    "past",
    "middle",
} | word_set(
    """
    muscle muscles bench benching fly flys flyes dips pushups press presses pump pumped workout session sets reps
    set rep
    doms monday tuesday wednesday thursday friday saturday sunday bar floor touched touch touching hair strap
    monitor hr
    loaded volume exercise exercises supported support incline decline pec pecs shoulders triceps back arms legs day
    proud open big lagging weak building build size development growth activation connection feel-good stuff paused
    pause target train training trained more less pausing pauses favourite favorite
    goal phlegmy congested chesty snotty bunged priority worst weakest strongest tomorrow target harder easier rested
    """
)
"""Words by which talk of a chest is of the muscle, or of its posture."""
