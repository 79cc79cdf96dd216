"""Numbers said in words: `sixty two point five`, `twenty two and a half`, `one hundred and five`, `one twenty`."""

from dataclasses import replace
from decimal import Decimal

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

UNITS = {
    word: Decimal(value)
    for value, word in enumerate(
        words(
            "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen",
            "sixteen seventeen eighteen nineteen",
        )
    )
}
UNITS["dozen"] = Decimal(12)
TENS = {
    word: Decimal(value * 10)
    for value, word in enumerate(["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"], 2)
}
MISSPELT = {"fourty": "forty", "ninty": "ninety", "fourtee": "fourteen", "eigth": "eight", "twelv": "twelve",
            "fiveteen": "fifteen", "eightteen": "eighteen", "tweny": "twenty", "fiddy": "fifty", "fifdy": "fifty",
            "twenny": "twenty", "fity": "fifty", "fiv": "five", "thre": "three", "eigt": "eight", "nien": "nine",
            "hunderd": "hundred", "hundered": "hundred", "nineth": "nine", "tenn": "ten", "sevn": "seven",
            "nought": "zero", "nil": "zero", "fith": "five", "thirdy": "thirty", "tin": "ten"}  # fmt: skip
_MOST_COUNTED = 20
"""`one hundred ten` is 110, or ten repetitions at 100."""
_AFTER_LOAD = frozenset(words("for by x kg kilo kilos pound pounds lb lbs times"))
_POINTING = frozenset(words("first second third fourth fifth last next final other this that st nd rd th"))
_ORDINALS = frozenset(words("first second third fourth fifth last next"))
NUMBER_WORDS = frozenset(UNITS) | frozenset(TENS) | {"hundred", "point"}
_FIRST = NUMBER_WORDS - {"point"} | {"a"}
"""What a number begins with: `a hundred` too."""


class _Reader:
    """Walks over words; `at` is where it stands."""

    def __init__(self, words: list[str], at: int) -> None:
        self.words = words
        self.at = at
        self.after_for = False
        """Whether repetitions are said here, so that `five eighty` is no 580."""

    def peek(self, ahead: int = 0) -> str:
        place = self.at + ahead
        word = self.words[place] if place < len(self.words) else ""
        return MISSPELT.get(word, word)

    def take(self) -> str:
        word = self.peek()
        self.at += 1
        return word


def _below_hundred(read: _Reader) -> tuple[Decimal, tuple[Decimal, ...]] | None:
    word = read.peek()
    if word in TENS:
        read.take()
        tens = TENS[word]
        following = read.peek()
        if following in UNITS and 1 <= UNITS[following] <= 9:
            if read.peek(1) == "hundred":
                return tens, ()
            read.take()
            return tens + UNITS[following], (tens, UNITS[following])
        return tens, ()
    if word in UNITS:
        read.take()
        return UNITS[word], ()
    return None


def _whole(read: _Reader) -> tuple[Decimal, tuple[Decimal, ...]] | None:
    if read.peek() == "a" and read.peek(1) == "hundred":
        read.take()
    bare = read.peek() == "hundred"
    first: tuple[Decimal, tuple[Decimal, ...]] | None = (Decimal(1), ()) if bare else _below_hundred(read)
    if first is None:
        return None
    value, parts = first
    if (
        read.peek() == "hundred"
        and value <= 9
        and not (read.after_for and not bare and read.peek(1) in ("for", "x", "by"))
    ):
        read.take()
        start = read.at
        joined = read.peek() == "and"
        if joined:
            read.take()
        elif read.peek(1) == "hundred":
            return value * 100, ()
        rest = _below_hundred(read)
        if rest is None:
            read.at = start
            return value * 100, ()
        if not rest[1] and not joined and rest[0] < _MOST_COUNTED:
            return value * 100 + rest[0], (value * 100, rest[0])
        return value * 100 + rest[0], (value * 100 + rest[1][0], rest[1][1]) if rest[1] else ()
    if 1 <= value <= 9 and not parts:
        if read.peek() in ("oh", "o", "zero") and read.peek(1) in UNITS:
            read.take()
            return value * 100 + UNITS[read.take()], ()
        if value <= 5 and not read.after_for and (read.peek() in TENS or UNITS.get(read.peek(), 0) >= 10):
            again = [read.words[read.at - 1], read.peek()] == [read.peek(1), read.peek(2)]
            rest = (TENS.get(read.peek()) or UNITS[read.peek()], ()) if again else _below_hundred(read)
            if again:
                read.take()
            if rest is not None:
                whole, last = value * 100 + rest[0], rest[1][-1] if rest[1] else Decimal(0)
                return whole, (whole - last, last) if last else (value, rest[0])
        if value <= 5 and not read.after_for and _are_digits(read):
            return value * 100 + UNITS[read.take()] * 10 + UNITS[read.take()], ()
    return value, parts


def _is_fraction(read: _Reader, value: Decimal) -> bool:
    """`seventy two fifty for eight`: 72.50, where its repetitions or its unit follow."""
    half = read.peek() == "five" and value % 10 in (2, 7)
    halves = (half or read.peek() == "fifty") and read.peek(1) in _AFTER_LOAD
    quarters = read.peek() in ("twenty", "seventy") and read.peek(1) == "five" and read.peek(2) in _AFTER_LOAD
    return halves or quarters


def _fraction(read: _Reader) -> Decimal:
    """The part said behind a whole number: the `fifty` of 72.50, the `five` of 42.5."""
    word = read.take()
    if word == "five":
        return Decimal("0.5")
    hundredths = TENS[word]
    return (hundredths + UNITS[read.take()]) / 100 if read.peek() == "five" else hundredths / 100


def _are_digits(read: _Reader) -> bool:
    """`one five five for five`: a load digit by digit, where its unit or its repetitions follow."""
    digits = all(UNITS.get(read.peek(n), Decimal(10)) <= 9 for n in (0, 1))
    return digits and read.peek(2) in _AFTER_LOAD


def read_spoken(marks: list[Mark], at: int) -> tuple[Mark, int] | None:
    """The number said from mark `at` on and where it ends, or `None` where no number is said there.

    `parts` holds the two numbers that one may be instead: `sixty five` is also 60 and 5.
    """
    first = marks[at].text
    if marks[at].kind is not Kind.WORD or MISSPELT.get(first, first) not in _FIRST or _is_pronoun(marks, at):
        return None
    words = []
    for mark in marks[at : at + 9]:
        if mark.kind is Kind.WORD:
            words.append(mark.text)
        elif mark.kind is Kind.DASH and mark.tight:
            words.append("-")
        else:
            break
    dashes = [i for i, word in enumerate(words) if word == "-"]
    plain = [word for word in words if word != "-"]
    read = _Reader(plain, 0)
    labelled = at > 0 and marks[at - 1].text in ("set", "number")
    labelled = labelled and not _ORDINALS & {m.text for m in marks[max(0, at - 3) : at - 1]}
    read.after_for = labelled or (at > 0 and marks[at - 1].text in ("for", "x", "by", "of"))
    whole = _whole(read)
    if whole is None or not read.at:
        return None
    value, parts = whole
    if read.peek() == "and" and read.peek(1) == "a" and read.peek(2) in ("half", "halfs", "halves"):
        read.at += 3
        value, parts = value + Decimal("0.5"), ()
    elif read.peek() == "and" and read.peek(1) == "a" and read.peek(2) == "quarter":
        read.at += 3
        value, parts = value + Decimal("0.25"), ()
    elif parts and len(parts) == 2 and _is_fraction(read, value):
        value, parts = value + _fraction(read), ()
    elif read.peek() == "point":
        decimals = _decimals(read)
        if decimals is not None:
            value, parts = value + decimals, ()
    if read.peek() == "for" and (read.peek(2) not in ("sets", "rounds") or read.peek(3) == "of"):
        parts = ()
    used = read.at
    for dash in dashes:
        if dash <= used:
            used += 1
    last = marks[at + used - 1]
    if last.kind is Kind.DASH:
        used -= 1
        last = marks[at + used - 1]
    text = " ".join(mark.text for mark in marks[at : at + used])
    return replace(marks[at], kind=Kind.NUM, text=text, end=last.end, value=value, parts=parts), at + used


def _is_pronoun(marks: list[Mark], at: int) -> bool:
    """The `one` of `second one nine`, `the last one ten`: it stands for a set, unless it is the load told before."""
    before = marks[at - 1].text if at else ""
    if at > 1 and marks[at - 2].text == "after":
        return False  # `after that one ten for eight`
    return marks[at].text == "one" and before in _POINTING and not _is_said_before(marks, at)


def _is_said_before(marks: list[Mark], at: int) -> bool:
    """`one twenty five for six and the second one twenty five`: the load that was said with the same words before."""
    run = [marks[at].text]
    while at + len(run) < len(marks) and marks[at + len(run)].text in TENS.keys() | UNITS.keys():
        run.append(marks[at + len(run)].text)
    before = [m.text for m in marks[:at]]
    return len(run) > 1 and run[1] in TENS and any(before[i : i + len(run)] == run for i in range(at))


def _decimals(read: _Reader) -> Decimal | None:
    """What follows `point`: digits said one by one, or `twenty five`, `seventy five`."""
    start = read.at
    read.take()
    word = read.peek()
    if word in TENS:
        tens = _below_hundred(read)
        return None if tens is None else tens[0] / 100
    digits = ""
    while len(digits) < 2 and read.peek() in UNITS and UNITS[read.peek()] <= 9:
        if digits and read.peek() not in ("five", "zero"):
            break
        if digits and digits not in ("2", "7"):
            break
        digits += str(UNITS[read.take()])
    if not digits:
        read.at = start
        return None
    return Decimal(f"0.{digits}")
