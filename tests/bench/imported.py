"""Is a debrief true of bodies whose weeks were never lived here, but came in as a sheet?

`python -m tests.bench.imported [ATHLETES] [SEED] [COLUMN ...]`: so many virtual athletes of each world
of the bench (their equations are not the model's) live two trials; the weeks are written down as a
coach would have, sent to the bot as a file, imported, and looked at closely. Printed by world: how
often the ranges that the coach then reads hold the hidden store and spill point, and how many of the
three sentences for next time the body speaks against. Columns that are named are left empty.
"""

from __future__ import annotations

import re
import sys
import tempfile
from collections import Counter
from collections.abc import Collection, Iterator
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path

from bot.people.people import get_profile
from bot.store.db import make_engine, transaction
from bot.store.migrate import upgrade_to_head
from bot.week.cases import weeks_before
from bot.week.load import athlete_of, baseline_of
from engine.bench.recovery import Known, athletes, contradicted
from engine.planning.behind.learning import taught
from tests.support.files import sends_file
from tests.support.imported import as_sheet, taken_on
from tests.support.weeks import Team, invited

NOW = datetime(2027, 7, 1, 12, tzinfo=UTC)
STORE = re.compile(r"Muscles hold about ([\d,]+) g when full \(([\d,]+) to ([\d,]+)\)")
SPILL = re.compile(r"Spills over from about ([\d.]+) g/kg a load day \(([\d.]+) to ([\d.]+)\)")


@dataclass(frozen=True)
class Read:
    """What the coach read of one athlete, and what of it was true."""

    known: Known
    store: tuple[float, float]
    spill: tuple[float, float]
    wrong: tuple[str, ...]

    @property
    def holds(self) -> tuple[bool, bool]:
        (low, high), (least, most) = self.store, self.spill
        one = self.known
        return low <= one.store_g <= high, least <= one.spill_g_per_kg <= most


def read_off(team: Team, known: list[Known], without: Collection[str] = ()) -> Iterator[Read]:
    """Each athlete's weeks through the coach's chat and back as a debrief."""
    for number, one in enumerate(known):
        with transaction(team.world.engine) as session:
            athlete_id = taken_on(session, one.client, number, team.world.now)
        sends_file(team.coach, as_sheet(athlete_id, one.weeks, without=without), name="past.csv")
        team.coach.taps("Import them")
        text = team.coach.presses(f"c:closer:{athlete_id}")[-1].text
        with team.world.session() as session:
            profile = get_profile(session, athlete_id)
            weeks = weeks_before(session, athlete_id, NOW.date())
            lessons = taught(athlete_of(profile), baseline_of(profile), weeks)
        wrong = contradicted(replace(one, weeks=weeks, taught=lessons))
        yield Read(one, _range(STORE, text), _range(SPILL, text), tuple(wrong))


def _range(pattern: re.Pattern[str], text: str) -> tuple[float, float]:
    found = pattern.search(text)
    assert found is not None, text
    low, high = (float(found[n].replace(",", "")) for n in (2, 3))
    return low, high


def main(arguments: list[str]) -> None:
    number, seed = (int(one) for one in [*arguments, "12", "51"][:2])
    with tempfile.TemporaryDirectory() as folder:
        engine = make_engine(f"sqlite:///{Path(folder) / 'imported.sqlite3'}")
        upgrade_to_head(engine)
        read = list(read_off(invited(engine, NOW), athletes(number, seed), arguments[2:]))
        engine.dispose()
    for world in [*dict.fromkeys(one.known.world for one in read), "all"]:
        here = [one for one in read if world in (one.known.world, "all")]
        store, spill = (sum(one.holds[n] for one in here) / len(here) for n in (0, 1))
        wrong = Counter(id for one in here for id in one.wrong)
        print(
            f"{world:12} {len(here):4}  store {store:6.1%}  spill {spill:6.1%}  sentences against "
            f"the body {sum(wrong.values()) / 3 / len(here):5.1%} {dict(wrong)}"
        )


if __name__ == "__main__":
    main(sys.argv[1:])
