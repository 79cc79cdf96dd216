"""What alembic runs: the steps, on the connection and within the transaction that `storage.migrate` opened."""

from alembic import context

from storage.tables import metadata

context.configure(connection=context.config.attributes["connection"], target_metadata=metadata)
context.run_migrations()
