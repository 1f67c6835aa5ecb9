"""The deciding part of Brimline: pure functions over plain values.

Nothing in here reads a clock, a file, a network or a database; `__main__` alone reads the case file
that it is handed. The bot depends on the engine, never the reverse; a test holds that.
"""
