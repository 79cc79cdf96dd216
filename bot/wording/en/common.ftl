# Words used everywhere. Tags are the chat's HTML; arguments come escaped.

name = { $name }
words = { $words }
quote = <blockquote>{ $words }</blockquote>
never = no session yet
not-yet = not set
a-message = (a message)
cancel = Cancel
cancelled = Cancelled. Nothing was sent or changed.
cancel-nothing = There is nothing to cancel.
not-available = Not available.
unknown-command = I don't know that command. /help shows what works.

list-and-then = { $first }, { $second }
sets-then = { $first }, then { $second }

day-mon = Mon
day-tue = Tue
day-wed = Wed
day-thu = Thu
day-fri = Fri
day-sat = Sat
day-sun = Sun

# Loads, counts, sets

load-total = { $load }
load-per-hand = { $load } each hand
load-body = body weight
load-added = body weight + { $load }
load-assist = { $load } of assistance
load-unknown = your choice

count-reps = { $span }
count-seconds = { $span } s
count-metres = { $span } m
count-each-side = { $count } each side

left = { $left } left
left-none = none left
reserve = { $left }
reserve-none = none

planned = { $count }
planned-load = { $load } × { $count }
planned-left = { $count }, { $left } in reserve
planned-load-left = { $load } × { $count }, { $left } in reserve

done = { $count }
done-load = { $load } × { $count }
done-left = { $count }, { $left }
done-load-left = { $load } × { $count }, { $left }
done-drop = drop { $set }
done-mini = + { $count }
done-warmup = warm-up { $set }
done-side-left = left { $set }
done-side-right = right { $set }
done-both = { $set } each side

# People without a part in it

stranger = Hello! This is a coach's private training log; it works by invitation only.
forwarded = That is somebody else's message, so I keep nothing of it. If it is your set, type it yourself, e.g. <code>60x8</code>.
invite-spent = This invitation was used already, or it has run out. Ask your coach for a new one.
already-client = You train with { $coach } here already. To change, end that first in /settings.
already-coach = You are a coach here already. /help shows what you can do.

# Help

help-client = <b>How it works</b>
    On your training days the session comes here as one message with buttons. Tap what you did, or type it in any way you like.
help-client-examples = Examples:
    <code>60x8</code>   60 for 8 repetitions
    <code>60x8 2 left</code>   with two more in you
    <code>60: 10 9 8</code>   three sets
    <code>30x12 then 20x8</code>   a set and its drop
    <code>row 50x10</code>   another exercise by its name
    <code>skipped calves</code>, <code>that's me done</code>
    <code>no cable today</code>, <code>only 25 min</code>   the session made to fit
    Editing your message corrects what it said. Deleting it does not: use /undo.
help-client-more = /today the session · /week your week · /undo the last report · /pain something hurts · /settings · /privacy · /export a copy of your data · /delete_me delete it
    Anything that hurts: just say so. Your coach hears at once.
help-coach = <b>For the coach</b>
    /digest what needs you · /clients everyone · /invite a link for a new client · /programme your programmes as sheets · /settings · /privacy · /export a copy of your practice · /delete_me leave
    Reply to any message about a client and it reaches them. Pain and missed sessions come to you at once.
help-caution = <i>Training can hurt. Stop when something feels wrong, and see a doctor about it: nobody here diagnoses anything. In an emergency call for help first.</i>

# Privacy

privacy-title = <b>Privacy notice { $version }</b>
privacy-what = What is kept: your name here, your training days, your sessions, what you report (loads, repetitions, effort, pain) with the words you wrote, and when.
privacy-why = Why: so that your coach can plan your training and notice when something is wrong. For nothing else; no advertising, no sale, no profile of you.
privacy-who = Who sees it: your coach, and whoever runs this service as far as keeping it running needs. Your words, name and pain notes are stored encrypted, the key apart from them. The chat service carries the messages under its own terms.
privacy-rights = Your rights: a copy of all that is kept (/export), to correct it, to have it deleted at once (/delete_me), and to take your consent back at any time (/settings). You may complain to your data protection authority. Contact: { $contact }.
developer-info = Run by: { $contact }.

# Other than text

media-not-read = I can't read that. Type what you did, e.g. <code>60x8</code>.
media-sent-to-coach = Sent to { $coach }. I read text only: type sets, e.g. <code>60x8</code>.
