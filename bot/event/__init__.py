"""The day that all is for: its kind and place, look and weigh-in, stage, travel and end.

`season/` holds several of them. What an event asks for (`EventRow.asks`: look, weigh-in) becomes
`Event.target` and the forecast's `engine/model/aim.py`.
"""
