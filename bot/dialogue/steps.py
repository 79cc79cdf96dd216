"""The questions of enrolment and settings: how each is asked, and what an answer means.

Enrolment asks them in turn, `/settings` one at a time. A step is answered by a button or by typing.
"""

import re
from dataclasses import dataclass, replace
from datetime import time
from decimal import Decimal, InvalidOperation
from enum import StrEnum

from bot.dialogue.buttons import show_press
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.naming import LONGEST_NAME, read_name
from bot.dialogue.saytime import read_days, read_time
from bot.dialogue.turn import Talk
from bot.saying import Button, Line, Rows, line
from bot.training.calendar import DAY_NAMES, Place, is_zone, local_time, places_at
from bot.training.facts import ConsentGiven, Fact, ProfileChanged, ReadinessAnswered
from bot.training.people import Gym, TrainingTime
from bot.training.units import Unit

HOURS = (time(6), time(7), time(9), time(12), time(17), time(18), time(19), time(20))
DUMBBELL_STEPS = {Unit.KG: ("1", "2", "2.5"), Unit.LB: ("2.5", "5", "10")}
PLATES = {Unit.KG: ("0.5", "1.25", "2.5"), Unit.LB: ("1.25", "2.5", "5")}
STACK_STEPS = {Unit.KG: ("2.5", "5", "7", "10"), Unit.LB: ("5", "10", "15", "20")}

GYM_WORDS = ("dumbbell", "plate", "stack", "cable", "machine", "bar")


class Step(StrEnum):
    """The seven questions, in order."""

    CONSENT = "consent"
    NAME = "name"
    UNIT = "unit"
    CLOCK = "clock"
    DAYS = "days"
    GYM = "gym"
    READY = "ready"


@dataclass(frozen=True, slots=True)
class Answered:
    """The step has its answer."""

    facts: tuple[Fact, ...]


@dataclass(frozen=True, slots=True)
class Chosen:
    """A part of the answer; the step goes on with this in its talk."""

    data: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class Misread:
    """Not an answer: what was not understood, with an example that works."""

    line: Line


StepResult = Answered | Chosen | Misread


def ask_step(step: Step, desk: Desk, client: ClientDesk, talk: Talk) -> tuple[tuple[Line, ...], Rows]:
    """The question's words and buttons."""
    me = client.profile
    match step:
        case Step.CONSENT:
            lines = (
                line("enrol-consent", coach=client.coach.name, contact=desk.house.operator_contact),
                line("enrol-consent-ask", version=desk.house.consent_version),
            )
            return lines, _rows(("consent", "yes", "consent-yes"), ("consent", "no", "consent-no"))
        case Step.NAME:
            button = Button(line("name-keep", name=me.name), show_press("step", step, "keep"))
            return (line("enrol-name"),), ((button,),) if me.name else ()
        case Step.UNIT:
            return (line("enrol-unit"),), ((_button(step, "kg", "unit-kg"), _button(step, "lb", "unit-lb")),)
        case Step.CLOCK:
            return _ask_clock(desk, client, talk)
        case Step.DAYS:
            return _ask_days(client, talk)
        case Step.GYM:
            return _ask_gym(client, talk)
        case Step.READY:
            words = (line("enrol-ready"), line("enrol-ready-list"), line("enrol-ready-doctor"))
            return words, _rows(("ready", "clear", "ready-clear"), ("ready", "flag", "ready-flag"))


def read_step(step: Step, text: str, *, tapped: bool, desk: Desk, client: ClientDesk, talk: Talk) -> StepResult:
    """What an answer means: `text` is the button's arguments joined by a space, or what was typed."""
    me = client.profile
    match step:
        case Step.CONSENT:
            if _says_yes(text):
                return Answered((ConsentGiven(me.id, desk.house.consent_version),))
            return Misread(line("enrol-consent-needed"))
        case Step.NAME:
            return _read_name(text, tapped=tapped, client=client)
        case Step.UNIT:
            return _read_unit(text, client)
        case Step.CLOCK:
            return _read_clock(text, desk, client)
        case Step.DAYS:
            return _read_training(text, tapped=tapped, client=client, talk=talk)
        case Step.GYM:
            return _read_gym(text, tapped=tapped, client=client, talk=talk)
        case Step.READY:
            return _read_ready(text, client)


# --- name and unit


def _read_name(text: str, *, tapped: bool, client: ClientDesk) -> StepResult:
    name = client.profile.name if tapped else read_name(_name_in(text))
    if not name or len(" ".join(text.split())) > LONGEST_NAME or not any(c.isalpha() for c in name):
        return Misread(line("name-misread", longest=LONGEST_NAME))
    return Answered((ProfileChanged(client.profile.id, name=name),))


_NAMING = re.compile(r"^(?:(?:please )?(?:call me|i am|i'm|im|my name is|my name's|it's|its|just)\s+)+", re.IGNORECASE)


def _name_in(text: str) -> str:
    """The name itself, without the words people put around it."""
    return re.sub(r"[,.!]?\s*please[.!]?$", "", _NAMING.sub("", " ".join(text.split())), flags=re.IGNORECASE).strip(
        " .!"
    )


def _read_unit(text: str, client: ClientDesk) -> StepResult:
    word = text.strip().lower()
    if word.startswith(("kg", "kilo")):
        unit = Unit.KG
    elif word.startswith(("lb", "pound")):
        unit = Unit.LB
    else:
        return Misread(line("unit-misread"))
    gym = client.profile.gym if client.profile.gym.unit is unit else Gym.usual(unit)
    return Answered((ProfileChanged(client.profile.id, unit=unit, gym=gym),))


# --- local time: the zone


def _ask_clock(desk: Desk, client: ClientDesk, talk: Talk) -> tuple[tuple[Line, ...], Rows]:
    if talk.get("clock"):
        wall = time.fromisoformat(talk.get("clock"))
        places = places_at(desk.now, wall, first=(client.coach.zone, client.profile.zone))[:6]
        buttons = [Button(line("clock-place", city=p.city), show_press("step", Step.CLOCK, p.zone)) for p in places]
        return (line("enrol-clock-place", time=wall),), tuple(
            tuple(buttons[n : n + 2]) for n in range(0, len(buttons), 2)
        )
    here = local_time(desk.now, client.coach.zone)
    button = Button(
        line("clock-here", time=here, city=Place(client.coach.zone).city),
        show_press("step", Step.CLOCK, client.coach.zone),
    )
    return (line("enrol-clock"), line("enrol-clock-why")), ((button,),)


def _read_clock(text: str, desk: Desk, client: ClientDesk) -> StepResult:
    if "/" in text and is_zone(text.strip()):
        return Answered((ProfileChanged(client.profile.id, zone=text.strip()),))
    wall = read_time(text)
    if wall is None:
        return Misread(line("clock-misread"))
    places = places_at(desk.now, wall, first=(client.coach.zone,))
    if not places:
        return Misread(line("clock-nowhere", time=wall))
    if len(places) == 1:
        return Answered((ProfileChanged(client.profile.id, zone=places[0].zone),))
    return Chosen((("clock", wall.isoformat("minutes")),))


# --- training days and hour


def _ask_days(client: ClientDesk, talk: Talk) -> tuple[tuple[Line, ...], Rows]:
    chosen, at = _chosen_training(client, talk)
    days = [
        Button(
            line("day-on" if n in chosen else "day-off", day=line(f"day-{name}")), show_press("step", Step.DAYS, "d", n)
        )
        for n, name in enumerate(DAY_NAMES)
    ]
    hours = [
        Button(line("hour-on" if at == hour else "hour-off", time=hour), show_press("step", Step.DAYS, "h", hour.hour))
        for hour in HOURS
    ]
    rows: Rows = (tuple(days[:4]), tuple(days[4:]), tuple(hours[:4]), tuple(hours[4:]))
    if chosen and at:
        rows += ((Button(line("that-is-right"), show_press("step", Step.DAYS, "ok")),),)
    lines = (line("enrol-days"), line("enrol-days-chosen", days=day_words(chosen), time=at or line("not-yet")))
    return lines, rows


def _read_training(text: str, *, tapped: bool, client: ClientDesk, talk: Talk) -> StepResult:
    chosen, at = _chosen_training(client, talk)
    if tapped:
        kind, _, value = text.partition(" ")
        if kind == "d" and value.isdigit() and int(value) < 7:
            chosen = tuple(sorted(set(chosen) ^ {int(value)}))
        elif kind == "h" and value.isdigit() and int(value) < 24:
            at = time(int(value))
        elif kind == "ok" and chosen and at:
            return Answered((ProfileChanged(client.profile.id, trains=TrainingTime(chosen, at)),))
        return Chosen(_training_data(chosen, at))
    days, hour = read_days(text), read_time(text)
    if days is None and hour is None:
        return Misread(line("days-misread"))
    chosen, at = days or chosen, hour or at
    if chosen and at and days and hour:
        return Answered((ProfileChanged(client.profile.id, trains=TrainingTime(chosen, at)),))
    return Chosen(_training_data(chosen, at))


def _chosen_training(client: ClientDesk, talk: Talk) -> tuple[tuple[int, ...], time | None]:
    if talk.get("days") or talk.get("at"):
        days = tuple(int(d) for d in talk.get("days").split(",") if d)
        return days, time.fromisoformat(talk.get("at")) if talk.get("at") else None
    trains = client.profile.trains
    return trains.days, trains.at if trains.days else None


def _training_data(days: tuple[int, ...], at: time | None) -> tuple[tuple[str, str], ...]:
    return (("days", ",".join(map(str, days)) or ","), ("at", at.isoformat("minutes") if at else ""))


def day_words(days: tuple[int, ...]) -> Line:
    """Weekdays in words: Mon, Wed, Fri."""
    if not days:
        return line("not-yet")
    words = line(f"day-{DAY_NAMES[days[0]]}")
    for day in days[1:]:
        words = line("list-and-then", first=words, second=line(f"day-{DAY_NAMES[day]}"))
    return words


# --- the gym


def _ask_gym(client: ClientDesk, talk: Talk) -> tuple[tuple[Line, ...], Rows]:
    gym = _chosen_gym(client, talk)
    unit = gym.unit
    rows: Rows = (
        (Button(line("gym-usual"), show_press("step", Step.GYM, "usual")),),
        _steps("dumbbell", DUMBBELL_STEPS[unit], gym.dumbbells[2], unit),
        _steps("plate", PLATES[unit], gym.plate, unit),
        _steps("stack", STACK_STEPS[unit], gym.stack[2], unit),
        (Button(line("that-is-right"), show_press("step", Step.GYM, "ok")),),
    )
    lines = (
        line("enrol-gym"),
        line("gym-dumbbells", low=gym.dumbbells[0], high=gym.dumbbells[1], step=gym.dumbbells[2], unit=unit.value),
        line("gym-plates", plate=gym.plate, bar=gym.bar, unit=unit.value),
        line("gym-stack", low=gym.stack[0], high=gym.stack[1], step=gym.stack[2], unit=unit.value),
        line("gym-type"),
    )
    return lines, rows


def _steps(what: str, choices: tuple[str, ...], now: Decimal, unit: Unit) -> tuple[Button, ...]:
    return tuple(
        Button(
            line(f"gym-{what}-on" if Decimal(c) == now else f"gym-{what}-off", step=Decimal(c), unit=unit.value),
            show_press("step", Step.GYM, what, c),
        )
        for c in choices
    )


def _read_gym(text: str, *, tapped: bool, client: ClientDesk, talk: Talk) -> StepResult:
    gym = _chosen_gym(client, talk)
    words = text.lower().replace(",", ".").split()
    if tapped and words[:1] in (["usual"], ["ok"]):
        chosen = Gym.usual(gym.unit) if words == ["usual"] else gym
        return Answered((ProfileChanged(client.profile.id, gym=chosen),))
    changed, understood = gym, tapped
    for n, word in enumerate(words[:-1]):
        amounts = [a for a in map(_amount, words[n + 1 :]) if a is not None]
        understood = understood or (bool(amounts) and word.startswith(GYM_WORDS))
        if word.startswith("dumbbell") and amounts:
            changed = replace(changed, dumbbells=_stepped(changed.dumbbells, amounts if not tapped else amounts[:1]))
        elif word.startswith("plate") and amounts:
            changed = replace(changed, plate=amounts[0])
        elif word.startswith(GYM_WORDS[2:5]) and amounts:
            changed = replace(changed, stack=_stepped(changed.stack, amounts if not tapped else amounts[:1]))
        elif word.startswith("bar") and amounts:
            changed = replace(changed, bar=amounts[0])
    return Chosen(_gym_data(changed)) if understood else Misread(line("gym-misread"))


def _stepped(old: tuple[Decimal, Decimal, Decimal], amounts: list[Decimal]) -> tuple[Decimal, Decimal, Decimal]:
    """`2` is a step; `2 30 2` is from, to, step; what makes no sense leaves the old."""
    if len(amounts) >= 3 and amounts[0] < amounts[1] and amounts[2] <= amounts[1] - amounts[0]:
        return amounts[0], amounts[1], amounts[2]
    step = amounts[0]
    low = max(step, old[0] - old[0] % step)
    return (low, old[1], step) if step < old[1] else old


def _amount(word: str) -> Decimal | None:
    try:
        value = Decimal(word.removesuffix("s").removesuffix("kg").removesuffix("lb"))
    except InvalidOperation:
        return None
    return value if value.is_finite() and Decimal("0.1") <= value <= 700 else None


def _chosen_gym(client: ClientDesk, talk: Talk) -> Gym:
    gym = client.profile.gym
    kept = [Decimal(x) for x in talk.get("gym").split()]
    if len(kept) != 8:
        return gym
    bar, plate, d1, d2, d3, s1, s2, s3 = kept
    return replace(gym, bar=bar, plate=plate, dumbbells=(d1, d2, d3), stack=(s1, s2, s3))


def _gym_data(gym: Gym) -> tuple[tuple[str, str], ...]:
    return (("gym", " ".join(str(x) for x in (gym.bar, gym.plate, *gym.dumbbells, *gym.stack))),)


# --- readiness


def _read_ready(text: str, client: ClientDesk) -> StepResult:
    word = text.strip().lower()
    if word in ("clear", "no", "none", "nothing", "nope", "no nothing"):
        return Answered((ReadinessAnswered(client.profile.id, flagged=False),))
    if word in ("flag", "yes", "not sure"):
        return Answered((ReadinessAnswered(client.profile.id, flagged=True),))
    return Answered((ReadinessAnswered(client.profile.id, flagged=True, words=text.strip()[:1000]),))


def _says_yes(text: str) -> bool:
    return text.strip().lower().rstrip(".!") in ("yes", "y", "i agree", "agree", "ok", "okay", "yes i agree")


def _button(step: Step, arg: str, label: str) -> Button:
    return Button(line(label), show_press("step", step, arg))


def _rows(*buttons: tuple[str, str, str]) -> Rows:
    return tuple((_button(Step(step), arg, label),) for step, arg, label in buttons)
