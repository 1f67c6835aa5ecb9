"""Somebody has everything deleted that is kept about them.

An athlete's rows go by `bot/membership/my_data/owned.py`; a coach's row becomes a place without a
name where athletes' records need it (`removal.remove`).
"""
