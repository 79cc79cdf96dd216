"""Which talk answers: by what came in, who it is from, and where the talk with them stands. Pure."""

from collections.abc import Callable
from dataclasses import replace

from bot.dialogue import (
    addressing,
    answering,
    awaying,
    awaysaid,
    changed,
    coaching,
    copying,
    correcting,
    daymoves,
    digest,
    doubt,
    ending,
    enrol,
    giving,
    handing,
    hurting,
    inplace,
    journey,
    leaving,
    lesstime,
    lifts,
    lightening,
    loadpage,
    looking,
    makinggood,
    missing,
    mylifts,
    noting,
    ordering,
    otherdays,
    papers,
    picking,
    programmes,
    relay,
    reminding,
    replanning,
    reporting,
    resting,
    roster,
    swaporders,
    swapping,
    tapping,
    thisweek,
    today,
    unread,
    weekly,
)
from bot.dialogue.buttons import Press, read_press
from bot.dialogue.desk import ClientDesk, CoachDesk, Desk
from bot.dialogue.incoming import (
    BotBlocked,
    Due,
    Edited,
    FileFailed,
    Incoming,
    MediaKind,
    MediaSent,
    SheetRead,
    Tapped,
    Typed,
)
from bot.dialogue.menuwords import asked_page
from bot.dialogue.turn import TalkSet, Turn
from bot.saying import Say, Toast, line
from bot.training.facts import ReachChanged
from bot.training.people import Standing

ClientTap = Callable[[Desk, ClientDesk, Tapped, Press], Turn]
CoachTap = Callable[[Desk, CoachDesk, Tapped, Press], Turn]

CLIENT_TAPS: dict[str, ClientTap] = {
    "step": enrol.tapped,
    "ask": enrol.change,
    "words": enrol.words,
    "clockto": journey.by_button,
    "restset": resting.choose,
    "pause": enrol.pause,
    "away": awaying.ask,
    "awayset": awaying.by_button,
    "awayask": awaying.ask_date,
    "awayto": awaysaid.by_button,
    "awaynot": awaysaid.take_back,
    "go-on": enrol.go_on,
    "withdraw": enrol.withdraw,
    "keep": enrol.keep,
    "set": tapping.a_set,
    "drop": tapping.a_drop,
    "mini": tapping.minis,
    "left": tapping.left,
    "rest": tapping.rest_as_planned,
    "skip": tapping.skip,
    "load": tapping.choose_load,
    "other": swapping.other,
    "swapin": swapping.chosen,
    "askswap": swapping.ask_coach,
    "instead": inplace.instead,
    "time": lesstime.ask,
    "cut": lesstime.cut,
    "back": replanning.back,
    "more": makinggood.more,
    "undo": tapping.undo,
    "end": tapping.end,
    "felt": ending.felt,
    "pick": picking.pick,
    "nopick": picking.drop,
    "hand": handing.answered,
    "hurt": hurting.button,
    "urgent": hurting.urgent,
    "nopain": hurting.nothing,
    "score": hurting.scored,
    "check": hurting.checked,
    "did": missing.did,
    "move": missing.move,
    "skipday": missing.skip_day,
    "start": today.start,
    "lifts": mylifts.show,
    "curve": mylifts.curve,
    "wk": thisweek.show,
    "wkday": daymoves.day_page,
    "wkgo": daymoves.move,
    "wklose": daymoves.lose,
    "wklay": daymoves.settle,
    "wkback": daymoves.undo,
    "tocoach": relay.send_to_coach,
    "erase": leaving.erase_client,
    "keepall": leaving.keep_client,
}
"""Buttons in a client's chat, by their name."""

COACH_TAPS: dict[str, CoachTap] = {
    "c.ask": coaching.ask,
    "c.set": coaching.tapped,
    "c.open": roster.open_client,
    "c.view": roster.view_client,
    "c.clients": roster.clients_again,
    "c.digest": digest.again,
    "c.last": roster.last_session,
    "c.lift": roster.lift,
    "c.start": roster.start,
    "c.handled": roster.handled,
    "c.give": giving.sample,
    "c.prog": programmes.look,
    "c.tmpl": programmes.template,
    "c.sheet": programmes.as_sheet,
    "c.lay": otherdays.show,
    "c.layit": otherdays.take,
    "c.gives": giving.preview,
    "c.giveit": giving.give,
    "c.giveall": giving.give_all,
    "c.ungive": giving.undo,
    "c.reply": relay.reply_mode,
    "c.cancel": relay.cancel,
    "c.answered": relay.answered,
    "c.pick": addressing.pick,
    "c.several": addressing.several,
    "c.switch": addressing.switch,
    "c.tothese": addressing.to_these,
    "c.toall": addressing.to_all,
    "c.erase": leaving.erase_coach,
    "c.keepall": leaving.keep_coach,
    "c.lifts": lifts.show_all,
    "c.lift1": lifts.show_one,
    "c.load": ordering.set_load,
    "c.loadask": ordering.ask_load,
    "c.noload": ordering.unset_load,
    "c.hold": ordering.hold,
    "c.other": swaporders.other,
    "c.swapin": swaporders.chosen,
    "c.unswap": swaporders.back,
    "c.curves": looking.choose_lift,
    "c.curve": looking.strength,
    "c.muscles": looking.muscles,
    "c.days": looking.days,
    "c.past": looking.past_session,
    "c.plan": ordering.plan_page,
    "c.light": ordering.light_week,
    "c.nolight": lightening.decline,
    "c.sload": loadpage.show,
    "c.auto": ordering.autonomy,
    "c.ease": ordering.ease,
    "c.yes": ordering.approve,
    "c.notes": noting.show,
    "c.note": noting.ask,
    "c.hand": handing.ask,
    "c.away": awaying.coach_asks,
    "c.awayset": awaying.coach_sets,
    "c.awayask": awaying.coach_asks_date,
    "c.changes": changed.show,
}
"""Buttons in a coach's chat."""

COACH_TALKS = frozenset({"coach", "reply", "order-load", "note", "handover", "c-away"})
"""Talks in which a coach's next words are an answer, also where the coach trains with somebody."""

RIGHTS_TAPS = frozenset({"erase", "keepall"})
"""What anybody of whom something is kept may press, also who has taken their consent back."""

JOINING_TAPS = RIGHTS_TAPS | {"step", "withdraw", "keep"}
"""What somebody may press who has not finished joining."""


def answer(desk: Desk, incoming: Incoming) -> Turn:
    """What follows from one incoming thing."""
    if (
        isinstance(incoming, Due | BotBlocked | SheetRead | FileFailed)
        or (client := _known(desk)) is None
        or client.profile.reachable
    ):
        return resting.with_notice(desk, incoming, _answer(desk, incoming))
    # Who writes can be reached again, whatever we had been told.
    turn = resting.with_notice(desk, incoming, _answer(desk, incoming))
    return Turn((ReachChanged(client.profile.id, reachable=True),)) + turn


def _answer(desk: Desk, incoming: Incoming) -> Turn:
    if desk.talk is not None and desk.talk.name == doubt.TALK and not isinstance(incoming, Typed):
        desk = replace(desk, talk=None)
    match incoming:
        case Due():
            return reminding.due(desk, incoming)
        case BotBlocked():
            return _reach(desk, incoming)
        case Tapped():
            return _acknowledged(incoming, _tapped(desk, incoming))
        case Typed():
            return _typed(desk, incoming)
        case Edited():
            client = _active(desk)
            if client is not None:
                return correcting.edited(desk, client, incoming)
            return relay.edited(desk.coach, incoming) if desk.coach is not None else Turn()
        case MediaSent():
            return _media(desk, incoming)
        case SheetRead() | FileFailed():
            return _file(desk, incoming)


# --- buttons


def _tapped(desk: Desk, tap: Tapped) -> Turn:
    press = read_press(tap.data)
    if press is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    coach_tap = COACH_TAPS.get(press.op)
    if coach_tap is not None and desk.coach is not None:
        return coach_tap(desk, desk.coach, tap, press)
    client_tap, client = CLIENT_TAPS.get(press.op), desk.client
    is_gone = client is not None and client.profile.standing is Standing.WITHDRAWN and press.op not in RIGHTS_TAPS
    if client_tap is None or client is None or is_gone:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    if client.profile.standing is Standing.JOINING and press.op not in JOINING_TAPS:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    return client_tap(desk, client, tap, press)


def _acknowledged(tap: Tapped, turn: Turn) -> Turn:
    """Every tap is acknowledged, whatever it did."""
    if any(isinstance(say, Toast) for say in turn.says):
        return turn
    return Turn(says=(Toast(tap.query),)) + turn


# --- words


def _typed(desk: Desk, typed: Typed) -> Turn:
    command, *rest = typed.text.split(maxsplit=1) or ("",)
    if command.startswith("/"):
        return _command(desk, typed, command.lower().partition("@")[0], rest[0] if rest else "")
    client, coach = _known(desk), desk.coach
    if client is None and coach is None:
        return papers.stranger(typed.chat)
    if typed.forwarded:
        return Turn(says=(Say(typed.chat, (line("forwarded"),), reply_to=typed.message),))
    name = desk.talk.name if desk.talk else ""
    if coach is not None and (client is None or name in COACH_TALKS or desk.reply_about):
        return _coach_typed(desk, coach, typed, name)
    if client is None:
        return papers.stranger(typed.chat)
    if client.profile.standing is Standing.JOINING or name == "settings":
        return enrol.typed(desk, client, typed)
    if name == doubt.TALK:
        turn = answering.answered(desk, client, typed)
        done = Turn(keeps=(TalkSet(typed.chat, None),))
        return turn if turn is not None else done + _client_typed(replace(desk, talk=None), client, typed, "")
    return _client_typed(desk, client, typed, name)


def _client_typed(desk: Desk, client: ClientDesk, typed: Typed, name: str) -> Turn:
    """A client's words that answer no question about a message."""
    if name == "pain":
        return hurting.typed(desk, client, typed) + reporting.sets_beside_pain(desk, client, typed)
    answered = awaysaid.date_typed(desk, client, typed)
    answered = answered or _asked_for(desk, client, typed.text, name)
    if answered is not None:
        return answered
    page = _page_asked(desk, client, typed)
    if page is not None:
        return page
    if name == "score":
        return Turn(keeps=(TalkSet(typed.chat, None),)) + reporting.typed(desk, client, typed)
    return reporting.typed(desk, client, typed)


def _page_asked(desk: Desk, client: ClientDesk, typed: Typed) -> Turn | None:
    """A page of the menu, asked for without its slash. A cry for help goes to the coach as well, and what the open
    session holds is taken back as any other words about it are; an answer to the coach's own words is theirs."""
    command = None if desk.reply_about else asked_page(typed.text)
    session = client.session
    if command is None or (command == "/undo" and session is not None and session.reports):
        return None
    if command == "/help":
        return reporting.typed(desk, client, typed) + papers.help_for(desk, typed.chat)
    return _command(desk, typed, command, "")


def _coach_typed(desk: Desk, coach: CoachDesk, typed: Typed, talk: str) -> Turn:
    """A coach's words: an answer to what was asked, else for a client. A reply is always for whom it replies to."""
    if desk.reply_about:
        return relay.answer(desk, coach, typed)
    match talk:
        case "coach":
            return coaching.typed(desk, coach, typed)
        case "order-load":
            return ordering.load_typed(desk, coach, typed)
        case "note":
            return noting.typed(desk, coach, typed)
        case handing.TALK:
            return handing.link_typed(desk, coach, typed)
        case awaying.COACHS_TALK:
            return awaying.coach_types(desk, coach, typed)
        case _:
            return relay.answer(desk, coach, typed)


def _asked_for(desk: Desk, client: ClientDesk, text: str, talk: str) -> Turn | None:
    """A typed answer to a number or a word that we asked for; `None` where it is something else."""
    match talk:
        case "score":
            return hurting.score_typed(desk, client, text)
        case "felt":
            return ending.felt_typed(desk, client, text)
        case "check":
            return hurting.check_typed(desk, client, text)
        case _:
            return None


def _command(desk: Desk, typed: Typed, command: str, rest: str) -> Turn:
    chat = typed.chat
    if command == "/start":
        return _start(desk, typed, rest.strip())
    if command == "/privacy":
        return papers.privacy(desk, chat)
    if command == "/developer_info":
        return papers.developer(desk, chat)
    if command == "/help":
        return papers.help_for(desk, chat)
    if command == "/export":
        return copying.on_request(desk, chat)
    if command == "/delete_me":
        return leaving.on_request(desk, chat)
    if _known(desk) is None and desk.coach is None:
        return papers.stranger(chat)
    if command == "/cancel":
        return _cancel(desk, chat)
    mine = _coach_command(desk, desk.coach, command) if desk.coach else None
    if mine is not None:
        return mine
    client = _known(desk)
    if client is not None and client.profile.standing is Standing.JOINING:
        return enrol.resume(desk, client)
    theirs = _client_command(desk, client, command) if client else None
    return theirs or Turn(says=(Say(chat, (line("unknown-command"),)),))


def _coach_command(desk: Desk, coach: CoachDesk, command: str) -> Turn | None:
    match command:
        case "/invite":
            return coaching.invite(desk, coach)
        case "/clients":
            return roster.clients(coach)
        case "/inbox":
            return unread.show(desk, coach)
        case "/digest":
            return digest.on_request(desk, coach)
        case "/programme" | "/plan":
            return programmes.shelf(coach)
        case "/settings" if desk.client is None:
            return coaching.settings(desk, coach)
        case _:
            return None


def _client_command(desk: Desk, client: ClientDesk, command: str) -> Turn | None:
    match command:
        case "/today" | "/log":
            return today.on_request(desk, client)
        case "/week":
            return weekly.on_request(desk, client)
        case "/undo":
            return tapping.undo_typed(desk, client)
        case "/pain":
            return hurting.ask(desk, client)
        case "/settings":
            return enrol.settings(client)
        case _:
            return None


def _start(desk: Desk, typed: Typed, payload: str) -> Turn:
    client = _known(desk)
    if client is not None and client.profile.standing is Standing.JOINING:
        return enrol.resume(desk, client)
    if payload and desk.invite is not None and desk.invite.is_open:
        if desk.invite.coach:
            if client is not None:
                return Turn(says=(Say(typed.chat, (line("already-client", coach=client.coach.name),)),))
            return enrol.joined(desk, typed)
        if desk.coach is not None:
            return Turn(says=(Say(typed.chat, (line("already-coach"),)),))
        return coaching.joined(desk, typed)
    if client is None and desk.coach is None:
        if payload:
            return Turn(says=(Say(typed.chat, (line("invite-spent"),)),))
        return papers.stranger(typed.chat)
    return papers.help_for(desk, typed.chat)


def _cancel(desk: Desk, chat: int) -> Turn:
    is_joining = desk.client is not None and desk.client.profile.standing is Standing.JOINING
    if is_joining and (desk.talk is None or desk.talk.name == "enrol"):
        return Turn(says=(Say(chat, (line("cancel-joining"),)),))
    key = "cancelled" if desk.talk else "cancel-nothing"
    return Turn(says=(Say(chat, (line(key),)),), keeps=(TalkSet(chat, None),))


# --- everything else


def _media(desk: Desk, media: MediaSent) -> Turn:
    client = _active(desk)
    if desk.coach is not None and programmes.is_sheet(media) and not _is_for_somebody(desk):
        return programmes.sent(desk.coach, media)
    if desk.coach is not None and (client is None or desk.reply_about or (desk.talk and desk.talk.name == "reply")):
        return relay.answer(desk, desk.coach, media)
    joining = _known(desk)
    if client is None:
        return enrol.resume(desk, joining) if joining is not None else papers.stranger(media.chat)
    match media.kind:
        case MediaKind.STICKER | MediaKind.OTHER:
            return Turn(says=(_not_read(desk, media),))
        case MediaKind.PHOTO | MediaKind.VIDEO | MediaKind.VOICE | MediaKind.DOCUMENT:
            turn = relay.media_to_coach(desk, client, media)
            if media.caption and not media.forwarded:
                words = Typed(media.chat, media.message, media.at, media.caption)
                turn += reporting.typed_beside_media(desk, client, words)
            return turn


def _is_for_somebody(desk: Desk) -> bool:
    """The coach answers somebody, or is in reply mode: what is sent then goes to them, whatever it is."""
    return bool(desk.reply_about) or (desk.talk is not None and desk.talk.name == "reply")


def _file(desk: Desk, file: SheetRead | FileFailed) -> Turn:
    """A file that we asked for: who asked is a coach, and still is one."""
    if desk.coach is None:
        return Turn(skipped="nobody waits for this file")
    if isinstance(file, FileFailed):
        return programmes.failed(desk.coach, file)
    return programmes.received(desk, desk.coach, file)


def _not_read(desk: Desk, media: MediaSent) -> Say:
    """Said once in ten minutes, however many stickers come."""
    slot = f"not-read:{int(desk.now.timestamp()) // 600}"
    return Say(media.chat, (line("media-not-read"),), slot=slot, silent=True)


def _reach(desk: Desk, incoming: BotBlocked) -> Turn:
    client = desk.client
    if client is None or client.profile.reachable is not incoming.blocked:
        return Turn(skipped="nothing changed")
    return Turn((ReachChanged(client.profile.id, reachable=not incoming.blocked),))


def _known(desk: Desk) -> ClientDesk | None:
    """The client, unless they have withdrawn: then they are a stranger again."""
    client = desk.client
    return client if client is not None and client.profile.standing is not Standing.WITHDRAWN else None


def _active(desk: Desk) -> ClientDesk | None:
    """The client who may report: joined, whether paused or not."""
    client = _known(desk)
    return client if client is not None and client.profile.standing is not Standing.JOINING else None
