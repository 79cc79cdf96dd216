# Pain. Never a diagnosis.

urgent-stop = <b>Stop training now. This can be serious: call { $number } or your local emergency number, or have somebody take you to a doctor at once. Don't wait for an answer here, and don't drive yourself.</b>
urgent-who = I am a training log, not a doctor, and nobody may be reading this right now. Tell somebody near you.
urgent-waits = { $coach } has been told. Your sessions wait until { $coach } says that they may go on.
pain-heard = I have noted { $place }.
pain-held = { $name } goes no heavier until this is settled. Leave it out today if it hurts.
pain-told = { $coach } has been told.
pain-care = Stop the exercise that hurts. If the pain is strong, sudden, does not settle, or worries you, see a doctor. I can't judge what it is.
pain-high = That is a lot. Stop for today, and have it looked at by a doctor; call for help if it gets worse or anything else comes with it. I can't judge what it is.
pain-score-ask = How bad is it, from 0 (none) to 10 (the worst there is)?
pain-chip = { $score }
pain-ask = Where does it hurt, and how bad is it from 0 to 10? Type it in your own words, e.g. <code>left knee 4/10</code>.
pain-ask-urgent = Pressure or pain in the chest, fainting, breath that does not come back, a sudden severe headache, numbness or loss of strength, a pop with loss of function, a hot swollen calf, dark urine: tap below.
pain-urgent-button = One of these
pain-nothing = Nothing hurts
pain-nothing-kept = Good. Nothing was noted.
pain-place-none = pain
pain-place = pain: { $where }
pain-place-left = pain: left { $where }
pain-place-right = pain: right { $where }
pain-scored = { $place }, { $score } of 10
toast-score = { $score } of 10

pain-check = Good morning. You had noted { $place }. How is it now?
check-gone = Gone
check-better = Better
check-same = The same
check-worse = Worse
checked-gone = Good. { $name } may go on as planned; stop if it comes back.
checked-gone-urgent = Good to hear. { $coach } has been told; your sessions wait until { $coach } says that they may go on.
checked-gone-plain = Good. Stop if it comes back.
checked-still = Noted; { $coach } has been told, and the hold stays. If it does not settle or worries you, see a doctor.
checked-worse = Noted; { $coach } has been told at once, and the hold stays.

alert-urgent = <b>URGENT: { $name } reports a sign that can't wait.</b>
alert-pain = <b>PAIN: { $name }</b>
alert-place = { $place }
alert-during = During: { $exercise }, held from now on
alert-urgent-told = { $name } was told to stop, to get help, and the emergency number. Please get in touch now.
handled-pain = Handled: pain of { $name }
coach-checked-gone = { $name }, the morning after: gone, the hold is lifted.
coach-checked-urgent-gone = { $name }, the morning after: gone. Sessions wait for your word.
coach-checked-better = { $name }, the morning after: better, the hold stays.
coach-checked-same = { $name }, the morning after: the same, the hold stays.
coach-checked-worse = <b>{ $name }, the morning after: WORSE.</b> The hold stays.
