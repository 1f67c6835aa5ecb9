"""A check-in however it is written: whole or in part, in any order, with or without labels."""

from engine.written.oneline.reading import read_report
from engine.written.oneline.report import CORE, IN_ORDER, Doubt, DoubtCode, Known, Report, Value

__all__ = ["CORE", "IN_ORDER", "Doubt", "DoubtCode", "Known", "Report", "Value", "read_report"]
