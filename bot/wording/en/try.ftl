# The demo on this machine.

try-both = Say --play or --serve, not both.
try-went-wrong = The demo week went wrong: { $what }
try-played = The week is played: { $messages } messages, { $seconds } s, nothing went wrong.
try-serving = The chat page: { $address } (Ctrl-C ends it)
try-port-taken = Port { $port } is taken; choose another with --port.
try-no-port = Port { $port } can't be used: { $what }.
try-progress = ... { $lines } lines, { $seconds } s
