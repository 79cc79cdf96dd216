"""Lists of signs that are denied as a whole: what a doctor asked about and was answered no; `negative for a, b or c`.

Common practice, no source. The answer must deny all of it; a `but`, a `yes`, one that was had keep the signs.
"""

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.tokens import Gap

_ASKED_BEFORE, _ANSWERED_BEHIND = 14, 24
"""Words between a question that somebody asked, what was asked about, and the answer to all of it."""
ASKED = word_set(
    """
    asked asks asking ask questions question questionnaire form quizzed quizzing grilled checklist screened screening
    enquired inquired checked
    """
)
"""Words of a sentence that tells of questions."""
_READ_OUT = word_set("through over down")
_WENT = word_set("went ran read going running")
_ALL = word_set("all each every everything both them those these")
_NO = word_set("no nope nah negative none")
_EXCEPTIONS = word_set(
    """
    yes yeah yep aye but except apart besides today actually did though although only until yesterday lately
    sometimes twice once still now since after when during while feel felt feeling told said-yes worse bad
    """
)
"""Between what was asked about and its denial, or behind it, these keep the signs."""
_HAD = word_set("had have got having i've get")


def answered_no(scene: Passage, mark: Mark) -> bool:
    """`my doctor asked about numbness and weakness; i answered no to all three`; `..., i've none of it`."""
    asked = _asked_before(scene, mark)
    if asked is None:
        return False
    behind = range(mark.end, min(mark.end + _ANSWERED_BEHIND, len(scene.tokens)))
    for at in behind:
        if scene.sentence[at] - scene.sentence[mark.first] > 1:
            return False
        end = _denies_all(scene, at)
        if end:
            return _nothing_else(scene, mark, at, end)
    return False


def is_the_answer(scene: Passage, mark: Mark) -> bool:
    """The `said no` of `asked if i get numb hands, said no to each`; not `asked for one more, shoulder said no`."""
    if not scene.words(mark.first, mark.end) >= {"said", "no"} or scene.tokens[mark.first].gap is Gap.NONE:
        return False
    at = _asked_before(scene, mark)
    return at is not None and bool(scene.words(at + 1, at + 4) & {"if", "about", "whether"})


def _asked_before(scene: Passage, mark: Mark) -> int | None:
    """Where the sentence of a mark says that somebody asked, before it."""
    if not scene.words(mark.first - _ASKED_BEFORE, mark.first) & _ASKING:
        return None
    for at in range(mark.first - 1, max(mark.first - _ASKED_BEFORE, 0) - 1, -1):
        if not scene.same_sentence(at, mark.first):
            return None
        listed = scene.word(at) == "list" and scene.word(at - 1) == "'s" and scene.word(at - 2) in _CLINICAL
        went = listed or (
            scene.word(at) in _READ_OUT and scene.word(at - 1) in _WENT and bool(scene.words(0, at) & _CLINICAL)
        )
        if scene.word(at) in ASKED or went:
            return at
    return None


_ASKING = ASKED | _READ_OUT | {"list"}
_CLINICAL = word_set(
    "nurse doctor doc gp physio medic paramedic consultant surgeon cardiologist pharmacist he she they"
)


def _denies_all(scene: Passage, at: int) -> int:
    """Where an answer that begins here ends, if it denies all that was asked about; else 0."""
    word, then, third = scene.word(at), scene.word(at + 1), scene.word(at + 2)
    if word in _NO and then == "to" and (third in _ALL or scene.word(at + 3) == "lot"):
        return at + 3
    if word in ("none", "nothing") and then == "of" and (third in _OF_IT or scene.word(at + 3) in _LISTED):
        return at + 3
    if word in ("neither", "none", "nada", "zilch") and scene.ends(at + 1):
        return at + 1
    if word in ("all", "both") and then in _ALL_NO and scene.ends(at + 2):
        return at + 2
    ticked = word in ("ticked", "said", "answered", "wrote", "told", "put") and then in ("no", "nope", "never")
    return at + 2 if ticked and (scene.ends(at + 2) or third in _EVERYWHERE) else 0


_OF_IT = word_set("it them that those these which")
_LISTED = word_set("lot above symptoms signs list things sort kind")
_ALL_NO = word_set("no nope nos negative clear noes never")
_EVERYWHERE = word_set("to for on all throughout every each everywhere")


def _nothing_else(scene: Passage, mark: Mark, at: int, end: int) -> bool:
    """Whether nothing between the mark and its answer, or behind it, leaves one of the signs."""
    had = at - 1 if scene.word(at - 1) in _HAD else at
    between = scene.words(mark.end, had)
    last = next((i for i in range(end, len(scene.tokens)) if not scene.same_sentence(i, at)), len(scene.tokens))
    return not (between & (_EXCEPTIONS | _HAD) or scene.words(end, last) & _EXCEPTIONS)


_NOUNS = word_set(
    """
    pain pains pressure tightness syncope presyncope dyspnoea dyspnea numbness dizziness dizzyness tingling weakness
    palpitations palpitation breathlessness headache headaches nausea sickness swelling blackout blackouts fainting
    faintness paralysis haematuria hematuria incontinence discomfort cramp cramps vomiting sweats lightheadedness
    shortness loss
    """
)
_LOST = word_set("breath consciousness control feeling sensation bladder bowel strength power")
"""Behind `loss of`, `shortness of` these go with the list; by themselves they are what there is none of."""
"""What a list of denied signs is made of: nouns, as none says of how they feel now (`tight`, `dizzy`)."""
_JOINS = word_set("any of or nor and either other new")


def listed_none(scene: Passage, no: Mark, mark: Mark) -> bool:
    """`negative for chest pain, syncope, dyspnoea or numbness`: a list of nouns that an `or` holds together.

    Not `no pain, chest tight or numb`, `no chest pain, numbness in the arm`.
    """
    at, joined = no.end, False
    named = {i for s in scene.spots for i in range(s.first, s.end)}
    while at < len(scene.tokens) and scene.tokens[at].gap is not Gap.HARD:
        lost = scene.word(at) in _LOST and bool(scene.words(max(no.end, at - 4), at) & {"loss", "shortness"})
        if scene.word(at) not in _NOUNS | _JOINS and not (lost or at in named):
            break
        joined |= scene.word(at) in ("or", "nor")
        at += 1
    told = joined and no.end <= mark.first and mark.end <= at and scene.word(at - 1) not in _JOINS
    return (
        told and scene.ends(at) and not _excepted(scene, at, _NOW) and bool(scene.words(mark.first, mark.end) & _NOUNS)
    )


def none_of_these(scene: Passage, mark: Mark) -> bool:
    """`none of the red flags the doc listed: numb saddle, weak legs, leaking`."""
    if not scene.words(mark.first - 22, mark.first) & {"none", "nothing"}:
        return False
    for at in range(mark.first - 1, max(mark.first - 22, 0) - 1, -1):
        if not scene.same_sentence(at, mark.first):
            return False
        if scene.word(at) in ("none", "nothing") and scene.word(at + 1) == "of":
            said = scene.words(at + 2, mark.first)
            kept = said & (_EXCEPTIONS | word_set("i i've i'm my me it this got has then and so"))
            return bool(said & _SYMPTOMS) and not kept and not _excepted(scene, mark.end)
    return False


_SYMPTOMS = word_set("flags flag signs symptoms warning warnings things list listed stuff following usual")


_NOW = word_set("today this now my")


def _excepted(scene: Passage, first: int, allowed: frozenset[str] = frozenset()) -> bool:
    last = first
    while last < len(scene.tokens) and scene.same_sentence(last, first):
        last += 1
    return bool(scene.words(first, last) & (_EXCEPTIONS | word_set("i i've i'm my me")) - allowed)


_NOUGHT_BEFORE = 10
"""Words before a hurt among which its nought stands."""


def zero_of(scene: Passage, mark: Mark) -> bool:
    """`60x8, 0 back pain`, `with 0 knee pain`: a nought that opens what is said; not `rir 0 back pain`."""
    if mark.cue not in (Cue.PAIN, Cue.HURT, Cue.SHARP, Cue.MARK, Cue.WHISPER):
        return False
    if "0" not in scene.words(mark.first - _NOUGHT_BEFORE, mark.first):
        return False
    at = mark.first - 1
    placed = {i for s in scene.spots for i in range(s.first, s.end)} | {
        i for i in range(max(0, at - 3), at + 1) if scene.word(i) in ("left", "right", "lower", "upper")
    }
    while at in placed and not scene.ends(at):
        at -= 1
    led = scene.ends(at) or scene.word(at - 1) in ("with", "had", "have", "got", "absolutely", "and")
    return at >= 0 and at < mark.first - 1 and scene.word(at) == "0" and led and not _excepted(scene, mark.end, _NOW)
