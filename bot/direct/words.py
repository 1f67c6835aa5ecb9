"""Messages between coach and athlete, and what is said around them."""

from __future__ import annotations

from bot.words import figures
from bot.words.common import Media, shown
from bot.words.languages import Sentence, SentenceBy, SentenceOn, SentenceOnTwo, mark, tr
from engine.written.late import Late

ask_message = SentenceOn("What shall I tell {name}? Send it as one message.")
ask_reply = SentenceOn("What shall I tell {coach}? Send it as one message.")
from_coach = SentenceOnTwo("From your coach {coach}:\n{text}")


def from_second_coach(name: str, coach: str, text: str) -> str:
    return tr(
        "From {name}, second coach with {coach}:\n{text}",
        name=name, coach=coach, text=text,
    )  # fmt: skip


def read_along(sender: str, to: str, text: str) -> str:
    """A message between others, for whoever coaches the athlete too."""
    return tr("{sender} to {reader}: {text}", sender=sender, reader=to, text=text)


write_menu = Sentence("Write to your coach")
nobody_else = Sentence("You coach yourself, so there is no coach here to write to.")
message_sent = SentenceOn("Sent to {name}.")
message_may_not_arrive = SentenceOn(
    "{name} has stopped the bot, so this may not arrive. Please call them."
)

#: What a coach types to the question whether to send their words.
LEAVES = mark(
    "leave it, don't send, don't send it, do not send, not now, cancel, forget it, never mind, "
    "nevermind, delete, delete it, delete that, nobody, no one, none"
)
SENDS = mark("send, send it, send that, ok, okay, go, go ahead, do it, please do")

# To the athlete

passed_on = SentenceOn("I've passed that on to {names}.", figures.all_of)
# Of an "ok" or a thumb, for which nobody is disturbed.
kept_for = SentenceOn("Saved for {names}.", figures.all_of)
told_it_came = SentenceOn("I've told {names} that it came.", figures.all_of)
changed_for = SentenceOn("I've changed that for {names} too.", figures.all_of)
#: To who asks that somebody is not told: nothing can be kept back, and why that is so.
cannot_keep_back = SentenceOn(
    "I can't keep anything back: what you write here, {names} can read, this too. It is so that you "
    "are not alone with it. If you would rather talk to somebody else first: a doctor, or somebody "
    "you trust.",
    figures.all_of,
)
came_late = Sentence(
    "That was written on an earlier day and has only reached me now, so I haven't taken its numbers "
    "for today. Send today's once you have weighed yourself."
)
a_program = Sentence("I am a program, not a person.")
may_drink = Sentence(
    "You may always drink when you're thirsty, on every day of the plan. Small sips, as much as "
    "thirst asks for."
)
food_hint = Sentence("/food shows what fits your targets today.")
drink_hint = Sentence("Plain water when you're thirsty is always fine meanwhile.")
or_meant = SentenceOn("If you meant something else, see /{command}.")
when_you_can = Sentence("Send the answers when you can.")
water_hint = SentenceOn(
    "Your plan has {water} of water for today, over the whole day; when you're thirsty you may "
    "always drink more, in small sips."
)
if_it_troubles_you = Sentence("If something hurts or feels wrong, write me that.")
nothing_to_do = Sentence("OK.")
own_note = Sentence(
    "Saved as a note to yourself. If you feel unwell, call a doctor; in an emergency, your "
    "local emergency number."
)
nobody_reads = Sentence(
    "Nobody coaches you just now, so nobody reads what you write here. If you feel unwell, call "
    "a doctor; in an emergency, your local emergency number."
)
not_before_you_agree = Sentence("Before you have agreed I pass nothing on but an emergency.")
cannot_arrive = SentenceOn(
    "{names} has stopped this bot, so that may not arrive. Please call.", figures.all_of
)
# To the coach

# What a reply answers, above it.
about = SentenceOn("You wrote: “{said}”", shown)


def ask_sure(name: str, text: str) -> str:
    asked = tr("For {name}:\n“{text}”\n\nShall I send it?", name=name, text=shown(text))
    if not _GRAMS.search(text):
        return asked
    hint = tr(
        "These are only words: they change no target. To set a day's carbs, type {name}'s name and "
        "tap Set a day by hand.",
        name=name,
    )
    return f"{asked}\n{hint}"


#: A number that may be a day's carbs, in a text too short to be about anything else.
_GRAMS = Late(r"^(?:\D{1,40}\s)?\d{2,3}(?![\d.,:%])(?:\s\D{0,20}|\s?g\D{0,20})?$")

if_it_is_now = Sentence(
    "If this is happening now: the local emergency number first. I don't act on what a coach writes; "
    "to stop all adjusting, open the athlete's card and tap Freeze."
)
ask_to = SentenceOn("Who is this for?\n“{text}”", shown)
send_button = SentenceOn("Send to {name}")
to_all_button = Sentence("To all of them")
#: Who means everybody, at the beginning of a coach's words or as the answer to whom they are for.
EVERYBODY = mark("all, everybody, everyone, both, all of them, both of them, you all, you both")
#: Whom words are of and not for, by the word behind the name: "Mia has to sleep more".
OF_THEM = mark("is, has, was, does, did, should, needs, will, can, must, may, eats, weighs")
somebody_else_button = Sentence("Somebody else")
note_to_self_button = Sentence("Note to myself")
not_a_name = Sentence("I don't know whom you mean. Tap a name, or type it.")
not_sent = Sentence("Not sent.")
not_sent_yet = Sentence("These words have not gone out yet.")
to_my_coach_button = SentenceOn("{name} (my coach)")

#: A word of somebody who is told of alerts: the second contact, or a second coach.
from_contact = SentenceOnTwo("From {name}, who is told of your alerts:\n{text}")

# What cannot be read

_SENT = {
    Media.VOICE: mark("(a voice message; I can't play it and asked for it in writing)"),
    Media.VIDEO: mark("(a video; I can't show it and asked for it in writing)"),
    Media.PLACE: mark("(a place on the map; I can't show it and asked for it in writing)"),
    Media.CONTACT: mark("(a contact card; I can't show it and asked for it in writing)"),
    Media.ELSE: mark("(something that I can't read; I asked for it in writing)"),
}
#: Of what the coach hears at all: a sticker says nothing that has to be answered.
TOLD = frozenset(_SENT)

cannot_read = SentenceBy(
    {
        Media.VOICE: mark("I can't listen to voice messages yet: please type it."),
        Media.VIDEO: mark("I can't watch videos yet: please type what you want to say."),
        Media.STICKER: mark("I can't read stickers: please type what you want to say."),
        Media.PLACE: mark("I can't read places from the map: please type it."),
        Media.CONTACT: mark("I can't use contact cards: please type it."),
        Media.ELSE: mark("I can't read that: please type it."),
    }
)

#: What the coach reads where a sentence would stand.
sent_in_place = SentenceBy(_SENT)

# Behind words that may tell of a mild complaint.
may_mean = SentenceOn("(This may mean {complaint}; I haven't asked.)")
may_drink_told = Sentence("(I answered that drinking when thirsty is always fine.)")
file_told = Sentence("(a file; I can't open it and asked for it in writing)")
file_unread = Sentence("I can't open files of that kind: please type what is in it.")
