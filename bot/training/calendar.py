"""Days and hours where people live: local days, weeks, training days, and the zone behind a local time.

Weeks run from Monday to Sunday (ISO 8601). Wall times follow the IANA time zone database by `zoneinfo`: an hour that
a change of clocks skips is taken as the one after the gap, one that comes twice as its first.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from bot.training.people import TrainingTime

DAY_NAMES = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")

CUTOFF_EARLIEST, CUTOFF_LATEST = time(21, 0), time(23, 30)
CUTOFF_AFTER_HOUR = timedelta(hours=3)
WEEK_AFTER_CUTOFF = timedelta(minutes=15)
"""When a day counts as over: three hours after the training hour, not before 21:00 nor after 23:30; the weekly summary
follows a quarter of an hour later. Ours, so that nobody is asked while they may still train, nor woken up."""


NIGHT_BEGINS, NIGHT_ENDS = time(22, 30), time(6, 30)
DAY_TURNS = time(4, 0)
"""Until then the evening's session is the one that is meant, unless the day has had its own hour. Ours."""


def local_day(now: datetime, zone: str) -> date:
    """The day that it is for somebody in this zone."""
    return now.astimezone(ZoneInfo(zone)).date()


def local_time(now: datetime, zone: str) -> datetime:
    """The instant as their wall clock shows it."""
    return now.astimezone(ZoneInfo(zone))


def is_small_hours(local: datetime) -> bool:
    """Whether it is so early that who trains now is still at the evening before."""
    return local.time() < DAY_TURNS


def is_night(local: datetime) -> bool:
    """Whether most people sleep: what can wait until the morning then comes without a sound. Ours."""
    return local.time() < NIGHT_ENDS or local.time() >= NIGHT_BEGINS


def instant(day: date, at: time, zone: str) -> datetime:
    """The UTC instant of a wall time; in a gap the time moves forward, of two the first counts."""
    wall = datetime.combine(day, at, tzinfo=ZoneInfo(zone))
    return wall.astimezone(UTC)


def monday_of(day: date) -> date:
    """The first day of its week."""
    return day - timedelta(days=day.weekday())


def cutoff_of(trains: TrainingTime) -> time:
    """The local time at which an unreported session counts as missed."""
    wanted = datetime.combine(date.min, trains.at) + CUTOFF_AFTER_HOUR
    if wanted.date() > date.min:
        return CUTOFF_LATEST
    return min(max(wanted.time(), CUTOFF_EARLIEST), CUTOFF_LATEST)


def week_summary_at(trains: TrainingTime) -> time:
    """The local time of the weekly summary, on the last training day of the week."""
    return (datetime.combine(date.min, cutoff_of(trains)) + WEEK_AFTER_CUTOFF).time()


def next_training_day(trains: TrainingTime, after: date) -> date | None:
    """The first training day after this one; `None` where there are no training days."""
    return next((d for n in range(1, 8) if (d := after + timedelta(days=n)).weekday() in trains.days), None)


@dataclass(frozen=True, slots=True)
class Place:
    """A zone as people know it: by a city of its own name in the IANA database."""

    zone: str

    @property
    def city(self) -> str:
        """The city, in words: `Europe/Berlin` is Berlin."""
        return self.zone.rsplit("/", 1)[-1].replace("_", " ")


_ZONES = (
    "Pacific/Honolulu America/Anchorage America/Los_Angeles America/Phoenix America/Denver America/Chicago "
    "America/Mexico_City America/New_York America/Toronto America/Bogota America/Halifax America/Caracas "
    "America/Santiago America/St_Johns America/Sao_Paulo America/Argentina/Buenos_Aires Atlantic/Azores "
    "Europe/London Europe/Dublin Europe/Lisbon Africa/Casablanca Africa/Accra Europe/Berlin Europe/Paris "
    "Europe/Madrid Europe/Rome Europe/Stockholm Europe/Warsaw Africa/Lagos Europe/Athens Europe/Helsinki "
    "Europe/Kyiv Africa/Cairo Africa/Johannesburg Asia/Jerusalem Europe/Istanbul Europe/Moscow Africa/Nairobi "
    "Asia/Riyadh Asia/Tehran Asia/Dubai Asia/Kabul Asia/Karachi Asia/Tashkent Asia/Kolkata Asia/Kathmandu "
    "Asia/Dhaka Asia/Yangon Asia/Bangkok Asia/Jakarta Asia/Ho_Chi_Minh Asia/Shanghai Asia/Singapore "
    "Asia/Manila Australia/Perth Asia/Tokyo Asia/Seoul Australia/Darwin Australia/Adelaide Australia/Brisbane "
    "Australia/Sydney Pacific/Auckland"
)

PLACES = tuple(Place(zone) for zone in _ZONES.split())
"""The zones offered by city: one or more for every offset in use, the most peopled first from west to east."""


def places_at(now: datetime, wall: time, *, first: Iterable[str] = ()) -> tuple[Place, ...]:
    """The places where the clock shows `wall` now, within ten minutes: zones in `first`, their continents, the rest."""
    regions = [zone.split("/")[0] for zone in first]
    nearby = [place for place in PLACES if place.zone.split("/")[0] in regions]
    ordered = dict.fromkeys([*(Place(z) for z in first if "/" in z), *nearby, *PLACES])
    return tuple(place for place in ordered if _minutes_off(now, wall, place.zone) <= 10)


def _minutes_off(now: datetime, wall: time, zone: str) -> int:
    local = now.astimezone(ZoneInfo(zone))
    apart = abs((wall.hour * 60 + wall.minute) - (local.hour * 60 + local.minute))
    return min(apart, 24 * 60 - apart)


def is_zone(name: str) -> bool:
    """Whether the IANA database has a zone of this name."""
    try:
        ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        return False
    return True
