"""The English words of denial: one list, for all that asks whether something is denied."""

from __future__ import annotations

from engine.written.word_set import word_set

DENIALS = word_set(
    """
    no not never without none zero nil neither nor nothing denies denied don't didn't doesn't
    haven't hasn't hadn't wasn't isn't aren't weren't ain't
    """
)
