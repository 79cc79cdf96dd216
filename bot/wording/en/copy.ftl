# The copy of one's data: the talk, and what stands in the file.

copy-coming = Your copy is being made: all that is kept of you, as one file. It comes here in a moment.
copy-coming-practice = Your practice's copy is being made: all that is kept of you and your clients. It comes here in some moments, in parts where it is large.
copy-again = You had a copy at { $at }. The next one can be made from { $from } on.
copy-caption = All that is kept of you, as of { $day }. The README inside says what is what. It holds what you told in confidence: keep it where only you can read it.
copy-caption-practice = Your practice, as of { $day }. The README inside says what is what. It holds your clients' health data: keep it as the law asks of you.

# README.txt

copy-readme-own = This is a copy of all that is kept of you, made at { $at }.
copy-readme-practice = This is a copy of a coach's practice, made at { $at }: all that is kept of the coach and of their clients.
copy-readme-part = It comes in parts, since it is large. This is part { $part }; each is whole in itself, for some of the clients. More follow.
copy-readme-last = It comes in parts, since it is large. This is part { $part }, the last; each is whole in itself, for some of the clients.
copy-readme-left-out = { $count ->
    [one] One client has taken their consent back and is not in it.
   *[other] { $count } clients have taken their consent back and are not in it.
}
copy-readme-what = record.xlsx is for reading: a workbook for any spreadsheet program. The folder json is for taking along: every row as it is kept, for programs.
copy-readme-book = The workbook's sheets. People: settings. Sessions: what was planned and how it ended; session effort is from 0 to 10. Sets: each prescribed set beside what was done of it, then what was done beside the plan; stage is work, drop (lighter, without rest), mini (same load, short rest) or warmup. Pain: as it was told, with its score from 0 to 10. Words: questions, and reports that could be read in two ways. Notes: the coach's notes. Programmes given: each prescribed set. Strength: the estimated one-repetition maximum with its standard deviation, as of the day on which the exercise was last done. Programmes: a coach's own.
copy-readme-units = Units. A load stands as it was entered, with its unit (kg or lb) beside it; below zero it is help against body weight. 1 lb is 0.45359237 kg. What “load means” says: total is bar and plates together, a stack or a machine; per_hand is one dumbbell; bodyweight is what is added to the body; none is without load. What was done is counted in what “counted in” says. RIR is how many repetitions would still have been possible. Rest is in seconds, minutes are minutes.
copy-readme-times = Times. In the workbook they are local, with their distance from UTC (2027-01-11T18:05:00+01:00); days are local days. In the JSON, instants are in UTC.
copy-readme-formulas = No cell is a formula. A text that begins like one is marked as text.
copy-readme-json = The JSON: about.json says when this was made; client files hold a list of rows for each table: clients (settings), facts, sessions, sets, strengths, matters (pain, questions, doubts), schedule (times that come), and, of one's own chat, talks, outbox and inbox as far as their words are still kept. Loads are in thousandths of their unit. A coach's own rows are in coach.json.
copy-readme-facts = Facts are the record itself: each thing that happened, in order, never changed: its kind, when, who said it (client, coach, clock, platform), the number of the message in the chat, and what. Everything else is worked out from them.
copy-readme-not = Not in it: pictures, videos, files and the text of messages in the chat itself, of which nothing is kept once they are passed on (the chat service has them); the numbers by which the program finds its own messages; anything of other people.
copy-readme-care = This is health data. It is open here, though it is sealed where it is kept.

# The workbook

copy-sheet-people = People
copy-sheet-sessions = Sessions
copy-sheet-sets = Sets
copy-sheet-pain = Pain
copy-sheet-words = Words
copy-sheet-notes = Notes
copy-sheet-given = Programmes given
copy-sheet-strength = Strength
copy-sheet-shelf = Programmes

copy-col-id = Client
copy-col-name = Name
copy-col-standing = Standing
copy-col-unit = Unit
copy-col-zone = Time zone
copy-col-days = Training days
copy-col-hour = Training hour
copy-col-equipment = Equipment
copy-col-programme = Programme
copy-col-next-workout = Next workout (number)
copy-col-consent = Consent (version)
copy-col-joined = Joined
copy-col-flagged = Health question flagged
copy-col-words-each-set = Every set confirmed in words
copy-col-coach = Coach
copy-col-day = Day
copy-col-workout = Workout
copy-col-workout-minutes = Minutes at most
copy-col-ended = Ended
copy-col-planned-minutes = Minutes planned
copy-col-minutes = Minutes
copy-col-session-effort = Session effort (0-10)
copy-col-planned-sets = Sets planned
copy-col-sets-done = Work sets done
copy-col-first-report = First report
copy-col-last-report = Last report
copy-col-exercise = Exercise
copy-col-set = Set
copy-col-stage = Stage
copy-col-side = Side
copy-col-planned-low = Planned, from
copy-col-planned-high = Planned, to
copy-col-planned-load = Planned load
copy-col-planned-unit = Planned unit
copy-col-planned-rir = Planned RIR
copy-col-planned-rest = Rest (s)
copy-col-done = Done
copy-col-load = Load
copy-col-rir = RIR
copy-col-measure = Counted in
copy-col-load-means = Load means
copy-col-when = When
copy-col-where = Where
copy-col-score = Score (0-10)
copy-col-urgent = Urgent sign
copy-col-words = Words
copy-col-settled = Settled
copy-col-kind = Kind
copy-col-answered = Answered
copy-col-cue = Cue
copy-col-note = Note
copy-col-max = Estimated maximum
copy-col-max-sd = Standard deviation
copy-yes = yes
copy-no = no
copy-not-done = not done
copy-day-0 = Monday
copy-day-1 = Tuesday
copy-day-2 = Wednesday
copy-day-3 = Thursday
copy-day-4 = Friday
copy-day-5 = Saturday
copy-day-6 = Sunday
copy-equipment = in { $unit }: bar { $bar } to { $highest }, smallest plate { $plate }, dumbbells { $dumbbells }, stack { $stack }
