"""Tables in a chat: columns that stand under each other on a phone, in type of one width."""

from __future__ import annotations

from collections.abc import Sequence

#: What a table lies between in a text. Telegram takes such characters out of what people type, so
#: they stand nowhere else; the outbox turns what is between them into a block of one width.
START, END = "\x02", "\x03"
#: Characters that fit beside each other in such a block on a phone 360 points wide; measured on the
#: widths of Telegram's block type (common practice: about 8 points a character).
MOST_ACROSS = 32


def table(rows: Sequence[Sequence[str]]) -> str:
    """The rows as a block, the first column to the left and the others to the right."""
    widths = [max(len(row[n]) for row in rows) for n in range(len(rows[0]))]
    lines = [
        " ".join(
            cell.ljust(width) if n == 0 else cell.rjust(width)
            for n, (cell, width) in enumerate(zip(row, widths, strict=True))
        ).rstrip()
        for row in rows
    ]
    return f"{START}{chr(10).join(lines)}{END}"


def tables(names: Sequence[str], columns: Sequence[Sequence[str]]) -> str:
    """Columns beside a first one of names, in as many blocks one below the other as a phone needs."""
    first = max(len(name) for name in names)
    blocks: list[list[Sequence[str]]] = [[]]
    across = first
    for column in columns:
        wide = 1 + max(len(cell) for cell in column)
        if blocks[-1] and across + wide > MOST_ACROSS:
            blocks.append([])
            across = first
        blocks[-1].append(column)
        across += wide
    return "\n".join(table(list(zip(names, *block, strict=True))) for block in blocks)
