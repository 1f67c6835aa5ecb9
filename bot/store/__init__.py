"""Tables, sessions, transactions and migrations: the schema is one document.

To change a table: the class in `tables/`, then `python -m bot.store.migrate NUMBER "what changed"`;
read the revision, and run the tests, which hold models and revisions against each other on both
databases. A table with `athlete_id` or `event_id` is the athlete's in `/mydata` and goes with
`/delete_my_data`; any other is declared in `bot/membership/my_data/owned.py`. Then `python -m
bot.membership.my_data.schema` writes the published schema anew; tests fail for what was forgotten.

A hot read is a statement built once, at the top of its module, with `bindparam` (a list:
`expanding=True`; a join: `select_from` first), and put with `params=`: from the second time on it
is read plainly (`reading`), its words, values and columns worked out once and put straight to the
driver (`straight`), at a fifth of what the mapper takes; one built for a single read costs ten
times as much. What every turn or week asks is read at once (`people.sender`, `load.current_week`),
with an `exists()` for what most have none of.

Reading twice costs a statement: `remembering` keeps an answer until the session writes to that
table, and `remember` puts there what came along with another read. What goes past the session
(`connection()`) makes it forget everything; `looked_up` is for what writes nothing.

Writing waits (`writing`): a row that was added goes to the database, in one plain statement and
without the unit of work, once a read of its own table, `id_of` or the commit asks for it. One that
was read and is changed is written likewise: only what is new is added to the session. So take a
number with `id_of(row)`, never `row.id` of a new row; flush only where an order or a constraint
wants it. On PostgreSQL, where each statement is a round trip, `id_of` draws the number ahead
and all new rows of a turn go in one statement at its end, so do not flush between two,
and expect gaps: what a turn did not use is lost. What is known of rows before they are written is
told with `remember_ahead`. The tables have no relations and no inheritance, and `shape_of` refuses
a class that has.

What takes more than a few milliseconds to work out goes through `worked_out` (`working_out`), which
sees to it that nobody waits meanwhile: a module's pure function of the engine's values, no rows.

Only looking is `db.looking`, never a plain `Session`: on PostgreSQL its ROLLBACK would make the
driver drop every prepared statement of the connection, and the next answers would have theirs
planned anew, at twice the work for the server.
"""
