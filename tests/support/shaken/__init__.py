"""The shipped bot as real processes that everything happens to (`tests.e2e.test_faults_for_real`).

    schedule.py  what happens and what people write, drawn from a seed
    line.py      the Bot API stand-in, which fails as it is told to
    place.py     where the database lies: a small disk that can be full, a server that can crash
    wall.py      the wall clock of all processes: a file, so that it can be set
    process.py   the bot as a process: the shipped command, on that clock, with each update counted
    processes.py two such processes, started, frozen and killed
    people.py    two coaches and their athletes in the week before an event
    play.py      a chapter: a week of such people on a database of its own, with so many faults
    checks.py    what must be so after any faults whatever

A seed draws the schedule: which faults, after how many milliseconds, and who writes what before. When
the machine runs which process is in no seed, so that the same seed meets the bot at other lines of it
each time; what is found is therefore kept with its database and logs (`--keep`).
"""
