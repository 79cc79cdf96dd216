# A client handed over to a colleague, with the client's yes.

handover-open = Hand over
handover-ask = To whom does { $name } go? Send the colleague's own invitation link (they make one with /invite). { $name } is asked first: nothing changes without a yes.
handover-no-link = That is no open invitation of a colleague's here. Ask them for a new one (/invite) and send it, or cancel. Nothing has changed.
handover-waits = { $name } is asked whether to go on with { $to }. Until there is a yes, everything stays as it is.
handover-asked = { $coach } asks whether you would go on with <b>{ $to }</b> as your coach.
handover-means = With a yes, { $to } sees all that is kept of your training from now on, and { $coach } sees it no more; your programme stays until { $to } gives another. With a no, nothing changes.
handover-yes = Yes, go on with { $coach }
handover-no = No, stay with { $coach }
handover-gone-client = You go on with { $to }. { $coach } sees your training no more.
handover-gone-coach = { $name } has said yes and goes on with { $to }. You see their training no more.
handover-stayed-client = You stay with { $coach }.
handover-stayed-coach = { $name } has said no and stays with you.
handover-yours = <b>{ $name } is your client now</b>, handed over by { $coach }. Their programme and record have come along.
