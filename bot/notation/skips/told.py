"""What is left out in a clause of its own, put as `skip` before it or `skipped` behind it: who leaves out what and how.

The frames know names and `the rest` in all its wordings: `cross out what is still on the list`, `lunges get the chop`,
`none of the remaining four for me`. What is asked about, of others or of another day has no place in them; a word that
also takes back a set (`scrap`, `strike`) means so only beside what has none. Common usage, from memory, no source.
"""

import re
from collections.abc import Sequence, Set
from dataclasses import dataclass, replace
from functools import cache

from bot.notation.alike.frames import Said, any_of, clause_starts, compiled, maybe, one_of, some
from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_NAMES = (Kind.NAME, Kind.WEAK)
_THE = some(
    "the; my; those; these; bloody; damn; stupid; silly; dreaded; blasted; todays; any; "
    "all; that; this; other; last; next; sodding; flipping; horrible; horrid; awful; poor; "
    "of; whole; both; fucking; stinking; more"
)
_LEFT_OF = maybe(
    "the remaining; the rest of the; the rest of my; the rest of; whats left of the; whats "
    "left of my; the last of the; my remaining; remaining; all the remaining; the other; "
    "what remains of the"
)
_JOIN = one_of(",; and; &; +; or; nor; plus; , and; /; along with; as well as; and also; and then; , plus; then; ,")
_ONE = any_of(_LEFT_OF, "") + _THE + "N "
_LIST = (
    _ONE
    + "(?:"
    + any_of(_JOIN, "")
    + _ONE
    + "){0,6}"
    + maybe("either; too; sets; bit; part; thing; stuff; exercise; exercises; as well")
)
_NOUN = one_of(
    "session; sessions; workout; training; sesh; gym session; training session; programme; "
    "program; plan; list; sheet; schedule; menu; routine; day; lot; exercises; sets; work; "
    "lifts; movements; stuff; evening; it all; everything; workload; page; gym; lifting; "
    "card; log; training plan; evening; thing"
)
_OF_IT = (
    "(?:"
    + one_of("of; on; in; from; for; off; to")
    + maybe("the; my; todays; this; our; tonights; that; all the; my whole; todays whole")
    + any_of(_NOUN, one_of("today; tonight; me; now"))
    + "){0,3}"
)
_WORK = one_of(
    "exercises; exercise; sets; set; work; lifts; movements; stuff; session; workout; "
    "training; programme; plan; ones; bits; things; part; parts; half; list; items; lot; "
    "portion; exersises; excercises; moves; training session; sesh; rows on the list"
)
_COUNT = maybe("two; three; four; five; six; 2; 3; 4; 5; 6; few; couple; couple of; handful of")
_OPEN = one_of(
    "left; left over; leftover; remaining; outstanding; open; still open; undone; "
    "unfinished; not done; not done yet; to do; still to do; still to come; to come; "
    "standing; still standing; missing; pending; remains; stays; still left; still "
    "outstanding; still remaining; after this; after that; after it; from here; from here "
    "on; from now on; waiting; still waiting; still there; remain; stay; rests; over; "
    "there; still missing; not started; still undone; left undone; left to do; still on; "
    "unticked; still unticked; ahead; still ahead; still to go; to go; coming; coming up; "
    "next; coming next; still"
)
_IS = some(
    "that; which; what; is; s; thats; are; was; were; still; has; been; have; theres; "
    "there; there is; i have; i ve; ive; ive got; i still have; i had; it; yet; now; be; "
    "isnt done; hasnt been done; havent done; i havent done; i have not done; i didnt do; "
    "im yet to do; i havent got to; i have not got to"
)
_ALL = one_of(
    "all; everything; whatever; what; whats; anything; every set; every exercise; all sets; "
    "all the sets; all exercises; all the exercises; the sets; the exercises; all the work; "
    "the work; all of it; every single set; every single exercise; all the stuff; the "
    "stuff; whatevers; everythings; all thats; everything thats; all what; all other; any "
    "exercise; any exercises; any set; the bits; all the bits; every last set; all that; "
    "all the things; exercises; every bit"
)
_REST = any_of(
    _ALL + _IS + _OPEN + "{1,2}" + _OF_IT + maybe("today; tonight; now"),
    maybe("all; all of; every bit of; the whole; whole")
    + maybe("the; my; todays; this; our; tonights")
    + maybe("entire; whole")
    + one_of(
        "rest; remainder; reset; remaining part; remaining bit; leftovers; remains; balance; "
        "remaining portion; second half; others; other ones; remaining ones"
    )
    + _OF_IT,
    maybe("all; all of; every one of; any of; both; of; each of; every")
    + maybe("the; my; those; these; todays; of the; of my")
    + one_of(
        "remaining; other; outstanding; unfinished; leftover; left over; undone; last; final; "
        "rest; open; not done; unstarted; untouched; following; remaining all; others; pending; "
        "further; later; left"
    )
    + _COUNT
    + maybe("all; remaining")
    + _WORK
    + maybe("left; remaining; still to do; to do")
    + _OF_IT,
    maybe("all; all of")
    + one_of("the remaining; my remaining; the other; those other; the last; the outstanding; remaining")
    + one_of("two; three; four; five; six; 2; 3; 4; 5; 6"),
    one_of(
        "everything else; all else; anything else; all the others; all others; the others; the "
        "rest; all the rest; all the rest of it; whats left; what is left; everything left; all thats left; "
        "whatever is left; whatevers left; the remainder; everything remaining; what remains; "
        "everything after that; everything after this"
    )
    + _OF_IT,
)
_SINCE = (
    one_of(
        "everything; all; anything; whatever comes; what comes; all exercises; all the "
        "exercises; the exercises; everything that comes; all that comes; everything that "
        "follows; all that follows; every exercise; any exercise; everything listed; all of it; "
        "all the stuff; everything that is; everything that stands"
    )
    + maybe("coming; directly; right")
    + one_of("after; below; past; beyond; following; beneath; under; behind; from after; which follows; that follows")
    + _THE
    + "N "
)
_AFTER = one_of("everything after; whats after; what comes after") + _THE + "N "
_OBJECT = "(?P<object>" + any_of("(?P<since>" + any_of(_SINCE, _AFTER) + ")", "(?P<rest>" + _REST + ")", _LIST) + ")"

_ME = some(
    "i; im; i m; ive; i have; i am; ill; i will; we; you can; you may; please; lets; let "
    "us; had to; have to; having to; id like to; i would like to; would like to; want to; "
    "wanna; gonna; going to; im going to; just; today; tonight; so; then; decided to; i "
    "decided to; need to; must; shall; i shall; ive decided to; i want to; feel free to; "
    "kindly; better; sorry; for today; also; now; ready to; think ill; i think ill; i think "
    "i will; guess ill; i had to; i have to; i must; i need to; ended up; will be; be; "
    "will; will have to; and; but; coach; ok; unfortunately; sadly; afraid; id rather; i "
    "would rather; would rather; rather; might as well; going; am; were; id; may; gotta; i "
    "gotta; as well; to; got to; i got to; simply; completely; forced to; this time; this "
    "evening; by your leave; with regret; ,; happily; gladly; time to; no choice but to; "
    "you might as well; we can; you could; you should; here; with your permission; happy "
    "to; choosing to; im having to; opting to; i opt to; i choose to; i plan to; i prefer "
    "to; prefer to; am going to"
)
_VERBS = (
    "skip; skipping; skipped; bin; binning; binned; bin off; binning off; binned off; "
    "ditch; ditching; ditched; omit; omitting; omitted; cross out; crossing out; crossed "
    "out; cross off; crossing off; crossed off; leave out; leaving out; left out; leave "
    "off; leaving off; left off; leave undone; leaving undone; leave aside; leaving aside; "
    "pass on; passing on; passed on; pass up; passing up; passed up; forgo; forgoing; "
    "forego; foregoing; forwent; sit out; sitting out; sat out; sit out on; sack off; "
    "sacking off; sacked off; chuck; chucking; chucked; chuck out; axe; axing; axed; "
    "shelve; shelving; shelved; park; parking; parked; abandon; abandoning; abandoned; give "
    "up; giving up; gave up; give up on; giving up on; gave up on; bail on; bailing on; "
    "bailed on; bail out of; bailing out of; bailed out of; do without; doing without; did "
    "without; count me out of; count me out for; count me out on; count me out with; knock "
    "off; knocking off; knocked off; miss out; missing out; missed out; miss out on; blow "
    "off; blowing off; blew off; duck out of; ducking out of; ducked out of; swerve; "
    "swerving; swerved; get rid of; getting rid of; got rid of; forget about; forgetting "
    "about; postpone; postponing; postponed; opt out of; opting out of; opted out of; pull "
    "out of; pulling out of; pulled out of; back out of; backing out of; backed out of; "
    "weasel out of; weaselling out of; weaseling out of; weaselled out of; wriggle out of; "
    "wriggling out of; wriggled out of; chicken out of; chickening out of; chickened out "
    "of; get out of; getting out of; wimp out of; wimping out of; wimped out of; steer "
    "clear of; steering clear of; stay away from; staying away from; say no to; saying no "
    "to; said no to; say goodbye to; saying goodbye to; wave goodbye to; kiss goodbye to; "
    "jump; jumping; jump over; jumping over; jumped over; hop over; hopping over; spring "
    "over; leap over; skip over; skipping over; skipped over; skip past; cull; culling; "
    "culled; nix; nixing; nixed; veto; vetoing; vetoed; dodge; dodging; dodged; avoid; "
    "avoiding; sidestep; sidestepping; refuse; refusing; decline; declining; let go of; let "
    "slide; let be; letting go of; letting slide; give a miss; giving a miss; swap out; "
    "call off; calling off; called off; lose; losing; cut; cutting; cut out; cutting out; "
    "drop; dropping; dropped; miss; missing; missed; stop; stop with; leave; leaving; save; "
    "saving; spare myself; sparing myself; give a skip; deselect; ignore; ignoring; take "
    "out; taking out; rule out; ruling out; bag; bag off; jettison; dump; dumping; dumped; "
    "scrub; eliminate; stay off; keep off; exclude; excluding; wipe; fuck "
    "off; sod; stuff; screw; sack; sacking; forget; discount; forfeit; forfeiting; "
    "relinquish; neglect; delay; suspend; suspending; waive; waiving; bypass; bypassing; "
    "bypassed; write off; writing off; wrote off; hold off on; holding off on; held off on"
)
_TAKING_BACK = (
    "scrap; scrapping; scrapped; scratch; scratching; scratched; strike; striking; struck; "
    "strike out; strike off; cancel; cancelling; cancelled; canceling; canceled; remove; "
    "removing; delete; deleting; take off; taking off; erase; rub out; wipe off; lose off; "
    "scratch off; scrap off; cross through; strike through; scratch out"
)
_DENIED = (
    "not doing; not going to do; not gonna do; wont do; wont be doing; will not do; will "
    "not be doing; am not doing; dont do; do not do; not do; cant do; cannot do; can not "
    "do; shall not do; shall not be doing; shant do; shant be doing; not bothering with; "
    "not bothering to do; cant be bothered with; cant be bothered doing; cant be bothered "
    "to do; cant be arsed with; cant be arsed to do; cant be arsed doing; no time for; no "
    "time to do; no energy for; no motivation for; no appetite for; in no mood for; not in "
    "the mood for; not making; not make; wont make; will not make; will not be making; not "
    "performing; wont perform; not finishing; not finish; wont finish; wont be finishing; "
    "cant finish; will not finish; not completing; wont complete; not continuing; not "
    "continuing with; not carrying on with; not going on with; wont carry on with; wont "
    "continue with; not touching; wont touch; wont be touching; not attempting; wont "
    "attempt; not starting; wont start; wont get to; wont be getting to; not getting to; "
    "dont want to do; dont feel like; dont feel like doing; not up for; not up to; not "
    "fancying; dont fancy; refuse to do; refusing to do; unable to do; not able to do; wont "
    "manage; not managing; cant manage; not gonna bother with; not going to bother with; "
    "wont bother with; not gonna be doing; not going to be doing; cannot be bothered with; "
    "not gonna touch; not gonna finish; not going to finish; not gonna make; not going to "
    "make; didnt do; did not do; havent done; have not done; not done; not did; didnt "
    "bother with; didnt get to; didnt get round to; not feeling; not feeling up to; not "
    "adding; not even attempting; not even starting; dont make; do not make; not executing; "
    "no longer doing; not any more doing; not anymore doing"
)
_OUT = maybe(
    "out; off; behind; aside; for another day; for another life; for the next life; for next "
    "time; till next time; until next "
    "time; off my list; off the list; from my list; from the list; from todays list; off "
    "todays list; off my plan; off the plan; off today; off for today; from the plan; from "
    "my plan; off the sheet; off todays session; from todays session; off the menu; from "
    "today; a miss; the elbow; the boot; the chop; the push; a swerve; a skip; goodbye; go; "
    "be; slide; undone; for tomorrow; from todays plan; out of it; out of todays session; "
    "out of the plan; off todays plan; through; from the session; from the list today; off "
    "my back; the bullet"
)
_TAIL = any_of(
    one_of(
        "today; tonight; for today; this time; now; coach; then; too; altogether; please; "
        "sorry; for me; for tonight; i think; instead; again; completely; entirely; this "
        "evening; boss; mate; sir; from me; at all; either; anymore; any more; further; as "
        "well; for this session; this session; for the day; if thats ok; if thats okay; if you "
        "dont mind; skip; skipped; just; only; off today; for now; haha; lol; grazie; merci; im "
        "afraid; a bit; here; in this session; for once; on purpose; not this time; not today; "
        "this week; of today; until next time; till next time; for another day; next time; in "
        "another life; for another life; in the next life; for the next life; in my next life; in "
        "todays session; for good; to be honest; from today; this morning; ok; completely "
        "today; straight; directly; straight away; (rest!); by choice; day; no thanks; thanks; "
        "🙈; 😤; 🙃"
    ),
    r"[^\w ,.;:?!¶+-]+ ",
)
_LAST = _TAIL + "{1,3}" + r"(?=\d)"
_TAIL += "{0,5}"
_BEHIND = "|".join(
    (
        r"$",
        r"[,.;!¶()—-] ",
        r"[^\w ?:@/+*=]+ ",
        one_of(
            "and; but; so; because; cos; coz; cause; cuz; since; as; bc; thanks; thank; cheers; "
            "bye; see; sorry; my; the bar; its; it is; they; there; theres; though; grazie; no; "
            "straight; due; too; got; gotta; lets; thats; calling; until; till; then; to the; on "
            "to; onto; going; finishing; whole; after"
        ),
    )
)
_END = rf"(?={_BEHIND})"
_CLOSE = any_of(_TAIL + _END, _LAST)
_PARTS_OF = one_of(
    "drop; dropping; dropped; cut; cutting; lose; losing; save; saving; miss; missing; "
    "missed; stop; stop with; leave; leaving; jump; jumping; park; parking; parked; bag; "
    "refuse; dump; dumping; dumped"
)
_PASSIVE = one_of(
    "skipped; omitted; cancelled; canceled; binned; binned off; dropped; scrapped; struck; "
    "struck off; struck out; left out; left undone; left behind; left off; not happening; "
    "not going to happen; wont happen; will not happen; not gonna happen; falls out; fall "
    "out; falling out; fell out; falls away; fall away; not for me; not today; canned; "
    "axed; shelved; parked; postponed; forgone; abandoned; given up; missed; missed out; "
    "not done; undone; not possible; a no go; a nono; can wait; will wait; will have to "
    "wait; have to wait; has to wait; must wait; for another day; another day; next time; "
    "another time; deleted; removed; crossed out; crossed off; a miss; the chop; the axe; "
    "the boot; the elbow; the push; chopped; cut; culled; vetoed; nixed; ditched; sacked "
    "off; off the menu; off the list; off the cards; off the table; off my list; off today; "
    "off for today; out today; out for today; can sod off; can do one; can get lost; can "
    "bugger off; can get stuffed; can jog on; can go; can go whistle; can piss off; can "
    "fuck off; can f off; can get in the bin; can get to f; a hard no; a hard pass; a big "
    "no; a big fat no; big fat no; big no; hard no; hard pass; hard skip; a skip; a pass; a "
    "big nope; a nope; nope; no today; no chance; no chance today; no thanks; no thank you; "
    "no way; no deal; gone; gone today; out the window; out of the window; out of the "
    "question; history; toast; not on; not on today; not on the cards; kicked out; kicked; "
    "thrown out; chucked; chucked out; let go; laid aside; set aside; not getting done; not "
    "being done; not made; not to be done; stay undone; stays undone; remain undone; "
    "remains undone; bypassed; ruled out; written off; sacrificed; swerved; dodged; a miss "
    "today; wait; sitting out; sat out; called off; waived; untouched; unattempted; not "
    "attempted; not started; struck from todays list; struck from the list; struck from my "
    "list; struck off the list; struck off my list; struck from the plan; taken off; taken "
    "off the list; removed from the list; dropped from the list; cut from the list; cut "
    "from todays session; dropped from todays session; left for another day; left for next "
    "time; left for tomorrow; moved to another day; pushed to another day; pushed to next "
    "time; passed on; passed up; passed over; put off; stopped; excluded; forfeited; "
    "forfeit; out of todays session; shown the door; no more"
)
_BE = some(
    "is; are; s; was; were; will be; getting; get; got; gets; be; being; been; can be; to "
    "be; has to be; have to be; had to be; needs to be; need to be; must be; will have to "
    "be; has been; have been; is being; are being; going to be; gonna be; i; may be; should "
    "be; is getting; are getting; is going to be; are going to be; all; just; simply; "
    "sadly; today; tonight; now; therefore; hereby; also; unfortunately; officially; for "
    "today; both; its; thats; it is; that is; definitely; will; a; wont be; ,; will get; "
    "will all be; gonna get; ends up; end up"
)
_SIGN = "(?:" + one_of(":; -; =; ,; ->; →; >; ...; —; –") + ")?"
_SELF = one_of(
    "i skip; i am skipping; im skipping; i will skip; ill skip; i leave out; i leave; i "
    "drop; i omit; i am not doing; im not doing; i will not be doing; i will not do; i wont "
    "do; i wont be doing; i dont do; i do not do; i not do; i am not making; im not making; "
    "i make not; i do not make; i dont make; i pass on; i pass; i jump; i cancel; i shall "
    "skip; i shall not do; ill pass on; ill give a miss; ill leave; ill leave out; im "
    "leaving; im leaving out; im dropping; im passing on; i give up; im giving up; im "
    "giving a miss; i let out; i let fall; i let be; i let go; ill sit out; ill sit those "
    "out; ill sit that out; ill sit that one out; ill sit them out; ill sit it out; ill sit "
    "these out; ill skip those; ill skip them; im sitting those out; im sitting out; im "
    "sitting them out; im sitting that out; count me out; you can count me out; i am out; "
    "im out; i wont bother; i wont bother with; i am not going to do; im not going to do; "
    "im not gonna do; i cant do; i cannot do; i spare me; i spare myself; i save for "
    "another day; i will leave; i will leave out; i will omit; i will drop; i will pass on; "
    "i am leaving out; i am passing on; i am dropping; i have skipped; i have left out; i "
    "have dropped; i skipped; i left out; i dropped; i strike; i am striking; im binning; i "
    "bin; i scrap; im scrapping; i am scrapping; i am omitting; im omitting; i forgo; i "
    "refuse; im refusing; i have cut; im cutting; i cut; i didnt do; i have not done; i "
    "havent done; i did not do; we skip; we leave out; well skip; not doing; not doing "
    "them; not doing those; not doing it; not doing that; not gonna do; not going to do; "
    "wont be doing; wont do; leaving out; im not touching; i do no more; i do not do "
    "anymore; i make no more; i dont do anymore; i wont touch; not making; i would skip; i "
    "would leave out; i would rather skip; id rather skip; id skip; skipping those; "
    "skipping them; skipping that; skipping it; dropping those; dropping them; leaving "
    "those out; leaving them out; leaving it out; passing on those; passing on them; "
    "passing on that; i will be skipping; ill be skipping; i will be leaving out; ill be "
    "leaving out; i will be dropping; ill be dropping"
)
_DOING = one_of(
    "cant be arsed to; cant be arsed; cant be bothered to; cant be bothered; cannot be "
    "bothered to; cannot be arsed to; no time to; no time for; no energy to; no energy left "
    "to; no strength to; no motivation to; no desire to; no will to; refuse to; refusing "
    "to; i refuse to; shant be; shall not be; wont be; will not be; not going to; not "
    "gonna; not going to be; not gonna be; dont feel like; dont want to; do not want to; "
    "too tired to; too tired for; too knackered to; too knackered for; too late to; too "
    "late for; you wont see me; you wont see any; you wont be seeing any; you will not see "
    "any; you wont see me do any; you wont see; no way im; no way am i; there will be no; "
    "therell be no; there wont be any; expect no; dont expect any; im not; i am not; not; "
    "never; i wont; i will not; wont; will not; cannot; cant; no chance of; no chance of "
    "any; not in the mood to; not in the mood for; zero; zero chance of; nil; not a single; "
    "not one; not any; no; none of the; none of those; none of my; without; minus; with no; "
    "today without; i go without; going without; we go without; spare me the; enough of; i "
    "wont be; im done with; unable to; not able to; not fit to; not fit for; no appetite "
    "for; no interest in; no more; nothing of the; no space for; no room for; no room to; "
    "dont make me; have no time to; have no time for; got no time to; got no time for; not "
    "got time to; havent got time to; dont have time to; have not time to; lacking the "
    "energy for; shall not; shan't; shant; aint; i aint; aint gonna; not about to; not up "
    "to; not up for; not keen on; not a fan of"
)
_TODAY = one_of(
    "today; tonight; for me today; for me tonight; for me; from me; from me today; for "
    "today; this time; this evening; this session; anymore; any more; anymore today; any "
    "more today; further today; further; this time round; at all today; in this session; "
    "today for me; now; from me tonight; from me this time; today coach; for me this time; "
    "this morning; no more; today then"
)
_OVER = (
    one_of(
        "jump; jumping; jumped; going; go; moving; move; hopping; hop; heading; leaping; leap; "
        "skipping; skip; gone; moved; straight; went; cruising"
    )
    + maybe("straight; right; directly; clean")
    + one_of("over; past; by")
)
_ONTO = r"(?=(?:straight |right |directly |and |on |onto |to |, |\. |$))"

_NOT_FIT = any_of(
    one_of("wont; will not; cant; cannot; couldnt; not going to; not gonna; no way i; no way ill; im not going to")
    + maybe("be able to; manage to; even")
    + one_of("get; fit; squeeze"),
    one_of("not; wont be; im not") + one_of("getting; fitting; squeezing"),
)
_IN = "(?!in between )" + one_of("in; into today; into this one; in time; into this session; into the session")
_THEN_WHY = rf"(?={_BEHIND}|the (?:missus|wife|kids|boss|gym|bus|train|car|lads|dog|baby|school|taxi|meeting|husband) )"

_CLEAR = any_of(
    one_of(_VERBS, _DENIED),
    "(?P<back>" + one_of(_TAKING_BACK) + ")",
    one_of(
        "count; leave; take; cross; strike; knock; scratch; rub; cut; let; give; giving; "
        "leaving; taking; crossing; knocking; striking; pass; sit; sitting; bin; sack; chuck; "
        "keep; put; rule; put; letting; giving; shelve; call"
    )
    + "(?=.{1,160}?(?:out|off|aside|behind|slide|be|go|miss|elbow|boot|chop|undone|through|swerve|skip) )",
)
_LEFT_OUT = (
    compiled(_ME + _NOT_FIT + _OBJECT + _IN + _TAIL + _THEN_WHY),
    compiled(_ME + _CLEAR + _OBJECT + _OUT + _SIGN + _CLOSE),
    compiled(_ME + _OVER + "(?P<object>" + _LIST + ")" + _ONTO),
    compiled(
        one_of(
            "cross it off; cross it out; cross them off; skip it; skip them; bin it; bin them; "
            "strike it; count me out; skip; skipped; binned; dropped; omitted; cancelled; off the "
            "list; strike; not doing; leave out; left out; not done; not today; skipping; leaving "
            "out; omitting; will skip; cut; to skip; to be skipped; to omit"
        )
        + one_of(":; -; =; ,; —")
        + "(?P<object>"
        + _LIST
        + ")"
        + _CLOSE
    ),
    compiled(
        some("i; im; and; so; but; today; tonight; sorry; also; then; you; just; really; simply; for today; ,; we")
        + _DOING
        + some("even; be; do; doing; any; to; more; make; start; starting; finish; finishing; of; of the")
        + "(?P<object>"
        + _LIST
        + ")"
        + maybe("or anything; ing")
        + _TODAY
        + _CLOSE
    ),
    compiled(
        some("i; im; and; so; but; today; tonight; sorry; also; then; just; really; we; coach")
        + one_of(
            "no time to; cant be arsed to; cant be bothered to; cannot be bothered to; refuse to; "
            "too tired to; too tired for; too knackered to; too knackered for; too wrecked to; too "
            "late to; too late for; no energy to; no energy left to; no strength to; have no time "
            "to; not got time to; havent got time to; dont have time to; lets do without; do "
            "without; doing without; today without; shant be; zero chance of; no chance of; tonight "
            "without; got no time to; no way im; i wont be; refusing to; im not able to; goodbye"
        )
        + some("do; be; doing; even; the; any; start; make")
        + "(?P<object>"
        + _LIST
        + ")"
        + _TODAY
        + "?"
        + _CLOSE
    ),
    compiled(
        some(
            "i; im; and; so; but; today; tonight; sorry; for today; coach; theres; there is; there "
            "will be; ill do; i do; i am doing; im doing; doing; i will do; expect; you get"
        )
        + one_of("none of; not any of; nothing of; zero of; no more of; not one of; nothing from; none from; nothing")
        + "(?P<object>"
        + any_of("(?P<since>after " + _THE + "N )", "(?P<rest>" + _REST + ")")
        + ")"
        + _TAIL
        + _END
    ),
)
_IS_LEFT_OUT = (
    compiled(
        maybe(
            "and; so; but; then; also; because of that; therefore; as for; with; about; regarding; "
            "today; tonight; for today; sorry; ,; ok; coach"
        )
        + _OBJECT
        + _SIGN
        + _BE
        + _PASSIVE
        + _TAIL
        + _END
    ),
    compiled(
        maybe("and; so; but; then; also; as for; today; for today; with; about; regarding")
        + _OBJECT
        + _SIGN
        + any_of(_SELF, _ME + any_of(_CLEAR))
        + maybe(
            "out; off; fall; be; them; those; it; that; further; not further; no further; away; not "
            "anymore; not any more"
        )
        + _TAIL
        + _END
    ),
    compiled(
        maybe("and; so; but; then; also; as for; today; for today")
        + "(?P<object>"
        + _LIST
        + ")"
        + one_of("i; we")
        + one_of("do; make; did; made; go on with; continue; can; will do; will make; can do; finish; start")
        + one_of("not; not further; no more; no longer; not anymore; not any more")
        + _TAIL
        + _END
    ),
    compiled(
        maybe("and; so; but; then; also; as for")
        + "(?P<object>"
        + any_of("(?P<since>" + any_of(_SINCE, _AFTER) + ")", "(?P<rest>" + _REST + ")")
        + ")"
        + _SIGN
        + _BE
        + one_of(
            "skip; skipped; no; x; xx; xxx; none; nope; out; off; pass; nah; a no; not; left; zero; "
            "nil; zilch; gone; away; nada; cancelled; omit; drop; bin; ❌; 🚫; 👎; done with"
        )
        + _TAIL
        + _END
    ),
    compiled(
        "(?P<object>"
        + _LIST
        + ")"
        + _SIGN
        + one_of("xx; xxx; xxxx; ❌; ❌ ❌; x x; x x x; 🚫; 🚫 🚫; a no; big x; x")
        + _TAIL
        + any_of(_END, "(?=N )")
    ),
    compiled(
        "(?P<object>"
        + _LIST
        + ")"
        + one_of(",; -; :; —")
        + one_of(
            "none of those; none of them; none of these; none of that; not any of those; not any of "
            "them; no to all of those; no to all of them; no to all; not doing any of those; not "
            "doing any of them; not one of them; not one of those; count me out; no to those; no to "
            "them; nothing of that; none of it; none; not those; not them; not doing those; not "
            "doing them; all out; all off; all no; all cancelled; all dropped; all binned; all of "
            "them out; all of those out; all of them skipped; all of those skipped; all gone; all "
            "cut"
        )
        + _TAIL
        + _END
    ),
)

_THAT_ONE = compiled(
    one_of("so; and; hence; thus; then; therefore; , so; so then")
    + one_of(
        "that ones; thats; thats one; thats one thats; that one is; that one gets; that is; this ones; that ones now"
    )
    + _BE
    + one_of(
        "off; out; cancelled; skipped; binned; a no; a no go; not happening; off today; out "
        "today; off the menu; off the list; off the table; out for today; off for today; "
        "dropped; scrapped; left out; gone; crossed off; crossed out; omitted; axed; canned; "
        "struck; struck off; off my list; a skip; a miss"
    )
    + _TAIL
    + _END
)


@dataclass(frozen=True, slots=True)
class _Found:
    """A clause that leaves out: where it starts and ends, its object, and whether that stands ahead."""

    start: int
    end: int
    object: range
    rest: bool
    since: bool
    ahead: bool


def with_told(marks: Sequence[Mark], stored: Set[int]) -> list[Mark]:
    """The marks with such clauses said plainly. `stored`: the exercises that have a set, by their place."""
    if not any(m.kind in _NAMES or m.kind is Kind.THEREST or m.text.split(" ")[0] in _HEADS for m in marks):
        return list(marks)
    said = _said(marks)
    out: list[Mark] = []
    until = 0
    starts = set(clause_starts(marks))
    for place, mark in enumerate(marks):
        if place < until:
            continue
        that = _THAT_ONE.match(said.text, said.letter(place)) if mark.text in _SO else None
        if that is not None and that.end() in said.starts and place:
            out += [*marks[until:place], *_that_one(mark)]
            until = said.place(that.end())
            continue
        known = mark.kind in _NAMES or set(mark.text.split()) <= _words()
        found = _found(said, marks, place, stored) if known and place in starts and not _counted(marks, place) else None
        if found is None:
            continue
        listed = found.ahead and kind_at(marks, place - 1) is Kind.AND and kind_at(marks, place - 2) in _NAMES
        if listed or _is_plain(marks, found):
            continue
        out += marks[until:place]
        until = found.end
        if found.ahead and [m.kind for m in out[-2:]] in ([Kind.NAME, Kind.COMMA], [Kind.WEAK, Kind.COMMA]):
            out[-1] = replace(out[-1], kind=Kind.STOP, text=".")
        apart = bool(out) and out[-1].kind not in EDGES and out[-1].text not in ("and", "so", "then", "but")
        out += [_edge(mark)] if apart else []
        out += _plainly(marks, found)
        out += [_edge(marks[until])] if until < len(marks) and marks[until].kind not in EDGES else []
    return [*out, *marks[until:]]


_HEADS = frozenset(
    (
        "rest",
        "remaining",
        "remainder",
        "everything",
        "all",
        "whatever",
        "what",
        "anything",
        "others",
        "left",
        "outstanding",
        "unfinished",
        "pending",
        "exercises",
        "leftovers",
        "sets",
        "none",
        "other",
    )
)

_SO = ("so", "and", "hence", "thus", "then", "therefore")
_ENTRY = (Kind.X, Kind.FOR, Kind.AT, Kind.SLASH)


def _counted(marks: Sequence[Mark], place: int) -> bool:
    """`two rows i skip`: a number that counts what stands here, and tells no set of its own."""
    return kind_at(marks, place - 1) is Kind.NUM and kind_at(marks, place - 2) not in _ENTRY


def _said(marks: Sequence[Mark]) -> Said:
    """The words in a row, each name as `N`."""
    parts = ["¶ " if m.kind is Kind.LINE else "N " if m.kind in _NAMES else f"{m.text} " for m in marks]
    at, letters = 0, []
    for part in parts:
        letters.append(at)
        at += len(part)
    letters.append(at)
    return Said("".join(parts), {letter: i for i, letter in enumerate(letters)}, tuple(letters))


def _found(said: Said, marks: Sequence[Mark], place: int, stored: Set[int]) -> _Found | None:
    """The clause that begins at a place, if one does."""
    for frame in (*_LEFT_OUT, *_IS_LEFT_OUT):
        found = frame.match(said.text, said.letter(place))
        if found is None or found.end() not in said.starts:
            continue
        start, end = found.span("object")
        if start not in said.starts or end not in said.starts:
            continue
        groups = found.groupdict()
        if _OF_TIME.search(found.group("object")) or (groups.get("rest") and _is_purpose(marks, place, found.group(0))):
            continue
        if frame in _IS_LEFT_OUT and _is_of_body(marks[said.place(start) : said.place(found.end())]):
            continue
        names = [m for m in marks[said.place(start) : said.place(end)] if m.kind in _NAMES]
        one = not (groups.get("rest") or groups.get("since"))
        left = "remaining" in found.group("object") or "rest of" in found.group("object")
        if groups.get("back") and one and not left and any(set(m.names) & stored for m in names):
            continue
        return _Found(
            place,
            said.place(found.end()),
            range(said.place(start), said.place(end)),
            bool(groups.get("rest")),
            bool(groups.get("since")),
            frame in _IS_LEFT_OUT,
        )
    return None


_OF_TIME = re.compile(
    r"\brest of (?:the|my|this|our) (?:day|week|month|year|morning|evening|night|afternoon|weekend)\b"
)
"""`rest of the day off`: no sets."""


def _is_purpose(marks: Sequence[Mark], place: int, said: str) -> bool:
    """`bench 60x5 so the others can go`: what others may do."""
    led = [m.text for m in marks[max(0, place - 2) : place + 2]]
    return "so" in led and re.search(r"\bothers can go\b", said) is not None


def _is_of_body(told: Sequence[Mark]) -> bool:
    """`legs gone`: a word that may be a part of the body, and what may be said of it."""
    names = [m for m in told if m.kind in _NAMES]
    return len(names) == 1 and names[0].kind is Kind.WEAK and bool({w for m in told for w in m.text.split()} & _SPENT)


_SPENT = frozenset(("gone", "out", "done", "off", "away", "finished", "over"))


def _is_plain(marks: Sequence[Mark], found: _Found) -> bool:
    """Whether a clause is `skip` and its object, or that and `skipped`, as the rules behind know it."""
    if found.since or any(marks[at].kind is Kind.WORD for at in found.object):
        return False
    known = found.rest and len(found.object) == 1 and marks[found.object.start].kind is Kind.THEREST
    if not (known or not found.rest):
        return False
    if found.ahead:
        behind = marks[found.object.stop : found.end]
        return found.object.start == found.start and [m.kind for m in behind] == [Kind.SKIPPED]
    ahead = marks[found.start : found.object.start]
    if [m.kind for m in ahead] == [Kind.NO]:
        return True
    return found.object.stop == found.end and [m.kind for m in ahead] == [Kind.SKIP]


def _plainly(marks: Sequence[Mark], found: _Found) -> list[Mark]:
    """`skip` and what is left out, or that and `skipped`."""
    first, last = marks[found.start], marks[found.end - 1]
    objects = [m for m in marks[found.object.start : found.object.stop] if m.kind in _NAMES]
    if found.rest and _counts(marks, found.object):
        objects = list(marks[found.object.start : found.object.stop])
    elif found.rest or found.since:
        whole = marks[found.object.start]
        text = "everything after" if found.since else "the rest"
        objects = [replace(whole, kind=Kind.THEREST, text=text, value=None, names=(), end=whole.end), *objects[-1:]]
        objects = objects if found.since else objects[:1]
    else:
        objects = _listed(marks[found.object.start : found.object.stop])
    behind = marks[found.object.stop : found.end]
    every = [replace(m, kind=Kind.FILL) for m in behind] if {w for m in behind for w in m.text.split()} & _EVERY else []
    if found.ahead:
        word = replace(last, kind=Kind.SKIPPED, text="skipped", value=None, parts=(), names=(), tight=False)
        return [*objects, word]
    return [replace(first, kind=Kind.SKIP, text="skip", value=None, parts=(), names=()), *objects, *every]


_EVERY = frozenset(("all", "either", "neither", "both", "any", "whatsoever"))
"""Words behind a name that may say that each is meant."""


def _listed(said: Sequence[Mark]) -> list[Mark]:
    """Names in a row with what joins them; words that say no more of them put as such."""
    out: list[Mark] = []
    for mark in said:
        if mark.kind in _NAMES:
            out += [_and(mark)] if out and out[-1].kind in _NAMES else []
            out.append(mark)
        elif mark.text in _JOINS:
            out += [_and(mark)] if out and out[-1].kind in _NAMES else []
        else:
            out.append(replace(mark, kind=Kind.FILL, value=None, parts=(), names=()))
    while out and out[-1].kind is Kind.AND:
        out.pop()
    return out


_JOINS = frozenset(
    (",", ";", "and", "&", "+", "or", "nor", "plus", "/", "along with", "as well as", "and also", "then")
)
_COUNTED = frozenset(("two", "three", "four", "five", "six", "2", "3", "4", "5", "6", "sets", "set", "other", "others"))
_WHOLE = frozenset(("session", "workout", "training", "today", "programme", "program", "plan", "list", "sheet"))


def _counts(marks: Sequence[Mark], object_: range) -> bool:
    """`the other two`, `the remaining sets`: how many, or of what, tells whether they are sets or exercises."""
    said = {w for at in object_ for w in marks[at].text.split()}
    return bool(said & _COUNTED) and not said & _WHOLE


def _that_one(mark: Mark) -> list[Mark]:
    """`so skipping that one`, for `so that one's off`."""
    plain = replace(mark, value=None, parts=(), names=())
    said = ((Kind.FILL, "so"), (Kind.SKIP, "skipping"), (Kind.LASTSET, "that one"))
    return [replace(plain, kind=kind, text=text) for kind, text in said]


def _and(mark: Mark) -> Mark:
    """What joins a name to the one before it."""
    return replace(mark, kind=Kind.AND, text="and", value=None, parts=(), names=(), end=mark.start)


def _edge(mark: Mark) -> Mark:
    """A comma before a mark."""
    return replace(mark, kind=Kind.COMMA, text=",", value=None, parts=(), names=(), end=mark.start)


@cache
def _words() -> frozenset[str]:
    """Words that such a clause may begin with, and more: one that begins otherwise is not looked at."""
    return frozenset(w for frame in (*_LEFT_OUT, *_IS_LEFT_OUT) for w in re.findall(r"[^\W_]+", frame.pattern))
