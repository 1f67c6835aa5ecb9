"""Invitations in words (made, taken, not to be taken), and whether another coach shall take over."""

from __future__ import annotations

from bot.dialogue.flow import Answers, Choice, Choices, Flow, Step, yes_or_no
from bot.words.languages import Sentence, SentenceOn, mark, tr, tr_if, trn

invite_menu = Sentence("Invite an athlete")
contact_menu = Sentence("Second contact: told when you don't answer an alert")
selfcoach_menu = Sentence("Be your own athlete")

too_many_codes = Sentence(
    "Those were many codes that don't work. Ask for a new invitation, and try in an hour."
)
no_longer_a_coach = Sentence(
    "Whoever runs this bot has ended your role as a coach here. You have no athletes in it, and "
    "invitations that you made no longer work."
)
no_contact_to_remove = Sentence("You have no second contact.")
already_coach = Sentence(
    "You are a coach here already, so the invitation is still unused. /roster shows your athletes."
)
not_your_own_contact = Sentence(
    "A second contact has to be somebody else, who is told when you don't answer. Forward "
    "the invitation to them."
)
already_self_coached = Sentence("You already coach yourself. /help shows what you can do.")
stay_button = Sentence("No, change nothing")
stayed = Sentence("Nothing was changed.")

yourself = Sentence("yourself")
unknown_invitation = Sentence(
    "I don't know that invitation. Please check for a typing mistake, or ask for a new one."
)
expired_invitation = Sentence(
    "That invitation has expired. Please ask whoever invited you for a new one."
)
used_invitation = Sentence(
    "That invitation has been used by somebody already; each works once. Please ask "
    "whoever invited you for a new one."
)
used_by_you = Sentence(
    "You have already used that invitation, so you are in. /help shows what you can do."
)
join_how = Sentence("Send the code after the command, such as: /join ABCD-EFGH-JKMN-PQRS")


def ways_in(link: str, code: str) -> str:
    """The end of a sentence that begins "To begin, ", as a request."""
    if link:
        return tr(
            "open this link:\n\n{link}\n\nor send the bot: /join {code}", link=link, code=code
        )
    return tr("send the bot: /join {code}", code=code)


def coach_invitation(link: str, code: str, days: int) -> str:
    """For the terminal of whoever runs the bot."""
    works = trn(
        "An invitation for a coach. It works once, within a day.",
        "An invitation for a coach. It works once, within {number} days.",
        days,
    )
    how = tr_if(
        link,
        "Open this link as the coach: {link}\nor send the bot: /join {code}",
        "As the coach, open the chat with your bot and send: /join {code}",
        link=link,
        code=code,
    )
    return f"{works}\n{how}"


#: For whom an invitation is, after "for".
INVITED = (mark("an athlete"), mark("a second contact"))


def for_you_to_forward(what: str, days: int) -> str:
    """`what`: one of `INVITED`, or words that are said already."""
    return trn(
        "Here is an invitation for {what}. It works once, within a day. "
        "Forward the next message to them.",
        "Here is an invitation for {what}. It works once, within {number} days. "
        "Forward the next message to them.",
        days,
        what=tr(what) if what in INVITED else what,
    )


def athlete_invitation(coach: str, link: str, code: str) -> str:
    return tr(
        "{coach} invites you to check in here each morning of your peak week. To begin, {ways_in}",
        coach=coach,
        ways_in=ways_in(link, code),
    )


def contact_invitation(coach: str, link: str, code: str) -> str:
    return tr(
        "{coach} asks you to be second contact: if an athlete may need help and {coach} does "
        "not answer, I tell you. To say yes, {ways_in}",
        coach=coach,
        ways_in=ways_in(link, code),
    )


def your_contact(name: str | None) -> str:
    return tr_if(
        name,
        "Your second contact is {name}. If somebody else takes the invitation below, they "
        "take {name}'s place.\n\nA second contact sees alerts, with your athlete's name "
        "and values. Choose somebody your athletes agree to, and give them your athletes' "
        "phone numbers.",
        "You have no second contact yet: if you don't answer an alert, nobody else is told.\n\n"
        "A second contact sees alerts, with your athlete's name and values. Choose somebody "
        "your athletes agree to, and give them your athletes' phone numbers.",
        name=name,
    )


remove_contact_button = SentenceOn("Remove {name}")
contact_removed = SentenceOn("{name} is no longer your second contact.")
no_longer_contact = SentenceOn(
    "You are no longer second contact for {coach}. You get no more alerts."
)
coach_welcome = SentenceOn(
    "Welcome, {name}. You are set up here as a coach.\n\nWhat to know first:\n- Brimline "
    "is not a medical device. It calculates from what your athletes report, inside limits "
    "you set. You decide; where health is concerned, a doctor or dietitian does.\n- It "
    "flags answers that look unsafe, but it can't see what nobody tells it. Keep talking "
    "with your athletes.\n- It never changes water or salt from your plan, and it never "
    "speaks about doses of any drug.\n- Alerts come here at any hour. Leave this chat's "
    "notifications on.\n\nWhat to do first:\n1. /contact: name somebody who is told when "
    "you don't answer an alert.\n2. /invite: make a link for an athlete. They answer some "
    "questions; you see the answers.\n3. /roster: set each athlete's event, plan and "
    "limits.\n4. /digest: the time of your daily digest, and quiet hours for what can "
    "wait.\n\nIf you are preparing yourself, /selfcoach makes you your own athlete."
)
contact_welcome = SentenceOn(
    "Thank you. You are now second contact for {coach}.\n\nIf one of {coach}'s athletes "
    "may need help and {coach} does not answer in time, the alert comes to you here and "
    "says what to do. Call the athlete, then tap Acknowledge so everybody knows somebody "
    "is on it. You need not know anything about diets.\n\nAsk {coach} for the athletes' "
    "phone numbers now, and leave this chat's notifications on. What you read in an alert "
    "is private."
)
contact_joined = SentenceOn("{name} is now your second contact.")
already_contact = SentenceOn("You are second contact for {coach} already.")
athlete_is_no_contact = SentenceOn(
    "You are one of {coach}'s athletes, and alerts are about other athletes' health, so "
    "you can't be {coach}'s second contact. Somebody else can still use the invitation."
)


def athlete_joined(name: str, shared: str = "") -> str:
    said = tr(
        "{name} has taken your invitation and is answering the first questions. I'll "
        "show you the answers when they are done.",
        name=name,
    )
    return f"{said} {told_apart(name, shared)}" if shared else said


def told_apart(name: str, shared: str) -> str:
    return tr(
        "You already coach somebody called {shared}, so I call this athlete {name}.",
        shared=shared,
        name=name,
    )


already_your_coach = SentenceOn("{coach} is already your coach. /help shows what you can do.")


def change_coach(old: str, new: str) -> str:
    """`old` and `new` are names, or "yourself"."""
    if old == yourself():
        return tr(
            "You coach yourself now. Shall {new} take over? Your answers, plan and limits go with "
            "you, and {new} sets plan and limits from then on.",
            new=new,
        )
    return tr_if(
        new == yourself(),
        "You are coached by {old} now. Do you want to coach yourself from now on? Your "
        "answers, plan and limits go with you, and {old} no longer sees them.",
        "You are coached by {old} now. Shall {new} take over? Your answers, plan and "
        "limits go with you, and {old} no longer sees them.",
        old=old,
        new=new,
    )


def change_button(new: str) -> str:
    return tr_if(new == yourself(), "Yes, I coach myself", "Yes, {new} takes over", new=new)


def settle_first(old: str) -> str:
    return tr_if(
        old == yourself(),
        "Something of yours is still open: an alert, or a change that waits for your "
        "approval as your own coach. Settle that first, then use this invitation again.",
        "Something between you and {old} is still open: an alert, or a change that waits for "
        "approval. Once it is settled, use this invitation again.",
        old=old,
    )


def coach_changed(new: str) -> str:
    if new == yourself():
        return tr("Done: you coach yourself from now on.")
    return tr("Done: {new} coaches you from now on.", new=new)


def took_over(name: str, shared: str = "") -> str:
    said = tr(
        "{name} is now your athlete, with event, plan and limits. See them in /roster.", name=name
    )
    return f"{said} {told_apart(name, shared)}" if shared else said


left_you = SentenceOn("{name} has chosen another coach and is no longer on your roster.")


def _choices(answers: Answers) -> Choices:
    return ((Choice(change_button(answers["_new"]), "yes"),), (Choice(stay_button(), "no"),))


#: Context: "_old" and "_new" as names, "_invite" the id of the invitation or None.
CHANGE_COACH = Flow(
    id="change-coach",
    steps=(
        Step(
            key="change",
            ask=lambda answers: change_coach(answers["_old"], answers["_new"]),
            read=yes_or_no,
            choices=_choices,
        ),
    ),
    can_cancel=False,
)
