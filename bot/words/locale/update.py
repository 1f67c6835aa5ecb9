"""Bring the catalogues up to date with the sentences in the code.

`python -m bot.words.locale.update` goes through every language there is; with codes (`fr`), those are
added where they are new. `--take FILE.po` takes translations from another catalogue where ours has
none. What no longer stands in the code is dropped.
"""

from __future__ import annotations

import argparse
import re
from collections.abc import Sequence
from pathlib import Path

from babel.messages import Catalog, Message
from babel.messages.extract import extract_from_file
from babel.messages.pofile import read_po, write_po

import engine
from bot.words.languages import CATALOGUES, DOMAIN, ENGLISH, known

#: Both houses: the engine words what it finds, the bot all else.
CODE = (Path(__file__).parents[2], Path(engine.__file__).parent)
#: The functions that name a sentence, and where it stands among their arguments.
KEYWORDS = {
    "tr": None, "trn": (1, 2), "tr_if": (2,), "mark": None, "Sentence": None, "SentenceOn": None,
    "SentenceOnTwo": None, "SentenceCounted": (1, 2), "SentenceAbout": (1,), "source_shown": (2,),
}  # fmt: skip
#: What these say otherwise is a sentence by itself, and not the plural of the other.
OTHERWISE = {"tr_if": (3,), "SentenceAbout": (2,)}
COMMENTS = ("Translators:",)
_NAMES_ONE = re.compile(rf"\b(?:{'|'.join(KEYWORDS)})\(")


def sentences(code: Sequence[Path] = CODE) -> Catalog:
    """Every sentence in the code, with the files that have it."""
    found = Catalog(project=DOMAIN, charset="utf-8", fuzzy=False)
    files = [(house.parent, file) for house in code for file in sorted(house.rglob("*.py"))]
    for above, file in files:
        if not _NAMES_ONE.search(file.read_text(encoding="utf-8")):
            continue  # to cut a file into its tokens takes far longer
        for named in (KEYWORDS, OTHERWISE):
            for line, message, comments, _ in extract_from_file(
                "python", file, keywords=named, comment_tags=COMMENTS
            ):
                where = file.relative_to(above).as_posix()
                found.add(message, locations=[(where, line)], auto_comments=comments)
    return found


def catalogue_file(language: str, folder: Path = CATALOGUES) -> Path:
    return folder / language / "LC_MESSAGES" / f"{DOMAIN}.po"


def read(file: Path, language: str) -> Catalog:
    """The catalogue, or a new one where there is none."""
    if not file.is_file():
        return Catalog(locale=language, project=DOMAIN, charset="utf-8", fuzzy=False)
    with file.open("rb") as source:
        return read_po(source, locale=language)


def merge(catalogue: Catalog, template: Catalog, others: Sequence[Catalog] = ()) -> Catalog:
    """The sentences of the template with the translations there are, the catalogue's own first."""
    for message in template:
        if not message.id:
            continue
        translated = [
            found
            for found in (_of(one, message) for one in (catalogue, *others))
            if found is not None
        ]
        if translated:
            template[message.id].string = translated[0].string
            template[message.id].flags |= translated[0].flags & {"fuzzy"}
    template.locale = catalogue.locale
    template.creation_date = catalogue.creation_date
    template.revision_date = catalogue.revision_date
    return template


def write(catalogue: Catalog, file: Path) -> None:
    file.parent.mkdir(parents=True, exist_ok=True)
    with file.open("wb") as out:
        write_po(
            out, catalogue, width=100, sort_by_file=True, include_lineno=False, omit_header=False
        )


def _of(catalogue: Catalog, message: Message) -> Message | None:
    """This sentence as the catalogue has it, if it has it translated."""
    found = catalogue.get(message.id)
    if found is None or bool(found.pluralizable) != bool(message.pluralizable):
        return None
    said = found.string if isinstance(found.string, list | tuple) else [found.string]
    return found if said and all(said) else None


def main(arguments: Sequence[str] | None = None) -> None:
    parser = argparse.ArgumentParser(prog="python -m bot.words.locale.update", description=__doc__)
    parser.add_argument("language", nargs="*", help="a code such as fr, to add or to update alone")
    parser.add_argument("--take", action="append", default=[], type=Path, metavar="FILE.po")
    given = parser.parse_args(arguments)
    for language in given.language or [code for code in known() if code != ENGLISH]:
        file = catalogue_file(language)
        others = [read(other, language) for other in given.take]
        write(merge(read(file, language), sentences(), others), file)


if __name__ == "__main__":
    main()
