# Files, in and out.

# What the machinery says with the later parts of a file.
file-goes-on = Part { $part }.

# A coach's spreadsheet.
sheet-too-big = “{ $name }” is too big: a programme's sheet has at most { $megabytes } MB. Take pictures out of it, or send the one sheet alone.
sheet-gone = The chat service doesn't give me “{ $name }” any more. Please send it again.
sheet-failed = I could not fetch “{ $name }” just now. Nothing was changed; please send it again.
