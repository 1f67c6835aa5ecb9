"""The second ear: a small classifier over words, letters and kinds of words, in English and German.

It hears what no phrase table foresaw ("there's a fish flopping in my ribs"). What it takes for a
complaint is a suspicion, which leads to one question; a complaint it is certain of has a name, and is
one.
"""

from engine.symptoms.ear.hearing import Plain, SecondOpinion, called, suspicions

__all__ = ["Plain", "SecondOpinion", "called", "suspicions"]
