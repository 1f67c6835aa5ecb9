"""What coaches and second contacts read of a flag. Never a drug's dose, never a remedy."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from bot.alerts.words_advice import advice, under_a_warning
from bot.alerts.words_athlete import cause
from bot.words import figures
from bot.words.languages import Sentence, mark, tr, tr_if
from engine.safety import Finding, FlagId, Level, finding
from engine.symptoms import EATING_AND_MOOD, Symptom

Facts = Mapping[str, Any]
#: In the facts of a complaint that came while a warning stood.
AGAIN = "_under_warning"
#: That there may be too much water in the blood, so that nobody was told to drink more.
TO_THIRST = "_to_thirst"

LEVEL_WORDS = {
    Level.WARNING: mark("Warning"),
    Level.CAUTION: mark("Caution"),
    Level.ADVISORY: mark("Info"),
}


def level_word(flag: str, level: Level) -> str:
    """How an alert begins: its level, and a doubt as what it is."""
    return tr("Not sure") if flag == FlagId.DOUBT else tr(LEVEL_WORDS[level])


@dataclass(frozen=True, slots=True, kw_only=True)
class Found:
    """What an alert tells of an athlete. `self_coached`: the reader is the athlete; `beside`: what was
    told with it.
    """

    name: str
    flag: str
    level: Level
    facts: Facts
    when: str
    weight_unit: str
    volume_unit: str
    self_coached: bool
    beside: Sequence[tuple[str, Facts]] = ()


def alert(of: Found, settled: str = "") -> str:
    """The whole alert. `settled` says what became of it, in place of what to do and the call to
    acknowledge it.
    """
    name, flag, level, facts, self_coached = of.name, of.flag, of.level, of.facts, of.self_coached
    causes = [
        cause(
            found,
            told,
            name="" if self_coached else name,
            weight_unit=of.weight_unit,
            volume_unit=of.volume_unit,
        )
        for found, told in ((flag, facts), *_named_apart(flag, of.beside, facts))
    ]
    head = _head(flag, level, name, of.when, self_coached=self_coached)
    parts = ["\n".join([head, *causes])]
    if put_right := facts.get("_corrected"):
        parts.append(corrected(put_right, of.weight_unit, of.volume_unit))
    if put_right and not put_right.get("holds"):
        return "\n\n".join(part for part in (*parts, settled) if part)
    if level is Level.CAUTION and facts.get(AGAIN) and not self_coached:
        parts += _under_a_warning(name, finding(flag))
    elif level is Level.WARNING:
        parts += _warning_own(finding(flag)) if self_coached else _warning(name, finding(flag))
    elif level is Level.CAUTION:
        parts += (
            _caution_own(finding(flag))
            if self_coached
            else _caution(name, finding(flag), to_thirst=bool(facts.get(TO_THIRST)))
        )
    if level is not Level.ADVISORY and not self_coached:
        parts += _of_the_other(
            name, finding(flag), level, [finding(other) for other, _ in of.beside],
            to_thirst=bool(facts.get(TO_THIRST)),
        )  # fmt: skip
    if level is not Level.ADVISORY:
        parts.append(settled or _acknowledge(level, name, self_coached=self_coached))
    elif settled:
        parts.append(settled)
    return "\n\n".join(part for part in parts if part)


def _named_apart(
    lead: str, beside: Sequence[tuple[str, Facts]], facts: Facts
) -> list[tuple[str, Facts]]:
    """What the lead's own sentence does not name, each with its meaning; words quoted once."""
    said = str(facts.get("words", ""))
    return [
        (flag, told if told.get("words", "") not in said else {**told, "words": ""})
        for flag, told in beside
        if flag in set(FlagId) or (lead in set(FlagId) and flag in EATING_AND_MOOD)
    ]


def _of_the_other(
    name: str, lead: Finding, level: Level, beside: Sequence[Finding], *, to_thirst: bool
) -> list[str]:
    """What is to be done besides where mood and body were told in one go, and the alert is of one."""
    if lead not in EATING_AND_MOOD:
        mood = next((found for found in beside if found in EATING_AND_MOOD), None)
        done = _caution(name, mood) if mood is not None else []
        return done[1:] if level is Level.WARNING else done  # who is in danger was told that alone
    body = [found for found in beside if found not in EATING_AND_MOOD]
    done = [part for found in body if isinstance(found, FlagId) for part in _caution(name, found)]
    told = advice([found for found in body if isinstance(found, Symptom)], to_thirst=to_thirst)
    said = tr('{name} was told: "{advice}"', name=name, advice=told) if told else ""
    # after thoughts of self-harm the answer was of them alone
    return done if level is Level.WARNING else [said, *done]


def info(*, name: str, named: str, wrote: str, told: str, when: str) -> str:
    """Complaints that are no alert yet, in one note: what, in whose words, and what was answered."""
    head = _head("", Level.ADVISORY, name, when, self_coached=False)
    lines = [f"{head}\n{named}."]
    if wrote:
        lines.append(tr('{name} wrote "{words}".', name=name, words=wrote))
    if told:
        lines.append(tr("I told {name}: {advice}", name=name, advice=told))
    return "\n".join(lines)


def _head(flag: str, level: Level, name: str, when: str, *, self_coached: bool) -> str:
    said = level_word(flag, level)
    if self_coached:
        return tr("{level}: you, {when}", level=said, when=when)
    return tr("{level}: {name}, {when}", level=said, name=name, when=when)


#: What an answer is called that was put right.
ANSWERS = {
    "water_l": mark("water is {now}, not {before}"),
    "weight_kg": mark("weight is {now}, not {before}"),
    "sleep_h": mark("sleep is {now}, not {before}"),
}


#: What a doubt came to, by how it was settled.
ANSWERED = {
    "answer": mark("Answered since: it is not that."),
    "fine": mark("Answered since: they are fine."),
    "check-in": mark("Answered since: all fine, in the check-in."),
    "told": mark("Answered since: see the newer message."),
}


def corrected(told: Mapping[str, Any], weight_unit: str, volume_unit: str) -> str:
    """What has changed since this was raised, and what that makes of it."""
    said = ANSWERED.get(str(told.get("by")))
    if said is not None:
        words = str(told.get("words", ""))
        quoted = tr('In their words: "{words}".', words=words) if words else ""
        return f"{tr(said)} {quoted}".rstrip()
    moves = []
    for key, sentence in ANSWERS.items():
        if key in told.get("before", {}) and key in told.get("now", {}):
            before, now = (
                _figure(key, told[which][key], weight_unit, volume_unit)
                for which in ("before", "now")
            )
            moves.append(tr(sentence, now=now, before=before))
    what = "; ".join(moves) if moves else tr("the answers have changed")
    if told.get("holds"):
        return tr("Corrected since: {what}.", what=what)
    return tr("Corrected since: {what}. So this no longer applies.", what=what)


def _figure(key: str, value: float, weight_unit: str, volume_unit: str) -> str:
    if key == "water_l":
        return figures.volume(value, volume_unit)
    if key == "weight_kg":
        return figures.weight(value, weight_unit)
    return tr("{hours} h", hours=figures.plain(value))


def _warning(name: str, flag: Finding) -> list[str]:
    if flag is Symptom.SELF_HARM:
        return _self_harm(name)
    return [
        tr(
            "{name} was told: stop, call the local emergency number, don't drive, don't stay alone.",
            name=name,
        ),
        tr(
            "What to do now:\n"
            "1. Call {name}. No answer: call somebody who can go there.\n"
            "2. If it is still going on, or you are in doubt: the local emergency number where "
            "{name} is.\n"
            "3. No extra water, salt, food or tablets as a remedy. What happens next is for a "
            "doctor.",
            name=name,
        ),
        tr("Nothing is adjusted until the freeze is lifted."),
    ]


def _self_harm(name: str) -> list[str]:
    # That asking does no harm: Dazzi 2014, Psychological Medicine 44:3361 (review; from memory).
    return [
        tr(
            "{name} was told that they need not be alone with it: the local emergency number or the "
            "nearest hospital where they might act on it, a crisis line, somebody they trust; and to "
            "leave the diet and the training for today.",
            name=name,
        ),
        tr(
            "What to do now:\n"
            "1. Call {name}. No answer: call somebody who can go there.\n"
            "2. Ask plainly whether they think of killing themselves; asking does not put the thought "
            "there. Listen, and don't argue. No talk of weight, food or the look.\n"
            "3. If they might act on it, or you can't reach them: the local emergency number where "
            "{name} is. Don't leave them alone meanwhile.\n"
            "4. Otherwise stay in touch until a doctor or a crisis line has taken over.",
            name=name,
        ),
        tr("Nothing is adjusted until the freeze is lifted."),
    ]


def _warning_own(flag: Finding) -> list[str]:
    if flag is Symptom.SELF_HARM:
        return [
            tr(
                "If you might act on it: your local emergency number, or the nearest hospital. "
                "Otherwise call a crisis line or somebody you trust now. Leave the diet and the "
                "training for today."
            )
        ]
    return [
        tr(
            "Stop. Call your local emergency number now, and somebody to be with you. Don't drive. "
            "No extra water, salt, food or tablets as a remedy."
        ),
        tr(
            "Nothing is adjusted until you lift the freeze, and please do so only once a doctor "
            "says so."
        ),
    ]


#: Little to drink: nobody is fetched in the night for it.
TOO_LITTLE_WATER = frozenset({FlagId.WATER_UNDER_ADEQUATE, FlagId.WATER_UNDER_TARGET})
_TOO_MUCH_WATER = frozenset(
    {
        FlagId.LOW_SODIUM,
        FlagId.WATER_OVER_TARGET,
        FlagId.WATER_OVER_GUARD_RAIL,
        FlagId.WATER_TOO_FAST,
    }
)


def _caution(name: str, flag: Finding, *, to_thirst: bool = False) -> list[str]:
    if flag is FlagId.DOUBT:
        return [tr("Call {name} and ask. {no_raise}", name=name, no_raise=_no_raise_meanwhile())]
    if flag is FlagId.DRUG_NAMED:
        return [
            tr(
                "{name} was told that nothing here can help with drugs, and to ask a doctor.",
                name=name,
            ),
            tr(
                "What to do now: talk to {name}, and send them to a doctor with the question.",
                name=name,
            ),
        ]
    if flag in EATING_AND_MOOD:
        return [
            tr(
                "{name} was answered gently and without figures, and today's target was not sent. "
                "Nothing is adjusted until the freeze is lifted.",
                name=name,
            ),
            tr(
                "What to do now: call {name}, ask how they are, and listen. No talk of weight, food "
                "or the look. Help them to somebody who treats this: a doctor, a psychotherapist, an "
                "eating-disorder service.",
                name=name,
            ),
        ]
    if flag in TOO_LITTLE_WATER:
        return [
            tr(
                "{name} was told to get back to the target, spread over the day. {no_raise}",
                name=name,
                no_raise=_no_raise(),
            ),
            tr("What to do now: ask {name} what got in the way, and how they feel.", name=name),
        ]
    if flag in _TOO_MUCH_WATER:
        told = tr_if(
            flag is FlagId.LOW_SODIUM,
            "{name} was told to drink only to thirst, not to train, and to see a doctor today. "
            "{no_raise}",
            "{name} was told not to drink more to catch up on anything. {no_raise}",
            name=name,
            no_raise=_no_raise(),
        )
        return [
            told,
            tr(
                "What to do now: call {name} before they drink any more. Headache, nausea, swelling or "
                "confusion: a doctor at once.",
                name=name,
            ),
        ]
    if flag is FlagId.AFTER_SHOW_COMPLAINT:
        return [
            tr("{name} was told to see a doctor today, with no large meals until then.", name=name),
            tr(
                "What to do now: call {name}, ask how they feel, and see that a doctor looks today.",
                name=name,
            ),
        ]
    if flag is FlagId.AFTER_SHOW_RISE:
        return [
            tr("{name} was told to eat smaller meals, not everything at once.", name=name),
            tr(
                "What to do now: call {name}, and ask about swelling, weak limbs and palpitations. Any "
                "of them: a doctor at once.",
                name=name,
            ),
        ]
    if isinstance(flag, Symptom):
        return [
            tr(
                '{name} was told: "{advice}" {no_raise}',
                name=name,
                advice=advice([flag], to_thirst=to_thirst),
                no_raise=_no_raise(),
            ),
            tr(
                "What to do now: call {name} before they follow today's plan, and see that a doctor "
                "looks.",
                name=name,
            ),
        ]
    return [
        tr("{name} knows that I've told you. {no_raise}", name=name, no_raise=_no_raise()),
        tr(
            "What to do now: call {name} before they follow today's plan, and ask how they feel. If "
            "they feel unwell, a doctor comes first.",
            name=name,
        ),
    ]


def _under_a_warning(name: str, flag: Finding) -> list[str]:
    """A mild complaint that comes while all rests after a warning: that may be the same once more."""
    told = under_a_warning([flag])
    return [
        tr('{name} was told: "{advice}"', name=name, advice=told) if told else "",
        tr(
            "This comes while a warning still stands. What to do now: call {name}, and see that a "
            "doctor looks before the freeze is lifted.",
            name=name,
        ),
    ]


def _caution_own(flag: Finding) -> list[str]:
    if flag is FlagId.DOUBT:
        return [_no_raise_meanwhile()]
    if flag in EATING_AND_MOOD:
        return [tr("Nothing is adjusted until you lift the freeze. Please talk to somebody first.")]
    told = tr("If you feel unwell, stop and see a doctor.")
    # A caution of the morning's answers forbids a raise; a drug can be named at any hour.
    return [told if flag is FlagId.DRUG_NAMED else f"{told} {_no_raise()}"]


_no_raise = Sentence("I won't add carbs on these answers.")
_no_raise_meanwhile = Sentence("I won't add carbs until this is clear.")


acknowledge_own = Sentence("Tap Acknowledge once you have seen to it. I repeat this until then.")


def _acknowledge(level: Level, name: str, *, self_coached: bool) -> str:
    if self_coached:
        return acknowledge_own()
    if level is Level.WARNING:
        return tr("Tap Acknowledge once you are on it. I repeat this until then.")
    return tr("Tap Acknowledge once you've spoken to {name}. I repeat this until then.", name=name)
