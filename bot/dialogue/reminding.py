"""What the clock starts. Each talk checks again, at the moment of sending, whether there is still something to say."""

from bot.dialogue import awaying, digest, enrol, hurting, missing, resting, today, weekly
from bot.dialogue.desk import Desk
from bot.dialogue.incoming import Due, RuleKind
from bot.dialogue.turn import Turn
from bot.training.people import Standing


def due(desk: Desk, incoming: Due) -> Turn:
    """A rule's time has come."""
    if incoming.kind is RuleKind.DIGEST:
        return digest.due(desk, desk.coach) if desk.coach else Turn(skipped="no such coach")
    client = desk.client
    if client is None:
        return Turn(skipped="no such client")
    if client.profile.standing is Standing.WITHDRAWN:
        return Turn(skipped="withdrawn")
    if not client.profile.reachable:
        return Turn(skipped="unreachable")
    match incoming.kind:
        case RuleKind.SESSION:
            return today.due(desk, client, incoming)
        case RuleKind.CUTOFF:
            return missing.cutoff(desk, client, incoming)
        case RuleKind.WEEK:
            return weekly.due(desk, client, incoming)
        case RuleKind.PAIN_CHECK:
            return hurting.check(desk, client, incoming)
        case RuleKind.NUDGE:
            return enrol.nudge(desk, client, incoming)
        case RuleKind.RESUME:
            return awaying.resume(desk, client, incoming)
        case RuleKind.REST:
            return resting.due(desk, client, incoming)
