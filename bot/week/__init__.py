"""Rows to engine values: what is stored of a week, and the case made of a morning.

`load` reads a week, `cases` makes the case and gives stored decisions as objects, each read once
(`decision_of`). `weeks_of` gives every week of any number of athletes as rows aligned by days
out, for whoever compares, counts or exports.
"""
