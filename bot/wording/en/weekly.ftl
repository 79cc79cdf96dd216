# The weekly summary.

week-nothing = No session this week yet.
week-caption = <b>Your week, { $first } to { $last }</b>: { $done } of { $planned } sessions. The same in words follows.
week-sessions = <b>Sessions:</b> { $done } of { $planned }
week-tonnage = <b>Moved:</b> { $tonnage } { $unit } (load × repetitions)
week-muscles = <b>Hard sets by muscle</b> (worked directly 1, along with others ½), done of planned:
week-muscle = { $muscle }: { $sets } of { $planned }
week-best-title = <b>Best sets</b>
week-best = { $name }: { $set }
week-best-max = { $name }: { $set }; estimated one-repetition maximum { $max } { $unit }
week-look-pain = <b>Look at:</b> { $where }. Say how it is before you load it again.
week-look-urgent = <b>Look at:</b> what you reported on { $day } can be serious. See a doctor before you train on, if you have not yet.
week-look-missed = <b>Look at:</b> { $missed ->
    [one] one session was left out. It happens; the next one counts.
   *[other] { $missed } sessions were left out. If the days don't suit you, change them in /settings or tell your coach.
    }
week-look-muscle = <b>Look at:</b> { $muscle }, { $sets } of { $planned } sets this week.
week-look-open = <b>Not over yet:</b> what is open still counts.
week-look-fine = <b>All as planned.</b> Keep it like this.
