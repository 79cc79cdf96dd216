# What the machinery itself says: nothing of the trade.

turn-went-wrong = Something went wrong on our side with that message. It is kept and somebody will look at it. Everything else works: please go on, or send it again in other words.
sent-again = (again)
