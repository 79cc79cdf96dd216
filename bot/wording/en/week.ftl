# A week's work laid over its days.

weekplan-label-whole-body = whole body
weekplan-label-upper = upper
weekplan-label-lower = lower
weekplan-label-push = push
weekplan-label-pull = pull
weekplan-label-legs = legs
weekplan-label-trunk = trunk
weekplan-label-free = free

weekplan-why-no-days = There is no day to train on.
weekplan-why-too-long = One set takes { $minutes } min, and the longest day has { $longest }.
weekplan-why-lower-first = The minutes run out, and priority { $priority } goes before what matters more.
weekplan-why-short = The days hold less than the work up to priority { $priority } takes.
weekplan-why-partner = Only another day has room for it, and what is done together stays on one day.
weekplan-why-seams = No day has { $minutes } min left for another set.

weekplan-no-days = There is no day to train on: all work is cut.
weekplan-all = Everything fits, no set is cut.
weekplan-cut = { $cut ->
    [one] One set of { $sets } is cut: the work takes { $work } min, the days hold { $room }.
   *[other] { $cut } of { $sets } sets are cut: the work takes { $work } min, the days hold { $room }.
}
weekplan-clashes-none = No muscle is worked directly on two days less than { $hours } h apart.
weekplan-clashes = { $clashes ->
    [one] Once a muscle is worked directly on two days less than { $hours } h apart.
   *[other] { $clashes } times a muscle is worked directly on two days less than { $hours } h apart.
}
weekplan-longest = The longest day takes { $minutes } min.
weekplan-unproven = This is the best found in the time; a better week may exist.
