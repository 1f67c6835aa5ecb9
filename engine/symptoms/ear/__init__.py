"""The second ear: a small classifier over words, letters and kinds of words, in English and German.

It hears what no phrase table foresaw ("there's a fish flopping in my ribs"). What it takes for a
complaint is a suspicion, which leads to one question; a complaint it is certain of has a name, and is
one.

It is a linear model of the words and small networks of what a sentence encoder makes of the meaning,
trained on the invented sentences in `tests/ear/corpus` (write both sides):
`pip install '.[train]'`, `python -m tests.ear.train`, `--check --worst 30`. It judges what the
tables found, too: what sounds harmless becomes a question or is let pass, what sounds graver is
asked about, a sure warning is never dropped (thresholds: `judging.py` beside this folder,
`hearing.py`), and one told beyond doubt is called by name (`model.py`, which learns from headings
that name a symptom, and nothing from those that end in `mixed`). Last, what tables and ear found in
the whole of a text is weighed together (`hearing.py`; `python -m tests.ear.weigh` learns how): most
of what is asked in vain goes there. A test fails while the weights are older than corpus or reading;
`tests/ear/held_out.tsv` is never learnt from.
"""

from engine.symptoms.ear.hearing import Plain, SecondOpinion, called, suspicions

__all__ = ["Plain", "SecondOpinion", "called", "suspicions"]
