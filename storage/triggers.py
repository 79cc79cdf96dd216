"""The guard over the record: a fact can't be changed, nor deleted but with all of its person's data.

It stands in the database itself, so that no code of ours and no tool can edit what people said. Two doors are opened
within one transaction only: `forgetting` names whose facts may go, and while `resealing` has its row, a fact's sealed
bytes may be sealed anew, by another key; nothing else of it.
"""

_SAME = (
    "NEW.id IS OLD.id AND NEW.kind IS OLD.kind AND NEW.version IS OLD.version AND NEW.client IS OLD.client "
    "AND NEW.coach IS OLD.coach AND NEW.session IS OLD.session AND NEW.key IS OLD.key "
    "AND NEW.said_by IS OLD.said_by AND NEW.at IS OLD.at AND NEW.source IS OLD.source"
)

SQLITE = (
    "CREATE TRIGGER facts_never_changed BEFORE UPDATE ON facts "
    f"WHEN NOT (EXISTS (SELECT 1 FROM resealing) AND {_SAME}) "
    "BEGIN SELECT RAISE(ABORT, 'facts are added, never edited'); END",
    "CREATE TRIGGER facts_never_deleted BEFORE DELETE ON facts "
    "WHEN NOT EXISTS (SELECT 1 FROM forgetting WHERE forgetting.client = coalesce(OLD.client, OLD.coach)) "
    "BEGIN SELECT RAISE(ABORT, 'facts are added, never edited'); END",
)

POSTGRESQL = (
    "CREATE FUNCTION facts_guard() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN "
    "IF TG_OP = 'DELETE' THEN "
    "IF EXISTS (SELECT 1 FROM forgetting WHERE forgetting.client = coalesce(OLD.client, OLD.coach)) "
    "THEN RETURN OLD; END IF; "
    "ELSIF TG_OP = 'UPDATE' THEN "
    "IF EXISTS (SELECT 1 FROM resealing) AND to_jsonb(NEW) - 'body' = to_jsonb(OLD) - 'body' "
    "THEN RETURN NEW; END IF; "
    "END IF; RAISE EXCEPTION 'facts are added, never edited'; END $$",
    "CREATE TRIGGER facts_never_changed BEFORE UPDATE OR DELETE ON facts FOR EACH ROW EXECUTE FUNCTION facts_guard()",
    "CREATE TRIGGER facts_never_truncated BEFORE TRUNCATE ON facts EXECUTE FUNCTION facts_guard()",
)


def statements(dialect: str) -> tuple[str, ...]:
    """What makes the guard on this engine."""
    return SQLITE if dialect == "sqlite" else POSTGRESQL
