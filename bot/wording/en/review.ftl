# A programme looked over before it is given: minutes, hard sets by muscle, cautions, changes.
# Where `days` is named, `found` are hard sets a week on so many training days, in the same order.

review-session = { $title }: { $minutes } min
review-session-wanted = { $title }: { $minutes } min of { $wanted }
review-muscles = Hard sets a week by muscle, on { $days } training days
review-muscle = { $muscle } { $sets }
review-muscle-target = { $muscle } { $sets }   (your target { $target })

caution-under-target = { $muscle }: under your target of { $wanted } hard sets a week: { $found } on { $days } training days.
caution-over-target = { $muscle }: over your target of { $wanted } hard sets a week: { $found } on { $days } training days.
caution-few-sets = { $muscle }: { $found } hard sets a week on { $days } training days. At least 4 a week for each muscle are advised (Iversen et al. 2021).
caution-many-sets = { $muscle }: { $found } hard sets a week on { $days } training days. Above 20, more growth was not found for most muscles (Baz-Valle et al. 2022).
caution-over-minutes = { $workout }: about { $found } min, over the { $wanted } that you wrote.
caution-top-set-last = { $workout }, { $exercise }: a heavy top set with priority 3, which goes first where time is short.
caution-drop-unusual = { $workout }, { $exercise }: a drop by { $found } %; { $wanted } % is usual (common practice, no source).
caution-short-rest = { $workout }, { $exercise }: { $found } s of rest after heavy sets; two to three minutes are advised for main lifts (ACSM position stand 2009).
caution-slow-tempo = { $workout }, { $exercise }: a repetition of { $found } s; above { $wanted } s growth was less (Schoenfeld et al. 2015).
caution-pair-alone = { $workout }: pair { $found } has one exercise only.
caution-percent-unused = { $workout }, { $exercise }: a percent of the top set is written, but the load rule is another one; it is not used.
caution-percent-of-itself = { $workout }, { $exercise }: the first set is the top set; its percent is not used.
caution-step-unused = { $workout }, { $exercise }: a step is written, but the load rule is not fixed step; it is not used.
caution-no-range = { $workout }, { $exercise }: double progression needs a range such as { $wanted }; { $found } leaves no room for it.
caution-no-fixed-load = { $workout }, { $exercise }: a fixed load without a load; it stays at what the client lifts first.
caution-no-equipment = { $workout }, { $exercise }: it is not said what makes its loads ({ $wanted }), so that none can be found.
caution-week-never = Week { $found } never comes: the weeks begin again after { $wanted }.

change-none = Nothing changes.
change-first = It is the first programme: { $after }.
change-title = Title: { $before } → { $after }
change-note = Note: { $before } → { $after }
change-workout-added = New workout { $workout }: { $after }
change-workout-gone = Workout { $workout } goes: { $before }
change-workout-renamed = Workout { $before } is now called { $after }
change-workout-order = Workouts come in another order: { $after }
change-minutes = { $workout }: minutes { $before } → { $after }
change-exercise-added = { $workout }: new { $exercise }: { $after }
change-exercise-gone = { $workout }: { $exercise } goes: { $before }
change-exercise-order = { $workout }: another order: { $after }
change-sets-added = { $workout }, { $exercise }: more sets: { $before } → { $after }
change-sets-gone = { $workout }, { $exercise }: fewer sets: { $before } → { $after }
change-sets = { $workout }, { $exercise }: { $before } → { $after }
change-pair = { $workout }, { $exercise }: pair { $before } → { $after }
change-rule = { $workout }, { $exercise }: load rule { $before } → { $after }
change-step = { $workout }, { $exercise }: step { $before } → { $after }
change-priority = { $workout }, { $exercise }: priority { $before } → { $after }
change-sides = { $workout }, { $exercise }: sides { $before } → { $after }
change-cue = { $workout }, { $exercise }: cue { $before } → { $after }
change-exercise-note = { $workout }, { $exercise }: note { $before } → { $after }
change-link = { $workout }, { $exercise }: link { $before } → { $after }
change-kind = { $workout }, { $exercise }: the exercise itself: { $before } → { $after }
change-weeks = Weeks that are otherwise: { $before } → { $after }
change-block = Weeks in a block: { $before } → { $after }
change-targets = Targets: { $before } → { $after }
