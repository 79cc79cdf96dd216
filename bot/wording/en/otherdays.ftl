# A programme on other numbers of days: the picture, and where added sets go first (the table's words: days.ftl).

otherdays-picture = <b>{ $title }</b> on 2, 3, 4 and 5 days, each new day at most { $minutes } min: minutes day by day; hard sets a week of each muscle and the least hours between two days that work it. The same in words stands above.
otherdays-first = Sets are added for { $names } first.
otherdays-first-targets = Sets are added first where your targets are furthest away. Tap a muscle to put it first.
otherdays-first-none = Which muscles get the added sets? Tap the weakest first.
otherdays-weak = First { $muscle }
otherdays-no-weak = No weak points

# A client trains on another number of days.
daycount-coach = <b>{ $name }</b> trains on { $count ->
    [one] one day a week now
   *[other] { $count } days a week now
    }: { $days }.
daycount-fits = { $title } has as many sessions ({ $sessions }).
daycount-turns = { $title } has { $sessions ->
    [one] one session
   *[other] { $sessions } sessions
    }, which come in turn: { $times } times its weekly work.
daycount-look = The same work on { $count } days…
daycount-mine = { $count ->
    [one] On one day
   *[other] On { $count } days
    } a week your programme’s { $sessions ->
    [one] one session comes again and again, which is
   *[other] { $sessions } sessions come in turn, which is
    } { $times } times its weekly work. { $coach } has been told, and can lay the same work over your days.
