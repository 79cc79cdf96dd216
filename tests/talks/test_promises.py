"""What the papers promise to people: states that end, messages of every kind, names, mistakes answered with help."""

from datetime import timedelta

import pytest
import sqlalchemy as sa

from storage.tables import clients
from tests.talks.wireless import ADA, BO, COACH, DANA, EVE, OTHER_COACH, STRANGER, Raw, Wired, Wireless

MONDAY = "2027-01-11 18:05"


def sets_kept(bot: Wireless) -> int:
    """How many sets are kept."""
    return len(bot.work.all(sa.text("SELECT 1 FROM sets")))


def payload(bot: Wireless, coach: int = COACH) -> str:
    """A new invitation's."""
    bot.say(coach, "/invite")
    return bot.text(coach).partition("?start=")[2].split()[0]


# --- invitations


@pytest.mark.parametrize(("days", "opens"), [(6.99, True), (7.01, False)])
def test_an_invitation_is_good_for_seven_days(wired: Wired, days: float, *, opens: bool) -> None:
    """Afterwards it is as one that was used."""
    with wired.bot() as bot:
        link = payload(bot)
        bot.until(bot.now + timedelta(days=days))
        bot.say(STRANGER, f"/start {link}")
        assert ("1 of 7" in bot.text(STRANGER)) is opens
        assert opens or "run out" in bot.text(STRANGER)


def test_a_link_opened_by_somebody_who_is_in_changes_nothing(wired: Wired) -> None:
    """A client with another coach's link hears with whom they train; the link stays good for whom it was meant."""
    with wired.bot() as bot:
        link = payload(bot, OTHER_COACH)
        bot.say(ADA, f"/start {link}")
        assert "train with Maren" in bot.text(ADA)
        bot.say(STRANGER, f"/start {link}")
        assert "1 of 7" in bot.text(STRANGER)


def test_who_withdrew_may_come_back_by_a_new_invitation(wired: Wired) -> None:
    """With another coach, too; the first coach then reads nothing of it."""
    with wired.bot() as bot:
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Take my consent back")
        bot.tap(ADA, "Yes, stop everything")
        bot.say(ADA, f"/start {payload(bot, OTHER_COACH)}")
        assert "1 of 7" in bot.text(ADA)
        bot.say(OTHER_COACH, "/clients")
        assert "Ada" in bot.text(OTHER_COACH)
        bot.no_turn_failed()


# --- a coach who trains


def test_a_coach_may_be_another_coachs_client(wired: Wired) -> None:
    """Oona trains with Maren: her sets are hers, her coaching commands work, a reply to her client's question goes
    down and her own question goes up, while she has not even finished joining and afterwards."""
    with wired.bot() as bot:
        bot.say(OTHER_COACH, f"/start {payload(bot)}")
        bot.say(OTHER_COACH, "yes")
        bot.say(DANA, "how deep should I squat?")
        bot.tap(OTHER_COACH, "Reply to Dana")
        bot.say(OTHER_COACH, "As deep as you stay braced.")
        assert "As deep as" in "".join(s.text for s in bot.screen(DANA))
        for words in ("Oona", "kg", "Europe/Dublin", "mon 18:00"):
            bot.say(OTHER_COACH, words)
        bot.tap(OTHER_COACH, "An ordinary gym")
        bot.tap(OTHER_COACH, "Nothing that I know of")
        bot.tap(COACH, "Sample programme for Oona")
        bot.until(bot.wall("Europe/Dublin", "2027-01-11 18:05"))
        bot.say(OTHER_COACH, "60x5")
        assert "1. done: 60 kg × 5" in "".join(s.text for s in bot.screen(OTHER_COACH))
        bot.say(OTHER_COACH, "/clients")
        assert "Dana" in bot.text(OTHER_COACH)
        assert "Oona" not in bot.text(OTHER_COACH)
        bot.say(OTHER_COACH, "/help")
        assert any("For the coach" in s.text for s in bot.screen(OTHER_COACH)[-2:])
        bot.say(OTHER_COACH, "should I use a belt?")
        assert any("use a belt" in s.text for s in bot.screen(COACH))
        assert not any("use a belt" in s.text for s in bot.screen(DANA))
        bot.no_turn_failed()


# --- states end


@pytest.mark.parametrize(
    ("who", "into", "answer"),
    [
        (ADA, (), "nothing to cancel"),
        (ADA, ("/settings", "[Change name"), "Cancelled"),
        (ADA, ("/pain",), "Cancelled"),
        (COACH, (), "nothing to cancel"),
        (COACH, ("/clients", "[Open Ada", "[Reply to Ada"), "Cancelled"),
        (COACH, ("/settings", "[Change name"), "Cancelled"),
        (COACH, ("to whom?",), "Cancelled"),
        (EVE, (), "in the middle of joining"),
        (STRANGER, (), "invitation only"),
    ],
)
def test_cancel_works_in_every_state(wired: Wired, who: int, into: tuple[str, ...], answer: str) -> None:
    """Out of whatever was begun; what is typed next is an ordinary message again."""
    with wired.bot(MONDAY) as bot:
        for step in into:
            if step.startswith("["):
                bot.tap(who, step[1:])
            else:
                bot.say(who, step)
        bot.say(who, "/cancel")
        assert answer in bot.text(who)
        if who == ADA:
            bot.say(ADA, "60x5")
            assert sets_kept(bot) == 1


def test_reply_mode_ends_after_ten_minutes(wired: Wired) -> None:
    """Nine minutes later the message goes to Ada; eleven minutes later it is asked for whom it is."""
    with wired.bot(MONDAY) as bot:
        for minutes, arrives in ((9, True), (11, False)):
            bot.say(COACH, "/clients")
            bot.tap(COACH, "Open Ada")
            bot.tap(COACH, "Reply to Ada")
            bot.wait(minutes)
            bot.say(COACH, f"after {minutes}")
            assert any(f"after {minutes}" in s.text for s in bot.screen(ADA)) is arrives
        assert "For whom is that" in bot.text(COACH)


@pytest.mark.parametrize("into", [("/settings", "Change name"), ("/settings", "Change days"), ("/pain", "")])
def test_a_question_left_alone_takes_no_report_for_its_answer(wired: Wired, into: tuple[str, str]) -> None:
    """A question of the settings or the Pain button, never answered: three days later a set is a set."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, into[0])
        if into[1]:
            bot.tap(ADA, into[1])
        bot.until(bot.wall("Europe/Berlin", "2027-01-14 18:05"))
        bot.say(ADA, "60x8 2 left")
        assert sets_kept(bot) == 1
        assert not any("PAIN" in s.text for s in bot.screen(COACH))
        bot.say(ADA, "/settings")
        assert "Name: Ada" in bot.text(ADA)


def test_before_the_coachs_word_nothing_starts_a_session(wired: Wired) -> None:
    """Eve's readiness answer speaks for caution: no session by /today, by the button, or by going on herself."""
    with wired.bot() as bot:
        for words in ("yes", "Eve", "kg", "Europe/Berlin", "mon 18:00"):
            bot.say(EVE, words)
        bot.tap(EVE, "An ordinary gym")
        bot.say(EVE, "I have a heart condition")
        bot.tap(COACH, "Sample programme for Eve")
        bot.until(bot.wall("Europe/Berlin", MONDAY))
        bot.say(EVE, "/today")
        assert "has to say so first" in bot.text(EVE)
        bot.tap_data(EVE, "1:start:")
        bot.tap_data(EVE, "1:go-on:")
        bot.tap_data(EVE, "1:ask:ready")
        bot.say(EVE, "60x5")
        assert not bot.work.all(sa.text("SELECT 1 FROM sessions JOIN clients ON clients.id = client WHERE chat = 2005"))


def test_nothing_reaches_who_has_withdrawn(wired: Wired) -> None:
    """Not by an old alert's button, not by replying to it, not by a name tapped: the coach hears why."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "my left knee hurts 4/10")
        alert = next(s.number for s in bot.screen(COACH) if "PAIN: Ada" in s.text)
        bot.say(COACH, "unaddressed")
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Take my consent back")
        bot.tap(ADA, "Yes, stop everything")
        count = len(bot.screen(ADA))
        bot.tap(COACH, "Send to Ada")
        bot.tap(COACH, "Reply to Ada")
        bot.say(COACH, "hello?", reply_to_message={"message_id": alert})
        assert "taken the consent back" in bot.text(COACH)
        assert len(bot.screen(ADA)) == count


# --- the card


def test_today_sends_the_card_anew_and_the_old_one_loses_its_buttons(wired: Wired) -> None:
    """The new one goes on where the old one stood."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "60x5")
        bot.say(ADA, "/today")
        cards = [s for s in bot.screen(ADA) if "· about" in s.text]
        assert len(cards) == 2
        assert not cards[0].data
        assert cards[1].data
        bot.say(ADA, "50x9")
        assert "2. done: 50 kg × 9" in cards[1].text or "2. done: 50 kg × 9" in bot.screens[ADA][cards[1].number].text
        assert "2. done" not in bot.screens[ADA][cards[0].number].text


@pytest.mark.parametrize(
    "data", ["2:set:abc:0:1:5", "0:x:y", "set", "", "1:", "1::x", "x" * 64, "1:nope:x", "1:set:gone:0:1:5"]
)
def test_an_old_button_says_so(wired: Wired, data: str) -> None:
    """From another version, truncated, or of a session that is none: a word, and nothing changes."""
    with wired.bot(MONDAY) as bot:
        facts = bot.facts_count()
        assert bot.tap_data(ADA, data) in ("This button is from an older message", "Not available.")
        assert bot.facts_count() == facts


# --- messages of every kind

PHOTO: Raw = {"photo": [{"file_id": "small"}, {"file_id": "large"}]}
KINDS: dict[str, Raw] = {
    "photo": PHOTO,
    "video": {"video": {"file_id": "f"}},
    "video note": {"video_note": {"file_id": "f"}},
    "animation": {"animation": {"file_id": "f"}, "document": {"file_id": "f"}},
    "voice": {"voice": {"file_id": "f"}},
    "document": {"document": {"file_id": "f", "file_name": "<b>plan</b>.pdf", "mime_type": "application/pdf"}},
}
MUTE: dict[str, Raw] = {
    "sticker": {"sticker": {"file_id": "f", "emoji": "💪"}},
    "location": {"location": {"latitude": 1.0, "longitude": 2.0}},
    "poll": {"poll": {"id": "1", "question": "?"}},
    "contact": {"contact": {"phone_number": "1", "first_name": "x"}},
    "dice": {"dice": {"value": 6, "emoji": "🎲"}},
}


@pytest.mark.parametrize("kind", KINDS)
def test_a_picture_a_video_or_a_voice_note_goes_to_the_coach_and_its_caption_counts(wired: Wired, kind: str) -> None:
    """The coach gets it with the name above; a set beneath it is kept; forwarded from elsewhere it is no set."""
    with wired.bot(MONDAY) as bot:
        bot.raw({"message": {**bot.message(ADA, 91_000), **KINDS[kind], "caption": "60x5"}})
        assert any(s.relayed == 91_000 for s in bot.screen(COACH))
        assert any("Ada sends" in s.text for s in bot.screen(COACH))
        assert sets_kept(bot) == 1
        origin = {"type": "hidden_user", "sender_user_name": "x"}
        bot.raw({"message": {**bot.message(ADA, 91_001), **KINDS[kind], "caption": "50x9", "forward_origin": origin}})
        assert any(s.relayed == 91_001 for s in bot.screen(COACH))
        assert sets_kept(bot) == 1


@pytest.mark.parametrize("kind", MUTE)
def test_what_cannot_be_read_is_answered_once_in_ten_minutes(wired: Wired, kind: str) -> None:
    """With an example of what can; five in a row get one answer, a later one its own."""
    with wired.bot(MONDAY) as bot:
        before = len(bot.screen(ADA))
        for n in range(5):
            bot.raw({"message": {**bot.message(ADA, 92_000 + n), **MUTE[kind]}})
        assert len(bot.screen(ADA)) == before + 1
        assert "60x8" in bot.text(ADA)
        bot.wait(11)
        bot.raw({"message": {**bot.message(ADA, 92_010), **MUTE[kind]}})
        assert len(bot.screen(ADA)) == before + 2


def test_an_album_keeps_together_both_ways(wired: Wired) -> None:
    """Three pictures: one line above and one answer; the caption's set counts once. The coach's, in reply mode, too."""
    with wired.bot(MONDAY) as bot:
        for n in range(3):
            caption = {"caption": "60x5"} if n == 0 else {}
            body = {**bot.message(ADA, 93_000 + n), **PHOTO, "media_group_id": "g1", **caption}
            bot.raw({"message": body})
        assert sum("Ada sends" in s.text for s in bot.screen(COACH)) == 1
        assert [s.relayed for s in bot.screen(COACH) if s.relayed] == [93_000, 93_001, 93_002]
        assert sum("Sent to Maren" in s.text for s in bot.screen(ADA)) == 1
        assert sets_kept(bot) == 1
        bot.tap(COACH, "Reply to Ada")
        for n in range(3):
            bot.raw({"message": {**bot.message(COACH, 94_000 + n), **PHOTO, "media_group_id": "g2"}})
        assert [s.relayed for s in bot.screen(ADA) if s.relayed] == [94_000, 94_001, 94_002]
        assert not any("For whom" in s.text for s in bot.screen(COACH))
        bot.wait(1)
        bot.say(COACH, "and now?")
        assert "For whom" in bot.text(COACH)


def test_service_messages_are_nobodys_words(wired: Wired) -> None:
    """A pinned message, a changed photo: no answer, nothing kept."""
    with wired.bot(MONDAY) as bot:
        before = len(bot.screen(ADA))
        bot.raw({"message": {**bot.message(ADA, 95_000), "pinned_message": {"message_id": 5, "text": "60x5"}}})
        assert (len(bot.screen(ADA)), sets_kept(bot)) == (before, 0)


def test_edits_of_every_kind(wired: Wired) -> None:
    """The same words again do nothing; of a message that reported nothing a set counts now; a command edited does
    nothing; a stranger's and a joining person's edits do nothing; a coach hears that the client keeps the old words."""
    with wired.bot(MONDAY) as bot:
        first = bot.say(ADA, "60x5")
        count = bot.facts_count()
        bot.edit(ADA, first, "60x5")
        assert bot.facts_count() == count
        second = bot.say(ADA, "/week")
        bot.edit(ADA, second, "/undo")
        assert sets_kept(bot) == 1
        third = bot.say(ADA, "what a day")
        bot.edit(ADA, third, "50x9")
        assert sets_kept(bot) == 2
        count = bot.facts_count()
        for who in (STRANGER, EVE, COACH):
            bot.edit(who, bot.say(who, "/help"), "60x5")
        assert bot.facts_count() == count
        assert "does not reach anybody" in bot.text(COACH)


def test_commands_with_capitals_the_bots_name_and_more_behind(wired: Wired) -> None:
    """As phones and people write them."""
    with wired.bot(MONDAY) as bot:
        for words in ("/Week", "/WEEK@chalk_bot", "/week please", "/week\nplease", " /week", "/week\u00a0now"):
            before = len(bot.screen(ADA))
            bot.say(ADA, words)
            assert "Sessions:" in bot.text(ADA), words
            assert len(bot.screen(ADA)) > before


# --- names


@pytest.mark.parametrize(
    ("typed", "shown"),
    [
        ("<b>Ada</b> & Co", "<b>Ada</b> & Co"),
        ("Ада\u202e Ω", "Ада Ω"),
        ("A\u200bd\x07a", "Ada"),
        ("مريم", "\u2068مريم\u2069"),
        ("Zoë 🏋️‍♀️", "Zoë 🏋️‍♀️"),
        ("  Ada \n Lee  ", "Ada Lee"),
        ("{ $name } %s", "{ $name } %s"),
    ],
)
def test_names_are_shown_as_they_are_and_turn_nothing_around(wired: Wired, typed: str, shown: str) -> None:
    """Markup is words, control and direction characters go, right-to-left names stand apart from what is beside."""
    with wired.bot() as bot:
        bot.say(EVE, "yes")
        bot.say(EVE, typed)
        for words in ("kg", "Europe/Berlin", "mon 18:00"):
            bot.say(EVE, words)
        bot.tap(EVE, "An ordinary gym")
        bot.tap(EVE, "Nothing that I know of")
        assert f"You are in, {shown}." in bot.text(EVE)
        assert f"{shown} has joined." in "".join(s.text for s in bot.screen(COACH))
        bot.no_turn_failed()


@pytest.mark.parametrize("first_name", ["", "\u200b", "\u202e\u2066", "<i>", "x" * 64, "\x00", "🙂"])
def test_any_name_in_the_account_lets_them_join(wired: Wired, first_name: str) -> None:
    """With nothing to see in it the name is simply asked for; the coach can open them meanwhile."""
    with wired.bot() as bot:
        link = payload(bot)
        number = 96_000
        person = {"id": STRANGER, "is_bot": False, "first_name": first_name}
        bot.raw({"message": {**bot.message(STRANGER, number), "from": person, "text": f"/start {link}"}})
        assert "1 of 7" in bot.text(STRANGER)
        bot.say(COACH, "/clients")
        assert any(label.startswith("Open") for label, _ in bot.buttons(COACH))
        bot.say(STRANGER, "yes")
        assert "2 of 7" in bot.text(STRANGER)
        bot.no_turn_failed()


# --- mistakes


def test_each_question_answers_a_mistake_with_an_example(wired: Wired) -> None:
    """At every step of joining, what can't be read is told so with something that can."""
    answers = ("yes", "Eve", "kg", "Europe/Berlin", "mon thu 18:00")
    wrong = ("perhaps", "12345", "stones", "quarter past never", "sometimes", "lots of things")
    with wired.bot() as bot:
        for n, mistake in enumerate(wrong):
            before = bot.facts_count()
            bot.say(EVE, mistake)
            assert "<code>" in bot.screen(EVE)[-1].html, mistake
            assert bot.facts_count() == before
            if n < len(answers):
                bot.say(EVE, answers[n])


def test_the_coachs_questions_do_so_too(wired: Wired) -> None:
    """Clock, hour and name."""
    with wired.bot() as bot:
        for button, mistake in (("Change clock", "noonish"), ("Change digest", "early"), ("Change name", "\u200b")):
            bot.say(COACH, "/settings")
            bot.tap(COACH, button)
            before = bot.facts_count()
            bot.say(COACH, mistake)
            assert "<code>" in bot.screen(COACH)[-1].html, mistake
            assert bot.facts_count() == before
            bot.say(COACH, "/cancel")


@pytest.mark.parametrize("words", ["banana", "x", "60 x", "...", "??", "squats were fun"])
def test_words_that_hold_no_set_get_an_example_or_a_question(wired: Wired, words: str) -> None:
    """Never silence, never a guess."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, words)
        newest = bot.screen(ADA)[-1]
        assert "60x8" in newest.text or newest.data or "passed your question" in newest.text
        assert sets_kept(bot) == 0


# --- pain is heard everywhere


@pytest.mark.parametrize("into", [("/settings", "Change name"), ("/settings", "Change days")])
def test_pain_is_no_answer_to_a_question_of_the_settings(wired: Wired, into: tuple[str, str]) -> None:
    """Typed while we had asked for a name: the coach hears of it, and nobody is called so."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, into[0])
        bot.tap(ADA, into[1])
        bot.say(ADA, "my left knee hurts 4/10")
        assert any("PAIN: Ada" in s.text for s in bot.screen(COACH))


@pytest.mark.parametrize("answers", [(), ("yes",), ("yes", "Eve", "kg")])
def test_an_urgent_sign_is_answered_first_also_while_joining(wired: Wired, answers: tuple[str, ...]) -> None:
    """Before any consent: help first, and nothing of it is kept."""
    with wired.bot() as bot:
        for words in answers:
            bot.say(EVE, words)
        before = bot.facts_count()
        bot.say(EVE, "pressure on my chest and I can't catch my breath")
        assert bot.text(EVE).startswith("Stop training now")
        assert bot.facts_count() == before


def test_who_is_paused_is_heard_too(wired: Wired) -> None:
    """Pain and questions reach the coach during a pause."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Pause my sessions")
        bot.say(ADA, "my left knee hurts 4/10")
        bot.say(ADA, "should I see somebody?")
        assert any("PAIN: Ada" in s.text for s in bot.screen(COACH))
        assert any("should I see somebody" in s.text for s in bot.screen(COACH))


# --- blocked and back


def test_who_writes_can_be_reached_again(wired: Wired) -> None:
    """Blocked, told to the coach in the digest, reminders rest; the platform's word of the unblocking is lost, but a
    message comes: from then on everything goes on."""
    with wired.bot() as bot:
        chat = {"id": ADA, "type": "private"}
        bot.raw({"my_chat_member": {"chat": chat, "date": 5, "new_chat_member": {"status": "kicked"}}})
        count = len(bot.screen(ADA))
        bot.until(bot.wall("Europe/Dublin", "2027-01-12 07:00"))
        assert len(bot.screen(ADA)) == count
        assert sum("CAN'T BE REACHED" in s.text for s in bot.screen(COACH)) == 1
        bot.say(ADA, "/help")
        assert bot.work.all(sa.select(clients.c.unreachable_at).where(clients.c.chat == ADA))[0][0] is None
        bot.until(bot.wall("Europe/Berlin", "2027-01-14 18:00"))
        assert "Squat and press" in bot.text(ADA)


# --- answers go where they belong


@pytest.mark.parametrize("about", ["PAIN: Ada", "MISSED: ", "should I use a belt"])
def test_a_reply_to_an_alert_or_a_question_reaches_the_client_and_comes_back(wired: Wired, about: str) -> None:
    """By the chat's own reply; the client's reply to it comes back, and nobody else reads a word."""
    with wired.bot(MONDAY) as bot:
        if about != "MISSED: ":
            bot.say(ADA, "my left knee hurts 4/10")
            bot.say(ADA, "should I use a belt?")
        bot.until(bot.wall("Europe/Berlin", "2027-01-11 21:01"))
        message = next(s.number for s in bot.screen(COACH) if about in s.text)
        bot.say(COACH, "Let us talk tomorrow.", reply_to_message={"message_id": message})
        words = next(s for s in reversed(bot.screen(ADA)) if "Let us talk tomorrow." in s.text)
        bot.say(ADA, "fine with me", reply_to_message={"message_id": words.number})
        assert any("fine with me" in s.text for s in bot.screen(COACH))
        for other in (BO, DANA, OTHER_COACH):
            assert not any("talk tomorrow" in s.text or "fine with me" in s.text for s in bot.screen(other))
