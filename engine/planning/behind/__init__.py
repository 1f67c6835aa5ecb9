"""The weeks that are over: what they show, what they teach, what comes of it next time.

`learning` (what is believed of a body), `hindsight` (forecasts and changes weighed), `next_time`
(three sentences; words in `bot/debrief/words_deeper.py`). Is it true? `pytest -m soak
tests/engine/test_learning.py` asks virtual athletes (`engine/bench/recovery.py`), `python -m
tests.bench.imported` the same of weeks from a sheet.
"""
