"""The day that all is for: its kind and place, look and weigh-in, stage, travel and end.

What an event asks for (`EventRow.asks`: look, weigh-in) becomes `Event.target` and the forecast's
`engine/model/aim.py`.

Of several ahead of one athlete one is `active` and counts; those that `waits` follow by day
(`season`: `choose_active` picks, `take_over` goes on the morning after). What is planned for one
that waits names its event (`cards.OfEvent`, `planning.meant_event`, `naming` and, in words,
`meant_for`; `load.event_ahead`); `current_event` never is it.
"""
