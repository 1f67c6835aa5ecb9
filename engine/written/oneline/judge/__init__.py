"""What each figure of a report is likely to be, learnt from reviewed mornings: a second opinion.

The grammar reads and asks; where it asks about figures that stand among words it does not know, and the
judge is as sure as the reviewed mornings made it, the morning is read. It takes nothing that the grammar
did not doubt, and nothing far from its owner's habit. To teach it: rows in `tests/shapes/corpus`, then
`python -m tests.shapes.train` (`--check` counts each table by a judge that has not seen it); a test fails
while the weights are older than corpus or traits.
"""
