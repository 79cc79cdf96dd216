"""The talks, pure: `answer(desk, incoming, now) -> Turn`. No clock, chance, database or chat library in here."""
