"""What is left in reserve, told in the present by those who have English as a second language."""

CAN = (
    r"(?=(?:.*\b(?:maybe|perhaps|possibly|probably|think|reckon|guess|feel)\b)|.*\breps?\b|.*\brepetitions?\b)"
    r"(?:(?:maybe|perhaps|possibly|probably|i|and|but|think|reckon|guess|feel|like|that|still|it|me|was|is) )*"
    r"(?:can|able to|possible(?: to)?)(?: (?:still|maybe|easily|probably|even|also))*"
    r"(?: (?:make|do|get|manage|squeeze|lift|push|press)(?: out)?)?"
    r" (?:maybe |about )?(?:(?:#|one)(?: more| extra)(?: (?:reps?|repetitions?))?|# reps? more|another rep)"
)
"""`maybe i can make 1 more`, told in the present of a set that is over."""
