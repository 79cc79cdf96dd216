"""A place without a word of hurt: likened, struck, named alone, or the reason for cutting short."""

from bot.notation.hurt.matching import Mark
from bot.notation.hurt.negation import negated
from bot.notation.hurt.over import gone, long_ago
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.places import Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.spots import Spot
from bot.notation.hurt.tokens import Gap, Kind

_CUT = word_set(
    """
    bin binned skip skipped skipping stop stopped stopping cut drop dropped left bailed bail swapped modified lighter
    light rest resting no can't won't didn't avoid avoided avoiding swap switched lowered shortened gave only
    """
)


_SIMILES_OF_WELL = word_set(
    """
    new butter dream magic million steel rock normal silk charm before ready best nothing clockwork working helping
    stretching better good great fine usual always should supposed warm loose pump pumped fire gold
    """
)


def likened(scene: Passage) -> list[tuple[Mark, Spot]]:
    """`kneecap feels like it's sliding`: a joint likened to something that is not well."""
    out: list[tuple[Mark, Spot]] = []
    for spot in scene.spots:
        feels = scene.word(spot.end) in _FEELS and scene.word(spot.end + 1) == "like"
        joint = spot.place.tissue in (Tissue.JOINT, Tissue.MIXED) and not spot.place.plural
        first = spot.end + 2
        if not feels and _likens_before(scene, spot):
            feels, first = True, spot.end
        if not (feels and joint) or first >= len(scene.tokens) or scene.tokens[first].kind is not Kind.WORD:
            continue
        well = scene.words(first, first + 6) & _SIMILES_OF_WELL
        mark = Mark(spot.end, spot.end + 2, None, spot.place)
        if not well and spot.mine is not False and not negated(scene, mark):
            out.append((mark, spot))
    return out


_FEELS = ("feels", "felt", "feeling", "feel")


def _likens_before(scene: Passage, spot: Spot) -> bool:
    """`feels like my kneecap wants out the side`."""
    at = spot.first - 1
    while scene.word(at) in ("my", "the", "left", "right"):
        at -= 1
    return (
        at < spot.first - 1 and scene.word(at) == "like" and scene.word(at - 1) in _FEELS and not scene.ends(spot.end)
    )


_FELL = word_set("dropped drop dropping landed fell fallen rolled")
_TROD = word_set("stood trod trodden stepped stamped stomped sat")
_UNDERFOOT = word_set("toe foot finger hand ankle")
_CAME = word_set("came coming crashed crashing slammed smashed slipped")
_CARELESS = word_set("ball smoothly gently softly lightly")


def struck(scene: Passage) -> list[tuple[Mark, Spot]]:
    """`dropped a 2.5 on my big toe`."""
    out: list[tuple[Mark, Spot]] = []
    for spot in scene.spots:
        low = spot.first - (1 if spot.side else 0) - 1
        on = scene.word(low) in ("my", "me", "the") and scene.word(low - 1) in ("on", "onto")
        fell = [
            i
            for i in range(max(0, low - 7), low)
            if scene.word(i) in _FELL and scene.same_sentence(i, low) and not _is_set(scene, i, spot)
        ]
        trod = scene.words(low - 4, low) & _TROD and not spot.place.plural and spot.place.name in _UNDERFOOT
        if on and trod and not fell:
            fell = [i for i in range(max(0, low - 4), low) if scene.word(i) in _TROD]
        came = [i for i in range(max(0, low - 5), low) if scene.word(i) in _CAME and scene.same_sentence(i, low)]
        if on and not fell and spot.place.tissue is Tissue.JOINT and not spot.place.plural:
            fell = [i for i in came if scene.word(i) not in ("came", "coming") or scene.word(i + 1) == "down"]
        near_miss = bool(fell) and scene.words(fell[0] - 2, fell[0]) & {"nearly", "almost", "narrowly"}
        if (
            on
            and fell
            and not near_miss
            and spot.place.tissue is not Tissue.CHEST
            and not scene.words(fell[-1], low) & _CARELESS
        ):
            mark = Mark(fell[-1], spot.end, None, spot.place)
            if not gone(scene, mark) and not long_ago(scene, mark):
                out.append((mark, spot))
    return out


_OF_A_SET = word_set("the a my that this last final forgot forget log logged missed first second set triple double")


def _is_set(scene: Passage, at: int, spot: Spot) -> bool:
    """The `drop` of `drop on the calves was 40 for 11`, `drop set on my quads 40x11`: lighter sets of an exercise."""
    if scene.word(at) != "drop":
        return False
    named = scene.word(at - 1) in _OF_A_SET or scene.word(at + 1) in ("set", "sets")
    told = any(scene.word(i)[:1].isdigit() for i in range(spot.end, min(len(scene.tokens), spot.end + 4)))
    return named or told


_NOTHING_ELSE = word_set(
    """
    it's it is 's its only just mainly mostly my the old bad same usual again today this time still yeah sorry tonight
    oh ah and but i'm me that that's left right there got have i of mine afraid a bit little touch
    """
)


_TOLD = word_set("it's it same usual again only mine got bit")


def named_alone(scene: Passage) -> list[tuple[Mark, Spot]]:
    """`it's only my knee`, `same old hip again`: a joint is named, and nothing else."""
    out: list[tuple[Mark, Spot]] = []
    for spot in scene.spots:
        joint = spot.place.tissue in (Tissue.JOINT, Tissue.MIXED) and not spot.place.plural
        low, high = spot.first, spot.end
        while low > 0 and scene.tokens[low].gap is Gap.NONE and scene.tokens[low - 1].kind is Kind.WORD:
            low -= 1
        while high < len(scene.tokens) and not scene.ends(high) and scene.tokens[high].kind is Kind.WORD:
            high += 1
        if high < len(scene.tokens) and scene.tokens[high].gap is Gap.SOFT and scene.word(high) in ("again", "same"):
            high += 1
        dismissed = low > 0 and scene.tokens[low].gap is Gap.SOFT and _dismissed(scene, low)
        around = scene.words(low, spot.first) | scene.words(spot.end, high) | ({"that", "it"} if dismissed else set())
        only = around <= _NOTHING_ELSE and around & _TOLD and scene.ends(high)
        told = around & {"my", "old", "bad", "again", "that", "mine"} or (scene.word(spot.first - 1) == "of")
        if joint and only and told and spot.mine is not False:
            out.append((Mark(low, high, None, spot.place), spot))
    return out


_SMALL = word_set("nothing fine ok okay minor serious major big deal worry worries panic silly tiny small niggly")
_AND_SO_ON = word_set(
    "it's it is 's i'm im i am no not don't all probably prob only just a too so really very to thing"
)


def _dismissed(scene: Passage, end: int) -> bool:
    """`its nothing, elbow`, `i'm fine, just the neck`: all that is said before is that it is nothing much."""
    first = end
    while first > 0 and scene.tokens[first].gap is not Gap.HARD and end - first < 5:
        first -= 1
    said = scene.words(first, end)
    return scene.tokens[first].gap is Gap.HARD and said <= _SMALL | _AND_SO_ON and bool(said & _SMALL)


def bare_reasons(scene: Passage) -> list[tuple[Mark, Spot]]:
    """`had to bin the squats, knee`: a joint alone in its clause, after something was cut; `38 right side` is none."""
    out: list[tuple[Mark, Spot]] = []
    for spot in scene.spots:
        start = spot.first - (1 if spot.side else 0) - (1 if scene.word(spot.first - 1) == "my" else 0)
        joint = spot.place.tissue in (Tissue.JOINT, Tissue.MIXED) and not spot.place.plural
        if start < 1 or not joint or not scene.ends(spot.end) or not scene.ends(start):
            continue
        if not scene.same_sentence(start - 1, start):
            continue
        first = scene.sentence.index(scene.sentence[start])
        before = scene.words(first, start)
        had_to = {"had", "to"} <= before and not before & {"rush", "go", "leave", "shorten", "share"}
        counted = spot.place.name == "side" and scene.tokens[spot.first - 1].kind is not Kind.WORD
        if (before & _CUT or had_to) and not {"no", "time"} <= before and not counted:
            out.append((Mark(spot.first, spot.end, None, spot.place), spot))
    return out
