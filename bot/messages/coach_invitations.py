"""Sentences around invitations: made, taken, and not to be taken."""

from __future__ import annotations


def invite_menu() -> str:
    return "Invite an athlete"


def contact_menu() -> str:
    return "Who is told when you don't answer"


def selfcoach_menu() -> str:
    return "Be your own athlete"


def ways_in(link: str, code: str) -> str:
    """The end of a sentence that begins "To begin, "."""
    typed = f"send the bot: /join {code}"
    return f"open this link:\n\n{link}\n\nor {typed}" if link else typed


def coach_invitation(link: str, code: str, days: int) -> str:
    """For the terminal of whoever runs the bot."""
    how = (
        f"Open this link as the coach: {link}\nor send the bot: /join {code}"
        if link
        else f"As the coach, open the chat with your bot and send: /join {code}"
    )
    return f"An invitation for a coach. It works once, within {_days(days)}.\n{how}"


def for_you_to_forward(what: str, days: int) -> str:
    return (
        f"Here is an invitation for {what}. It works once, within {_days(days)}. "
        "Forward the next message to them."
    )


def athlete_invitation(coach: str, link: str, code: str) -> str:
    return (
        f"{coach} invites you to check in here each morning of your peak week. To begin, "
        f"{ways_in(link, code)}"
    )


def contact_invitation(coach: str, link: str, code: str) -> str:
    return (
        f"{coach} asks you to be their second contact: somebody who is told when one of their "
        f"athletes may need help and {coach} does not answer. To say yes, "
        f"{ways_in(link, code)}"
    )


def your_contact(name: str | None) -> str:
    now = (
        f"Your second contact is {name}. If somebody else takes the invitation below, they take "
        f"{name}'s place."
        if name
        else "You have no second contact yet: if you don't answer an alert, nobody else is told."
    )
    return (
        f"{now}\n\nA second contact sees alerts, with your athlete's name and figures. Choose "
        "somebody your athletes would agree to, and see to it that they have their phone numbers."
    )


def remove_contact_button(name: str) -> str:
    return f"Remove {name}"


def contact_removed(name: str) -> str:
    return f"{name} is no longer your second contact."


def no_contact_to_remove() -> str:
    return "You have no second contact."


def no_longer_contact(coach: str) -> str:
    return f"You are no longer second contact for {coach}. Alerts won't come to you any more."


def coach_welcome(name: str) -> str:
    return (
        f"Welcome, {name}. You are set up here as a coach.\n\n"
        "What to know first:\n"
        "- Brimline is no medical device. It does sums on what your athletes tell it, inside "
        "limits that you set. You decide; where health is concerned, a doctor or dietitian does.\n"
        "- It flags answers that look unsafe, but it can't see what nobody tells it. Keep talking "
        "with your athletes.\n"
        "- It holds water and salt to your plan, and it never speaks about doses of any drug.\n"
        "- Alerts come here at any hour. Leave this chat's notifications on.\n\n"
        "What to do first:\n"
        "1. /contact: name somebody who is told when you don't answer an alert.\n"
        "2. /invite: make a link for an athlete. They answer some questions; you see the answers.\n"
        "3. /roster: set each athlete's event, plan and limits.\n"
        "4. /digest: the hour of your daily digest, and quiet hours for what can wait.\n\n"
        "If you are preparing yourself, /selfcoach makes you your own athlete."
    )


def already_coach() -> str:
    return "You are a coach here already, so this invitation is not used up. /roster is your list."


def contact_welcome(coach: str) -> str:
    return (
        f"Thank you. You are now second contact for {coach}.\n\n"
        f"When one of {coach}'s athletes may need help and {coach} does not answer in time, the "
        "alert comes to you here, with what to do. Call them, then press Acknowledge so that "
        "everybody knows somebody is on it. You need not know anything about diets.\n\n"
        f"Ask {coach} for the athletes' phone numbers now, and leave this chat's notifications on. "
        "What you read in an alert is private."
    )


def contact_joined(name: str) -> str:
    return f"{name} is now your second contact."


def already_contact(coach: str) -> str:
    return f"You are second contact for {coach} already."


def not_your_own_contact() -> str:
    return (
        "A second contact has to be somebody else: they are told when you don't answer. "
        "Forward the invitation to them."
    )


def athlete_is_no_contact(coach: str) -> str:
    return (
        f"You are one of {coach}'s athletes, and alerts tell of other athletes' health, so you "
        f"can't be {coach}'s second contact. The invitation is still good for somebody else."
    )


def athlete_joined(name: str) -> str:
    return (
        f"{name} has taken your invitation and is answering the first questions. "
        "I'll show you the answers when they are done."
    )


def already_your_coach(coach: str) -> str:
    return f"{coach} is your coach already, so there is nothing to do. /help lists what you can do."


def already_self_coached() -> str:
    return "You are your own athlete already. /help lists what you can do."


def change_coach(old: str, new: str) -> str:
    """`old` and `new` are names, or "yourself"."""
    return (
        f"You are coached by {old} now. Shall {new} take over? Your answers, plan and limits go "
        f"with you, and {old} no longer sees them."
    )


def change_button(new: str) -> str:
    return f"Yes, {new} takes over"


def stay_button() -> str:
    return "No, leave it as it is"


def stayed() -> str:
    return "Nothing was changed."


def settle_first(old: str) -> str:
    return (
        f"Something between you and {old} is still open: an alert, or a figure that waits for "
        "their word. Once it is settled, use this invitation again. It stays good until it expires."
    )


def coach_changed(new: str) -> str:
    return f"Done: {new} coaches you from now on."


def took_over(name: str) -> str:
    return (
        f"{name} is now your athlete. Event, plan and limits came along; look at them in /roster."
    )


def left_you(name: str) -> str:
    return f"{name} has chosen another coach and is no longer on your roster."


def yourself() -> str:
    return "yourself"


def unknown_invitation() -> str:
    return (
        "I don't know that invitation. Please check it for a slip, or ask whoever invited you for "
        "a new one."
    )


def expired_invitation() -> str:
    return "That invitation has expired. Please ask whoever invited you for a new one."


def used_invitation() -> str:
    return (
        "That invitation has been used by somebody already; each works once. Please ask whoever "
        "invited you for a new one."
    )


def used_by_you() -> str:
    return "You have used that invitation already, so you are in. /help lists what you can do."


def join_how() -> str:
    return "Send the code after the command, such as: /join ABCD-EFGH-JKMN-PQRS"


def _days(days: int) -> str:
    return "a day" if days == 1 else f"{days} days"
