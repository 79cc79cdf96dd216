# The command line's words.

cli-coach-link = { $days ->
    [one] The first person who opens this link within a day becomes a coach. Send it to nobody else.
   *[other] The first person who opens this link within { $days } days becomes a coach. Send it to nobody else.
}
cli-status-never = No sign of life: the bot has never run with this data folder.
cli-status-seen = Last sign of life { $seconds } s ago; running since { $since }.
cli-status-poll = The platform last answered { $seconds } s before that.
cli-status-trouble = Trouble with the platform: { $what }.
cli-status-inbox = Messages waiting: { $waiting }; set aside: { $aside }.
cli-status-outbox = Messages to send: { $waiting }; the oldest has waited { $oldest } s.
cli-status-well = All is well.
cli-status-unwell = It needs a look.
cli-backup-done = The database is copied to { $file }. The key is not in it; keep { $keyfile } in another place.
cli-programme-stops = { $count ->
    [one] One problem stops this programme.
   *[other] { $count } problems stop this programme.
}
cli-programme-no-remarks = There is no file to put remarks into.
cli-programme-before = { $file } can't be read: { $problem }
