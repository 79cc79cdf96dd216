# Looking back: pictures with the words beside them, a client's page, past sessions, a client's own lifts.

look-strength = Picture: strength
look-muscles = Sets by muscle
look-days = Attendance
look-session = { $day }
look-which = <b>{ $name }</b>: strength of which lift?
look-none-yet = { $name } has done no lift of the programme with a load yet.
look-nothing = Nothing to draw yet

picture-count = { $sets }
picture-span = { $low }–{ $high }
picture-day = { $day }

picture-strength = <b>{ $exercise }</b>, { $first } to { $last }
picture-strength-of = <b>{ $exercise }, { $name }</b>, { $first } to { $last }
picture-strength-now = One-repetition maximum about { $mean } { $unit } on { $day }; 19 times in 20 it is between { $least } and { $most }.
picture-strength-then = On { $day } it was about { $mean } { $unit }.
picture-strength-per-hand = Each hand.
picture-strength-bodyweight = Beside body weight; below nought is assistance.
picture-strength-sets = { $sets ->
    [one] One set
   *[other] { $sets } sets
    }, the heaviest { $load } × { $reps } on { $day }.
picture-strength-break = No sets between { $first } and { $last }.

picture-muscles = <b>Hard sets by muscle</b>, { $weeks } weeks from { $first }, this one last
picture-muscles-of = <b>Hard sets by muscle, { $name }</b>, { $weeks } weeks from { $first }, this one last
picture-muscle = { $muscle }: { $weeks }; so far { $now } of { $planned } planned
picture-muscle-target = { $muscle }: { $weeks }; so far { $now }, target { $target }

picture-days = <b>Sessions</b>, { $weeks } weeks from { $first }
picture-days-of = <b>Sessions of { $name }</b>, { $weeks } weeks from { $first }
picture-days-done = Done: { $done } of { $due }
picture-days-partly = Of these in part: { $partly }
picture-days-missed = Missed: { $count } ({ $days })
picture-days-skipped = Given up: { $count } ({ $days })
picture-days-moved = Moved to another day: { $count } ({ $days })
picture-days-planned = To come: { $days }

page-sets = Hard sets this week, of those planned so far: { $muscles }
page-sets-target = Hard sets this week, of your targets: { $muscles }
page-sets-none = No hard sets planned or done this week
page-muscle = { $muscle } { $sets } of { $of }
page-attendance = Four weeks: { $done } of { $due } sessions done
page-pains = <b>Pain so far</b>
page-pain = { $day } { $pain }: { $how }
page-pain-during = { $day } { $pain } ({ $exercise }): { $how }
page-pain-place = { $place }
page-pain-open = open
page-pain-gone = gone, { $day }
page-pain-better = better, settled { $day }
page-pain-same = the same, settled { $day }
page-pain-worse = worse, settled { $day }
page-pain-again = said again { $day }
page-pain-settled = settled { $day }
page-gym = Equipment ({ $unit }): bar { $bar }, smallest plate { $plate }, dumbbells { $dumbbells }, stack { $stack }
page-ladder = { $low }–{ $high } by { $step }

view-set = { $number }. { $planned } → { $done }
view-set-open = { $number }. { $planned } → left out
view-set-to-come = { $number }. { $planned } → not reported
view-set-more = beyond the plan: { $done }

mylifts-open = My lifts
mylifts-title = <b>Your lifts</b>
mylifts-none = Nothing with a load in your programme yet.
mylifts-picture = Picture: { $exercise }
mylifts-entry-new = { $name }: not done yet
mylifts-entry = { $name }: not known well enough yet
mylifts-entry-next = { $name }: next { $next }
mylifts-entry-max = { $name }: about { $best } { $unit } for a single repetition
mylifts-entry-max-next = { $name }: about { $best } { $unit } for a single repetition, next { $next }
