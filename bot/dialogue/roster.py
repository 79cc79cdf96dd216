"""The coach's people: everyone in a line, one of them in full."""

from dataclasses import replace

from bot.dialogue.buttons import Press, check_of, show_press
from bot.dialogue.desk import ClientDesk, CoachDesk, Desk, RosterLine
from bot.dialogue.digest import DESK
from bot.dialogue.enrol import days_line
from bot.dialogue.hurting import place_line
from bot.dialogue.incoming import Tapped
from bot.dialogue.looking import look_row, past_row
from bot.dialogue.pagelines import page_lines
from bot.dialogue.phrases import names_line
from bot.dialogue.rules import no_resume, training_rules
from bot.dialogue.sessionview import session_lines
from bot.dialogue.turn import Turn
from bot.saying import BLANK, Button, Line, Rows, Say, Strip, Toast, line
from bot.training.calendar import local_time
from bot.training.facts import AlertHandled, CameBack, HoldLifted, ProfileChanged, ReadinessAnswered
from bot.training.life import Absence, Away
from bot.training.people import Standing
from bot.training.report import Stage
from bot.training.session import Session

MOST_BUTTONS = 30


def clients(coach: CoachDesk, *, fresh: bool = True) -> Turn:
    """`/clients`: last session, adherence of four weeks, next training day; a button for each."""
    me = coach.profile
    if not coach.roster:
        return Turn(says=(Say(me.chat, (line("coach-no-clients"),)),))
    lines = [line("clients-title", count=len(coach.roster)), *(_entry(entry) for entry in coach.roster)]
    rows: Rows = tuple(
        (Button(line("open-client", name=entry.name), show_press("c.view", entry.client, "clients")),)
        for entry in coach.roster[:MOST_BUTTONS]
    )
    return Turn(says=(Say(me.chat, tuple(lines), rows, slot=DESK, fresh=fresh),))


def clients_again(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """Back to the list, in place, as it stands now."""
    del desk, press
    return Turn(says=(Toast(tap.query),)) + clients(coach, fresh=False)


def view_client(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """One client in full, in the place of the digest or the list, with the way back."""
    if coach.about is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    page = client_page(desk, coach, coach.about)
    whence = press.args[0] if press.args and press.args[0] in ("digest", "clients") else "clients"
    back = Button(line(f"back-{whence}"), show_press(f"c.{whence}"))
    return Turn(says=(Toast(tap.query), replace(page, buttons=(*page.buttons, (back,)), slot=DESK)))


def _entry(entry: RosterLine) -> Line:
    if not entry.reachable:
        return line("client-entry-unreachable", name=entry.name)
    if entry.standing != Standing.ACTIVE:
        return line(f"client-entry-{entry.standing}", name=entry.name)
    return line(
        "client-entry",
        name=entry.name,
        last=entry.last_day or line("never"),
        done=entry.sessions_done,
        due=entry.sessions_due,
        next=entry.next_day or line("not-yet"),
    )


def open_client(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """One client in full, in the place of the list."""
    del press
    if coach.about is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    return Turn(says=(Toast(tap.query), client_page(desk, coach, coach.about)))


def client_page(desk: Desk, coach: CoachDesk, about: ClientDesk) -> Say:
    """Who they are, this week, what hurts, what waits."""
    to = about.profile
    lines: list[Line] = [
        line("client-title", name=to.name),
        line("client-trains", days=days_line(to.trains), time=to.trains.at, city=_city(to.zone)),
        line("client-clock", time=local_time(desk.now, to.zone)),
        line("client-programme", title=about.programme.title if about.programme else line("not-yet")),
    ]
    if to.standing is not Standing.ACTIVE:
        lines.append(line(f"client-standing-{to.standing.value}"))
    if to.readiness_flagged:
        lines.append(line("client-readiness"))
    if about.life.away is not None:
        lines.append(_away_line(about.life.away))
    lines += [BLANK, line("client-week")]
    lines += [_session_line(s) for s in about.week] or [line("client-week-nothing")]
    if about.pains:
        lines += [
            BLANK,
            *(place_line("client-pain-urgent" if p.said.urgent else "client-pain", p.said) for p in about.pains),
        ]
    if about.held:
        lines.append(line("client-held", names=names_line([name for name, _ in about.held])))
    if about.questions:
        lines += [BLANK, *(line("client-question", words=q.words[:200] or line("a-message")) for q in about.questions)]
    if about.doubts:
        lines += [line("client-doubt", words=d.words[:200]) for d in about.doubts]
    if to.standing in (Standing.ACTIVE, Standing.PAUSED):
        lines += page_lines(about)
    if about.orders.notes:
        lines += [BLANK, line("notes-entry", day=about.orders.notes[-1].day, words=about.orders.notes[-1].words[:200])]
    return Say(coach.profile.chat, tuple(lines), _page_rows(about), about=to.id)


def _page_rows(about: ClientDesk) -> Rows:
    to = about.profile
    rows: list[tuple[Button, ...]] = [(Button(line("reply-to", name=to.name), show_press("c.reply", to.id)),)]
    if about.questions:
        rows.append((Button(line("handled-question", name=to.name), show_press("c.answered", to.id)),))
    rows += [
        (Button(line("lift-hold", exercise=name), show_press("c.lift", to.id, n, check_of(name))),)
        for n, (name, _) in enumerate(about.held[:5])
    ]
    if about.past.trained:
        rows.append(past_row(about))
    if to.standing in (Standing.ACTIVE, Standing.PAUSED):
        rows.append(look_row(about))
    if about.programme is not None or about.session is not None:
        rows.append(
            (
                Button(line("open-lifts"), show_press("c.lifts", to.id)),
                Button(line("open-orders"), show_press("c.plan", to.id)),
            )
        )
    rows.append(
        (
            Button(line("open-notes"), show_press("c.notes", to.id)),
            Button(line("open-changes"), show_press("c.changes", to.id)),
        )
    )
    rows.append((Button(line("open-sload"), show_press("c.sload", to.id)),))
    key = "give-again" if about.programme else "give-sample"
    rows.append((Button(line(key, name=to.name), show_press("c.give", to.id)),))
    rows.append((Button(line("open-away"), show_press("c.away", to.id)),))
    rows.append((Button(line("handover-open"), show_press("c.hand", to.id)),))
    if to.standing is Standing.PAUSED:
        rows.append((Button(line("start-client", name=to.name), show_press("c.start", to.id)),))
    return tuple(rows)


def last_session(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The latest session, planned beside done."""
    del desk, press
    about = coach.about
    if about is None or about.session is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    session = about.session
    lines = session_lines(about.profile.name, session)
    return Turn(says=(Toast(tap.query), Say(coach.profile.chat, lines, about=about.profile.id)))


def lift(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The coach lets an exercise progress again: the one on the button, whatever was lifted meanwhile."""
    del desk
    about = coach.about
    if about is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    name = next((name for name, _ in about.held if press.args[1:] == (check_of(name),)), None)
    if name is None:
        return Turn(says=(Toast(tap.query, line("toast-not-held")),))
    return Turn((HoldLifted(about.profile.id, name),), (Toast(tap.query, line("toast-lifted", exercise=name)),))


def start(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The coach's word that this client may train: after a readiness answer, or from a pause."""
    del desk, press
    about = coach.about
    if about is None or about.profile.standing is not Standing.PAUSED:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    to = about.profile
    cleared = (ReadinessAnswered(to.id, flagged=False),) if to.readiness_flagged else ()
    return Turn(
        (ProfileChanged(to.id, standing=Standing.ACTIVE), CameBack(to.id), *cleared),
        (
            Toast(tap.query, line("toast-started", name=to.name)),
            Say(to.chat, (line("started-by-coach", coach=coach.profile.name),), about=coach.profile.id),
            Say(coach.profile.chat, (line("coach-started", name=to.name),), about=to.id, silent=True),
        ),
        (*training_rules(to), no_resume(to)),
    )


def handled(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """An alert is seen to: its buttons go, the record says who and when."""
    alert = press.args[0] if press.args else ""
    about = coach.about
    if about is None or not alert:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    said = Say(
        coach.profile.chat,
        (line("alert-handled", name=about.profile.name, time=local_time(desk.now, coach.profile.zone)),),
        slot=f"handled:{alert}",
        silent=True,
        about=about.profile.id,
    )
    strip = Strip(coach.profile.chat, slot=f"alert:{alert}")
    return Turn((AlertHandled(coach.profile.id, alert),), (Toast(tap.query, line("toast-handled")), strip, said))


def _away_line(away: Away) -> Line:
    until = line("not-yet") if away.until is None else away.until
    if away.why is Absence.QUIET:
        return line("client-quiet", since=away.since)
    return line(f"client-{away.why.value}", since=away.since, until=until)


def _session_line(session: Session) -> Line:
    done = sum(1 for p in session.done if p.stage is Stage.WORK)
    key = f"client-session-{session.ended.value}" if session.ended else "client-session-open"
    return line(key, day=session.day, title=session.plan.title, done=done, sets=session.plan.set_count)


def _city(zone: str) -> str:
    return zone.rsplit("/", 1)[-1].replace("_", " ")
