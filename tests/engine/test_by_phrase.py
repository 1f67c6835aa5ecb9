"""No way of saying a complaint is lost from the tables without a test that tells."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from tests.engine.by_phrase import every_way, told

#: Nobody can tell whether these are there: a word of them is put right to another one first, as it is
#: typed (breathy: breath), a figure of speech goes before (dead on my feet), what is sure hears the same
#: (wish i was dead), they are never found for sure (i think i'm dying), or no text is so (soaking).
HEARD_BY_NONE = r"""
English chest-pain (in doubt): chesty
English breathlessness: cnt breathe
English breathlessness (in doubt): breathy
English breathlessness: (?:sentence|words?)(?: [\w']+){0,5} (?:two|three|2|3|several)(?: [\w']+){0,1} breaths
English breathlessness: (?:two|three|2|3|several) breaths(?: [\w']+){0,4} (?:sentence|few words)
English breathlessness (in doubt): (?:finish|end|say|speak|read|get through)(?: [\w']+){0,3} (?:sentences?|sentances?|words?|calls?)(?: [\w']+){0,3} without(?: [\w']+){0,3} (?:breath\w*|air|gasp\w*|puff\w*|stopping|pausing)
English limb-weakness: paralyz\w*
English self-harm (in doubt): wish i (?:was|were) dead
English self-harm (in doubt): end it all
English unwell: i think i'm dying
English starving (in doubt): (?:should|going to|gonna|want to|wanna|might|will|i'll|need to)(?: [\w']+){0,1} (?:just )?(?:stop|quit) eating(?! (?:at|by|after) \w+ ?(?:pm|am|o'clock)?)
English low-mood: suicidally
English low-mood (in doubt): sick of (?:it all|everything|life)
English shaky: (?:low|dropped) blood sugar
English exhaustion: dead on my feet
English heavy-bleeding: (?:soak\w*|flood\w*|bleed\w*|bled)(?: [\w']+){0,2} (?:through )?(?: [\w']+){0,2} (?:pads?|tampons?|mattress)(?: [\w']+){0,4} (?:hour|minutes|min|mins|half|night)
German fainting (in doubt): lag(?: [\w']+){0,4} (?:am|auf dem) boden
German limb-weakness: muskelversagen im alltag
German confusion: verwirrter
German confusion (in doubt): (?:erkannt\w*|erkenne)(?: [\w']+){0,4} nicht
German severe-headache: (?:schadel|kopf)(?: [\w']+){0,2} (?:zerspringen|sprengt|gesprengt)
German low-mood (in doubt): heulkrampf
German low-mood (in doubt): heulanfall
German blurred-vision: verschwommene sicht
German cramps: krampft
German stomach-pain: bauchweh
German fast-heart (in doubt): ruhepuls(?: [\w']+){0,3} [78]\d(?: [\w']+){0,3} (?:statt|sonst|normal|normalerweise|letzte woche)(?: [\w']+){0,3} [345]\d
German dizzy: schwiemelig
"""


def test_what_the_tables_were_written_for_is_heard_without_the_second_ear() -> None:
    assert [one for one in told() if one.missed()] == []


def test_every_way_of_the_tables_has_a_sentence_that_it_alone_hears() -> None:
    heard = {way for one in told() for way in one.told_of()}
    unheard = {str(way) for way in every_way() if way not in heard}
    known = set(HEARD_BY_NONE.strip().splitlines())
    # Write a sentence that it hears into tests/engine/by_phrase, or leave out what another one hears.
    assert sorted(unheard - known) == []
    assert sorted(known - unheard) == []
