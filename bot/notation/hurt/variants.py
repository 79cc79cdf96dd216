"""Spellings that mean the same word: contractions without their apostrophe, chat shorthand, homophones of dictation."""

from bot.notation.hurt.rows import word_set

_ROWS = """
can't: cant cannot can'not couldn't couldnt cannae cannie canna couldnae
don't: dont dinnae dinna
sorry: sory srry soory sorri soryy
doesn't: doesnt doesnae
didn't: didnt didnae
won't: wont winnae willnae
isn't: isnt isnae
wasn't: wasnt wasnae wisnae
aren't: arent
weren't: werent
hasn't: hasnt hasnae
haven't: havent havenae hivnae
hadn't: hadnt
ain't: aint
wouldn't: wouldnt wouldnae
shouldn't: shouldnt
i'm: im
i've: ive
it's: its
that's: thats
there's: theres
without: w/o w/out witout withot
because: cause cos coz cuz bcos bc becos
though: tho
with: wth
something: smth sth summat sumthin somethin
right: rt rite righ rigth rihgt rght rigt
left: lft lef letf elft lt
lower: lwr
back: bk
no: nae
from: fae
nearly: nearlly
and: n
nothing: nuthin nowt
felt: feeled
hurt: hurted
weed: wee'd
peed: pee'd
out: oot
down: doon doun
head: heid
hold: haud hauld
just: jist
one: un yin
pissing: pishin pishing
"""


def _canon() -> dict[str, str]:
    table: dict[str, str] = {}
    for row in _ROWS.strip().splitlines():
        word, others = row.split(":")
        table.update(dict.fromkeys(others.split(), word))
    return table


CANON = _canon()
"""From a spelling to the word it stands for."""

UNABLE = frozenset(
    {
        *(("can", w) for w in ("not", "barely", "hardly", "scarcely")),
        *(("could", w) for w in ("not", "barely", "hardly", "scarcely")),
        *(("can't", w) for w in ("even", "really", "properly", "hardly", "actually", "fully", "seem", "quite")),
        *((w, "to") for w in ("unable", "struggle", "struggled", "struggling", "impossible")),
        *((w, "to") for w in ("fail", "fails", "failing", "failed", "powerless", "decline", "declines")),
        *((w, "to") for w in ("declined", "declining", "refuse", "refuses", "refused", "refusing")),
        ("not", "able"),
        ("isn't", "able"),
        ("can't", "to"),
        ("can", "no"),
        ("no", "can"),
        ("can't", "longer"),
    }
)
"""Pairs of words that say `can't`; `not able to` by two of them."""
NOT_ABLE = word_set("no not don't didn't doesn't isn't wasn't aren't weren't haven't hasn't hadn't never can't won't")
"""Behind these, with `been` or without, `ABLE` says `can't`: `haven't been able to`, `don't manage to`."""
ABLE = word_set("able manage manages managed managing capable possible")
ACTS = word_set(
    "stand walk move lift raise hold grip close open bend straighten squeeze breathe talk speak feel see put push pull "
    "step turn use"
)
"""Behind `impossible`, `not possible` without `to` these are what cannot be done, in English as a second language."""
TRYING = {"to": word_set("get"), "in": word_set("succeed succeeding succeeded")}
"""What says `can't` behind them too, before a `to`, an `in`: `don't get to breathe`, `don't succeed in it`."""
AT_ALL = tuple(
    tuple(said.split())
    for said in (
        "for me to",
        "for the life of me",
        "for love nor money",
        "for love or money",
        "for all the world",
        "no matter what",
    )
)
"""What only strengthens a `can't` that it stands behind."""
NEGATED = {
    ("does", "not"): "doesn't",
    ("do", "not"): "don't",
    ("did", "not"): "didn't",
    ("will", "not"): "won't",
    ("has", "not"): "hasn't",
    ("have", "not"): "haven't",
    ("would", "not"): "wouldn't",
    ("was", "not"): "wasn't",
    ("were", "not"): "weren't",
    ("is", "not"): "isn't",
    ("are", "not"): "aren't",
    ("had", "not"): "hadn't",
    ("should", "not"): "shouldn't",
}
"""Pairs of words that are one word in haste."""
