"""Keeping a fact: it is added to the record, and the tables that are read follow it."""

from typing import assert_never

from bot.training.facts import (
    AlertHandled,
    AutonomySet,
    CameBack,
    ClientJoined,
    CoachChanged,
    CoachJoined,
    ConsentGiven,
    ConsentWithdrawn,
    DoubtKept,
    DoubtSettled,
    EffortRated,
    ExerciseHeld,
    ExerciseSwapped,
    Fact,
    HandoverAnswered,
    HandoverOffered,
    HoldLifted,
    InviteMade,
    LightWeekDeclined,
    LightWeekOrdered,
    LoadOrdered,
    LoadsApproved,
    MissNoted,
    NoteKept,
    PainFollowedUp,
    PainReported,
    PainScored,
    PlanChanged,
    ProfileChanged,
    ProgrammeAssigned,
    ProgrammeShelved,
    QuestionAnswered,
    QuestionAsked,
    ReachChanged,
    ReadinessAnswered,
    Reported,
    ReportTakenBack,
    RestNoticeSet,
    ReturnEased,
    SessionEnded,
    SessionMoved,
    SessionPlanned,
    SessionReopened,
    WeekLaid,
    WentAway,
)
from bot.training.orders import Order
from storage import course, enrolment, life, matters, orders
from storage.matters import Hurt, Kind
from storage.record import About, Origin, append
from storage.work import Overtaken, Work

__all__ = ["Origin", "Overtaken", "keep"]


def keep(work: Work, fact: Fact, origin: Origin) -> None:
    """Adds the fact to the record and brings the tables up to date.

    `Overtaken` where another turn came first (the invitation is used, the day has its session): undo the turn, build
    the desk anew and answer again. `LookupError` where the fact is about somebody or something that isn't kept.
    """
    append(work, fact, origin, _follow(work, fact, origin))


def _follow(work: Work, fact: Fact, origin: Origin) -> About:
    match fact:
        case InviteMade() | CoachJoined() | CoachChanged() | ProgrammeShelved():
            return enrolment.follow_coach(work, fact, origin)
        case ClientJoined() | ConsentGiven() | ConsentWithdrawn() | ProfileChanged() | ReadinessAnswered():
            return enrolment.follow_client(work, fact, origin)
        case ReachChanged() | ProgrammeAssigned():
            return enrolment.follow_client(work, fact, origin)
        case SessionPlanned():
            return course.plan(work, fact, origin)
        case Reported() | ReportTakenBack():
            return course.report(work, fact, origin)
        case SessionEnded() | SessionReopened() | SessionMoved() | MissNoted() | EffortRated() | PlanChanged():
            return course.change_session(work, fact, origin)
        case PainReported() | PainScored() | PainFollowedUp() | HoldLifted():
            return _follow_pain(work, fact, origin)
        case QuestionAsked() | QuestionAnswered() | DoubtKept() | DoubtSettled():
            return _follow_words(work, fact, origin)
        case AlertHandled():
            return _follow_handled(work, fact, origin)
        case ExerciseHeld() | LoadOrdered() | LoadsApproved() | LightWeekOrdered():
            return _follow_order(work, fact, origin)
        case ExerciseSwapped() | AutonomySet() | NoteKept():
            return _follow_order(work, fact, origin)
        case HandoverOffered() | HandoverAnswered():
            return _follow_handover(work, fact, origin)
        case WeekLaid() | WentAway() | CameBack() | ReturnEased() | LightWeekDeclined() | RestNoticeSet():
            life.keep(work, fact, origin)
            return About(fact.client, enrolment.coach_of(work, fact.client))
        case _:
            assert_never(fact)


def _follow_pain(work: Work, fact: PainReported | PainScored | PainFollowedUp | HoldLifted, origin: Origin) -> About:
    coach = enrolment.coach_of(work, fact.client)
    match fact:
        case PainReported():
            hurt = Hurt(fact.exercise, fact.said, fact.words)
            matters.open_pain(work, fact.client, coach, key=fact.pain, session=fact.session, hurt=hurt, at=origin.at)
            return About(fact.client, coach, fact.session)
        case PainScored():
            matters.score(work, fact.client, key=fact.pain, score=fact.score)
        case PainFollowedUp():
            if fact.settled:
                matters.settle(work, fact.client, key=fact.pain, answer=fact.answer, at=origin.at)
        case HoldLifted():
            matters.lift(work, fact.client, fact.exercise)
            orders.keep(work, fact.client, fact, origin)
    return About(fact.client, coach)


def _follow_words(
    work: Work, fact: QuestionAsked | QuestionAnswered | DoubtKept | DoubtSettled, origin: Origin
) -> About:
    client, coach = fact.client, enrolment.coach_of(work, fact.client)
    match fact:
        case QuestionAsked(_, key, words):
            body = matters.Words(words)
            matters.open_words(work, client, coach, kind=Kind.QUESTION, key=key, session=None, body=body, at=origin.at)
            return About(client, coach)
        case QuestionAnswered():
            matters.close_all(work, client, kind=Kind.QUESTION, at=origin.at)
            return About(client, coach)
        case DoubtKept(_, session, key, words, stood):
            body = matters.Words(words, stood)
            matters.open_words(work, client, coach, kind=Kind.DOUBT, key=key, session=session, body=body, at=origin.at)
            return About(client, coach, session, key)
        case DoubtSettled(_, session, key):
            matters.close(work, client, kind=Kind.DOUBT, key=key, at=origin.at)
            return About(client, coach, session, key)


def _follow_handled(work: Work, fact: AlertHandled, origin: Origin) -> About:
    client = matters.handled(work, fact.coach, fact.alert, at=origin.at)
    if client is None:
        client = course.handled(work, fact.coach, fact.alert, at=origin.at)
    return About(client, fact.coach)


def _follow_handover(work: Work, fact: HandoverOffered | HandoverAnswered, origin: Origin) -> About:
    before = enrolment.coach_of(work, fact.client)
    orders.keep(work, fact.client, fact, origin)
    match fact:
        case HandoverOffered(_, to, _, _, token_hash):
            enrolment.use_invite(work, token_hash, to, origin.at)
        case HandoverAnswered(client, to, yes):
            if yes:
                enrolment.hand_over(work, client, to)
    return About(fact.client, before)


def _follow_order(work: Work, fact: Order, origin: Origin) -> About:
    orders.keep(work, fact.client, fact, origin)
    return About(fact.client, enrolment.coach_of(work, fact.client))
