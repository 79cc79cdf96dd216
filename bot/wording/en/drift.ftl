# What stalls or drifts, in the digest and on a client's page: the numbers behind it and one suggestion.

digest-drift = <b>STALLS AND DRIFT</b>
drift-stalled = { $name }: { $exercise } has had no better set in { $sessions } sessions since { $since } (then { $first }, now { $last }). { $advice }
drift-creeping = { $name }: { $exercise } gets harder at the same load, { $sessions } sessions since { $since } (then { $first }, now { $last }). { $advice }
drift-set = { $load } × { $reps }
drift-set-left = { $load } × { $reps }, { $left } left
drift-advice-light-week = A light week might help.
drift-advice-go-up = It is easy for them: set the next load up.
drift-advice-step-down = One load down for a session might help.
digest-over-entry = { $name }: { $minutes } min for a session planned at { $planned }
digest-slipping-entry = { $name }: { $done } of { $due } sessions in four weeks
drift-lifts = Lifts of { $name }
