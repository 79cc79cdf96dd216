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
ask-stop = “{ $words }”: what are you leaving out for today?
ask-which-skip = Which one are you skipping, “{ $words }”?
ask-too-long = That is too much at once for me to take sets from: “{ $words }”. Could you send the sets by themselves, for example 60x5?
ask-unsure = I'm not sure how to read “{ $words }”. Could you put it another way?
ask-is-it-this = I'm not sure what “{ $words }” says. Is this what you did?
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
# $words is what was typed, $value what it gave, in notation; $from why a value is so where no words say it.
explain-evidence = “{ $words }” { $meaning }: { $value }
explain-evidence-alone = “{ $words }” { $meaning }
explain-evidence-from = “{ $words }” { $meaning }: { $value } ({ $from })
explain-unsaid = not said: { $values }
explain-value-from = { $value } ({ $from })
explain-unit-own = { $unit }: your unit
explain-unit-said = { $unit }: “{ $words }”
explain-set-number = set { $set }
meaning-name = the exercise
meaning-set-number = the set's number
meaning-stage = the kind of set
meaning-load = the load
meaning-unit = the unit
meaning-reps = the repetitions
meaning-seconds = the time
meaning-metres = the distance
meaning-effort = the effort
meaning-side = the side
meaning-sets = sets alike
meaning-correction = a correction
meaning-skip = a skip
meaning-finish = the end of the session
meaning-pain = pain
meaning-score = the score out of 10
meaning-minutes = the minutes there are
meaning-day = the day
meaning-question = a question
source-said = said
source-plan = the plan's
source-before = as the set before
source-kept = as it was
source-own = your unit
source-under-way = the exercise under way
source-next = the next one open
source-answered = your answer
