"""Who is who and who may what; what is kept of who did what; telling somebody.

History: `people.record` keeps who did what, as one of the kinds in `changes`: with what is kept with it
(`details`), its sentence, what follows from it and how it is taken back. At the end of a use case
each feature's `after` hooks see it (calendar files). `bot/week/snapshots.py` keeps what held before a
change, `bot/undo/kinds.py` (of figures) or `bot/undo/times.py` puts it back.

Telling somebody is `say_to(turn, reader, sentence)` (`telling`): it sets the reader's language; for
anybody but who acts, the sentence is given as a function. In tests every message is held against
its reader's language.

Two at once on PostgreSQL: the dispatcher locks whoever is concerned (`locks`, argued in
`deploy/past-one-machine.md`) and runs READ COMMITTED. What a use case writes must hang on people
whom it locks; athletes' turns share their coach, so what they write that is the coach's own (notes,
when the roster is made anew) comes after `hold_coaches`; what a duty is about is a `Subject`, a
kind of which it may have several a `Several` (`bot/core/timing/agenda.py`).
"""
