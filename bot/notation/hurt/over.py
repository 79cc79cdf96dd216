"""Whether a hurt is over: gone, fine since, or long ago."""

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.headed import heads_report
from bot.notation.hurt.healed import healed_long_ago
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.negation import negated
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.tokens import Gap, Kind

_TODAY = word_set("now today just currently")
_NOT_QUITE = word_set("almost nearly mostly half not hasn't haven't isn't didn't won't doesn't never until")
_EVENTS = (Cue.MARK, Cue.POP, Cue.STRAIN, Cue.INJURED)
"""What happened in the session counts, settled or not."""
_STILL = word_set("again still since today now hurts hurting flared playing")


def gone(scene: Passage, mark: Mark) -> bool:
    """Whether the message says that this is over: `knee pain gone`, `hurt last week, fine now`, `used to hurt`."""
    here = any(
        scene.same_sentence(m.first, mark.first) and abs(m.first - mark.end) <= 6
        for m in scene.of(Cue.NOW)
        if scene.word(m.first) not in _TODAY
    )
    if here:
        return False
    before_today = any(
        scene.same_sentence(m.first, mark.first)
        and abs(m.first - mark.first) <= 10
        and not _since(scene, mark, m)
        and not _earlier_on(scene, m)
        and not heads_report(scene, m, mark)
        for m in scene.of(Cue.PAST)
    )
    before_today |= any(scene.same_sentence(i, mark.first) for i in scene.of_late)
    if _only_feared(scene, mark) or _only_usual(scene, mark):
        return True
    if any(_says_gone(scene, g, mark, before_today=before_today) for g in scene.of(Cue.GONE)):
        return True
    if mark.cue in (Cue.INJURED, Cue.CONDITION) and any(
        0 < m.first - mark.end <= 8 and scene.same_sentence(m.first, mark.first) and negated(scene, m)
        for m in scene.of(Cue.WHISPER, Cue.HURT, Cue.PAIN)
    ):
        return True
    later = [f for f in scene.of(Cue.FINE) if f.first > mark.first and f.first - mark.end <= 12]
    fine = [f for f in later if not negated(scene, f) and _of_itself(scene, f)]
    headed = any(heads_report(scene, m, mark) for m in scene.of(Cue.PAST))
    fine = fine if before_today else [f for f in fine if headed and scene.words(f.first - 2, f.end + 3) & _TODAY]
    still = bool(fine) and _still_there(scene, mark)
    return not still and any(not _taken_back(scene, f) for f in fine)


_FEARED = word_set("worried concerned nervous scared wary careful")


def _only_feared(scene: Passage, mark: Mark) -> bool:
    """`was worried about my back but it was fine`."""
    if not scene.words(mark.first, mark.end) & _FEARED:
        return False
    fine = [f for f in scene.of(Cue.FINE) if 0 < f.first - mark.end <= 8 and scene.same_sentence(f.first, mark.first)]
    return any(not negated(scene, f) and not _taken_back(scene, f) for f in fine)


_USUALLY = word_set("usually normally typically generally")
_NONE_NOW = word_set("nothing no not none zero fine good great ok okay zilch")


def _only_usual(scene: Passage, mark: Mark) -> bool:
    """`usually my elbow hurts on these, today nothing`."""
    if not scene.words(mark.first - 6, mark.first) & _USUALLY:
        return False
    now = [i for i in range(mark.end, mark.end + 9) if scene.word(i) in ("today", "tonight", "time")]
    well = any(scene.words(i - 3, i + 4) & _NONE_NOW for i in now if scene.same_sentence(i, mark.first))
    return well and not scene.words(mark.end, mark.end + 12) & {"worse", "too", "more"}


_SINCE = word_set("since from ever")
_ITSELF = word_set(
    """
    it that this all now today but and 's much a bit lot totally completely been has is was feels then since pretty
    seems i'm i feeling yet so though tonight everything it's that's again became got getting one they me though
    morning afterwards after rest fully is are were
    """
)


def _earlier_on(scene: Passage, past: Mark) -> bool:
    """`had a pinch earlier, gone`: within the session; not `earlier this week`."""
    return scene.word(past.first) == "earlier" and scene.word(past.end) not in ("this", "in", "on", "last")


def _since(scene: Passage, mark: Mark, past: Mark) -> bool:
    """`ouchy since i did the hedge on sunday`: it began then and goes on."""
    return past.first > mark.end and bool(scene.words(mark.end, past.first + 1) & _SINCE)


def _still_there(scene: Passage, mark: Mark) -> bool:
    """`rolled my ankle on sunday and it still aches, pullups are fine though`: what is fine is something else."""
    hurting = [m for m in scene.of(*_CAME_BACK) if m.first >= mark.first and not negated(scene, m)]
    near = [m for m in hurting if scene.same_sentence(m.first, mark.first)]
    return any("still" in scene.words(m.first - 4, m.first) for m in near)


def _of_itself(scene: Passage, fine: Mark) -> bool:
    """Whether what is fine is the place itself, no exercise: `…, but lunges felt ok`."""
    before = fine.first - 1
    told = scene.word(before) in _ITSELF or scene.tokens[before].kind is not Kind.WORD or scene.ends(fine.first)
    told = told or any(m.first <= before < m.end for m in scene.of(Cue.PAST))
    return told or any(s.first <= before < s.end for s in scene.spots) or scene.word(fine.first) in _ITSELF - _VERBS


def _taken_back(scene: Passage, fine: Mark) -> bool:
    """`ok-ish but i feel it`, `fine but it's there`: it is not over."""
    if scene.word(fine.end) in _UP_TO_THEN and not scene.ends(fine.end):
        return True
    for at in range(fine.end, min(fine.end + 4, len(scene.tokens))):
        if scene.word(at) == "but" and scene.same_sentence(at, fine.first):
            return bool(scene.words(at + 1, at + 6) & _STILL_FELT)
    return False


_UP_TO_THEN = word_set("before earlier until till yesterday previously beforehand")
_STILL_FELT = word_set("feel felt there aware notice know remember lurking grumbling still")
_VERBS = word_set("is was are were feels feeling been has 's seems")


def _says_gone(scene: Passage, g: Mark, mark: Mark, *, before_today: bool) -> bool:
    if not scene.same_sentence(g.first, mark.first) or scene.words(g.first - 2, g.first) & _NOT_QUITE:
        return False
    own = scene.words(mark.first, mark.end)
    silent = scene.word(g.first) != "not" and bool(scene.words(g.first, g.end) & _SILENT)
    if silent and (not own & _KNOWN or own & _FELT_NOW):
        return False
    back = scene.words(g.first, g.end) & {"come", "came", "return", "returned"}
    settles = back or scene.word(g.first).startswith(("settl", "gone", "calm", "clear", "went", "stop"))
    if (mark.cue in _EVENTS or _happened(scene, mark)) and settles and not before_today:
        return False
    if not (0 <= g.first - mark.end <= 6 or 0 <= mark.first - g.end <= 3):
        return False
    between = range(min(mark.end, g.end), max(mark.first, g.first))
    broken = any(
        scene.word(i) in ("but", "and", "then", "my", "still") or scene.tokens[i].gap is Gap.SOFT for i in between
    )
    return before_today or not broken


_SILENT = word_set(
    """
    peep murmur whisper word squeak sound noise fuss whimper grumble gob mouth mouths trap lips beak nothing nowt
    zilch nada quiet silent mute
    """
)
"""Words of what kept silent: of a place that is known to hurt, not of a hurt that was felt, which somebody kept quiet
about."""
_KNOWN = word_set(
    """
    bad dodgy old grumpy sore dicky niggly injury injured moans moan moaning grumbles gripes whinges complains
    troublesome usual problem problematic wonky gammy ropey crook sulky cranky
    """
)
_FELT_NOW = word_set("pain pains ache aches hurt hurts hurting pinch pinched sharp stab twinge twinged sting cramp")
_TOOK_PLACE = word_set(
    """
    twinged pinched stung grabbed jabbed nipped twanged zapped spasmed cramped ached niggled throbbed pulled caught
    winced shot stabbed poked
    """
)
_ONE = word_set("a an little slight some small tiny quick brief bit had felt got one sudden sharp short momentary")


def _happened(scene: Passage, mark: Mark) -> bool:
    """`shoulder twinged, gone now`, `a little sting in the wrist, gone`: it came in the session, which counts.

    `the pain is gone` tells of a hurt that the coach knows of, whose end is news.
    """
    told = scene.words(mark.first, mark.end) & _TOOK_PLACE
    return bool(told or scene.words(mark.first - 2, mark.first) & _ONE)


def long_ago(scene: Passage, mark: Mark) -> bool:
    """History and nothing of today: `hurt my back years ago`."""
    if healed_long_ago(scene, mark):
        return True
    years = any(scene.same_sentence(i, mark.first) and not _tells_the_next(scene, mark, i, i + 1) for i in scene.years)
    then = [
        m
        for m in scene.of(Cue.LONG_AGO)
        if scene.same_sentence(m.first, mark.first) and not _tells_the_next(scene, mark, m.first, m.end)
    ]
    if not years and all(scene.words(m.first - 2, m.first) & _COMPARED for m in then):
        return False
    if any(scene.same_sentence(m.first, mark.first) and scene.word(m.first - 1) == "and" for m in scene.of(Cue.PAST)):
        return False  # `fainted once when i was 12 and yesterday`
    said = scene.sentence_words(mark.first)
    still = said & (_STILL if "up" in said else _STILL - {"playing"})  # `playing hockey`, `playing up`
    if "again" in still and _never_again(scene, mark):
        return not still & _STILL - {"again", "since", "now"} or _well_since(scene, mark)
    return not still or (still <= {"now", "today", "since"} and _well_since(scene, mark))


def _tells_the_next(scene: Passage, mark: Mark, first: int, end: int) -> bool:
    """Whether a time opens a clause behind the mark: `my chest is tight, last year i tore my calf, fine now`."""
    if first < mark.end:
        return False
    first -= scene.word(first - 1) in ("in", "back")
    opens = scene.ends(first) or scene.word(first - 1) in ("and", "but", "when")
    return opens and scene.word(end) in ("i", "i'd", "my", "we") and scene.word(end + 1) not in _SUPPOSE


_SUPPOSE = word_set("think guess believe reckon was suppose say fancy")


def _never_again(scene: Passage, mark: Mark) -> bool:
    """Whether every `again` of the sentence is a `never again`, a `not once again`."""
    agains = [i for i, t in enumerate(scene.tokens) if t.word == "again" and scene.same_sentence(i, mark.first)]
    return all(scene.words(i - 3, i) & _NOT_ONCE for i in agains)


_NOT_ONCE = word_set("never didn't hasn't not")
_COMPARED = word_set("as like than similar")
"""Before what was long ago these tell what is now: `a dull ache, same as last year`."""
_CAME_BACK = (Cue.HURT, Cue.PAIN, Cue.WHISPER, Cue.SHARP, Cue.PAINFUL, Cue.SORE)
_FAR_SINCE, _LONG_SINCE = 12, 8
"""Words from what happened to the `never` of `never once since`, and from that to its `since`."""
_AGAIN = word_set("since again after afterwards more anymore then")
_NOT_EVER = word_set("never not hasn't haven't didn't")
_EVER = word_set(
    """
    once ever even happened happen it did had have has been felt feel a thing any anything come came back one another
    time times single bothered bother me us that so much as i had touched fainted hurt gone no more trouble twinge
    niggle peep out of outta murmur
    """
)
"""What stands between a `never` and its `since`: `haven't felt a thing since`."""


def _never_since(scene: Passage, mark: Mark) -> bool:
    """`never once since`, `haven't felt a thing since`, `never more after`: it did not come again."""
    for index in range(mark.end, min(mark.end + _FAR_SINCE, len(scene.tokens))):
        if scene.word(index) in _TODAY:
            return False
        if scene.word(index) not in _NOT_EVER or not scene.same_sentence(index, mark.first):
            continue
        for at in range(index + 1, min(index + _LONG_SINCE, len(scene.tokens))):
            ends = at + 1 >= len(scene.tokens) or scene.ends(at + 1) or scene.word(at + 1) in ("so", "and", "then")
            if scene.word(at) in _AGAIN and ends:
                later = range(at + 1, len(scene.tokens))
                return not any(scene.word(i) in _TODAY - {"just"} and scene.same_sentence(i, mark.first) for i in later)
            if scene.word(at) not in _EVER | _AGAIN:
                break
    return False


_NONE_SINCE = word_set("nothing none nowt zero nada zilch")
_TROUBLE = word_set("trouble bother issue issues problem problems drama grief pain hassle bother gyp")


def _well_since(scene: Passage, mark: Mark) -> bool:
    """`fine now`, `good as new now`, `no trouble since`, `nothing since`, said behind what happened long ago."""
    behind = [
        m
        for m in scene.of(Cue.FINE, Cue.GONE, *_CAME_BACK)
        if m.first >= mark.end and scene.same_sentence(m.first, mark.first)
    ]
    if any(m.cue in (Cue.FINE, Cue.GONE) and not negated(scene, m) for m in behind):
        return True
    since = (i for i in range(mark.end, len(scene.tokens)) if scene.word(i) == "since")
    if any(scene.words(i + 1, i + 5) & _NONE_SINCE and scene.same_sentence(i, mark.first) for i in since):
        return True  # `but since ten years nothing`
    if any(m.cue in _CAME_BACK and negated(scene, m) for m in behind) or _never_since(scene, mark):
        return True
    return any(
        (scene.word(i) in _NONE_SINCE or (scene.word(i) == "no" and scene.word(i + 1) in _TROUBLE))
        and scene.words(i + 1, i + 7) & {"since", "now", "today"}
        for i in range(mark.end, min(mark.end + 12, len(scene.tokens)))
        if scene.same_sentence(i, mark.first)
    )
