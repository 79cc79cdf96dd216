"""Whose hurt it is, whether it is only supposed, and whether it was laughed off."""

from collections.abc import Sequence

from bot.notation.hurt.as_if import is_nobody, only_tells
from bot.notation.hurt.cues import Cue
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.no_body import is_nobodys
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.spots import SIDES, Spot
from bot.notation.hurt.tokens import Gap, Kind

_ONGOING = word_set("again still already keeps since")
_QUESTION = word_set("does do will would can could should is are did might may")
_OPENERS = word_set("what how why coach hi hey question quick when and so btw")
_OF_ME = word_set("my i it me i'm")
_ASKED_OF = (Cue.HURT, Cue.PAIN, Cue.PAINFUL, Cue.WHISPER, Cue.STRAIN, Cue.INJURED)


def anothers(scene: Passage, mark: Mark, mine: bool | None) -> bool:
    """Whether somebody else hurts: `my mum's knee hurts`, `he fainted`. `mine` is what the place itself says."""
    if _is_animals(scene, mark) or is_nobodys(scene, mark):
        return True
    if mine is not None:
        return not mine
    if any(scene.word(i) == "my" and _is_of_me(scene, i + 1) for i in range(mark.first, mark.end)):
        return False
    return scene.once("anothers", mark, lambda: _anothers(scene, mark))


def _is_of_me(scene: Passage, at: int) -> bool:
    """Whether what is mine is a place or a breath: `my dad fainted and i can't catch my breath`; not `my dad`."""
    return at in scene.begins or scene.word(at) in _OF_LIFE


_OF_LIFE = word_set("breath breathing life heart pulse pee wee urine bladder balance")
_CALVES = word_set("calf calves")
_HERD = word_set("our heifer bull cow dairy newborn suckler")
"""Before `calves` these say whose young they are; not `got a swollen calf, dog to the vet later`."""
_OF_ANIMALS = word_set(
    "vet vets farm cow cows cattle herd heifer heifers hock byre udder bull calving suckler dairy bullock"
)


def _is_animals(scene: Passage, mark: Mark) -> bool:
    """`one of the heifer calves has a hot swollen joint`: of a young cow, and no lower leg."""
    said = scene.sentence_words(mark.first)
    if not said & _CALVES or not said & _OF_ANIMALS:
        return False
    calves = [i for i in range(len(scene.tokens)) if scene.word(i) in _CALVES and scene.same_sentence(i, mark.first)]
    return any(scene.words(i - 3, i) & _HERD and not scene.words(i - 2, i) & {"my", "left", "right"} for i in calves)


def is_anothers_place(scene: Passage, spot: Spot) -> bool:
    """Whether a place is somebody else's: `the da has a bad chest`, whatever is said of it."""
    if is_nobodys(scene, Mark(spot.first, spot.end, None)):
        return True
    return not spot.mine if spot.mine is not None else _anothers(scene, Mark(spot.first, spot.end, None))


def _anothers(scene: Passage, mark: Mark) -> bool:
    others = scene.of(Cue.OTHER)
    if not others:
        return False
    selves = {m.first for m in scene.of(Cue.SELF) if scene.word(m.first) not in ("me", "mine", "myself")}
    for index in range(mark.first - 1, max(mark.first - 11, -1), -1):
        if not scene.same_sentence(index, mark.first):
            return False
        other = next((m for m in others if m.first <= index < m.end), None)
        if other is not None and (_of_a_place(scene, other) or scene.word(other.end) == "here"):
            return False
        if other is not None and (
            _is_addressed(scene, other) or _once_was(scene, other) or is_nobody(scene, other, mark)
        ):
            continue
        owns = other is not None and scene.word(other.end) == "'s" and not scene.soft_gaps(other.end, mark.first + 1)
        if other is not None and owns and mark.first - other.end in (1, 2):
            return True
        if other is not None and (_only_there(scene, other, mark) or _has_own_clause(scene, other, mark)):
            return False
        if other is not None and not scene.words(other.end, other.end + 3) & _BESIDE and not _to_me(scene, other):
            return True
        if index in selves and not any(o.first == index + 1 for o in others):
            return False
    return _is_of_place_of(scene, mark, others, selves)


_FAR_OWNED = 16
"""Words behind somebody's place in which everything is said of it."""


def _is_of_place_of(scene: Passage, mark: Mark, others: Sequence[Mark], selves: set[int]) -> bool:
    """`the wee man's calf is all hot and swollen from a bee sting`: said of somebody's place, far behind it."""
    for other in others:
        owned = scene.word(other.end) == "'s" and any(0 < s.first - other.end <= _NEXT for s in scene.spots)
        near = 0 < mark.first - other.end <= _FAR_OWNED and scene.same_sentence(other.first, mark.first)
        if owned and near and selves.isdisjoint(range(other.end, mark.first)):
            return not scene.soft_gaps(other.end, mark.first + 1)
    return False


_NEXT = 2


def _once_was(scene: Passage, other: Mark) -> bool:
    """`as a kid`, `when i was a child`: the client, long ago."""
    at = other.first + (scene.word(other.first) == "a")
    before = [scene.word(i) for i in range(at - 3, at)]
    return before[1:] == ["as", "a"] or before == ["i", "was", "a"]


def _only_there(scene: Passage, other: Mark, mark: Mark) -> bool:
    """Whether somebody is only there in what the client did, and the hurt is told apart from it.

    `ran for the bus with the kids, chest pain`, `lifted the baby out of the cot and back twinged`; not `took the da to
    hospital, chest pain`, `saw a guy stumble and pass out`.
    """
    if scene.word(other.end) == "so" and not scene.ends(other.end):
        return True
    at = other.first - 1
    while at >= 0 and scene.word(at) in _THEIR and not scene.ends(at + 1):
        at -= 1
    opens = at < 0 or scene.ends(at + 1) or scene.word(at) in _OPENS
    apart = scene.soft_gaps(other.end, mark.first + 1) or scene.words(other.end, mark.first) & _APART
    if opens or not apart:
        return False
    return not scene.sentence_words(other.first) & _CARED_FOR and not scene.words(at - 2, at + 1) & _WITNESSED


def _has_own_clause(scene: Passage, other: Mark, mark: Mark) -> bool:
    """Whether the hurt place opens a clause of its own: `somebody has the bar, left knee hurts a bit`.

    Not `my gran is in hospital, hip broken`.
    """
    starts = [i for i in range(other.end, mark.first + 1) if scene.tokens[i].gap is Gap.SOFT]
    apart = scene.words(other.first - 3, other.first) & _TOLD_OF or (starts and starts[-1] > other.end)
    if not starts or not apart:
        return False
    at = starts[-1]
    at += scene.word(at) in ("but", "and", "so", "now")
    placed = any(at <= spot.first <= at + (scene.word(at) in SIDES) for spot in scene.spots)
    told = scene.sentence_words(other.first) & (_CARED_FOR | _HURTING)
    return placed and not told and not scene.words(other.first - 4, other.first) & _SEEN


_TOLD_OF = word_set("was is it that for with to from at")
"""Before somebody these make a clause: `that was my brother's set, knee hurts`; not `my gran, hip broken`."""
_SEEN = word_set("saw seen watched seeing watching found heard hearing worried about")
_HURTING = word_set(
    "limping injured fell falling crashed broke broken collapsed operated stent bypass scan heart stroke transplant"
)
_THEIR = word_set("the my our a an his her me their new old little wee this that some")
_OPENS = word_set("and but because so when while since if that then as after like hi hey where before though although")
_APART = word_set("and so but then now")
_CARED_FOR = word_set(
    """
    hospital hospitals ward icu er ed casualty ambulance doctor doctors doc gp surgery op operation clinic vet vets
    paramedics emergency dentist funeral minding e
    """
)
"""Words of a sentence that is of another's illness; `e` is what is left of `a&e`."""
_WITNESSED = word_set("saw seen watched seeing watching found heard hearing is was had has having had worried about")


def _is_addressed(scene: Passage, other: Mark) -> bool:
    """The `mate` of `g'day mate, left wrist is tender`, `calf raise mate 45x13`: the coach, and nobody who hurts."""
    alone = other.end - other.first == 1 and scene.word(other.first) in _ADDRESSED
    if not alone or scene.word(other.first - 1) in _WHOSE or other.end >= len(scene.tokens):
        return False
    after = scene.tokens[other.end]
    return after.gap is not Gap.NONE or after.kind is not Kind.WORD or scene.word(other.first - 1) in _GREETING


_ADDRESSED = word_set("mate buddy boss fella chap friend trainer instructor")
_WHOSE = word_set("my a the his her our another gym training some this that old their your best an workout lifting one")
_GREETING = word_set(
    "g'day hi hey hiya hello dear sorry good morning evening ok okay cheers thanks sorry yes yeah right well afternoon"
)


def _of_a_place(scene: Passage, other: Mark) -> bool:
    """`the knee he is hurting`, `my shoulder she cries`: the place itself, by those whose language gives it a sex."""
    sexed = scene.word(other.first) in ("he", "she")
    mine = scene.word(other.first - 2) in ("the", "my") and scene.word(other.first - 1) in _OWN
    return sexed and (mine or any(s.end == other.first for s in scene.spots))


_OWN = word_set("pee urine wee piss pipi water breath breathing vision sight speech bladder")


def _to_me(scene: Passage, other: Mark) -> bool:
    """Whether they only hear of it, or did it to the client: `don't tell the wife`, `someone kicked me in the shin`.

    Not `the guy next to me`.
    """
    if scene.words(other.end, other.end + 3) & _TOLD_ME:
        return False
    if scene.words(other.first - 3, other.first) & _HEARERS:
        return True
    return any(scene.word(i) == "me" and scene.word(i - 1) not in _NEAR_ME for i in range(other.end + 1, other.end + 5))


_HEARERS = word_set("tell telling told texted messaged worry worrying scare see seeing ask asking consult")
_NEAR_ME = word_set("to by beside opposite near behind with for than near like unlike of from around")
_TOLD_ME = word_set("told tells telling asked asks texted rang called says said showed sent emailed messaged let")
"""With `me` these only tell; whatever else somebody does to `me` is the client's: `someone kicked me in the shin`."""
_BESIDE = word_set(
    """
    saw sees noticed watching watched watches barking looking laughing shouting cheering filming staring spotting
    spotted clapped clapping laughed cheered nodded asked said says say reckons thinks wants insists made thought
    """
)
"""What others do beside the client, who is hurt: `the cat watching, calf is swollen`."""


def supposed(scene: Passage, mark: Mark) -> bool:
    """An urgent sign only supposed: `what if i pass out`. `I'm going to pass out` is no supposition."""
    if scene.words(mark.first - 7, mark.first) & {"like", "as"}:
        return False
    return _under(scene, mark, Cue.IF)


def hypothetical(scene: Passage, mark: Mark) -> bool:
    """`does this exercise hurt the knee?`, `if it hurts should i stop`, `it will hurt tomorrow`."""
    return _under(scene, mark, Cue.IF, Cue.FUTURE) or _general_question(scene, mark)


def _under(scene: Passage, mark: Mark, *cues: Cue) -> bool:
    if scene.sentence_words(mark.first) & _ONGOING or _cannot_without(scene, mark):
        return False
    for m in scene.of(*cues):
        if not scene.same_sentence(m.first, mark.first) or not 0 <= mark.first - m.end <= 6:
            continue
        if m.cue is Cue.FUTURE and scene.word(m.first - 1) in ("was", "like", "were", "felt", "almost"):
            continue
        now = scene.words(m.first, m.end + 1) == {"if", "my"} and scene.words(m.end, mark.first) & _AS_IT_IS
        if now and not scene.words(m.first - 4, m.first) & _TO_TELL:
            continue
        if _may_be(scene, m, mark) or only_tells(scene, m, mark):
            continue
        if m.cue is Cue.IF and _came_true(scene, mark.end):
            continue
        if scene.word(m.first) in ("could", "can") and scene.word(m.end) in _SENSES:
            continue
        if m.cue is Cue.IF and scene.word(m.first) == "to" and scene.word(m.first - 1) in ("had", "have"):
            continue
        if m.cue is Cue.IF and (scene.word(m.first - 1), scene.word(m.first)) == ("as", "if"):
            continue  # `felt as if somebody kicked me`
        breaks = {"but", "because"} | ({"and", "my"} if m.cue is Cue.FUTURE else set())
        between = range(m.end, mark.first + 1)
        if m.cue is Cue.FUTURE and any(scene.word(i) == "and" and _opens_place(scene, i + 1) for i in between):
            continue
        if not any(scene.tokens[i].gap is not Gap.NONE or scene.word(i) in breaks for i in between):
            return True
    return False


def _may_be(scene: Passage, future: Mark, mark: Mark) -> bool:
    """`might be pain in my right elbow`: how it is now, in doubt; not `could be sore tomorrow`."""
    maybe = scene.word(future.first) in ("might", "could") and scene.word(future.end) == "be"
    named = mark.cue in (Cue.PAIN, Cue.SHARP) and 1 <= mark.first - future.end <= 4
    led = not scene.ends(mark.end) and scene.word(mark.end) in ("in", "at", "behind", "around")
    return maybe and named and led and not scene.sentence_words(mark.first) & _LATER


_LATER = word_set("tomorrow later if next after when week will longer cause because monday avoid")


def _opens_place(scene: Passage, at: int) -> bool:
    """Whether a place stands here, its side before it or not: `will train later and left knee hurts`."""
    return not scene.begins.isdisjoint((at, at + (scene.word(at) in SIDES)))


def _came_true(scene: Passage, first: int) -> bool:
    """Whether what is supposed is said to be so right behind: `what if my knee pinches? it did just now`."""
    for index in range(first, min(first + _NEAR_TRUE, len(scene.tokens))):
        if scene.sentence[index] - scene.sentence[first - 1] > 1:
            return False
        if scene.tokens[index].kind is Kind.SCORE:
            return True  # `do i go on if the achilles aches? its a 2/10`
        two = (scene.word(index), scene.word(index + 1))
        if scene.word(index + 2)[:1].isdigit():
            continue
        if (two in _TRUE or two[0] in _HAPPENED) and not scene.words(index - 1, index + 4) & _UNTRUE:
            return True
    return False


_NEAR_TRUE = 10
"""Words behind what is supposed in which it is said to be so."""
_TRUE = frozenset({("it", "did"), ("it", "does"), ("just", "did"), ("did", "just"), ("did", "now"), ("did", "today"),
                   ("did", "so"), ("they", "do"), ("they", "did"), ("mine", "does"), ("mine", "did")})  # fmt: skip
_HAPPENED = word_set("happened happening")
_UNTRUE = word_set("n't not never if didn't doesn't fine ok okay well good before last once")
_AS_IT_IS = word_set("is 's feels feel are")
"""Behind `if my knee` these tell how it is: `should i skip these if my elbow is a bit sore?`."""
_TO_TELL = word_set("tell know say shout report update message text what worry wonder see")
"""Before `if` these tell of later: `i'll let you know if my knee is bad`."""
_SENSES = word_set("feel sense tell see hear only hardly barely")
"""Behind `could` and `can` these tell what was or is: `could feel the old shoulder`, `can feel a pain`."""


def _cannot_without(scene: Passage, mark: Mark) -> bool:
    """`can't lift my arm without it hurting`."""
    before = scene.words(mark.first - 12, mark.first)
    return "without" in scene.words(mark.first - 3, mark.first) and bool(before & {"can't", "hard", "impossible"})


def _general_question(scene: Passage, mark: Mark) -> bool:
    """A question of an exercise and a place in general, not of the client's own hurt."""
    if mark.cue not in _ASKED_OF:
        return False
    first = scene.sentence.index(scene.sentence[mark.first])
    for index in range(first, mark.first):
        if (
            not scene.soft_gaps(index + 1, mark.first)
            and _asks(scene, index)
            and "but" not in scene.words(index, mark.first)
            and not any(scene.word(i) == "and" and _opens_place(scene, i + 1) for i in range(index, mark.first))
            and (
                index == first
                or (scene.ends(index) and scene.word(index - 1) not in SIDES)
                or scene.word(index - 1) in _OPENERS
            )
        ):
            later = any(0 <= m.first - mark.end <= 4 for m in scene.of(Cue.IF) if scene.same_sentence(m.first, index))
            return later or not scene.words(index, mark.end + 3) & _OF_ME
    return False


def _asks(scene: Passage, index: int) -> bool:
    """`does it`, `is this`; `did 9 at 80` tells."""
    word, after = scene.word(index), scene.word(index + 1)
    if word in ("could", "can") and after in _SENSES:
        return False
    return word in _QUESTION and (word != "did" or after in _SUBJECTS)


_SUBJECTS = word_set("you he she they it that this these those anyone anybody anything somebody someone everyone")


LAUGHING = word_set("laughing laughter giggling giggles")
"""What takes breath and is no sign: `can't breathe for laughing`."""


def laughed(scene: Passage, mark: Mark) -> bool:
    """Laughter in the same sentence, or right beside it."""
    return any(abs(scene.sentence[m.first] - scene.sentence[mark.first]) <= 1 for m in scene.of(Cue.LAUGH))
