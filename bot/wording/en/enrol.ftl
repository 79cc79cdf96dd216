# Joining, and the same questions as settings.

enrol-hello = Hello! { $coach } invites you to train together here. Seven short questions, then you are ready. You can stop at any point: /start goes on where you were.
enrol-step = <i>{ $step } of { $steps }</i>
enrol-consent = { $coach } and this service would keep what you report about your training: loads, repetitions, effort, and pain where you mention it. That is data about your health, so it needs your explicit yes.
    It is used to plan your training and to notice when something is wrong, and for nothing else. You can see it, get it corrected or erased, and take your yes back at any time. The whole notice: /privacy. Contact: { $contact }.
enrol-consent-ask = Do you agree? (notice { $version })
enrol-consent-needed = Without your yes nothing can be kept, so nothing goes on. Tap Yes, or type <code>yes</code>; if you'd rather not, just leave it.
enrol-no-consent = Fine: nothing is kept beyond this invitation. If you change your mind, /start.
consent-yes = Yes, I agree
consent-no = No
enrol-name = What should I call you? Type it, e.g. <code>Ada</code>.
name-keep = Call me { $name }
name-misread = A name of 1 to { $longest } characters with at least one letter, please, e.g. <code>Ada</code>.
enrol-unit = In what do you count your loads?
unit-kg = Kilograms
unit-lb = Pounds
unit-misread = Kilograms or pounds? Type <code>kg</code> or <code>lb</code>.
enrol-clock = What time is it for you now? Type it, e.g. <code>18:40</code>.
enrol-clock-why = So that sessions come at your hour, summer and winter.
enrol-clock-place = { $time }: which of these shares your clock? Or type another zone, e.g. <code>Europe/Lisbon</code>.
clock-here = It is { $time }, as in { $city }
clock-place = { $city }
clock-misread = I looked for a time of day, e.g. <code>18:40</code> or <code>6.40 pm</code>.
clock-nowhere = I know no place where it is { $time } now. Look at your clock once more and type the time, e.g. <code>18:40</code>.
enrol-days = On which days do you train, and at what hour should the session come? Tap, or type e.g. <code>Mon Thu 18:00</code>.
enrol-days-chosen = Chosen: { $days }, { $time }
day-on = { $day } ✓
day-off = { $day }
hour-on = { $time } ✓
hour-off = { $time }
that-is-right = That's right
days-misread = I looked for weekdays or a time, e.g. <code>Mon Thu 18:00</code>.
enrol-gym = What can your gym load? An ordinary gym is one tap; change a step where yours differs.
gym-usual = An ordinary gym
gym-dumbbells = Dumbbells: { $low } to { $high } { $unit }, in steps of { $step }
gym-plates = Bar of { $bar } { $unit }, smallest plate { $plate }
gym-stack = Machines and cables: { $low } to { $high } { $unit }, in steps of { $step }
gym-type = Or type it: <code>dumbbells 2 30 2</code>, <code>plates 1.25</code>, <code>stack 5 100 5</code>, <code>bar 20</code>; then tap That's right.
gym-dumbbell-on = Dumbbells { $step } ✓
gym-dumbbell-off = Dumbbells { $step }
gym-plate-on = Plate { $step } ✓
gym-plate-off = Plate { $step }
gym-stack-on = Stack { $step } ✓
gym-stack-off = Stack { $step }
gym-misread = I looked for what your gym has, e.g. <code>dumbbells 2 30 2</code> (from, to, step), <code>plates 1.25</code> or <code>stack 5</code>.
enrol-ready = Before you load a bar: is there anything about your health to be careful about?
enrol-ready-list = For example a heart condition, chest pain, fainting or dizziness, breathlessness at rest, high blood pressure, an operation or injury not long ago, a joint that gives trouble, pregnancy, or medicine for any of these; or if you have not exercised for long.
enrol-ready-doctor = If anything fits, or you are not sure, ask a doctor first. You may say it in your own words; only your coach sees them. This question is no medical check.
ready-clear = Nothing that I know of
ready-flag = Yes, or not sure
enrol-done = <b>You are in, { $name }.</b> Your sessions come on { $days } at { $time }.
enrol-done-next = { $coach } has been told and gives you a programme next.
enrol-done-flagged = Please talk to a doctor before you train. { $coach } has been told; your sessions start when { $coach } says so.
enrol-done-how = When a session is here: tap what you did, or type it, e.g. <code>60x8</code>. /help shows more.
enrol-nudge = You had begun to join and the questions are not finished. Here is the one that is open; this is the only reminder.
toast-step-over = That question is answered already.
cancel-joining = You are in the middle of joining. /start shows the open question; you can also just leave it.

# Settings

settings-title = <b>Your settings</b>
settings-name = Name: { $name }
settings-unit = Loads in { $unit }
settings-zone = Clock: { $zone }
settings-days = Sessions: { $days } at { $time }
settings-gym = Steps: dumbbells { $dumbbell }, smallest plate { $plate }, stack { $stack } { $unit }
settings-words = { $on ->
    [yes] Every set is confirmed in words
   *[no] Sets are confirmed by a reaction
    }
settings-standing = { $paused ->
    [yes] Paused: no sessions come
   *[no] Sessions come on your days
    }
settings-change-name = Change name
settings-change-unit = Change kg or lb
settings-change-clock = Change clock
settings-change-days = Change days
settings-change-gym = Change gym
settings-change-words = Confirm: words or reaction
settings-pause = Pause my sessions
settings-go-on = Go on with my sessions
settings-withdraw = Take my consent back
settings-saved = Saved.
toast-words-on = From now on every set is confirmed in words
toast-words-off = From now on a reaction confirms a set
paused = Paused: no sessions or reminders come until you go on. What you did stays.
went-on = Welcome back. Sessions come on { $days } at { $time }.
go-on-waits = { $coach } has to say so first, because of your answer about your health. A message here reaches { $coach }.
withdraw-ask = Take your consent back? Sessions and reminders stop and nothing new is kept. To have what is there deleted as well: /delete_me
withdraw-sure = Yes, stop everything
withdraw-keep = Keep going
withdrawn = Done: nothing more is sent or kept. Your coach has been told. All the best!
toast-kept = Nothing was changed
