"""Words that want another exercise today: equipment that is not there, or an exercise that can't be done or is to be
swapped. Only what says so clearly; what is left is no wish, and nothing is kept of one."""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from bot.dialogue.wishwords import ARTICLE, AT_HOME, CANT, ELSE, INSTEAD, LACKS, MAY, STORY, SWAP, VAGUE
from bot.notation.names import read_names, session_index
from bot.training.catalogue import catalogue
from bot.training.catalogue_exercise import name_key
from bot.training.catalogue_places import joints_of
from bot.training.catalogue_terms import Equipment
from bot.training.gym import BAR, DUMBBELLS
from bot.training.plan import PlannedExercise
from bot.training.swap_hand import equipment_of

LONGEST = 18
"""Words; who writes more tells a story."""
_CLAUSES = re.compile(r"[.;!,\n:()]|(?<=\?)|\b(?:so|because|since|as|cause|cos)\b(?= )")


@dataclass(frozen=True, slots=True)
class Wish:
    """What is wanted: `exercises` of the session to be replaced (by `into`, where one was named), or what is `missing`
    today, with the exercises that need it (none: nothing that was asked for here does)."""

    exercises: tuple[str, ...]
    missing: frozenset[Equipment] = frozenset()
    into: str = ""


def may_wish(text: str) -> bool:
    """Whether the words may hold a wish: so that what an answer takes is only looked up then."""
    return len(text.split()) <= LONGEST and MAY.search(_plain(text)) is not None


def read_wish(text: str, exercises: Sequence[PlannedExercise]) -> Wish | None:
    """What the words want of these exercises (those that are still open); `None` where that is not clear."""
    plain = _plain(text)
    if len(plain.split()) > LONGEST or STORY.search(plain):
        return None
    found = [wish for clause in _CLAUSES.split(plain) if (wish := _clause(clause.strip(), plain, exercises))]
    if not found:
        return None
    missing = frozenset(e for wish in found for e in wish.missing)
    named = [wish for wish in found if not wish.missing]
    return replace(named[0], missing=missing) if named else Wish(needing(exercises, missing), missing)


def needing(exercises: Iterable[PlannedExercise], missing: frozenset[Equipment]) -> tuple[str, ...]:
    """Those that can't be done without what is missing."""
    return tuple(e.name for e in exercises if missing.intersection(_needs(e)))


def _clause(clause: str, whole: str, exercises: Sequence[PlannedExercise]) -> Wish | None:
    if not clause.endswith("?"):
        for pattern in LACKS:
            match = pattern.fullmatch(clause)
            wish = _lack(match["thing"], clause, whole, exercises) if match else None
            if wish is not None:
                return wish
        if (match := CANT.fullmatch(clause)) and (name := _named(match["thing"], exercises)):
            return Wish((name,))
    for pattern in (SWAP, ELSE, INSTEAD):
        match = pattern.fullmatch(clause)
        name = _named(match["thing"], exercises) if match else ""
        if match and name:
            return _swap(name, (match.groupdict().get("into") or "").strip())
    return None


def _swap(name: str, into: str) -> Wish | None:
    """For another that the catalogue knows, or for whatever there is; other words are none that we understand."""
    if into in VAGUE:
        return Wish((name,))
    other = catalogue().find(re.sub(rf"^{ARTICLE}", "", into))
    return None if other is None else Wish((name,), into=other.name)


def _lack(thing: str, clause: str, whole: str, exercises: Sequence[PlannedExercise]) -> Wish | None:
    missing = frozenset(equipment_of(thing) or equipment_of(thing.removesuffix("es")))
    if missing:
        is_everything = thing.strip() in ("gym", "equipment")
        return None if is_everything and not AT_HOME.search(whole) else Wish(needing(exercises, missing), missing)
    name = _named(thing, exercises)
    return Wish((name,)) if name and not clause.endswith(" left") else None


def _named(thing: str, exercises: Sequence[PlannedExercise]) -> str:
    """The one exercise that these words name, and nothing beside it; empty where there is none."""
    said = re.sub(r"\s+(?:machines?|stations?|stands?)$", "", thing.strip())
    key = name_key(said)
    exact = [e.name for e in exercises if key in {name_key(n) for n in (e.name, *e.aliases)}]
    if len(exact) == 1:
        return exact[0]
    if joints_of(said):
        return ""  # a place of the body
    words = re.findall(r"[a-z]+", said)
    hits = read_names(words, session_index(tuple(exercises)))
    whole = [h for h in hits if (h.start, h.end) == (0, len(words)) and len(h.exercises) == 1]
    return exercises[whole[0].exercises[0]].name if len(hits) == 1 and whole else ""


def _needs(exercise: PlannedExercise) -> tuple[Equipment, ...]:
    known = catalogue().find(exercise.name)
    if known is not None:
        return known.needs
    words = set(re.findall(r"[a-z]+", exercise.name.casefold()))
    by_loads = {BAR: (Equipment.BAR,), DUMBBELLS: (Equipment.DUMBBELLS,)}.get(exercise.equipment, ())
    by_name = tuple(e for e in (Equipment.CABLE, Equipment.MACHINE, Equipment.BAND) if e.value in words)
    return (*by_loads, *by_name)


def _plain(text: str) -> str:
    """Lower case, straight apostrophes, single spaces; `cant` and `dont` as they are meant."""
    words = " ".join(text.casefold().replace("’", "'").split())
    words = re.sub(r"\b\d{1,2} ?(?:/|out of) ?10\b", "", words)  # how bad it hurts is no report
    return re.sub(r"\b(can|don|isn|aren|haven|couldn)t\b", r"\1't", words)
