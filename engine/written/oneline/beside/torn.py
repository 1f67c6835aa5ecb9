"""What hangs on a figure that was read and was not read with it: asked about, never left out.

"13 stone and a third", "3 litres plus a quarter": half of what was said is not what was said.
"66.563.5" is 66.5, 6 and 3.5 without their spaces, or a slip.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from contextlib import suppress

from engine.written.late import Late
from engine.written.oneline.answers.plausible import answer_of, fits, likely, value_of
from engine.written.oneline.report import CORE, Doubt, DoubtCode, Known, Value
from engine.written.oneline.tokens.pieces import Figure, Token
from engine.written.units import ParseError, ParseErrorCode

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
