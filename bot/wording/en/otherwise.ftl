# A session that stands otherwise: another exercise, less time, and the way back.

button-other = Other exercise
button-less-time = Less time
button-back-to = Back to { $name }
button-back-to-all = Do it all after all
card-find-near = Find your load: begin near <b>{ $load }</b>, and stop while you still have some left. Tap it below, or type what you did, e.g. <code>40x8 3 left</code>.

swap-title = <b>Instead of { $name }:</b>
swap-none = I know of nothing that could take the place of <b>{ $name }</b> today. Skip it, or ask your coach.
swap-none-needs = Nothing that is left today needs that, so the session stays as it is.
swap-and-more = { $count ->
    [one] One more exercise needs it.
   *[other] { $count } more exercises need it.
    } Tap “Other exercise” when you get there.
swap-choice = <b>{ $exercise }</b>, { $sets }: { $begin }
swap-sets = { $count ->
    [one] { $each }
   *[other] { $count } × { $each }
    }
swap-preferred = { $choice } ({ $coach }'s choice)
swap-begin-known = you have done it before
swap-begin-near = new, begin near { $load } (from your { $like })
swap-begin-body = new, with your body weight
swap-begin-find = new, find a load you are sure of
swap-begin-nothing = nothing to load
swap-spares = These spare what hurts.
swap-keeps = What you have done of { $name } stays; this takes the place of the rest.
swap-pick = { $exercise }
swap-ask = Ask { $coach }
swap-asked = <b>{ $name }</b> asks what to do instead of { $exercise } today.
swap-done = { $into } it is, instead of { $name }. The card has it.
toast-swapped = { $into }
toast-back-later = Take back first what was changed after it
toast-back-late = Sets of it are saved: take those back first
back-from-swap = Back to { $name }.
back-from-shorter = The whole session again, about { $about } min.

more-ask = Earlier this week this went for time: { $what }. Today there is room for some of it, if you like:
more-one = One set more of { $name }
more-done = One set more of { $name } is in.
more-none = There is no room for it any more.
button-back-one = { $name } as planned
back-from-more = { $name } as planned again.

place-ask = I take it to be { $exercise }. Tap what it took the place of:
place-of = In place of { $name }
place-after-all = { $name }, after all
place-kept = “{ $words }” is kept as { $exercise }.

time-ask = How many minutes do you have from now on? Tap, or type them with “min”, e.g. <code>25 min</code>.
minutes-later = Only a session that is there is cut to fit: say it again on { $day }. What comes before is as it was.
time-chip = { $minutes } min
time-cut = <b>{ $minutes } min:</b> it fits now, about { $about } min to go.
time-given = Given for it: { $given }.
time-too-few = { $minutes } min are short. Do one set of { $name } and call it a day.
minutes-enough = { $minutes } min are enough for all that is left.
trades-and-then = { $first }; { $second }
trade-all = { $names } left out
trade-sets = { $count ->
    [one] one set
   *[other] { $count } sets
    }{ $exercises ->
    [one] {""}
   *[other] {" "}each
    } of { $names } left out
trade-paired = { $names } in turn
trade-turned = { $count ->
    [one] the last set of { $names } turned into a short finish
   *[other] the last sets of { $names } turned into short finishes
    }

# For the coach

lift-other = Another exercise…
lift-swapped = In place of { $exercise }, by your word.
back-lift = Back to { $exercise }
swap-order-title = <b>{ $name }: instead of { $exercise }</b>, from the next session on:
swap-order-none = I know of nothing that could take the place of <b>{ $exercise }</b> for { $name }.
swap-order-own = { $exercise }, the programme's own
swap-order-told = { $coach } puts { $into } in the place of { $exercise }, from your next session on.
swap-order-back-told = { $coach } brings { $exercise } back in the place of { $into }, from your next session on.
digest-swapped-entry = { $name }: { $into } instead of { $exercise }
digest-shorter-entry = { $name }: only { $minutes } min; { $given }
digest-more-entry = { $name }: one set more of { $exercise }, for what went for time before
week-given-up = <b>Given for time:</b> { $what } (the numbers planned above are without it)
week-given-muscle = { $muscle } { $sets }
