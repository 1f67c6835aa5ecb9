"""Raw updates, and what the bot takes them for. Shapes after core.telegram.org/bots/api#update."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.core.turn import Kind
from bot.telegram.reading import Unreadable, chat_id_of, read, update_id_of
from bot.words.common import Media
from tests.support.any_text import any_text

NOW = datetime(2027, 6, 1, 12, tzinfo=UTC)
SENT = 1_780_000_000
CHAT = {"id": 42, "type": "private", "first_name": "Ines"}
INES = {"id": 42, "is_bot": False, "first_name": "Ines", "language_code": "pt-br"}
BOT = {"id": 7, "is_bot": True, "first_name": "Brimline"}


def _message(**fields: Any) -> dict[str, Any]:
    return {"message_id": 9, "date": SENT, "chat": CHAT, "from": INES, **fields}


def _update(**fields: Any) -> dict[str, Any]:
    return {"update_id": 1, **fields}


def test_a_text_is_read_with_who_sent_it_and_when() -> None:
    found = read(_update(message=_message(text="61.2 7 3.5")), NOW)

    assert found is not None
    assert (found.kind, found.text, found.message_id) == (Kind.TEXT, "61.2 7 3.5", 9)
    assert (found.chat_id, found.user_id, found.private) == (42, 42, True)
    assert (found.first_name, found.language) == ("Ines", "pt-br")
    assert found.sent_at == datetime.fromtimestamp(SENT, UTC)


def test_a_changed_message_is_an_edit_of_the_same_message_at_the_time_of_the_change() -> None:
    found = read(_update(edited_message=_message(text="61.4", edit_date=SENT + 60)), NOW)

    assert found is not None
    assert (found.kind, found.text, found.message_id) == (Kind.EDITED, "61.4", 9)
    assert found.sent_at == datetime.fromtimestamp(SENT + 60, UTC)


@pytest.mark.parametrize("date", [SENT, 0])
def test_a_tap_carries_its_data_also_under_a_message_too_old_to_be_seen(date: int) -> None:
    tap = {
        "id": "t1",
        "from": INES,
        "chat_instance": "1",
        "data": "f:12:7",
        "message": {"message_id": 8, "date": date, "chat": CHAT},
    }
    found = read(_update(callback_query=tap), NOW)

    assert found is not None
    assert (found.kind, found.text, found.tap_id) == (Kind.TAP, "f:12:7", "t1")
    assert (found.message_id, found.chat_id, found.sent_at) == (8, 42, NOW)


@pytest.mark.parametrize(
    ("fields", "text"),
    [
        (
            {
                "sticker": {
                    "file_id": "a",
                    "file_unique_id": "b",
                    "type": "regular",
                    "width": 1,
                    "height": 1,
                    "is_animated": False,
                    "is_video": False,
                }
            },
            "",
        ),
        ({"location": {"latitude": 1.0, "longitude": 2.0}}, ""),
        ({"something_new": {"a": 1}}, ""),
    ],
)
def test_anything_but_text_is_other_and_keeps_the_words_under_it(
    fields: dict[str, Any], text: str
) -> None:
    found = read(_update(message=_message(**fields)), NOW)

    assert found is not None
    assert (found.kind, found.text) == (Kind.OTHER, text)


def test_a_picture_is_taken_at_its_largest_and_keeps_the_words_under_it() -> None:
    sizes = [
        {"file_id": name, "file_unique_id": name, "width": side, "height": side, "file_size": side}
        for name, side in (("small", 90), ("large", 1280), ("middle", 320))
    ]
    found = read(_update(message=_message(photo=sizes, caption="so dizzy")), NOW)

    assert found is not None and found.file is not None
    assert (found.kind, found.text) == (Kind.FILE, "so dizzy")
    assert (found.file.file_id, found.file.size, found.file.as_photo) == ("large", 1280, True)


def test_a_document_comes_with_its_name_and_size() -> None:
    document = {
        "file_id": "a", "file_unique_id": "b", "file_name": "pl\x00an.xlsx", "file_size": 6000,
        "mime_type": "application/zip",
    }  # fmt: skip
    found = read(_update(message=_message(document=document)), NOW)

    assert found is not None and found.file is not None
    assert (found.kind, found.file.name, found.file.size) == (Kind.FILE, "plan.xlsx", 6000)
    assert not found.file.as_photo


@pytest.mark.parametrize(
    ("member", "kind"),
    [
        ({"status": "kicked", "user": BOT, "until_date": 0}, Kind.BLOCKED),
        ({"status": "member", "user": BOT}, Kind.UNBLOCKED),
    ],
)
def test_stopping_and_starting_the_bot_are_noticed(member: dict[str, Any], kind: Kind) -> None:
    change = {
        "chat": CHAT,
        "from": INES,
        "date": SENT,
        "old_chat_member": {"status": "member", "user": BOT},
        "new_chat_member": member,
    }
    found = read(_update(my_chat_member=change), NOW)

    assert found is not None
    assert found.kind is kind


def test_a_group_that_became_a_supergroup_names_its_new_id() -> None:
    group = {"id": -5, "type": "group", "title": "Team"}
    moved = _message(chat=group, migrate_to_chat_id=-100_5)
    found = read(_update(message=moved), NOW)

    assert found is not None
    assert (found.kind, found.text, found.private) == (Kind.MOVED, "-1005", False)


@pytest.mark.parametrize(
    "update",
    [
        _update(),
        _update(message=_message(new_chat_title="Team", chat={**CHAT, "type": "group"})),
        _update(message=_message(text="hi", **{"from": BOT})),
        _update(channel_post=_message(text="news")),
        _update(something_new={"a": 1}),
    ],
)
def test_what_the_bot_has_no_business_with_is_nothing(update: dict[str, Any]) -> None:
    assert read(update, NOW) is None


@pytest.mark.parametrize(
    "update",
    [
        _update(message={"message_id": 1}),
        _update(message="text"),
        _update(message=_message(text="a", chat=None)),
        _update(callback_query={"id": 1}),
        {},
    ],
)
def test_a_misshapen_update_is_unreadable(update: dict[str, Any]) -> None:
    with pytest.raises(Unreadable):
        read(update, NOW)


def test_characters_that_a_database_refuses_are_taken_out() -> None:
    found = read(_update(message=_message(text="fl\x00at \ud83d 😀")), NOW)

    assert found is not None
    assert found.text == "flat \ufffd 😀"
    found.text.encode()


JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | any_text(5),
    lambda inner: (
        st.lists(inner, max_size=3)
        | st.dictionaries(
            st.sampled_from(["message", "chat", "id", "from", "callback_query", "date", "text"]),
            inner,
            max_size=4,
        )
    ),
    max_leaves=12,
)


@settings(max_examples=200)
@given(body=st.dictionaries(st.sampled_from(["message", "callback_query", "update_id"]), JSON))
def test_no_update_whatever_stops_the_reader(body: dict[str, Any]) -> None:
    update_id_of(body)
    chat_id_of(body)
    try:
        read(body, NOW)
    except Unreadable:
        return


@pytest.mark.parametrize("raw", [None, [], "x", {}, {"update_id": "1"}, {"update_id": True}])
def test_an_update_without_an_id_has_none(raw: object) -> None:
    assert update_id_of(raw) is None


def test_a_reply_names_the_message_that_it_answers_and_the_part_that_was_picked_out() -> None:
    answered = {
        "message_id": 5,
        "date": SENT - 60,
        "chat": CHAT,
        "from": BOT,
        "text": "Good morning",
    }
    quote = {"text": "Good", "position": 0}
    found = read(_update(message=_message(text="yes", reply_to_message=answered, quote=quote)), NOW)

    assert found is not None
    assert (found.reply_to, found.quoted) == (5, "Good")


@pytest.mark.parametrize(
    ("fields", "media"),
    [
        ({"voice": {"file_id": "v", "file_unique_id": "v", "duration": 3}}, Media.VOICE),
        (
            {"video_note": {"file_id": "n", "file_unique_id": "n", "duration": 3, "length": 9}},
            Media.VIDEO,
        ),
        ({"location": {"latitude": 1.0, "longitude": 2.0}}, Media.PLACE),
        ({"contact": {"phone_number": "1", "first_name": "Ana"}}, Media.CONTACT),
        ({"dice": {"emoji": "🎲", "value": 3}}, Media.ELSE),
    ],
)
def test_what_has_no_text_is_called_what_it_is(fields: dict[str, Any], media: Media) -> None:
    found = read(_update(message=_message(**fields)), NOW)

    assert found is not None
    assert (found.kind, found.media) == (Kind.OTHER, media)
