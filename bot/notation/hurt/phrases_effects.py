"""Urgent signs told by their effect: what a body can no longer do or sense, how it looked, what it was like.

A kind a row as in `bot.notation.hurt.phrases_urgent`, whose rows these lengthen. Gathered by us, with the turns of
those who write English as a second language.
"""

from bot.notation.hurt.cues import Cue

EFFECTS: dict[Cue, str] = {
    Cue.PRESSURE: """
      oppressed/oppression/oppressive/oppressing/squashed/squashing/squash/strangled/strangling/strapped/squished/
      clenched/clenching; belt/strap/rope/chain/fist/boulder/anvil/truck/lorry/car/bus/piano/safe round/around/on/
      in/inside/closing/across/over/behind/squeezing/being; being pulled/tightened/strapped; gripped
    """,
    Cue.FAINT: """
      felt/feel/feeling myself slip/slipping/drift/drifting/fade/fading/sink/sinking/leave/leaving away/off/under/
      out; funny/dizzy/bad/fainting turn/turns/spell/spells; came/come to with/again/slowly; went/go/going/gone/down/
      dropped/fell/
      collapsed/toppled down? like a/the felled/big/wet/old/whole? sack/tree/brick/bricks/stone/log/ton/domino/fly;
      fading/drifting in and out; went/go/gone/going out like a light; head goes/go/going/went/is round; felt/feel
      my? legs go/going/gone; came/
      coming over dizzy/faint/lightheaded; vertigo/vertigos/vertigoes; came/come/coming over all? wobbly/funny/
      faint/weak/strange/queer/weird/hot/cold/dizzy/clammy; me turns the/my? head;
      head between my? knees/legs; went/go/going/goes/gone/
      felt/feel/feeling swimmy/faintish; head is/was/'s/becomes/became/become/got/gets/getting/gone/goes/turned/
      turns/feels/felt/feeling/all/too* light/floaty/swimming/swimmy/woozy/spinny/foggy/dizzy/faint; head is/was/'s/
      started/starts/just/kept/keeps* turning/swimming/swirling/reeling/floating; sight/vision/eyesight/eyes is/was/
      has/had/all/just/started/starts/began/to/kept/'s* closed/closing/close/narrowed/narrowing/narrow/shrank/
      shrinking/shrunk/tunnelled/tunneled/tunneling/dimmed/dimming/dim/darkening/darkened/disappeared/disappearing/
      swam in?; world/view/picture is/was/has/all/just/started/starts/began/to/kept/'s* closed/closing; everything/
      world/view/
      picture is/was/has/all/just/started/starts/began/to/kept/'s* narrowed/narrowing/shrank/shrinking/shrunk/
      tunnelled/tunneled/dimmed/dimming/darkened/darkening/faded/fading/
      swam/swimming/blurred/blurring in?/out?/away?; everything/room/gym/floor/ground/world/ceiling/walls/platform/
      all went/go/was/is/'s/started/starts/began/just/to/all/kept/dark/black/grey/and* tilted/tilting/tilt/swaying/
      swayed/sway/swirling/swirl/wobbling/rocking/rotating/swimming/spun/revolving/sideways; room/floor/ground/
      world/ceiling/walls/head was/is/'s/started/kept* turning/moving; room/gym/head/world/walls went/goes/go round;
      nearly/almost passed/pass/passing away; everything/things/voices/sounds was/were/went/goes/
      got/felt/sounded/seemed/is/just/all/so/really* faraway/distant/muffled; everything/things/voices/sounds/room/
      gym was/were/went/goes/got/felt/sounded/seemed/is/just/all/so/really/very* far away/off; blood/colour/color
      drained/left/gone/went/rushed/rushing from/out of?/to my/the? head/face; lost/lose/missing myself for; lost/
      lose/missing a/some/few/couple/
      of/the* second/seconds/sec/secs/moment/moments; i/was/been/were/think/must/have* out for a/some/few/couple/of/
      like/two/three/
      four/five/ten/maybe/about* seconds/secs/second/sec/moment; don't/doesn't/can't/didn't/not/no remember/recall/
      memory of? putting/racking/landing/falling/hitting/dropping/finishing/lowering/collapsing; don't/doesn't/can't/
      didn't/not/no remember/recall/memory of? going/ending down/up; lost/losing/lose
      the/my? senses/knowledge; next thing i? know/knew/was; looking/staring at/up the/at* ceiling; nearly/almost/
      just/then/about/to/i toppled/topple/crumpled/crumple/keeled/keel; my/the tension dropped/fell/drops/falls/
      crashed; blood/low pressure/tension dropped/fell/crashed/drop; head rush so/that/and/i/where/bad/had/to*
      can't/see/fell/stagger/staggered/sit/lie/hold/black/grey/nearly/almost; was/were gone/away/blank/absent/blanked
      for a/some/few/couple/of/like/two/three/four/five/six/ten/fifteen/twenty/thirty/maybe/about/good* seconds/
      secs/second/sec/
      moment; or/else i/'d/i'd/would/would've/have* fallen/
      fainted/toppled/keeled/collapsed; fell/fall/falling/dropped/went out of?
      consciousness/conscious; greying/graying/blacking/browning/whiting out; can't see for/anything/nothing a/one/
      few/couple/some/for/of/good* moment/second/seconds/sec/secs; walls/room is/was/were/'s/started* closed/closing/
      coming
      in; everything closed/closing in on; faintish; swimmy/spinny/woozy/
      floaty head; wasn't/weren't there/here/present for a/few/couple/some* second/seconds/sec/secs/moment; floor/
      ground came up; legs went/
      go/gone/just* out? from under me; everything narrowed/narrowing/narrow; view/sight/vision got/is/was/went/
      became/gets* small/smaller/narrow/narrower/tiny/foggy
    """,
    Cue.PALE: """
      went/go/gone/came/come/coming/going/felt/feel/feeling over? all? a/bit/very/quite/so/little*
      peculiar/queer/funny/strange/odd/weird/wobbly/
      distant/spacey/translucent/transparent; see through;
      white/pale/grey/gray/green as a/the? sheet/ghost/wall/paper/chalk;
      went/go/gone/turned/turning/going/got/
      looked/i'm/am/was all? white/pale/grey/gray/green; drained of? colour/color; cold/clammy sweat/sweats;
      sweating/sweated cold; ears
      are/were/was/started/began* ringing/buzzing/rang; lights dimmed/dimming/faded/fading
    """,
    Cue.LAID_DOWN: """
      had/have/needed/need/must/forced/made/me to/a* lie/lay/sit/lying/sitting/squat/kneel/crouch down?/on?; lay/
      laid/sat/lying/lie/fell flat/down on? the? floor/ground/deck?; on the gym? floor/ground/deck; grabbed/grab/
      held/hold/hanging/leaning/leaned/lean on?/onto?/to? the? rack/wall/bar/bench/machine; staggered/staggering/
      stumbled to/into the/a? bench/wall/rack/chair/floor
    """,
    Cue.BREATHLESS: """
      asthma attack/attacks; can't/hardly breathe or/nor/and talk/speak/walk/stand/
      move; dyspnoea/dyspnea/dyspnoeic/dyspneic; inhaler/puffer is/'s/has/ran* empty/out;
      breathing/breathe in? makes/made it/this/that worse/hurt/sore; breath/breathing is/was/'s/gets/got/getting/my*
      cut/
      blocked/trapped/caught/stolen/stopped; i lack the/my? air/breath; it? misses/lacks/fails me the?
      air/breath; air/breath misses/lacks/fails me; me misses/lacks/fails the? air/breath;
      can't/hardly get/suck/pull/force/draw/drag/breathe/inhale/take @any* air/oxygen/breath/wind in?/inside?;
      not/don't/doesn't/didn't
      get/take/become/receive/obtain @any* air/oxygen; can't get/take/draw a? deep/full/proper one; air/oxygen
      doesn't/won't/isn't/not/can't/don't/didn't/wouldn't/hardly enter/enters/entering/entered/
      arriving/
      come/coming/comes/go/going/goes/get/getting/arrive/reach/pass in?; lungs/lung/throat/airway/airways/windpipe
      feel/feels/are/is/'s/felt/like/they/all/totally/have/went* shut/closed/closing/locked/blocked/tight/stuck/
      collapsed/closes/shutting/clogged/seized; breathing/breathe/breath/breathes/air/like/as/it/is/'s/feels/i'm/if*
      through/thru a? straw; sips/sip/gulps/gasps/mouthfuls of air/breath; only/just take/get/taking/getting/do/
      doing/with? tiny/little/small/shallow/short breaths/breath/breathing/sips; can't/not finish/say/speak/talk/
      get/complete a/one/full/whole/out* sentence/sentences; can't say/speak/talk/get two/three/more/a/out* words;
      haven't/hasn't/didn't/not/never/don't recovered/recover/found/find/regained/regain/gotten my/the? breath/wind/
      breathing; breath/breaths/breathing/air is/'s/was/feels/gets/got/still/so/very/just/
      stays/stay/stayed/remains/keeps/comes* short/shallow/gone/stuck/
      missing/laboured/labored/lacking/blocked; short breath; each/every breath is/feels/was half/short/tiny/
      shallow/small; inhaler/puffer isn't/not/doesn't/didn't/won't/hardly/no/does/did @bit* touching/touch/help/
      helping/work/working/nothing; breathe/breathing/respire badly/poorly; breathing/breath/breathe is/has/'s* not/
      isn't/hasn't back/down/gone back? to? normal;
      respiration is/'s/was/very/so/still*
      bad/hard/difficult/short;
      winded/breathless/breathlessness and/but/it/this/that/i/just* isn't/won't/not/hasn't/doesn't/never going/go/
      goes/gone/
      pass/passing away?; breathless/breathlessness came/comes/come on? for nothing/no/out; air hunger/hungry;
      short/shortness of
      air/oxygen/wind; starved/starving/lack/missing/hungry of/for? air/oxygen/breath; i respire/respirate; can't
      respire; like/like i/i'm/am? drowning/drown/suffocate
    """,
    Cue.WINDED: """
      sucking wind/air;      huffing/heaving/panting/blowing/puffing and? puffing? for? air?; blowing hard; blowing/
      panting/puffing/
      breathing/breathe/breathed like
    """,
    Cue.SEVERE: """
      thunder/lightning/explosion/bomb/gunshot/axe/sledgehammer/anvil/firework/fireworks/bursts/erupted; like/as/if
      something/a/it/balloon/bomb/vessel* burst/bursts/exploded/popped/snapped/broke; strongest/hardest/worse of my
      life; of my life
    """,
    Cue.NO_FEELING: """
      can't tell if/whether/when i/i'm/im/my/am/it/'m* touching/touch/holding/hold/stepping/standing/on; patch/spot/
      area/bit where/that i? feel/have/can't/don't nothing/no/feel; from the? waist down; can't/don't/doesn't/not/
      didn't/hardly/no feel/sense/tell/feeling hot/cold/heat/touch/temperature; don't/doesn't feel the;
      don't/doesn't/can't/not/didn't/
      hardly sense/perceive the/my/a/left/right/both; feels/feel/felt like/as/if/it/they/that/'s/is/are* not/isn't/
      aren't/wasn't mine/attached; after/from/at/like the? dentist/dentists; feels/feel/felt like i'm/im/wearing/
      through/in/inside/got/a/on/thick* glove/gloves/mitten/mittens/sock/socks; feels/feel/felt/like/as/made/walking
      like/on/of/a/made* block/lump/piece/of/wrapped/in* wood/wooden/rubber/rubbery/stone/plastic/cotton/wool/meat;
      belongs/belong to? someone/somebody/another else?; doesn't/don't/not/isn't/didn't belong/part to/of me; like?
      somebody/someone else 's; cotton/wool/carpet/sponge/cushion/pillow is?
      between/under; asleep/sleeping and/but won't/doesn't/not/isn't/can't; no/lost/losing/without/zero/lose/loss
      of? all/the/my/any/most/some*
      sensibility/sensitivity/sensations; sensation/sensibility is/has/'s/was/all/not/just/hasn't/completely* gone/
      lost/disappeared/left/come/returned; pinch/poke/prick/pinched/poked it/them/myself/me/there/and it/them/and/i/
      feel/get/there/'s/then/but*
      nothing; no/nothing feeling/sensation down/when
    """,
    Cue.DEAD: """
      insensible/insensitive/paralysis/paralized
    """,
    Cue.NO_STRENGTH: """
      haven't/hasn't/got/hadn't not? any/the/much/enough* force/strength/power/forces;
      refuse/refuses/refused/refusing/fails/failed/stopped/stops/ceased to? @act; can't pull my left/right? foot/
      toes up; no/lost/losing/zero/without any/all/the? control over/of; @cannot @act; no/zero/without/lost/losing/
      lose/loses/hardly any?/the?/all?/my? strength/power/force/grip/squeeze/strenght/forces; strength/power/force/
      grip/control is/has/'s/was/went/all/in/of/the/my/hand/arm/leg/just* gone/lost/disappeared/vanished/zero/
      nothing/missing; @cannot make/form/do/get/close/clench/ball a? fist; @cannot move/do/hold/lift/pick/grip/
      carry/open/turn/press/use a/an/my/the/up/even/empty/onto/simple* cup/mug/phone/pencil/pen/key/keys/glass/
      bottle/fork/spoon/kettle/door/jar/bag/lid/shoelace/thing/anything/button; nothing/no life/power/strength? in
      it/there/them; isn't/doesn't/not/won't/don't/didn't/wouldn't do/doing/does/obey/obeying/listen/listening/follow/
      following what/as/like/to/when/any/my/i/it/'s* tell/told/want/say/ask/ordered/me/orders/commands; isn't/not/
      don't/doesn't obey/obeying/answering/answer/answers; @cannot button/write/type/zip/tie/unscrew/unlock/text
    """,
    Cue.LIMP: """
      flop/flops/flopping/flopped/floppy/limp/dangles/dangling/dangle/dangled; hang/hangs/hanging/hung down/there/
      limp/loose; drags/dragging/slaps/slapping; wrist drop; fold/folds/folded/folding/crumple/crumples/crumpled/
      collapsed/
      collapses under; won't/doesn't/not/can't/wouldn't come/go/lift/rise/point/pull/flex up/off; don't come/lift
      up; won't/doesn't/not/can't hold me/my up/weight?; catch/catches/catching/scuff/scuffs on/the/every* floor/
      ground/step/steps/stairs/carpet/kerb/curb/pavement; tripping/trip/trips/tripped/stumble/stumbling over/on;
      just/keeps/kept let/lets/letting go; lets/letting go; foot drop; useless
    """,
    Cue.DROPS: """
      drop/drops/dropping/dropped/losing/let/letting go? of? my/the/a/all* everything/things/stuff/phone/cup/cups/
      mug/glass/plates/pen/keys/fork/bottle/toothbrush/anything
    """,
    Cue.DROOP: """
      mouth/lip/lips/smile/eyelid/cheek is/'s/are/has/was/went/looks/feels/gone/a/bit/all/just/now/on/one/the/left/
      right/side/half* crooked/lopsided/uneven/hanging/hangs/hung/drooped/droops/drooping/droopy/sagging/sags/
      slipped/slipping/dropped/dropping/skewed/wonky/twisted/slack; words/speech/talking/sentences/tongue/talk is/
      was/were/are/came/come/comes/coming/'s/sounds/sound/sounded/went/gone/feels/felt/all/out/just/keep/keeps*
      mushy/mush/slurry/slurred/thick/mumbled/mumbly/garbled/scrambled/jumbled/muddled/gobbledygook; @cannot form/
      get my/the/right/out/proper/simple* word/words/sentence/sentences; sound/sounding/sounds/sounded/talk/talking/
      talked/speak/spoke/
      speaking like/i'm/i/a/am/being/bit/was* drunk/drunken/pissed
    """,
    Cue.CONTROL: """
      pee/wee/piss/poo on/in my/the? myself/me/pants/shorts/leggings/trousers/bed/knickers/boxers; lost/lose/
      losing/losed my/the? bladder/bowel/bowels/pee/wee/urine/poo; @cannot start/begin/manage to/a/my* pee/
      wee/urinate/
      urinating/peeing/weeing/piss; @cannot pass any? water/urine; don't/didn't/doesn't/never/can't feel/
      notice/sense it/anything/myself? when i/'m/am/need/go/going* on/to/the* toilet/loo/pee/peeing/wee/weeing/poo/
      bathroom; leak/leaking/leaks/leaked/dribble/dribbled/dribbling/lose/losing/lost a/bit/some/little/few/drops/
      drop/of/my/out/the/tiny* pee/urine/wee/piss/pipi; drop/drops of pee/urine/wee; pee/wee/urine/piss/poo/shit/
      stool just/suddenly came/comes/coming/slipped/escaped/ran/runs; pee/wee/urine/piss/poo/shit/stool came/comes/
      coming/runs/ran/goes/went/slipped/slips/escaped/leaks out? by/without/before; @cannot tell/feel/know/sense/
      notice when/if/that/i/full* have/need/needed/to/the/going/my/go/am/'m/a* loo/toilet/pee/wee/poo/bathroom/wc/
      restroom/bladder/peeing/weeing/wipe/wiping; don't/didn't/doesn't/never/can't feel/felt/notice/noticed when/it/
      myself/me/the/my/i/need/to/urge/that/if* pee/wee/peeing/peed/weeing/wiping/wipe; don't/doesn't/can't/didn't
      feel/sense when/if/that i/it need/have to? go;
      need/needed/needing/want/
      wanted/try/tried/trying to pee/wee/piss/urinate and/but/yet/it/i/then* nothing/can't/won't/not/doesn't/didn't
      comes/come/came/coming/happens/happened/start/starts/go/get; pee/wee/urine/bladder/stream won't/doesn't/not/
      can't start/come/empty/stop; no/lost/losing/without/zero/any control down below/there; accident/mess in/on my/
      the shorts/pants/leggings/underwear/knickers/boxers/trousers; bladder/bowel/bowels/sphincter is/has/just/are/
      feels/was/gone/went* numb/lazy/paralysed/weak/dead
    """,
    Cue.WET: """
      pants/shorts/leggings/trousers/underwear/knickers/boxers/seat/mat were/was/are/is/got/suddenly/all/just/full/
      of* wet/soaked/soiled/damp/brown;
      wet/wetted the/my seat/chair/bench/mat/cushion/sofa/couch/stool/pad/carpet;
      wet/soaked/soiled/wetting my/the? pants/shorts/leggings/trousers/underwear/
      knickers/boxers; wet patch; peed/weed/pissed/pooed/shat/pooped; pee/wee/poo
    """,
    Cue.UNNOTICED: """
      knew nothing of/about it?;
      no/without/zero/any warning/noticing/knowing/realising/realizing/urge; didn't/never/not/don't even? feel/felt/
      notice/noticed/realise/realised/realize/realized/know/knew it/until/till/a/anything/that/any/i/coming*; only?
      noticed/realised/realized after/when/later
    """,
    Cue.SADDLE: """
      down below/south; when i/you wipe; wiping; toilet/loo paper; saddle; sit bones; vulva;
      bits/nads/nuts/tackle/fanny/foof/willy; down under; my front and back; front bottom
    """,
    Cue.POP: """
      like/got/been/was/being i/someone/somebody/something/a/had/have/been/got/'d* shot/kicked/whacked/hit/stamped/
      struck in?/from?/me?; thud/thwack/snaps/rips/bangs; felt/feel/heard something/sth go/give/detach/break;
      thwack; unzip/unzipped/detached/ruptured; like a? stone/rock/ball/bat/hammer/brick/bullet/stick hit/kicked/
      struck
    """,
    Cue.NO_FUNCTION: """
      @cannot @act; @cannot go/come/get/stay/stand/rise/be up/down/over/on/onto/my/the/tip* toes/tiptoe/tiptoes;
      @cannot go/come/get up/down/over/back; can't put/take/bear/hold/carry any/my/the/full/some/no* weight;
      @cannot go up/above/over/past/overhead/behind; carry/carries/take/takes/hold/holds me
      nowhere; @cannot support/sustain/bear/carry/hold me/my/the/any/weight/
      itself; no weight on/through/onto it/that/this/my/the/there; no weight possible; had to be carried/
      helped; carried/helped out/off; not/isn't/wasn't possible to? stand/walk/
      bend/straighten/move/step; useless/gone/limp/floppy; falls/fell down/apart
    """,
    Cue.THICK: """
      twice/double/triple/two/three times? the/as/it's? size/thick/fat/big/wide/thickness/left/right/other/normal;
      fatter/thicker/wider than; bigger/larger/fat/thick/bulging/bulgy/ballooning/enlarged/inflated/bloated
    """,
    Cue.HOT: """
      boiling/roasting/feverish/flushed/reddened/radiator/glowing/inflamed; hot water bottle; red hot
    """,
    Cue.URINE: """
      toilet/loo bowl/water; pipi/urines/tinkle/waterworks/widdle/wazz; number/numbers one/ones; took/had/take/taking/
      having/have a leak/slash/jimmy/pish/tinkle/squirt
    """,
    Cue.DARK: """
      coke/cola; iced/ice tea; rusted/ruby/beet/burgundy/copper/ketchup/tomato/ink/soy/gravy/mud/tar
    """,
    Cue.HEART_RACE: """
      heart/pulse/hr is/was/'s/keeps/still* going/goes/beating/beats
    """,
    Cue.PALPITATION: """
      heart/pulse/heartbeat is/was/'s/keeps/been/just/makes/does/doing/has/started* stumbling/stumbles/stumble/
      somersaults/hiccups/hopping/hops/jumping/pausing/pauses/stuttering/stutters/trembling/flopping/flops/tripping/
      trips; heart stop/stops/stopped and/then start/started/starts/restarted/went; double/extra/odd heartbeat/
      heartbeats/beats; out of rhythm; beats/beating irregular/wrong/strange/
      uneven/unevenly
    """,
    Cue.SETTLE: """
      doesn't/won't/not/isn't/didn't/can't bring/get/bringing/come/coming/make/go it down/lower/slower; while lying/
      sitting/resting; when/if i lie/sit/rest/lay/lying/stop
    """,
    Cue.VISION: """
      lost/missing/losing half/part/side of/my/the* vision/sight; black/grey/dark curtain/patch over/in/across;
      flashing/flashes lights/of? light? in/before; zigzag/zigzags in/across
    """,
}
"""From a kind to its phrases."""
