"""`/food` in chat: the athlete's own list, the day's portions, and what changes them."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from sqlalchemy import Engine
from sqlmodel import select

from bot.core.turn import Kind, Turn
from bot.people.people import get_profile
from bot.store.tables.food import EatenRow, FoodDayRow, FoodRow
from bot.week.load import Figure, current_week, set_day
from tests.support.weeks import Team, gone_on, onboarded
from tests.support.world import Said, text_of

FOODS = (
    ("white rice, cooked", "White rice, cooked", "A favourite"),
    ("chicken", "Chicken breast, roasted", "Digests well"),
    ("olive", "Olive oil", "Digests well"),
    ("oats", "Oats, dry", "So-so"),
    ("honey", "Honey", "Digests well"),
    ("salt", "Table salt", "Digests well"),
)


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Two days out, at seven in London: 500 g of carbs are planned, 112 g of protein."""
    return team_at(datetime(2027, 5, 7, 5, 0, tzinfo=UTC))


@pytest.fixture
def fed(team: Team) -> Team:
    """The same, with six foods on Mira's list."""
    return gone_on(team, listing)


def listing(team: Team) -> None:
    for query, name, liking in FOODS:
        add(team, query, name, liking)


def add(team: Team, query: str, name: str, liking: str, usual: str = "It varies") -> str:
    team.athlete.presses("f:add")
    team.athlete.writes(query)
    team.athlete.taps(name)
    team.athlete.taps(liking)
    if liking == "Never":
        return team.athlete.all_said()[-1].text
    return text_of(team.athlete.taps(usual))


def food(team: Team) -> Said:
    return team.athlete.writes("/food")[-1]


def together(text: str) -> tuple[float, float, float]:
    found = re.search(r"Together: carbs (\d+) g, protein (\d+) g, fat (\d+) g", text)
    assert found is not None, text
    return float(found[1]), float(found[2]), float(found[3])


def target(team: Team, days_out: int = 2) -> tuple[float, float, float]:
    with team.world.session() as session:
        profile = get_profile(session, team.athlete_id)
        week = current_week(session, profile)
        assert week is not None
        day = week.plan.day(days_out)
        assert day is not None
        return day.carb_g, day.protein_g, day.fat_g


def met(text: str, wanted: tuple[float, float, float]) -> bool:
    carbs, protein, fat = (abs(a - b) for a, b in zip(together(text), wanted, strict=True))
    return carbs <= 5.5 and protein <= 5.5 and fat <= 3.5  # a half for the figures as shown


def test_an_empty_list_is_asked_for_and_never_filled_by_itself(team: Team) -> None:
    said = food(team)
    assert "Your list of foods is empty" in said.text
    assert set(said.buttons) >= {"Add a food", "Add from a label", "Meal times"}
    with team.world.session() as session:
        assert session.exec(select(FoodRow)).all() == []


def test_a_food_is_searched_for_tapped_and_marked(team: Team) -> None:
    team.athlete.taps("Add a food", food(team))
    assert "don't know that food" in text_of(team.athlete.writes("xyzzy"))
    said = team.athlete.writes("rice")
    assert "White rice, cooked" in said[-1].buttons
    assert "Which food?" in text_of(team.athlete.taps("None of these"))
    team.athlete.writes("sweet potato")
    assert "How well do you digest it?" in text_of(team.athlete.taps("Sweet potato, baked in skin"))
    assert "usual day" in text_of(team.athlete.taps("So-so"))
    assert "is on your list" in text_of(team.athlete.writes("200 g"))
    shown = text_of(team.athlete.presses("f:list"))
    assert "- Sweet potato, baked in skin (so-so) usually 200 g a day" in shown


def test_the_days_target_becomes_portions_of_listed_foods_at_the_usual_times(fed: Team) -> None:
    said = food(fed)
    assert "Today's target: carbs 500 g, protein 126 g, fat 56 g" in said.text
    assert met(said.text, target(fed))
    assert "Not quite" not in said.text
    for at in ("07:00", "10:00", "13:00", "16:00", "19:00"):
        assert f"\n{at}  " in f"\n{said.text}"
    names = {name for _, name, _ in FOODS}
    for line in re.findall(r"^\d\d:\d\d  (.+)$", said.text, re.MULTILINE):
        for portion in line.split("; "):
            assert any(portion.startswith(name) for name in names), portion


def test_the_same_menu_is_shown_until_something_changes(fed: Team) -> None:
    assert food(fed).text == food(fed).text


def test_a_meal_eaten_as_it_stood_leaves_the_others_as_they_are(fed: Team) -> None:
    before = food(fed).text
    after = text_of(fed.athlete.taps("Ate 07:00"))
    assert "Eaten: carbs" in after
    assert "\n07:00" not in after
    for at in ("10:00", "13:00", "16:00", "19:00"):
        line = re.search(rf"^{at}  .+$", before, re.MULTILINE)
        assert line is not None
        assert line[0] in after


def test_a_meal_tapped_twice_is_eaten_once(fed: Team) -> None:
    said = food(fed)
    fed.athlete.taps("Ate 07:00", said)
    with fed.world.session() as session:
        once = len(session.exec(select(EatenRow)).all())
    fed.athlete.taps("Ate 07:00", said)
    assert "already answered for that meal" in fed.athlete.answers_to_taps()[-1]
    with fed.world.session() as session:
        assert len(session.exec(select(EatenRow)).all()) == once > 0


def test_something_else_eaten_plans_the_rest_anew_to_the_same_target(fed: Team) -> None:
    food(fed)
    fed.athlete.taps("Ate something else")
    fed.athlete.taps("Honey")
    said = text_of(fed.athlete.writes("100 g"))
    # 100 g of honey: 82.4 - 0.2 g of carbs without fibre (USDA SR26)
    assert "Saved: Honey 100 g" in said
    assert "Eaten: carbs 82 g, protein 0 g, fat 0 g" in said
    carbs, protein, fat = target(fed)
    assert met(said, (carbs - 82.2, protein - 0.3, fat))


def test_a_new_target_in_force_makes_a_new_menu(fed: Team) -> None:
    food(fed)
    with fed.world.session() as session:
        turn, today = Turn(session, fed.world.context), fed.world.now.date()
        set_day(turn, fed.athlete_id, today, Figure(440, "coach"))
        session.commit()
    said = food(fed).text
    assert "Today's target: carbs 440 g" in said
    assert abs(together(said)[0] - 440) <= 5.5


def test_a_swapped_food_is_gone_for_today_and_its_stand_in_is_there(fed: Team) -> None:
    add(fed, "jelly", "Jelly beans", "Digests well")
    food(fed)
    fed.athlete.taps("Swap")
    assert "What instead of White rice, cooked?" in text_of(fed.athlete.taps("White rice, cooked"))
    said = text_of(fed.athlete.taps("Jelly beans"))
    assert "White rice, cooked is out for today" in said
    plates = said.split("\n\n", 1)[1]
    assert "White rice" not in plates
    assert "Jelly beans" in plates
    assert met(said, target(fed))
    fed.world.later(days=1)
    assert "White rice" in food(fed).text  # tomorrow it is back


def test_a_locked_food_stays_while_the_rest_is_planned_anew(fed: Team) -> None:
    food(fed)
    fed.athlete.taps("Lock")
    label = next(
        label for label in fed.athlete.all_said()[-1].buttons if label.startswith("White rice")
    )
    grams = float(label.rpartition("cooked ")[2].removesuffix(" g"))
    fed.athlete.taps(label)
    assert f"✓ {label}" in fed.athlete.all_said()[-1].buttons
    fed.athlete.taps("Today's food")
    fed.athlete.taps("Ate something else")
    fed.athlete.taps("Honey")
    said = text_of(fed.athlete.writes("30"))
    rice = sum(float(g) for g in re.findall(r"White rice, cooked (\d+) g", said))
    assert rice == grams


def test_what_was_locked_and_is_all_eaten_can_be_let_go_of(fed: Team) -> None:
    food(fed)
    with fed.world.session() as session:  # as it stands once a locked helping has been eaten
        row = session.exec(select(FoodDayRow)).one()
        honey = session.exec(select(FoodRow).where(FoodRow.name == "Honey")).one()
        row.locked = {str(honey.id): 0}
        session.add(row)
        session.commit()
    food(fed)
    fed.athlete.taps("Ate something else")
    fed.athlete.taps("Table salt")
    assert "Honey" not in text_of(fed.athlete.writes("1 g")).split("rest of the day.", 1)[1]
    fed.athlete.taps("Lock")
    labels = fed.athlete.all_said()[-1].buttons
    assert "✓ Honey 0 g" in labels
    fed.athlete.taps("✓ Honey 0 g")
    assert "✓ Honey 0 g" not in fed.athlete.all_said()[-1].buttons


def test_what_is_not_on_the_list_is_said_to_be_so(fed: Team) -> None:
    food(fed)
    fed.athlete.taps("Ate something else")
    said = text_of(fed.athlete.writes("Pizza at my aunt's"))
    assert '"Pizza at my aunt\'s" is not on your list' in said
    assert "What did you eat?" in said


def test_what_never_sits_well_is_never_suggested(fed: Team) -> None:
    said = add(fed, "dates", "Dates, deglet noor", "Never")
    assert "never digest" in said
    fed.athlete.presses("f:list")
    assert "Dates" not in food(fed).text


def test_a_missed_meal_goes_to_the_meals_that_are_left(fed: Team) -> None:
    food(fed)
    fed.world.until(datetime(2027, 5, 7, 7, 0, tzinfo=UTC))  # eight in London
    said = text_of(fed.athlete.taps("Missed 07:00", food(fed)))
    assert "\n07:00" not in said
    assert met(said, target(fed))


def test_a_day_that_the_list_cannot_meet_says_what_is_lacking(team: Team) -> None:
    add(team, "honey", "Honey", "Digests well")
    said = food(team).text
    assert "Not quite: " in said
    assert "Your list has nothing that is mostly protein" in said
    assert "Your list has nothing that is mostly fat" in said


def test_a_food_put_on_the_list_is_reckoned_with_at_once_and_not_held_back_by_the_menu_before(
    team: Team,
) -> None:
    add(team, "honey", "Honey", "Digests well")
    said = food(team).text
    assert "nothing that is mostly protein" in said
    assert "nothing that is mostly protein" in food(team).text  # and still at the second look
    add(team, "chicken", "Chicken breast, roasted", "Digests well")
    add(team, "olive", "Olive oil", "Digests well")
    add(team, "white rice, cooked", "White rice, cooked", "A favourite")
    said = food(team).text
    assert met(said, target(team))
    assert "nothing that is mostly" not in said
    rice = sum(float(g) for g in re.findall(r"White rice, cooked (\d+) g", said))
    honey = sum(float(g) for g in re.findall(r"Honey (\d+) g", said))
    assert rice > 1000 > 3 * honey
    # What has been eaten stays eaten when the list changes.
    team.athlete.taps("Ate 07:00")
    add(team, "salt", "Table salt", "Digests well")
    assert "Eaten: carbs" in food(team).text
    assert "\n07:00" not in food(team).text


def test_when_no_meal_is_left_what_is_left_over_is_said_and_not_forced(fed: Team) -> None:
    food(fed)
    for at in ("07:00", "10:00", "13:00", "16:00"):
        fed.athlete.taps(f"Ate {at}")
    assert "Today's meals are done" in text_of(fed.athlete.taps("Ate 19:00"))
    fed.athlete.presses("f:times")
    fed.athlete.writes("7:00")
    fed.world.later(days=1)
    said = food(fed).text
    assert "Not quite: carbs: at least 49 g too little" in said
    assert "Add one more meal today" in said
    assert "No meal is left today" in text_of(fed.athlete.taps("Ate 07:00"))


def test_meal_times_are_read_as_people_write_them(fed: Team) -> None:
    fed.athlete.presses("f:times")
    assert "1 to 8 times" in text_of(fed.athlete.writes("1 2 3 4 5 6 7 8 9"))
    assert "When do you eat?" in text_of(fed.athlete.writes("25:00"))
    assert "Meals at 06:30, 12:00, 18:30" in text_of(fed.athlete.writes("18:30 6:30, 12"))
    said = food(fed).text
    assert re.findall(r"^(\d\d:\d\d)  ", said, re.MULTILINE) == ["06:30", "12:00", "18:30"]


def test_a_food_from_an_eu_label_is_kept_as_the_label_says(team: Team) -> None:
    team.athlete.presses("f:label")
    team.athlete.writes("Corn cakes, thin")
    team.athlete.taps("EU or UK label")
    team.athlete.taps("Per 100 g")
    for figure in ("82", "2.5", "8", "1.6", "0.5"):
        team.athlete.writes(figure)
    # Annex XIV of Regulation (EU) No 1169/2011: 4 x 82 + 2 x 2.5 + 4 x 8 + 9 x 1.6 = 379 kcal
    assert "come to 379 kcal, not 250" in text_of(team.athlete.writes("250"))
    assert "come to 379 kcal, not 250" in text_of(team.athlete.writes("1046 kJ"))
    team.athlete.writes("1598 kJ")
    team.athlete.writes("6 g")
    team.athlete.taps("A favourite")
    team.athlete.taps("It varies")
    with team.world.session() as session:
        (row,) = session.exec(select(FoodRow)).all()
    assert row.figures["carb_g"] == 82
    assert row.figures["kcal"] == pytest.approx(382, abs=0.1)  # 1,598 kJ / 4.184
    assert row.figures["sodium_mg"] == pytest.approx(200)  # 0.5 g salt / 2.5
    assert (row.step_g, row.liking) == (6, "favourite")


def test_a_us_label_by_the_portion_is_turned_to_what_plans_count(team: Team) -> None:
    team.athlete.presses("f:label")
    team.athlete.writes("Breakfast squares")
    team.athlete.taps("US label")
    team.athlete.taps("Per portion")
    team.athlete.writes("40")
    team.athlete.writes("30")
    assert "cannot be more than 30 g" in text_of(team.athlete.writes("31"))
    for figure in ("4", "5", "2"):
        team.athlete.writes(figure)
    team.athlete.writes("150 mg")
    team.athlete.taps("Skip")
    team.athlete.taps("40 g")
    team.athlete.taps("Digests well")
    team.athlete.taps("It varies")
    with team.world.session() as session:
        (row,) = session.exec(select(FoodRow)).all()
    # (30 - 4) g without fibre in 40 g
    assert row.figures["carb_g"] == pytest.approx(65)
    assert row.figures["fibre_g"] == pytest.approx(10)
    assert row.figures["sodium_mg"] == pytest.approx(375)


@pytest.mark.parametrize("nonsense", ["", "abc", "🤷", "-3", "200", "1e9", "x" * 4096])
def test_a_label_figure_that_cannot_be_is_asked_again(team: Team, nonsense: str) -> None:
    team.athlete.presses("f:label")
    team.athlete.writes("Bread")
    team.athlete.taps("EU or UK label")
    team.athlete.taps("Per 100 g")
    assert "Carbohydrate, in g per 100 g?" in text_of(team.athlete.writes(nonsense))


def test_more_than_the_whole_is_refused_where_it_is_typed(team: Team) -> None:
    team.athlete.presses("f:label")
    team.athlete.writes("Bread")
    team.athlete.taps("EU or UK label")
    team.athlete.taps("Per 100 g")
    for figure in ("80", "5", "10"):
        team.athlete.writes(figure)
    assert "105 g in 100 g of food" in text_of(team.athlete.writes("10"))


def test_shopping_for_the_load_adds_up_its_days_and_packs_for_the_day(fed: Team) -> None:
    said = text_of(fed.athlete.taps("Shopping for the load", food(fed)))
    assert "For the load (2 days) and event day" in said
    whole, packed = said.split("To pack for event day")
    rice = float(re.search(r"White rice, cooked (\d+) g", whole)[1])  # type: ignore[index]
    day = re.search(r"White rice, cooked (\d+) g", packed)
    assert rice > (float(day[1]) if day else 0)


def test_shopping_with_a_list_that_falls_short_says_so(team: Team) -> None:
    add(team, "honey", "Honey", "Digests well")
    said = text_of(team.athlete.taps("Shopping for the load", food(team)))
    assert "With your list the plan can't be met on these days: 2 days out, 1 day out" in said


def test_a_food_is_marked_anew_and_taken_off(fed: Team) -> None:
    fed.athlete.presses("f:list")
    said = text_of(fed.athlete.taps("Honey"))
    assert "USDA National Nutrient Database" in said
    assert "Honey: never" in text_of(fed.athlete.taps("Never"))
    assert "Honey is removed from your list" in text_of(fed.athlete.taps("Remove from the list"))
    assert "Honey" not in food(fed).text


def test_before_the_week_the_usual_day_is_what_is_portioned(own_engine: Engine) -> None:
    team = onboarded(own_engine)
    for query, name, liking in FOODS:
        add(team, query, name, liking)
    said = food(team).text
    # Mira's answers at the start: 310 g of carbs, 140 g of protein, 55 g of fat
    assert "No plan for today, so your usual day: carbs 310 g, protein 140 g, fat 55 g" in said
    assert met(said, (310, 140, 55))


@pytest.mark.parametrize(
    "data",
    ["f", "f:", "f:x", "f:swap:999", "f:swap:x:y", "f:lock:999", "f:ate:99:99", "f:food:x",
     "f:mark:1:odd", "f:off:999", "f:mark"],
)  # fmt: skip
def test_an_odd_button_breaks_nothing(fed: Team, data: str) -> None:
    before = food(fed).text
    fed.athlete.presses(data)
    assert food(fed).text == before


def test_somebody_elses_food_cannot_be_touched(fed: Team) -> None:
    with fed.world.session() as session:
        row = session.exec(select(FoodRow)).first()
        assert row is not None
        row.athlete_id = 1
        session.add(row)
        session.commit()
        number = row.id
    assert "not on your list" in text_of(fed.athlete.presses(f"f:off:{number}"))
    with fed.world.session() as session:
        assert session.get_one(FoodRow, number).removed_at is None


def test_a_sticker_is_no_food(fed: Team) -> None:
    fed.athlete.presses("f:add")
    said = text_of(fed.athlete.writes("", kind=Kind.OTHER, media="sticker"))
    assert "stickers" in said
    assert "Which food?" in said


def test_what_is_plainly_no_food_is_not_held_for_one(fed: Team) -> None:
    food(fed)
    fed.athlete.taps("Ate something else")
    fed.coach.hears()
    said = text_of(fed.athlete.writes("can we talk about my posing tonight please"))
    assert "passed that on to Ravi" in said
    assert "What did you eat?" in said
    assert "posing tonight" in text_of(fed.coach.hears())


def test_the_coach_has_no_food_of_their_own_here(fed: Team) -> None:
    assert "don't know that command" in text_of(fed.coach.writes("/food"))


def test_yesterdays_menu_is_not_todays(fed: Team) -> None:
    food(fed)
    fed.athlete.taps("Ate 07:00")
    fed.world.later(days=1)
    said = food(fed).text
    assert "Eaten" not in said
    with fed.world.session() as session:
        assert len(session.exec(select(FoodDayRow)).all()) == 2
