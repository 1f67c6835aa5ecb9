"""Conversations as data: how they are asked, read, answered and ended.

What follows from a coach's on an athlete is bound by `of_own_athlete`, on an event of theirs by
`bot.plan.prep.of_own_event`: whose it is is seen to there. A step that fixed buttons answer needs no
reader of its own.
"""
