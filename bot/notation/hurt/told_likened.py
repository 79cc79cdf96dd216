"""Rows of signs told in any order, by an image or half a joke: words that are soup, a firecracker in the head.

In the language of `bot.notation.hurt.told.told_rows`, with the classes of `bot.notation.hurt.told_classes` and some
of its own. Gathered by us.
"""

from bot.notation.hurt.told import told_rows
from bot.notation.hurt.told_classes import CLASSES

_OWN = """
lungful: air breath breathing breaths lungs puff wind
bombs: bomb bombs bomber cannon dynamite explosion firecracker firecrackers firework fireworks grenade gun landmine
    petard rocket thunder volcano
marrows: balloon drum football footy loaf log marrow melon pumpkin sausage trunk turnip
brown: brown coffee coke cola gravy mahogany rust rusty stout tea treacle
refuse: aren't can't doesn't don't isn't no not won't
part: arm fingers foot hand leg legs toes
"""
_ROWS = """
breath 10: @lungful | aren't isn't never no not won't | arriving catching coming easing filling landing refilling
    restarting returning settling ! @laughter bar bus con delivery food pump tyre
breath 10: @cannot | finish get put say string | sentence sentences words | air breath puff wind ! hold brace
    @laughter
breath 4: want lack shortage | of | air breath puff ! con @laughter
chest 10: @breasts | says said saying telling tells told | presses pressing pressure squeeze squeezing tight ! @gear
heart 9: drum drumming drums thudding | chest | bed lie lying night rest sat sit sitting ! headphones music song
    playlist
fainting 7: funny | minute minutes spell spells turn turns | deck floor had took ! film joke video lines
fainting 9 sober: flat horizontal sideways | clue idea know recall remember | didn't don't no not ! press row pull
    tyre
fainting 8 sober: all everything | distant far small tiny | became got saw see went ! print plates weights shop prices
fainting 3: blacked greyed grayed whited | moment sec second tick ! gym power light lights screen
fainting 6: blood | drain draining drains leave leaves leaving | brain face head ! bank test
fainting 6: crumpled slid slumped sank | down | mirror rack wall ! @laughter cartoon hold seconds secs sit sits squat
    squats wallsit wallsits
headache 9: somebody someone something | @bombs | brain head skull | behind in inside ! @laughter bar idea ideas music
    news
headache 7: @bombs | brain head skull | behind in inside ! @laughter bar idea ideas music news
no strength 8: @part | @refuse | instructions memo message messages orders signal signals ! @laughter app phone watch
no strength 7: legs | don't won't | come follow join | me ! @laughter rack machine class
no strength 8: arm arms foot hand leg | dangles dangling flops hanging hangs hung | like | washing rag ragdoll rope
    spaghetti noodle noodles meat ham sausage ribbon curtain ! @laughter @exercises
no strength 9: arm hand leg foot | can't won't | lift pull push | bag book cup door kettle mug pan ! @laughter gym
    heavy machine
no feeling 7: @part feet thigh thighs | are feel feels felt is like | borrowed rented hired ! @laughter shoes belt
no feeling 6: @part thigh forearm shin | no zero without | feeling sensation ! @laughter bar pain hurt sore working
    doms
control 9: damp patch puddle wet | isn't not wasn't | sweat sweaty water ! bottle roof pipe rain
control 10: let | go | not wasn't | air gas wind fart ! bar rope grip
control 5: bathroom bladder bowel loo toilet | accident disaster emergency episode incident mishap moment surprise !
    kid kids child baby puppy dog toddler
control 6: pelvic | floor | failed gave gone lost quit stopped went ! class exercise exercises work
control 12: need needing want | pee piddle tinkle wee | can't nothing tap won't ! @laughter queue hurry sets
pop 12: booted clipped hit kicked punched shot stamped walloped whacked | achilles ankle calf hamstring heel | nobody
    none noone nothing ! @laughter ball bar plate
pop 12: elbow hip knee shoulder | clunked cracked popped snapped | can't won't | bend extend lock straight straighten
    ! @laughter bar
pop 10: zip zipper | @tendons | felt heard like ! band jacket pocket strap
clot 10: calf leg shin | up | @marrows | fire hot red roasting toast toasty warm ! @laughter pump foam roller press
urine 8: water waterworks works | coming ran running runs | @brown ! bar bath canal hose pipe river roof shower tap
blood 6 sober: cough coughed coughing spat spitting | foam froth frothy | bloody pink red ! shaker shake
stroke 6: eyesight sight vision | jagged kaleidoscope mosaic pixelated shattered shimmering zigzag zigzags ! screen
stroke 7: cheek face mouth | melted melting melts | half left right side ! @laughter cheese heat hot sun weather
stroke 6: sentences speech words | alphabet mush porridge salad soup spaghetti ! @laughter bowl dinner had lunch tea
    ate
stroke 9: confused muddled | what where which who | am i'm ! @laughter app book page plan set week lift
chest 9: @breasts | burning hot knife lump needle poker rod skewer spear spike | behind beneath inside through under !
    @gear @laughter
fainting 8 sober: awoke woke woken | coat faces feet jacket jumper lads medic people someone somebody towel water |
    above around head me over under up ! alarm baby bed coffee dog kids morning night shower
fainting 7 sober: brain head mind | away blank elsewhere missing somewhere | minute moment sec second seconds tick !
    holiday plan work form
fainting 5: curtain curtains shutters veil | coming came closing drawing fell falling | down in over ! play rail room
    shop shower show stage theatre window
breath 6: breath puff wind | still | absent gone missing ! @laughter hold
breath 7: @cannot | lungful lungfuls | draw fill get in take ! @laughter
headache 10: headache migraine | like | brick express freight hammer lorry train truck wall ! @laughter boss kids
    noise
headache 12: bang boom crack pow wham whack | head skull | never ! bar rack bumped hit banged plate @laughter
no grip 8: @cannot | button buckle fasten lace tie unbutton undo unzip zip | bra coat jacket jeans laces shirt shoe
    shoes ! @laughter big doms fit gains pump pumped small sore tight broken stuck back
no strength 9: leg | buckling gave gives giving quits quitting | out up way | corridor flat hallway pavement road
    stairs street walk walking ! @laughter bench gyp press set rep reps
pop 14: @tendons | crack noise pop snap | ball bunched knot lump ! @laughter foam massage medicine roller slam
stroke 9: pupil pupils | bigger blown different huge larger uneven ! class school student students teacher
"""
LIKENED = told_rows(_ROWS, f"{CLASSES.strip()}\n{_OWN.strip()}")
"""The rows of what is told by an image."""
