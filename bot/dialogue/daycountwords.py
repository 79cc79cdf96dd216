"""Words that want another number of training days: "I want to train 4 days a week", "can I train twice a week?"."""

import re

LONGEST_TEXT = 90
_NUMBERS = ("one", "two", "three", "four", "five", "six", "seven")
_ASKS = (
    r"(?:(?:hi|hey|hello|ok|so|please|coach|i|i'd|i'll|would|we|like|want|wanted|prefer|need|love|plan|going|am|i'm|can|"
    r"could|may|is|it|okay|possible|be|if|just|only|now|to|have|how about|what about|let's|from now on|from next week|"
    r"next week)[ ,]+)*"
)
_WANTS = re.compile(
    rf"{_ASKS}(?:train|training|work ?out|working out|lift|lifting|come|go|do)(?: (?:on|for))? "
    rf"(?:(?:[1-7]|{'|'.join(_NUMBERS)})(?: ?(?:days?|times|x|sessions|workouts))(?: (?:a|per|each|every) week)?|"
    rf"(?:once|twice) (?:a|per|each|every) week)"
    rf"(?:[ ,]+(?:from now on|from next week|now|instead|please|again))*"
)


def wants_other_days(text: str) -> bool:
    """Whether the whole message says so."""
    plain = " ".join(text.casefold().replace("’", "'").split()).rstrip(".!? ")
    return len(text) <= LONGEST_TEXT and _WANTS.fullmatch(plain) is not None
