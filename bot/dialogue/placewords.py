"""Words that say where somebody is now, so that their clock may follow: "I'm in New York", "landed in Tokyo", "my time
zone is Lisbon". Whole messages only; another place is offered, never set by itself."""

import re

from bot.training.calendar import PLACES, is_zone

LONGEST_TEXT = 80

_ALSO = {
    "America/Los_Angeles": "california, la, san francisco, seattle, san diego, las vegas, vancouver",
    "America/Denver": "colorado, salt lake city, calgary",
    "America/Chicago": "dallas, houston, austin, minneapolis, new orleans",
    "America/New_York": "nyc, boston, miami, washington, philadelphia, atlanta, orlando",
    "America/Toronto": "montreal, ottawa",
    "America/Sao_Paulo": "rio, rio de janeiro",
    "America/Argentina/Buenos_Aires": "argentina",
    "America/Bogota": "colombia, lima, peru",
    "Europe/London": "england, scotland, wales, uk, britain, great britain, edinburgh, manchester",
    "Europe/Dublin": "ireland, cork, galway",
    "Europe/Lisbon": "portugal, porto",
    "Europe/Berlin": "germany, munich, hamburg, cologne, frankfurt, vienna, austria, zurich, switzerland",
    "Europe/Paris": "france, lyon, nice, marseille, brussels, belgium, amsterdam, netherlands",
    "Europe/Madrid": "spain, barcelona, valencia, mallorca, malaga",
    "Europe/Rome": "italy, milan, naples, florence, venice",
    "Europe/Stockholm": "sweden, oslo, norway, copenhagen, denmark",
    "Europe/Warsaw": "poland, krakow, prague, budapest",
    "Europe/Athens": "greece, crete",
    "Europe/Helsinki": "finland",
    "Europe/Istanbul": "turkey, antalya",
    "Africa/Cairo": "egypt",
    "Africa/Johannesburg": "south africa, cape town",
    "Asia/Dubai": "abu dhabi, emirates",
    "Asia/Kolkata": "india, delhi, mumbai, bangalore",
    "Asia/Bangkok": "thailand, phuket",
    "Asia/Singapore": "kuala lumpur, bali",
    "Asia/Shanghai": "china, beijing, hong kong, taipei",
    "Asia/Tokyo": "japan, osaka, kyoto",
    "Asia/Seoul": "korea, south korea",
    "Australia/Sydney": "melbourne, canberra",
    "Pacific/Auckland": "new zealand, wellington",
    "Pacific/Honolulu": "hawaii",
}
"""Where a zone's clock is the usual one, by other names. The time there is shown before anything is set."""
_KNOWN = {place.city.casefold(): place.zone for place in PLACES} | {
    name: zone for zone, names in _ALSO.items() for name in names.split(", ")
}

_LEAD = r"(?:(?:hi|hey|hello|ok|coach|so|and|fyi)[, ]+)*"
_HERE = (
    r"(?:(?:i'm|i am|we're|we are|im)(?: now| currently| back| already| just| home)* (?:in|at home in)|"
    r"(?:(?:i've|i have|we've|just|i|we) )*(?:landed|arrived|touched down|got) (?:in|to|at)|now in|"
    r"back (?:home )?in|home in|here in|"
    r"(?:please )?(?:set|change|switch) my (?:clock|time ?zone|zone)(?: to| for)?|"
    r"my (?:time ?zone|zone|clock) is(?: now)?)"
)
_TAIL = (
    r"(?: (?:now|today|tonight|this week|next week|atm|at the moment|for work|time|on holiday|until .{1,20}|"
    r"till .{1,20}|for (?:a|the|one|two|three|\d) .{1,12}|again|safely))*"
)
_PLACE = r"(?:the )?(?P<place>[a-z][a-z/_ .'-]*?)"
_SAID = (
    re.compile(rf"{_LEAD}{_HERE} {_PLACE}{_TAIL}"),
    re.compile(rf"{_LEAD}(?:i'm |i am |now )?on {_PLACE} time{_TAIL}"),
    re.compile(rf"{_LEAD}{_HERE} {_PLACE}, (?:so )?(?:now )?on (?P=place) time{_TAIL}"),
)
_OTHER_CLOCK = re.compile(
    rf"{_LEAD}(?:(?:i'm|i am) )?(?:in )?(?:an?other|a different|a new|new) (?:time ?zone|clock)(?: now)?|"
    rf"{_LEAD}my (?:time ?zone|clock) (?:has changed|changed|is (?:now )?(?:different|wrong|another))(?: now)?|"
    r"(?:please )?(?:change|set) my (?:clock|time ?zone)"
)


def read_place(text: str) -> str | None:
    """The zone of the place where they say that they are; empty where they only say that it is another one; `None` for
    anything else, and for places that we don't know."""
    if len(text) > LONGEST_TEXT:
        return None
    plain = " ".join(text.casefold().replace("’", "'").split()).rstrip(".!")
    if _OTHER_CLOCK.fullmatch(plain):
        return ""
    found = next((match for pattern in _SAID if (match := pattern.fullmatch(plain))), None)
    if found is None:
        return None
    said = found["place"].strip(" .")
    if "/" in said:
        zone = "/".join(part.title() for part in said.replace(" ", "_").split("/"))
        return zone if is_zone(zone) else None
    return _KNOWN.get(said)
