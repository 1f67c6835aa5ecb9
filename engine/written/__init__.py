"""What people write to quantities: units, times, delays, a whole check-in (`oneline/`).

A reader returns the quantity or raises a named `ParseError`, and never guesses.
"""
