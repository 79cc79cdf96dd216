"""What the platform allows, in numbers. Source: its public Bot API documentation and FAQ; where silent, said so."""

from dataclasses import dataclass, field
from datetime import timedelta

MEGABYTE = 1024 * 1024


@dataclass(frozen=True, slots=True)
class PaceLimits:
    """How many messages a second. FAQ: about one a second in a chat with short bursts, about 30 a second over all.

    How long a short burst may be is not documented: `chat_burst` is this stand-in's own choice.
    """

    chat_per_s: float = 1.0
    chat_burst: int = 5
    overall_per_s: float = 30.0
    overall_burst: int = 30


@dataclass(frozen=True, slots=True)
class Limits:
    """Every limit the stand-in holds a bot to. `Limits(pace=None)` takes the speed limits away."""

    text_units: int = 4096
    """UTF-16 code units of a message's text, after entity parsing."""
    caption_units: int = 1024
    entities: int = 100
    """Further entities are left out without a word, as the platform does (undocumented)."""
    callback_bytes: int = 64
    buttons: int = 100
    buttons_in_row: int = 8
    markup_bytes: int = 10_000
    copy_text_chars: int = 256
    placeholder_chars: int = 64
    callback_answer_chars: int = 200
    callback_life_s: float = 15.0
    """Undocumented; about ten to fifteen seconds are seen."""
    upload_bytes: int = 50 * MEGABYTE
    photo_bytes: int = 10 * MEGABYTE
    download_bytes: int = 20 * MEGABYTE
    photo_sides: int = 10_000
    photo_ratio: float = 20.0
    commands: int = 100
    command_chars: int = 32
    command_words_chars: int = 256
    description_chars: int = 512
    short_description_chars: int = 120
    delete_within: timedelta = timedelta(hours=48)
    keep_updates: timedelta = timedelta(hours=24)
    webhook_retry_s: float = 1.0
    """First pause before a failed delivery is tried again; doubles up to a minute. The platform tells no number."""
    pace: PaceLimits | None = field(default_factory=PaceLimits)
