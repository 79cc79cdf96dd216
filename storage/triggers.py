"""The guard over the record: a fact can't be changed, nor deleted but with all of its person's data.

It stands in the database itself, so that no code of ours and no tool can edit what people said.
"""

SQLITE = (
    "CREATE TRIGGER facts_never_changed BEFORE UPDATE ON facts "
    "BEGIN SELECT RAISE(ABORT, 'facts are added, never edited'); END",
    "CREATE TRIGGER facts_never_deleted BEFORE DELETE ON facts "
    "WHEN NOT EXISTS (SELECT 1 FROM forgetting WHERE forgetting.client = OLD.client) "
    "BEGIN SELECT RAISE(ABORT, 'facts are added, never edited'); END",
)

POSTGRESQL = (
    "CREATE FUNCTION facts_guard() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN "
    "IF TG_OP = 'DELETE' THEN "
    "IF EXISTS (SELECT 1 FROM forgetting WHERE forgetting.client = OLD.client) THEN RETURN OLD; END IF; "
    "END IF; RAISE EXCEPTION 'facts are added, never edited'; END $$",
    "CREATE TRIGGER facts_never_changed BEFORE UPDATE OR DELETE ON facts FOR EACH ROW EXECUTE FUNCTION facts_guard()",
    "CREATE TRIGGER facts_never_truncated BEFORE TRUNCATE ON facts EXECUTE FUNCTION facts_guard()",
)


def statements(dialect: str) -> tuple[str, ...]:
    """What makes the guard on this engine."""
    return SQLITE if dialect == "sqlite" else POSTGRESQL
