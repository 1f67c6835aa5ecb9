"""The way to and from Telegram."""

import os

# Spans of time as timedelta, which python-telegram-bot otherwise warns about at each "retry after".
os.environ["PTB_TIMEDELTA"] = "true"
