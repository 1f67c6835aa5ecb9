"""The body by the hour (published loads) and by the day, of several kinds (`structures`).

What is believed of one athlete is a set of particles, each of one kind; from them comes what a dose
would lead to.
"""
