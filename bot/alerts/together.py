"""What is told in one go is one alert: the gravest, with all else that was told in it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from functools import partial
from typing import Any

from bot.alerts import notes, words
from bot.alerts.delivery import TOGETHER, WITHIN
from bot.alerts.words_advice import advice, under_a_warning
from bot.core.turn import Turn
from bot.people.coach_settings import moment_for
from bot.people.people import name_of, others_coaching
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import AlertRow
from bot.words.figures import capital
from bot.words.names import symptom_names
from engine.decision.record import plain
from engine.safety import LOW_SODIUM_SIGNS, Finding, Flag, FlagId, Level, finding
from engine.safety.weight import LOOKED_AT
from engine.symptoms import EATING_AND_MOOD, Symptom

# Findings that are made of what was said of these.
MADE_OF: dict[Finding, frozenset[Symptom]] = {
    FlagId.LOW_SODIUM: frozenset().union(*LOW_SODIUM_SIGNS),
    FlagId.NO_URINE_SWELLING: frozenset(
        {Symptom.NO_URINE, Symptom.SWELLING, Symptom.SWOLLEN_HANDS}
    ),
    FlagId.AFTER_SHOW_COMPLAINT: frozenset(LOOKED_AT),
    Symptom.MUSCLE_BREAKDOWN: frozenset({Symptom.URINE_DARK, Symptom.CRAMPS}),
}
# And these are told in words as well, which may tell of other things beside.
_SAID_OUTRIGHT = frozenset({FlagId.EMERGENCY, FlagId.DRUG_NAMED, FlagId.WATER_TOO_FAST})


def in_their_words(flag: Flag, words: Mapping[str, str]) -> dict[str, Any]:
    """The flag's facts, with what was written of it where the flag itself does not know."""
    facts: dict[str, Any] = plain(dict(flag.facts))
    if flag.id is FlagId.DRUG_NAMED:  # of which the flag knows the names alone
        named = str(facts.get("words", "")).split(", ")
        whole = dict.fromkeys(words[name] for name in named if name in words)
        facts["words"] = "; ".join(whole) or facts.get("words", "")
    if not facts.get("words"):
        of = MADE_OF.get(flag.id, frozenset()) | {flag.id}
        told = dict.fromkeys(words[found] for found in of if found in words)
        if told:
            facts["words"] = "; ".join(told)
    return facts


def gathered(turn: Turn, opened: list[AlertRow]) -> list[AlertRow]:
    """What was told in one go is one message: the gravest, with all else that was told in it."""
    left = list(opened)
    for told in _in_one(opened):
        lead = next((row for row in told if row.level != Level.ADVISORY), None)
        others = [row for row in told if row is not lead]
        if lead is None or not others:
            continue
        for row in others:
            row.facts = row.facts | {WITHIN: lead.id}
            row.acknowledged_at = turn.now
            left.remove(row)
        lead.facts = lead.facts | {TOGETHER: [row.flag for row in others]}
    return left


def _in_one(opened: Sequence[AlertRow]) -> list[list[AlertRow]]:
    """What is told in one message: all of it; but two warnings, of the mood and of the body, each
    with what is to be done at once, are two.
    """
    told = [row for row in opened if _of_words(row)]
    warned = {row.flag in EATING_AND_MOOD for row in told if row.level == Level.WARNING}
    if len(warned) < 2:
        return [told]
    return [[row for row in told if (row.flag in EATING_AND_MOOD) is mood] for mood in warned]


def told_with_graver(row: AlertRow, alerts: Iterable[AlertRow]) -> bool:
    """Whether the same words have just gone out in one of these alerts, on the body."""
    words = str(row.facts.get("words", ""))
    return any(
        alert.opened_at == row.opened_at
        and alert.level != Level.ADVISORY
        and _of_words(alert)
        and alert.flag not in EATING_AND_MOOD
        and (words or row.flag in MADE_OF.get(finding(alert.flag), ()))
        and words in str(alert.facts.get("words", ""))
        for alert in alerts
    )


def _of_words(row: AlertRow) -> bool:
    found = finding(row.flag)
    return isinstance(found, Symptom) or found in MADE_OF or found in _SAID_OUTRIGHT


def is_complaint(row: AlertRow) -> bool:
    """Whether this is a single complaint that needs no acknowledging."""
    return row.level == Level.ADVISORY and row.flag in set(Symptom)


def tell_complaints(
    turn: Turn, profile: AthleteProfile, rows: Sequence[AlertRow], *, advised: bool
) -> None:
    """What was complained of in one go, in one silent note, in any hours: who is told may look."""
    told = [row.flag for row in rows]
    wrote = "; ".join(dict.fromkeys(str(row.facts.get("words", "")) for row in rows)).strip("; ")
    to_thirst = any(row.facts.get(words.TO_THIRST) for row in rows)

    def sentence(reader: Person) -> str:
        return words.info(
            name=name_of(turn.session, profile.person_id),
            named=capital(symptom_names(told)),
            wrote=wrote,
            told=advice(told, to_thirst=to_thirst) if advised else under_a_warning(told),
            when=moment_for(turn.session, reader, profile, turn.now),
        )

    for person in others_coaching(turn.session, profile):
        notes.tell(turn, person, profile.person_id, partial(sentence, person), notes.Comes.AT_ONCE)
