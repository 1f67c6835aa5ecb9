"""Several events ahead of one athlete.

One is `active` and counts; those that `waits` follow by day (`season`: `choose_active` picks,
`take_over` goes on the morning after). What is planned for one that waits names its event
(`cards.OfEvent`, `planning.meant_event`, `naming` and, in words, `meant_for`; `load.event_ahead`);
`current_event` never is it.
"""
