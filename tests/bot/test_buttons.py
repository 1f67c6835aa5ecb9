"""A button's data: declared once, written and read by the declaration, and by nothing else."""

from __future__ import annotations

import ast
import re
from collections.abc import Callable
from datetime import UTC, date, datetime
from enum import Enum
from importlib import import_module
from pathlib import Path
from typing import Any, NamedTuple, get_args, get_type_hints

import pytest

import bot
from bot.coach.buttons import SIGN as SIGN_ON_CARD
from bot.core.chat.buttons import (
    LARGEST,
    CallbackData,
    CardRoute,
    Rest,
    Route,
    UnreadableError,
    beginnings,
    card_of,
    on_card,
)
from bot.core.chat.cards import PLAN, OfEvent, OnProposal, Say
from bot.dialogue.asking import ANSWER
from bot.dispatcher import TAPS
from bot.event.buttons import LATE, Late
from bot.features import ON_CARD
from tests.support.weeks import Team

HOUSE = Path(bot.__file__).parent
CHAT = HOUSE / "core" / "chat"
DECLARE = [CHAT / "cards.py", *sorted(set(HOUSE.rglob("buttons.py")) - {CHAT / "buttons.py"})]

#: Data of buttons as they stood in chats before there were declarations, one of each form.
TEXT = """
alert:ack:1 c:ack:2:1 c:answers:2 c:asks-look:2 c:asks-weigh:2 c:asks:2 c:bridge:2:1 c:calendar:2
c:card:2 c:page:2:plan c:food-meal:2
c:food-meal:2:0700 c:day:2:3:1 c:lim:2:step_g:1 c:asks:2:1
c:closer:2 c:cmp:2 c:cmp:2:2027-05-01 c:cmp:2:2027-05-01:2027-05-06 c:day:2:3
c:debrief-note:2 c:debrief:2 c:doctor-no:2 c:doctor-yes:2 c:doctor:2 c:draft:2 c:draft:2:1 c:end-no:2
c:end-yes:2 c:end:2 c:event:2 c:eye-back:2:2027-05-06 c:eye-look:2:2027-05-06:on_course
c:eye-look:2:2027-05-06:flat c:eye-sharp:2:2027-05-06:4 c:eye:2 c:eye:2:2027-05-06 c:files:2
c:files:2:xlsx c:food-fix:2:1 c:food-suggest:2 c:food:2 c:forecast-use:2:shows c:forecast:2
c:freeze:2 c:hand:2 c:hand:2:1 c:handout:2 c:history-day:2 c:history:2 c:history:2:2027-05-06
c:hold-end:2 c:hold:2 c:kcal:2:3 c:learnt-no:2 c:learnt:2 c:lift-no:2 c:lift-yes:2 c:lift:2
c:lim:2:step_g c:limits-use:2 c:limits-use:2:1 c:limits:2 c:limits:2:1 c:measure:2 c:message:2
c:message:2:here c:num:2:3:carb_g c:past-back-no:2:1 c:past-back-yes:2:1 c:past-back:2:1 c:past:2
c:past:2:csv c:photos:2 c:photos:2:2027-05-06 c:picture:2 c:placing:2 c:plan:2 c:plan:2:1 c:review:2
c:roster:0 c:roster:0: c:roster:1:load c:season-off:2:1 c:season-out:2:1 c:season:2 c:second-ask:2
c:second-end:2:1 c:second:2 c:set:2:3:carb_g:500 c:setup:2 c:sheet:2 c:sheet:2:xlsx
c:sheet:2::5 c:sheet:2:csv:5 c:tpl-save:2:5 c:tpl:2::5 c:tpl:2:1:5
c:sign:2:approve:1 c:sign:2:keep:1 c:sign:2:other:1 c:timeline:2 c:tomorrow:2 c:tpl-save:2 c:tpl:2
c:tpl:2:1 c:undo-no:2 c:undo-yes:2:1 c:undo:2 c:weeks:2 c:weeks:2:carbs:1.2 c:weeks:2:p3:1.2
c:whatif-less:2:1:steady c:whatif-limit:2:1:step_g c:whatif-use:2:1:proposes c:whatif:2 c:whatif:2:1
c:why:2 cal:get:2 contact:remove desk:digest desk:off desk:quiet desk:quiet-off desk:zone f:add
f:ate:07:00 f:day f:else f:food:1 f:label f:list f:lock f:lock:1 f:mark:1:well f:missed:19:00 f:off:1
f:shop f:swap f:swap:1 f:swap:1:2 f:swap:1:any f:take:rice f:times fl:all:csv fl:own:xlsx gone:all
gone:all-yes:3f2a9c gone:no gone:yes k:change:1 k:off:1 k:one:1:weight_kg
lang:auto lang:de leave:no leave:yes look:1:- look:1:flat
m:approve:1 m:keep:1 m:several:flat:0 m:several:flat:1 more:ask nb:xlsx ph:back:1 ph:cmp
ph:cmp:2027-05-01 ph:cmp:2027-05-01:2027-05-06 ph:drop:1 ph:pick:1 ph:pose:1:front ph:see:2027-05-06
ph:wipe ph:wipe-no ph:wipe-yes q:5:weight_kg:61.2 q:5:prompt_time:06:30 rd:again:2 rd:ask:2 rd:me
rd:mine:2 rd:ok:1 rd:on:1 reply:1 set:prompt_time sign:approve:1 sign:keep:1 sign:other:1 st:day:2
st:late:2:-30 st:late:2:30 st:off-yes:2 st:off:2 st:set:2 st:told:2:0:1500-1930 st:top:2:9:0
st:top:2:9:25 st:top:2:9:12.5 su:one:2 su:sheet:xlsx tpl:del-yes:1 tpl:del:1 tpl:keep:1 wks
wks:carbs:1.2
"""


OLD = TEXT.split()


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    return team_at(datetime(2027, 5, 6, 6, 0, tzinfo=UTC))


def _declared() -> dict[str, Route[..., Any] | CardRoute[..., Any]]:
    found = {}
    for path in DECLARE:
        module = import_module(".".join(path.relative_to(HOUSE.parent).with_suffix("").parts))
        for name, one in vars(module).items():
            if isinstance(one, Route | CardRoute) and f"\n{name} = " in path.read_text():
                found[f"{module.__name__}.{name}"] = one
    return found


def _read(data: str) -> Any:
    if ANSWER.begins(data):
        return ANSWER.read(data)
    tap = next(TAPS[one] for one in beginnings(data) if one in TAPS)
    if tap.prefix != "c":
        return tap.read(data)
    opened = on_card(data)
    return ON_CARD[opened.view].read(opened.parts)


def _sample(kind: object) -> object:
    wanted = next((one for one in get_args(kind) if one is not type(None)), kind)
    if isinstance(wanted, type) and issubclass(wanted, Enum):
        return next(reversed(list(wanted)))
    samples: dict[object, object] = {
        int: -7, bool: True, float: 12.5, date: date(2027, 5, 6), str: "rice", Rest: Rest("06:30")
    }  # fmt: skip
    return samples[wanted]


def test_a_button_that_stands_in_a_chat_is_still_read() -> None:
    assert [data for data in OLD if _read(data) is None] == []


def test_every_view_and_button_has_an_old_form_to_be_held_against() -> None:
    bound = {*(name for name in TAPS if name != "c"), *(f"c:{view}" for view in ON_CARD)}
    assert {next(b for b in beginnings(d) if b in bound | {"q"}) for d in OLD} == bound | {"q"}


def test_every_declared_button_is_bound_and_every_bound_one_declared() -> None:
    declared = [*_declared().values()]
    prefixes = [one.prefix for one in declared if isinstance(one, Route)]
    views = [one.view for one in declared if isinstance(one, CardRoute)]
    assert sorted(prefixes) == sorted(name for name in TAPS if name != "c")
    assert sorted(views) == sorted(ON_CARD)


def test_what_a_declaration_writes_it_reads_again() -> None:
    for name, route in _declared().items():
        kinds = get_type_hints(route._fields)
        given = [_sample(kind) for kind in kinds.values()]
        data = route(*([2, *given] if isinstance(route, CardRoute) else given))
        assert list(_read(data)) == given, name


def test_the_written_form_is_the_one_that_stands_in_chats() -> None:
    assert PLAN(2) == "c:plan:2"
    assert PLAN(2, 7) == "c:plan:2:7"
    assert SIGN_ON_CARD(2, Say.APPROVE, 5) == "c:sign:2:approve:5"
    assert LATE(2, -30) == "st:late:2:-30"
    assert ANSWER(5, "prompt_time", Rest("06:30")) == "q:5:prompt_time:06:30"


@pytest.mark.parametrize(
    ("data", "why"),
    [
        ("sign:approve", "a field is missing"),
        ("sign:burn:1", "no such word in the closed set"),
        ("sign:approve:one", "not a number"),
        (f"sign:approve:{LARGEST + 1}", "a number that no database holds"),
        ("sign:approve:1e3", "not a whole number"),
        ("sign:approve:²", "not a digit of a number"),
        ("c:eye-look:2:2027-13-06:flat", "not a day"),
        ("c:card:x", "no athlete"),
        ("c:card", "no athlete at all"),
        ("q:5:weight_kg", "no value"),
    ],
)
def test_what_was_forged_is_refused(data: str, why: str) -> None:
    with pytest.raises(UnreadableError):
        _read(data)


def test_what_may_be_missing_is_taken_as_missing_where_it_cannot_be_read() -> None:
    assert PLAN.of(["x"]) == PLAN.of([""]) == PLAN.of([]) == OfEvent()


def test_what_stands_behind_the_last_field_is_left_alone() -> None:
    assert PLAN.of(["7", "x"]) == OfEvent(7)
    assert LATE.read("st:late:2:30:more") == Late(2, 30)


def test_data_beyond_64_bytes_are_an_error_where_they_are_written() -> None:
    with pytest.raises(ValueError, match="64 bytes"):
        ANSWER(5, "weight_kg", Rest("x" * 60))
    assert not ANSWER.fits(5, "weight_kg", Rest("ü" * 30))
    assert ANSWER.fits(5, "weight_kg", Rest("x" * 40))


def test_other_buttons_are_none_of_a_routes() -> None:
    assert SIGN_ON_CARD.of(["keep", "3"]) == OnProposal(Say.KEEP, 3)
    assert LATE.found_in("st:day:2") is None
    assert card_of("c:card:2:x") == 2
    assert card_of("sign:approve:1") is None


def test_a_forged_button_is_answered_kindly_and_changes_nothing(team: Team) -> None:
    team.coach.presses("c:second-end:2:nobody")
    assert "newest message" in team.coach.answers_to_taps()[-1]
    team.coach.presses(f"sign:approve:{10**12}")
    assert "can't approve" in team.coach.answers_to_taps()[-1]


# Written and taken apart by hand


def _python() -> list[Path]:
    return [path for path in HOUSE.rglob("*.py") if "versions" not in path.parts]


def _text(node: ast.expr) -> str:
    """What a string begins with; a field of it as "{}"."""
    if isinstance(node, ast.Constant):
        return node.value if isinstance(node.value, str) else ""
    if isinstance(node, ast.JoinedStr):
        return "".join(_text(v) if isinstance(v, ast.Constant) else "{}" for v in node.values)
    return ""


def by_hand(source: str) -> list[int]:
    """The lines where a button's data is made of a text, or taken apart as one."""
    if not re.search(r"Button\(|CallbackData\(|data\.|incoming\.text", source):
        return []  # to take it apart would be in vain
    found = []
    for node in ast.walk(ast.parse(source)):
        if not isinstance(node, ast.Call):
            continue
        called = node.func.id if isinstance(node.func, ast.Name) else ""
        data = [*node.args[1:2], *(k.value for k in node.keywords if k.arg == "data")]
        if called == "CallbackData" or (called == "Button" and any(map(_text, data))):
            found.append(node.lineno)
        method = node.func.attr if isinstance(node.func, ast.Attribute) else ""
        of = ast.unparse(node.func.value) if isinstance(node.func, ast.Attribute) else ""
        apart = {"split", "rsplit", "partition", "rpartition", "removeprefix", "startswith"}
        if method in apart and (of in {"data", "callback_data"} or _is_data(of, node)):
            found.append(node.lineno)
    return found


def _is_data(of: str, node: ast.Call) -> bool:
    return of.endswith("incoming.text") and any(":" in _text(one) for one in node.args)


class Slip(NamedTuple):
    source: str
    is_one: bool


@pytest.mark.parametrize(
    "slip",
    [
        Slip('Button(label, f"c:plan:{athlete}")', True),
        Slip('Button(label, "f:list")', True),
        Slip('Button(label, data="f:list")', True),
        Slip('CallbackData("f:list")', True),
        Slip('turn.incoming.text.split(":")', True),
        Slip('prefix, _, rest = data.partition(":")', True),
        Slip("Button(label, PLAN(athlete))", False),
        Slip("Button(label, url=address)", False),
        Slip('turn.incoming.text[1:].partition(" ")', False),
    ],
)
def test_the_look_at_the_sources_finds_what_it_looks_for(slip: Slip) -> None:
    assert bool(by_hand(slip.source)) is slip.is_one


def test_no_buttons_data_is_written_or_taken_apart_by_hand() -> None:
    kernel = CHAT / "buttons.py"
    found = {
        f"{path.relative_to(HOUSE)}:{line}"
        for path in _python()
        if path != kernel
        for line in by_hand(path.read_text())
    }
    assert not found
    assert isinstance(PLAN(2), str)
    assert CallbackData is not str


def test_a_number_beyond_any_row_is_nobodys_button(team_at: Callable[[datetime], Team]) -> None:
    """Some are refused where they are read, others by whoever looks for the row."""
    team = team_at(datetime(2027, 5, 7, 6, 0, tzinfo=UTC))
    beyond = 10**22 + 1
    for someone in (team.coach, team.athlete):
        for prefix in TAPS:
            for rest in (beyond, f"ack:{beyond}", f"{beyond}:{beyond}"):
                someone.presses(f"{prefix}:{rest}")
        for name in ON_CARD:
            for rest in (beyond, f"{team.athlete_id}:{beyond}"):
                someone.presses(f"c:{name}:{rest}")
        someone.presses(f"q:{beyond}:use:yes")
    assert len(team.athlete.answers_to_taps()) > len(TAPS)
