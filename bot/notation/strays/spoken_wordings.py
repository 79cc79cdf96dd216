"""How loads are spoken of that no set was done with: compared, judged, left behind, or still to come.

Each pattern is of the words before a load (to their end) or behind it (from their start), all in lower case without
apostrophes. Common usage on both sides of the Atlantic, no source.
"""

import re


def _one_of(*phrases: str) -> str:
    """A pattern of any of the phrases, told apart by `/`."""
    return "(?:" + "|".join(phrase.strip() for line in phrases for phrase in line.split("/")) + ")"


_ADJECTIVE = _one_of(
    "easy/hard/heavy/light/fast/quick/slow/smooth/good/bad/clean/strong/snappy/solid/rough/tough/brutal/nice/comfy",
    "comfortable/grindy/challenging/awful/shaky/stable/crisp/sluggish/simple/terrible/ugly/snug/scary",
)
_MORE_SO = _one_of(
    "easier/harder/heavier/lighter/faster/quicker/slower/smoother/better/worse/cleaner/stronger/snappier/rougher",
    "tougher/nicer/comfier/grindier/shakier/crisper/simpler/uglier/scarier",
    rf"(?:more|less) (?:\w+ )?{_ADJECTIVE}",
)
_FEEL = _one_of(
    "felt/feels/feel/feeling/moved/moves/moving/went/flew/looked/looks/speed/effort/difficulty/easy/hard/heavy/light",
    "smooth/fast/bar/weighed/sensation/struggle/grind",
)
_ALIKE = _one_of("same/identical/similar/equal/close/closer/near/nearer/different/comparable/comparably/equivalent")
_ARTICLES = _one_of(
    "a/an/the/my/those/these/what/when/lifting/doing/pressing/it/with/at/on/for/in/back/old/usual/just/last"
)

COMPARED = re.compile(
    rf"\b(?:as {_ADJECTIVE}(?: or \w+)? as"
    rf"|{_MORE_SO}(?: \w+){{0,2}} (?:than|to|with)"
    rf"|{_FEEL}(?: \w+)* {_ALIKE}(?: {_FEEL})?(?: \w+)? (?:as|to|than|with|from)"
    rf"|(?:same|similar|identical) {_FEEL}(?: \w+)* (?:as|to)"
    r"|(?:no|not|any|zero|little) differen(?:t|ce)\w* (?:to|than|from)"
    rf"|{_FEEL}(?: \w+){{0,3}} like"
    r"|(?:compared|relative|next) (?:to|with)"
    r"|(?:could (?:have|of|ve)? ?(?:sworn|guessed)|thought|assumed|swore) (?:it|that|they|these|those)(?: was| were|s)"
    rf"|beats|unlike|versus|vs)(?: {_ARTICLES})*$"
)
"""Before a load that a set is held against: `felt the same as 72.5`, `easier than the 72.5`."""

JUDGED = re.compile(
    "^"
    + _one_of(
        "is/are/was/were/isnt/wasnt/s/has been/had been/felt/feels/feel/feeling/moved/moves/moving/flew/flies/went up",
        "just/honestly/really/actually/seemed/seems/looked/got/kept/aint/never/did not/didnt",
    )
    + r"\b"
)
"""What begins the words behind a load that is judged: `72.5 was`."""

OPINION = re.compile(
    r"\b"
    + _one_of(
        _ADJECTIVE,
        _MORE_SO,
        "joke/nothing/flew/flying/flies/warm ?ups?/cake/piece of/breeze/childs play/baby/babies/kids/feathers?/air/lol",
        "enough/too/so/boring/bored/dream/butter/well/speed/rocket/cinch/doddle/walk in/chump/laughable/trivial/toy",
        "paper/pillow/empty bar/money/beast/killer/monster/hell/grind/history",
    )
    + r"\b"
)
"""What such a load was like."""

LEFT_BEHIND = re.compile(
    r"\b"
    + _one_of(
        "boring at/bored of/sick of/tired of/over/done with/no point (?:in|doing)/had enough of/fed up (?:of|with)",
        "outgrown/outgrew/too strong for/didnt want(?: to do)?/dont want(?: to do)?",
    )
    + r"(?: (?:the|doing|using|lifting|those|another))*$"
)
"""Before a load that the client is past: `got bored of 72.5`."""

REASONED = re.compile(
    r"\b(?:since|cos|cause|because|as|figured|thought|bc|cuz|reckon|reckoned)(?: (?:the|my|those|these))*$"
)
"""Before a load that is the reason for another: `150 since 145 was moving well`."""

TO_COME = re.compile(
    "^(?:"
    + _one_of(
        "is/s/are/isnt/aint/will be/ll be/would be/should be/might be/could be/gonna be/going to be/looks?/looking",
        "seems?/feels?/must be/has to be/not/definitely/probably/maybe/for sure/def/surely/totally/very/so/pretty",
        "well/really/now/only/just/in/on/a/the/up",
    )
    + " )*"
    + _one_of(
        "doable/possible/feasible/coming/within reach/reach/cards/(?<=is )there/(?<=be )there/soon/close/far off",
        "far away/next/here (?:we|i) (?:come|go)/in sight/in the bag/realistic/on the horizon/horizon/attainable",
        "by (?:christmas|summer|easter|spring|june|july|new year|then|the end)/achievable/waiting",
        "calling(?: me| my name)?/has (?:my|its) name/watch out/inbound/incoming/mine/loading",
        "(?:would|wouldnt|could|couldnt|might|may)(?: not)?(?: have|ve| of) been",
    )
    + r"\b"
)
"""Behind a load that is to come: `77.5 looks doable`."""

LOOKED_TO = re.compile(
    r"\b"
    + _one_of(
        "ready/eyeing/eying/aiming/aim/hoping/gunning/shooting/hunting/chasing/keen/excited/building/working/looking",
        "leaving/saving/keeping/heading/itching/cant wait/bring on/roll on/hello/step closer/closer",
    )
    + r"(?: (?:for|to|at|on|up|towards|try|go|do|hit|use|the|up to|forward|a|get))*$"
)
"""Before a load that is to come: `ready for 77.5`."""

NOT_TAKEN = re.compile(
    r"\b(?:could|should|would|might)(?:ve| have| of| a)? ?(?:ve )?(?:probably |easily |prob )?(?:have |of )?"
    + _one_of("used/done/gone/taken/loaded/started with/picked/put on/tried/managed/gone for/gone to/gone up to")
    + r"(?: (?:for|to|up to|with|the))*$"
)
"""Before a load that was not taken: `could've used 77.5`."""

LATER = ("next", "tomorrow", "in future", "soon")
"""What begins a time to come."""
