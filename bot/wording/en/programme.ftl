# A coach's programmes: the shelf, sheets that come in, what they would change, giving and taking back.

shelf-title = <b>Your programmes</b>
shelf-entry = { $title }
shelf-empty = None of your own yet. Take the template, fill it in, send it here: nothing is given to anybody before you say so.
shelf-how = Open one to look it over, give it, or get it as a sheet. Send a changed sheet back, and you see what it would change first.
shelf-open = { $title }
shelf-template = Template to write one
shelf-template-how = Fill it in and send it here (.xlsx or .csv). The page “Explanations” says what every column takes.
shelf-as-sheet = As a sheet
shelf-sheet-how = Change what you like and send it back. Nothing changes for anybody before you give it.

sheet-stops = { $count ->
    [one] <b>“{ $name }” can't be taken yet: one thing is in the way.</b>
   *[other] <b>“{ $name }” can't be taken yet: { $count } things are in the way.</b>
    }
sheet-nothing-changed = Nothing has changed for anybody. Mend it and send it again.
sheet-remarks = Your file with a column of remarks.

lookover-title = <b>{ $title }</b>, looked over
lookover-table = <pre>{ $rows }</pre>
lookover-rows = { $before }
    { $row }
lookover-more = { $count ->
    [one] and one more
   *[other] and { $count } more
    }
programme-for-whom = Nobody has it yet. Whom is it for?
programme-look-for = { $name }…
programme-for-all = { $count ->
    [one] The one who has it
   *[other] All { $count } who have it
    }
programme-all-ask = { $count ->
    [one] Give “{ $title }” as it is now to the one who has it?
   *[other] Give “{ $title }” as it is now to all { $count } who have it?
    }
programme-all-sure = Yes, to all { $count }
programme-all-given = { $count ->
    [one] One client has “{ $title }” as it is now. Sessions already sent stay as they are.
   *[other] { $count } clients have “{ $title }” as it is now. Sessions already sent stay as they are.
    }
programme-preview = <b>“{ $title }” for { $name }</b> would change:
programme-when = It counts from { $name }'s next session on. Sessions already sent stay as they are.
programme-give-to = Give it to { $name }
programme-undo = Undo
programme-undone = { $name } has “{ $title }” again.
back-programme = Back to the programme
toast-look-again = That has changed since: look at it again
toast-programme-used = A session of it has been reported: give another one instead
