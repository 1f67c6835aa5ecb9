"""What an athlete asks for in words: which view of their own plan answers it.

A linear model over words and letters. To teach it: sentences under their view, or under `none`, in
`tests/asked/corpus`, then `python -m tests.asked.train` (`--check --worst 30`); it is counted on
`tests/asked/held_out.tsv`, which is never learnt from, and a test fails while the weights are older
than corpus or reading. What is asked in plain words of the day's figures alone is served at once
(`engine/written/questions.py`, `bot/dialogue/requests.py`); what is heard looser goes to a
person, with the view beside.
"""

from engine.asked.views import View, view_asked_for, views_asked_for

__all__ = ["View", "view_asked_for", "views_asked_for"]
