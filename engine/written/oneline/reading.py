"""A report read out of a line: figures with what labels and units say of them, the rest by order.

What is plain is an answer. What could move carbs wrongly, because it is out of range, far from its
owner's habit, in another order, said in words or standing among words that are not known, becomes a
doubt: it is asked about before it is taken. What is neither is the note.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

from engine.written.late import Late
from engine.written.oneline.answers.figures import Figures
from engine.written.oneline.answers.phrases import Phrases
from engine.written.oneline.beside.asides import score_moved, set_aside, weighed_in, written_out
from engine.written.oneline.beside.passed_over import asked_about, glued, hanging, passed_over
from engine.written.oneline.beside.put_right import in_tenths, put_right
from engine.written.oneline.beside.rivals import settled
from engine.written.oneline.drinks.added_up import added_up
from engine.written.oneline.drinks.vessels import against_another, in_litres, worked_out
from engine.written.oneline.judge.settling import second_opinion
from engine.written.oneline.report import CORE, IN_ORDER, Doubt, Known, Report, Value, agreed
from engine.written.oneline.tokens.joined import interpretations
from engine.written.oneline.tokens.pieces import Figure, Token
from engine.written.oneline.tokens.slips import mended, parted, told_plainly, without_doubled
from engine.written.training_told import Went, cut_out, together
from engine.written.units import ParseErrorCode, WeightUnit
from engine.written.units.reading import plain_with_places

#: Without a word or a sign there is nothing to be set aside, added up or held against yesterday.
_FIGURES_ALONE = Late(r"[\d\s.,;/|]+")
_DOTS = Late(r"\.{2,}")
_UNDERSCORES = Late(r"(?<=\d)_+(?=\d)")
_Span = tuple[int, int] | None
_Read = tuple[Report, _Span]
LONGEST = 1200  # characters; what is longer is a letter, not a check-in


@dataclass(frozen=True, slots=True)
class Reading:
    """A report with where what was not read stands, and the tokens of the line it was read from.

    `line` is the plain text as it was typed, each place of it one of `places` there; `known` has the
    unit of the scale that it names.
    """

    report: Report
    known: Known
    line: str
    places: Sequence[int]
    span: _Span = None
    tokens: Sequence[Token] = ()


@lru_cache(maxsize=32)  # one message is read in several places of one use case
def read_report(text: str, known: Known) -> Report:
    """What the text says of the morning; an empty `Report` where it says nothing of it.

    Never raises for what somebody may type, and never guesses: see `Doubt`.
    """
    if len(text) > LONGEST:
        return Report(note=text.strip())
    rest, ways, with_figures = cut_out(text)
    if not ways:
        return _read_text(text, known)
    report = _read_text(rest, known) if rest.strip(" ,;.!") else Report()
    went = together([*ways, *([Went(report.training)] if report.training else [])])
    unclear = text.strip() if went is None else with_figures  # then a person sees what was said
    note = " / ".join(part for part in (report.note.strip(" ,;"), unclear) if part)
    fine = report.all_fine and not note
    return replace(report, training=went.value if went else None, note=note, all_fine=fine)


def _read_text(text: str, known: Known) -> Report:
    read = by_grammar(text, known)
    report, others = read.report, list[tuple[int, int]]()
    if not _FIGURES_ALONE.fullmatch(read.line):
        report, others = second_opinion(read.line, report, read.tokens, read.known)
    return _with_note(report, _reaching(read.span, others), text, read.places)


def by_grammar(text: str, known: Known) -> Reading:
    """What the grammar reads and asks; what `read_report` makes of it is the judge's."""
    line, places = plain_with_places(text)
    line = parted(without_doubled(line, places), places)
    line = _DOTS.sub(lambda dots: _parting(line, dots.start()) * len(dots[0]), line)
    line = _UNDERSCORES.sub(lambda marks: "/" * len(marks[0]), line)
    line = mended(line, known.language, len(known.order))
    if (run := glued(line, known)) is not None:
        return Reading(Report(doubts=(run,)), known, line, places)
    if _FIGURES_ALONE.fullmatch(line):
        (report, span), tokens = _read_best(line, known)
        return Reading(report, known, line, places, span, tokens)
    typed, known = line, weighed_in(line, known)
    line, subtracted = told_plainly(line, known)
    line = put_right(line, known)
    line, of_hundred = in_tenths(line, known)
    line, left_over = worked_out(line, known)
    weighed = settled(line, known)
    summed = added_up(weighed.line, known)
    line, apart = set_aside(summed.line)
    line, measured = in_litres(line, known)
    line, drink_asked, drunk = against_another(line, known)
    measured = measured or summed.said or left_over
    drink_asked = summed.asked or drink_asked
    line, since_yesterday = written_out(line, known)
    line, score_asked = score_moved(line, known)
    (report, span), tokens = _read_best(line, known)
    report = _with_words_of(
        report,
        {
            "weight_kg": weighed.said or since_yesterday or subtracted,
            "fullness": of_hundred,
            "water_l": measured,
        },
    )
    report = _with_drink(report, drink_asked, drunk)
    if score_asked is not None and "fullness" not in report.answers:
        report = replace(report, doubts=(*report.doubts, score_asked), labelled=True)
    if weighed.doubt is not None and "weight_kg" not in report.answers:
        report = replace(report, doubts=(weighed.doubt, *report.doubts))
    report = asked_about(line, report, known)
    span = _reaching(span, (*weighed.apart, *apart))
    return Reading(report, known, typed, places, span, tokens)


def _read_best(line: str, known: Known) -> tuple[_Read, Sequence[Token]]:
    """The reading that holds, with its tokens; where none does, those of the one least in doubt."""
    ways = interpretations(
        line, language=known.language, bare_stones=known.weight_unit is WeightUnit.ST
    )
    readings = [(_read(tokens, known, line), tokens) for tokens in ways]
    best = _best(readings, known)
    least = min(readings, key=lambda one: len(one[0][0].doubts))[1]
    return best, next((tokens for read, tokens in readings if read is best), least)


def _with_note(report: Report, span: _Span, text: str, places: Sequence[int]) -> Report:
    """The report, with what was not read as it was typed."""
    if span is None:
        return report
    first, last = span
    # a sign outside the plain characters may stand for two of them: up to where the next begins
    end = places[last] if last < len(places) else len(text)
    return replace(report, all_fine=False, note=text[places[first] : end].strip())


def _with_words_of(report: Report, words: Mapping[str, str]) -> Report:
    """The report, with the words of the answers that were worked out from them."""
    meant = {
        key: said for key, said in words.items() if said and report.answers.get(key) is not None
    }
    return replace(report, meant={**meant, **report.meant}) if meant else report


def _with_drink(report: Report, asked: Doubt | None, drunk: tuple[float, str] | None) -> Report:
    """With a drink that was told against another, where no other figure of it was."""
    if "water_l" in report.answers or any(doubt.answer == "water_l" for doubt in report.doubts):
        return report
    if asked is not None:
        return replace(report, doubts=(*report.doubts, asked), labelled=True)
    if drunk is None:
        return report
    litres, words = drunk
    return replace(
        report, labelled=True, answers={**report.answers, "water_l": litres},
        meant={**report.meant, "water_l": words},
    )  # fmt: skip


def _reaching(span: _Span, apart: Sequence[tuple[int, int]]) -> _Span:
    """What was not read, with the figures of something else that were set aside."""
    spans = [*apart, *([span] if span else [])]
    return (min(start for start, _ in spans), max(end for _, end in spans)) if spans else None


def _parting(line: str, at: int) -> str:
    """What dots in a row stand for: "weight..72" names a number, "72...6" parts two."""
    return ":" if line[at - 1 : at].isalpha() else ";"


def _read(tokens: list[Token], known: Known, line: str) -> _Read:
    phrases = Phrases(tokens, known)
    figures = Figures(phrases, known)
    figures.take()
    phrases.take_scores(figures)
    _ask_about_more(line, tokens, figures, known)
    for doubt in hanging(line, tokens, figures.answers, figures.used, known):
        figures.ask_instead(doubt)
    answers: dict[str, Value] = dict.fromkeys(phrases.skipped - figures.spoken_for)
    answers |= figures.answers
    span = phrases.unread(figures)
    report = Report(
        answers=answers,
        doubts=tuple(figures.doubts),
        on_target=phrases.on_target and "carb_eaten_g" not in figures.spoken_for,
        off_target=phrases.off_target and "carb_eaten_g" not in figures.spoken_for,
        training=phrases.training,
        all_fine=phrases.fine and span is None,
        meant={key: words for key, words in figures.meant.items() if key in answers},
        labelled=figures.labelled or bool(phrases.skipped) or phrases.on_target,
    )
    return report, span


def _ask_about_more(line: str, tokens: list[Token], figures: Figures, known: Known) -> None:
    """Beside a drink that was read, another that was not: never passed over in silence."""
    drunk = figures.answers.get("water_l")
    if drunk is None or any(doubt.answer in ("water_l", "spare") for doubt in figures.doubts):
        return
    read = [(token.start, token.end) for token in tokens if token.start in figures.used]
    if more := passed_over(line, known, read) or figures.more_of_drink(line):
        del figures.answers["water_l"]
        figures.ask_about_more(more, drunk)


def _best(readings: Sequence[tuple[_Read, list[Token]]], known: Known) -> _Read:
    """The one reading that holds; where several do, a question between them."""
    clear = [(read, tokens) for read, tokens in readings if not read[0].doubts]
    if not clear:
        return _none_clear([read for read, _ in readings])
    # "60,2,5,3,5" is no fullness of 2.5 where it can be read with whole scores
    clear = [one for one in clear if "fullness" not in one[0][0].meant] or clear
    # two figures that can be stones and pounds are, where there is nothing else
    for read, tokens in clear:
        only = [token for token in tokens if isinstance(token, Figure)]
        if len(only) == 1 and only[0].unit_text.startswith("st ") and len(readings) > 1:
            return read
    distinct: list[_Read] = []
    for read, _ in clear:
        if all(dict(read[0].answers) != dict(other[0].answers) for other in distinct):
            distinct.append(read)
    if len(distinct) == 1:
        return distinct[0]
    pointed = [
        read
        for read, tokens in clear
        if any(isinstance(token, Figure) and "." in token.text for token in tokens)
        and all(key in read[0].answers for key in CORE)
    ]
    if len(pointed) == 1 and "," not in "".join(f"{x.number}" for x in _figures(clear, pointed[0])):
        return pointed[0]  # decimals have points here, so that commas part: "58.6kg,5,3l"
    if (surely := _nearest(distinct, known)) is not None:
        return surely
    stones = any(
        isinstance(token, Figure) and token.unit_text.startswith("st ")
        for _, tokens in clear
        for token in tokens
    )
    code = ParseErrorCode.AMBIGUOUS_STONE if stones else ParseErrorCode.AMBIGUOUS_SEPARATOR
    return _between(distinct, code)


def _figures(readings: Sequence[tuple[_Read, list[Token]]], one: _Read) -> list[Figure]:
    tokens = next(tokens for read, tokens in readings if read is one)
    return [token for token in tokens if isinstance(token, Figure)]


def _nearest(reads: Sequence[_Read], known: Known) -> _Read | None:
    """The one of several readings whose figures are all nearer to its owner's: of "58,6,5,3" that is
    58.6 kg and 3 L, not 58 kg and 5.3 L. None where one is nearer in one of them only.
    """
    habits = {"weight_kg": known.weight_kg, "water_l": known.water_l}
    whole = [read for read in reads if all(key in read[0].answers for key in CORE)]
    if len(whole) < len(reads):
        return None
    best = {
        min(range(len(reads)), key=lambda at: _off(reads[at][0].answers[key], habit))
        for key, habit in habits.items()
        if habit
    }
    far = [abs((read[0].answers["weight_kg"] or 0) - (known.weight_kg or 0)) for read in reads]
    return reads[best.pop()] if len(best) == 1 and min(far) < max(far) else None


def _off(value: Value, habit: float) -> float:
    return abs((value or 0) - habit)


def _none_clear(reads: Sequence[_Read]) -> _Read:
    """Several ways to cut the numbers, and none that fits: they are asked for anew."""
    report, span = min(reads, key=lambda read: len(read[0].doubts))
    if len(reads) == 1:
        return report, span
    doubt = report.doubts[0]
    anew = Doubt(code=ParseErrorCode.AMBIGUOUS_SEPARATOR, answer=doubt.answer, given=doubt.given)
    shared = agreed([report.answers, *(other.answers for other, _ in reads)])
    return replace(report, answers=shared, doubts=(anew,)), span


def _between(distinct: Sequence[_Read], code: ParseErrorCode) -> _Read:
    """What all these readings share, and the question which of them it is."""
    report, span = distinct[0]
    shared = agreed([other.answers for other, _ in distinct])
    options = tuple(
        {key: value for key, value in other.answers.items() if key not in shared}
        for other, _ in distinct[:3]
    )
    about = next((key for key in IN_ORDER for option in options if key in option), "weight_kg")
    doubt = Doubt(code=code, answer=about, given="", options=options)
    return replace(report, answers=shared, doubts=(doubt,)), span
