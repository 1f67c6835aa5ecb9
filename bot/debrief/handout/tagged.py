"""A page of PDF with its structure told: headings, paragraphs, lists and tables in reading order.

fpdf2 writes the file and embeds the letters; what it does not do is tag text (ISO 32000-1, 14.7 and
14.8), so that is done here: each piece of text is a marked sequence that an element of the structure
tree names. What only decorates is marked as an artifact, which readers leave out.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from fpdf import FPDF, ViewerPreferences
from fpdf.enums import XPos, YPos
from fpdf.fonts import TTFFont
from fpdf.structure_tree import StructElem, StructureTreeBuilder
from fpdf.syntax import PDFArray

from bot.drawing.canvas import letters

FAMILY = "DejaVu"
MARGIN_MM = 15.0
_AWAY_MM = 2.0
_PERCENT = "\N{NO-BREAK SPACE}%"  # it never begins a line
INK, QUIET, RULE = (26, 26, 26), (85, 82, 76), (203, 197, 184)


class _Top(PDFArray):
    """Every element of the tree, of which only those of the first floor are children of the document.

    fpdf2 gives each element of this list its page and its number; it knows one floor alone.
    """

    def __init__(self, document: StructElem) -> None:
        super().__init__()
        self._document = document

    def serialize(self, **kwargs: object) -> str:  # type: ignore[override]
        first = PDFArray(one for one in self if one.p is self._document)
        return first.serialize(**kwargs)  # type: ignore[arg-type]


class _Tree(StructureTreeBuilder):
    """A tree of any depth."""

    def __init__(self) -> None:
        super().__init__()
        self.doc_struct_elem.k = _Top(self.doc_struct_elem)

    def add(
        self,
        page: int,
        kind: str,
        within: StructElem | None,
        mcid: int | None,
        alt: str | None = None,
    ) -> StructElem:
        parent = within or self.doc_struct_elem
        element = StructElem(
            struct_type=f"/{kind}", parent=parent, kids=[] if mcid is None else [mcid],
            page_number=page, alt=alt,
        )  # fmt: skip
        self.doc_struct_elem.k.append(element)
        if within is not None:
            within.k.append(element)
        if mcid is not None:
            self.spid_per_page_number.setdefault(page, 0)
            # The place in this list is the number that the marked sequence has.
            self.struct_tree_root.parent_tree.nums[0].append(element)
        return element


class TaggedPage:
    """One page of A4, written from the top down. `language`: as BCP 47 has it ("de")."""

    def __init__(self, *, title: str, author: str, language: str, made_at: datetime) -> None:
        pdf = FPDF(format="A4")
        pdf.set_margin(MARGIN_MM)
        pdf.set_auto_page_break(False)
        pdf.struct_builder = self._tree = _Tree()
        pdf.set_lang(language)
        pdf.set_title(title)
        pdf.set_author(author)
        pdf.set_creation_date(made_at)
        pdf.viewer_preferences = ViewerPreferences(display_doc_title=True)
        for style, file in (("", "DejaVuSans.ttf"), ("B", "DejaVuSans-Bold.ttf")):
            pdf.add_font(FAMILY, style, letters() / file)
        pdf.add_page()
        pdf.pages[1].struct_parents = 0
        self._pdf, self._marked = pdf, 0

    @property
    def left(self) -> float:
        """Millimetres that are left above the lower margin."""
        return float(self._pdf.h - MARGIN_MM - self._pdf.get_y())

    def heading(self, text: str, *, level: int, size: float) -> None:
        self._gap(size * 0.12)
        self._block(f"H{level}", text, Letters(size, bold=True))
        self._gap(size * 0.08)

    def paragraph(self, text: str, *, size: float, quiet: bool = False) -> None:
        self._block("P", text, Letters(size, colour=QUIET if quiet else INK))
        self._gap(size * 0.12)

    def points(self, lines: Sequence[str], *, size: float) -> None:
        """A list, each line with its dash."""
        outer = self._tree.add(1, "L", None, None)
        for line in lines:
            item = self._tree.add(1, "LI", outer, None)
            self._font(Letters(size))
            with self._marks("Lbl", item):
                self._pdf.cell(4, size * 0.5, "–", new_x=XPos.RIGHT, new_y=YPos.TOP)
            body = self._tree.add(1, "LBody", item, None)
            self._block("P", line, Letters(size), within=body)
        self._gap(size * 0.12)

    def table(
        self, head: Sequence[str], rows: Sequence[Sequence[str]], *, widths: Sequence[float],
        size: float,
    ) -> None:  # fmt: skip
        """The first column names its row. `widths`: shares of the page's width."""
        outer = self._tree.add(1, "Table", None, None)
        whole = self._pdf.epw
        for number, row in enumerate([head, *rows]):
            line = self._tree.add(1, "TR", outer, None)
            top = self._pdf.get_y()
            self._font(Letters(size, bold=number == 0))
            for column, (cell, share) in enumerate(zip(row, widths, strict=True)):
                kind = "TH" if number == 0 or column == 0 else "TD"
                # Words keep away from the figures that end before them.
                away = _AWAY_MM if column == len(row) - 1 else 0.0
                wide = whole * share - away
                self._pdf.set_x(self._pdf.get_x() + away)
                with self._marks(kind, line):
                    self._pdf.cell(
                        wide, size * 0.58, _fitted(self._pdf, cell, wide - 1),
                        align="L" if column == 0 or column == len(row) - 1 else "R",
                        new_x=XPos.RIGHT, new_y=YPos.TOP,
                    )  # fmt: skip
            self._pdf.set_xy(MARGIN_MM, top + size * 0.58)
            if number == 0:
                self._rule()
        self._gap(size * 0.25)

    @contextmanager
    def figure(self, *, height: float, alt: str) -> Iterator[Drawing]:
        """Room for something drawn, which is read aloud as `alt`; millimetres."""
        top = self._pdf.get_y()
        self._tree.add(1, "Figure", None, self._marked, alt)
        self._pdf._out(f"/Figure <</MCID {self._marked}>> BDC")
        self._marked += 1
        yield Drawing(self._pdf, MARGIN_MM + self._pdf.c_margin, top)
        self._pdf._out("EMC")
        self._pdf.set_xy(MARGIN_MM, top + height)

    def content(self) -> bytes:
        written = bytes(self._pdf.output())
        self.close()
        return written

    def close(self) -> None:
        """Lets go of the typefaces' files; a page that is not written needs it too."""
        for font in self._pdf.fonts.values():
            if isinstance(font, TTFFont):
                font.close()

    def _block(
        self, kind: str, text: str, letters: Letters, *, within: StructElem | None = None
    ) -> None:
        """One that is `within` a list is set in from its dash."""
        indent = 0 if within is None else 4
        self._font(letters)
        self._pdf.set_x(MARGIN_MM + indent)
        with self._marks(kind, within):
            self._pdf.multi_cell(
                self._pdf.epw - indent, letters.size * 0.5, text.replace(" %", _PERCENT), align="L",
                new_x=XPos.LMARGIN, new_y=YPos.NEXT,
            )  # fmt: skip

    def _font(self, letters: Letters) -> None:
        self._pdf.set_font(FAMILY, "B" if letters.bold else "", letters.size)
        self._pdf.set_text_color(*letters.colour)

    def _gap(self, millimetres: float) -> None:
        self._pdf.set_xy(MARGIN_MM, self._pdf.get_y() + millimetres)

    def _rule(self) -> None:
        y = self._pdf.get_y()
        with self._decoration():
            self._pdf.set_line_width(0.2)
            self._pdf.set_draw_color(*RULE)
            self._pdf.line(MARGIN_MM, y, MARGIN_MM + self._pdf.epw, y)

    @contextmanager
    def _marks(self, kind: str, within: StructElem | None) -> Iterator[None]:
        self._tree.add(1, kind, within, self._marked)
        self._pdf._out(f"/{kind} <</MCID {self._marked}>> BDC")
        self._marked += 1
        yield
        self._pdf._out("EMC")

    @contextmanager
    def _decoration(self) -> Iterator[None]:
        self._pdf._out("/Artifact BMC")
        yield
        self._pdf._out("EMC")


@dataclass(frozen=True, slots=True)
class Letters:
    """How a text is set; `size` in points."""

    size: float
    colour: tuple[int, int, int] = INK
    bold: bool = False


class Drawing:
    """Lines and marks inside a figure, in millimetres from its upper left corner."""

    def __init__(self, pdf: FPDF, left: float, top: float) -> None:
        self._pdf, self._left, self._top = pdf, left, top
        self.width = float(pdf.epw - 2 * pdf.c_margin)

    def text(
        self, at: tuple[float, float], text: str, letters: Letters, *, room: float,
        align: Literal["left", "middle", "right"] = "left",
    ) -> None:  # fmt: skip
        """One line from there, `at` its top; smaller where it has no room, and at last cut."""
        (x, y), size = at, letters.size
        for points in (size, size - 0.5, size - 1):
            self._pdf.set_font(FAMILY, "B" if letters.bold else "", points)
            if self._pdf.get_string_width(text) <= room:
                break
        self._pdf.set_text_color(*letters.colour)
        said = _fitted(self._pdf, text, room)
        free = room - self._pdf.get_string_width(said)
        start = {"left": 0.0, "middle": free / 2, "right": free}[align]
        baseline = y + size * 0.3
        self._pdf.text(self._left + x + start, self._top + baseline, said)

    def line(
        self, start: tuple[float, float], end: tuple[float, float], colour: tuple[int, int, int]
    ) -> None:
        self._pdf.set_draw_color(*colour)
        self._pdf.set_line_width(0.25)
        (x, y), (to_x, to_y), left, top = start, end, self._left, self._top
        self._pdf.line(left + x, top + y, left + to_x, top + to_y)

    def bar(
        self, x: float, y: float, width: float, base: float, colour: tuple[int, int, int]
    ) -> None:
        """A filled one from `base` up to `y`."""
        self._pdf.set_fill_color(*colour)
        self._pdf.rect(self._left + x, self._top + y, width, base - y, style="F")

    def frame(
        self, x: float, y: float, width: float, base: float, colour: tuple[int, int, int]
    ) -> None:
        """An open one."""
        self._pdf.set_draw_color(*colour)
        self._pdf.set_line_width(0.4)
        self._pdf.rect(self._left + x, self._top + y, width, base - y, style="D")

    def mark(
        self, at: tuple[float, float], colour: tuple[int, int, int], *, square: bool = False,
        on_bar: bool = False,
    ) -> None:  # fmt: skip
        """A dot or a square; `on_bar` with a light rim, to be seen on what is dark."""
        x, y = self._left + at[0], self._top + at[1]
        self._pdf.set_fill_color(*colour)
        if square:
            self._pdf.rect(x - 0.75, y - 0.75, 1.5, 1.5, style="F")
            return
        self._pdf.set_draw_color(255, 255, 255)
        self._pdf.set_line_width(0.3)
        self._pdf.circle(x, y, 0.9, style="FD" if on_bar else "F")


def _fitted(pdf: FPDF, text: str, room: float) -> str:
    while text and pdf.get_string_width(text) > room:
        text = f"{text.rstrip('…')[:-1].rstrip()}…" if len(text) > 2 else ""
    return text
