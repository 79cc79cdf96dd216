"""Words that mean the same beside some others only: `plus my hips feel great` is `and`, `plus 5` is none.

Each test gets the marks and where the phrase starts and ends.
"""

from collections.abc import Callable, Iterable, Sequence

from bot.notation.alike.verbs import DID, LIGHTER, NONE_MORE, OPENERS
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.spoken import NUMBER_WORDS, UNITS
from bot.notation.tokens import Mark
from bot.notation.wordlist import products, words

Where = Callable[[Sequence[Mark], int, int], bool]
"""Whether a phrase that stands between two places is meant so."""


def _is_count(marks: Sequence[Mark], place: int) -> bool:
    return kind_at(marks, place) in (Kind.NUM, Kind.CLOCK) or text_at(marks, place) in NUMBER_WORDS


def _goes_on(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`was thinking 125 though went 120`: it joins what stands before it to what follows, and ends no sentence."""
    return start > 0 and end < len(marks) and kind_at(marks, end) not in EDGES and text_at(marks, start - 1) != "even"


def _before_count(marks: Sequence[Mark], _start: int, end: int) -> bool:
    """`really 90`, `one more 7`, `really only got 5`: before a number."""
    while text_at(marks, end) in _DOING:
        end += 1
    return _is_count(marks, end)


def _of_which_one(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`rpe on that one more like 9.5`: the one is the set that was done, and no further one."""
    return text_at(marks, end) == "like" and text_at(marks, start - 1) in _WHICH_ONE


_WHICH_ONE = ("that", "this")
_DOING = frozenset(words("only just got did was were made managed hit had all about the another around maybe like"))


def _did(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`squeezed out 9`, `achieved all 6`: of a number that was done, and not of what could have been."""
    could = {text_at(marks, i) for i in range(start - 3, start)} & _COULD
    return not could and text_at(marks, start - 1) not in _NOT_DONE and _before_count(marks, start, end)


_COULD = frozenset(words("could couldve coulda would wouldve woulda might have ve cant couldnt hope want"))
_NOT_DONE = frozenset(words("to have of not never didnt cant if gonna was were being i've not"))


def _after_count(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`1 remaining`, `2 reps unused`: of repetitions, where their part ends."""
    if text_at(marks, end) not in ("on", "i", "at", "for", "maybe", "easily") and not _at_end(marks, start, end):
        return False
    return _is_count(marks, start - 1) or (text_at(marks, start - 1) in _OF_COUNT and _is_count(marks, start - 2))


def _before_next(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`155 for 6 with one remaining then 160`, `80 for 4, two unused and then`, `add two unused to that`."""
    told = [text_at(marks, place) for place in range(end, end + 2)]
    onward = told[0] == "then" or told in (["and", "then"], ["to", "that"], ["to", "it"])
    return onward and (
        _is_count(marks, start - 1) or (text_at(marks, start - 1) in _OF_COUNT and _is_count(marks, start - 2))
    )


_OF_COUNT = ("rep", "reps", "more")
_UNUSED = ("unused", "available", "still to give", "left to give", "not used")


def _alone(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`155 for 6, absolutely nothing`, `and i was empty`: all that its part says, behind a number."""
    opens = start == 0 or kind_at(marks, start - 1) in EDGES or text_at(marks, start - 1) in _BEFORE_EMPTY
    opens = opens or _is_count(marks, start - 1)
    ends = _at_end(marks, start, end) or text_at(marks, end) in ("on", "after", "at", "by", "there", "for")
    return opens and ends and any(_is_count(marks, i) for i in range(start))


_BEFORE_EMPTY = frozenset(words("and & with had then one was reps went got rep but took me set last"))


def _lighter(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`12, went down to 16 and got 8`: a lighter set behind one that is told."""
    end += text_at(marks, end) in ("the", "a", "about", "only", "just")
    bare = text_at(marks, start) in ("down", "back")
    led = kind_at(marks, start - 1) in (*EDGES, Kind.NUM) or text_at(marks, start - 1) in _LEADS
    if bare and not led:
        return False
    return any(_is_count(marks, i) for i in range(max(0, start - 12), start)) and _is_count(marks, end)


_LEADS = frozenset(words("reps rep kg kilos lbs each then and but so now again"))


def _rates(marks: Sequence[Mark], _start: int, end: int) -> bool:
    """`rated 9`, `rated it an 8`: before a number of effort."""
    value = marks[end].value if end < len(marks) else None
    return (value is not None and value <= _MOST_EFFORT) or text_at(marks, end) in NUMBER_WORDS


_MOST_EFFORT = 10


def _rates_alone(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`i would rate it at 8`, not `id give it 2 weeks`: of an effort, and of nothing that is counted."""
    behind = end + 1
    ends = behind >= len(marks) or kind_at(marks, behind) in EDGES or text_at(marks, behind) in _BEHIND_EFFORT
    return _rates(marks, start, end) and ends


_BEHIND_EFFORT = frozenset(words("and but so maybe out though rpe easily then i it the coach for tbh honestly"))


def _heads(marks: Sequence[Mark], start: int, _end: int) -> bool:
    """`update: done`, `quick one - 60x5`: what opens a message and says nothing."""
    return start == 0 or kind_at(marks, start - 1) is Kind.LINE


def _tight(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`2day`, and `3x` where no number follows."""
    return marks[start + 1].tight and not _is_count(marks, end)


def _before_set(marks: Sequence[Mark], _start: int, end: int) -> bool:
    """`closing set`, `opening one`."""
    return text_at(marks, end) in ("set", "one", "sets", "round")


def _ends_part(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`couldnt squeeze out another`, and no set or exercise of it."""
    return start > 0 and (_at_end(marks, start, end) or text_at(marks, end) in _BEHIND_LAST)


_BEHIND_LAST = frozenset(words("if on there after honestly tbh at even for so but and then coach mate rep reps"))


def _tried(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`tried 95, got 8`: what was done, where nothing says that it came to nothing."""
    behind = {text_at(marks, i) for i in range(end, end + 12)}
    return _did(marks, start, end) and not behind & _IN_VAIN


_IN_VAIN = frozenset(
    words("but failed fail couldnt didnt no nope not nothing missed wouldnt bailed stuck and then once")
)


def _told_alone(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`the load was 87.5`, `weight was 60, not 65`: one number of a set that is told already."""
    behind = {text_at(marks, i) for i in range(end, end + 8)}
    return start == 0 and _is_count(marks, end) and not behind & {"reps", "x", "for", "rep", "sets", "and", "then"}


def _opens_count(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`on second thoughts 8`: at the start, before the number that holds."""
    return start == 0 and _is_count(marks, end + (kind_at(marks, end) is Kind.COMMA))


def _behind_count(marks: Sequence[Mark], start: int, _end: int) -> bool:
    """`9 was a typo`: of the number before."""
    return _is_count(marks, start - 1)


def _both_sides(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`25 seconds on left and right`, `twelve l and r`: one number of each, where no number of a side follows."""
    told = _is_count(marks, start - 1) or text_at(marks, start - 1) in _UNITS
    return told and not _is_count(marks, end) and kind_at(marks, end) is not Kind.COLON


_UNITS = frozenset(words("seconds second secs sec s m metres meters metre meter reps rep kg kilos lbs pounds kgs"))


def _not_of_last(marks: Sequence[Mark], start: int, _end: int) -> bool:
    """`60x8, a couple of sets`: two, where they are not the last or the first ones."""
    return start > 0 and text_at(marks, start - 1) not in _WHICH


_WHICH = frozenset(words("last first next other final the did do after in warm warmup up skip skipped missed"))


def _after_skip(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`skip the others`: all that is left, where nothing says of what."""
    before = {text_at(marks, i) for i in range(start - 2, start)}
    return bool(before & _SKIPS) and text_at(marks, end) not in ("of", "sets", "set", "two", "three")


_SKIPS = frozenset(words("skip skipping skipped drop dropping leave leaving left bin binning ditch ditching cut"))


def _plural_count(marks: Sequence[Mark], _start: int, end: int) -> bool:
    """`triple fives`: three sets."""
    return text_at(marks, end) in _PLURALS or (_is_count(marks, end) and text_at(marks, end + 1) == "s")


_PLURALS = frozenset(words("threes fours fives sixes sevens eights nines tens elevens twelves fifteens"))


def _sided(marks: Sequence[Mark], start: int, end: int) -> bool:
    """The `L` of `L: 8, R: 8`, `9 l, 8 right`: at a number, with the other side told beside it."""
    other = _RIGHTS if text_at(marks, start) == "l" else _LEFTS
    beside = any(text_at(marks, i) in other for i in (*range(start - 5, start), *range(end, end + 5)))
    return beside and (_is_count(marks, end) or _is_count(marks, start - 1))


_LEFTS, _RIGHTS = ("l", "left", "lt"), ("r", "right", "rt")


def _of_those(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`10 of them at 90`: repetitions of a load."""
    return _is_count(marks, start - 1) and text_at(marks, end) in ("at", "with", "@", "on")


def _of_label(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`set 1 felt like a 9`, `the second one felt @8`: an effort of a set that is named."""
    labelled = text_at(marks, start - 2) == "set" and _is_count(marks, start - 1)
    named = text_at(marks, start - 1) in ("set", "one") and text_at(marks, start - 2) in (*_ORDINALS, "last")
    return (labelled or named) and _rates(marks, start, end)


def _of_rated_label(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`set 1 felt @9`: the same where the effort is named."""
    return text_at(marks, end) in ("@", "rpe") and _of_label(marks, start, end + 1)


def _reserved(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`8 reps in reserve 2`: how many were done, and how many were left."""
    return _is_count(marks, start - 1) and _is_count(marks, end)


def _before_words(marks: Sequence[Mark], _start: int, end: int) -> bool:
    """`plus my hips feel great`: before words that are no load of their own."""
    return kind_at(marks, end) is Kind.WORD and text_at(marks, end) not in NUMBER_WORDS | _LOADS


_LOADS = frozenset(
    words(
        "bar the bodyweight bw body my another then drop minis mini kg x a an about extra "
        "belt vest chain chains band bands plate plates collars bars bell weight weights load"
    )
)


def _before_like(marks: Sequence[Mark], _start: int, end: int) -> bool:
    """`identical weight`, `exactly the same reps`: before what is the same."""
    return text_at(marks, end) in _LIKE


_LIKE = frozenset(
    words("weight weights load reps rep pin setting dumbbells dumbbell dbs db bells bell kettlebell distance kilos bar")
    + words("number numbers plates stack band kg lbs pounds resistance machine time")
)


def _of_weight(marks: Sequence[Mark], start: int, _end: int) -> bool:
    """`no added load`, `without load`: what hangs on, and no verb."""
    return text_at(marks, start - 1) in _BEFORE_LOAD


_BEFORE_LOAD = frozenset(words("no without any added extra additional what the same that this body zero more less"))


def _of_sets(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`both set`, `the last two set`: of several, where no number says which one."""
    if kind_at(marks, end) is Kind.NUM or text_at(marks, end) in (*NUMBER_WORDS, "number", "no"):
        return False
    before, one_before = text_at(marks, start - 1), text_at(marks, start - 2)
    if before in ("remaining", "other", "last", "first"):
        before, one_before = one_before, "all"
    counted = before in _SEVERAL and one_before in ("all", "the", "last", "first", "other", "remaining", "my", "for")
    return before in ("both", "all") or counted


_SEVERAL = frozenset(words("two three four five six 2 3 4 5 6"))


def _of_reserve(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`8 times 2 in the tank`: repetitions, with an effort behind them."""
    behind = text_at(marks, end + 1) in ("in", "left", "rir", "more", "shy", "short", "off", "away", "to")
    return _is_count(marks, start - 1) and _is_count(marks, end) and behind


def _of_several(marks: Sequence[Mark], _start: int, end: int) -> bool:
    """`the two sets`, where they are not those that are left."""
    behind = text_at(marks, end)
    return behind not in ("left", "that", "which", "missing", "remaining", "still", "open", "i", "are", "outstanding")


def _not_between(marks: Sequence[Mark], start: int, _end: int) -> bool:
    """`the two of them were 60`, not `60 between the two of them`."""
    return text_at(marks, start - 1) not in ("between", "from", "for")


def _at_end(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`did that 2x`: where its part ends."""
    return (end >= len(marks) or kind_at(marks, end) in EDGES) and start > 0


def _is_all_said(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`finished that set`: all that a message says."""
    return start == 0 and all(m.kind in EDGES or m.text in _CALLED for m in marks[end:])


_CALLED = frozenset(words("coach boss mate now lol thanks"))


def _compares_with_none(marks: Sequence[Mark], _start: int, end: int) -> bool:
    """`no different this time`, not `no different to 72.5`."""
    return text_at(marks, end) not in ("to", "from", "than", "with", "between", ",", "at")


def _of_rep(marks: Sequence[Mark], _start: int, end: int) -> bool:
    """`couldnt get the 8th`, `didnt make the sixth rep`: of one repetition."""
    at = end + (text_at(marks, end) in ("the", "my", "on"))
    at += text_at(marks, at) in ("the", "my")
    ordinal = text_at(marks, at) in _ORDINALS
    numbered = kind_at(marks, at) is Kind.NUM and text_at(marks, at + 1) in ("st", "nd", "rd", "th")
    at += 2 if numbered else 1
    return (ordinal or numbered) and text_at(marks, at) not in ("set", "one", "round", "exercise", "sets", "time")


_ORDINALS = frozenset(words("first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth"))


def _done_before(marks: Sequence[Mark], start: int, _end: int) -> bool:
    """`could have finished one more`: behind what could have been."""
    could = {text_at(marks, start - 2), text_at(marks, start - 3)} & {"could", "would", "might", "couldnt"}
    return text_at(marks, start - 1) in (*_COULD_HAVE, *(("have", "ve", "of", "a") if could else ()))


_COULD_HAVE = ("couldve", "coulda", "wouldve", "woulda")


def _before_what(marks: Sequence[Mark], _start: int, end: int) -> bool:
    """`never did the rows`: before what was not done."""
    return text_at(marks, end) in ("the", "my", "any", "those")


def _told_beside(marks: Sequence[Mark], start: int, _end: int) -> bool:
    """`45 sec on the leg left`, `everything in k`."""
    return text_at(marks, start - 1) in ("on", "the", "my", "with", "for", "in")


def _of_all(marks: Sequence[Mark], _start: int, end: int) -> bool:
    """`the lot as planned`: the whole session."""
    return text_at(marks, end) in ("as", "like", "to", "exactly", "just", "per", "done") or (
        text_at(marks, end) == "how" or text_at(marks, end) == "went"
    )


_SOME = {"three": "3", "four": "4", "five": "5", "six": "6"}


def _between_digits(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`one oh five`: the nought of a load; not the short form of an overhead press."""
    return all(0 < UNITS.get(text_at(marks, at), _NO_DIGIT) < _NO_DIGIT for at in (start - 1, end))


_NO_DIGIT = 10
_JUDGE = words("put call judge give")
_JUDGE_IT = ("rate", "rate it", "put it", "call it", "judge it", "give it")
_AS = ("at", "as", "a", "an", "as an", "rpe", "at rpe", "as rpe", "an rpe of", "at an", "at a", "at an rpe of")

BESIDE: tuple[tuple[str, Iterable[str], Where], ...] = (
    ("zero", ("oh", "o"), _between_digits),
    ("but", ("though", "tho", "although"), _goes_on),
    ("more", ("one more",), _of_which_one),
    ("another", ("one more", "1 more"), _before_count),
    ("actually", ("really",), _before_count),
    ("and", ("plus",), _before_words),
    ("and", ("plus a", "plus an"), _before_count),
    ("same", (*products(("exactly", "precisely", "just", ""), ("the", ""), ("exact", "very", ""), ("same",))[:-1],
              "identical", "the identical", "equal", "unchanged", "ditto"), _before_like),
    ("weight", ("load",), _of_weight),
    ("sets", ("set",), _of_sets),
    ("reps", ("times",), _of_reserve),
    *((f"both {plain}", (f"the two {plain}", f"the 2 {plain}"), _of_several) for plain in ("sets", "rounds")),
    ("all three sets", ("the three sets", "the 3 sets"), _of_several),
    ("both of those", ("the two of them", "the 2 of them", "the two of em"), _not_between),
    ("anymore", ("any more", "any longer"), _at_end),
    ("twice", ("2 x", "two times"), _at_end),
    ("failed", products(("couldnt", "didnt", "cant", "could not", "did not"),
                        words("get make finish complete hit lock manage grind")), _of_rep),
    ("failed", products(("failed",), ("to",), words("get make finish complete hit lock manage grind")), _of_rep),
    ("done", words("finished completed performed executed achieved accomplished"), _done_before),
    ("done", (*products(("finished", "completed", "finished with", "done with"), ("that", "the", "this", "my"),
                        ("set",)),
              *products(("that", "the", "this"), ("set is",), ("finished", "complete", "completed", "done"))),
     _is_all_said),
    ("didnt do", ("never did", "never started"), _before_what),
    *((f"left {limb}", (f"{limb} left",), _told_beside) for limb in words("leg arm hand side foot")),
    *((f"right {limb}", (f"{limb} right",), _told_beside) for limb in words("leg arm hand side foot")),
    ("kg", ("k",), _told_beside),
    ("", products(OPENERS, (":", "-")), _heads),
    ("today", ("2 day",), _tight),
    ("before", ("b 4",), _tight),
    *((f"{count} times", (f"{digit} x",), _tight) for count, digit in _SOME.items()),
    ("last", ("closing", "finishing"), _before_set),
    ("first", ("opening",), _before_set),
    ("was", ("felt", "felt like", "felt about"), _of_rated_label),
    ("was rpe", ("felt", *products(("felt",), ("more", ""), ("like",), ("a", "an", "about a", ""))), _of_label),
    ("did", DID, _did),
    ("did", products(("i", "we"), ("repeat", "repeated")), _did),
    ("then", LIGHTER, _lighter),
    ("left", ("remaining", "left remaining"), _after_count),
    ("in the tank", _UNUSED, _after_count),
    ("in the tank", ("remaining", "left remaining", *_UNUSED), _before_next),
    ("nothing left", ("absolutely nothing", "max effort", "maximum effort", "maximal effort", "full effort",
                      "all i could do", "to the limit", "to my limit", "to the max",
                      "i was empty", "absolutely empty", "completely empty", "totally empty", "running on empty",
                      "empty", "nothing in hand", "nothing available", "nothing to give"), _alone),
    ("did", ("tried", "i tried", "tried out", "had a go at", "attempted"), _tried),
    ("make that", products(("can you", "could you", "please", "pls", ""),
                           words("change fix edit correct switch amend adjust update alter"),
                           ("that", "it"), ("to", "into")), _before_count),
    ("that was", products(("the", "my", ""), ("load", "weight", "bar"), ("was", "was only")), _told_alone),
    ("actually", ("on second thoughts", "on second thought", "on reflection", "come to think of it", "thinking back",
                  "now i think of it", "now that i think of it", "thinking about it"), _opens_count),
    ("is wrong", products(("was", "is"), ("a", "an", "my", ""), ("typo", "mistake", "error", "slip", "misprint")),
     _behind_count),
    ("with the same", ("on the same", "at the same"), _at_end),
    ("the same", ("no different", "not any different", "nothing different", "no difference"), _compares_with_none),
    ("left", ("l :", "l"), _sided),
    ("right", ("r :", "r"), _sided),
    ("each side", products(("on the", "on", "for", "per", "both", ""),
                           ("left and right", "l and r", "left & right", "l & r", "left + right", "l + r",
                            "right and left", "r and l", "left and the right")), _both_sides),
    ("two sets", products(("for a", "for", "a", ""), ("couple of sets", "couple sets", "pair of sets")), _not_of_last),
    ("another", ("one more set of", "1 more set of", "another set of", "a further"), _before_count),
    ("the rest", products(("the others", "the remaining ones", "the other ones", "the remaining exercises",
                           "the other exercises")), _after_skip),
    ("three", ("triple", *products(("a", ""), ("hat trick of", "trio of", "treble of"))), _plural_count),
    ("next", ("follow up", "followup", "following"), _before_set),
    ("nothing left", NONE_MORE, _ends_part),
    ("reps", products(("of",), ("them", "em", "those", "these")), _of_those),
    ("reps rir", ("reps in reserve",), _reserved),
    ("rir", ("reps in reserve", "reps reserve", "reserve reps"), _before_count),
    ("was rpe", (*products(("i would", "id", "i must", "i have to"), _JUDGE_IT, (*_AS, "")),
                 *products(("i would", "id", "i must", "i have to"), _JUDGE, _AS)), _rates_alone),
    ("last one was rpe", products(("i would", "id", "i"), (*_JUDGE, "rate"),
                                  ("the last one", "the last set", "the last of them"), (*_AS, "")), _rates_alone),
    ("rpe", (*products(("rated", "rating", "i rated", "id rate", "rate"), ("it", "that", "this", ""), ("a", "an", "")),
             "perceived effort", "perceived exertion", "effort level", "effort rating", "rpe -",
        "hardness", "toughness", "difficulty level", "hard level"), _rates),
    ("everything", ("the lot", "all of it", "the whole lot", "the whole thing", "it all", "the full thing"), _of_all),
)  # fmt: skip
"""What is said for what, where the neighbours tell that it is."""
