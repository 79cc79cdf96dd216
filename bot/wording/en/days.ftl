# The week as days, a day moved or given up, times away, and what comes after them.

days-title = <b>Your week, { $first } to { $last }</b>
days-none = Nothing is planned in it.
days-finished = { $day }: { $title }, <b>done</b>, { $done } of { $sets } sets
days-begun = { $day }: { $title }, under way, { $done } of { $sets } sets
days-open-card = { $day }: { $title }, <b>open</b>, { $sets } sets
days-skipped = { $day }: { $title }, given up
days-missed = { $day }: { $title }, missed
days-coming = { $day }: { $title }, about { $minutes } min: { $what }
days-as-ever = { $day }: as planned before
days-sets = { $name } { $sets ->
    [one] 1 set
   *[other] { $sets } sets
    }
days-open = { $day }…
days-next = Next week
days-this = This week
days-which = { $day }, { $title }: move it, or give it up?
days-lose = I can't: lay the week anew
days-back = Back to the week
days-moved = { $day } is moved to { $to }.
days-without = Without { $day } ({ $title }) the week would be:
days-cut = <b>Left out:</b> { $what }. There is no room for more, and the most important work goes first.
days-all-fits = Nothing is left out.
days-waits = There is no other day left this week: { $title } then comes with your next session, and nothing is lost.
days-agree = Do it like this
days-leave = Leave it as it is
days-lost = { $day } is given up, and the rest of the week is laid anew.
days-undone = The week is as it was before.
days-undo = Undo the last change
digest-days = { $count ->
    [one] <b>A day changed</b>
   *[other] <b>{ $count } days changed</b>
    }
digest-day-moved = { $name } moved { $day } to { $to }
digest-day-lost = { $name } gave { $day } up; all of its work has found room
digest-day-cut = { $name } gave { $day } up; left out: { $what }
digest-day-waits = { $name } gave { $day } up; its work comes with the next session
changed-day-moved = { $day } moved to { $to }
changed-day-lost = { $day } given up
changed-week-back = the last change of a day taken back
