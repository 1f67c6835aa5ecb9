"""From a morning to the day's carbs: `gates -> rules -> limits`.

`gates`: may we decide at all. `rules`: the first matching rule proposes on the `facts` that
`gather` finds. `engine.values.limits` have the last word. `decide(case) -> Decision`, with its
trace; `reason` says why in sentences.

How large a change is: `sizing`, of a rule by itself (small until both mornings say more, and again
once a trial has shown the load; a first load is moved towards the usual one) and beside a forecast
(what a rule lets it do is `rules.Forecast`). `beliefs` follows an athlete through the
weeks and `foresight` asks them what a dose would lead to; it proposes, shows or neither, as the
coach has set (`ForecastUse`).

Decisions are stored whole with the table's number and replay to the same result (`replay`); `kept`
alone knows how older versions wrote them.
"""
