"""Why a database or a file cannot be used, in words that say what to do about it."""

from __future__ import annotations

import errno

DATABASE_URL = "BRIMLINE_DATABASE_URL"

# By the beginning of SQLite's own name for it (https://sqlite.org/rescode.html).
_SQLITE = {
    "SQLITE_FULL": "the disk is full; make room on it",
    "SQLITE_IOERR": "the disk is full or does not work; make room on it, or have it looked at",
    "SQLITE_READONLY": "may be read but not written; file and folder have to belong to the user "
    "that runs the bot, on a disk that may be written",
    "SQLITE_CANTOPEN": f"there is no such file to be opened by this user; is {DATABASE_URL} right, "
    "and may this user write in its folder?",
    "SQLITE_NOTADB": f"the file is no database; is {DATABASE_URL} right?",
    "SQLITE_CORRUPT": "the file is damaged; stop the bot and restore the last back-up",
    "SQLITE_BUSY": "another program keeps the file locked; stop that, or wait",
    "SQLITE_LOCKED": "another program keeps the file locked; stop that, or wait",
}
# A failed connection has no SQLSTATE, only the words of the server or of libpq.
_POSTGRESQL = {
    "authentication failed": f"the server refuses user or password; see {DATABASE_URL}",
    "no password supplied": f"the server wants a password; add it to {DATABASE_URL}",
    "does not exist": f"the server has no such user or database; make them, or see {DATABASE_URL}",
    "no pg_hba.conf entry": "the server lets nobody in from here; its pg_hba.conf says who may",
    "too many clients": "the server has no connection left; raise its max_connections",
    "starting up": "the server is starting up; try again in a minute",
    "translate host name": f"there is no server of that name; is the host in {DATABASE_URL} right?",
    "resolve host": f"there is no server of that name; is the host in {DATABASE_URL} right?",
}
_SQLSTATE = {  # by the server's code (PostgreSQL documentation, appendix A)
    "25006": "the server may be read but not written (is it a standby?)",
    "53100": "the server's disk is full; make room on it",
    "53300": "the server has no connection left; raise its max_connections, or stop something",
}
_AWAY = f"the server does not answer; is it running? Are host and port in {DATABASE_URL} right?"
_FILES = {
    errno.ENOSPC: "the disk is full; make room on it",
    errno.EROFS: "the disk may be read but not written",
    errno.EACCES: "this user may not go there; is it the one that runs the bot?",
    errno.ENOENT: "there is no such file or folder",
}


def cause(error: Exception) -> str | None:
    """What it is and what to do, without anything that was stored; None for what is no such trouble."""
    if isinstance(error, OSError):
        what = _FILES.get(error.errno or 0) or error.strerror
        return f"{error.filename}: {what}" if error.filename and what else what
    raised = getattr(error, "orig", None)
    code = getattr(raised or error, "sqlite_errorname", None)
    if code is not None:
        return next((told for name, told in _SQLITE.items() if str(code).startswith(name)), None)
    if raised is None:
        return None
    state = getattr(raised, "sqlstate", None)
    if state is not None:
        return _SQLSTATE.get(state)
    said = str(raised).lower()
    return next((told for words, told in _POSTGRESQL.items() if words in said), _AWAY)
