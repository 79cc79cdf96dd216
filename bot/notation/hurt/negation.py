"""Whether a negation denies a cue: `no pain`, `knee doesn't hurt`, `pain free`."""

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.denied_lists import ASKED, answered_no, is_the_answer, listed_none, none_of_these, zero_of
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.tokens import Gap, Kind

_REACH = 8
"""Tokens that a negation reaches over."""
_PASSES = word_set(
    """
    an any real actual more sign signs of in the to or nor and kind sort hint trace feel felt feeling feels have had
    has having get got getting notice noticed noticing really been be being was is a at all experience experienced
    cause causing caused give gave giving me seem seems think it's it that there today with by no not new weird
    major sharp further longer ever type much lingering nothing side either even so far left right lower upper big
    single bit like from as such bad serious extra yet suffer suffered this time on during own whatsoever anything
    i'm i've remotely never once one nasty other funny strange slight my 's &
    """
)
"""Words through which a negation passes on to a cue."""
_LIFTS = word_set(
    """
    bench benching press presses pressing row rows rowing squat squats squatting deadlift deadlifts deadlifting deads
    hinge hinging pull pulls pulling push pushing curl curls curling lunge lunges lunging dip dips dipping chin chins
    incline overhead ohp rdl fly flyes flies thrust thrusts plank planks raise raises extension extensions step jump
    jumping landing walking running lifting training gripping lockout bottom top
    """
)
"""What hurts where it is done, straight between a denial and its pain: `60x10, no press pain`."""
_ANSWER_NEXT = word_set("my i i'm i've the it it's that left right me we")
"""After these a `no` was an answer, not a negation."""
_AFTER_EFFORT = word_set("and but so then in")
"""Behind `nothing left` these tell it to be the effort of a set: `nothing left and low back pinched`."""
_SOFTENED = word_set("almost nearly hardly mostly not isn't wasn't")
_EXCEPTIONS = word_set("until till til except apart besides unless aside bar only")
_BUT_FOR = word_set("the one a for when on that at in")
"""Behind `bar` these tell an exception, `no pain bar the last one`; otherwise it is what is lifted."""
_HARMLESS = word_set(
    "tired tight stiff tightness stiffness fatigue fatigued tiredness pump pumped soreness doms effort"
)
"""After `not pain, only …` these are no exception."""
_NEVER = word_set("never not haven't hadn't hasn't")
_THIS = word_set("this so")
"""Behind a `never` these say that it is more than ever: `never been this bad`."""
_DENIALS = word_set("free none nope nil zero zilch nada nowhere")
_ALL_WELL = word_set("just all nothing fine good none thanks im i'm feeling feels")
_ASKING = word_set("any do does did is are have had was were how")
"""What a sentence begins with that asks."""
_LISTED = (
    *(Cue.PAIN, Cue.HURT, Cue.PAINFUL, Cue.SHARP, Cue.SORE, Cue.MARK, Cue.JOINT_NOISE, Cue.TIGHT, Cue.NUMB),
    *(Cue.FAINT, Cue.QUALITY, Cue.WHISPER, Cue.PRESSURE, Cue.WINDED, Cue.HEADACHE, Cue.CONDITION, Cue.INJURED),
    Cue.BREATHLESS,
    *(Cue.BURN, Cue.GOOD, Cue.SEVERE, Cue.WEAK, Cue.HOT, Cue.SWOLLEN, Cue.THICK),
)
"""Cues through which a negation passes on to another: `no pain or clicking`."""


def negated(scene: Passage, mark: Mark) -> bool:
    """Whether a negation stands over this cue and reaches it."""
    return scene.once("negated", mark, lambda: _negated(scene, mark))


def negated_word(scene: Passage, index: int) -> bool:
    """The same of a single word, whatever it means."""
    return _negated(scene, Mark(index, index + 1, None))


def _negated(scene: Passage, mark: Mark) -> bool:
    if (
        _denied_after(scene, mark)
        or _nobody_hurt(scene, mark)
        or answered_no(scene, mark)
        or is_the_answer(scene, mark)
        or none_of_these(scene, mark)
        or zero_of(scene, mark)
        or (scene.word(mark.first - 1) == "0" and mark.first > 0)
    ):
        return True
    nots = [n for n in scene.of(Cue.NOT) if 0 <= mark.first - n.end <= _REACH]
    if any(_reaches(scene, n, mark) and not _excepted(scene, n, mark) for n in nots):
        return True
    return any(listed_none(scene, n, mark) for n in scene.of(Cue.NOT) if n.end <= mark.first)


def _nobody_hurt(scene: Passage, mark: Mark) -> bool:
    return scene.word(mark.first - 1) in ("nobody", "noone", "no-one") and scene.word(mark.first) == "hurt"


def _is_asked(scene: Passage, mark: Mark) -> bool:
    """Whether the sentence of a mark asks: `any chest pain? no pain`; not `my foot is numb. no pain though`."""
    first = mark.first
    while first > 0 and scene.same_sentence(first - 1, mark.first):
        first -= 1
    return scene.word(first) in _ASKING or bool(scene.sentence_words(mark.first) & ASKED)


def _denied_after(scene: Passage, mark: Mark) -> bool:
    """`pain free`, `pain: none`, `any pain? no`."""
    word, then = scene.word(mark.end), scene.word(mark.end + 1)
    if mark.end < len(scene.tokens) and scene.tokens[mark.end].gap is Gap.HARD:
        well = then in _ALL_WELL or (then == "pain" and _is_asked(scene, mark))
        return word in ("no", "none", "nope", "nah", "nil") and (scene.ends(mark.end + 1) or well)
    if word == "free" and scene.clause_before(mark.first, 6) & {"can't", "not", "isn't", "won't"}:
        return False
    if word in _DENIALS - {"free"} and mark.end + 1 in scene.hurting:
        return False  # `i wet myself, zero shoulder pain`
    if word in _DENIALS:
        if then == "of" and scene.word(mark.end + 2) not in _OF_IT:
            return False  # `fainted, none of the other signs`
        till_now = then == "of" and scene.words(mark.end + 2, mark.end + 6) & _TILL_NOW
        return then not in ("until", "except") and not till_now
    if word in ("actually", "or", "well") and then in _DENIALS - {"free"}:
        return True
    return word in ("no", "nah") and scene.ends(mark.end + 1)


_OF_IT = word_set("it that them those these which")
_TILL_NOW = word_set("before until till except today yesterday")
"""Behind `none of it` these tell that there is now: `asked about fainting, none of it before today`."""


def _reaches(scene: Passage, no: Mark, mark: Mark) -> bool:
    last = scene.word(no.end - 1)
    if (
        scene.word(no.first - 1) in _SOFTENED
        or _weighed(scene, no)
        or (last in ("no", "nope") and _is_answer(scene, no))
    ):
        return False
    if last == "not" and scene.word(no.end) == "me" and scene.ends(no.first) and scene.word(no.end + 1).endswith("ing"):
        return False
    if last == "nothing" and scene.word(no.end) == "left" and scene.word(no.end + 1) in _AFTER_EFFORT:
        return False
    if last == "without" and scene.words(no.first - 8, no.first) & {"can't", "not", "isn't", "hard"}:
        return False
    if last == "none" and scene.word(no.end) == "of" and scene.word(no.end + 1) in _OF_IT:
        whole = scene.ends(no.end + 2) or scene.word(no.end + 2) in ("and", "but", "so", "though")
        if whole:
            return False  # `i've none of it and my chest is tight`
    never = scene.word(no.first) in _NEVER
    more = scene.word(mark.first - 1) in _THIS or "such" in scene.words(no.end, mark.first)
    if never and (more or scene.words(mark.end, mark.end + 3) & {"before", "like"}):
        return False
    if (never or last == "don't") and _had_one(scene, mark):
        return False
    if scene.word(mark.first) == "can't" and scene.soft_gaps(no.end, mark.first + 1):
        return False  # `no pain, can't breathe or talk`
    parts = scene.once("parts", scene.found[0], lambda: _parts(scene))
    for index in range(no.end, mark.first + 1):
        token = scene.tokens[index]
        if token.gap is Gap.HARD or (token.gap is Gap.SOFT and not _list_goes_on(scene, index, mark)):
            return False
        if token.word in ("and", "plus") and _is_new(scene, index, mark):
            return False
        if token.word in ("and", "plus") and not scene.words(no.end, index).isdisjoint(("or", "nor")):
            return False  # `negative for a, b or c and my pee is brown`
        lift = index == no.end == mark.first - 1 and token.word in _LIFTS
        if index < mark.first and token.word not in _PASSES and index not in parts and not lift:
            return False
    return True


def _is_new(scene: Passage, joins: int, mark: Mark) -> bool:
    """Whether an `and` begins what is told by itself: `no shoulder pain and my left arm is numb`."""
    then = scene.word(joins + 1)
    again = then == "chest" and "pain" in scene.words(joins - 3, joins)  # `no back pain and chest pain`
    if then in _SOMEBODY or then == "worst" or again or (joins + 1 == mark.first and then in _REFUSES):
        return True
    places = {i for s in scene.spots for i in range(s.first, s.end)}
    happened = scene.word(mark.first).endswith("ed") and set(range(joins + 1, mark.first)) <= places
    if happened and mark.first > joins + 1:
        return True  # `no shoulder pain and knee popped`
    told = scene.words(joins + 1, mark.end + 1) & _TELLS or scene.word(mark.first) in _REFUSES
    return then in ("my", "i", "the", "both") and bool(told)


_SOMEBODY = word_set("someone somebody something")
_TELLS = word_set("is 's are was were feels felt went goes gone been has")
_REFUSES = word_set("won't can't doesn't isn't wouldn't")
_HAVING = word_set("got get have had having getting gave felt with but yet this and when until")
_CAME = word_set("came come comes hit arrived struck started appeared just now has is in during on off mid out from")
_ANOTHER = word_set("set sets rep reps more left last round year years ago as")


def _had_one(scene: Passage, mark: Mark) -> bool:
    """`never had a bad head in my life, got one off that pull`, `i don't get headaches, but one just hit me`."""
    for index in range(mark.first + 1, min(mark.end + _FAR_ONE, len(scene.tokens))):
        if not scene.same_sentence(mark.first, index):
            return False
        if scene.word(index) == "one" and scene.word(index - 1) in _HAVING and scene.word(index + 1) in _CAME:
            return not scene.words(index + 1, index + 3) & _ANOTHER
    return False


_FAR_ONE = 10
"""Words behind a hurt in which `one` speaks of it."""


def _parts(scene: Passage) -> frozenset[int]:
    """The tokens of places and of cues that stand in a list."""
    spans = [(s.first, s.end) for s in scene.spots] + [(m.first, m.end) for m in scene.of(*_LISTED)]
    return frozenset(i for first, end in spans for i in range(first, end))


def _weighed(scene: Passage, no: Mark) -> bool:
    """`maybe pain, maybe not pain`: both are said, so it is in doubt."""
    lead = scene.word(no.first - 1)
    return lead in _MAYBE and lead in scene.words(no.first - 6, no.first - 1)


_MAYBE = word_set("maybe perhaps possibly might could")


def _is_answer(scene: Passage, no: Mark) -> bool:
    """`no my knee hurts`, `no, it hurts`."""
    return scene.ends(no.end) or scene.word(no.end) in _ANSWER_NEXT


def _list_goes_on(scene: Passage, index: int, mark: Mark) -> bool:
    """A comma inside `no pain, pinching or clicking`."""
    for i in range(index, min(index + 6, len(scene.tokens))):
        if i > index and i > mark.first and scene.tokens[i].gap is not Gap.NONE:
            return False
        if scene.word(i) in ("or", "nor"):
            return True
        if scene.word(i) in ("my", "but", "i", "is", "it"):
            return False
    return False


def _excepted(scene: Passage, no: Mark, mark: Mark) -> bool:
    """`no pain until the last rep`, `no pain except at the bottom`, `no pain as long as i go light`."""
    for index in range(mark.end, min(mark.end + 9, len(scene.tokens))):
        if not scene.same_sentence(no.first, index) or scene.tokens[index].kind is Kind.SET:
            return False
        word, then = scene.word(index), scene.word(index + 1)
        harmless = word == "only" and scene.words(index + 1, index + 5) & _HARMLESS
        lifted = word == "bar" and then not in _BUT_FOR
        if (word in _EXCEPTIONS and not (harmless or lifted)) or (word, then) in (("other", "than"), ("as", "long")):
            return True
    return False
