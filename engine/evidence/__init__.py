"""Every number the engine rests on, each with its unit and where it comes from.

`source` holds the two types, the other modules the numbers, one module for each part of the engine
that uses them.
"""
