"""The trade, pure: loads, programmes, sessions, strength, minutes, weeks, pain. No clock, chance, database or chat."""
