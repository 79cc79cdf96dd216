"""What is kept, and how: one database (SQLite or PostgreSQL), opened by `storage.engine.Store`.

Everything here is synchronous, takes a `Work` (one open transaction) first, and gives plain values back.
"""
