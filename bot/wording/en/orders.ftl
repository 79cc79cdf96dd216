# The coach's hand on one client's training: loads, holds, light weeks, how freely loads rise, notes.

open-lifts = Lifts and loads
open-orders = Plan settings
open-notes = Notes
back-client = Back to { $name }
back-lifts = Back to the lifts

lifts-title = <b>{ $name }: lifts</b>
lifts-none = No programme yet.
lifts-open = { $exercise }
lifts-entry-new = { $name }: not done yet
lifts-entry = { $name }
lifts-entry-next = { $name }: next { $next }
lifts-entry-max = { $name }: one-repetition maximum about { $best }
lifts-entry-next-max = { $name }: next { $next }, one-repetition maximum about { $best }
lifts-entry-held = { $entry } (on hold)

lift-title = <b>{ $exercise }</b>, { $name }
lift-last = Last time, { $day }: { $sets }
lift-estimate = One-repetition maximum about { $mean } { $unit }; 19 times in 20 it is between { $least } and { $most } { $unit }.
lift-chance = { $load }: in range { $lands } %, too heavy { $over } %, too easy { $easy } %
lift-chosen = <b>{ $load }</b>: in range { $lands } %, too heavy { $over } %, too easy { $easy } %
lift-aside = Set aside as a likely slip: { $reps } at { $load }, { $day }.
lift-next = <b>Next: { $load } × { $reps }</b>
lift-next-none = <b>Next: a load is to be found</b>
lift-ordered = You set { $load } for the next session.
lift-held = On hold: its load does not go up.
lift-set = { $load }
lift-other-load = Another load…
lift-unset = Take my load back
lift-do-hold = Hold it here

order-ask-load = { $exercise }: which load, in { $unit }? Type it, e.g. <code>62.5</code>.
order-misread-load = “{ $words }” is no load that I can read. Type a number, e.g. <code>62.5</code> or <code>135 lb</code>. Nothing has changed.
order-load-far = “{ $words }” is more than twice what comes next: nothing has changed. If it is meant, use the buttons to go up in steps.
order-load-told = { $coach } sets your next load: { $exercise }, { $load }.
order-light-told = { $coach } makes the week of { $monday } a light one: fewer sets, more in reserve.
order-no-light-told = { $coach } makes the week of { $monday } an ordinary one again.
toast-set = Set
toast-unset = The load follows from the sets again
toast-held = { $exercise } stays where it is

orders-title = <b>{ $name }: plan settings</b>
orders-by-itself = Loads rise by themselves, at most { $percent } % a step.
orders-asks-first = Loads rise only after your yes, at most { $percent } % a step.
orders-light = Light week: { $monday }
orders-load = Your load for next time: { $exercise }, { $load }
orders-swap = { $exercise } is swapped for { $into }
orders-held = On hold since { $day }: { $exercise }
orders-make-light-this = Make this week a light one
orders-make-light-next = Make next week a light one
orders-no-light-this = This week an ordinary one again
orders-no-light-next = Next week an ordinary one again
orders-ask-first = Ask me first
orders-let-go = Let loads rise by themselves
orders-bound = At most { $percent } % a step
orders-approve-ask = <b>{ $name }: next loads wait for your yes</b>
orders-approve-entry = { $entry }
orders-approve = Yes, go up
orders-approved = Yes: { $name }'s loads may go up next time.

notes-title = <b>Notes on { $name }</b> (for you alone)
notes-none = Nothing noted yet.
notes-entry = { $day }: { $words }
notes-new = New note
notes-ask = Type the note on { $name }. It is for you alone and can be part of what { $name } gets on asking for their data.
notes-too-long = A note has 1 to { $longest } characters. Nothing has been kept.
