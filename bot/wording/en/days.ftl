# The week as days, a day moved or given up, times away, and what comes after them.

days-title = <b>Your week, { $first } to { $last }</b>
days-none = Nothing is planned in it.
days-finished = { $day }: { $title }, <b>done</b>, { $done } of { $sets } sets
days-begun = { $day }: { $title }, under way, { $done } of { $sets } sets
days-open-card = { $day }: { $title }, <b>open</b>, { $sets } sets
days-skipped = { $day }: { $title }, given up
days-missed = { $day }: { $title }, missed
days-coming = { $day }: { $title }, about { $minutes } min: { $what }
days-sets = { $name } { $sets ->
    [one] 1 set
   *[other] { $sets } sets
    }
days-open = { $day }…
days-next = Next week
days-this = This week
days-which = { $day }, { $title }: move it, or give it up?
days-one-at-a-time = One day at a time: when this one is settled, write “can't do { $day }”.
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
changed-week-eased = fewer training days in the week of { $monday }, since they come back from a break
changed-week-back = the last change of a day taken back

# Away, ill, back

settings-away = Away or ill…
open-away = Away or ill…
away-ask = Away or ill? No sessions and no reminders come until then; afterwards they come again by themselves.
away-coach-ask = { $name } is away or ill? No sessions and no reminders go out until then; afterwards they come again by themselves.
away-ill-care = Don't train while you are ill. With fever, chest pain, breath that is hard to get, or whenever you are in doubt, see a doctor before you train again.
away-weeks = Away { $weeks ->
    [one] 1 week
   *[other] { $weeks } weeks
    }
ill-weeks = Ill { $weeks ->
    [one] 1 week
   *[other] { $weeks } weeks
    }
away-until = Away until…
ill-until = Ill until…
away-ask-date = On which day do sessions come again? Type it, e.g. <code>3 May</code>, <code>Monday</code> or <code>2 weeks</code>.
away-misread = “{ $words }” is no day that I can read. Type it e.g. as <code>3 May</code>, <code>Monday</code> or <code>2 weeks</code>. Nothing has changed.
away-set = No sessions until { $day }; from then on they come again by themselves.
ill-set = Get well. No sessions until { $day }; from then on they come again by themselves, the first ones easier.
away-by-coach = { $coach } has set this for you:
away-back = Welcome back, { $name }. Sessions come again on { $days } at { $time }.
away-back-ill = The first ones are easier. If something is not right yet, see a doctor before you train.
away-back-easier = After so long the first ones are easier.
away-longer = I need longer…
away-how-long = Away until when? Tap, or type a day. No sessions and no reminders come until then; afterwards they come again by themselves.
ill-how-long = Get well. Until when shall nothing come? Tap, or type a day; until you do, sessions come as planned. Afterwards they come again by themselves, the first ones easier.
away-which = No sessions { $since ->
    [now] { "" }
   *[other] from { $since }{ " " }
    }until { $day }, away or ill? After an illness the first ones are easier.
away-beside = You also say that you are away{ $since ->
    [now] { "" }
   *[other] { " " }from { $since }
    }. Shall no sessions come until { $day }?
ill-beside = You also say that you are ill. Shall no sessions come { $since ->
    [now] { "" }
   *[other] from { $since }{ " " }
    }until { $day }? The first ones after it are easier.
coach-client-ill-asked = { $name } says that they are ill, but not yet until when. Sessions go out as planned until they do.
away-days = Away { $days } days
ill-days = Ill { $days } days
away-away-until = Away until { $day }
away-ill-until = Ill until { $day }
leave-away = You are away from { $since }: no sessions come then until { $day }. Until you leave, all is as ever.
leave-ill = No sessions from { $since } until { $day }; the first ones after it are easier. Until then all is as ever.
leave-not = I'm staying after all
leave-taken-back = All is as ever: nothing stops on { $since }.
away-back-now = Sessions come again on { $day }. Go on now already?
away-back-any = Go on with your sessions?
away-back-care = Train again only once you feel well; when in doubt, ask a doctor before.
coach-client-leave = { $name } will be { $why ->
    [ill] unable to train
   *[away] away
    } from { $since } until { $day }: no sessions go out then.
coach-client-stays = { $name } stays after all: sessions go out on { $since } as ever.
coach-client-away = { $name } is away: no sessions go out until { $day }.
coach-client-ill = { $name } is ill: no sessions go out until { $day }.
coach-client-back = { $name } is back: sessions go out again.
quiet-stopped = { $name }, two weeks have passed without a session, so no more reminders come. Whenever you like, one tap goes on: the first sessions are easier.
coach-client-quiet = <b>Two weeks without a session: { $name }</b>. Reminders have stopped; { $name } can go on with one tap.
client-away = Away since { $since }, until { $until }
client-ill = Ill since { $since }, until { $until }
client-quiet = Reminders stopped on { $since }: two weeks without a session
changed-away = away until { $day }
changed-ill = ill until { $day }
changed-quiet = reminders stopped: two weeks without a session
changed-back = back again
back-first = The first session after a break: { $percent } % of the sets, and further from your limit. It comes back quickly.
back-days = In this first week back three training days are enough: { $days }. In the week after, four at most; what doesn't come waits its turn, and nothing counts as missed.
back-day = { $day }
back-again = Still coming back: { $percent } % of the sets.
orders-eases = After two weeks off or more, sessions come back in steps.
orders-no-eases = After a break, sessions are as they were before it.
orders-ease-on = Ease sessions after a break
orders-ease-off = No easing after a break
changed-eases = sessions are eased after a break
changed-no-eases = sessions are not eased after a break

# On a journey

clock-ask = It is { $time } in { $city }. Shall sessions and reminders come by that clock from now on?
clock-by = Yes, by the clock of { $city }
clock-stay = No, stay on { $city }
clock-set = Sessions and reminders come by the clock of { $city }, where it is { $time }.

# Light weeks offered, and session load

digest-light = { $count ->
    [one] <b>A light week?</b>
   *[other] <b>A light week for { $count }?</b>
    }
light-entry = { $name }: { $signs }
light-sign-long = five weeks or more without one
light-sign-stalled = lifts that don't go on
light-sign-creeping = the same work leaves less in reserve
light-sign-effort = sessions feel harder than they used to
light-sign-sore = pain said again and again
light-make = { $name }: light from { $monday }
light-not = { $name }: not now
toast-light-not = Not now: { $name } keeps going
changed-light-declined = a light week was offered, and not wanted
open-sload = Session load
sload-title = <b>{ $name }: session load</b>
sload-week = Week of { $monday }
sload-so-far = { $week }, so far: { $sessions ->
    [0] no session
   *[other] { $known ->
        [0] { $sessions ->
            [one] one session
           *[other] { $sessions } sessions
            }, effort or minutes not known
       *[other] <b>{ $load }</b> from { $known } of { $sessions ->
            [one] one session
           *[other] { $sessions } sessions
            }
        }
    }
sload-none = { $week }: no session
sload-whole = { $week }: <b>{ $load }</b> from { $sessions ->
    [one] one session
   *[other] { $sessions } sessions
    }, monotony { $monotony }, strain { $strain }
sload-part = { $week }: at least <b>{ $load }</b>, from { $known } of { $sessions } sessions; effort or minutes of the others are not known
sload-flat = { $week }: <b>{ $load }</b> from { $sessions } sessions; monotony can't be told, as every day was alike
sload-what = Load is session effort (0 to 10) × minutes (Foster et al. 2001); monotony is the mean of the week's daily loads by their standard deviation, strain the load × monotony (Foster 1998).
sload-limits = Effort is a rating, minutes run from the first report to the last. Monotony and strain are of whole weeks; their standard deviation is that of a sample (n − 1), so they don't compare with other people's figures. With two to four sessions a week most days are zero, so monotony hardly moves. A large load says that much was done; it does not say that somebody will be hurt, and nothing here predicts an injury.

# Rest notices, and the client's own pace

rest-set = { $on ->
    [plan] A message comes when a rest is over, after the rest that is planned
    [own] A message comes { $seconds } s after each set that you report
   *[no] No message when a rest is over
    }
settings-change-rest = Rest notice…
rest-ask = Shall a message come when a rest between two sets is over? One for each set reported by itself, on time or not at all. It goes in words, too: <code>rest notice 75 s</code>, <code>rest notice off</code>.
rest-chip = { $seconds } s
rest-as-planned = After the planned rest
rest-off = No rest notice
rest-bounds = A rest notice can come after { $least } seconds to { $most } minutes. Nothing has changed.
toast-rest-on = On: a message comes when a rest is over
toast-rest-off = Off
rest-over = Rest over. { $name }, set { $number }: { $set }
card-title-pace = <b>{ $title }</b> · { $day } · about { $minutes } min at your pace

# A programme on other days

otherdays-open = Other days…
otherdays-title = <b>{ $title }</b> on other days a week, each new day at most { $minutes } min
otherdays-entry = <b>{ $days } days</b>: { $held }
otherdays-as-is = <b>{ $days } days</b>, as it is: { $held }
otherdays-day = { $name } { $minutes } min
otherdays-cut = left out: { $what }
otherdays-added = added: { $what }
otherdays-table = <b>Hard sets a week of each muscle</b> on 2, 3, 4 and 5 days, then the <b>least hours</b> between two days that work it:
otherdays-row = { $muscle }{ $sets }  |{ $rest }
otherdays-take = Make it { $days } days
otherdays-minutes = { $minutes } min
otherdays-more = Up to { $sets } sets more
otherdays-less = No more sets
