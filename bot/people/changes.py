"""What is kept of who did what: every kind of entry, once, with what follows from it.

Its sentence is in `bot.coach.history.words`, and how it is taken back in `bot.undo.kinds`; tests name
the kind that lacks one.
"""

from __future__ import annotations

from enum import Flag, StrEnum, auto
from typing import Self


class Follows(Flag):
    """What an entry sets going beside being kept."""

    NOTHING = 0
    NOTED = auto()  # whoever else coaches the athlete is told, silently
    CALENDAR = auto()  # days, times, zone or sessions may be others: calendar files grow old
    FIGURES = auto()  # figures may be others: the last of these is what /undo looks at


class Change(StrEnum):
    """A kind of entry. The text is what is stored, and never changes its meaning.

    Proposals, alerts and messages reach those who coach the athlete by ways of their own, so they are
    not `NOTED`; a morning's decision moves no calendar file, since a file a day would be a nuisance.
    """

    follows: Follows

    def __new__(cls, text: str, follows: Follows = Follows.NOTHING) -> Self:
        member = str.__new__(cls, text)
        member._value_ = text
        member.follows = follows
        return member

    RESUMED = "active"
    ALERT_ACKNOWLEDGED = "alert acknowledged"
    ALERT_BECAME_WORSE = "alert became worse"
    ALERT_CLOSED = "alert closed"
    ALERT_NO_LONGER_REPEATED = "alert no longer repeated"
    ALERT_OPENED = "alert opened"
    ALERT_PUT_RIGHT = "alert put right"
    ALERT_REPEATED = "alert repeated"
    ALWAYS_TOMORROW = "always tomorrow", Follows.NOTED
    ARRIVED = "arrived", Follows.CALENDAR
    ATHLETE_LEFT = "athlete left"
    CHECKED_IN = "checked-in"
    COACH_BEGAN = "coach began"
    COACH_CHANGED = "coach changed"
    COACH_ENDED = "coach ended"
    COACH_LOOK = "coach look", Follows.NOTED
    COACH_LOOK_TAKEN_BACK = "coach look taken back", Follows.NOTED
    DAY_LAID_OUT = "day laid out", Follows.CALENDAR
    DAY_MOVED = "day moved", Follows.CALENDAR
    DAY_SET_BY_HAND = "day set by hand", Follows.NOTED | Follows.FIGURES
    DEBRIEF = "debrief"
    DEBRIEF_NOTE = "debrief note"
    DEBRIEF_WORD = "debrief word"
    PLACING = "placing"
    DECIDED = "decided", Follows.FIGURES
    DECLINED = "declined"
    DOCTOR_WORD_NOTED = "doctor's word noted", Follows.NOTED
    DOUBT = "doubt"
    EVENT_ASKS = "event asks", Follows.NOTED | Follows.FIGURES
    EVENT_SET = "event set", Follows.NOTED | Follows.CALENDAR | Follows.FIGURES
    EVENT_REMOVED = "event removed", Follows.NOTED | Follows.CALENDAR
    FORECAST = "forecast", Follows.NOTED
    FREEZE_LIFTED = "freeze lifted", Follows.NOTED | Follows.CALENDAR
    FROZEN = "frozen", Follows.NOTED | Follows.CALENDAR
    HELD = "held", Follows.NOTED | Follows.FIGURES
    HOLD_ENDED = "hold ended", Follows.NOTED | Follows.FIGURES
    IMPORT_TAKEN_BACK = "import taken back", Follows.NOTED
    JOURNEY = "journey", Follows.CALENDAR
    LIMITS_SET = "limits set", Follows.NOTED | Follows.FIGURES
    LOOK = "look"
    LOOK_CHECK = "look check"
    MEASURES_ANSWERED_AGAIN = "measures answered again"
    MESSAGE_TO_ATHLETE = "message to athlete"
    MESSAGE_TO_COACH = "message to coach"
    MISSED = "missed"
    NEXT_LOAD_LEFT = "next load left"
    NEXT_LOAD_SUGGESTED = "next load suggested"
    NEXT_LOAD_TAKEN_OVER = "next load taken over"
    NO_SECOND_CONTACT_TO_TELL = "no second contact to tell"
    ONBOARDED = "onboarded"
    OWN_NOTE = "own note"
    PAUSED = "paused"
    PICTURE_KEPT = "picture kept"
    PICTURES_DELETED = "pictures deleted"
    PLAN_SET = "plan set", Follows.NOTED | Follows.CALENDAR | Follows.FIGURES
    PROPOSAL_CLOSED = "proposal closed"
    REACHABLE_AGAIN = "reachable again"
    READINESS = "readiness"
    SECOND_COACH_JOINED = "second coach joined"
    SECOND_COACH_OVER = "second coach over"
    SECOND_CONTACT_TOLD = "second contact told"
    SETTINGS = "settings", Follows.CALENDAR
    SIGN_OFF_LAPSED = "sign-off lapsed", Follows.FIGURES
    SIGNED_OFF = "signed off", Follows.FIGURES
    STAGE_CALLED_OFF = "stage called off", Follows.CALENDAR
    SYMPTOM = "symptom"
    TAKEN_BACK = "taken back", Follows.NOTED | Follows.CALENDAR | Follows.FIGURES
    TIMES_TAKEN_BACK = "times taken back", Follows.NOTED | Follows.CALENDAR
    TOP_UP = "top-up"
    UNREACHABLE = "unreachable"
    WEEKS_IMPORTED = "weeks imported", Follows.NOTED
    WENT_ON_AGAINST_READINESS = "went on against readiness"


def following(what: Follows) -> tuple[Change, ...]:
    """The kinds of entry that set this going."""
    return tuple(change for change in Change if what in change.follows)


#: What sets plan and limits in one go, as a change of each notes it.
BY_SHEET, BY_LEARNT_LOAD, BY_SETUP = "sheet", "next load", "setup"
