"""The clients' words for urgent signs, a kind a row. Which together make a sign stands in
`bot.notation.hurt.signs`."""

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.phrases_effects import EFFECTS

_PLAIN: dict[Cue, str] = {
    Cue.TIGHT: """
      tight/tightness/tightening/tightens/tightened/tightish/tighter/tite; stiff/stiffness
    """,
    Cue.PRESSURE: """
      pressure/presure/pression/pressur/squeeze/squeezing/squeezed/squeezes/crushing/crushed/heaviness/heavy/
      elephant/constricted/constriction/constricting/compressed/gripping; pressing/press
      in/inside/across/behind/around my/the?
      chest/breastbone/sternum/breast; weight/sitting/elephant/pressing/
      standing on my/the; band around/round; vice/vise/clamp/clamped; fluttering/flutter/flutters; thumping;
      weird/funny/odd/strange/horrible/uncomfortable/pressing/pushing/heavy/gripping feeling/sensation/pain;
      presses/pressing/pushing/press/pushes/
      sits/sitting/weighs on/against my/the/a?; there is/was/'s a pressing/squeezing/pressure/squeeze; fullness;
      brick/stone/rock/rope/weight/ton/lump on/round/around/
      in?; being squeezed/crushed/sat; presses/pressing/press/pushes/pushing/squeezes me in/on/at my/the?
    """,
    Cue.FAINT: """
      pass/passed/passing/passin/past out; black/blacked/blacking/blackd out; blackout/blackouts/blackedout/
      passedout; all/everything/world become/becomes/becoming/became all? white/black/dark/grey/gray/blank;
      fall/falling/
      fell in/into the apples; world/brain switched/switches/switching itself? off;
      syncope/syncopal/presyncope/presyncopal/vasovagal;
      faint/fainted/fainting/faints/fainty/faintness/fainter/feint/feinted; lost/lose/losing/loss of?
      consciousness/conscious; unconscious; saw/seeing/see/seen/had black/stars/spots/dots/double/white/
      floaters/sparkles/sparks/twinkles/static/blackish/greyish; all was/were/is/goes/went/turned/turns/turning/
      became/becomes/become/got/gets/just/to/started* black/dark/grey/gray/blank; vision/everything/sight/eyes/it/
      things/world/screen/lights is/was/were/started/starts/kept/all/
      just/to* went/goes/going/turned/turning/gone/go/was/getting/got all? black/dark/grey/gray/white/blurry/
      fuzzy/blank/dim/hazy/tunnel/tunnelled/tunneled/tunnelly;
      tunnel/tunnelled/tunneled/tunneling/spotty/patchy/starry/foggy/narrowed/narrowing vision/
      sight; vision/sight started/starts/starting/began/was/is? to? going/go/
      fading/fade/blurring; vision/sight/eyes faded/fading/darkening/darkened; nothing but black; without
      sense/senses/conscience/consciousness;
      went black/
      dark/grey; vision tunnelled/tunneled/narrowed/tunneling; vision blacked; room/gym/head/world/everything/
      place was/is/'s/started/went/starts spinning/spin/spins; spinning head/room; dizzy/dizziness/dizzyness/
      dizzey/dissy/dizzie; light/lite headed/headedness/head/headness; lightheaded/lightheadedness/lighthead/
      lightheadness; woozy/woozey/giddy; swoon/swooned/swooning; keel/keeled/keeling over; head went light/
      fuzzy/funny/swimmy/woozy; head/i swimming; collapsed/collapse/collapsing; conked out; lights out; lights
      went/going out; nearly/almost toppled/fell; hold/holding/held/grab/grabbed on? to? the? wall/rack to? not?
      fall/falling/go; had to hold the wall/rack; came/woke/coming round/around/to? on the floor/ground; came to
      on; found myself on the floor/ground; woke up on the floor/ground; woke/came up/to/round/around on the/my/a
      mat/deck/platform/grass/carpet/bench/tiles; knocked out; out cold; felt/feel myself
      go/going; going round and round; room/head/world was/is/kept/keeps* going round; went/was/were/been out
      for a/some/few/couple/of* second/seconds/sec/secs/moment; woke/came/coming/come up/to/round/around/back*
      on the/a/gym/changing/bathroom/my/room* floor/ground; passed/blacked right/clean out; nearly/almost/about
      hit the deck/floor/ground; nearly/almost/about to? go/went/going over/down; legs went/turned to? jelly
      and; syncope/presyncope; spots/stars/dots/black before/in front? of? my? eyes/vision; browned/greyed/
      grayed/whited out; brown out; almost/nearly out; about to drop; see/saw/seeing things
    """,
    Cue.BREATHLESS: """
      no/not breathe; struggle/struggles/struggling/struggled/can't/hard/difficult/trouble for? me? to? breath/
      breathing/breathe/air; fighting for breath; can't breathe/breath/breathing/brethe/breeth/breate; can't
      catch/get/find/draw/recover/regain/recuperate/retrieve my/a/the/any/enough/full/deep/proper* breath/breathing/
      breaths back?; can't get/take
      @any* air/oxygen in?; can't take/do/finish @any/full/deep/proper* breath/breaths; can't take @any* breath/
      breaths; can't fill my lungs; short/shortness/shortage of? breath/breathe/breathing/breaths;
      breath/breathing/breathe is/has/'s* not/never come/been/gone/feeling/felt right/normal/good/settled; breath/
      breathe/breathing/breaths is? won't/doesn't/isn't/not/hasn't/don't/didn't/wouldn't/never come/coming/came/
      went/returned/
      settle/settled/settling/calm/calming/recover/recovered/recovering/return/returning/slow/slowing/go/going/
      get/getting back/down/to/normal*; hard/difficult/difficulty/trouble/struggling/struggle/struggled/problem/
      problems/laboured/labored/tough/harder to/in/with* breathe/breath/breathing; gasping for? air/breath/
      oxygen; gasping; fighting/fight for breath/air; no/without breath/air; wheezing/wheezy/wheeze; breath not
      coming back; never got my breath back; hurts/hurt/pain/painful/sharp/stabbing/sore to/when/if/as i?
      breathe/breath/breathing; when i breathe/breath in; breathing in hurts/hurt; hyperventilating;
      suffocating; choking; not/isn't/ain't breathing @bit* properly/right/well/good/ok/normally; can't stop
      panting; lungs feel/felt/are/is/like/as/if/they* won't/don't/can't/aren't/not
      fill/open/work/expand/opening/filling; don't/didn't have enough? air; breath/breathing is/was/'s/feels
      gone/short/shallow/difficult/hard/wrong; still no breath; haven't/hasn't got my breath back; breath
      hasn't; breath still not
    """,
    Cue.WINDED: """
      out of breath/puff; breathless/breathlessness/winded/puffed/panting/puffing/gasping; puffing and panting;
      heavy/hard breathing; breathing hard/heavy/heavily/fast; breathing is/was/'s hard/heavy/fast;
      breathing/breath is/was/'s/feels/has/been* @bit* rough/bad/ragged/funny/weird/odd/off; catching/
      catch/catchin my/breath breath?; getting/get my breath back?
    """,
    Cue.HEADACHE: """
      headache/headaches/headace/hedache/headake/heddache/headach/haedache/headeache;
      dull/aching/achy/banging/pounding/thumping/throbbing head; head ache/aches/aching/hurts/hurting/hurt/pain/pains/
      pounding/throbbing/splitting/exploding/explode/exploded/banging/hammering;
      head is/was/'s/feels/felt/like/started/it/going/about/to* pounding/throbbing/splitting/exploding/explode/
      exploded/banging/killing/hurting/aching/burst/hurt; pain/pains/pressure in/behind/inside/at/on/of* my/the?
      head/skull/eyes/eye/temple/temples; migraine/migraines
    """,
    Cue.SEVERE: """
      severe/severely/worst/thunderclap/splitting/blinding/exploding/explosive/crushing/massive/terrible/awful/
      horrible/horrendous/intense/pounding/unbearable/excruciating/extreme/extremely/mega/insane/crazy/monster/
      brutal/killer/killing/stabbing/serious/bad/badly/huge/incredible/unreal; banging/strong/violent/agonising/
      agonizing/hammering/bursting/burst/vicious/wicked/explode/exploded/explodes; like a? hammer/bat/brick/
      thunder; like being hit/kicked; hit me; never had/felt; like nothing; most painful; so much; a lot
    """,
    Cue.SUDDEN: """
      sudden/suddenly/suddenl/instantly/instant/abrupt/abruptly; out/outta of? nowhere; out of the blue; came/
      come/comes on; mid set/rep/lift/squat/deadlift/bench/press/pull; all at once; hit me; came from nowhere;
      in a? second/seconds/flash/moment; at once; boom/bang/wham; like a switch; straight away; all of a sudden; in
      an instant
    """,
    Cue.NUMB: """
      numb/numbness/numbed/numbing/numby/num/nub/numm/numn/numbish/nummed; no feeling
    """,
    Cue.NO_FEELING: """
      can't feel/feeling/feal; can't feel anything/nothing in; no/zero/nil/nought feeling/sensation/feelings/sense;
      hardly/barely/scarcely/without any/a? feeling/sensation; not much/a/lot/any/of* feeling/sensation in; nothing at?
      all? in/on my/the/left/right* @place when/if/where i/you/they/we touch/pinch/press/poke/prick/rub; lost/losing/
      lose/loss/loosing of? all/the/any/some* feeling/sensation/feelings/sense; lost/losing/lose the/all/my feel of/
      in;
      feeling/sensation/sense/feel of/in/from my/the/left/right/whole/both* @place is/has/was/'s/all/just* gone/lost/
      vanished/disappeared/left; without feeling/sensation;
      don't/doesn't/didn't/not have/has/having @any* feeling/sensation; feeling is/has/was/'s/all* gone/lost;
      don't/doesn't/not/stopped/didn't feel/feeling my; is/are/was/'s sleeping/asleep/slept/sleepy; sleeps since/
      and/all; is/'s/was
      like/as/if/it/it's/they/re/aren't* not mine/there/attached; fell/fallen/falling/went/
      gone/go/going/goes to? asleep/sleep; feels/feel/felt like/as/if it/it's/they/they're/i
      isn't/aren't/'s/is/don't/not/wasn't/weren't not? there/mine/have/attached;
      feels/feel/felt like/as
      if? it/it's/they/they're someone/somebody else; can't sense; sleeps/slept me;
      lost/lose/losing/loss the? use of; dead to? the? touch; asleep
    """,
    Cue.DEAD: """
      dead/deadened/lifeless/paralysed/paralyzed/deaded
    """,
    Cue.WEAK: """
      weak/weakness/floppy/powerless/lifeless
    """,
    Cue.NO_STRENGTH: """
      no strength/power/control/grip/force in/of/from; lost/losing/lose/loss/loosing of? all/the/my/some*
      strength/power/control/grip/movement/use/force in/of/from; loss of? strength/power/movement/control;
      strength/power is/has/was/went/left/'s/all* gone/left/lost/disappeared; grip/strength has? gone/failing
      in; can't move/lift/raise/use/grip/hold/squeeze/control/close/open/clench/bend; without strength; don't/
      doesn't/didn't/haven't have/got any/the? strength/power/force; doesn't/won't/isn't/not/don't/wouldn't
      respond/responding/move/moving/work/working/grip/close/open/lift; stopped working/responding/moving;
      hangs/hanging there/down/limp; won't do anything/what/as; drags/dragging; won't hold me; can't make a?
      fist; has no strength/power; zero strength/power
    """,
    Cue.DROOP: """
      weakness/weak/numb/numbness/heaviness/paralysis down the/my/one/left/right/whole/entire* side/body;
      droop/drooping/drooped/droopy/droops/sagging/drooling; slur/slurring/slurred/slurry/slurs; can't speak/
      talk/smile; can't get my? words out?; speech/words/talking/mouth is/was/went/are/were/came/coming/all/'s/
      gone/sounds/out* slurred/slurring/funny/weird/jumbled/wrong/off/odd/strange; can't find my words; one/
      left/right/half side? of my/the? face/mouth/body; half my/of face/body; side of my/the? face/mouth; face
      is/feels/went/dropped/has/gone/looks/'s/felt/on/feel/a/bit* wonky/droopy/dropped/funny/crooked/lopsided/
      weird/drooping/fallen/uneven; face dropped/fell; jumbled/muddled words/speech; words/speech jumbled/
      slurred/muddled
    """,
    Cue.CONTROL: """
      wet/wetting/peed/peeing/pissed/pissing/soiled/shat/shit/pooed/pooped/crapped/messed/weed/urinated/
      defecated on? my/me? myself/meself/self/pants/shorts/leggings/trousers/bed; wet/wetted/peed/pissed the bed;
      i/i'm/i've am/have/just/keep/kept/also/always/do/did/properly* leak/leaked/leaking;
      i/i've/have just/actually/only* wet/wetted the/my
      seat/chair/bench/mat/cushion/sofa/couch/stool;
      didn't/not/never/don't make/made/get it? to the loo/toilet/bathroom/
      restroom; bladder/bowel/bowels is/are/'s* not/isn't/aren't/won't/doesn't @bit*
      working/work/right/normal/behaving/responding/
      emptying/empty; lost/lose/losing/loss/no/
      without/loosing/can't of? control of/over/my/the/hold* bladder/bowel/bowels/bladders/pee/wee/urine/toilet/
      poo; lost/lose/losing my? bladder/bowel/bowels control; bladder/bowel/bowels/pee/toilet control; no/
      little/poor/losing/lost/without/zero bladder/bowel/bowels/pee/toilet control; bladder/bowel/bowels
      accident/leak/leaking/leakage/leaked/problem/problems/weakness/issue/issues; bladder/bowel/bowels just/
      has/is/has* went/gone/let/gave/emptied; can't hold/control/stop/feel my/the/in? pee/wee/peeing/bladder/
      bowel/bowels/urine/poo/water/toilet; can't hold it in; can't pee/wee/urinate/piss/poo; can't go for a pee/
      wee/poo; can't go to the toilet; can't tell when/if i need/have/am to? pee/wee/go/peeing; can't feel when/
      if i pee/wee/need/'m/go/am; incontinent/incontinence/incontinance; number 2/two in my pants/shorts/
      leggings/trousers/knickers/boxers/underwear; went/gone/made a/bit/little/some/it* in my/
      the shorts/
      pants/leggings/trousers/knickers/boxers; haven't/hasn't/wasn't/not been? able to? pee/wee/poo/urinate/
      piss/go; pee/urine/wee/poo/water/bladder/bowels
      just/is/all/a/bit* came/come/coming/leaked/leaking/leaks/leak/dribbled/dribbling/ran out/down?; leaked/
      leaking/leak a/bit/some/little/of* pee/urine/wee/water; accident in my pants/shorts/leggings; had a?
      little? accident; peed/weed/wee'd/leaked a bit/little; peed during/when/while; pee/wee/peeing/weeing on
      its own; peed and; not in control of my bladder/bowels; loss of? bladder/bowel/bowels; weeing/peeing
      without knowing/meaning/realising/realizing/control
    """,
    Cue.SADDLE: """
      saddle area/region?; between my/the? legs/thighs; inner thighs; genital/genitals/privates/crotch/
      undercarriage/balls/perineum/testicles/penis/vagina/bum/bottom/arse/butt/buttocks/buttock/groin/backside/
      anus; private parts; down there; seat area; nether regions; where i sit; lady bits
    """,
    Cue.POP: """
      pop/popped/pops/popp/popping; snap/snapped/snapping; crack/cracked/crunch/crunched; ping/pinged/pinging;
      twang/twanged; rip/ripped/tear/tore/tearing; bang; clunk; something give/gave/go/went
    """,
    Cue.NO_FUNCTION: """
      can't stand/walk/weight/bear/put/move/lift/bend/straighten/grip/raise/use/step/hold/push/extend/flex/load/
      rotate/turn/press/make/support/do/get/open/close/stop/squeeze/lean/climb/take/jump/run/lower up/on?; can't
      weight bear; won't/doesn't/not/isn't/didn't/wouldn't/couldn't bend/straighten/push/lift/point/move/hold/work/
      working/take/
      support/bear/lift/moving/holding/respond/go/straight/carry; no strength/power/movement/grip; useless/
      deformed/deformity/dangling/hanging/limp; lost/loss/losing of? strength/power/movement/function/use/grip/
      control; out of place/joint/shape; no longer stand/walk/lift/move; need/needed/having crutches/help/
      carrying; on crutches; nothing there; weak/weakness; gave/gives/give/giving way/out; buckles/buckled/
      collapsed; no use; can't; unable; dead; is/'s/it's/its/now/gone/got locked/stuck/jammed/seized
    """,
    Cue.GAVE_WAY: """
      it just/keeps/then* folds/folded/crumples/crumpled when/whenever/under/if/every/each;
      give/gives/gave/giving/given way/out; giving/gave away under/on; buckled/buckles/buckling; went from under
      me; collapsed/collapses/collapse under me; giving way
    """,
    Cue.SWOLLEN: """
      swollen/swelling/swell/swelled/swells/swolen/swolle/swoollen/swolln/puffy/balloon/ballooned/swellen;
      puffed/swole/blown/swelled/blew up; bigger than; size of a; is/are/gone/looks/look huge/massive/enormous;
      like a balloon/football/melon/grapefruit; twice the size; up like a balloon; got/gone/getting bigger/huge/
      fat
    """,
    Cue.HOT: """
      hot/warm/red/heat/warmth/redness/hotter/warmer/burning/purple/discoloured/discolored/shiny/throbbing/
      reddish
    """,
    Cue.URINE: """
      urine/urin/pee/peeing/peed/wee/weeing/piss/pissing/pissed/wees/pees/yurine/urinating/urinate/wizz/whizz;
      my water; water i/that/the pass/passed; pass/passing/passed water
    """,
    Cue.DARK: """
      dark/brown/cola/tea/coffee/rust/rusty/red/pink/bloody/blood/black/brownish/reddish/coloured/colored/
      darker/darkish/orange/treacle/stout/maroon/muddy/mahogany/molasses/colour/color/port/wine/beetroot/
      chocolate
    """,
    Cue.LOOKS: """
      looks/look/looked/looking like/very/odd/weird/wrong/strange; is/was/'s like; same colour/color as; like;
      the colour/color of
    """,
    Cue.HEART_RACE: """
      heart/pulse/hr/heartbeat rate/beat? is/was/'s/feels/felt/keeps/kept/still/going/just/been/started/won't/
      like/a/went/goes/gone* racing/raced/race/races/pounds/hammers/thumps/pounding/hammering/thumping/flying/mad/
      crazy/fast/wild/galloping/
      bonkers/clappers/
      nuts/mental/bananas/haywire/berserk/beserk/banging/ballistic; racing heart/
      pulse/heartbeat; heart/pulse/heartbeat is/was/'s/just/keeps/still* running/going/beating/working
      too/so/very/really fast/quick/hard; heart rate? won't/doesn't/isn't/not/hasn't; heart/hr/pulse rate?
      is/was/'s? still/stuck high/
      up/at/over/
      above/elevated
    """,
    Cue.PALPITATION: """
      palpitation/palpitations/palpatations/palpations/palps/palpitating/palpitates; heart/pulse/heartbeat rate/
      beat? is/was/'s/keeps/kept/feels/felt/just/started/seems/went/goes/been/a/bit/all/has/like/it* skip/
      skipping/skipped/skips/fluttering/flutter/flutters/fluttered/irregular/irregularly/uneven/missing/missed/
      misses/stopped/stopping/jumping/funny/weird/flipping/erratic/skippy;
      heart/pulse it? makes/does/gives/jumps me? jumps/leaps/jump;
      heart jumps me; skipping/skipped/skips/skip/missed/
      missing/misses a? beat/beats/heartbeat/heartbeats; irregular heartbeat/heart/beat/pulse/beats/rhythm;
      fluttering/flutters/flutter heart; extra beats; heart/pulse is/was/'s/keeps/kept/feels/felt/does/doing/did/do/
      started/like/it/a/little/these/weird/some/few* flip/
      flips/flipflops/somersault/somersaults/backflip/backflips/hiccup/hiccups/hiccuping/thud/thuds/flop/flops/
      flopping/
      stutters/stuttering/stuttered flop/flops?; heart/pulse/heartbeat is/was/beating/going/just* all over;
      beating all over/weird/funny/wrong/irregularly/unevenly; arrhythmia/afib/arythmia; a fib
    """,
    Cue.SETTLE: """
      won't/doesn't/isn't/hasn't/not/don't/didn't/never/wouldn't/can't slow/slowing/settle/settling/settled/
      calm/calming/calmed/come/coming/go/going/stop/stopping/stopped/slowed/recover/recovering/normal/drop/
      dropping/down/back/ease/easing/get/calm; at rest; resting; sitting/sat/lying/laying/lay/doing still/down/
      nothing/here?; still; later; for ages; for no reason; keeps; out of nowhere; ages after; afterwards; half
      an hour; an hour; long after; ages; since; even/and/but though? i stopped/sat/rested; ages/minutes/mins/min
      after/since/ago
    """,
    Cue.BLOOD: """
      cough/coughing/coughed/coughs/spitting/spat/vomiting/vomited/puking/puked/threw/throwing/brought/bringing/
      spit/sick up? some/bit/of/a/fresh/little* blood; blood when/while i? cough/coughing/coughed; blood in my/
      the? urine/pee/wee/piss/stool/poo/vomit/sick/spit/phlegm/toilet; peeing/pissing/weeing/passing blood;
      bloody urine/pee/stool/wee/piss/cough; won't/doesn't/not/can't/hasn't stop bleeding; bleeding won't/
      doesn't/not/hasn't/wouldn't stop/stopping/stopped; bleeding heavily/badly
    """,
    Cue.GRAVE: """
      heart attack/attacks; having/had a? mini? stroke; seizure/seizures/convulsion/convulsions/seizured;
      having/had a fit; bone sticking out; bone is? out; broke/broken/fractured my/the? left/right? arm/leg/
      wrist/ankle/collarbone/foot/hand/rib/ribs/bone/neck/back/hip/finger/toe/thumb/elbow/nose/shin; fracture/
      fractures/fractured; dislocate/dislocated/dislocation/dislocating/dislocates; dropped/fell/popped/pop/pops/
      came/come/
      went/slipped/slips/comes/popping/slipping/sliding/slides/slid/jumped/pulled out of its/it's/the? socket/joint/
      place; shoulder/
      kneecap/knee/hip/finger/elbow/thumb/jaw just/has/it*
      popped/came/slipped/went/comes/pops/slips/pop/come/jumped/jumps/hopped/
      slid out; bicep/biceps/achilles/tendon/pec/hamstring/ligament/acl/quad has/just/'s* snapped/ruptured/detached;
      heatstroke; heat/sun stroke; stopped sweating; anaphylaxis/anaphylactic; allergic reaction; throat
      is/'s/feels* closing/swelling; confused/confusion/disoriented/disorientated/delirious; don't/didn't know
      where i am/was; forgot/forget/forgotten where i was/am/'m; can't remember where/anything; lost my memory; need/
      called/call/calling/needed an?
      ambulance; turned/turning/gone/went/going blue; vaginal bleeding; waters broke; pupil/pupils is/are/looks/
      was* bigger/different/uneven/blown/huge; ruptured/rupture; blood
      clot; concussion/concussed; overdose
    """,
    Cue.VISION: """
      can't see out/from/properly/straight/anything/right; double/blurred/blurry vision; lost/losing/loss/lose
      of? my/the? vision/sight/eyesight; vision/sight in one/the/my/left/right* eye is/has/just* went/goes/gone/
      lost/disappeared/blurred/dark/black; vision/sight/eyesight is/was/has/went/gone/goes/going/got/'s/all/just/
      a/bit* blurry/blurred/blurring/gone/double/funny/weird/patchy/fuzzy/lost; blind in/spot/spots; blinded in;
      went/gone/going blind
    """,
    Cue.SWEAT: """
      cold sweat/sweats; clammy; sweating/sweaty/sweats; nausea/nauseous/nauseated/queasy; feel/feeling/felt
      sick; vomiting/vomited; throwing/threw up; puked/puking; breathless; short of breath; breath; sick
    """,
    Cue.PREGNANT: """
      pregnant/pregnancy/trimester/prenatal/pregnent; weeks gone/along; expecting; baby bump
    """,
    Cue.BLEED: """
      bleed/bleeding/bled/spotting/contraction/contractions; fluid leak/leaking/leaked; leaking/leaked fluid;
      waters; blood
    """,
    Cue.BOTH_LEGS: """
      both legs/feet; both of my legs/feet; both my legs/feet
    """,
}

SIGNS = _PLAIN | {cue: f"{_PLAIN[cue]};{rows}" if cue in _PLAIN else rows for cue, rows in EFFECTS.items()}
"""From a kind to its phrases, those of `bot.notation.hurt.phrases_effects` with them."""
