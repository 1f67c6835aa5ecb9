"""What a text may say of when the classes of a day are on, among whatever else: enough to ask about
with one tap, never to be done by itself. What is plain and whole is `stage_times`.
"""

from __future__ import annotations

from datetime import time

from engine.written.clocks_said import ClockSaid, clocks_said, plain_in_digits, spans_said
from engine.written.delays import MOST_MINUTES, TAKEN_BACK
from engine.written.late import Late
from engine.written.stage_times import EARLIEST, LAST, StageWord

_PREJUDGING = r"pre-?judg\w*|vorentscheid\w*|vorwahl|vorrunde"
_FINALS = r"finals?|finale|finalrunde|night show|evening show|abendshow"
#: What is on a stage; the names of classes are the sport's own.
_STAGE = Late(
    rf"\b(?:{_PREJUDGING}|{_FINALS}|class(?:es)?|category|division|klassen?|kategorie|stage|bühne|"
    r"overall|gesamtsieg|open|offenen?|novices?|newcomer|masters?|juniors?|junioren|teens?|jugend|"
    r"classic|physique|bikini|figure|wellness|fitness|bodybuilding|pairs|paare|over \d\d'?s|ü ?\d\d|"
    r"dran|auftritt|(?:my|meine?) (?:start|slot|startzeit)|not on|now on|"
    r"(?:i'm|i am|we're|we are|she's|he's|she is|he is|they're) (?:now )?(?:on|up)"
    r"(?= (?:now|at|again|in|around|about|half|quarter|\d)))\b"
)
#: What is said of a stage, unless it is said of something else.
_MOVED = Late(
    r"\b(?:(?:put|pushed|moved|swapped|called) (?:me|us|her|him|back|to)|"
    r"(?:delayed|verschoben|verlegt) (?:till?|until|to|bis|auf)|"
    r"(?:ich bin|i bin?|bin|mine's|meine ist) jetzt?|geschoben)\b"
)
_FIRST, _LAST = Late(rf"\b(?:{_PREJUDGING})\b"), Late(rf"\b(?:{_FINALS})\b")
_ELSEWHERE = Late(
    r"\b(?:weigh\w*|waage|\w*wiegen|venue|halls?|halle|doors?(?: [^,.;]* open)?|einlass\w*|"
    r"\w*einlass|athleten bis|athletes in|be (?:at|there)|get (?:to|there)|treffpunkt|check-?in|"
    r"registration|registrierung|meeting|besprechung|tan|tanning|farbe|bed|bett|train|zug|bus|"
    r"flight|flug|wake|aufstehen|breakfast|lunch|dinner|meal|frühstück|mittagessen|abendessen|"
    r"essen|esse|eat)\b"
)
_JOINS = Late(r"[\s,;/&+]*(?:(?:and|und|then|dann|again|nochmal|at|um|the|at the)\b[\s,]*)*")
_NO_MORE = Late(
    r"\b(?:an?statt|statt|instead of|rather than|not|nicht(?: mehr)?|no longer)(?: (?:um|at))? $"
)
_ASKED = Late(r"[^,.;!?\n]*\?")
_CUT = Late(r"[,;.!](?=\s|$)")
_LATE = Late(
    r"\b(?:late|later|behind|delay\w*|hold ?up|wait(?:ing)?|pushed back|verzug|verspät\w*|"
    r"hinten|hinterher|später|warten|verzöger\w*|verschoben|nach hinten)\b"
)
_EARLY = Late(
    r"\b(?:early|earlier|sooner|"
    r"ahead|forward|moved (?:us|me|her|him|it)? ?up|before schedule|früher|eher|"
    r"vorgezogen|vorverlegt|voraus|vor (?:dem )?plan|vorm plan|nach vorn\w*)\b"
)


def tells_a_time(text: str, language: str = "en") -> bool:
    """Whether any time of day or span of time is said at all; where none is, it is no such word."""
    said = plain_in_digits(text, language)
    return any(clocks_said(said)) or bool(spans_said(said))


def perhaps_stage_word(text: str, language: str = "en") -> StageWord | None:
    """When the classes may be on by this text (`clocks`, in order, with `which` where it is one of
    them), or by how much the day may be late (`by_min`); None where it sounds like neither. What is
    asked is left out. `language` is what numbers are understood in beside English.
    """
    said = plain_in_digits(_ASKED.sub("", text), language)
    clocks = _of_stage(said)
    if clocks:
        which = clocks[0][0] if len(clocks) == 1 else 0
        return StageWord(which, clocks=tuple(sorted({at for _, at in clocks})))
    return _delay(said)


def _delay(said: str) -> StageWord | None:
    late, early = _LATE.search(said), _EARLY.search(said)
    spans = set(spans_said(said))
    taken_back = any(TAKEN_BACK.search(clause.strip()) for clause in _CUT.split(said))
    if len(spans) != 1 or bool(late) == bool(early) or taken_back:
        return None
    minutes = spans.pop()
    if not 0 < minutes <= MOST_MINUTES:
        return None
    return StageWord(by_min=minutes if late else -minutes)


def _of_stage(said: str) -> list[tuple[int, time]]:
    """The clocks that are said of a stage, each with the class that is named, or 0."""
    found: list[tuple[int, time]] = []
    begin, of_stage = 0, False
    every = list(clocks_said(said))
    for number, clock in enumerate(every):
        before = said[begin : clock.begin]
        ahead = every[number + 1].begin if number + 1 < len(every) else len(said)
        begin = clock.end
        if _NO_MORE.search(before):
            continue
        if not _JOINS.fullmatch(before) or not number:
            of_stage = _is_of_stage(before, said[clock.end : ahead])
        if of_stage:
            which = _which(before) if found or not number else _which(said[: clock.begin])
            found.append((which, _in_its_half(clock, which, found)))
    return found


def _is_of_stage(before: str, after: str) -> bool:
    """Whether the clause before a clock is of a stage; else what follows up to the next cut, else all
    that stands before.
    """
    for told in (_CUT.split(before)[-1], _CUT.split(after)[0], before):
        if _ELSEWHERE.search(told):
            return _last(_STAGE, told) > _last(_ELSEWHERE, told)
        if _STAGE.search(told) or _MOVED.search(told):
            return True
    return False


def _last(pattern: Late, text: str) -> int:
    return max((match.end() for match in pattern.finditer(text)), default=-1)


def _which(before: str) -> int:
    if _LAST.search(before):
        return LAST
    return 1 if _FIRST.search(before) else 0


def _in_its_half(clock: ClockSaid, which: int, earlier: list[tuple[int, time]]) -> time:
    """Where the half of the day is left open: nobody is on stage before seven in the morning, finals
    are in the evening, and classes are told in their order.
    """
    behind = [at for number, at in earlier if (number == LAST) == (which == LAST) or which == LAST]
    out_of_order = bool(behind) and clock.at <= max(behind)
    at = clock.at
    if clock.open and (1 <= at.hour < EARLIEST or out_of_order or (which == LAST and at.hour < 10)):
        return at.replace(hour=at.hour + 12)
    return at
