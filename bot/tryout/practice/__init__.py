"""The demo practice: an invented coach and three invented clients, and the week that they live through the real bot."""
