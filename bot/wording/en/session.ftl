# A session: the card, its buttons, what is said about sets.

session-hello = { $name }, here is today's session.
card-title = <b>{ $title }</b> · { $day } · about { $minutes } min
card-progress = Set { $done } of { $sets } done
card-finished = Finished: { $done } of { $sets } sets
card-skipped = Skipped
card-missed = Missed
card-exercise = <b>{ $name }</b>
card-pair = In turn with { $name }
card-held = On hold: no heavier than last time, and stop if it hurts.
card-warmup = Warm-up: { $steps }
card-warmup-step = { $load } × { $reps }
card-set-done = { $number }. done: { $set }
card-set-next = <b>{ $number }. { $set }</b>
card-set-later = { $number }. { $set }
card-find = Find your load: start with one that you are sure to lift more than { $reps } times. Tap it below, or type what you did, e.g. <code>40x8 3 left</code>.
card-rest = Rest { $minutes ->
    [0] { $seconds } s
   *[other] { $seconds ->
        [0] { $minutes } min
       *[other] { $minutes } min { $seconds } s
    }
    }
card-effort = { $name }, set { $number }: how many more could you have done? Tap it below if you like.
card-tempo = Tempo { $tempo } (down, pause, up, pause; X is as fast as you can)
card-note = { $note }
card-link = { $link }
card-cue = <i>{ $cue }</i>
card-done = { $name }: { $sets }
card-begun = { $name }: { $done }; next { $number }. { $set }
card-load = With <b>{ $load }</b>: now tap how many you did.
card-left-out = { $name }: left out
card-coming = { $name }, { $count } × { $set }
card-coming-pair = { $name }, { $count } × { $set }, in turn with { $partner }
card-coming-each = { $name }: { $sets }
finish-drop = then at once: { $loads }
finish-drop-percent = then at once { $times ->
    [one] a drop
   *[other] { $times } drops
    }, { $low } to { $high } % lighter
finish-mini = then { $reps } more after { $low } to { $high } s, again and again until { $reps } can't be made

set-at = { $count } × { $load }
button-set-done = Set { $number } done: { $set }
chip-reps = { $count } reps
chip-seconds = { $count } s
chip-metres = { $count } m
chip-drop = Drop: { $count }
chip-drop-load = Drop { $load }: { $count }
chip-mini = Minis: { $times } × { $reps }
chip-left = { $left ->
    [0] None left
    [3] 3 or more
   *[other] { $left } left
    }
button-load = Other load…
button-skip = Skip { $name }
button-undo = Undo
button-pain = It hurts
button-end = End session
button-rest-planned = All sets left of { $name } as planned
button-start-today = Start a session now

toast-saved = Set { $number } saved: { $set }
toast-already = Set { $number } is saved already
toast-already-all = That is done already
toast-old = This button is from an older message
toast-undone-already = That is taken back already
toast-skipped = { $name } skipped
toast-load = { $load }: now tap the repetitions
toast-load-choose = Choose a load
toast-left = Set { $number }: { $left } left
toast-ended = Session ended
toast-felt = { $rating } of 10
toast-reported = Something of it is reported already
toast-moved = It comes on { $day }
toast-answered = That is answered already
toast-read-anew = Please look once more
toast-kept-as = Kept: { $label }

kept-set = { $name }, set { $number }: { $set }
kept-warmup = { $name }: { $set }
kept-skipped = { $name }: skipped
kept-already = { $name }: these sets are kept already, so I added nothing. If you did more, name the exercise once more with only those sets.
session-over = This session is finished, so I kept nothing of that. If it was an extra set, name the exercise, e.g. <code>{ $name } 60x8</code>.
kept-removed = { $name }, set { $number }: taken back
corrected = Corrected:
edit-unclear = I can't read that edit, so the record stays as it was. Edit it once more, e.g. <code>62.5x8</code>, or /undo.
undone = The last report is taken back.
undone-set = Taken back: { $name }, { $set }{ $count ->
    [one] {""}
   *[other] {" "}and the other sets of that message
    }.
undone-skip = { $name } is not skipped any more.
undo-nothing = There is nothing to take back.

next-time = <b>{ $name }</b>, next time: { $loads }
    <i>{ $reason }</i>
next-group = { $count ->
    [one] { $load } × { $reps }
   *[other] { $count } × { $reps } at { $load }
    }

end-title = <b>{ $title }: done.</b>
end-minutes = { $minutes } min (planned: { $planned })
end-sets = { $sets } of { $planned } sets, { $tonnage } { $unit } moved
end-best = Best of { $name }: { $set }
end-left-out = Left out: { $names }
end-short = Shortened: { $names }
felt-ask = How hard was the whole session, from 0 (rest) to 10 (the hardest ever)?
felt-chip = { $rating ->
    [0] 0 rest
    [10] 10 hardest
   *[other] { $rating }
    }
felt-said = The session felt { $rating } of 10. Thank you!

not-a-report = There is no set in that, so I kept nothing. A set is e.g. <code>60x8</code>. If it is for your coach, tap below.
send-to-coach = Send it to { $coach }
sent-to-coach = Sent to { $coach }.
toast-sent-to-coach = Sent to { $coach }
question-sent = I have passed your question to { $coach }.
no-session-now = There is no session open to put that in. Start one, then send it once more.
no-session-beside = No session is open, so no set of that is kept. Sets of another day count with their day, e.g. <code>yesterday: 60x8</code>.
no-session-that-day = I know of no session of yours on { $day }, so nothing of that is kept. Which day was it? Send it again with the day, e.g. <code>yesterday: 60x8</code>.
no-programme = { $coach } has not given you a programme yet. A message here reaches { $coach }.
today-done = Today's session is done. The next one comes on { $day }.
today-paused = Your sessions are paused.
today-rest = Nothing is planned today; the next session comes on { $day }.

doubt-choice = { $label }
doubt-number = Reading { $number }
doubt-reading = { $number }: { $label }
doubt-day = { $day }
doubt-yes = Yes, keep it
doubt-none = None of these
doubt-or-type = Tap one, type the answer, or edit your message.
doubt-type = Edit your message, or send it anew.
doubt-type-load = Type the load alone, e.g. <code>15</code>, or edit your message.
doubt-still = That leaves it open.
doubt-settled = “{ $words }” is kept as { $label }.
doubt-unread-there = Beside your session of { $day } I can't read “{ $words }”, so nothing of it is kept. Please send it again with the day, e.g. <code>yesterday: squat 60x8</code>.
doubt-dropped = Nothing of “{ $words }” is kept.

missed-ask = <b>{ $title }</b> is not reported today. What happened?
missed-ask-day = <b>{ $title }</b> of { $day } is not reported. What happened?
missed-did = I did it
missed-move = Move to { $day }
missed-skip = Skip it
missed-tell-me = Good! Tell me what you did: tap below or type it.
missed-moved = <b>{ $title }</b> comes again on { $day }.
missed-skipped = <b>{ $title }</b> is skipped. One missed session changes nothing; the next one comes on its day.
