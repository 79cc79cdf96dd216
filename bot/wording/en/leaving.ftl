# Deleting oneself.

leave-ask = Delete all that is kept of you here? That is
leave-sets = { $sessions ->
    [one] { $sets ->
        [one] · one set in one session
       *[other] · { $sets } sets in one session
    }
   *[other] · { $sets } sets in { $sessions } sessions
}
leave-pains = { $count ->
    [one] · one note of pain
   *[other] · { $count } notes of pain
}
leave-words = { $count ->
    [one] · one question or doubtful report
   *[other] · { $count } questions and doubtful reports
}
leave-settings = · your name, settings, programme and everything worked out from what you did.
leave-after = It is gone at once and can't be brought back. A copy first: /export
leave-sure = { $sets ->
    [0] Delete everything of mine
    [one] Delete one set and all the rest
   *[other] Delete { $sets } sets and all the rest
}
leave-keep = Keep everything
leave-kept = Nothing was deleted.
leave-done = Everything is deleted. Safety copies made before now still hold it, sealed, until they run out: after two weeks, unless { $contact } says otherwise. What stands in this chat is yours to clear. All the best!
leave-coach-told = { $name } has left and had everything deleted. Nothing about { $name } is kept any more but this line in your chat.
leave-coach-has-clients = { $count ->
    [one] One client still trains with you
   *[other] { $count } clients still train with you
}: their records hang on yours. Tell them first, then ask { $contact } to delete your practice. A copy first: /export
leave-coach-ask = { $programmes ->
    [0] Delete all that is kept of you as a coach: your name, settings and invitations, and the records of clients who have taken their consent back?
    [one] Delete all that is kept of you as a coach: your name, settings, invitations and one programme, and the records of clients who have taken their consent back?
   *[other] Delete all that is kept of you as a coach: your name, settings, invitations and { $programmes } programmes, and the records of clients who have taken their consent back?
}
leave-coach-sure = Delete my coach's account
