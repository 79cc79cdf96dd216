"""The command line: one file a noun, loaded when it is called, so that `chalkpost read` starts at once."""

from importlib import import_module

import click

COMMANDS = {
    "try": ("bot.cli.tryout", "try_", "Play the demo week, then serve the chat page."),
    "run": ("bot.cli.run", "run", "Run the bot."),
    "coach": ("bot.cli.coach", "coach", "Invite a coach."),
    "status": ("bot.cli.status", "status", "Say how the bot is."),
    "backup": ("bot.cli.backup", "backup", "Copy the database while the bot runs."),
    "again": ("bot.cli.again", "again", "Take up again what was set aside."),
    "forget": ("bot.cli.forget", "forget", "Delete a client for good."),
    "reseal": ("bot.cli.reseal", "reseal_", "Seal everything by the newest key."),
    "read": ("bot.cli.read", "read", "Read training reports, one a line."),
    "next": ("bot.cli.next", "next_", "Work out what comes next from what was done."),
    "programme": ("bot.cli.programme", "programme", "Check a programme's spreadsheet, or write the template."),
    "week": ("bot.cli.week", "week", "Lay a week's work over the days that there are."),
}
"""Command: its module, its name there, its line in the help."""


class LazyGroup(click.Group):
    """A group that knows its commands' names and lines without loading them."""

    def list_commands(self, ctx: click.Context) -> list[str]:
        """The names, in the order of the table."""
        del ctx
        return list(COMMANDS)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        """The command, loaded."""
        del ctx
        if cmd_name not in COMMANDS:
            return None
        module, name, _ = COMMANDS[cmd_name]
        command = getattr(import_module(module), name)
        if not isinstance(command, click.Command):
            raise TypeError(f"{module}.{name} is no command")
        return command

    def format_commands(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:
        """The list in the help, from the table alone."""
        del ctx
        with formatter.section("Commands"):
            formatter.write_dl([(name, line) for name, (_, _, line) in COMMANDS.items()])


@click.group(cls=LazyGroup, context_settings={"help_option_names": ["-h", "--help"]})
@click.version_option(package_name="chalkpost", prog_name="chalkpost")
def chalkpost() -> None:
    """Strength training with remote clients, through a chat."""
