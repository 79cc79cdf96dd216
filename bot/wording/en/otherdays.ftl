# A programme on other numbers of days: the picture, and where added sets go first (the table's words: days.ftl).

otherdays-picture = <b>{ $title }</b> on 2, 3, 4 and 5 days, each at most { $minutes } min: minutes day by day; hard sets a week of each muscle and the least hours between two days that work it. The same in words stands above.
otherdays-first = Sets are added for { $names } first.
otherdays-first-targets = Sets are added first where your targets are furthest away. Tap a muscle to put it first.
otherdays-first-none = Which muscles get the added sets? Tap the weakest first.
otherdays-weak = First { $muscle }
otherdays-no-weak = No weak points
