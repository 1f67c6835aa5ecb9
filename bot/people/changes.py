"""What is kept of who did what: every kind of entry, once, with how it reads and what follows from it.

How one that may change figures is taken back stands in `bot.undo.kinds`; a test names what lacks that.
"""

from __future__ import annotations

from collections.abc import Callable
from enum import Flag, StrEnum, auto
from operator import itemgetter
from typing import Self

from bot.people import words_changes as words
from bot.people.words_changes import Detail
from bot.words.languages import Sentence, SentenceOn, mark, worded

Says = Sentence | Callable[[Detail], str]


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

    says: Says
    follows: Follows

    def __new__(
        cls, text: str, says: Says | None = None, follows: Follows = Follows.NOTHING
    ) -> Self:
        if says is None:
            raise TypeError(f'the entry "{text}" has no sentence')
        member = str.__new__(cls, text)
        member._value_ = text
        member.says, member.follows = says, follows
        return member

    def told(self, detail: Detail, *, volume_unit: str) -> str:
        """What was kept, in words; amounts of water in this unit."""
        return worded(self.says, {**detail, "_volume_unit": volume_unit})

    RESUMED = "active", Sentence("resumed the check-ins")
    ALERT_ACKNOWLEDGED = "alert acknowledged", words.alert(mark("{level} ({flag}) acknowledged"))
    ALERT_BECAME_WORSE = "alert became worse", words.alert(mark("{level} ({flag}) is now: {now}"))
    ALERT_CLOSED = (
        "alert closed",
        words.alert(mark("{level} ({flag}) closed, because the coaching ended")),
    )
    ALERT_NO_LONGER_REPEATED = (
        "alert no longer repeated",
        words.alert(mark("{level} ({flag}) no longer repeated after a day")),
    )
    ALERT_OPENED = "alert opened", words.alert(mark("{level} ({flag}) sent"))
    ALERT_PUT_RIGHT = "alert put right", words.alert(mark("{level} ({flag}) put right"))
    ALERT_REPEATED = "alert repeated", words.alert(mark("{level} ({flag}) repeated ({times})"))
    ALWAYS_TOMORROW = "always tomorrow", words.always_tomorrow, Follows.NOTED
    ARRIVED = (
        "arrived",
        Sentence("arrived: check-ins now go by the event's time zone"),
        Follows.CALENDAR,
    )
    ATHLETE_LEFT = "athlete left", SentenceOn("ended the coaching with {name}", itemgetter("coach"))
    CHECKED_IN = "checked-in", words.checked_in
    COACH_BEGAN = "coach began", Sentence("took over the coaching")
    COACH_CHANGED = "coach changed", Sentence("changed the coach")
    COACH_ENDED = "coach ended", Sentence("ended the coaching")
    COACH_LOOK = "coach look", words.coach_look, Follows.NOTED
    COACH_LOOK_TAKEN_BACK = (
        "coach look taken back",
        SentenceOn("took back the look of {day}", words.day),
        Follows.NOTED,
    )
    DAY_LAID_OUT = "day laid out", Sentence("set up the timetable of the day"), Follows.CALENDAR
    DAY_MOVED = (
        "day moved",
        SentenceOn("moved the day's times by {minutes} min", itemgetter("minutes")),
        Follows.CALENDAR,
    )
    DAY_SET_BY_HAND = "day set by hand", words.by_hand, Follows.NOTED | Follows.FIGURES
    DEBRIEF = "debrief", Sentence("looked back on the week")
    DEBRIEF_NOTE = "debrief note", Sentence("saved a note for next time")
    DEBRIEF_WORD = "debrief word", Sentence("said how the week was")
    PLACING = "placing", Sentence("saved the placing")
    DECIDED = "decided", words.decided, Follows.FIGURES
    DECLINED = "declined", SentenceOn("declined at the start: {because}", words.named("because"))
    DOCTOR_WORD_NOTED = (
        "doctor's word noted",
        Sentence("confirmed a doctor's clearance"),
        Follows.NOTED,
    )
    DOUBT = "doubt", SentenceOn("was asked about {words}", words.quoted("words"))
    EVENT_ASKS = (
        "event asks",
        Sentence("changed the target look or the weigh-in"),
        Follows.NOTED | Follows.FIGURES,
    )
    EVENT_SET = "event set", words.event_set, Follows.NOTED | Follows.CALENDAR | Follows.FIGURES
    EVENT_REMOVED = "event removed", words.event_removed, Follows.NOTED | Follows.CALENDAR
    FORECAST = "forecast", words.forecast, Follows.NOTED
    FREEZE_LIFTED = "freeze lifted", Sentence("lifted the freeze"), Follows.NOTED | Follows.CALENDAR
    FROZEN = "frozen", words.frozen, Follows.NOTED | Follows.CALENDAR
    HELD = "held", words.held, Follows.NOTED | Follows.FIGURES
    HOLD_ENDED = "hold ended", Sentence("ended the hold"), Follows.NOTED | Follows.FIGURES
    IMPORT_TAKEN_BACK = (
        "import taken back",
        SentenceOn("took imported weeks back: {days}", words.days),
        Follows.NOTED,
    )
    JOURNEY = "journey", Sentence("planned the journey to the event"), Follows.CALENDAR
    LIMITS_SET = "limits set", words.limits_set, Follows.NOTED | Follows.FIGURES
    LOOK = "look", words.look
    LOOK_CHECK = "look check", words.look_check
    MEASURES_ANSWERED_AGAIN = (
        "measures answered again",
        Sentence("answered height and weight again"),
    )
    MESSAGE_TO_ATHLETE = (
        "message to athlete",
        SentenceOn("wrote to the athlete {words}", words.quoted("text")),
    )
    MESSAGE_TO_COACH = "message to coach", words.to_coach
    MISSED = "missed", Sentence("missed the check-in")
    NEXT_LOAD_LEFT = "next load left", Sentence("did not use the suggested load")
    NEXT_LOAD_SUGGESTED = "next load suggested", words.load_suggested
    NEXT_LOAD_TAKEN_OVER = "next load taken over", words.load_taken_over
    NO_SECOND_CONTACT_TO_TELL = (
        "no second contact to tell",
        words.alert(mark("{level} ({flag}) reached nobody else. Why: {why}")),
    )
    ONBOARDED = "onboarded", Sentence("answered the first questions")
    OWN_NOTE = "own note", SentenceOn("kept a note {words}", words.quoted("text"))
    PAUSED = "paused", Sentence("paused the check-ins")
    PICTURE_KEPT = "picture kept", Sentence("sent a photo")
    PICTURES_DELETED = "pictures deleted", Sentence("deleted the photos")
    PLAN_SET = "plan set", words.plan_set, Follows.NOTED | Follows.CALENDAR | Follows.FIGURES
    PROPOSAL_CLOSED = "proposal closed", words.proposal_closed
    REACHABLE_AGAIN = "reachable again", Sentence("could be reached again")
    READINESS = (
        "readiness",
        SentenceOn("asked whether a peak week is worth it: {outcome}", words.named("outcome")),
    )
    SECOND_COACH_JOINED = "second coach joined", words.second_coach_joined
    SECOND_COACH_OVER = (
        "second coach over",
        SentenceOn("{name} is no longer second coach", itemgetter("name")),
    )
    SECOND_CONTACT_TOLD = (
        "second contact told",
        words.alert(mark("{level} ({flag}) passed on to {contact}. Why: {why}")),
    )
    SETTINGS = "settings", Sentence("changed a setting"), Follows.CALENDAR
    SIGN_OFF_LAPSED = "sign-off lapsed", words.sign_off_lapsed, Follows.FIGURES
    SIGNED_OFF = "signed off", words.signed, Follows.FIGURES
    STAGE_CALLED_OFF = "stage called off", Sentence("cancelled the event day"), Follows.CALENDAR
    SYMPTOM = "symptom", words.symptom
    TAKEN_BACK = (
        "taken back",
        SentenceOn("took back: {what}", itemgetter("sentence")),
        Follows.NOTED | Follows.CALENDAR | Follows.FIGURES,
    )
    TIMES_TAKEN_BACK = (
        "times taken back",
        SentenceOn("took back: {what}", itemgetter("sentence")),
        Follows.NOTED | Follows.CALENDAR,
    )
    TOP_UP = "top-up", words.top_up
    UNREACHABLE = "unreachable", Sentence("could not be reached any more")
    WEEKS_IMPORTED = (
        "weeks imported",
        SentenceOn("imported past weeks from a sheet: {days}", words.days),
        Follows.NOTED,
    )
    WENT_ON_AGAINST_READINESS = (
        "went on against readiness",
        SentenceOn("went ahead although the answer was: {outcome}", words.named("outcome")),
    )


def following(what: Follows) -> tuple[Change, ...]:
    """The kinds of entry that set this going."""
    return tuple(change for change in Change if what in change.follows)


#: What sets plan and limits in one go, as a change of each notes it.
BY_SHEET, BY_LEARNT_LOAD, BY_SETUP = "sheet", "next load", "setup"
