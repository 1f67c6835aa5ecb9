"""Proposals of one kind approved together: shown first, and one tap approves those still open."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence

from sqlmodel import Session, col, select

from bot.coach.buttons import TOGETHER, Alike
from bot.coach.roster import words_morning as words
from bot.coach.roster.flow_several import ALL, SEVERAL
from bot.coach.roster.morning import Line, look_closer, numbers_line
from bot.coach.roster.standing import Decided, RosterRow, load_roster_rows
from bot.coach.roster.words import short
from bot.core.chat.outbox import Button, Buttons
from bot.core.turn import Act, Turn
from bot.decision.signoff import taps as signoff_taps
from bot.dialogue import asking
from bot.people import coach_settings
from bot.people.people import name_of, own_athlete
from bot.people.rights import athletes_seen_by
from bot.people.telling import answer, say_to
from bot.store.tables.people import OpenQuestion, Person
from bot.store.tables.week import DecisionRow
from bot.words import figures
from bot.words.names import rule_name, word

AT_LEAST, AT_MOST = 2, 12  # our own choices; a dozen lines still fit a message and an eye

OfAKind = dict[tuple[str, bool], list[RosterRow]]


def buttons(session: Session, everybody: Sequence[Line]) -> Buttons:
    """One for each kind of proposal of which there are several: "Approve 3 raises at once"."""
    found = _alike(session, [seen for _, seen in everybody])
    return [
        [
            Button(
                words.several_button(min(len(seen), AT_MOST), rule_name(rule), raised=raised),
                TOGETHER(rule, raised),
            )
        ]
        for (rule, raised), seen in found.items()
        if len(seen) >= AT_LEAST
    ]


def show(turn: Act, pressed: Alike) -> None:
    """Who, from what to what, and why; then one question for all."""
    everybody = load_roster_rows(turn, athletes_seen_by(turn.session, turn.person))
    found = _alike(turn.session, everybody).get((pressed.rule, pressed.up), [])[:AT_MOST]
    if len(found) < AT_LEAST:
        answer(turn, words.nothing_alike())
        return
    answer(turn)
    closer = look_closer(turn.session, found)
    lines = [
        words.several_line(
            seen.person.first_name, seen.days_out, planned_g, carb_g, decided.sets_date,
            numbers_line(seen, closer[seen.profile.person_id]),
        )
        for seen in found
        if (decided := seen.waiting) is not None
        and (planned_g := decided.planned_carb_g) is not None
        and (carb_g := decided.carb_g) is not None
    ]  # fmt: skip
    waiting = found[0].waiting  # the first to lapse comes first
    assert waiting is not None
    assert waiting.sign_off_due_at is not None
    until = coach_settings.clock_for(
        turn.session, turn.person, found[0].profile, waiting.sign_off_due_at
    )
    asking.open_question(
        turn, turn.person, SEVERAL, subject_id=turn.person.id,
        answers={
            "_ids": [seen.waiting.id for seen in found if seen.waiting is not None],
            "_listed": words.several(lines, rule_name(pressed.rule), until, _kept_apart(everybody)),
        },
    )  # fmt: skip


def given(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    """The one tap: what is still open is approved; what changed meanwhile is left out, and said."""
    if question.answers["sure"] != ALL:
        say_to(turn, coach, words.none_approved())
        return
    done, left_out = [], []
    for number in question.answers["_ids"]:
        row = turn.session.get(DecisionRow, number)
        profile = own_athlete(turn.session, coach, row.athlete_id) if row is not None else None
        if row is None or profile is None or row.carb_g is None:
            left_out.append(words.not_yours_any_more())
            continue
        name = short(name_of(turn.session, profile.person_id))
        (seen,) = load_roster_rows(turn, [profile])
        why = words.alert_since() if seen.alert is not None else ""
        why = why or signoff_taps.approve_if_open(turn, coach, profile, row)
        if why:
            left_out.append(words.left_out(name, why))
        else:
            done.append(f"{name} {figures.grams(row.carb_g)}")
    say_to(turn, coach, words.approved(done, left_out))


def _alike(session: Session, everybody: Sequence[RosterRow]) -> OfAKind:
    """Open proposals by the rule that made them and by direction, the earliest deadline first.

    Who has an open alert or is frozen is looked at by themselves.
    """
    open_ = {
        seen.waiting.id: seen
        for seen in everybody
        if seen.waiting is not None and seen.alert is None and seen.profile.frozen_at is None
    }
    found: OfAKind = defaultdict(list)
    rules = session.exec(
        select(DecisionRow.id, col(DecisionRow.decision)["rule"].as_string()).where(
            col(DecisionRow.id).in_(open_)
        )
    )
    rule_of = {number: str(rule) for number, rule in rules}
    for number, seen in sorted(open_.items(), key=lambda item: (_due(item[1].waiting), item[0])):
        decided = seen.waiting
        assert decided is not None
        if decided.carb_g is not None and decided.planned_carb_g is not None:
            raised = decided.carb_g > decided.planned_carb_g
            found[rule_of[number], raised].append(seen)
    return found


def _kept_apart(everybody: Sequence[RosterRow]) -> list[str]:
    """Who has a proposal too, but is to be looked at first, and why."""
    return [
        words.with_word(
            short(seen.person.first_name),
            words.has_open_alert(word(seen.alert.level))
            if seen.alert is not None
            else words.is_frozen(),
        )
        for seen in everybody
        if seen.waiting is not None
        and (seen.alert is not None or seen.profile.frozen_at is not None)
    ]


def _due(decided: Decided | None) -> float:
    due = decided.sign_off_due_at if decided is not None else None
    return due.timestamp() if due is not None else 0.0
