"""Structured logs that cannot hold health data: what is not on the list does not come through.

Our own lines are a fixed phrase and named values out of KEYS: ids, kinds, counts, durations, names
of error classes. Lines of libraries keep their logger, their place and their template, but
never the values filled in (httpx would print the bot's token, SQLAlchemy a person's weight). An
exception is told by its class and by our own frames, never by its text.
"""

from __future__ import annotations

import logging
import re
import sys
import traceback
from collections import Counter
from collections.abc import MutableMapping
from pathlib import Path
from types import TracebackType
from typing import Any, Literal

import structlog

KEYS = frozenset(
    {
        "agenda_id", "attempts", "chat_id", "code", "count", "database", "decision_id", "due_at",
        "duration_ms", "error", "event", "frames", "kind", "level", "library", "listen", "logger",
        "method", "mode", "name", "outbox_id", "outbox_ids", "person_id", "place", "pid", "port",
        "queue", "revision", "seconds", "signal", "status", "timestamp", "update_id", "username",
        "version",
    }
)  # fmt: skip
WITHHELD = "(withheld)"
OWN_PACKAGES = ("bot", "engine")
QUIET_LIBRARIES = ("httpx", "httpcore", "telegram", "apscheduler", "alembic", "tornado", "asyncio")

_OWN_ROOT = Path(__file__).parents[2]
_PHRASE = re.compile(r"[A-Za-z ,;:'()-]{1,120}")  # words only: no figures, so no measurements
_WORD = re.compile(r"[\w.:/+<>|-]{0,200}", re.ASCII)  # ids, kinds and class names: no sentences

EventDict = MutableMapping[str, Any]

_errors: Counter[str] = Counter()


def errors_logged() -> dict[str, int]:
    """How many errors this process has logged since its start, by class of error."""
    return dict(_errors)


def set_up_logs(level: str, form: Literal["json", "console"]) -> None:
    """Send everything that is logged in this process to standard error, through the list."""
    own = [
        structlog.contextvars.merge_contextvars,
        structlog.stdlib.add_log_level,
        structlog.stdlib.add_logger_name,
        _stamp,
        tell_exception,
        only_known_keys,
    ]
    structlog.configure(
        processors=[*own, structlog.stdlib.ProcessorFormatter.wrap_for_formatter],
        logger_factory=structlog.stdlib.LoggerFactory(),
        wrapper_class=structlog.stdlib.BoundLogger,
        cache_logger_on_first_use=False,
    )
    renderer: Any = (
        structlog.processors.JSONRenderer()
        if form == "json"
        else structlog.dev.ConsoleRenderer(colors=sys.stderr.isatty())
    )
    handler = logging.StreamHandler(sys.stderr)
    handler.setFormatter(
        structlog.stdlib.ProcessorFormatter(
            foreign_pre_chain=[foreign_record, *own[1:]],
            use_get_message=False,
            pass_foreign_args=True,
            processors=[structlog.stdlib.ProcessorFormatter.remove_processors_meta, renderer],
        )
    )
    root = logging.getLogger()
    root.handlers[:] = [handler]
    root.setLevel(level)
    for name in QUIET_LIBRARIES:
        logging.getLogger(name).setLevel(logging.WARNING)
    # A tick that finds the last one still at work says so each time; the next one catches up.
    logging.getLogger("apscheduler").setLevel(logging.ERROR)
    logging.captureWarnings(capture=True)
    sys.excepthook = _log_uncaught


def only_known_keys(_logger: Any, _method: str, event: EventDict) -> EventDict:
    """Drop every key that is not on the list, and every value that could be more than a name."""
    kept: EventDict = {key: _plain(value) for key, value in event.items() if key in KEYS}
    phrase = event.get("event")
    library = event.get("library") is True
    if not library and not (isinstance(phrase, str) and _PHRASE.fullmatch(phrase)):
        phrase = WITHHELD
    kept["event"] = phrase
    if event.get("level") in ("error", "critical"):
        _errors[str(kept.get("error") or "other")] += 1
    # structlog's own bookkeeping, taken out again by remove_processors_meta.
    kept.update({key: event[key] for key in ("_record", "_from_structlog") if key in event})
    return kept


def tell_exception(_logger: Any, _method: str, event: EventDict) -> EventDict:
    """Put the classes of an exception and its causes, and our own frames, in its place."""
    raised = event.pop("exc_info", None)
    if raised is True:
        raised = sys.exc_info()
    if isinstance(raised, tuple):
        raised = raised[1]
    if isinstance(raised, BaseException):
        event["error"] = error_name(raised)
        event["frames"] = own_frames(raised.__traceback__)
    return event


def foreign_record(_logger: Any, _method: str, event: EventDict) -> EventDict:
    """A library's line: its template and place, without the values filled in."""
    record: logging.LogRecord = event["_record"]
    templated = bool(event.pop("positional_args", None)) and isinstance(record.msg, str)
    event["event"] = record.msg if templated else WITHHELD
    event["library"] = True
    event["place"] = f"{record.module}:{record.lineno}"
    event["exc_info"] = record.exc_info
    return event


def error_name(error: BaseException) -> str:
    """The class of an error, and of those that caused it: "DataError<NumericValueOutOfRange".

    A database's own code goes along ("OperationalError:SQLITE_FULL"), since its classes are wide.
    """
    names: list[str] = []
    current: BaseException | None = error
    while current is not None and len(names) < 4:
        code = getattr(current, "sqlite_errorname", None) or getattr(current, "sqlstate", None)
        names.append(type(current).__name__ + (f":{code}" if isinstance(code, str) else ""))
        current = current.__cause__
    return "<".join(names)


def own_frames(trace: TracebackType | None) -> list[str]:
    """Where in our own code an exception passed through, outermost first."""
    return [
        f"{Path(frame.filename).relative_to(_OWN_ROOT).as_posix()}:{frame.lineno}:{frame.name}"
        for frame in traceback.extract_tb(trace)
        if _is_own(Path(frame.filename))
    ]


def _is_own(path: Path) -> bool:
    return path.is_relative_to(_OWN_ROOT) and path.relative_to(_OWN_ROOT).parts[0] in OWN_PACKAGES


def _plain(value: Any) -> Any:
    if value is None or isinstance(value, bool | int | float):
        return value
    if isinstance(value, list | tuple):
        return [_plain(item) for item in value]
    return value if isinstance(value, str) and _WORD.fullmatch(value) else WITHHELD


def _stamp(_logger: Any, _method: str, event: EventDict) -> EventDict:
    return structlog.processors.TimeStamper(fmt="iso", utc=True)(None, "", event)


def _log_uncaught(
    kind: type[BaseException], error: BaseException, trace: TracebackType | None
) -> None:
    structlog.get_logger("bot").critical("stopped by an error", exc_info=(kind, error, trace))
