"""What a report says in words: skipped, on target, how the training went, all fine, scores in words."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import TYPE_CHECKING

from engine.written.oneline.answers.clauses import IN_PLACE_OF, clauses_of
from engine.written.oneline.answers.plausible import is_plain
from engine.written.oneline.report import CORE, Doubt, DoubtCode, Known, Value
from engine.written.oneline.tokens.pieces import Clause, Figure, Mark, Means, Token, Word
from engine.written.oneline.tokens.slips import LEFT_OUT

if TYPE_CHECKING:
    from engine.written.oneline.answers.figures import Figures

_TRAINING_TOGETHER = {
    frozenset({"none", "less"}): "none",
    frozenset({"as-planned", "less"}): "less",
}
_SAYS_LITTLE = frozenset(
    {Means.LINK, Means.ABOUT, Means.MANNERS, Means.TODAY, Means.YES, Means.RANGE, Means.BOUND}
)  # fmt: skip

_LINKS = frozenset({Means.LINK, Means.ABOUT})

_LIKE_YESTERDAY = frozenset(
    {"same as yesterday", "like yesterday", "same as the day before", "wie gestern",
     "so wie gestern", "gleich wie gestern", "no change", "no changes", "unchanged", "same again",
     "nothing changed", "unverändert", "keine änderung", "keine veränderung", "alles wie gestern",
     "alles gleich", "gleich wie gestern alles", "alles gleich wie gestern", "all the same",
     "all same", "everything the same", "everything same", "alles beim alten", "wia gestern",
     "wie gestern aufs gramm", "wia gestern aufs gramm",
     "everything the same as yesterday", "all same as yesterday"}
)  # fmt: skip
#: Alone these may be said of anything.
_SAYS_NO_MORE = frozenset(
    {"no change", "no changes", "nothing changed", "same again", "unchanged", "unverändert",
     "keine änderung", "keine veränderung"}
)  # fmt: skip
_DITTO = frozenset({"same", "ditto", "dito", "gleich", "idem"})
_HOLD_A_PLACE = _DITTO | {LEFT_OUT}
_IS = frozenset({"is", "was", "are", "were", "ist", "war", "sind", "waren"})


class Phrases:
    """The clauses of one line, and which of their words have been read."""

    def __init__(self, tokens: Sequence[Token], known: Known) -> None:
        self.known = known
        self._order = known.order  # which answer a place is
        self.clauses = clauses_of(tokens, known)
        self.skipped: set[str] = set()
        self.on_target = False
        self.off_target = False
        self.training: str | None = None
        self.later: set[str] = set()  # answers that are told another time
        self.fine = False
        self.reserved: dict[str, Word] = {}
        self.same: dict[str, Word] = {}  # told to be what it was the day before
        self._read: set[int] = set()  # starts of words that were read
        self._soft: set[int] = set()  # read, but part of the note where their clause has more
        for index, clause in enumerate(self.clauses):
            following = self.clauses[index + 1] if index + 1 < len(self.clauses) else None
            self._take_skips(clause)
            self._take_same(clause)
            self._take_ditto(clause)
            self._take_on_target(clause, following)
            self._take_training(clause)
            self._take_scores(clause)
            self._take_later(clause)
        self._take_all_same()
        self.fine = any(
            _is_good(clause, word) and word.start not in self._read
            for clause in self.clauses
            for word in clause.words
        )

    def _take_skips(self, clause: Clause) -> None:
        label: Word | None = None
        figures = bool(clause.figures)
        for word in clause.words:
            if Means.LABEL in word.means:
                label = word
            skip = word.means.get(Means.SKIP)
            if skip is None:
                continue
            if skip.about:
                self._skip(skip.about, word)
            elif label is not None and (not figures or _next_to(clause, label, word)):
                meaning = label.means.get(Means.LABEL)
                assert meaning is not None
                self._read.add(label.start)
                self._skip(meaning.about, word)
            elif (after := _label_after(clause, word)) is not None:
                meaning = after.means.get(Means.LABEL)
                assert meaning is not None
                self._read.add(after.start)
                self._skip(meaning.about, word)
            elif word.text == LEFT_OUT or (
                self.known.asked and len(clause.words) == 1 and not clause.named
            ):
                last = len(self._order) - 1
                self._skip(self._order[min(self._place_of(word), last)], word)

    def _place_of(self, word: Word) -> int:
        """How many answers without a label stand before it, those that were left out included."""
        return sum(
            token.start < word.start and (isinstance(token, Figure) or token.text in _HOLD_A_PLACE)
            for clause in self.clauses
            if not clause.named
            for token in clause.tokens
        )

    def _take_later(self, clause: Clause) -> None:
        """ "Weight to follow, 7, 4": no number of this line is the weight."""
        for one, other in pairwise(clause.tokens):
            label = one.means.get(Means.LABEL) if isinstance(one, Word) else None
            if label and isinstance(other, Word) and Means.LATER in other.means:
                self.later.add(label.about)

    def _take_same(self, clause: Clause) -> None:
        """ "Same weight as yesterday", where the last one is known and no figure is told."""
        for word in clause.words:
            same = word.means.get(Means.SAME)
            if same is None or clause.asks or self.before(same.about) is None:
                continue
            key = same.about.replace("_before", "")
            elsewhere = {
                other.figure.start
                for one in self.clauses
                for other in one.named
                if other.key != key
            }
            told = any(
                figure.start not in elsewhere and is_plain(key, figure, self.known)
                for one in self.clauses
                for figure in one.figures
            )
            self._read.add(word.start)
            if not told:
                self.same[key] = word

    def _take_ditto(self, clause: Clause) -> None:
        """ "Same, same, 5l": each in the place of its answer."""
        (word,) = clause.words if len(clause.tokens) == len(clause.words) == 1 else (None,)
        figures = any(one.figures for one in self.clauses)
        if word is None or word.text not in _DITTO or not self.known.asked or not figures:
            return
        place = self._place_of(word)
        key = self._order[place] if place < len(self._order) else ""
        before = self.before("water_before_l" if key == "water_l" else key)
        if before is not None:
            self.same[key] = word
            self._read.add(word.start)

    def before(self, key: str) -> float | None:
        """What the answer was the day before; of water, what it was to be."""
        return {
            "weight_kg": self.known.weight_kg,
            "fullness": self.known.fullness,
            "water_l": self.known.water_l,
            "water_before_l": self.known.water_before_l,
        }.get(key)

    def _take_all_same(self) -> None:
        """ "Same as yesterday, 6, 3.5": the weight, where two figures follow that are none."""
        first = next((token for clause in self.clauses for token in clause.tokens), None)
        figures = [figure for clause in self.clauses for figure in clause.figures]
        other = any(is_plain("weight_kg", figure, self.known) for figure in figures)
        if not isinstance(first, Word) or first.text not in _LIKE_YESTERDAY or other:
            return
        if not figures and self.known.asked and first.text not in _SAYS_NO_MORE:
            self.same |= {k: first for k in ("weight_kg", "fullness") if self.before(k) is not None}
            return
        open_yet = self.before("weight_kg") is not None and "weight_kg" not in self.skipped
        if open_yet and len(figures) == len(CORE) - 1:
            self.same["weight_kg"] = first

    def _skip(self, key: str, word: Word) -> None:
        self.skipped.add(key)
        self._read.add(word.start)

    def _take_on_target(self, clause: Clause, following: Clause | None) -> None:
        self.off_target |= Means.OFF_TARGET in clause.means and not clause.asks
        for index, word in enumerate(clause.tokens):
            if not isinstance(word, Word) or Means.ON_TARGET not in word.means:
                continue
            if _denied(clause.tokens, index):
                self.off_target = True
                continue
            if clause.asks:
                first = following.words[0] if following and following.words else None
                self.off_target |= first is not None and Means.NO in first.means
                if first is None or Means.YES not in first.means:
                    continue
                self._read.add(first.start)
            self.on_target = True
            self._read.add(word.start)

    def _take_training(self, clause: Clause) -> None:
        otherwise = Means.OTHERWISE in clause.means and Means.TRAINING not in clause.means
        if clause.asks or otherwise:
            return
        if any(word.text in IN_PLACE_OF for word in clause.words):
            return  # "legs instead of shoulders" is another session than the plan's
        for index, word in enumerate(clause.tokens):
            said = word.means.get(Means.TRAINING) if isinstance(word, Word) else None
            if said is None or _denied(clause.tokens, index):
                continue
            if said.about == "as-planned" and clause.unknown:
                continue  # "trained legs": who knows whether that was the plan's
            beside = [
                clause.tokens[i] for i in (index - 1, index + 1) if 0 <= i < len(clause.tokens)
            ]
            if any(isinstance(t, Word) and Means.TODAY in t.means for t in beside):
                continue  # of the day that begins
            if self.training is not None and self.training != said.about:
                together = _TRAINING_TOGETHER.get(frozenset({self.training, said.about}))
                if together is None:
                    self.training = None
                    return
                self.training = together
            else:
                self.training = said.about
            self._soft.add(word.start)

    def _take_scores(self, clause: Clause) -> None:
        """Scores said in words hold the place of their figure; the first of each answer counts."""
        if clause.asks or not clause.means.isdisjoint((Means.OTHERWISE, Means.OTHER_DAY)):
            return
        named = {one.label.start for one in clause.named}
        named |= {one.label.start for way in clause.torn for one in way}
        for index, word in enumerate(clause.tokens):
            if not isinstance(word, Word) or word.start in named or word.start in self._read:
                continue
            if _denied(clause.tokens, index) or _of_something_else(clause.tokens, index):
                continue
            score = word.means.get(Means.SCORE)
            if word.text in _OF_ANYTHING and not _beside_fullness(clause, index):
                continue
            key = score.about if score else self._lone_label(clause, word)
            wanted = key in self._order
            if key and wanted and key not in self.reserved:
                self.reserved[key] = word

    def _lone_label(self, clause: Clause, word: Word) -> str:
        """ "full" with nothing beside it says a score."""
        label = word.means.get(Means.LABEL)
        alone = not clause.figures and not clause.unknown
        scored = label is not None and label.about in ("fullness", "sharpness")
        adjective = word.text in ("full", "sharp", "voll", "scharf", "prall", "hart")
        return label.about if label is not None and alone and scored and adjective else ""

    def take_scores(self, figures: Figures) -> None:
        """Ask about the scores in words whose answer is still open."""
        for key, word in self.reserved.items():
            if key in figures.spoken_for or key in self.skipped:
                continue
            most = 10 if key == "fullness" else 5
            score = word.means.get(Means.SCORE)
            likely = int(score.value) if score and score.value else (8 if key == "fullness" else 4)
            around: list[Value] = [n for n in (likely - 1, likely, likely + 1) if 1 <= n <= most]
            around.sort(key=lambda n: (n != likely, n))
            options = tuple({key: n} for n in around)
            figures.doubts.append(
                Doubt(code=DoubtCode.IN_WORDS, answer=key, given=word.text, options=options)
            )
            figures.spoken_for.add(key)
            self._read.add(word.start)

    def unread(self, figures: Figures) -> tuple[int, int] | None:
        """From where to where the line says more than was read; None where it says no more."""
        spans: list[tuple[int, int]] = []
        for clause in self.clauses:
            left = [t for t in clause.tokens if self._is_left(t, figures)]
            if not left:
                continue
            soft = [t for t in clause.tokens if self._is_soft(t, figures)]
            start = min(t.start for t in (*left, *soft))
            end = max(t.end for t in (*left, *soft))
            # the small words after it belong to it: "moving house today"
            end = max([end, *(t.end for t in clause.words if t.start > end and self._trails(t))])
            spans.append((self._back_over_links(clause, start, figures), end))
        if not spans:
            return None
        fine = [
            (word.start, word.end)
            for clause in self.clauses
            for word in clause.words
            if Means.FINE in word.means and word.start not in self._read
        ]
        end = max(end for _, end in (*spans, *(f for f in fine if f[0] > spans[0][0])))
        # "fine but dizzy": the good word right before belongs to what follows
        start = min(start for start, _ in spans)
        before = [at for at, to in fine if to < start and self._only_marks_between(to, start)]
        return (min([start, *before]), end)

    def _only_marks_between(self, start: int, end: int) -> bool:
        return not any(
            start <= token.start < end for clause in self.clauses for token in clause.tokens
        )

    def _trails(self, word: Word) -> bool:
        return not _SAYS_LITTLE.isdisjoint(word.means) and word.start not in self._read

    def _is_left(self, token: Token, figures: Figures) -> bool:
        if isinstance(token, Figure):
            return token.start not in figures.used
        if isinstance(token, Mark) or not isinstance(token, Word):
            return False
        if token.start in self._read or token.start in figures.labels or token.start in self._soft:
            return False
        if not token.meanings:
            return True
        if Means.FINE in token.means:
            return False
        return _SAYS_LITTLE.isdisjoint(token.means) and not (
            Means.OTHER_DAY in token.means and figures.answers
        )

    def _is_soft(self, token: Token, figures: Figures) -> bool:
        return token.start in self._soft or token.start in figures.soft

    def _back_over_links(self, clause: Clause, start: int, figures: Figures) -> int:
        before = [t for t in clause.tokens if t.end <= start]
        for token in reversed(before):
            links = isinstance(token, Word) and not _LINKS.isdisjoint(token.means)
            if not links or token.start in figures.labels or token.start in self._read:
                break
            start = token.start
        return start


#: Said of a meal or a night as well: scores only beside the word for fullness.
_OF_ANYTHING = frozenset(
    {"meh", "average", "medium", "mediocre", "in between", "not bad", "decent", "okay-ish", "okayish",
     "alright", "great", "awesome", "really good", "very good", "so lala", "mittelprächtig",
     "mittelmäßig", "geht so", "naja", "durchschnittlich", "ganz ok", "ganz okay", "passabel",
     "ganz gut"}
)  # fmt: skip


def _beside_fullness(clause: Clause, index: int) -> bool:
    near = clause.tokens[max(0, index - 2) : index + 2]
    beside = [t for t in near if isinstance(t, Word) and not t.text.startswith("look")]
    labels = (token.means.get(Means.LABEL) for token in beside)
    return any(label is not None and label.about == "fullness" for label in labels)


def _label_after(clause: Clause, skip: Word) -> Word | None:
    """The label of "didn't count the water", where it names no figure."""
    named = {one.label.start for way in (clause.named, *clause.torn) for one in way}
    for token in clause.tokens[clause.tokens.index(skip) + 1 :]:
        if not isinstance(token, Word):
            return None
        if Means.LABEL in token.means:
            return None if token.start in named else token
        if Means.LINK not in token.means:
            return None
    return None


def _next_to(clause: Clause, one: Token, other: Token) -> bool:
    return abs(clause.tokens.index(one) - clause.tokens.index(other)) == 1


def _is_good(clause: Clause, word: Word) -> bool:
    """Whether it says that all is well, and is not the "gut" of "gut 3,5"."""
    at = clause.tokens.index(word) + 1
    following = clause.tokens[at] if at < len(clause.tokens) else None
    rounds = isinstance(following, Figure) and Means.ABOUT in word.means
    return Means.FINE in word.means and not rounds


def _of_something_else(tokens: Sequence[Token], index: int) -> bool:
    """Whether a thing of which nothing is known here is said to be so: "the battery is empty"."""
    if index < 2:
        return False
    thing, says = tokens[index - 2], tokens[index - 1]
    return thing.unknown and isinstance(says, Word) and says.text in _IS


def _denied(tokens: Sequence[Token], index: int) -> bool:
    """Whether the phrase is denied: a "not" before it, with nothing but small words between."""
    for token in reversed(tokens[:index]):
        if not isinstance(token, Word):
            return False
        if Means.NOT in token.means or Means.BOUND in token.means:
            return True
        if Means.LINK not in token.means:
            return False
    return False
