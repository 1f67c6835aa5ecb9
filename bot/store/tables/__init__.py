"""Every table, gathered in one metadata, for the migrations and the check that they agree."""

from __future__ import annotations

import importlib
import pkgutil

from sqlmodel import SQLModel

for module in pkgutil.iter_modules(__path__):
    importlib.import_module(f"{__name__}.{module.name}")

metadata = SQLModel.metadata
