"""The command menu by role: at most eight, the most used first."""

from bot.wording.bundle import show

COMMANDS = {
    "client": ("today", "week", "undo", "pain", "export", "settings", "help", "privacy"),
    "coach": ("digest", "inbox", "clients", "invite", "programme", "settings", "help", "privacy"),
    "stranger": ("start", "help", "privacy"),
}


def menu(role: str) -> tuple[tuple[str, str], ...]:
    """The commands of a role with their descriptions; `KeyError` for an unknown role."""
    return tuple((command, show(f"menu-{command}")) for command in COMMANDS[role])
