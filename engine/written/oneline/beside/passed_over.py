"""What sounds like an answer, or hangs on one, and was neither read nor asked about: it is asked about,
never passed over in silence."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from contextlib import suppress
from dataclasses import replace

from engine.written.late import Late
from engine.written.oneline.answers.plausible import answer_of, fits, likely, value_of
from engine.written.oneline.drinks.parts import MOST_BARE_L, Part, Parts, is_british
from engine.written.oneline.drinks.words import may_be_counted, pieces_of
from engine.written.oneline.report import CORE, Doubt, DoubtCode, Known, Report, Value
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.numbers import N, in_digits
from engine.written.oneline.tokens.pieces import Figure, Token
from engine.written.units import ParseError, ParseErrorCode, WeightUnit

# ruff: noqa: E501 - a pattern stays on one line


_LOOKS = Late(
    r"\b(?:(?:full|round|tight|flat|empty|deflated|pumped) (?:as(?! yesterday)|like(?! yesterday)|i guess|i think|i'd say|i suppose|probably|maybe|honestly)\b[^,;.\n?!]{0,20}"
    r"|(?:so|voll|wieder|richtig|ziemlich|echt|super|sehr|total|eher) (?:prall|voll|flach|platt|leer|rund)\b[^,;.\n?!]{0,20}"
    r"|(?:voll|prall|flach|platt|leer|rund) (?:glaub ich|denk ich|würd ich sagen|wie(?! gestern)|schätz ich|vermutlich|wohl)\b[^,;.\n?!]{0,20}"
    r"|(?:my look is|look is|looks?|looking|optik(?: ist)?|sieht|seh|sehe|schaut|form(?: ist)?) (?:(?:really|pretty|quite|very|so|echt|ganz|ziemlich|heute|aus|immer noch|still|a bit|etwas) )*(?:good|great|fine|better|worse|okay|ok|gut|super|besser|schlechter|mies|bad|awful|amazing|decent)(?: aus)?)(?![^\W_])"
)
_SATED = Late(r"\b(?:full|voll) (?:of|after|from|time|day|night|hours?|session|gas|mit)(?![^\W_])")
_DRINKS = Late(
    r"\b(?:(?:a|n|nen|einen?|one|half a|for|of|ganze[nrs]?|maybe|vielleicht|halbe[nr]?) )*(?:litres?|liters?|gallons?|gal|gallone|maß|krügerl|seidl)(?![^\W_])"
)
_OTHER_USE = Late(
    r"\b(?:per|pro|paar|few|couple|several|some|einige|euro|petrol|benzin|milk|milch|juice|saft|milliliter)(?![^\W_])"
)
_DENIED = Late(r" *(?:no|not|nein|nicht)(?![^\W_])")
_NEAR = 0.05
_KG_PER_LB = 0.45359237
_STONES = Late(r"\bst(?:ones?)?(?![^\W_])|\d ?st(?![^\W_])")


def asked_about(line: str, report: Report, known: Known) -> Report:
    """The report with a question where such a thing was passed over; nothing else is changed."""
    if not report.answers and not report.doubts:
        return report
    asked = {doubt.answer for doubt in report.doubts}
    asked |= {key for doubt in report.doubts for option in doubt.options for key in option}
    if "spare" in asked or not set(known.order) - {*report.answers, *asked}:
        return report
    found = [
        doubt
        for key, doubt in (
            ("weight_kg", _weight(line, known)),
            ("fullness", _look(line)),
            ("water_l", _drink(line)),
        )
        if doubt is not None and key in known.order and key not in {*report.answers, *asked}
    ]
    return replace(report, doubts=(*report.doubts, *found)) if found else report


def _weight(line: str, known: Known) -> Doubt | None:
    last = known.weight_kg or known.on_file_kg
    if last is None or known.weight_unit is WeightUnit.ST or _STONES.search(line):
        return None
    per = _KG_PER_LB if known.weight_unit is WeightUnit.LB else 1.0
    for match in re.finditer(N, in_digits(line, known.language)):
        denied = _DENIED.match(line, match.end())
        if not denied and abs(rough(match[0]) * per - last) <= _NEAR * last:
            return Doubt(code=DoubtCode.UNCLEAR, answer="weight_kg", given=match[0])
    return None


def _look(line: str) -> Doubt | None:
    match = _LOOKS.search(line)
    if match is None or _SATED.match(line, match.start()):
        return None
    return Doubt(code=DoubtCode.IN_WORDS, answer="fullness", given=match[0].strip())


def _drink(line: str) -> Doubt | None:
    match = _DRINKS.search(line)
    if match is None or _OTHER_USE.search(line):
        return None
    return Doubt(code=DoubtCode.UNCLEAR, answer="water_l", given=match[0].strip())


_SHARE = Late(
    r" ?(?:[,&+] ?)?(?:(?:and|und|plus|a|an|one|noch|ein|eine|einen|einem|'n|n) ){0,3}"
    r"(?:half|halb(?:e[mnrs]?)?|einhalb|quarters?|(?:ein|drei)?viertel|third|drittel|eighth|achtel)"
    r"(?![^\W_])(?! ?(?:past|after|to|vor|nach|an? hour|hour|stunde|std|way|asleep|dead|time|tot|so"
    r"|marathon))"
)
#: "66.563.5", "66.56.3.5": a weight, a score and a drink, with nothing between two of them at least.
_GLUED = Late(
    r"\D{0,12}?(?P<weight_kg>\d{2,3}[.,]\d)(?:(?P<fullness>\d|10)[.,]?|[.,](?P<apart>\d|10))"
    r"(?P<water_l>\d[.,]\d{1,2})(?: ?(?:l|liters?|litres?))?\s*"
)
_DRANK = Late(r"\b(?:water|h2o|drank|drunk|wasser|getrunken)(?: (?:was|is|war|waren))?[ :=]{1,3}$")
#: No scale shows so many: a run of figures, or a sum that somebody worked out.
_TOO_FINE = Late(r"\d+[.,]\d{3,}")


def hanging(
    line: str, tokens: Sequence[Token], answers: Mapping[str, Value], used: set[int], known: Known
) -> list[Doubt]:
    """The answers of which a share was left unread, and those of more places than a scale shows."""
    doubts = []
    for token in tokens:
        if not isinstance(token, Figure):
            continue
        if token.start not in used:
            if "water_l" in answers and _is_named_drink(line, token, known):
                given = token.text.strip()
                doubts.append(Doubt(code=DoubtCode.UNCLEAR, answer="water_l", given=given))
            continue
        share = _SHARE.match(line, token.end)
        if share and any(
            token.end < other.start < share.end() and other.start in used
            for other in tokens
            if isinstance(other, Figure)
        ):
            share = None  # "6, half a litre" tells of the next answer
        key = answer_of(token, answers, known)
        if key is not None and share is not None:
            given = f"{token.text.strip()}{share[0]}"
            doubts.append(Doubt(code=DoubtCode.UNCLEAR, answer=key, given=given))
        elif key == "weight_kg" and _TOO_FINE.fullmatch(token.text.strip()):
            code = ParseErrorCode.AMBIGUOUS_SEPARATOR
            doubts.append(Doubt(code=code, answer=key, given=token.text.strip()))
    return doubts


def _is_named_drink(line: str, figure: Figure, known: Known) -> bool:
    """Whether an unread figure stands right behind a word of drinking, as a day's amount."""
    if not fits("water_l", figure) or not _DRANK.search(line[: figure.start]):
        return False
    with suppress(ParseError):
        value = value_of("water_l", figure, known)
        return value is not None and likely("water_l", value, known)
    return False


def glued(line: str, known: Known) -> Doubt | None:
    """The question whether a run is the three figures of a morning, where it can be."""
    match = _GLUED.fullmatch(line)
    if match is None or known.order[: len(CORE)] != CORE:
        return None
    option: dict[str, Value] = {}
    for key in CORE:
        number = match[key] or match["apart"]
        figure = Figure(start=0, end=len(number), number=number.replace(",", "."), text=number)
        with suppress(ParseError):
            option[key] = value_of(key, figure, known)
    if len(option) < len(CORE) or not all(likely(key, option[key], known) for key in CORE):
        return None
    return Doubt(
        code=DoubtCode.ORDER, answer="weight_kg", given=line.strip(), options=(option,)
    )  # fmt: skip


_NOT_DRUNK = (
    "not", "nicht", "left", "than", "als", "statt", "instead", "of", "less", "weniger", "without",
    "ohne",
)  # fmt: skip
_OF_THE_DAY = (
    "at night", "in the evening", "in the morning", "in the afternoon", "at lunch", "at work",
    "at the gym", "abends", "morgens", "mittags", "nachmittags", "vormittags", "nachts",
    "am abend", "am morgen", "am nachmittag", "am vormittag", "auf arbeit", "im gym",
)  # fmt: skip


def passed_over(line: str, known: Known, read: Sequence[tuple[int, int]]) -> str:
    """What looks like a drink and was not read, though another was; "" where there is none.

    `read` are the places of the figures that are accounted for.
    """
    if not may_be_counted(line):
        return ""
    pieces = pieces_of(line, known.language)
    reader = _Alone(pieces, known, british=is_british(line, known))
    at = 0
    while at < len(pieces):
        part = reader.part_at(at)
        if part is None:
            at += 1
            continue
        start, end = pieces[part.first].start, pieces[part.last].end
        accounted = any(start < to and begin < end for begin, to in read)
        if not accounted and reader.is_a_drink(part):
            return line[start:end]
        at = part.last + 1
    return ""


class _Alone(Parts):
    """Parts of a line that belong to no sum."""

    def is_a_drink(self, part: Part) -> bool:
        """Whether a part that stands alone is drunk: not eaten, not left over, of no other drink."""
        if part.shape in ("other", "share", "wholes"):
            return False
        beside = [
            self._all[at] for at in (part.first - 1, part.last + 1) if 0 <= at < len(self._all)
        ]
        before = self._all[max(0, part.first - 3) : part.first]
        if any(piece.kind in "-o" or piece.text in _NOT_DRUNK for piece in (*before, *beside)):
            return False
        joint, behind = self.joint_at(part.last + 1)
        if "o" in joint:
            return False
        of = self._all[part.last + 1 : behind]
        following = self._all[behind] if behind < len(self._all) else None
        eaten = of and of[-1].text == "of" and following and following.kind == "."
        if part.shape != "bare":
            return not eaten
        day = any(piece.kind == "p" and piece.text in _OF_THE_DAY for piece in beside)
        return day and self.may_begin(part) and (part.amount or 0) <= MOST_BARE_L
