"""Plans: drafted, typed, reviewed, put in force, learnt from; limits and templates.

A plan passes its review before it goes live (`review/gate`); a *warning* waits for the coach's reason,
kept with that version.

What a day is for stands with it (`DayTarget.phase`); ask `plan.load_days`, `plan.first_load_day`,
`plan.loading(out)`, `plan.load_g`, never a fixed day; in words it is `bot.words.phases.of_day`. A
plan of before phases loads 3 to 1 days out; a new one is named off its figures
(`engine/planning/drafting/template.py`) when it is set.
"""
