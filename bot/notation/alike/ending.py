"""The end of a session in a clause of its own, put as `thats me done for today`: who ends it, what, how, and when.

A verb that may end a set or an exercise too (`stopped`, `finishing up`) needs the session or the day beside it. What is
to come, of others, of another day or asked about has no place in these frames. Common usage on both sides of the
Atlantic and in a second language; from memory, no source.
"""

import re
from collections.abc import Sequence

from bot.notation.alike.frames import any_of, clause_starts, compiled, maybe, one_of, put, said_of, some
from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.spoken import NUMBER_WORDS
from bot.notation.tokens import Mark

_PLAIN = "thats me done for today"
_DAY = one_of(
    "today; tonight; for today; for tonight; for the day; for the night; for the evening; "
    "for this evening; for this morning; for the morning; for the afternoon; for this "
    "afternoon; for one day; for one night; for one evening; for one session; this evening; "
    "this morning; early today; early tonight; early this time; early for today; the day; 4 "
    "today; for this session; for this workout; for 2 day; todays; in the gym today; of "
    "today; for the week"
)
_SOON = one_of(
    "here; there; now; right here; right there; right now; on that; with that; at that; on "
    "that one; with that one; with this one; on this one; with this; on that note; on a "
    "high; early; on this; at this point"
)
_AT_ONCE = one_of(
    "here; there; now; right here; right there; right now; on that; with that; at that; on "
    "that one; with that one; with this one; on this one; with this; on that note"
)
_WHEN = (
    any_of(
        _DAY,
        _SOON,
        one_of(
            "already; finally; then; for me; from me; from my side; at my side; on my side; from my "
            "end; on my end; coach; boss; mate; folks; sir; guys; i think; officially; at last; "
            "thanks; again; all; kindly note; please; only; for good; early; in the end; so; so "
            "far; with a beer; and out; just now; with everything; by me"
        ),
    )
    + "{0,6}"
)
_THE = maybe(
    "the; my; our; this; that; todays; tonights; a; all of todays; all of the; todays "
    "whole; the whole; my whole; the entire; the entirety of; whole; entire; all; full; the "
    "full"
)
_NOUN = one_of(
    "session; sessions; workout; workouts; training; gym session; training session; sesh; "
    "lifting session; lifting; work out; practice; wod; gym visit; gym time; gym day; "
    "training day; exercise session; exercising; workout session; strength session; "
    "trainings; lifting day; workout of the day"
)
_SESSION = any_of(
    _THE + _NOUN + maybe("of today; for today; of the day; for the day; of tonight; of the evening; for me; today"),
    one_of("today; tonight"),
)
_LISTED = (
    _THE
    + one_of(
        "sheet; plan; list; programme; program; schedule; menu; page; paper; board; session; "
        "workout; training; card; chart; agenda; log; prescription"
    )
    + maybe("of today; for today; today")
)
_ME = some(
    "i; im; ive; i have; i am; am; we; were; we are; just; now; already; officially; "
    "finally; so; then; this is me; thats me; had to; lets; time to; decided to; i had; "
    "please; you can; can; hereby; i just; simply; sadly; sorry; only; well; ok; "
    "and; thus; for today; today; have; unfortunately; ended up; yes; had it; with this; "
    "with that; so for today; got to; forced to; was; ,; for tonight; here; kindly"
)
_WILL = some(
    "ill; i will; gonna; going to; im gonna; im going to; i shall; i must; must; i need to; "
    "need to; have to; i have to; gotta; ive got to; i gotta; will; let me; i think ill; "
    "think ill; i would; id; had better; id better; might; might as well; just; now; then; "
    "so"
)
_END_IT = one_of(
    "end; ending; ended; close; closing; closed; finish; finishing; finished; finished up; "
    "finishing up; finish up; conclude; concluding; concluded; terminate; terminating; "
    "terminated; complete; completing; completed; stop; stopping; stopped; wrap up; "
    "wrapping up; wrapped up; break off; breaking off; broke off; broken off; break up; "
    "breaking up; cut off; cutting off; cut short; cutting short; cutting; cut; quit; "
    "quitting; abort; aborting; aborted; shut down; shutting down; end off; ending off; "
    "call time on; calling time on; called time on; pull the plug on; pulling the plug on; "
    "pulled the plug on; pull the pin on; pulling the pin on; pulled the pin on; draw a "
    "line under; drawing a line under; drew a line under; bring down the curtain on; "
    "finalise; finalize; close out; closing out; closed out; close off; closing off; finish "
    "off; finishing off; finished off; end my; put an end to; putting an end to; ring the "
    "bell on; call an end to; calling an end to; brought to an end; wind up; winding up; "
    "wound up; round off; rounding off; put to bed; done with; through with; finished with; "
    "over with; log off; logging off from; call it on; log the end of; mark; consider; put "
    "down"
)
_BARE_END = one_of(
    "finish; finishing; finished; finish up; finishing up; finished up; end; ending; ended; "
    "end it; ending it; ended it; ending things; end things; close; closing; break off; "
    "breaking off; broke off; break it off; breaking it off; conclude; concluding; "
    "terminate; terminating; wrap up; wrapping up; wrapped up; wrap it up; wrap this up; "
    "wrapping things up; winding down; winding up; finishing off; finish off; rounding off; "
    "cut it; cutting it; cut it off; cutting it off; calling it quits; finish it; finishing "
    "it; finished it; close it; closing it; shut it down; shutting it down; drawing the "
    "line; draw the line; drew the line; drawing a line under it; draw a line under it; "
    "drew a line under it; drawing a line; draw a line; call it; calling it; called it; bow "
    "out; bowing out; bowed out; tapping out; tap out; done with it; pull the pin; pulling "
    "the pin; pulled the pin; pull the plug; pulling the plug"
)
_STOP = one_of(
    "stop; stopping; stopped; stop it; stopping it; quit; quitting; knock off; knocking "
    "off; knocked off; leave; leaving; left; leave it; leaving it; pack up; pack in; "
    "packing in; packed in; rest; resting; hanging up my belt; hanging up the belt; hanging "
    "up my trainers; hanging up the trainers; hanging up my shoes; hanging up the shoes; "
    "hanging up my boots; hanging up the boots; hanging my belt up; hung up my belt; hung "
    "up the belt; hang up my belt; hung up the trainers; hang up the trainers; hanging up "
    "the gloves; hanging up my gloves; game over; have enough; had enough; had my fill; got "
    "my fill; pulling up; shutting it; down tools; downing tools; my work is done; my work "
    "here is done; through; all through; cooked; spent; signing out; winding down; "
    "finished; over"
)
_OVER = one_of(
    "over; done; finished; ended; closed; complete; completed; concluded; terminated; at an "
    "end; at its end; come to an end; came to an end; coming to an end; comes to an end; "
    "come to a close; came to a close; coming to a close; in the books; in the bag; in the "
    "can; in the bank; wrapped up; a wrap; ends; finishes; stops; ended up; over with; done "
    "with; done and dusted; done n dusted; over and done with; over and done; kaput; fini; "
    "finito; finita; history; put to bed; sorted; out of the way; behind me; finalised; "
    "finalized; through; at the end; to an end; finish; getting over; ending; finishing; "
    "closing; wrapping up; logged and done; signed off; all done; all over; all finished; "
    "all wrapped up; fully done; fully complete; officially over; officially done; now "
    "over; now done; now finished; now complete; now closed; accomplished; did; ticked off; "
    "gone by; shut"
)
_IS = some(
    "is; was; are; has; has been; have; hereby; now; already; just; officially; then; all; "
    "so; finally; has now; is now; too"
)
_THATS = one_of(
    "thats; that is; that was; this is; this was; its; it is; it was; thatll be; that will "
    "be; that makes; this makes; and thats; which is; that s; thats now; so thats; well "
    "thats; then thats; annnd thats; aaand thats; aand thats; annd thats; that there is; "
    "that there was"
)
_CONCLUDES = one_of("that; this; it; which") + one_of(
    "concludes; concluded; completes; completed; finishes; finished; ends; ended; closes; "
    "closed; wraps up; wrapped up; wraps; rounds off; rounds out; rounds up; rounded off; "
    "rounded out; ties up; seals; winds up; tops off; caps off; brings an end to; puts an "
    "end to; puts the lid on; marks the end of; is the end of; was the end of; will be the "
    "end of; spells the end of; brings me to the end of; takes me to the end of; does it "
    "for; is it for; was it for; did it for; finishes off; closes out; closes off; tops; "
    "caps"
)
_HOME = one_of(
    "home; off home; away home; back home; for home; homeward; homewards; home already; "
    "home again; to the car; to the showers; to the shower; for a shower; for the showers; "
    "for the shower; to the changing room; to the changing rooms; to the locker room; to "
    "the sauna; for the exit; to the exit; out of the gym; out of here; outta here; back to "
    "the house; back to the hotel; to the bus; to the bus stop; to the pub; off to the pub; "
    "off to the shower; to shower; out of there; from the gym; away from the gym; for the "
    "bus; for the hills; for the door; for my train; to the train; off "
    "to the car; off out of here; back to the car; to my car; to the parking lot"
)
_GOING = one_of(
    "heading; headed; going; walking; driving; cycling; biking; on my way; on the way; off; "
    "away; strolling; wandering; shooting; popping; went; drove; walked; cycled; gone; go; "
    "coming; head; made my way; making my way; making tracks; heading back; trotting; "
    "trundling; set off; setting off; jogging; bussing it; making for; heading straight; "
    "already on my way; now on my way; off on my way; already; already back; back; now; "
    "stepping; straight"
)
_OUT = one_of(
    "out the door; out of the door; hitting the road; hit the road; off out the door; "
    "heading out; heading out the door; headed out; heading off; headed off; walking out; "
    "walked out; out the gym; out of the building; shooting off; away now; off now; off i "
    "pop; off i go; off i trot; off i head; off i toddle; off i nip; off i run; off i "
    "trundle; off we go; off i walk; im gone; ive gone; im away; im offski; offski; im off "
    "now; im off then; im off; im outta here; bouncing; im bouncing; i bounce; running off; "
    "dashing off; jetting; jetting off; scooting; scooting off; i make tracks; leaving; im "
    "leaving; leaving the building; out the gate; time to go; time to leave; i must "
    "go; i must leave; gotta bounce; gotta run; gotta dash; must dash; heading for the door"
)
_KIT = one_of(
    "bag; bags; gym bag; kit; kitbag; gym kit; gear; stuff; things; chalk; belt; shoes; "
    "straps; towel; weights; plates; dumbbells; rucksack; backpack; everything; kit "
    "bag; bottle; trainers; lifters; belt and straps; notebook; bits; bells; kettlebells; "
    "equipment"
)
_KIT = any_of(_KIT, one_of("chalks; belts; kits; gears; stuffs; towels; bars"))
_STOWED = one_of(
    "packed; packed up; packed away; put away; back in the bag; in the bag; in my bag; back "
    "in my bag; zipped; zipped up; stowed; stowed away; all packed; all packed up; back in "
    "the locker; in the locker; tidied away; tidied up; cleared away; packed and zipped; "
    "already packed; racked and stacked"
)
_MINE = one_of("my; the; all my; away my; up my; away the; all the; up the; all of my")
_PACKING = any_of(
    one_of("packed; packing; tidied; tidying; zipped; zipping; packing up; packed up; zipping up; zipped up")
    + _MINE
    + _KIT
    + maybe("away; up; together; in the bag; away now; in my bag; in the car; away again"),
    one_of("put; putting; cleared; clearing")
    + _MINE
    + _KIT
    + one_of("away; back in the bag; in the bag; away now; away again"),
)
_SHOWER = any_of(
    one_of(
        "in; under; having; into; taking; off for; already in; now in; already under; straight "
        "into; straight to; off to; time for; hitting; hit; heading for; next stop; now for; "
        "now; next; next up; on to; straight for"
    )
    + maybe("the; a; my; is; a well earned; a hot; a cold; the well earned")
    + one_of("shower; showers; sauna; steam room; bath; hot tub; jacuzzi"),
    maybe("the; hot; cold; quick")
    + one_of("showers; shower; sauna; bath; showering")
    + one_of(
        "next; now; time; is next; calling; calls; is calling; is calling me; are calling; "
        "awaits; then home; and home; then bed; it is; here i come"
    ),
)
_IDIOM = r"(?!(?:packed|knocked|called) it \w+(?: \w+ \w+)? after \d)" + one_of(
    "curtain down; curtains down; curtain falls; the curtain falls; curtain call; lights "
    "out; lights off; roll the credits; roll credits; cue the credits; credits roll; the "
    "fat lady has sung; fat lady has sung; the fat lady sang; fat lady sang; the fat lady "
    "sings; fat ladys sung; the fat ladys sung; calling stumps; call stumps; called stumps; "
    "drawing stumps; draw stumps; drew stumps; stumps drawn; stick a fork in me; put a fork "
    "in me; stick a fork in it; mic drop; final whistle; final "
    "bell; full time; stick the kettle on; put the kettle on; get the kettle on; kettles "
    "on; shutting up shop; shut up shop; closing up shop; closed up shop; closing shop; "
    "shop closed; downing tools; down tools; tools down; downed tools; clocking out; "
    "clocking off; clocked out; clocked off; clock out; clock off; punching out; punched "
    "out; checking out; checked out; logging off; logged off; log off; signing off; signed "
    "off; sign off; over and out; goodnight from the gym; good night from the gym; "
    "goodnight gym; class dismissed; mission accomplished; mission complete; "
    "home james; home time; hometime; calling it a night; calling it a day; calling it a "
    "wrap; calling it a session; calling it an evening; calling it a workout; call it a "
    "night; call it a day; called it a night; called it a day; thats all she wrote; thats "
    "all folks; thats your lot; thats the lot; thats my lot; packing it in; packed it in; "
    "pack it in; packing up; packed up; knocking it on the head; knocked it on the head; "
    "knock it on the head; calling quits; throwing in the towel for today; ringing the "
    "bell; rang the bell; the end; end of story; end of the road; end of play; close of "
    "play; end of the line; over the finish line; across the finish line; crossed the "
    "finish line; job jobbed; jobs a good un; done deal; and scene; that puts a bow on it; "
    "all she wrote; and breathe out; putting my feet up; hanging it up; hung it "
    "up; wrapping it up; wrapped it up; bidding you goodnight"
)
_FOREIGN = one_of(
    "c est fini; cest fini; fini; finie; finito; finita; finis; fine; basta; schluss; "
    "schluss jetzt; feierabend; fertig; alles fertig; klaar; klaar mee; terminado; todo "
    "terminado; terminata; termine; c est termine; ya esta; konec; koniec; hotovo; "
    "gata; ferdig; faerdig; fardig; valmis; kesz; vege; c est tout; cest tout; das wars; "
    "das war s; das war es; schicht im schacht; fim; acabou; acabado; acabe; se acabo; "
    "fatto; tutto fatto; tutto finito; bitti; ende; ende gelande; einde; punkt; punto; "
    "punto final; kraj; gotovo; zakonczone; skonczone; tapos na; khatam; khallas; khalas; "
    "owari; pau; faertig; slutt; fin"
).replace("|fine ", "")
_BIG = one_of(
    "sets; exercises; lifts; boxes; movements; items; six exercises; five exercises; four "
    "exercises; three exercises; six; exercises on the list; planned sets; work; the work; "
    "of it; of them; planned exercises; working sets; work sets; the sets; the exercises; "
    "my sets; my exercises; the lifts; exercises of today"
)
_NOTHING = maybe("there is; theres; i have; ive got; got; have; i see; with; there are; i ve; ive") + one_of(
    "nothing; no sets; no exercises; no more sets; no more exercises; nothing more; nothing "
    "else; no exercise; no lifts; no more; nowt; not a thing; no set; zero sets; zero "
    "exercises; not a single set; no more work; no work"
)
_TO_DO = one_of(
    "left; remaining; outstanding; open; more; missing; to do; left to do; more to do; else "
    "to do; still to do; remains; else; left over; is left; is missing; unfinished; undone; "
    "to go; pending; left for me"
)

_CRY = some(
    "hooray; hurray; hurrah; yay; phew; yes; finally; woohoo; whew; hallelujah; yess; woo; "
    "and; aaand; ok; well; so; thank god; thank goodness; pfew; boom; bam; at last; "
    "great; nice; ole; ,; !; just; that s"
)
_BEHIND = "|".join(
    (
        r"$",
        r"[^\w ?]",
        one_of(
            "and; but; so; because; cos; coz; cause; cuz; since; as; bc; before; thanks; thank; "
            "thx; thanx; thnx; tnx; tks; ty; tysm; tyvm; many thanks; much thanks; thankyou; merci; gracias; danke; "
            "grazie; obrigado; obrigada; appreciated; much appreciated; "
            "cheers; bye; see; talk; speak; catch; have a; peace; love; good; great; lovely; many "
            "greetings; greetings; the kids; dinner; my; ta; goodnight; good night; until; till "
            "next; laters; later; off; nice; hope; speak; what a; it was; regards; then; ok; lol; "
            "haha; honestly; tbh; sorry; yours; x; xx; will; due; i have; i got; i am; im; with "
            "bench; workout; session; training; ttyl; xo; good one; tired; happy"
        ),
    )
)
_NEXT = rf"(?:{_BEHIND})"
_NUMBER = r"(?:\d|(?:" + "|".join(sorted(NUMBER_WORDS)) + r") )"
_ON_SET = one_of("after; on; with; on a; after a; with a; following; having done; with another") + rf"(?={_NUMBER})"
_AT_A_COUNT = (
    r"on (?:\d+|"
    + "|".join(sorted(NUMBER_WORDS))
    + r") (?:reps? )?(?:$|[,.;]|(?:bc|because|cos|coz|cause|cuz|as|since|when|same) )"
)
"""`ended on 10, same load`, `ended on 10 because it pinched`: how many there were when a set ended, no session."""
_ENDS = rf"(?:{_ON_SET}|(?={_NEXT}))"
_THATS = any_of(_THATS, "a+n+d+ thats ")

_STRONG = any_of(
    _ME
    + _END_IT
    + _SESSION
    + maybe(
        "here; there; off; off there; off here; short; short there; short here; down; now; "
        "early; as finished; as done; as complete; as completed; as over; finished; done; "
        "closed; at that; as closed; over"
    )
    + _WHEN,
    _WILL + _END_IT + _SESSION + maybe("off; short; down") + _AT_ONCE + _WHEN,
    any_of(_ME, _WILL)
    + one_of("cut; cutting; end; ending; terminate; close; break off; stop; finish; i terminate; i end")
    + one_of("here; there; now; right here")
    + _SESSION
    + _WHEN,
    maybe("for today; so; and so; with that; with this; today; the; then; ok; sorry") + _SESSION + _IS + _OVER + _WHEN,
    one_of(
        "thats where; this is where; that is where; thats when; here is where; heres where; "
        "here; there; at this point; with that; with this; so; and so"
    )
    + _SESSION
    + _IS
    + one_of("ends; ended; end; stops; stopped; finishes; finished; finish; closes; concludes; is over; ends then")
    + _WHEN,
    _THATS + "?" + _SESSION + _IS + _OVER + _WHEN,
    _THATS
    + maybe(
        "the end of; an end to; the end to; end of; an end of; the finish of; a wrap on; a wrap "
        "for; the close of; me through with; me done with; us done with; it for; me finished "
        "with; curtains for; lights out for; all of; all for; everything for; the last of; the "
        "last set of; the final set of"
    )
    + any_of(
        _SESSION,
        one_of(
            "the whole programme; the whole program; the whole plan; the whole sheet; the whole "
            "list; the whole thing; the whole lot; the full programme; the full list; the entire "
            "programme; the entire plan; the entire list; the lot; the lot done; the finish; the "
            "end; the end of the plan; the end of the list; the end of the programme; the end of "
            "the sheet"
        ),
    )
    + _WHEN,
    _CONCLUDES
    + any_of(_SESSION, one_of("things; it; it all; everything; matters; proceedings; my day; me; us"))
    + _WHEN,
    _THATS
    + "?"
    + one_of("enough; plenty; sufficient; my fill")
    + maybe("of")
    + maybe(
        "it; that; this; training; gym; lifting; work; exercise; exercising; sweat; sweating; "
        "iron; weights; pain; torture; suffering; of it; fun"
    )
    + _DAY
    + _WHEN,
    maybe("was; thats; that was; this was; it was; which was; is; thats the; and")
    + maybe("the; my; really the")
    + maybe("very")
    + one_of("last; final; last one; last set; final set; final one; last exercise; final exercise")
    + one_of(
        "of today; for today; of the day; for the day; of tonight; for tonight; of the evening; "
        "of the night; of the session; of the workout; of my session; of my workout; of the "
        "training; of this session; of todays session; of the morning; for this evening; for "
        "the night; for this session"
    )
    + _WHEN,
    _ME + any_of(_BARE_END, _STOP) + some("here; there; now; up; it; early; right here") + _DAY + _WHEN,
    _ME + _BARE_END + _SOON + _WHEN,
    _WILL + any_of(_BARE_END, one_of("stop; quit")) + _AT_ONCE + _DAY + _WHEN,
    _WILL + _BARE_END + _AT_ONCE + _WHEN,
    _ME
    + one_of(
        "finish; finishing; finished; end; ending; ended; closing; close; stop; clocking out; "
        "clocking off; wrapping up; calling it; calling it a day; calling it a night; signing "
        "off; call it a day; call it a night; calling stumps; bowing out; rounding off; "
        "checking out; calling it quits; knocking off"
    )
    + rf"(?={_ON_SET})(?!{_AT_A_COUNT})",
    _ME + _GOING + maybe("now; straight; straight back; back; off; already; on my way; on foot") + _HOME + _WHEN,
    _ME
    + one_of(
        "on my way home; home now; home already; home again; already home; back home; back at "
        "home; sat at home; at home now; sitting at home; home and showered; showered; showered "
        "and changed; showered and dressed; in the car; in the car now; on the bus; on the bus "
        "home; on the train home; on the tram home; left the gym; out of the gym; bailing out "
        "of the gym; out of here; back in the car; back at the car; on the sofa; back on the "
        "sofa; in bed; walking to the car; home with a beer"
    )
    + _WHEN,
    maybe("my; the; all my; all the; all") + _KIT + _IS + _STOWED + _WHEN,
    _ME + _PACKING + _WHEN,
    _ME + _SHOWER + maybe("already; now; time; for me; then home; next; as we speak; as i type") + _WHEN,
    _CRY + _ME + any_of(_IDIOM, _FOREIGN) + _WHEN,
    _ME
    + maybe("have; ve")
    + one_of(
        "reached; got to; made it to; made it through to; came to; come to; at; arrived at; "
        "hit; gotten to; now at; crossed; over; across; got over; past; through to"
    )
    + one_of("the end; the finish; the finish line; the finishing line; the bottom; the last line; the end point")
    + maybe("of")
    + any_of(_LISTED, _SESSION, one_of("it; it all; things"), "")
    + _WHEN,
    _ME
    + one_of(
        "got through; made it through; through; been through; all the way through; went "
        "through; worked through; ran through; finished; completed; done; done with; cleared; "
        "ticked off; got done with; done all; finished all; completed all; cleared all"
    )
    + one_of(
        "the lot; it all; the whole lot; the whole thing; the whole list; the whole sheet; the "
        "whole plan; the whole session; the whole workout; the whole programme; all of it; "
        "everything; everything on the list; everything on the sheet; everything on the plan; "
        "all exercises; all the exercises; all six exercises; every exercise; every exercise on "
        "the list; the full list; the full session; the full workout; all that was planned; "
        "everything planned; everything for today; everything you gave me; everything you set "
        "me"
    )
    + _WHEN
    + "(?!but |as |except |bar |apart )",
    one_of("all; all the; all my; every one of the; all of the")
    + _BIG
    + _IS
    + one_of(
        "in; logged; ticked; ticked off; entered; reported; through; behind me; in the bag; in "
        "the books; in the log; checked; checked off; finished; complete; completed; done"
    )
    + _DAY
    + _WHEN,
    one_of("all; all the; all my; all of the; all of my; every one of the")
    + one_of("exercises; six exercises; five exercises; four exercises; lifts; movements; exercises of today; boxes")
    + _IS
    + one_of(
        "in; logged; ticked; ticked off; entered; reported; through; behind me; in the bag; in "
        "the books; checked; checked off; finished; complete; completed; done"
    )
    + _WHEN,
    maybe("for today; today")
    + one_of("everything; the lot; it all; all of it; all")
    + maybe(
        "of the plan; on the list; on the sheet; on the plan; for today; i had to do; planned; from today; from my side"
    )
    + _IS
    + one_of(
        "finished; through; ticked off; behind me; in the bag; in the books; complete; wrapped "
        "up; over; entered; over and done with; over with; concluded; out of the way"
    )
    + _WHEN,
    _NOTHING + _TO_DO + "{0,4}" + one_of("on; in; from; of; for") + _LISTED + _WHEN,
    _NOTHING
    + one_of("left to do; more to do; else to do; still to do; to do anymore; to do any more; on the list anymore")
    + _WHEN,
    one_of(
        "no sets; no exercises; no more sets; no more exercises; no exercise; zero sets; zero "
        "exercises; not a single set"
    )
    + one_of("left; remaining; open; outstanding; to do; to go; missing; left for today; left today")
    + _WHEN,
    maybe("the") + one_of("show; shows; game; party; partys; fun; play; circus") + _IS + "over " + _DAY + _WHEN,
    maybe("the") + one_of("shows; partys; show is; party is; circus is; funs; fun is") + "over " + _WHEN,
    one_of("gym; the gym; club") + _IS + one_of("left; behind me; done and dusted") + _WHEN,
    _ME
    + one_of("finished; done; through; complete; over")
    + maybe("with")
    + maybe("the; my; todays; all")
    + one_of("training; workout; session; gym; exercises; lifting; sets; work")
    + _DAY
    + _WHEN,
)
_STRONG_END = compiled(_CRY + any_of(_STRONG + _ENDS, _ME + _IDIOM + _WHEN + rf"(?={_NUMBER})"))
_ALONE = compiled(
    _CRY
    + any_of(
        one_of(
            "it is over; its over; its all over; its done; all over; its finished; it is done; it "
            "is finished; its all done; its all finished"
        ),
    )
    + _WHEN
    + rf"(?={_NEXT})"
)
_LEAVES = compiled(
    _ME
    + _OUT
    + some(
        "now; then; already; for today; today; coach; boss; mate; home; guys; folks; finally; "
        "to the airport; to work; for dinner; peace; as well; i think; straight"
    )
    + rf"(?={_NEXT})"
)


def with_endings(marks: Sequence[Mark], *, begun: bool = True) -> list[Mark]:
    """The marks with such a clause said plainly, between commas where nothing else parts it.

    `begun`: the session holds a set, or the message tells one; before that a packed bag or the way home ends nothing.
    """
    said = said_of(marks)
    timed = any(m.text in _TIMES for m in marks)
    reports = not timed and any(m.kind is Kind.NUM or m.text in _REPORTING for m in marks)
    until = 0
    out: list[Mark] = []
    for place in clause_starts(marks):
        if place < until or marks[place].text not in _WORDS:
            continue
        end = _end(said.text, said.letter(place), reports=reports)
        if end is None or end not in said.starts:
            continue
        if timed and _ALLOWED.match(said.text, said.letter(place)) and _AHEAD.search(said.text[: said.letter(place)]):
            continue
        if kind_at(marks, said.place(end)) is Kind.NUM and any(m.text.startswith("warm") for m in marks[:place]):
            continue  # `warm ups over with, finished on 150 for 1`: what was lifted last of them
        if not begun and _ELSEWHERE.search(said.text[said.letter(place) : end]):
            continue
        out += marks[until:place]
        until = said.place(end)
        apart = bool(out) and out[-1].kind not in EDGES and out[-1].text not in _JOINS
        behind = until < len(marks) and marks[until].kind not in EDGES
        out += put(marks[place:until], f"{', ' if apart else ''}{_PLAIN}{' ,' if behind else ''}")
    return [*out, *marks[until:]]


_ELSEWHERE = re.compile(
    r"\b(?:pack|packed|packing|bags?|kit|gear|belt|chalk|home|car|bus|train|showers?|showered|sauna|bath|bed|sofa|kettles?"
    r"|mission|clocked|clocking|logged off|logging off|punched|leaving|left|door|off i|going|heading|headed)\b"
)
"""What is done before a session as well as behind it."""
_ALLOWED = re.compile(
    r"(?:so |and |, )*(?:thats|that is|this is) (?:your lot|what you get|all you get|all youre getting)\b"
)
_AHEAD = re.compile(r"\b(?:till|til|until|before|have|ive|got|only|max|tops|left|today)\b")
"""`half an hour till my first call, so thats your lot`: the time that is given to the coach, and no end yet."""
_WORDS = frozenset(re.findall(r"[^\W_]+", _CRY + _STRONG + _OUT)) | {"!", ","}
"""Words that such a clause may begin with, and more: one that begins otherwise is not looked at."""
_TIMES = frozenset(("min", "mins", "minute", "minutes", "hour", "quarter"))
"""`a quarter of an hour, then im away`: how long there is yet."""
_REPORTING = frozenset(("sets", "set", "reps", "session", "workout", "training", "done", "finished", "last"))
_JOINS = frozenset(("and", "so", "then", "but"))


def _end(text: str, start: int, *, reports: bool) -> int | None:
    """Where an end of the session that begins at a letter ends. `reports`: the message tells what was done."""
    frames = [_STRONG_END]
    if reports:
        frames.append(_LEAVES)
    elif start == 0 and "?" not in text:
        frames.append(_ALONE)
    ends = (found.end() for frame in frames if (found := frame.match(text, start)) is not None)
    return next((end for end in ends if end > start), None)
