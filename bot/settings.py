"""Settings: from the environment (`CHALKPOST_...`) or the file that `CHALKPOST_ENV_FILE` names; read once, passed on.

This is the only place that reads the environment.
"""

import os
from pathlib import Path
from typing import Annotated, Literal, Self
from urllib.parse import urlsplit

from pydantic import Field, SecretStr, ValidationError, field_validator, model_validator
from pydantic_settings import BaseSettings, NoDecode, SettingsConfigDict

from bot.faults import SettingsFault
from bot.runtime.pacing import Pace
from bot.runtime.roles import ALL_ROLES, Role

PREFIX = "CHALKPOST_"


class Settings(BaseSettings):
    """Everything that an operator may set. Frozen; every field has its variable, `CHALKPOST_` and its name."""

    model_config = SettingsConfigDict(env_prefix=PREFIX, frozen=True, extra="ignore", env_ignore_empty=True)

    token: SecretStr = SecretStr("")
    """The bot's token, as the platform gave it."""
    data_dir: Path = Path(".chalkpost")
    """Where the database, the key and the heartbeat lie unless said otherwise."""
    database_url: str = ""
    """`sqlite:///...` or `postgresql://...`; empty: SQLite in the data folder."""
    key_file: Path | None = None
    """The key that seals people's words; made on the first run. Keep it apart from the database's backups."""
    api_url: str = "https://api.telegram.org"
    """The Bot API's base address: the platform, a local Bot API server, or the stand-in."""
    proxy: SecretStr = SecretStr("")
    """An HTTP proxy on the way to the platform: `http://host:port`."""
    bot_name: str = ""
    """The bot's public name; empty: asked of the platform."""

    mode: Literal["poll", "webhook"] = "poll"
    poll_timeout_s: int = Field(default=25, ge=0, le=50)
    """Seconds that a long poll waits."""
    webhook_url: str = ""
    """The public https address that the platform calls."""
    webhook_secret: SecretStr = SecretStr("")
    """16 to 256 of `A-Za-z0-9_-`: the platform shows it with each call."""
    webhook_listen: str = "127.0.0.1:8090"
    """Where the webhook is served, behind something that speaks TLS."""
    health_listen: str = ""
    """`127.0.0.1:8091`, say: a health endpoint on loopback; empty: none."""

    emergency_number: str = Field(default="112", max_length=20)
    """How to call for help where the clients live."""
    operator_contact: str = ""
    """Whom people may ask about the service and their data."""
    consent_version: str = "1"
    """The version of the privacy notice; a new one is agreed to anew."""

    roles: Annotated[frozenset[Role], NoDecode] = ALL_ROLES
    """Which of `intake,work,clock,send` this process does."""
    senders: int = Field(default=16, ge=1, le=256)
    """Calls to the platform at once."""
    pace_per_s: float = Field(default=25.0, gt=0)
    """Messages a second in all. Of several processes one sends at a time."""
    pace_per_chat_s: float = Field(default=1.0, gt=0)
    """Messages a second in one chat, after a burst."""
    pace_burst: int = Field(default=3, ge=1)
    """Messages in one chat before its pace counts."""
    wake_s: float = Field(default=0.5, gt=0)
    """Seconds between looks at the inbox and outbox for what another process put there."""
    tick_s: float = Field(default=1.0, gt=0)
    """Seconds between looks at what is due."""

    clock_file: Path | None = None
    """For rehearsals: a file with the moment that it shall be."""
    log_format: Literal["json", "plain"] = "json"
    log_level: Literal["debug", "info", "warning", "error"] = "info"

    @field_validator("roles", mode="before")
    @classmethod
    def _read_roles(cls, value: object) -> object:
        return [r.strip() for r in value.split(",") if r.strip()] if isinstance(value, str) else value

    @field_validator("roles")
    @classmethod
    def _some_role(cls, value: frozenset[Role]) -> frozenset[Role]:
        if not value:
            raise ValueError("name at least one of intake, work, clock, send")
        return value

    @model_validator(mode="after")
    def _webhook_whole(self) -> Self:
        if self.mode == "webhook":
            address = urlsplit(self.webhook_url)
            rehearsal = address.scheme == "http" and address.hostname in ("127.0.0.1", "localhost", "::1")
            if address.scheme != "https" and not rehearsal:
                raise ValueError("webhook_url must be an https address when mode is webhook")
            secret = self.webhook_secret.get_secret_value()
            if not (16 <= len(secret) <= 256) or not secret.replace("_", "").replace("-", "").isalnum():
                raise ValueError("webhook_secret must be 16 to 256 of A-Z a-z 0-9 _ -")
        return self

    @property
    def store_url(self) -> str:
        """The database's address."""
        return self.database_url or f"sqlite:///{self.data_dir / 'chalkpost.db'}"

    @property
    def key_path(self) -> Path:
        """The key file."""
        return self.key_file or self.data_dir / "key" / "chalkpost.key"

    def beat_path(self, worker: str) -> Path:
        """Where a process leaves its sign of life for `chalkpost status`."""
        return self.data_dir / f"heartbeat-{worker}.json"

    @property
    def pace(self) -> Pace:
        """How fast messages go out."""
        return Pace(self.pace_per_s, self.pace_per_chat_s, self.pace_burst)

    def bot_token(self) -> str:
        """The token; `SettingsFault` where there is none that looks like one."""
        token = self.token.get_secret_value().strip()
        number, _, rest = token.partition(":")
        if not token:
            raise SettingsFault(
                "There is no bot token. Set CHALKPOST_TOKEN, or name a file that does with CHALKPOST_ENV_FILE."
            )
        if not (number.isascii() and number.isdigit() and rest):
            raise SettingsFault("CHALKPOST_TOKEN does not look like a bot token (digits, a colon, letters).")
        return token

    def bot_id(self) -> int:
        """The bot's number: the token's first part."""
        return int(self.bot_token().partition(":")[0])


def read_settings() -> Settings:
    """The settings of this process; `SettingsFault` names the first variable that is wrong."""
    file = os.environ.get(f"{PREFIX}ENV_FILE", "")  # noqa: TID251  the one place
    if file and not Path(file).is_file():
        raise SettingsFault(f"CHALKPOST_ENV_FILE names {file}, which is no file.")
    try:
        return Settings(_env_file=file or None)  # type: ignore[call-arg]  # pydantic-settings' own argument
    except ValidationError as error:
        raise SettingsFault(_plain(error)) from None


def read_address(text: str, *, name: str) -> tuple[str, int]:
    """`host:port`; `SettingsFault` where it is none. `name` is the setting's."""
    host, _, port = text.rpartition(":")
    if not host or not port.isascii() or not port.isdigit() or not 0 <= int(port) <= 65535:
        raise SettingsFault(f"{PREFIX}{name.upper()} must be host:port, not {text!r}.")
    return host.strip("[]"), int(port)


def _plain(error: ValidationError) -> str:
    first = error.errors()[0]
    what = str(first["msg"]).removeprefix("Value error, ")
    if not first["loc"]:
        return f"The settings don't fit together: {what}."
    return f"{PREFIX}{str(first['loc'][0]).upper()} is not right: {what}."
