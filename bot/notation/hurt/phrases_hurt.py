"""The clients' words for being hurt, a kind a row, in the language of `bot.notation.hurt.patterns`. Gathered by
us."""

from bot.notation.hurt.cues import Cue

HURTS: dict[Cue, str] = {
    Cue.PAIN: """
      pain/pains/payn/paine/pane/discomfort/agony/aggro/paining/pained; owie; boo boo; booboo/booboos;
      duele/duelen/dolor/douleur/schmerz/schmerzen/dolore; sore pain; hurt pain
    """,
    Cue.HURT: """
      hurt/hurts/hurting/hurted/hurtin/hurty/hurtz/hertz/hurst
    """,
    Cue.PAINFUL: """
      painful/painfully/discomfortable/uncomfy/uncomf/excruciating/agonising/agonizing/uncomfortable/unbearable/
      painfull
    """,
    Cue.SHARP: """
      sharp/sharpness/sharpish; sharp/stabbing/shooting/pinching/tearing/pulling/ripping/grabbing/burning/stinging/
      throbbing/jarring/dull pain/pains/sensation/ache/feeling/twinge/pinch; shooting; shoots/shot down/through/
      into/across; shoots/shot up my/the; shooting up/down/through/into; stab/stabs/stabbing/stabby; stabbed my/me;
      tearing; pinch/pinches/pinching/pinched/pinchy; wince/winces/wincing/winced; jabbed/poked/needled me/my;
      twinge/twinges/twinging/twinged/twingy/twingey/twing; niggle/niggles/niggling/niggly/niggled/niggley; nip/
      nips/nipping/nipped; zing/zings/zinging/zapping/zaps; zap/zapped; electric
      shock/shocks/jolt/feeling/thing/current/buzz/tingle/twang; like/
      of an? electric/electricity/current/lightning; electricity in/down/through/up/into; jolt;
      jolt of pain; throb/throbs/throbbing/throbbed; sting/stings/stinging/stung; searing/piercing/jabbing; jab/
      jabs; nerve pain; like a? hot/sharp/red? hot? knife/needle/needles/poker; like being stabbed; gnawing; spasm/
      spasms/spasming/spasmed; something in my? tear/tore/rip/ripped/go/went/give/gave/pull/pulled/twang/twanged/
      ping/pinged/snap/pop/popped; felt/feel/feeling my/the/a? left/right/lower* @place
      kind/kinda/sort/sorta/of/um/er/like/just/a/bit* go/went/pull/pop/tear/give/
      snap/crack/twinge/strain/cramp; something let/lets/come/came/slip/slipped/shift/shifted/move/moved go/loose/
      away; something tear/tore/rip/ripped/go/went/give/gave/pop/popped/strain/strained/
      pull/pulled/twang/twanged/ping/pinged/snap; twang/twanged; hot wire/wires; felt/feel/feeling/had a/some
      weird/odd/funny/strange/nasty/horrible/queer
      pull/pulling/tug/twang/tweak/strain/sensation/catch; impinging/impinge/impinges; dull ache; sharp one/
      bit/thing/stab
    """,
    Cue.QUALITY: """
      catching/catches/catchy; pulling/pulls; feel/feels/feeling a pull; grabbing/grabs/grabbed/grabby; jarred/
      jarring; knot/knots/knotted; prick/pricks/pricked/pricking; puncture/punctures;
      biting; seizing/seized/seizes/seize up?; locking/locked/locks/lock up?;
      crick/cricked; squeaky/squeaks
    """,
    Cue.SORE: """
      sore/soreness/sores/soreish/sorer/sair/tender/tenderness/doms/soar/ache/aches/aching/achy/ached/achey/achin/
      akes/
      aked/raw
    """,
    Cue.BURN: """
      burn/burns/burning/burned/burnt/burny; on fire
    """,
    Cue.WHISPER: """
      having/had/has/have a little/bit/right/good/of/slight/proper/wee/quiet/small/tiny/gentle/mild/minor/soft*
      moan/grumble/whinge/whine/sulk/strop/wobble/paddy/
      tantrum/moment/hissy/fit/go/fight/argument/chat/word; said/says/saying/say absolutely/big/hard/a/oh*
      nope/nah/no/not/enough/stop/never;
      not/hasn't/haven't/won't/never/isn't/still/didn't not?
      calmed/settled/eased/healed/finish/finished/recovered/mended/calm/settle/ease/heal down/off/up? yet?;
      not/isn't/wasn't/aren't/weren't/never @bit* the? best?
      mad/pleased/content/contented/satisfied/keen/wild/sold/ecstatic/overjoyed
      about/on/with/for/of?; it/'s/is/it's/has come/comes/coming/came/back back? again; can't turn/lift/look
      my head/neck;
      not/isn't/wasn't/won't/aren't/don't thanking/thank/forgiving/forgive me; had/has/having/have words with
      me; have/has/got
      bad/hurt/ill/sick in/at/on the/my; still there/here/around/lingering/hanging/present/niggling;
      size of an/a egg/orange/grapefruit/golf/tennis/melon/balloon/apple; talking/answering back; wants/needs
      oil/oiling/grease/greasing; fine/ok/okay/good/grand/alright/great until/till/til; thought/hoped
      my/the/that? left/right?
      @place was/is/had/were all* sorted/fixed/better/gone/healed/settled/over/behind;
      catch in my/the/left/right/inner/outer/upper/lower/side/of* @place;
      grumble/moan/mutter/muttering/murmur/whimper/whinge/gripe/growl in/from/at my/the;
      barked/barks/growled/growls/snarled/snarls/hissed/howled/yelled/yelped/shouted/screamed/snapped/moaned/grumbled at
      me; smarts/smarted/smarting;
      in a heap; goosed/gubbed/rodgered/jiggered/hosed/borked;
      not/isn't/wasn't/aren't/weren't/never @bit* a? hundred percent/per/pc/%; not/isn't/wasn't/aren't/weren't
      having any of/bar;
      barked/skinned/grazed my left/right? @place; in rag order;
      hasn't/haven't/hadn't/not been/felt/feeling @bit* right/same/good/great/itself/normal
      since/after/lately/recently;
      not/no agree/agreeing with; ginger; says/said/saying ciao/adios/bonjour/goodbye/bye;
      gripe/gripes/complaint/snag/hiccup; wants/want/wanted a word; not/isn't/aren't/no on? speaking terms; @place
      awareness/protest/protests/protested/nags/murmurs/murmur/whispers/whisper/drama/moan/moans/whinge/sulk;
      overdone/
      overdid/overcooked the/my left/right? @place; slept/lay/lied/sat on my/the? @place wrong/funny/awkwardly/badly/
      weird; like a/an rubber/elastic/guitar? band/rope/string is? about/going/ready to? snap/go/twang/break; don't/
      can't/didn't/not/never trust/trusting/trusted;
      poked/hit/kicked/smacked/elbowed/kneed/punched/headbutted/clobbered/clattered in the/my left/right? @place;
      hit/knocked/banged/kicked/cut myself; @place got/was/is/gets
      squashed/crushed/trapped/caught/jammed/pinched/nicked/squished/clipped; not/isn't/aren't/wasn't/weren't @bit*
      kind/friendly/nice/gentle to/with/on;
      bit/little/feels/felt/feeling/feel/is/was/'s/seems/seemed/kinda/something/slightly/been/are/were/still/way/
      felt bit/slightly/a/little/very/so/really/kinda/still/just* off; funny/weird/odd/strange/dodgy/dicky/iffy/
      ropey/ropy/wonky/cranky/grumpy/grumbly/grumbling/grumbled/grumbles/grouchy/angry/unhappy/temperamental/touchy/
      sensitive/janky/gammy/manky; moany/moaning/moaned/whinging/whining/naggy/nagging/nag/annoyed/annoying/
      irritated/irritation/irritating/irritable/inflamed/inflammation/irritate/irritates/agitated/agravated/
      agrivated/aggrevated/aggravated/aggravate/aggravates/aggravating/aggravation; upset/stressed/suspect/fragile/
      twitchy/crunchy/crook/problem/problems/problematic/trouble/issue/issues/bother/bothering/bothers/bothered/
      bothersome/troubling/troubles/troubled/grief/gyp/jip/gip/hassle; tweaky/dicey/sketchy/compromised/protesting/
      shouting/
      screaming/barking/yelling/complaining/complained/complains/objecting/objected/bugging/bugs/worrying/
      concerning/bad/worse/rough/twisted; hate/hates/hated/hating; flare/flared/flares/flaring/flair/flaired up;
      flareup; @place thing/issue/problem/trouble; can feel my/the left/right?; can feel it in my/the; not at? 100%;
      isn't/wasn't/not/aren't/weren't/ain't at? 100%/100;
      something small/little/tiny/slight/minor/weird/nasty/sharp in/with/at/behind my/the;
      old mate/friend/pal/enemy/foe/nemesis/buddy/chum/companion the/my* left/right? @place;
      hot/sore/tender/painful/raw spot/spots on/in/at/over; @place got/was/is/gets
      stood/trodden/stepped/stamped/sat/trampled on; play/plays/playing/played/plaing up; act/acts/acting/acted up;
      kick/
      kicks/kicking/kicked off; acting funny/weird/out/strange; not/isn't/wasn't/aren't/never/weren't/ain't @bit*
      happy/right/good/great/ideal/pleased/impressed/well/brilliant/loving/liking/normal/keen/itself/themselves/
      cooperating/playing/comfortable/enjoying/thrilled/chuffed/delighted/convinced/fond/amused; doesn't/don't/
      didn't feel/seem/look/felt @bit* right/good/great/normal/well/happy/nice/ok/stable; doesn't/don't/didn't/not
      @bit* like/liked/likes/love/loved/enjoy/agree/appreciate/want/liking; not a fan; wasn't a fan; isn't a fan;
      had enough; felt/feel/feeling something/somethin/smth/summat; something not/isn't/wasn't right; something off/
      wrong/funny/weird/odd; wrong with/in; matter with; familiar/nasty/horrible/nagging/known/old feeling/
      sensation/friend in/of my/the; what's/whats up with; did/done something; something going/
      goes
      on;
      something in/with/to my/the; not/isn't/wasn't/aren't fine/ok/okay/alright/okey; not/isn't/wasn't/aren't having
      a/any/the/it/good/great/nice/best* time/day/it/fun; having a bad/rough/hard/moment/tantrum/wobble/strop; is/
      's/are/was/were/been at it/me again?; isn't/ain't/wasn't/not what it/they was/were/used; full/made of
      gravel/sand/glass/grit/stones; like there's/theres/there/has/got/is/broken/some/a* glass/gravel/grit/sand/
      needles/
      nails/razors/shards; glass/gravel/grit/needles/razors in my/the; suffer/suffers/suffering/suffered;
      blocked/blocks/blocking; molest/molests/molesting/disturb/disturbs/disturbing/disturbed;
      makes/make/made/does/gives/did
      me/myself bad/ill/trouble/sick/evil; on strike; mad/cross/furious/angry/annoyed/pissed at/with me;
      has/have/is/was/
      's/been/being a/an/bit/total/absolute/such/of* nightmare/disaster/mess/misery/pest/horror; meh/blah/bleh/naff/
      rubbish/crap/shite/crappy; was/is/'s/were talking; rebel/rebels/rebelling/revolting/sulking/sulks/groaning/
      groans/groaned/whimpering/mutiny; swearing/cursing/crying/speaking/shouting/yelling/barking/hissing at/to/for
      me?; making/made/makes itself known/felt/heard; saying/says/said hello/hi/hey/no; letting/lets/let me/itself
      know/be/feel known/it?; reminding/reminds/reminded me; back with a vengeance; thing/niggle/problem/issue/
      trouble is? came/come/comes/back/returned/returns back?; something is/'s up with/in/at; up with my/the; smack/
      smacked/clipped/clonked/clouted/mashed/squashed/crushed/nicked/sliced/scalded/caught/shut my/the left/right?
      @place; bar/plate/dumbbell/db/bell/handle/box smacked/clipped/knocked/bumped/banged/hit/caught/whacked/
      clonked/dug/landed me? in/
      into/on? my/the? left/right? @place; feels/felt/feel/feeling @bit* wrong/bad/rough/terrible/awful/horrible/
      nasty/unstable/loose/jarred; on edge; talking to me; talk/talks/talked/speak/speaks/spoke/chat/chats/chatted/
      chatting/whisper/whispers/whispered/whispering to/at/with me; had a go at me; told/telling/tells/tell me off/no/
      about;
      not/isn't/wasn't/never/no @bit* the? best/
      greatest/finest/happiest/cleverest; set/sets off; gives/giving/gave/
      given/give me; not/wasn't/isn't having it; in a bad way; bashed/bumped/banged/knocked/whacked/stubbed/jammed/
      trapped/smashed; hit my/me left/right? @place; i feel/felt it in my/the; felt/feel it in my/the; feel/felt
      that in my/the; not 100;
      no bueno/use; not/isn't/wasn't/aren't @bit*
      clever/special/flash/cracking/marvellous/wonderful/lovely/grand/hunky; @place is/'s/been* no good;
      not at 100; back to haunt; nagging me; niggled; unhappy with; grinding; crackly/crackling; tight and sore;
      been dropped on; dropped a/the/my plate/db/dumbbell/dumbell/bar/weight/kettlebell/kb/disc/it/one on my/the;
      plate/
      db/dumbbell/bar/weight/kettlebell on/onto my/the left/right/big/little? toe/toes/foot/hand/finger/fingers/thumb/
      shin/face/nose/chin/head; fell/landed on my/the; dropped on my; chunk/skin/layer out/off of? my/the;
      skin
      came/ripped/tore/peeled/hanging/hangs/flapping off?; flap/hook/lump/bits of skin;
      nail/toenail/fingernail is/'s/has/just/are* coming/came/come/falling/fell/fallen/hanging off; @place
      needs/needed ice/icing/strapping/resting;
      kicked/hit/punched/kneed/elbowed/whacked/clipped/clobbered/caught/poked/headbutted/got me
      in/on the/my left/right? @place; @place bit/bites/bited/stung/zapped/warned me;
      something bite/bites little? in/on/at/behind my/the left/right? @place;
      something bit/bite/bites/biting/bited/stung/sting/stings/grabbed/grabs me in/on/at/behind my/the? left/right?
      @place; @place woke/wakes/waked/wakened me; @place kept/keeps me awake/up; not the/a good
      burn/burning/kind; no/not better;
      isn't/not/doesn't/hasn't get/getting/got/gotten
      any? better; no improvement; rubbing; rubs; worked up; overworked; reacting/reacted/reacts; @place is?
      no/not/isn't/hasn't
      get/getting/got/gotten/feeling? any? better/improving/improved; like it/its/it's is/was? about/going/gonna to?
      go/pop/snap/tear/cramp/give; lit/lights/lighting/lighted up; kicking my ass; giving out
    """,
    Cue.STRAIN: """
      turned/turn/turning/twisted/folded my/the/an/me left/right/bad? ankle/knee;
      did/done/does/doing a number on my/the/me;
      @place catch since/when/whenever/on/from;
      tweak/tweaked/tweeked/tweaking/tweeks; strain/strained/straining; pull/pulled/puled; sprain/sprained;
      corked/corky; twist/
      twisted; rolled; bent/bend/bending my/the left/right? finger/fingers/thumb/wrist/toe/toes back;
      tore/torn/tear/teared; wrench/wrenched; rick/ricked; overstretched/overstretch/hyperextended/
      overextended; put/threw/thrown/did/done/knocked my/me/the left/right/lower/bad/other* @place out/in; my/the/me/
      left/right/lower left/right/lower? @place just/'s/has/have* went/gone; my/the/me/left/right/lower left/right/
      lower? @place is gone; @place went/gone again; @place 's/has/is gone; @place went on me; a
      slight/small/wee/tiny/bit/of/little/faint/sudden/nasty* catch/pull/zing/click/knock/grab/tug/stab in/with/at/to
      my/the; a little/slight/bit/sudden/small? tug;
      did/done a rib/disc/disk/ankle/tendon/groin/hammy/hamstring/achilles
      coughing/sneezing/lifting/getting/reaching/playing/
      on/in/at/when/yesterday/last/again; put/throw/threw my/me/
      the @place out; messed/mucked/mess/muck up; buggered; bust/busted; went into spasm;
      did/done my/me back/knee/hip/neck/shoulder/ankle/hamstring/hammy/groin/calf in/again/getting/lifting/picking/
      putting/
      when/reaching/bending/moving/carrying/playing/gardening/shovelling/digging/at/on; jacked/tweaked/messed/
      wrenched/bunged up; went/gone/go/rolled over on; back/neck/shoulder/hip/knee/kneecap is/was/'s/went out; over
      stretched; stiffened up; blew/blown out; jarred; hurt; over did; overdid/overdone
    """,
    Cue.INJURED: """
      injury/injured/injure/injuries/injuring/injurd; broke/broken/fractured my/the/a left/right/big/little/middle?
      toe/finger/thumb/nose; hurt/injured/hurted my? myself/self; hurt meself; like/think/thought i/i've/ive/may/
      might/have* pulled/strained/tweaked/torn/tore it/that; tweaked/strained it/something; something tweaked/
      strained/pulled; strained/pulled/tweaked/tore/torn/strain/pull/tweak a? muscle/something/somethin/tendon/
      ligament/summat/smth/it; did/done myself a? mischief/injury; muscle strain/tear/pull; bent/bend/bends/went/
      folded the/in? wrong way; bent back/backwards; trapped/pinched nerve;
      pulled/torn/strained muscle; put/threw/chucked/flung/throw/slung/chuck my back/neck/hip out; si/sij/joint is/
      's/has/went/gone/been* out;
      back/neck/pelvis is/'s/has/just/been/completely* gone/went/goes/out out?
    """,
    Cue.MARK: """
      cramp/cramps/cramping/cramped/crampy; charley/charlie horse; got/gave/given/had me? a dead leg/arm; tingle/
      tingles/tingling/tingly/tingled/tinglin;
      splinter/splinters/thorn/thorns/shard in/under/stuck my/the/in/left/right* @place;
      pins and? needles; prickling/prickly/fizzing; stitch; blister/blisters/blistered; wound in/on/at; wounded my;
      gash/gashed; chafed/chafing/chafe;
      rope/carpet/mat/bar/friction/strap/knurl burn/burns; toe/toenail/finger/nail/eye/thumb/foot/hand/shin
      is/'s/has/went/gone/turned/all/are/bit/a* black/blue/purple; graze/
      grazed; scrape/scraped/scraping; ripped/tore/torn/rip/ripping/tear/tearing my/the/a/some/bit/of* left/right?
      callus/calluses/callous/callouses/skin/palm/palms/hand/hands; torn/ripped hand/hands/skin/callus/calluses/
      callous/palm/palms; hands/palms/palm/hand/skin/callus/calluses are/is/got/all/'s/have/has/was/were/just* torn/
      ripped/opened/shredded/raw/bleeding/open; bruise/bruised/bruises/bruising; bit/bitten/bite my lip/cheek;
      bit my tongue
      on/in/during/mid; bleeding/bled/bleeds; cut open; bit/drop/drops/spot/trickle/little of? blood;
      swell/
      swelling/swells/swelled/swollen up?; puffy; puffed up; lump; skinned; split/splits/splitting/sliced/cut/lost/
      lose/grazed/scraped my/the/some/a/bit/of* skin; split my? skin/lip/nail;
      split/splits/splitting/sliced my/the left/right? thumb/thumbs/finger/fingers/hand/hands/palm/palms/heel/knuckle/
      knuckles/chin/eyebrow/lip/callus; cut my; peeled
    """,
    Cue.JOINT_NOISE: """
      click/clicks/clicking/clicked/clicky/clickey; crunches/crunching/crackles/crackling/cracks; grind/grinding/
      grinds/grindy; clunk/clunks/clunking/clunky; creak/creaking/creaky; buckled/buckles/buckling; unstable/
      instability; wobbly; popping/poppy; grating
    """,
    Cue.OUCH: """
      ouch/aua/oww/owch/ouchy/ouchie/yowch/yeouch/ooch/ow/owow
    """,
    Cue.KILLING: """
      killing/killin me/my; murdering/splitting/crippling/slaying/torturing/finishing me; is/was/'s/been/are/
      were murder/hell/torture/agony;
      giving/given/gave/gives/give me? what for; giving/given/gave/gives/give me? a? merry?
      hell/beans/earful/warning/signals/signs/pain/jip/gyp/
      gip/grief/trouble/bother/problems/aggro/issues/aggravation/stick; kills; kill; murder on my/the; killing
    """,
    Cue.WRECKED: """
      wrecked/knackered/shot/screwed/fucked/buggered/busted/broken/blown/ruined/trashed/effed/toast/toasted/kaput/
      munted/banjaxed/bust; messed up; in
      bits/ruins/ribbons/flitters/tatters/pieces/shreds/smithereens; done in
    """,
    Cue.BECAUSE: """
      because of my/the; due to my/the; thanks to my/the; on account of my/the; resting/rest my/the; protecting/
      protect/nursing/babying my/the; limping/limp/limped/hobbling/hobbled; worried/concerned about my/the; careful
      with/of my/the; wary of my/the; won't let me; wouldn't let me; doesn't let me; stopping me; stops me; limits
      me; limiting me; favouring/favoring my/the; can't sleep/lie/lay on my; had to stop; save/saving/spare my/the;
      easy on my/the; need/needs physio
    """,
}

CONDITIONS = """
sciatica: sciatica; sciatic nerve?
back: lumbago
shoulder: frozen shoulder
wrist: carpal tunnel
finger: trigger finger
neck: torticollis
-: gout/splints/ganglion/rsi/tenosynovitis/stenosis/spondylosis/spondylitis/tendinosis/chondromalacia/rheumatism
elbow: tennis/golfers/golf/golfer elbow; golfer 's elbow
knee: jumpers/runners/jumper/runner knee; jumper/runner 's knee
shin: shin splints/splint; shinsplints
foot: plantar; plantar fasciitis/fascitis/fasciatis
-: tendonitis/tendinitis/tendinopathy/tendonopathy/bursitis/arthritis/impingement/hernia/whiplash; heartburn
-: slipped/slip/herniated/bulging/bulged a? disc/disk; period pains/pain/cramps
neck: crick in my/the neck; a/bit/of/slight* crick
head: migraine/migraines
tooth: toothache; tooth ache
ear: earache; ear ache
stomach: stomach/tummy ache; stomachache/bellyache/tummyache
back: backache; back ache
"""
"""Named complaints, with the place they mean (`-` where the words around say it)."""
