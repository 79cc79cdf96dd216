# The command menu.

menu-start = Begin, or go on where you were
menu-today = Today's session
menu-week = Your week so far
menu-undo = Take the last report back
menu-pain = Something hurts
menu-settings = Days, units, gym, pause
menu-help = How it works
menu-privacy = What is kept and why
menu-digest = What needs you
menu-clients = Everyone at a glance
menu-invite = A link for a new client
menu-programme = Your programmes, as sheets
menu-export = A copy of all that is kept of you
