"""What stands over a cue: negation, being gone, another person, a hypothesis, the future, laughter."""

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.scene import Scene
from bot.notation.hurt.tokens import Gap, Kind

_REACH = 8
"""Tokens that a negation reaches over."""
_PASSES = word_set(
    """
    any real actual more sign signs of in the to or nor and kind sort hint trace feel felt feeling feels have had
    has having get got getting notice noticed noticing really been be being was is a at all experience experienced
    cause causing caused give gave giving me seem seems think it's it that there today with by no not new weird
    major sharp further longer ever type much felt-any lingering nothing side either even so far left right lower
    upper big single bit like from as such bad serious extra yet suffer suffered this time on during own whatsoever
    anything i'm i've remotely never single nasty other funny strange slight
    """
)
"""Words through which a negation passes on to a cue."""
_ANSWER_NEXT = word_set(
    """
    my i i'm i've the it it's that left right me we
    """
)
"""After these a `no` was an answer, not a negation."""
_SOFTENED = frozenset(["almost", "nearly", "hardly", "mostly"])
_EXCEPTIONS = word_set(
    """
    until till til except apart besides unless aside bar only
    """
)
_QUESTION = word_set(
    """
    does do will would can could should is are did might may
    """
)


def negated(scene: Scene, mark: Mark) -> bool:
    """Whether a negation denies this cue: `no pain`, `knee doesn't hurt`, `pain free`."""
    if _denied_after(scene, mark):
        return True
    for no in scene.of(Cue.NOT):
        if (
            no.end <= mark.first
            and mark.first - no.end <= _REACH
            and _reaches(scene, no, mark)
            and not _excepted(scene, no, mark)
        ):
            return True
    return False


def _denied_after(scene: Scene, mark: Mark) -> bool:
    word, then = scene.word(mark.end), scene.word(mark.end + 1)
    if mark.end < len(scene.tokens) and scene.tokens[mark.end].gap is Gap.HARD:
        alone = mark.end + 1 >= len(scene.tokens) or scene.tokens[mark.end + 1].gap is not Gap.NONE
        return word in ("no", "none", "nope", "nah", "nil") and (alone or then in _ALL_WELL)
    if mark.first and scene.tokens[mark.first - 1].kind is Kind.NUMBER and scene.word(mark.first - 1) == "0":
        return True
    if word in ("free", "none", "nope", "nil", "zero", "zilch", "nada") and scene.word(mark.end + 1) not in (
        "until",
        "except",
    ):
        return True
    if word == "-" and then == "free":
        return True
    return word in ("no", "nah") and (
        mark.end + 1 >= len(scene.tokens) or scene.tokens[mark.end + 1].gap is not Gap.NONE
    )


_ALL_WELL = word_set("all nothing fine good none thanks pain im i'm feeling feels")


def _reaches(scene: Scene, no: Mark, mark: Mark) -> bool:
    if scene.word(no.end - 1) in ("no", "nope", "not", "never", "nothing") and _is_answer(scene, no):
        return False
    if scene.word(no.first - 1) in _SOFTENED or scene.word(no.first - 1) in ("not", "isn't", "wasn't"):
        return False
    if scene.word(no.end - 1) == "without" and _unable_before(scene, no):
        return False
    if "before" in {scene.word(i) for i in range(mark.end, mark.end + 3)} and scene.word(no.first) in _NEVER:
        return False
    parts = {i for s in scene.spots for i in range(s.first, s.end)}
    parts |= {i for m in scene.marks if m.cue in _LISTED for i in range(m.first, m.end)}
    for index in range(no.end, mark.first + 1):
        token = scene.tokens[index]
        if token.gap is Gap.HARD or (token.gap is Gap.SOFT and not _list_goes_on(scene, index, mark)):
            return False
        if index < mark.first and token.word not in _PASSES and index not in parts and not _my_place(scene, index):
            return False
    return True


_NEVER = frozenset({"never", "not", "haven't", "hadn't", "hasn't"})


def _unable_before(scene: Scene, no: Mark) -> bool:
    """`can't bend my knee without pain` has pain in it."""
    return any(scene.word(i) in ("can't", "not", "isn't", "hard") for i in range(no.first - 8, no.first))


def _is_answer(scene: Scene, no: Mark) -> bool:
    """`no my knee hurts`, `no, it hurts`."""
    if no.end >= len(scene.tokens):
        return True
    return scene.word(no.end - 1) in ("no", "nope") and (
        scene.tokens[no.end].gap is not Gap.NONE or scene.word(no.end) in _ANSWER_NEXT
    )


def _my_place(scene: Scene, index: int) -> bool:
    return scene.word(index) in ("my", "'s", "&")


def _list_goes_on(scene: Scene, index: int, mark: Mark) -> bool:
    """A comma inside `no pain, pinching or clicking`."""
    stop = min(index + 6, len(scene.tokens))
    for i in range(index, stop):
        if i > index and scene.tokens[i].gap is not Gap.NONE and i > mark.first:
            return False
        if scene.word(i) in ("or", "nor"):
            return True
        if scene.word(i) in ("my", "but", "i", "is", "it"):
            return False
    return False


def _excepted(scene: Scene, no: Mark, mark: Mark) -> bool:
    """`no pain until the last rep`, `no pain except at the bottom`, `no pain as long as i go light`."""
    for index in range(mark.end, min(mark.end + 9, len(scene.tokens))):
        if not scene.same_sentence(no.first, index):
            return False
        word = scene.word(index)
        if word in _EXCEPTIONS or (word == "other" and scene.word(index + 1) == "than"):
            return True
        if word == "as" and scene.word(index + 1) == "long":
            return True
        if scene.tokens[index].kind is Kind.SET:
            return False
    return False


_LISTED = frozenset(
    {
        Cue.PAIN,
        Cue.HURT,
        Cue.PAINFUL,
        Cue.SHARP,
        Cue.SORE,
        Cue.MARK,
        Cue.JOINT_NOISE,
        Cue.TIGHT,
        Cue.NUMB,
        Cue.FAINT,
        Cue.QUALITY,
        Cue.WHISPER,
    }
    | {Cue.PRESSURE, Cue.WINDED, Cue.HEADACHE, Cue.CONDITION, Cue.INJURED, Cue.BURN, Cue.GOOD, Cue.SEVERE, Cue.WEAK}
)


def gone(scene: Scene, mark: Mark) -> bool:
    """Whether the message says that this is over: `knee pain gone`, `hurt last week, fine now`, `used to hurt`."""
    before_today = any(
        scene.same_sentence(m.first, mark.first) and abs(m.first - mark.first) <= 10 for m in scene.of(Cue.PAST)
    )
    here = any(
        scene.same_sentence(m.first, mark.first) and abs(m.first - mark.end) <= 6
        for m in scene.of(Cue.NOW)
        if scene.word(m.first) not in _TODAY
    )
    for g in scene.of(Cue.GONE):
        if not scene.same_sentence(g.first, mark.first) or _nearly(scene, g):
            continue
        if (
            mark.cue in (Cue.MARK, Cue.POP, Cue.STRAIN, Cue.INJURED)
            and not before_today
            and scene.word(g.first).startswith(("settl", "gone", "calm", "clear", "went"))
        ):
            continue
        near = 0 <= g.first - mark.end <= 6 or 0 <= mark.first - g.end <= 3
        between = range(min(mark.end, g.end), max(mark.first, g.first))
        broken = any(
            scene.word(i) in ("but", "and", "then", "my", "still") or scene.tokens[i].gap is Gap.SOFT for i in between
        )
        if near and not here and (not broken or before_today):
            return True
    if before_today and not here:
        return any(
            f.first > mark.first and f.first - mark.end <= 12 and not negated(scene, f) for f in scene.of(Cue.FINE)
        )
    return False


_TODAY = frozenset(["now", "today", "just", "currently"])


def _nearly(scene: Scene, mark: Mark) -> bool:
    return any(
        scene.word(mark.first - back)
        in ("almost", "nearly", "mostly", "half", "not", "hasn't", "never", "nearly", "until")
        for back in (1, 2)
    )


def long_ago(scene: Scene, mark: Mark) -> bool:
    """History and nothing of today: `hurt my back years ago`."""
    if not any(scene.same_sentence(m.first, mark.first) for m in scene.of(Cue.LONG_AGO)):
        return False
    words = {scene.word(i) for i in range(len(scene.tokens)) if scene.same_sentence(i, mark.first)}
    return not words & {"again", "still", "since", "today", "now", "hurts", "hurting", "flared", "playing"}


def anothers(scene: Scene, mark: Mark, mine: bool | None) -> bool:
    """Whether somebody else hurts: `my mum's knee hurts`, `he fainted`."""
    if mine is not None:
        return not mine
    for index in range(mark.first - 1, -1, -1):
        if not scene.same_sentence(index, mark.first) or mark.first - index > 10:
            return False
        for m in scene.found:
            if m.first <= index < m.end and m.cue is Cue.OTHER:
                return True
            if (
                m.first == index
                and m.cue is Cue.SELF
                and scene.word(index) not in ("me", "mine", "myself")
                and not any(o.cue is Cue.OTHER and o.first == index + 1 for o in scene.found)
            ):
                return False
    return False


def supposed(scene: Scene, mark: Mark) -> bool:
    """An urgent sign only supposed: `what if i pass out`. `I'm going to pass out` is no supposition."""
    return _supposed(scene, mark, Cue.IF) and not any(
        scene.word(i) in ("like", "as") for i in range(mark.first - 4, mark.first)
    )


def hypothetical(scene: Scene, mark: Mark) -> bool:
    """`does this exercise hurt the knee?`, `if it hurts should i stop`, `it will hurt tomorrow`."""
    return _supposed(scene, mark, Cue.IF, Cue.FUTURE) or _general_question(scene, mark)


def _supposed(scene: Scene, mark: Mark, *cues: Cue) -> bool:
    words = {scene.word(i) for i in range(len(scene.tokens)) if scene.same_sentence(i, mark.first)}
    if words & {"again", "still", "already", "keeps", "since"}:
        return False
    for m in scene.of(*cues):
        between = mark.first - m.end
        if not scene.same_sentence(m.first, mark.first) or not 0 <= between <= 6:
            continue
        if scene.word(m.first - 1) in ("was", "like", "were", "felt", "almost") and m.cue is Cue.FUTURE:
            continue
        if any(
            scene.tokens[i].gap is not Gap.NONE
            or scene.word(i) in ("but", "because")
            or (scene.word(i) in ("and", "my") and m.cue is Cue.FUTURE)
            for i in range(m.end, mark.first + 1)
        ):
            continue
        return True
    return False


def _general_question(scene: Scene, mark: Mark) -> bool:
    """A question of an exercise and a place in general, not of the client's own hurt."""
    first = mark.first
    while first > 0 and scene.tokens[first].gap is not Gap.HARD:
        first -= 1
    inside = range(first, mark.first)
    asks = [
        i
        for i in inside
        if scene.word(i) in _QUESTION
        and (
            i == first
            or scene.word(i - 1)
            in ("how", "why", "coach", "hi", "hey", "question", "quick", "when", "and", "so", "btw")
        )
    ]
    if not asks:
        return False
    mine = any(
        scene.word(i) in ("my", "i", "it", "me", "i'm") for i in range(asks[0], min(mark.end + 3, len(scene.tokens)))
    )
    return not mine and mark.cue in (Cue.HURT, Cue.PAIN, Cue.PAINFUL, Cue.WHISPER, Cue.STRAIN, Cue.INJURED)


def laughed(scene: Scene, mark: Mark) -> bool:
    """Laughter in the same sentence, or right after it."""
    return any(abs(scene.sentence[m.first] - scene.sentence[mark.first]) <= 1 for m in scene.of(Cue.LAUGH))
