# A coach's file: what is wrong with it, row by row, and what to write instead. `found` is what stands there.

sheets-at-sheet = Sheet { $sheet }: { $what }
sheets-at-row = Row { $row }: { $what }
sheets-at-sheet-row = Sheet { $sheet }, row { $row }: { $what }
sheets-at-cell = Row { $row }, { $column }: { $what }
sheets-at-sheet-cell = Sheet { $sheet }, row { $row }, { $column }: { $what }

# The file

sheets-empty = the file is empty. Send the sheet with its rows.
sheets-too-large = the file is larger than { $write } MB; a programme is far smaller. Copy the rows into a new sheet and send that.
sheets-wrong-name = the file's name has no ending, so that it can't be told what it is. Send a file ending in .xlsx or .csv.
sheets-not-as-named = the file is named .{ $found }, but inside it is something else. Save it again as .xlsx or .csv.
sheets-no-sheet = this is not a spreadsheet. Send a file saved as .xlsx or .csv.
sheets-old-form = this is the old workbook form (.xls). Save it as .xlsx and send that.
sheets-other-form = a file ending in .{ $found } is not read. Save it as .xlsx or .csv and send that.
sheets-locked = the file is locked with a password. Take the password off and send it again.
sheets-macros = the file can hold macros (programs). They are never run here, and such files are not taken: save it as .xlsx.
sheets-pictures = the file holds pictures. Take them out and send it again; a picture can be named by its link.
sheets-objects = the file holds embedded objects. Take them out and send it again.
sheets-damaged = the file is damaged or cut short. Save it again and send that.
sheets-swollen = the file unpacks to far more than a programme is. Copy the rows into a new sheet and send that.
sheets-entities = the file defines things of its own in its XML, which a spreadsheet never does; it is not read.
sheets-too-deep = the file is nested deeper than any spreadsheet; it is not read.
sheets-too-many-rows = the file has something in rows beyond { $write }. Leave only the programme in it.
sheets-too-many-columns = the file has something in columns beyond { $write }. Leave only the programme in it.
sheets-too-many-cells = the file has more than { $write } filled cells. Leave only the programme in it.
sheets-too-much-text = the file holds far more text than a programme. Leave only the programme in it.
sheets-cell-too-long = a cell holds more than { $write } characters (it begins "{ $found }"). Shorten it.
sheets-encoding = the text file is not in UTF-8 or UTF-16, so that letters would come out wrong. Save it as "CSV UTF-8" or as .xlsx.
sheets-quotes = the text file has a quotation mark that is not closed, or text after a closed one. Save it again as CSV, or as .xlsx.

# The layout

sheets-no-headings = there is no row of headings. Write them above the rows: { $write }.
sheets-no-column = there is no column { $write }. Add it, with that heading.
sheets-column-twice = there are two columns "{ $found }". Leave one.
sheets-column-unknown = the column "{ $found }" is none that we know; it is passed over.
sheets-sheet-unknown = the sheet "{ $found }" is none that we know; it is passed over.
sheets-sheet-twice = there are two sheets of this kind ("{ $found }"). Leave one.
sheets-hidden = the row is hidden in the file; it counts all the same.
sheets-no-rows = there are no rows under the headings.

# A cell

sheets-formula = a formula. Formulas are not worked out here; write the value itself.
sheets-error-value = "{ $found }" is an error of the spreadsheet program; write a value.
sheets-too-long = "{ $found }" is too long; write at most { $write } characters.
sheets-blank = nothing is written here; write for example { $write }.
sheets-date = the spreadsheet program took this for a day ({ $found }). If { $write } is meant, make the cell a text cell and write { $write } again.
sheets-clock = "{ $found }" is a time of day to a spreadsheet program; write it as { $write }.
sheets-not-a-choice = "{ $found }" is none of the choices; write one of: { $write }.
sheets-not-a-number = "{ $found }" is not a whole number; write for example { $write }.
sheets-out-of-range = "{ $found }" is out of bounds; write something within { $write }.
sheets-not-a-range = "{ $found }" is not a range; write { $write }.
sheets-backwards = "{ $found }" runs backwards; write { $write }.
sheets-not-effort = "{ $found }" is not an effort; write { $write }, halves are fine.
sheets-bare-effort = "{ $found }" could be repetitions left or an effort from 1 to 10; write { $write }.
sheets-not-a-load = "{ $found }" is not a load; write for example { $write }.
sheets-no-unit = "{ $found }" has no unit; write { $write }, or set Unit on the sheet About.
sheets-not-a-rest = "{ $found }" is not one time; write { $write }.
sheets-bare-rest = "{ $found }" could be minutes or seconds; write { $write }.
sheets-not-a-percent = "{ $found }" is not a percentage; write { $write }.
sheets-bare-share = "{ $found }" could be a share or a percentage; write { $write } if that is meant.
sheets-not-a-tempo = "{ $found }" is not a tempo; write four parts, as { $write }.
sheets-not-a-link = "{ $found }" is not a web address; write it as { $write }.
sheets-not-weeks = "{ $found }" are not weeks; write their numbers, as { $write }.

# Rows together

sheets-no-workout-yet = no workout is named in this row or above; write its title, for example { $write }.
sheets-no-exercise-yet = no exercise is named in this row or above it in its workout; write its name, for example { $write }.
sheets-exercise-unknown = "{ $found }" is not in the catalogue. Nearest: { $write }. Write one of them, or define yours on the sheet Exercises.
sheets-exercise-strange = "{ $found }" is not in the catalogue, and nothing there is like it. Define it on the sheet Exercises.
sheets-exercise-missing = "{ $found }" is not in the catalogue. Write a name from it, or define yours on the sheet Exercises.
sheets-exercise-apart = "{ $found }" stands earlier in this workout, with others between. Put its rows below each other.
sheets-workout-apart = the workout "{ $found }" stands further up, with others between. Put its rows below each other, or give it another title.
sheets-differs = "{ $found }" is not what row { $write } says of the whole. Write it once, in that row.
sheets-measures-differ = "{ $found }" counts otherwise than the rows above ({ $write }). One exercise counts one thing.
sheets-nothing-to-load = "{ $found }" is a load, but this exercise has none. Leave it blank, or define the exercise on the sheet Exercises.
sheets-half-a-drop = a drop set needs both: { $write }.
sheets-half-minis = mini sets need both: { $write }.
sheets-both-finishes = drops and mini sets in one row. Keep one of them, or use two rows.
sheets-workout-not-here = "{ $found }" is no workout of this programme; write one of: { $write }.
sheets-exercise-not-here = "{ $found }" is no exercise of this programme; write one of its own, as { $write }.
sheets-no-change = nothing is otherwise in these weeks: no sets, percent or effort is written.
sheets-named-twice = "{ $found }" stands here before. Leave one.
sheets-muscle-unknown = "{ $found }" is none of the muscles that we count; it is counted by itself. Nearest: { $write }.
sheets-muscle-idle = nothing in this programme works "{ $found }".
sheets-too-many = too many ({ $found }); at most { $write }.
sheets-and-more = { $found } problems up to here; the rest is not looked at before these are mended.
