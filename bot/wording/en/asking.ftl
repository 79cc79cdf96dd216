# What is asked back about a message that can be read in two ways: one short question for each kind of doubt.
# $words is what was doubtful, as it was typed; $question and $choices make the line of the terminal.

ask-order = Which number is which in “{ $words }”?
ask-unit = Kilograms or pounds in “{ $words }”?
ask-which-exercise = Which exercise is “{ $words }” for?
ask-unknown-exercise = “{ $words }” isn't in today's session. Did you do it, and in place of what?
ask-out-of-reason = “{ $words }” is far from the plan. Is it right?
ask-range = How many in each set for “{ $words }”?
ask-load = What load was it for “{ $words }”?
ask-number-format = How do you mean the number in “{ $words }”? Please type it in plain digits.
ask-day = Which day is this for?
ask-per-hand = “{ $words }”: is that in each hand, or both together?
ask-effort = How hard was it? “{ $words }” can be read two ways.
ask-which-set = Which set do you mean with “{ $words }”?
ask-same = “{ $words }” as what? There is no set before it here.
ask-done = “{ $words }”: this set as planned, or more of it?
ask-which-skip = Which one are you skipping, “{ $words }”?
ask-unsure = I'm not sure how to read “{ $words }”. Could you put it another way?
ask-offered = { $question } { $choices }
ask-choice-or = { $first } or { $last }?

# The reading in words, for `chalkpost read --explain`.

explain-text = Message: { $text }
explain-nothing = It says nothing to keep.
explain-set = { $exercise }, set { $set }: { $done }
explain-warmup = { $exercise }, warm-up: { $done }
explain-replaces = Replaces set { $set } of { $exercise }
explain-skipped = Skipped: { $exercise }
explain-finished = The session is finished.
explain-pain = Pain: { $where }{ $urgent ->
    [yes] , urgent
   *[no] {""}
}
explain-pain-nowhere = place not said
explain-score = Score: { $score } out of 10
explain-minutes = Minutes there are: { $minutes }
explain-day = For the day { $day }
explain-question = Wants the coach's answer.
explain-ask = Asks: { $question }
explain-choice = could be: { $choice }
explain-evidence = “{ $words }” gave { $meaning }: { $value }
meaning-load = the load
meaning-reps = the repetitions
meaning-sets = the set
meaning-effort = the effort
meaning-side = the side
meaning-name = the exercise
meaning-unit = the unit
meaning-stage = the stage
meaning-repeat = a repeat
meaning-planned = the plan
meaning-correction = a correction
meaning-set-number = the set's number
meaning-skip = a skip
meaning-finish = the end
meaning-minutes = the time
meaning-day = the day
meaning-pain = pain
meaning-question = a question
meaning-implied = what was not said
