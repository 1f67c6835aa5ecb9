"""Sentences for anybody."""

from __future__ import annotations


def only_text_here() -> str:
    return "I can read words, numbers and the buttons here, but not that."


def refused(sentence: str, question: str) -> str:
    return f"{sentence}\n\n{question}"


def not_your_button() -> str:
    return "That button is not yours."


def question_closed() -> str:
    return "That question is closed. /help lists what you can do now."


def already_answered() -> str:
    return "That one is answered already. Use the newest message."


def cancelled() -> str:
    return "Left as it was. Nothing was changed."


def noted() -> str:
    return "Noted."


def done_button() -> str:
    return "That's all"


def cancel_button() -> str:
    return "Leave it"


def stranger() -> str:
    return "Hello. This bot works by invitation. If you were given a code, send it here."


def private_chats_only() -> str:
    return (
        "I only talk in private chats, since what is said here is personal. Write to me directly."
    )


def nothing_open() -> str:
    return "I have no question open that this would answer. /help lists what you can do."


def not_for_you() -> str:
    return "I don't know that command. /help lists what you can do."


def gone_wrong() -> str:
    return (
        "Something went wrong on my side with your last message. What you told me before is kept. "
        "Please send it once more; if it happens again, tell your coach directly."
    )
