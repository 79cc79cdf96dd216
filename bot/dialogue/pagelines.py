"""What a client's page looks back on, in words: sets against targets, attendance, pain, equipment."""

from decimal import Decimal

from bot.dialogue.chartwords import target_line
from bot.dialogue.desk import ClientDesk
from bot.dialogue.hurting import place_line
from bot.dialogue.phrases import joined
from bot.dialogue.weekly import all_done
from bot.saying import BLANK, Line, line
from bot.training.past import PastPain
from bot.training.people import Gym
from bot.training.volume import hard_sets, planned_sets

MOST_MUSCLES = 12
ANSWERS = frozenset({"gone", "better", "same", "worse"})


def page_lines(about: ClientDesk) -> list[Line]:
    """All of it, in the order in which a coach asks for it."""
    past = about.past
    lines = [BLANK, *_sets_lines(about)]
    if past.due:
        lines.append(line("page-attendance", done=past.done, due=past.due))
    if past.pains:
        lines += [BLANK, line("page-pains"), *(_pain_line(p) for p in past.pains)]
    return [*lines, BLANK, gym_line(about.profile.gym)]


def _sets_lines(about: ClientDesk) -> list[Line]:
    """This week's hard sets: of the coach's targets where there are some, else of what was planned."""
    done = hard_sets(all_done(about.week))
    targets = about.programme.targets if about.programme is not None else ()
    zero = Decimal(0)
    shown = [
        line("page-muscle", muscle=t.muscle, sets=done.get(t.muscle, zero), of=target_line(t.low, t.high))
        for t in targets
    ]
    if not shown:
        planned = planned_sets(e for s in about.week for e in s.plan.exercises)
        names = sorted({*planned, *done}, key=lambda m: (-planned.get(m, zero), m))
        shown = [
            line(
                "page-muscle",
                muscle=m,
                sets=done.get(m, zero),
                of=line("picture-count", sets=planned.get(m, zero)),
            )
            for m in names
        ]
    if not shown:
        return [line("page-sets-none")]
    key = "page-sets-target" if targets else "page-sets"
    return [line(key, muscles=joined(shown[:MOST_MUSCLES]))]


def _pain_line(pain: PastPain) -> Line:
    key = "page-pain" if pain.exercise is None else "page-pain-during"
    how = _how(pain)
    shown = place_line("page-pain-place", pain.said)
    if pain.exercise is None:
        return line(key, day=pain.day, pain=shown, how=how)
    return line(key, day=pain.day, pain=shown, exercise=pain.exercise, how=how)


def _how(pain: PastPain) -> Line:
    if pain.settled is None:
        return line("page-pain-open")
    if pain.how == "said again":
        return line("page-pain-again", day=pain.settled)
    answer = pain.how if pain.how in ANSWERS else "settled"
    return line(f"page-pain-{answer}", day=pain.settled)


def gym_line(gym: Gym) -> Line:
    """What loads the client's equipment can make."""
    low, high, step = gym.dumbbells
    stack_low, stack_high, stack_step = gym.stack
    return line(
        "page-gym",
        unit=gym.unit.value,
        bar=gym.bar,
        plate=gym.plate,
        dumbbells=line("page-ladder", low=low, high=high, step=step),
        stack=line("page-ladder", low=stack_low, high=stack_high, step=stack_step),
    )
