# What waits for the coach's answer, and messages to several.

inbox-title = { $count ->
    [one] <b>One message waits for you</b>
   *[other] <b>{ $count } messages wait for you</b>
    }
inbox-empty = Nothing waits for your answer.
inbox-entry = <b>{ $name }</b>, { $day } { $time }: { $words }
inbox-doubt = <b>{ $name }</b>, a report that nobody could read: { $words }
inbox-answered = Answered: { $name }
inbox-more = { $count ->
    [one] One more client waits.
   *[other] { $count } more clients wait.
    }
menu-inbox = Questions that wait for you

send-several = Several…
send-all = All { $count }
send-all-ask = { $count ->
    [one] Send it to the one client you have here?
   *[other] Send it to all { $count } clients?
    }
send-all-sure = Yes, to all { $count }
several-ask = { $count ->
    [one] Who gets it? Tap everyone it is for.
   *[other] Who gets these { $count } messages? Tap everyone they are for.
    }
several-open = { $name }
several-chosen = ✓ { $name }
several-send = { $count ->
    [one] Send to one
   *[other] Send to { $count }
    }
several-sent = { $count ->
    [one] Sent to one client.
   *[other] Sent to { $count } clients.
    }
