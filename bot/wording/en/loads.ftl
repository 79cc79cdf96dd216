# Why a load was chosen: one line that a client understands. `next` is the load now, `load`, `reps` and `left` the set
# that decided, `range` the repetitions now.

loads-find = Find your load: start with one you could surely lift { $range } times with several left, do { $range }, tell me how many were left. I set the next.
loads-find-near = Find your load: start near { $next } (from a lift like it), do { $range }, tell me how many were left. I set the next.
loads-find-next = Next try.
loads-find-next-after = { $reps } at { $load }: next try { $next }. Tell me how many were left.
loads-find-next-left = { $reps } at { $load } with { $left } left: next try { $next }.
loads-planned = First time: { $next }, as your coach planned. Tell me how many were left.
loads-up = Up to { $next }, { $range } repetitions.
loads-up-after = { $reps } at { $load }: { $next } next, { $range } repetitions.
loads-up-left = { $reps } at { $load } with { $left } left: { $next } next, { $range } repetitions.
loads-same = Stay with this load.
loads-same-after = { $reps } at { $load }: stay at { $next }, { $range } repetitions.
loads-same-left = { $reps } at { $load } with { $left } left: stay at { $next }, { $range } repetitions.
loads-down = Down a little, { $range } repetitions.
loads-down-after = { $reps } at { $load }: { $next } next, to get { $range }.
loads-down-left = { $reps } at { $load } with { $left } left: { $next } next, to get { $range } with enough left.
loads-reps-first = The next load is a big step: repetitions first, up to { $high }.
loads-reps-first-after = { $reps } at { $load }: the next load is a big step, so stay at { $next } and work up to { $high } repetitions first.
loads-reps-first-left = { $reps } at { $load } with { $left } left: the next load is a big step, so stay at { $next } and work up to { $high } repetitions first.
loads-held = The load stays as your coach set it.
loads-held-after = On hold: { $next }, no heavier until the hold is lifted.
loads-held-left = On hold: { $next }, no heavier until the hold is lifted.
loads-pain = No heavier while it hurts.
loads-pain-after = It hurt: no heavier than before, { $next }. Stop if it gets worse.
loads-pain-left = It hurt: no heavier than before, { $next }. Stop if it gets worse.
loads-back = { $weeks } weeks off: start again at { $next }, { $range } repetitions.
loads-aside = The last numbers looked out of line, so I left them out: { $next }. If they were right, say so again.
loads-today = On from the set before.
loads-today-after = { $reps } at { $load } today: { $next } for the next.
loads-today-left = { $reps } at { $load } with { $left } left today: { $next } for the next.
loads-top-share = { $next }, { $share } % of the { $load } on top.
loads-done = All sets done.
loads-none = Nothing to load here: as planned.
loads-no-ladder = Choose the load yourself: I don't know what you have here.

# For the coach: the whole.
loads-explain-none = Nothing was lifted here yet: no estimate.
loads-explain-estimate = 1RM on an average day { $mean } { $unit }, 95 % between { $least } and { $most }.
loads-explain-set = Set { $set }, { $range } with { $left } left:
loads-explain-chance = { $load }: lands { $lands } %, too heavy { $over } %, too easy { $easy } %.
loads-explain-chosen = { $load }: lands { $lands } %, too heavy { $over } %, too easy { $easy } %. Chosen.
loads-explain-aside = Set aside, not believed: { $reps } at { $load } on { $day }. The same once more will be believed.
