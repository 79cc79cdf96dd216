"""Finding those who bear a name, for the operator."""

from datetime import timedelta

from storage.census import clients_named
from storage.engine import Store
from storage.erasure import forget
from tests.store import practice


def test_a_name_finds_all_who_bear_it(store: Store) -> None:
    """Across coaches, whatever the capitals and spaces, the earliest first; nobody else."""
    with store.begin() as work:
        practice.coach(work)
        practice.coach(work, id="coach-two", chat=9_000_000_002, name="Coach Wilhelmina")
        practice.client(work, id="late", chat=102, name="Tamsin Øst", of="coach-two")
        practice.client(work, id="early", chat=101, name="tamsin  øst", at=practice.NOW - timedelta(days=25))
        practice.client(work, id="other", chat=103, name="Tamsin")
    with store.begin() as work:
        found = clients_named(work, " Tamsin ØST ")
        assert [(one.client, one.coach) for one in found] == [
            ("early", "Coach Ondrej"),
            ("late", "Coach Wilhelmina"),
        ]
        assert clients_named(work, "nobody") == ()
        assert forget(work, "early")
        assert [one.client for one in clients_named(work, "Tamsin Øst")] == ["late"]
