"""The coach's athletes in one message, who needs the coach first; like proposals approved together."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from sqlmodel import Session, col, select

from bot.coach.buttons import TOGETHER, Alike
from bot.coach.roster import flow_morning, morning, words
from bot.coach.roster.flow_morning import ALL, SEVERAL
from bot.coach.roster.morning import Line, in_rows, look_closer, needs_coach, numbers_line, opening
from bot.coach.roster.rows import Decided, RosterRow, load_roster_rows
from bot.coach.roster.standing import standing
from bot.coach.roster.words import short
from bot.core.chat.cards import ROSTER, OnProposal
from bot.core.chat.cards import Page as Paged
from bot.core.chat.outbox import TEXT_LIMIT, Button, Buttons, Shown, Topic, edit, units
from bot.core.timing.agenda import Subject
from bot.core.turn import Act, Turn
from bot.decision.signoff import taps as signoff_taps
from bot.decision.signoff.taps import sign_tapped
from bot.dialogue import asking
from bot.people import coach_settings
from bot.people.coach_settings import ShownAt
from bot.people.people import athletes_seen_by, get_person, name_of, own_athlete
from bot.people.telling import answer, rewrite, say_to
from bot.store.base import id_of
from bot.store.tables.people import OpenQuestion, Person
from bot.store.tables.traffic import AgendaRow, TopicKind
from bot.store.tables.week import DecisionRow
from bot.words import common, figures
from bot.words.names import rule_name, word

ON_A_PAGE = 20
LONGEST_PAGE = TEXT_LIMIT - 200  # UTF-16 units, as Telegram counts; the rest is for head and foot


FILTERS: dict[str, Callable[[Line], bool]] = {
    "": needs_coach,
    "all": lambda _line: True,
    "load": lambda line: line[1].days_out in line[1].load_days,
    "week": lambda line: line[1].in_week,
}


@dataclass(frozen=True, slots=True)
class Page:
    """What is shown: `number` is the page that there is, whichever was asked for."""

    text: str
    buttons: Buttons
    number: int


def show_roster(turn: Act) -> None:
    """/roster"""
    page = _page(turn, turn.person, 0, "")
    row = say_to(turn, turn.person, page.text, buttons=page.buttons)
    where = ShownAt(outbox_id=id_of(row))
    coach_settings.roster_shown(turn.session, turn.person, where, page=0, shown="")


def turn_page(turn: Act, pressed: Paged) -> None:
    """The page that is shown already is refreshed."""
    coach, shown = turn.person, pressed.shown if pressed.shown in FILTERS else ""
    answer(turn, words.up_to_date())
    page = _page(turn, coach, max(pressed.page or 0, 0), shown or "")
    rewrite(turn, page.text, page.buttons)
    where = ShownAt(message_id=turn.incoming.message_id)
    coach_settings.roster_shown(turn.session, coach, where, page=page.number, shown=shown or "")


def answered_here(turn: Act, pressed: OnProposal) -> None:
    """A proposal answered on the glance, which then follows."""
    sign_tapped(turn, pressed)
    row = turn.session.get(DecisionRow, pressed.decision)
    if row is None or own_athlete(turn.session, turn.person, row.athlete_id) is None:
        return
    kept = coach_settings.coach_settings_of(turn.session, turn.person)
    page = _page(turn, turn.person, 0 if kept.roster_filter else kept.roster_page, "")
    rewrite(turn, page.text, page.buttons)
    where = ShownAt(message_id=turn.incoming.message_id)
    coach_settings.roster_shown(turn.session, turn.person, where, page=page.number, shown="")


def refresh(turn: Turn, duty: AgendaRow) -> None:
    """Something has happened: the roster that the coach has open is brought up to date."""
    coach = get_person(turn.session, Subject.COACH.of(duty))
    found = coach_settings.roster_message(turn.session, coach)
    if found is None or not coach.reachable:
        return
    kept = coach_settings.coach_settings_of(turn.session, coach)
    page = _page(turn, coach, kept.roster_page, kept.roster_filter)
    topic = Topic(TopicKind.ROSTER, id_of(coach))
    message = Shown(coach.chat_id, found.message_id, found.outbox_id, topic)
    edit(turn, message, text=page.text, buttons=page.buttons)


def _page(turn: Turn, coach: Person, number: int, shown: str) -> Page:
    profiles = athletes_seen_by(turn.session, coach)
    if not profiles:
        return Page(common.nobody_yet(), (), 0)
    here = coach_settings.zone_of_coach(turn.session, coach)
    everybody = [
        (standing(seen, turn.context, here), seen) for seen in load_roster_rows(turn, profiles)
    ]
    everybody.sort(key=lambda line: (line[0].rank, line[0].order))
    foot = words.as_of(figures.clock_with_zone(turn.now, here))
    filters = _filter_buttons(everybody, shown)
    if not shown:
        text, buttons, number, pages = morning.page(turn.session, everybody, number, here, foot)
        together = keys_for_several(turn.session, everybody)
        below = [*together, *buttons, *filters, _turning(number, pages, shown)]
        return Page(text, below, number)
    chosen = [line for line in everybody if FILTERS[shown](line)]
    split = _split(chosen)
    number = min(number, len(split) - 1)
    on_page = split[number]
    texts = [morning.in_full(*line) for line in on_page] or [words.nobody_here(shown)]
    head = words.head(shown, len(chosen), len(everybody), number, len(split))
    buttons = [
        *filters,
        *in_rows([opening(seen) for _, seen in on_page]),
        _turning(number, len(split), shown),
    ]
    return Page("\n\n".join([head, *texts, foot]), buttons, number)


def _split(lines: Sequence[Line]) -> list[list[Line]]:
    """Pages of twenty at most, fewer where twenty would not fit a message; one page at least."""
    pages: list[list[Line]] = [[]]
    room = LONGEST_PAGE
    for line in lines:
        length = units(morning.in_full(*line)) + 2
        if len(pages[-1]) == ON_A_PAGE or (pages[-1] and length > room):
            pages.append([])
            room = LONGEST_PAGE
        pages[-1].append(line)
        room -= length
    return pages


def _filter_buttons(everybody: Sequence[Line], shown: str) -> Buttons:
    buttons = [
        Button(
            words.filter_button(key, sum(matches(line) for line in everybody), chosen=key == shown),
            ROSTER(0, key),
        )
        for key, matches in FILTERS.items()
    ]
    return [buttons[:2], buttons[2:]]


def _turning(number: int, pages: int, shown: str) -> list[Button]:
    turning = [Button(words.refresh_button(), ROSTER(number, shown))]
    if number > 0:
        turning.insert(0, Button(words.earlier_button(), ROSTER(number - 1, shown)))
    if number < pages - 1:
        turning.append(Button(words.next_button(), ROSTER(number + 1, shown)))
    return turning


AT_LEAST, AT_MOST = 2, 12  # our own choices; a dozen lines still fit a message and an eye

OfAKind = dict[tuple[str, bool], list[RosterRow]]


def keys_for_several(session: Session, everybody: Sequence[Line]) -> Buttons:
    """One for each kind of proposal of which there are several: "Approve 3 raises at once"."""
    found = _alike(session, [seen for _, seen in everybody])
    return [
        [
            Button(
                flow_morning.several_button(
                    min(len(seen), AT_MOST), rule_name(rule), raised=raised
                ),
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
        answer(turn, flow_morning.nothing_alike())
        return
    closer = look_closer(turn.session, found)
    lines = [
        flow_morning.several_line(
            seen.person.first_name, seen.days_out,
            flow_morning.Proposed(decided.sets_date, planned_g, carb_g),
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
    asking.open_question(turn, turn.person, SEVERAL, turn.person.id, {
        "_ids": [seen.waiting.id for seen in found if seen.waiting is not None],
        "_listed": flow_morning.several(
            lines, rule_name(pressed.rule), until, _kept_apart(everybody)
        ),
    })  # fmt: skip


def given(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    """The one tap: what is still open is approved; what changed meanwhile is left out, and said."""
    if question.answers["sure"] != ALL:
        say_to(turn, coach, flow_morning.none_approved())
        return
    done, left_out = [], []
    for number in question.answers["_ids"]:
        row = turn.session.get(DecisionRow, number)
        profile = own_athlete(turn.session, coach, row.athlete_id) if row is not None else None
        if row is None or profile is None or row.carb_g is None:
            left_out.append(flow_morning.not_yours_any_more())
            continue
        name = short(name_of(turn.session, profile.person_id))
        (seen,) = load_roster_rows(turn, [profile])
        why = flow_morning.alert_since() if seen.alert is not None else ""
        why = why or signoff_taps.approve_if_open(turn, coach, profile, row)
        if why:
            left_out.append(flow_morning.left_out(name, why))
        else:
            done.append(f"{name} {figures.grams(row.carb_g)}")
    say_to(turn, coach, flow_morning.approved(done, left_out))


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
        flow_morning.with_word(
            short(seen.person.first_name),
            flow_morning.has_open_alert(word(seen.alert.level))
            if seen.alert is not None
            else flow_morning.is_frozen(),
        )
        for seen in everybody
        if seen.waiting is not None
        and (seen.alert is not None or seen.profile.frozen_at is not None)
    ]


def _due(decided: Decided | None) -> float:
    due = decided.sign_off_due_at if decided is not None else None
    return due.timestamp() if due is not None else 0.0
