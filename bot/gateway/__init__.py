"""The only place that knows the chat platform: updates in, calls out. It never touches storage."""
