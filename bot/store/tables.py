"""Every table, gathered in one metadata, for the migrations and the check that they agree."""

from __future__ import annotations

import importlib
import pkgutil

from sqlmodel import SQLModel

import bot.store

NOT_TABLES = {"db", "migrate", "migrations", "tables"}

for module in pkgutil.iter_modules(bot.store.__path__):
    if module.name not in NOT_TABLES:
        importlib.import_module(f"bot.store.{module.name}")

metadata = SQLModel.metadata
