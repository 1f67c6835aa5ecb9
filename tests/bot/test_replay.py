"""A finished week decided again: in the coach's chat, and by `brimline replay` for all of them."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

import pytest
from sqlmodel import select

from bot.cli import main
from bot.decision.replay.command import NoSuchChangeError, change_of, replay_all
from bot.store.db import transaction
from bot.store.tables.week import DaySetRow, DecisionRow
from engine.decision.replay import Change
from engine.decision.rules import table
from tests.support.weeks import Team, gone_on
from tests.support.world import text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Mira has answered three mornings of the load, flat on two of them; the show was two days ago."""
    return gone_on(team_at(datetime(2027, 5, 7, 6, 0, tzinfo=UTC)), three_mornings)


def three_mornings(team: Team) -> None:
    team.coach.language = team.athlete.language = "en"
    team.athlete.writes("60.4 4 3.5 4")
    team.morning(1)
    team.athlete.writes("60.6 4 3.5 4")
    team.world.now = datetime(2027, 5, 11, 12, 0, tzinfo=UTC)
    team.coach.hears()


def decisions(team: Team) -> list[DecisionRow]:
    with team.world.session() as session:
        return list(session.exec(select(DecisionRow).order_by(DecisionRow.id)))  # type: ignore[arg-type]


def test_without_the_rule_the_figures_stand_beside_those_that_were_set(team: Team) -> None:
    set_then = [row.carb_g for row in decisions(team)]
    assert set_then == [525, 525]
    asked = team.coach.presses("c:whatif:2")[-1]
    assert "show on Sun 9 May 2027" in asked.text
    said = text_of(team.coach.taps("Without: flat in the load"))
    assert "without the rule: flat in the load" in said
    assert "2 out: 525 → 500 (" in said
    assert "1 out: 525 → 500 (" in said
    assert "2 of 2 figures would have been different" in said
    assert "body would have answered to other figures" in said


def test_another_step_is_asked_for_and_a_figure_that_cannot_be_changes_nothing(team: Team) -> None:
    team.coach.presses("c:whatif:2")
    assert "Which step in g? It was 25 g." in text_of(team.coach.taps("Another step"))
    said = text_of(team.coach.writes("20"))
    assert "with step: 20 g" in said
    assert "2 out: 525 → 520 (flat in the load)" in said
    team.coach.taps("Ask something else about this week")
    team.coach.taps("Another step")
    said = text_of(team.coach.writes("900"))
    assert "That limit can't be" in said and "Which step in g? It was 25 g." in said
    assert "with step: 20 g" in text_of(team.coach.writes("20")), "it is asked again at once"
    assert [row.carb_g for row in decisions(team)] == [525, 525], "a question changes nothing"


def test_a_figure_that_was_approved_is_not_called_one_set_by_hand(team: Team) -> None:
    with transaction(team.world.engine) as session:
        last = session.exec(select(DecisionRow).order_by(DecisionRow.id.desc())).first()  # type: ignore[union-attr]
        assert last is not None
        standing = session.exec(select(DaySetRow).where(DaySetRow.date == last.sets_date)).one()
        standing.by, last.status = "coach", "approved"
        session.add_all([standing, last])
    team.coach.presses("c:whatif:2")
    said = text_of(team.coach.taps("Without: flat in the load"))
    assert "1 out: 525 → 500 (" in said and "by your own hand" not in said
    with transaction(team.world.engine) as session:
        last = session.get_one(DecisionRow, last.id)
        last.status = "in-force"
        session.add(last)
    said = text_of(team.coach.taps("Without: flat in the load"))
    assert "1 out: 525 → 500 (flat and softening); by your own hand then" in said


def test_a_proposal_that_nobody_answered_is_no_difference_where_it_would_be_made_again(
    team: Team,
) -> None:
    """What became of it has nothing to do with what is asked about."""
    with transaction(team.world.engine) as session:
        last = session.exec(select(DecisionRow).order_by(DecisionRow.id.desc())).first()  # type: ignore[union-attr]
        assert last is not None
        standing = session.exec(select(DaySetRow).where(DaySetRow.date == last.sets_date)).one()
        standing.carb_g, last.status = 505, "lapsed"
        session.add_all([standing, last])
    team.coach.presses("c:whatif:2")
    team.coach.taps("Another carb floor")
    said = text_of(team.coach.writes("140"))
    assert "1 out: 505, the same" in said
    assert "No figure would have been different." in said


def test_with_the_forecast_on_its_own_estimate_stands_beside_it(team: Team) -> None:
    team.coach.presses("c:whatif:2")
    said = text_of(team.coach.taps("Forecast on"))
    assert "with the forecast proposing" in said
    assert "2 out: " in said and "1 out: " in said


def test_where_no_week_is_over_the_coach_is_told_so(team_at: Callable[[datetime], Team]) -> None:
    team = team_at(datetime(2027, 5, 7, 6, 0, tzinfo=UTC))
    team.coach.language = "en"
    team.athlete.writes("60.4 4 3.5 4")
    assert "no finished week yet" in text_of(team.coach.presses("c:whatif:2"))


@pytest.mark.parametrize(
    "data",
    [
        "c:whatif:2:99", "c:whatif-use:2:1:magic", "c:whatif-less:2:1:steady", "c:whatif-less:2:9:x",
        "c:whatif-limit:2:1:water_floor_l", "c:whatif-limit:2:7:step_g", "c:whatif-use:2",
    ],
)  # fmt: skip
def test_buttons_that_name_nothing_that_is_there_do_no_harm(team: Team, data: str) -> None:
    before = [(row.carb_g, row.status) for row in decisions(team)]
    team.coach.presses(data)
    assert [(row.carb_g, row.status) for row in decisions(team)] == before


# --- the command ----------------------------------------------------------------------------------


def test_every_stored_decision_comes_out_the_same(team: Team) -> None:
    with team.world.session() as session:
        found = replay_all(session, Change())
    assert (found.decisions, found.same, found.lines) == (2, 2, [])
    with team.world.session() as session:
        assert replay_all(session, Change(), athlete_id=77).decisions == 0


def test_a_rule_left_out_and_a_changed_table_say_where_they_differ(
    team: Team, tmp_path: Path
) -> None:
    with team.world.session() as session:
        found = replay_all(session, change_of(["flat-in-load"], None))
    assert len(found.lines) == 2
    assert "athlete 2, for 2027-05-07: " in found.lines[0]
    assert "carb_g 525 -> 500" in found.lines[0]
    assert "rule flat-in-load -> " in found.lines[0]
    copy = tmp_path / "tried.py"
    original = Path(table.__file__).read_text(encoding="utf-8")
    tried = original.replace("2 if facts.very_flat and facts.measured else 1", "2")
    assert tried != original
    copy.write_text(tried, encoding="utf-8")
    with team.world.session() as session:
        found = replay_all(session, change_of([], copy))
    assert len(found.lines) == 2 and "carb_g 525 -> 550" in found.lines[0]


def test_rules_that_are_not_there_are_named(tmp_path: Path) -> None:
    with pytest.raises(NoSuchChangeError, match="no rule moon to leave out"):
        change_of(["moon"], None)
    with pytest.raises(NoSuchChangeError, match="no Python file"):
        change_of([], tmp_path / "none.py")
    empty = tmp_path / "empty.py"
    empty.write_text("RULES = ()\n", encoding="utf-8")
    with pytest.raises(NoSuchChangeError, match="has no RULES"):
        change_of([], empty)


def test_a_decision_of_another_version_is_compared_and_one_that_is_tampered_with_is_found(
    team: Team,
) -> None:
    with transaction(team.world.engine) as session:
        one, other = session.exec(select(DecisionRow).order_by(DecisionRow.id)).all()  # type: ignore[arg-type]
        older = {**one.decision, "trace": {**one.decision["trace"], "table": 1, "steps": 9}}
        one.decision = older
        other.decision = {**other.decision, "expected_fullness": "because"}
        session.add(one)
        session.add(other)
    with team.world.session() as session:
        found = replay_all(session, Change())
    assert found.of_other_version == 1
    assert found.same == 1, "what people act on is the same"
    assert len(found.lines) == 1 and "expected_fullness because -> " in found.lines[0]


def test_the_command_line_prints_counts_and_says_by_its_exit_code_whether_all_is_well(
    team: Team, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("BRIMLINE_DATABASE_URL", team.world.engine.url.render_as_string())
    assert main(["replay"]) == 0
    assert "2 decisions: 2 the same, 0 not" in capsys.readouterr().out
    assert main(["replay", "--without", "flat-in-load", "--athlete", "2"]) == 0
    said = capsys.readouterr().out
    assert "carb_g 525 -> 500" in said and "0 the same, 2 not" in said
    assert "Mira" not in said
    assert main(["replay", "--limit", "step_g=20"]) == 0
    said = capsys.readouterr().out
    assert "carb_g 525 -> 520" in said and "0 the same, 2 not" in said
    assert main(["replay", "--forecast", "proposes"]) == 0
    assert "2 decisions: " in capsys.readouterr().out
    assert main(["replay", "--limit", "step_g=5000"]) == 0
    assert capsys.readouterr().out.count("step (step_g) must be at most") == 2
    assert main(["replay", "--limit", "stride=20"]) == 2
    assert "no limit stride" in capsys.readouterr().err
    assert main(["replay", "--without", "moon"]) == 2
    assert "no rule moon" in capsys.readouterr().err
