# The coach's desk.

coach-hello = Welcome, { $name }. You are a coach here now. Two questions, then you can invite your clients.
coach-clock = What time is it for you now? Type it, e.g. <code>07:15</code>. (My clock says { $time }.)
coach-clock-place = Which of these shares your clock? Or type another zone, e.g. <code>Europe/Lisbon</code>.
coach-digest-hour = At what hour should the daily digest come? Tap, or type e.g. <code>06:30</code>.
coach-ready = All set: the digest comes at { $time } every day.
coach-ready-next = /invite makes a link for a client. /help shows the rest.
coach-ask-name = What should your clients see as your name? Type it.
coach-settings-title = <b>Your settings</b>
coach-settings-digest = Digest at { $time }
coach-settings-now = It is { $time } for you now
coach-change-digest = Change digest hour

invite-made = A link for one client, good until { $day }:
invite-link = { $link }
invite-how = Whoever opens it first joins you. Send it to one person.
invite-share = Share the link
invite-copy = Copy the link

coach-joined = <b>{ $name } has joined.</b> Trains on { $days } at { $time }.
coach-readiness = <b>Readiness: { $name } answered that there is something to be careful about</b> and was told to ask a doctor first. No sessions go out until you say so.
coach-readiness-words = <blockquote>{ $words }</blockquote>
start-client = Start sessions of { $name }
give-sample = Sample programme for { $name }
give-again = Sample programme anew for { $name }
open-client = Open { $name }
back-digest = Back to the digest
back-clients = Back to everyone
reply-to = Reply to { $name }
handled-missed = Handled: { $name } missed
handled-question = Answered: { $name }
toast-handled = Marked as handled
alert-handled = Handled: { $name }, { $time }.
coach-client-paused = { $name } has paused: no sessions go out until they go on.
coach-client-withdrew = { $name } has withdrawn consent: nothing more is sent or kept.

alert-missed = <b>MISSED: { $name }</b>, { $title }, { $day }. Nothing was reported; { $name } has been asked.
coach-moved = { $name } moves { $title } to { $day }.
coach-skipped = { $name } skips { $title }.

coach-message-from = <b>{ $name } writes:</b>
coach-media = <b>{ $name } sends:</b>
coach-media-during = <b>{ $name } sends</b> (during { $exercise }):
from-coach = <b>{ $coach }:</b>
coach-delivered = Sent to { $name }.
coach-edit = What was sent stays as it was: a change here does not reach anybody. If it matters, reply once more.
coach-withdrawn = { $name } has taken the consent back. Nothing was sent.
coach-unreachable = { $name } can't be reached: the bot is blocked or the chat is gone. Nothing was sent.
coach-reply-mode = Your next message goes to { $name } (within { $minutes } minutes).
coach-for-whom = { $count ->
    [one] For whom is that? It has not been sent to anybody.
   *[other] For whom are these { $count } messages? They have not been sent to anybody.
    }
send-to = Send to { $name }
send-to-nobody = Nobody
toast-sent-to = Sent to { $name }
toast-cancelled = Cancelled
coach-no-clients = You have no clients here yet. /invite makes a link for one.

clients-title = { $count ->
    [one] <b>One client</b>
   *[other] <b>{ $count } clients</b>
    }
client-entry = <b>{ $name }</b>: last: { $last }, { $done } of { $due } sessions in four weeks, next { $next }
client-entry-unreachable = <b>{ $name }</b>: can't be reached (blocked or gone)
client-entry-joining = <b>{ $name }</b>: joining, questions not finished
client-entry-paused = <b>{ $name }</b>: paused
client-entry-withdrawn = <b>{ $name }</b>: consent withdrawn

client-title = <b>{ $name }</b>
client-trains = { $days } at { $time }, { $city }
client-clock = It is { $time } there
client-programme = Programme: { $title }
client-standing-joining = Joining: questions not finished
client-standing-paused = Paused: no sessions go out
client-standing-withdrawn = Consent withdrawn
client-readiness = Readiness: there is something to be careful about
client-week = <b>This week</b>
client-week-nothing = No session yet
client-session-open = { $day } { $title }: open, { $done } of { $sets } sets
client-session-finished = { $day } { $title }: done, { $done } of { $sets } sets
client-session-skipped = { $day } { $title }: skipped
client-session-missed = { $day } { $title }: missed
client-pain = <b>PAIN</b> { $place }
client-pain-urgent = <b>URGENT</b> { $place }
client-held = On hold: { $names }
client-question = Unread: { $words }
client-doubt = Unclear report: { $words }
lift-hold = Lift hold: { $exercise }
toast-not-held = That exercise is not on hold any more
toast-lifted = { $exercise } may progress again
last-title = <b>{ $name }: { $title }</b>, { $day }
last-exercise = <b>{ $name }</b>
last-effort = Felt { $rating } of 10
toast-started = Sessions of { $name } start
coach-started = Sessions of { $name } start.
started-by-coach = { $coach } says you are ready: your sessions start on your next training day.

programme-given = { $name } has “{ $title }” now. The next session goes out on their next training day.
toast-given = { $name } has it
programme-yours = { $coach } gives you <b>{ $title }</b>. Your workouts, in turn:
programme-yours-workout = { $title }, about { $minutes } min

digest-title = <b>Digest</b> for { $name }, { $day }
digest-quiet = A quiet day: nothing that needs you, nothing reported since the last digest.
digest-pain = <b>PAIN</b>
digest-missed = <b>MISSED</b>
digest-unread = <b>UNREAD</b>
digest-off-plan = <b>OFF PLAN</b>
digest-done = <b>DONE</b>
digest-unreachable = <b>CAN'T BE REACHED</b>
digest-entry = { $name }
digest-urgent-entry = <b>URGENT</b> { $name }: { $pain }
digest-pain-entry = { $name }: { $pain }
digest-pain-place = { $place }
digest-readiness-entry = { $name }: readiness answer, waits for your word
digest-missed-entry = { $name }: { $day }
digest-question-entry = { $name }: { $words }
digest-doubt-entry = { $name }, unclear report: { $words }
digest-short-entry = { $name }: { $missing } of { $sets } sets left out
digest-below-entry = { $name }: { $exercise } below the range in { $count ->
    [one] one set
   *[other] { $count } sets
    }
digest-done-entry = { $name }: { $title }, { $day }, { $sets } { $sets ->
    [one] set
   *[other] sets
    }
digest-done-effort-entry = { $name }: { $title }, { $day }, { $sets } { $sets ->
    [one] set
   *[other] sets
    }, felt { $effort } of 10
