"""Drawing pictures for a phone: pixels, colours and type; no database, clock or chat.

Values in, `Canvas` (`canvas`) out, PNG through `drawn`; texts get a `room`, so that the longest
words shrink and at last are cut; values travel in the outbox row, so new fields need defaults. A
table in a chat is `bot/words/figures.py`; the outbox makes it type of one width. Render both
languages and look.
"""
