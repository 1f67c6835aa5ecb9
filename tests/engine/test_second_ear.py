"""The second ear: hears complaints that no phrase table foresaw, and lets the rest pass."""

from __future__ import annotations

import csv
from functools import cache
from pathlib import Path
from time import process_time

import pytest

from engine.symptoms import WARNINGS, Concern, screen
from engine.symptoms.ear import suspicions
from engine.symptoms.ear.model import CLASSES, Model, model
from engine.symptoms.ear.reading import BUCKETS, fold
from engine.symptoms.names import Symptom
from tests.ear import corpus

#: Invented apart from the corpus, in other images; training never reads it.
HELD_OUT = Path(corpus.__file__).with_name("held_out.tsv")
with HELD_OUT.open(encoding="utf-8") as file:
    ROWS = [tuple(row) for row in csv.reader(file, delimiter="\t", quoting=csv.QUOTE_NONE)]
sentences = cache(corpus.sentences)


def heard(text: str) -> bool:
    return bool(suspicions(text, [text]))


def share_heard(language: str, *kinds: str) -> float:
    texts = [text for spoken, kind, text in ROWS if spoken == language and kind in kinds]
    assert len(texts) >= 20
    return sum(map(heard, texts)) / len(texts)


COMPLAINTS = [
    ("one moment I was at the stove, then the tiles were cold on my cheek", Concern.EMERGENCY),
    ("there's a fish flopping about in my ribs", Concern.EMERGENCY),
    ("my heart keeps tripping over itself", Concern.EMERGENCY),
    ("I don't see why I should go on living", Concern.EMERGENCY),
    ("mein Herz stolpert dauernd", Concern.EMERGENCY),
    ("hat alles keinen Sinn mehr", Concern.EMERGENCY),
    ("mir ging kurz das Licht aus, lag dann im Flur", Concern.EMERGENCY),
    ("the room keeps spinning when I turn over", Concern.BODY),
    ("mir ist ganz schummrig und flau", Concern.BODY),
    ("emptied the whole cupboard in the dark and couldn't stop", Concern.MOOD),
    ("hab den ganzen Tag geweint, alles ist leer", Concern.MOOD),
]
NOTHING_WRONG = [
    "the price floored me",
    "meine Waage hat einen Anfall",
    "my laptop had a heart attack",
    "die Waage spinnt heute",
    "60.2 5 3.5",
    "60,2 5 3,5 alles gut",
    "all meals eaten, slept well",
    "bin auf dem Weg ins Gym",
    "can I swap the rice for potatoes?",
    "darf ich Kaffee trinken?",
    "thanks coach, see you tomorrow",
    "danke, bis morgen",
    "the bikini arrived and it fits",
    "der Zug hat Verspätung",
]


@pytest.mark.parametrize(("text", "concern"), COMPLAINTS)
def test_what_people_say_of_themselves_in_pictures_is_heard_for_what_it_is(
    text: str, concern: Concern
) -> None:
    assert [s.concern for s in suspicions(text, [text])] == [concern]


@pytest.mark.parametrize("text", NOTHING_WRONG)
def test_figures_of_speech_check_ins_and_small_talk_are_let_pass(text: str) -> None:
    assert suspicions(text, [text]) == ()


@pytest.mark.parametrize("language", ["en", "de"])
def test_most_of_what_training_never_saw_is_heard_by_this_ear_alone(language: str) -> None:
    assert share_heard(language, "emergency") >= 0.85
    assert share_heard(language, "emergency", "body", "mood") >= 0.85
    assert share_heard(language, "harmless") <= 0.12


def test_thumbs_that_slip_and_missing_dots_hide_little() -> None:
    found = [text for _, kind, text in ROWS if kind != "harmless" and heard(text)]
    slipped = [swapped(text) for text in found]
    assert sum(map(heard, slipped)) / len(found) >= 0.8
    undotted = "mir wird schwarz vor den Aeuglein, grosse Uebelkeit"
    assert fold("mir wird schwarz vor den Äuglein, große Übelkeit") == fold(undotted)


def swapped(text: str) -> str:
    """Two letters of its longest word in each other's place."""
    word = max(text.split(), key=len)
    at = len(word) // 2
    return text.replace(word, word[: at - 1] + word[at] + word[at - 1] + word[at + 1 :])


def test_a_complaint_within_a_long_message_is_quoted_by_its_own_sentence() -> None:
    text = (
        "Morning! 61.2 today. There's a fish flopping about in my ribs. Tan is booked for friday."
    )
    [suspicion] = suspicions(text, [text])
    assert suspicion.words == "There's a fish flopping about in my ribs"


def test_of_a_sentence_half_understood_only_the_rest_is_heard() -> None:
    text = "no headache, but there's a fish flopping about in my ribs"
    rest = "there's a fish flopping about in my ribs"
    assert [s.words for s in suspicions(text, [rest])] == [rest]
    assert suspicions("my sister fainted, there was a fish on the menu", ["was a fish"]) == ()
    assert suspicions(text, []) == ()


def test_the_gravest_comes_first() -> None:
    text = "Mir ist ganz schummrig. Mein Herz stolpert dauernd."
    assert [s.concern for s in suspicions(text, [text])] == [Concern.EMERGENCY, Concern.BODY]


@pytest.mark.parametrize(
    ("text", "symptom"),
    [
        ("the room keeps tilting when I look up", Symptom.DIZZY),
        ("only a few drops on the loo since yesterday lunchtime", Symptom.NO_URINE),
        ("a pig in a bikini is all I see in the mirror", Symptom.BODY_HATE),
        ("meine Füße passen in keine Schuhe mehr, so dick sind die", Symptom.SWELLING),
        ("den ganzen Tag nur ein paar Tropfen auf dem Klo", Symptom.NO_URINE),
        ("nichts macht mir mehr Freude, seit Wochen", Symptom.LOW_MOOD),
    ],
)
def test_a_milder_complaint_told_beyond_doubt_is_called_by_its_name(
    text: str, symptom: Symptom
) -> None:
    assert (symptom, True) in {(hit.symptom, hit.sure) for hit in screen(text).hits}


@pytest.mark.parametrize(
    "text",
    [
        "can't believe it's only four days!!",
        "won't be home before nine, I'll weigh then",
        "off to bed, talk tomorrow",
        "so ich hau mich hin, schlaf gut",
        "sitz am Bahnsteig fest, Gewicht kommt später",
        "geht statt Apfel auch ne Birne",
        "schick dir die Liste wenn ich am Rechner sitz",
    ],
)
def test_the_days_business_is_nobodys_complaint(text: str) -> None:
    read = screen(text)
    assert not read.hits and not read.suspicions


@pytest.mark.parametrize("text", ["my left ear rings", "rash on both elbows since the tan"])
def test_what_has_no_name_here_is_asked_about_and_called_by_no_other(text: str) -> None:
    read = screen(text)
    assert read.suspicions and not read.hits


def test_what_may_be_graver_than_it_sounds_is_asked_about_and_not_called_by_a_milder_name() -> None:
    for text in (
        "I don't see the point in being here after saturday",
        "nach Samstag brauch ich für gar nichts mehr einen Plan",
    ):
        read = screen(text)
        assert read.suspicions or {hit.symptom for hit in read.hits} & WARNINGS


@pytest.mark.parametrize(
    "text",
    [
        "sister typing. she answers everything with thursday",
        "husband here: she kissed the doorframe and salted the dog's bowl",
        "Papa schreibt. er hat Handy und Ring auf den Tisch gelegt",
    ],
)
def test_who_takes_up_an_athletes_phone_to_tell_of_her_is_asked_about(text: str) -> None:
    assert screen(text).suspicions or screen(text).hits


def test_who_tells_of_people_that_write_is_nobody_who_writes_for_an_athlete() -> None:
    for text in ("my sister is a typist, she loves it", "Papa schreibt Krimis, er liebt das"):
        assert not screen(text).suspicions


def test_in_the_is_nobody_who_speaks_of_themself() -> None:
    """ "im" is "I'm" in one language and "in the" in the other, where it vouches for nothing."""
    assert not any(hit.sure for hit in screen("navi verwirrt, fährt im kreis").hits)
    assert any(hit.sure for hit in screen("im blacking out").hits)


def test_a_suspicion_is_no_hit() -> None:
    text = "a fish keeps turning over inside me"
    screening = screen(text)
    assert screening.suspicions
    assert screening.hits == ()
    assert screening.symptoms == frozenset()


@pytest.mark.parametrize(
    "text", ["", " ", "\n\n", ".", "🙂", "?!", "\x00", "a" * 20_000, "a, " * 9_000]
)
def test_anything_can_be_listened_to(text: str) -> None:
    assert suspicions(text, [text]) == ()


def test_the_weights_were_learnt_from_this_corpus_and_read_as_it_was_read() -> None:
    # Otherwise: python -m tests.ear.train
    assert model().corpus == corpus.digest()


def test_packed_weights_come_back_as_they_were_and_strange_ones_are_refused() -> None:
    packed = model().packed()
    again = Model.unpacked(packed)
    assert again.packed() == packed
    assert len(packed) < 650_000
    assert again.weights.shape == (BUCKETS, len(CLASSES))
    with pytest.raises(ValueError, match="weights are of ear-0"):
        Model.unpacked(packed.replace(Model.ID.encode(), b"ear-0", 1))


def test_the_same_words_always_sound_the_same() -> None:
    # Fixed figures: other ones mean that reading, weights or arithmetic have changed.
    for text in ("my heart is doing backflips", "die Waage spinnt"):
        first = model().chances(text)
        assert model().chances(text) == first
        assert Model.unpacked(model().packed()).chances(text) == first
        assert sum(first) == pytest.approx(1.0)


def test_the_corpus_is_as_large_as_it_is_meant_to_be_and_says_each_thing_once() -> None:
    for language in ("en", "de"):
        mine = [s for s in sentences() if s.language == language]
        assert len(mine) >= 10_000
        assert sum(s.by_hand for s in mine) >= 8_000
        for kind in corpus.KINDS:
            assert sum(s.kind == kind for s in mine) >= 900
    assert len({s.text.lower() for s in sentences()}) == len(sentences())


def test_nothing_held_out_is_in_the_corpus() -> None:
    learnt = {fold(s.text) for s in sentences()}
    assert [text for _, _, text in ROWS if fold(text) in learnt] == []


def test_listening_takes_a_few_milliseconds_a_sentence() -> None:
    texts = [text for _, _, text in ROWS]
    suspicions(texts[0], texts[:1])
    started = process_time()
    for text in texts:
        suspicions(text, [text])
    # three times what is meant, for slow machines
    assert (process_time() - started) / len(texts) < 0.015


@pytest.mark.parametrize(
    "text",
    [
        "not sure", "I don't know", "i dont know.", "no idea", "maybe", "hard to say", "one moment",
        "I think so", "I'm here", "can't come", "im Ernst", "bin dann mal weg", "hab Hunger",
        "it's 2 pm I think", "I think it's at 2", "um zwei glaub ich", "das Übliche glaub ich",
        "keine Ahnung", "weiß nicht", "weiß ich grad nicht", "schwer zu sagen", "nicht sicher",
    ],
)  # fmt: skip
def test_what_leaves_a_question_open_is_no_complaint(text: str) -> None:
    read = screen(text)
    assert not read.hits and not read.suspicions


@pytest.mark.parametrize(
    ("text", "symptom"),
    [("I don't know where I am", Symptom.CONFUSION), ("weiß nicht wo ich bin", Symptom.CONFUSION)],
)
def test_what_is_not_known_may_be_one(text: str, symptom: Symptom) -> None:
    assert symptom in {hit.symptom for hit in screen(text).hits}


def test_figures_between_commas_are_not_listened_to_by_themselves() -> None:
    # cut at its commas this has a piece "2 5 3", in which there is nothing to hear
    assert suspicions("60,2 5 3,5", ["60,2 5 3,5"]) == ()
    assert suspicions("2 5 3, 9 4 9", ["2 5 3, 9 4 9"]) == ()


def test_dark_urine_is_in_no_name_where_nothing_was_said_of_urine() -> None:
    heard = {hit.symptom for hit in screen("done! ate two pizzas and my legs are puffy").hits}
    assert Symptom.MUSCLE_BREAKDOWN not in heard and Symptom.SWELLING in heard
