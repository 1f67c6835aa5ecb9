"""The second ear: a small classifier over words, letters and kinds of words, in English and German.

It hears what no phrase table foresaw ("there's a fish flopping in my ribs"). What it takes for a
complaint is a suspicion, which leads to one question and never to a flag.
"""

from engine.symptoms.ear.hearing import SecondOpinion, suspicions

__all__ = ["SecondOpinion", "suspicions"]
