"""Texts that stand on their own: help by role, the privacy notice, and the one sentence for strangers."""

from bot.dialogue.desk import Desk
from bot.dialogue.turn import Turn
from bot.saying import Say, line


def help_for(desk: Desk, chat: int) -> Turn:
    """`/help`: what this person can do, with examples that work."""
    if desk.client is not None:
        lines = (line("help-client"), line("help-client-examples"), line("help-client-more"), line("help-caution"))
        says = (Say(chat, lines),)
        return Turn(says=says + ((Say(chat, (line("help-coach"),)),) if desk.coach else ()))
    if desk.coach is not None:
        return Turn(says=(Say(chat, (line("help-coach"), line("help-caution"))),))
    return stranger(chat)


def privacy(desk: Desk, chat: int) -> Turn:
    """`/privacy`: what is kept, why, for how long, and how to get it or end it."""
    lines = (
        line("privacy-title", version=desk.house.consent_version),
        line("privacy-what"),
        line("privacy-why"),
        line("privacy-who"),
        line("privacy-rights", contact=desk.house.operator_contact),
    )
    return Turn(says=(Say(chat, lines),))


def developer(desk: Desk, chat: int) -> Turn:
    """`/developer_info`: who runs this."""
    return Turn(says=(Say(chat, (line("developer-info", contact=desk.house.operator_contact),)),))


def stranger(chat: int) -> Turn:
    """One polite sentence and nothing else."""
    return Turn(says=(Say(chat, (line("stranger"),)),))
