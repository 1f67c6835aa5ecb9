"""What the bot writes to its log within a test, as whoever runs it would find it on standard error."""

from __future__ import annotations

import io
import logging
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from unittest.mock import patch

import structlog

from bot.core.logs import set_up_logs


@contextmanager
def logging_all() -> Iterator[io.StringIO]:
    """Logs are set up as for a run, down to DEBUG, and gathered; afterwards all is as it was."""
    root = logging.getLogger()
    handlers, level, hook = root.handlers[:], root.level, sys.excepthook
    with patch.object(sys, "stderr", io.StringIO()) as stderr:
        set_up_logs("DEBUG", "json")
        try:
            yield stderr
        finally:
            root.handlers[:], sys.excepthook = handlers, hook
            root.setLevel(level)
            logging.captureWarnings(capture=False)
            structlog.reset_defaults()
