"""Everyday talk that holds a cue's words and means none of it: where such a phrase matches, its words carry no
cue."""

NEUTRAL = """
or/and the/such/so like; or suchlike; heart stopper/stoppers; dizzy/dizzying price/prices/sums/amounts;
head gasket/gaskets/unit/office/chef/waiter/waitress/honcho/teacher/boy/girl;
on/with/during/doing at the/that/this/those/my? @place thingy/thingie/gizmo/whatsit/contraption/doodah;
side/front/copenhagen/reverse blank/blanks;
nip/nipped/nipping out/home/away/round/over/upstairs/downstairs/early; nip/nipped off/to off/out/home/work/shop/shops/
loo/toilet/car/before/early/after;
had/have/need/needed/got/gotta to? nip off;
no/without air con/conditioning/flow/vents; no air left? in the/my/this? gym/room/tyre/tyres/tire/tires/ball/garage/
place;
lost/lose/loses/losing/conceded/equalised it/the/that/match/game/final/cup/title/lead/race/point/points/to/them/by/one/
nil/two* in/at/with/on the/their/very/a* last/final/dying/closing/injury time? second/seconds/sec/secs; lost/lose/
losing by just/only/like/about/less/than* a/one/half/two/three* second/seconds/sec/secs;
got/get/gets/getting/was/were/been/being shot down for/by/at/again/because/over; shot down in flames;
idea/request/proposal/plan/pitch/bid/application/suggestion/offer/appeal/rise/raise was/got/were/been/being/gets/has/
all* shot down; shot down the/my/his/her/our/that idea/request/proposal/plan/pitch/bid/application/suggestion/offer/
appeal; lost/lose/losing a/few/couple/of/some* second/seconds/sec/secs on/off/per;
cushion/pillow/foam/pad/towel/mat under/
between my/the knees/knee/hips/hip/back/head/ankles/feet; forgot/forget/remember/forgotten where i was/am/got/left
in/up/
with/at/on/to/off;
give/gives/gave/given/giving me/us/him/her/you/anyone/everyone/people/them a/an/another/mini/near/proper/right/
small/little/actual/real/bloody* heart attack; had/have/having a/an/mini/small* heart attack when/at/seeing/reading/
looking/over; gym/place/room is/was/'s/so/just/all/absolutely/literally/buzzing/and* spinning/swimming/rolling with
people/folk/bodies/members/kids/students/newbies/beginners; see/seeing stars on the/my/this/their? gym ceiling; stars
painted/drawn/stuck/printed on; heart skip/skips/skipped/missed/misses/stopped a? beat? when/at/seeing/reading;
can't talk on/at/in/rn/i'm/im/
driving; can't speak/talk highly/about/now/long/
yet/atm/until/till/later/to;
on/with/during/doing/at the/that/this/those/my? @place thing/things/contraption/station/gadget/apparatus; if
i'm/im/i/we're/to/being/be/am/just/totally/brutally* honest/frank/fair/truthful/candid; if i/i'd/had/have/have/to*
say/pick/complain/moan; if anything my/the/it/it's; if you ask/must me/know; dizzy blonde; blacked/black/blacking
out my/the?
calendar/date/dates/evening/diary/week/weekend/day/days/friday/windows; swollen/inflated/bruised/huge ego/head;
faint/fainted/fainting when/at i/saw/the/looking/reading/my* plan/price/bill/cost/programme/program/list; head banging
tunes/music/playlist/to; spin/spinning class/classes/bike/bikes;
what a headache; @thing/@chore @where* @where* @where* @is/has/have/can/will @such* @such*
headache/headaches/migraine; @thing/parking/loading/unloading/finding/logging @where* @where* @where* @is/has/have/
can/will @such* @such* pain in the neck; what/such a? @such* headache/migraine this/that/the/these @thing/@chore;
knock/knocked/knocking/knockin it/that/this/things/them/everything/squats/rows/today/session/workout/stuff* on the head;
like a? ham/hams; can't breathe in/with this/the/my/a
new? belt/vest/top/bra/shirt/jeans/suit/leggings; stinging email/comment/review/remark/reply/message;
how do/can/should/to
i/we/you/best* protect/save/spare my/the?; keep/kept/keeping/hold/held/holding my/the left/right/lower/upper? @place
still/quiet/steady;
light? head torch/torches/lamp/lamps/band/phones/cold; stings/stung/hurts to
miss/lose/fail/admit/skip/leave; bruised banana/bananas/apple/apples/fruit;
playlist/music/traffic/queue/maths/parking/commute/meeting/app/wait/silence/video/wifi is/was/'s/so/really/just*
painful/torture/agony; dizzy/dizzying height/heights; nearly/almost/narrowly/just dropped/drop/dropping/hit/
kneed/trapped/caught/smacked/whacked/missed/clipped/landed/stood/trod/fell/banged/bashed a/the/it/one/my/bar/plate/
dumbbell/weight/kettlebell/thing/on* on?/onto? my/the left/right/big? @place;
back nine/nines/garden/door/seat/yard/row/burner/story; back half/end/section/area/corner/bit of the/my/our? gym/
hall/room/studio/place/building/garage/centre/center; the back room/wall/corner/office/studio/entrance/exit/rack/racks;
is/was it/this/that/'s
bad/normal/weird/odd/wrong/strange/funny/silly/terrible that/if/to; how bad/wrong/terrible/harmful is/was/would/'s*
it/this/that be? if/when/that/to; painful to
type/use/set/adjust/load/unload/park/navigate/fill/log/write/wait/listen/hear/count/say/pay/add/find/enter/open/scroll;
physio/coach/doctor/doc/osteo/chiro/trainer/gp/nurse/you/he/she/they/surgeon/consultant gave/gives/given/give/giving
me; gave/given/give me a/some/few/couple/the/of/these/two/three/four/five/new/more*
exercise/exercises/stretch/stretches/
drill/drills/programme/program/plan/tips/massage/band/cue/cues;
tore/tear/tearing/ripped/rip it/them up/apart; nose is/'s/all/a/bit/still/just*
blocked/bunged/runny/stuffy/stuffed; blocked/runny/stuffy/bunged/stuffed up? nose; foot/heel/toe pressure; rip/RIP my?
legs/quads/hammies/hamstrings/glutes/arms/abs/calves/me/lats/chest;
worried/scared/afraid/nervous/frightened/terrified/anxious/fear/risk/paranoid about/of hurting/injuring/straining/
pulling/tweaking/tearing/damaging; want/wanna/trying/like/rather/dare to? hurt/injure/strain/tear; lights went out
in/at/all;
  music/playlist/tunes/radio/queue/app/phone/work/bar/spreadsheet/parking/traffic/maths/form/boss/kids/counting/
 email is/'s/are/was*
 giving/gave/gives me a headache; pain au/de chocolat/chocolate/mie;
 bruised/battered/wounded/sore/dented/hurt/injured ego/pride; ego/pride is/
was/got/a/bit/still/just* bruised/battered/wounded/dented/hurt/hurts/sore/injured; hurt/hurts/hurting/pain/
bruised/sore/injured thing/today/here/is/was/my/the* ego/pride/wallet/feelings; lat spread/spreads; seat/bench/chair
back; non
issue/issues/problem; gasping for a/my/another/some? pint/drink/cuppa/coffee/tea/beer/water/smoke/fag;
 hand grips; cramping/cramp/cramped/hurting/hurt/hurts/aching/ached/sore with/from laughter/laughing/giggling; ouch
 those/these/the/that
 price/prices/bill/cost/fees;
moved/moving/moves/move sharp; sticker/stickers/label/labels/tape/paint/rubber/pad/pads/cover/padding
 is/was/has/all/are/half* peeled/peeling/torn/ripped/worn/cracked off/away/to?; calf/foot block/blocks; pec/peck
deck/dec/dek handle/handles/arm/arms/pad/pads/seat/pin/cable/machine?; no feeling
like/better; pain in the? arse/ass/bum/butt/backside/rear/bottom/balls;
pain in the neck to load/unload/set/find/park/carry/change/adjust/reach; pain in the neck finding/getting a/the/any*
free? parking/space/spaces/spot/bench/rack/machine/plates/through/past; parking/queue/traffic/app/plates/job/
meeting/bus/train/timer/laptop/landlord/neighbour/neighbor/paperwork/deadline/
commute/wifi/internet/signal/video/videos/link/phone/door/locker/weather/rain/music/boss/kids/booking/website/login/
password here/there/today/round* is/was/'s/are/were a/the/such/real/right/total* pain in the neck; no pain no
gain/gains; pani puri; pain
perdu/train; tear drop/drops; swelled/swell/swelling with? pride; hurt locker;
 song/songs/tune/lyric/lyrics/ballad/film/movie/book/scene/story/news always/just/really/still/that/this/one*
 stabs/stabbed/hits/hit/gets/got/cuts me right/straight/deep? in/to the heart; tug/tugs/tugging at
 the/my heart/heartstrings; swollen grip/grips/rubber/handle/wood/door/battery/timber;
stabbing scene/scenes/episode/attack/attacks;
 blew/blows/blown/blowing my? head/mind/socks clean? off/away; head is/'s elsewhere/everywhere; my? heart is/'s/was
 broken/breaking; you/you're/your/he/he's/she/she's/they/they're are/is/'s/a/such/right/real/always* pain in
 the neck; only/biggest/real/main pain
today/here/this/week/so/far/for/me* is/was/'s the/how/that/my?
 price/prices/cost/queue/queues/parking/traffic/wifi/music/playlist/commute/bill/bills/rent/petrol/fuel/boss/weather/
 rain/alarm; fat/clumsy/chunky/sausage
 finger/fingers/thumb/thumbs/fingered; chest freezer/freezers; chest of drawers; tool/treasure/ice chest; hearts that?
 hurt/hurts/ache/aching/bleed/break/breaking/broken; stab/stabs/stabbed/stabbing/poke/pokes/poking the
 floor/ground/mat/wall/air/ceiling/wood; stabbing/biting/piercing/bitter cold/wind/frost/rain; coffee/vending/drinks
 machine here/there/that/just* pisses/pissing/pissed/pees out?; shot/shoots/flew across/past/over the/my/our?
 room/gym/floor/hall/car/street; stabbing/piercing/screeching/screaming
 riff/riffs/solo/bassline/synth/synths/guitar/guitars/violin/violins/
 chord/chords/notes/beat; bench/chair/table/stool/rack/box/desk/bed/sofa/machine for/the/my/hip/thrust/there/here/in*
 thrust/corner/thrusts/squats/rows? has/'s/had/got/with/have a/one/two/got* broken/wobbly/bent/loose/dodgy/cracked/
 missing leg/legs/arm/arms/foot/feet/back; ouch my wallet/ego/bank/pride; dizzy
with joy/excitement/happiness; bleeding hell/heck/obvious/brilliant/typical; no feeling for; saw/see/seen/seeing
black/
white plates/plate/bumpers/cat/dog/belt; embrace the
pain; pain is weakness; how much pain; some pain normal; love the pain; through the pain barrier; pain
barrier; pain cave/train/face; house of pain; growing pains; what a pain; such a pain; a pain to/trying/
getting; a real pain to/trying; bit of a pain to/getting/trying; painstaking/painstakingly; painfully
slow/heavy/hard/light/long/bad/obvious/aware/early/quiet/boring/weak/easy/slowly/short/
close/tight/cold/hot/loud/predictable/honest/average/awkward/tedious/dull/expensive/busy/shy/good; it pains
me to/that/how; pains me to; feelings/feeling are/is/was/were/got/a/bit/so/really/just* hurt/hurts/bruised/sore;
post/posts/video/videos/article/
reel/story/podcast/book/talk/blog/email about/on @place pain/pains/injuries/injury/problems/issues/health;
hurt/hurts/hurting/hurtin my/ma/me/our/the/his/her? feelings/feeling/ego/pride/wallet/bank/savings/budget/soul/
brain;
hurt/hurts/pains/stings/kills me to say; hurt/hurts/pains/stings/kills to say it/this/that/so;
hurt/hurts/pains/stings/kills me? to admit/confess/ask/agree/pay/watch/hear;
can't/
won't/wouldn't/doesn't/never/couldn't hurt to/anyone/anybody; wouldn't/won't/couldn't hurt; wallet/ego/brain/
account/soul/pride/pocket hurts/hurt/hurting; hurts/hurt/hurting/thing is/was/'s* my ego/wallet/pride/brain/
soul/bank; hurts/hurt so damn? good; good/nice pain/hurt/burn/ache/soreness/sore; good kind/type/sort of?
pain/soreness/hurt/sore/ache?; good kinda sore/pain; in a good way; sore/soar loser/point/subject; nice and
sharp; felt sharp today/this/tonight/throughout/all; sharp turn/corner/knife/increase/incline/edge/edges/
objects/drop/rise/eyed/mind/cut/haircut/contrast; o'clock sharp; look/looks/looking/looked sharp; i/feeling/
feel feel/felt/am? sharp; i felt/feel/am sharp; sharp session/work/bar/looking; stay sharp; at/in a pinch;
pinch grip/grips/plate/plates/hold/holds/block; pinch me/of; plate pinch/pinches; shooting for; shoot for;
tearing/tore/ripped through; tear/tearing/rip/ripped it up; ripped out; getting ripped; ripped abs/physique/
jeans; tweak/tweaked/tweaking/tweaks my/the/his/a? form/grip/stance/technique/programme/program/plan/setup/
set/order/diet/macros/routine/split/numbers/weights/loads/schedule/times/programming/session/bar/
foot-position; tweaks to; back off/offs; backoff; day/days/time/week/weeks off; off the/my? floor/pins/blocks/
rack/plan/days/sick/work; off to/work/plan/sick; take/took off; off day/week/days; switch/switched off;
kicked/kick off at/with/the; finish/finished off; drop/dropped off; showing off; knock/knocked off; bit/way/
little off the/my plan/target/pb/pr; off my pb/pr/best; off from; no idea/doubt/wonder/surprise/matter/time/
joke/rush/worries/excuses/drama/biggie/point/chance/way/problem/problems/issue/issues/trouble; no problem
coach; not gonna lie; can't complain/wait/believe/lie/fault/thank; no complaints; nothing serious/major/crazy/
terrible/dramatic/new/bad/else/special/mad/drastic too? bad?; nothing too bad/serious/major/crazy/terrible; no
big deal; no change/better/worse/improvement/difference/different/relief; not as/so/too/that/very/super/just/
only/sure/gone/going/better/worse/improving/improved/ideal/bad/terrible/serious/sure/certain/exactly; hasn't/
haven't/doesn't/didn't/not/isn't/won't/don't gone/go/going/improved/improve/cleared/
clear/stopped/stop/get/got/getting/gotten away/better?; never goes/gone away?; not only/just; why
not; or not; not to mention; no one; bad for; painful to watch/see/look/admit/read; hurting for; hard/painful
on the eyes/eye/wallet; don't know/think/want/mind/worry/care; didn't do/go/get to/do/the/my; don't do; heart
broken/breaking; heart to heart; by heart; heart set; heart rate monitor; heart wasn't/isn't in it; head
start/up/down/home/space/off/to/over/out/into/back/in; heading; heads up; do/did/doing my head in; over/above
my/the/your? head; off the top of my head; use my head; get my head around/round; wrong head; headspace;
mind numbing; on the other hand; by/at hand; hand in/up; first/second hand; hands down/off/free/on; hand stand;
give/gave me a hand; per hand/side/arm/leg/foot; each hand/side/arm/leg/foot; a hand; on one hand; one/single arm/
hand/
side/leg row/rows/press/presses/curl/curls/squat/squats/deadlift/deadlifts/rdl/rdls/extension/extensions/work/
stuff/lunge/lunges/bridge/bridges/raise/raises/pulldown/pulldowns/hip/calf; other side/hand; this/that side;
stiff leg/legs/legged; stiff leg deadlift/deadlifts/deads; on/by my side; from the side; foot off; back/front
foot elevated/raised; thumbs up; thumb up; my/the? abs/quads/glutes/hams/
hamstrings/calves/arms/legs/biceps/triceps/lats/delts/pecs/forearms/core/muscles/body hate/hates/hated u/you/ya;
rule of thumb; finger/fingers crossed; toe to toe; toes to bar;
elbow room; elbows in/out/up/tucked; knees in/out/over/caving/tracking; heels up/down/elevated; chest up/out/
down/first/supported/high/proud; chest to bar/floor/ground/rack/the; to my/the? chest; off my/the? chest;
touch/touched/touching/touches my/the? chest; bar hit/hits/hitting my/the? chest; bar to chest; chest touch;
chest glued/planted/stapled/stays/stay/staying to/on/against/off/into the/my? pad/pads/cushion/support;
keep/kept/keeping my/the? chest on/against/off the/my? pad/pads/bench;
bar/barbell/dumbbells/plate felt/feels/was/is so/too/really/pretty/very* heavy on/off/at my/the? chest;
eyes up/forward; face/lat/band pull/pulls; face the; eye on/off; keep an eye; neck and neck; arm/arms/legs/
leg/chest/back/shoulder day/days; leg/arm work; tongue tied; nose to; at heart; on my back foot; feet up; feet
elevated; cold feet; own two feet; back on my feet; foot in; hand over; handed; shoulder width; hip width; hip
hop; trap bar; weaker than; squeeze at/the/my glutes? top; core work; skin of my teeth; dead lift/lifts/stop/
stops/hang/hangs/bug/bugs/weight/end/ahead/easy/hard/tired/line/right/good/keen/simple/pause/straight/set/on;
drop dead; knock them dead; weak point/points/spot/link/side/coffee/sauce; my weak; hot day/gym/in/out/today/
weather/water/bath/shower/outside/as; too/so hot; warm up/ups/day/down/shower/bath/upped/ing; red/brown/black/
orange/pink band/bands/plate/plates/kettlebell/dumbbell/one/ones/belt; black friday/coffee; catch/caught up;
i/i'm/i've am/have/just/keep/kept/also/always/do/did/still* leak/leaked/leaking a/some/lot/of/my/all/bit*
power/tension/energy/force/strength/speed/air/chalk/sweat/tightness/water/info; catch you;
pop in/by/over/round/down/into to/for/at/later/tomorrow/the; pop squat/squats; popped in/by/over/
round/to/some into?; popped into; pop music/song; pop it/the/them; crack/cracked/cracking on; crack at;
cracked it; cracking session/set/work/day/one/workout/effort; snap/snapped a/up; oh snap; bang on/average/
tidy; ping me; pressure is/'s on; under pressure; no pressure; peer/blood/tyre/tire pressure; pressure at/from
work; heavy set/sets/single/singles/triple/triples/double/doubles/day/today/weights/one/ones/bag/press/squat/
squats/bench/deadlift/deadlifts/rows/stuff; press/pressing/squatting/benching/pulling/lifting/going/go/went/
too/bar heavy; heavy as; fire away; fire up; fired up; burn/burned/burning/burnt off/calories/fat/out/through;
fat burn/burning; felt/feel the burn; the burn; burn was; feel/feeling/felt it/them/that working; tight for/on
time/schedule; tight schedule/timeline/time/turnaround; time is/'s? tight; stiff competition/drink/one/bar;
broke my/the/a? pb/pr/record/records/best; broken record; broke pr/pb; broke through; broken sleep; broken
machine; water bottle/break; needed water; drank/drink/drinking more? water; glass of water; roll/rolled/
rolling with/out/it/up; foam roll/rolled/roller/rolling; rolled my/the? sleeves; put back/up/on/in/away/it/
together; did/done/do my/the/all/both/back* sets/workout/session/warmup/warm/set/reps/cardio/best/full/
stretches/stretching/rehab/mobility/physio/exercises/homework/program/programme/extensions/raises; did back/
legs/chest/arms/shoulders/calves/abs/core; pull/pulled/pulling off/through/it/the/up/ups/day/downs/over/from;
went up/down/well/for/through/great/to/ok/okay/fine/good/smooth/smoothly/heavier/lighter/with/easy/too/past/
home/in/on/by/really/better/straight/ahead/pretty/from/back/over/and/light/so; gone up/for/to/home; done for/
with/today/all/and; did it/all/them/some/not/this/that/what/these/you; bad day/week/night/sleep/form/weather/
traffic/luck/news/idea/mood/habit/morning/at/session/workout; not bad/too; my bad; too bad; strange/weird/
funny/odd day/week/story/hours/video/machine/one; trouble sleeping/finding/getting; issue/problem/issues/
difference between/of a/being/just* sore/soreness/doms and/or/vs/versus a/an/being/actually* injured/injury/hurt/pain;
no/without/fixed/fix/broken/broke/cold/gym/bloody the/their? ac; ac unit/on/off/out/down/broke/broken/died/dead;
ac is/was/'s/still/finally/has/been* on/off/out/down/broken/bust/busted/dead/freezing/cold/back/working/fixed/
blasting;
problems/trouble with the/my app/equipment/machine/bar/schedule/gym/car/phone/kids/work; the app; angry boss;
worried about work; sick of/day; tender loving; cramped gym/space/for/room/in; in stitches; slipped up;
slipped my mind; rolled in; nearly/almost/i died/dead; died on; dying; killed me/it; killer; kill me; killing
it; smashed/smashing it/that/them/those; crushed/crushing it/that/them/those/this; nailed it; murdered it;
absolutely/totally? destroyed; destroyed me; on fire today; i'm/you're/were on fire; dead on my feet; dead
legs; heartache/headbanger; heart attack level/levels/inducing/territory/pace/burger/breakfast/cardio/material/worthy;
killing/kill/killed time/an/a/some/half* time/hour/hours/minutes; headache of a; heart/blood is/was/'s/really/
still* pumping; shot of; gave/give it a
shot; one more shot;
worth a shot; stitch/stitched/stitching
the/two/them/it/these/together; shouting from; talking about/of; loose skin/change/plates/collar/clothes;
unstable surface; wobble board; wobbly board; sensitive topic; stabbed in the back; breath of fresh air; hold/
holding/held/brace/bracing my/the? breath; breathing/breath work/technique/cue/pattern/exercise/drills; deep
breath/breaths; take/took/taking a? breath/breather; breather; between breaths; cough it
up; feint praise; see you; see things; spots at/in the/this gym; spot me; fell asleep early/late/on/in/at;
fell asleep; went to sleep early/late/at; going to sleep; go to sleep; went straight? to? bed; sleep/slept;
collapse/collapsed/collapsing in/on/onto/into the/my? sofa/couch/bed; fit in; had a fit tested; round/around the
block; faint hope/idea/line;
skip/skipped/skipping/skips the/my/a/on/it/this/that/today/leg/arm; missed/missing/miss a/my/the/last?
session/sessions/day/workout/week/set/sets/rep/reps; confused about/by/with/which/what/how/over/why/if/
whether; flu/covid/tetanus/travel/booster/vitamin/hayfever/work jab/jabs/shot/shots; jab/jabs
today/tomorrow/yesterday/appointment/booked; contraction phase; eccentric
contraction; muscle contraction; see how; see what; see if
"""
