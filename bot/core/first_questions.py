"""What a new athlete is asked, by the names that whoever lists it goes by."""

from __future__ import annotations

#: The questions to a new athlete, and the first of them: whether they agree.
FIRST_QUESTIONS, CONSENT = "onboarding", "consent"
