"""The words that stand over a cue: negation, being over, time, people, laughter, effort. No source."""

from bot.notation.hurt.cues import Cue

_DAY = (
    "monday/tuesday/wednesday/thursday/friday/saturday/sunday/mon/tues/weds/t"
    "hurs/fri/mondays/tuesdays/wednesdays/thursdays/fridays/saturdays/sundays"
)

SCOPES: dict[Cue, str] = {
    Cue.NOT: """
      no/not/never/without/zero/none/nor/neither/nope/nil/nada/don't/doesn't/didn't/isn't/wasn't/aren't/weren't/
      ain't/haven't/hasn't/hadn't/won't/nothing/minus/zilch; free of/from; no sign/signs/trace/hint/sort/kind/form
      of; lack/absence of; rid of; no more; no actual/real/major; hasn't been; stop; negative for; denies/denied/denying
    """,
    Cue.CONTRAST: """
      but/however/although/though/yet/except/apart/besides/until/till/til/unless/just/only/more/still/then/so/
      because/when/aside/bar/instead/rather/if/since/whereas/while; as long as; other than
    """,
    Cue.GONE: """
      gone; went away; disappeared/disappear/vanished/subsided; cleared up?; settled down?; healed/
      sorted/resolved/recovered/cured/eliminated; has passed; no longer; any more; anymore; stopped/stop hurting/
      aching/bothering/being/niggling/pinching; back to normal; all better; good as new; right as rain; left
      the building/chat; is/'s/are/was away; long/while/ages/forever time? since my/the/that/this/it; behind me; old
      news;
      didn't/hasn't/haven't/not/never/doesn't/don't come/return/returned/came/showed/show/happen/happened/bother/
      bothered/bothering/flare/flared/reappear/reappeared/play/played/playing/act/acted/give/given/gave me? back/up/
      any?; thing/matter of the past; is/'s/are/feels/feel now/today/completely/totally* without/free of? pain/trouble/
      symptoms; not a peep/murmur/whisper/word/squeak/flicker/sausage/thing/whimper; didn't/doesn't/hasn't/hadn't/
      never/not make/made/say/said/utter/uttered/give/gave/raise/raised me? a/one/any/so? single/much? as? a?
      peep/murmur/whisper/word/squeak/sound/noise/fuss/whimper/grumble; keep/keeps/kept/keeping its/it's/his/her/their
      gob/mouth/trap/lips/beak/mouths shut/zipped/closed/sealed; say/says/said/saying/said nothing/nowt/zilch/nada;
      stayed/stays/kept/keeps/was/is/'s/been/being/went all/so/very/nice/perfectly/totally/completely*
      quiet/silent/mute;
      without a/one/any single? peep/murmur/whisper/word/squeak/sound/noise/fuss/grumble/whimper;
      not/isn't/wasn't/doesn't/didn't/
      don't/hasn't hurting/hurt/sore/painful/bothering/bother me? any/at?
      more/anymore/all/anywhere; used to; calmed down?; stayed/stays away; fixed; forgotten; long gone; is/'s/all
      history; ancient
      history
    """,
    Cue.FINE: """
      fine; been/feeling/felt/feels
      grand/sound/golden/champion/tip-top;
      ok/okay/good/better/alright/great/grand/sound/golden/perfect/solid
      now/again/today/after/since/afterwards; feels/feel/felt/feeling/is/
      was/'s/are/been/were/seems/seemed @bit* fine/good/ok/okay/great/perfect/alright/solid/brilliant/normal/better/
      lovely/healthy/amazing; eased off; all good now?; is/'s/are/feels/feeling/at/to @bit* 100%/hundred; back to
      normal
    """,
    Cue.PAST: f"""
      last week/night/time/month/weekend/session/workout/{_DAY}; yesterday/yday/yest/yesturday/ystrdy; the other
      day/week; few/couple/two/three of? days/weeks ago; days/weeks/week ago; on? {_DAY} 's?; before/previously/
      earlier/ago; the? weekend; this time last; in the spring/summer/autumn/winter; last spring/autumn;
      in january/february/
      march/april/june/july/august/september/october/november/december
    """,
    Cue.LONG_AGO: """
      years/year ago; last year/summer/winter; months ago; as a kid/child/teenager/teen/youngster/boy/lad; in
      my teens/twenties/youth; back? in high? school/college/uni/
      university/highschool; ages
      ago; long time ago; in the past; in the? old/former/olden times/days/time; in those days; back in the day; years
      back; when i was young/younger/little/small; when i was a? kid/child/
      teenager/teen/boy/girl; when i was at school/college/uni
    """,
    Cue.NOW: """
      today/now/currently/tonight/during/mid/while/halfway/just; this morning/evening/time; right now; on the way
      up/down/back; on the last/first/second/third/final/top/bottom; last/first/second/final/top set/rep/one/reps/
      sets; when i; after set; at the bottom/top; at lockout; in the warm up; warming up; warm up; on/in set; every/
      each rep; in the set/session
    """,
    Cue.IF: """
      if/whether/avoid/prevent/preventing/avoiding/prevention/risk/risking; should i feel/expect/get any; what if;
      in case; should i get; so that; so i/it/my don't/doesn't; so as not to; likely to; without it; supposed to; to
      stop my/the
    """,
    Cue.FUTURE: """
      will/might/could/would/can/gonna/i'll/it'll/that'll/they'll/won't/tomorrow/expecting/wouldn't; going/bound/
      expecting/expect/expected to; 'll
    """,
    Cue.OTHER: """
      mum/mom/mother/dad/father/wife/husband/hubby/partner/girlfriend/boyfriend/gf/bf/fiance/fiancee/son/daughter/
      kid/kids/child/children/baby/brother/sister/friend/friends/mate/mates/buddy/colleague/coworker/boss/gran/
      grandma/nan/nana/grandad/grandpa/aunt/auntie/cousin/flatmate/roommate/housemate/neighbour/neighbor/dog/cat/
      puppy/horse/spotter/guy/bloke/lad/lady/someone/somebody/people/he/she/his/her/he's/she's/him/their/they're/
      twin/missus/hers/mums/dads/moms/husbands/wifes/mam/mams/mammy/mummy/daddy/mama/papa/pops/granny/granda/
      grandparents/granddad/grandson/granddaughter/nephew/niece/stepdad/stepmum/stepson/stepdaughter/girlfriends/
      boyfriends/spouse/toddler/newborn/parents/workmate/workmates/coworkers/colleagues/classmate/employee/
      customer/landlord/goalie/goalkeeper/keeper/referee/babysitter/nanny/cleaner/plumber/supervisor/manager/godson/
      cousins/uncle/aunty/bestie/amma/appa/ammi/abbu/abba/didi/bhabhi/nani/dadi/chacha/
      bhaiya/oma/opa/abuela/abuelo/babcia;
      grandmother/grandfather/madre/padre/hermano/hermana/father's/mother's;
      big/little/older/younger/elder/baby/kid
      sis/bro/sister/brother; student/pupil/pal of mine; my/our/bada/chota bhai; the/my/our/his/her/me
      da/das/ma/mas/pa/bro/sis/ex/hubs/lass/bairn/wean/
      misses/mrs/bff/pal/pals; the/my/our/his/her/me/your old/ould/auld/wee/little? man/lad/fella/lady/one;
      uncle/aunty/auntie ji; mother/father/brother/sister/son/daughter in law;
      training/gym/lifting/workout/running/climbing/business/work partner/buddy/mate/pal; some/
      the girl/woman/boy; a/other guy/bloke/girl/woman/lad/dude/kid/fella/man/boy; other/better half; client of mine;
      client/patient/pupil/gentleman/fella/fellow/chap/stranger/trainer/instructor/teammate/teammates/
      opponent/nurse; old boy; gym goer; gym member; person next/beside;
      dude/man/woman/girl/boy/member/newbie/lifter next/beside/opposite/near to? me/us
    """,
    Cue.SELF: """
      i/i'm/i've/my/me/mine/myself/i'd/i'll
    """,
    Cue.LAUGH: """
      lol/lolol/lols/lmao/lmfao/rofl/haha/hahaha/hahahaha/hah/ha/hehe/heh/jk/joking/kidding/xd/lool/loool/jks/
      bahaha/ahaha/hahah/hahahah/jajaja/jaja
    """,
    Cue.EFFORT: """
      set/sets/rep/reps/session/workout/finisher/drop/drops/dropset/dropsets/minis/negatives/eccentrics/burpees/
      plan/circuit/conditioning/amrap/emom/intervals/sprints/tempo/cardio/programme/program/ones/finishers/superset/
      supersets/round/rounds/wod/metcon/lungeathon
    """,
    Cue.TRAINED: f"""
      from/after/since/following/post/cos/because/thanks of/to? the/that/my/last/leg/push/pull/chest/arm/back/
      shoulder/upper/lower? {_DAY}/yesterday/yesterday's/bench/benching/squat/squats/squatting/deadlift/deadlifts/
      deads/rdls/lunges/rows/training/session/workout/class/football/running/run/day/weekend/gym/dips/flys/flyes/
      presses/pressing/press/hill/hills/spin/hiking/hike/gardening/yoga/one/time/week/night/curls/pullups/pull/
      these/those/this/them/laughing/coughing/drops/volume/workouts/nordics/sessions; doms; from/after/since legs/
      push/pull/arms/chest/back/shoulders; day after; still sore/aching/achy/tender; {_DAY}/yesterday 's? session/
      workout/squats/lunges/bench/deadlifts/rdls/legs; after/from yesterday; muscle soreness; muscles sore/ache;
      usual doms/soreness; good sore; gym sore; training sore
    """,
    Cue.STOPPED: """
      had/have/having to stop/quit/bail/rack/drop/skip/leave/cut; cut it short; can't finish/complete/continue;
      stopped; made me stop; should i stop; worried/concerned; injury; a lot; badly; not in a good way; bad way; not
      the good kind; properly; proper; again; worse; keeps; can't; i stopped
    """,
    Cue.GOOD: """
      painless/painfree/fine/ok/okay/good/great/perfect/alright/solid/happy/fresh/strong/recovered/better/brilliant/
      normal/healthy/
      lovely/nice/best/amazing
    """,
    Cue.LITTLE: """
      slight/slightly/mild/little/minor/bit/small/tiny/dull/hungover/hangover/dehydrated/caffeine/coffee/tension
    """,
    Cue.GOVERNS: """
      effort/energy/sleep/slept/mood/motivation/session/workout/difficulty/hard/hardness/readiness/stress/rpe/set/
      sets/form/technique/fatigue/tiredness/tired/intensity/exertion/overall/confidence/hunger/nutrition/diet/steps
    """,
    Cue.ABOUT: """
      about/around/roughly/maybe/like/say/probably/approx/approximately/solid/it/at/is/was/were/a/an/level/to/of/'s/
      it's/only/just/prob/circa/perhaps/score/scale/rating/rate/rated/i'd/hit/hitting/up/down/now/nearly/almost/bit/
      no/under/over/between/more/kinda/kind/give/possibly/easily/easy/got/pain/today/sitting/sits/reached/peaked/
      worst/max/so/still/been/id/are/good/its/call/as/from
    """,
}
