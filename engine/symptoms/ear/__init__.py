"""The second ear: a small classifier over words, letters and kinds of words, in English and German.

It hears what no phrase table foresaw ("there's a fish flopping in my ribs"). What it takes for a
complaint is a suspicion, which leads to one question and never to a flag. On what the tables found it
has a second vote.
"""

from .hearing import suspicions
from .second_vote import passed_over

__all__ = ["passed_over", "suspicions"]
