"""What each figure of a report is likely to be, learnt from reviewed mornings: a second opinion.

The grammar reads and asks. Where it asks about figures that stand among words it does not know and the
judge is sure, the morning is read; where it read a figure that the judge is sure is something else, it
is asked about. To teach it: rows in `tests/shapes/corpus`, then `python -m tests.shapes.train` (with
`--check`, each table is counted by a judge that has not seen it). A test fails while the weights are
older than corpus or reading.
"""
