"""Things that clients talk of beside their sets: what is the `same`, or `finished`, of them is no set's."""

from bot.notation.wordlist import words

TALKED_OF = frozenset(words(
    "song songs playlist playlists tune tunes track tracks album music podcast podcasts episode episodes",
    "audiobook radio",
    "film movie show series book books chapter novel game games puzzle crossword lyrics dj banger",
    "guy guys bloke blokes dude dudes lad lads fella man woman lady ladies girl girls kid kids people person couple",
    "crowd teenager teenagers crew faces face neighbour neighbor receptionist trainer instructor driver dog cat",
    "hoodie shirt tshirt shorts socks shoes trainers leggings outfit hat headphones earphones bottle towel bag locker",
    "water drink drinks pasta curry parcel",
    "coffee coffees tea breakfast lunch dinner supper snack snacks meal meals food pizza beer beers wine",
    "sandwich shake",
    "bus train tram road traffic commute parking car bike street route seat shower mirror fan smell weather rain room",
    "story stories excuse excuses joke jokes argument nonsense rubbish crap bs drama problem issue problems",
    "reason reasons",
    "job work office boss meeting meetings call calls email emails shift shifts homework essay thesis",
    "dissertation report",
    "exam exams uni university school college course coursework assignment assignments degree class classes lecture",
    "lectures revision studying marking packing painting decorating moving unpacking cooking baking cleaning ironing",
    "shopping dishes chores housework laundry hoovering gardening errands taxes paperwork interview interviews",
    "house kitchen bathroom garden renovation project projects treatment antibiotics physio chemo",
    "birthday wedding holiday hotel town city country",
))  # fmt: skip
"""Music, people, clothes, food, ways, work and study, the house; no word of a set, of kit or of the day (by us)."""
