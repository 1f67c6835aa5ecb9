"""`engine` is pure, `bot` goes through the dispatcher on a real database and a driven clock, `e2e`
runs a real `brimline run` against a Bot API stand-in on loopback. PostgreSQL comes from a wheel;
the network is closed; nothing sleeps.

What several tests need is played once and copied: within a process with `gone_on`
(`support/weeks.py`, `support/prepared.py`), and so are the days that pass right after
(`Team.morning`) and what is done first (`Team.once`); for a whole run with `once_a_run`
(`support/once.py`). A long list of sentences or modules is one test that names what it misses: each
item as a test of its own costs more than what is looked at. Any text is `any_text` (`st.text()`
alone takes seconds to begin with). Fixtures that every test may have stand in
`support/fixtures.py`. Processes are started with `started.Started` and `started.run`, which fork
them off one that has loaded everything. What is heavy is loaded by whoever first needs it
(`tests/bot/test_starting.py`), and patterns are `Late`: a start is paid for by every process of every
test.

`--database=postgresql` runs the bot's tests on PostgreSQL: those that take `own_engine`, `own_url` or
`team_at`. Who takes `any_engine` is run on both each time; only what is about one of them names it.

`-m soak` runs the long ones, of which `.ci/run` does the whole week over the Bot API, the
rehearsal, the command line, what looks after a running bot, kills and bad lines each time. `python
-m tests.bot.test_faults SEED FAULTS` cuts the power and loses answers for longer, all within one
process; a seed does the same again. `python -m tests.e2e.test_faults_for_real SEED FAULTS
[--postgresql] [--keep FOLDER]` does it to real processes (`support/shaken/`), in weeks of 250 faults
on a database of their own, and prints what happened, what was logged and what is wrong; there a seed
draws the schedule, and when the machine runs which process is not in it.

By hand: `bench.house` (the structure itself), `bench.deciding` (what a forecast and a morning cost),
`bench.production answers | each | profile` and `bench.growth 1000 100000` (what an answer costs, what
the server's connections wait for, whether it grows with the number of people), `bench.held` (how
long a morning keeps others from writing), `bench.burst` (how soon an alert is there), `bench.takeover`
(how soon another process goes on after a kill),
`bench.light` (disk and memory), each as `python -m tests.bench.NAME`. `python -m tests.mutation`
prints the small slips in deciding that no test notices (`--only limits --most 20 --seed 7`: what you
mend from one seed, report from another; `--phrases` leaves ways of saying a complaint out; what
nothing can tell apart stands in `mutation/alike.py` with its reason).
"""
