"""What is kept of who did what: every kind of entry, once, with what is kept with it, how it reads,
what follows from it and how it is taken back.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from enum import Enum, Flag, auto
from typing import Any, Generic, NamedTuple, ParamSpec, Self, TypeVar, cast

from bot.people import details as kept
from bot.people import words_changes as words
from bot.store.tables.people import HistoryRow
from bot.words.languages import Sentence, mark, tr, worded
from bot.words.names import word

P = ParamSpec("P")
D = TypeVar("D")


class Follows(Flag):
    """What an entry sets going beside being kept."""

    NOTHING = 0
    NOTED = auto()  # whoever else coaches the athlete is told, silently
    CALENDAR = auto()  # days, times, zone or sessions may be others: calendar files grow old


NOTED, CALENDAR = Follows.NOTED, Follows.CALENDAR


class Back(Enum):
    """How an entry is taken back by /undo, which looks at the last one of figures and of times.

    The ways themselves stand in `bot/undo/kinds.py`.
    """

    TIMES = auto()  # the times of the day of the event before
    DAYS = auto()  # the figures and the hold before; so do all below
    VERSION = auto()  # with the plan or the limits
    ASKS = auto()  # with what the event asked for
    EVENT = auto()  # with the event
    SIGNATURE = auto()  # with the proposal, to be signed anew
    NEVER = auto()  # it set figures, and stays


class Entry(NamedTuple):
    """What is to be kept: its kind, and what is kept with it."""

    kind: str
    detail: dict[str, Any]


class Kind(str, Generic[P, D]):
    """A kind of entry; a call makes one. The text is what is stored, and never changes its meaning.

    Raises ValueError for a text that another kind has.
    """

    detail: Callable[P, D]
    says: Sentence | Callable[[D], str]
    follows: Follows
    back: Back | None

    def __new__(
        cls,
        text: str,
        detail: Callable[P, D],
        says: Sentence | Callable[[D], str],
        follows: Follows = Follows.NOTHING,
        back: Back | None = None,
    ) -> Self:
        if text in KINDS:
            raise ValueError(f'two kinds of entry are kept as "{text}"')
        self = super().__new__(cls, text)
        KINDS[text] = self
        self.detail, self.says, self.follows, self.back = detail, says, follows, back
        return self

    def __call__(self, *args: P.args, **detail: P.kwargs) -> Entry:
        return Entry(str(self), cast("dict[str, Any]", self.detail(*args, **detail)))

    def of(self, row: HistoryRow) -> D:
        """What was kept with an entry of this kind."""
        return cast("D", row.detail)

    def told(self, detail: Mapping[str, Any], *, volume_unit: str) -> str:
        """What was kept, in words; amounts of water in this unit."""
        return worded(self.says, cast("D", {**detail, "_volume_unit": volume_unit}))


AnyKind = Kind[..., Any]
#: Each by what is stored.
KINDS: dict[str, AnyKind] = {}


class Change:
    """Every kind of entry.

    Proposals, alerts and messages reach those who coach the athlete by ways of their own, so they are
    not `NOTED`; a morning's decision moves no calendar file, since a file a day would be a nuisance.
    """

    # fmt: off
    RESUMED = Kind("active", kept.Nothing, Sentence("resumed the check-ins"))
    ALERT_ACKNOWLEDGED = Kind("alert acknowledged", kept.Alert,
        words.alert(mark("{level} ({flag}) acknowledged")))
    ALERT_BECAME_WORSE = Kind("alert became worse", kept.AlertWorse,
        words.alert(mark("{level} ({flag}) is now: {now}")))
    ALERT_CLOSED = Kind("alert closed", kept.AlertOn,
        words.alert(mark("{level} ({flag}) closed, because the coaching ended")))
    ALERT_NO_LONGER_REPEATED = Kind("alert no longer repeated", kept.AlertOn,
        words.alert(mark("{level} ({flag}) no longer repeated after a day")))
    ALERT_OPENED = Kind("alert opened", kept.AlertOpened,
        words.alert(mark("{level} ({flag}) sent")))
    ALERT_PUT_RIGHT = Kind("alert put right", kept.AlertOn,
        words.alert(mark("{level} ({flag}) put right")))
    ALERT_REPEATED = Kind("alert repeated", kept.AlertRepeated,
        words.alert(mark("{level} ({flag}) repeated ({times})")))
    ALWAYS_TOMORROW = Kind("always tomorrow", kept.OnOff, words.always_tomorrow, NOTED)
    ARRIVED = Kind("arrived", kept.Trip,
        Sentence("arrived: check-ins now go by the event's time zone"), CALENDAR)
    ATHLETE_LEFT = Kind("athlete left", kept.Coach,
        lambda it: tr("ended the coaching with {name}", name=it["coach"]))
    CHECKED_IN = Kind("checked-in", kept.CheckIn, words.checked_in)
    COACH_BEGAN = Kind("coach began", kept.Nothing, Sentence("took over the coaching"))
    COACH_CHANGED = Kind("coach changed", kept.NewCoach, Sentence("changed the coach"))
    COACH_ENDED = Kind("coach ended", kept.Nothing, Sentence("ended the coaching"))
    COACH_LOOK = Kind("coach look", kept.Look, words.coach_look, NOTED)
    COACH_LOOK_TAKEN_BACK = Kind("coach look taken back", kept.Look,
        lambda it: tr("took back the look of {day}", day=words.day(it)), NOTED)
    DAY_LAID_OUT = Kind("day laid out", kept.Times,
        Sentence("set up the timetable of the day"), CALENDAR, Back.TIMES)
    DAY_MOVED = Kind("day moved", kept.TimesMoved,
        lambda it: tr("moved the day's times by {minutes} min", minutes=it["minutes"]),
        CALENDAR, Back.TIMES)
    DAY_SET_BY_HAND = Kind("day set by hand", kept.SetByHand, words.by_hand, NOTED, Back.DAYS)
    DEBRIEF = Kind("debrief", kept.Event, Sentence("looked back on the week"))
    DEBRIEF_NOTE = Kind("debrief note", kept.Event, Sentence("saved a note for next time"))
    DEBRIEF_WORD = Kind("debrief word", kept.Event, Sentence("said how the week was"))
    PLACING = Kind("placing", kept.Event, Sentence("saved the placing"))
    DECIDED = Kind("decided", kept.Decided, words.decided, back=Back.NEVER)
    DECLINED = Kind("declined", kept.Because,
        lambda it: tr("declined at the start: {because}", because=word(it.get("because", ""))))
    DOCTOR_WORD_NOTED = Kind("doctor's word noted", kept.Nothing,
        Sentence("confirmed a doctor's clearance"), NOTED)
    DOUBT = Kind("doubt", kept.Doubt,
        lambda it: tr("was asked about {words}", words=words.quote(it.get("words", ""))))
    EVENT_ASKS = Kind("event asks", kept.EventAsks,
        Sentence("changed the target look or the weigh-in"), NOTED, Back.ASKS)
    EVENT_SET = Kind("event set", kept.EventSet, words.event_set, NOTED | CALENDAR, Back.EVENT)
    EVENT_REMOVED = Kind("event removed", kept.EventRemoved, words.event_removed, NOTED | CALENDAR)
    FORECAST = Kind("forecast", kept.Forecast, words.forecast, NOTED)
    FREEZE_LIFTED = Kind("freeze lifted", kept.Nothing,
        Sentence("lifted the freeze"), NOTED | CALENDAR)
    FROZEN = Kind("frozen", kept.Frozen, words.frozen, NOTED | CALENDAR)
    HELD = Kind("held", kept.Held, words.held, NOTED, Back.DAYS)
    HOLD_ENDED = Kind("hold ended", kept.HoldEnded, Sentence("ended the hold"), NOTED, Back.DAYS)
    IMPORT_TAKEN_BACK = Kind("import taken back", kept.Weeks,
        lambda it: tr("took imported weeks back: {days}", days=words.days(it)), NOTED)
    JOURNEY = Kind("journey", kept.Trip, Sentence("planned the journey to the event"), CALENDAR)
    LIMITS_SET = Kind("limits set", kept.LimitsSet, words.limits_set, NOTED, Back.VERSION)
    LOOK = Kind("look", kept.EventLook, words.look)
    LOOK_CHECK = Kind("look check", kept.LookCheck, words.look_check)
    MEASURES_ANSWERED_AGAIN = Kind("measures answered again", kept.Nothing,
        Sentence("answered height and weight again"))
    MESSAGE_TO_ATHLETE = Kind("message to athlete", kept.Text,
        lambda it: tr("wrote to the athlete {words}", words=words.quote(it.get("text", ""))))
    MESSAGE_TO_COACH = Kind("message to coach", kept.TextTo, words.to_coach)
    MISSED = Kind("missed", kept.Nothing, Sentence("missed the check-in"))
    NEXT_LOAD_LEFT = Kind("next load left", kept.Nothing,
        Sentence("did not use the suggested load"))
    NEXT_LOAD_SUGGESTED = Kind("next load suggested", kept.LoadSuggested, words.load_suggested)
    NEXT_LOAD_TAKEN_OVER = Kind("next load taken over", kept.Load, words.load_taken_over)
    NO_SECOND_CONTACT_TO_TELL = Kind("no second contact to tell", kept.AlertStuck,
        words.alert(mark("{level} ({flag}) reached nobody else. Why: {why}")))
    ONBOARDED = Kind("onboarded", kept.Status, Sentence("answered the first questions"))
    OWN_NOTE = Kind("own note", kept.Text,
        lambda it: tr("kept a note {words}", words=words.quote(it.get("text", ""))))
    PAUSED = Kind("paused", kept.Nothing, Sentence("paused the check-ins"))
    PICTURE_KEPT = Kind("picture kept", kept.Photo, Sentence("sent a photo"))
    PICTURES_DELETED = Kind("pictures deleted", kept.Nothing, Sentence("deleted the photos"))
    PLAN_SET = Kind("plan set", kept.PlanSet, words.plan_set, NOTED | CALENDAR, Back.VERSION)
    PROPOSAL_CLOSED = Kind("proposal closed", kept.ProposalClosed, words.proposal_closed)
    REACHABLE_AGAIN = Kind("reachable again", kept.Nothing, Sentence("could be reached again"))
    READINESS = Kind("readiness", kept.Readiness,
        lambda it: tr("asked whether a peak week is worth it: {outcome}",
                      outcome=word(it.get("outcome", ""))))
    SECOND_COACH_JOINED = Kind("second coach joined", kept.SecondCoach, words.second_coach_joined)
    SECOND_COACH_OVER = Kind("second coach over", kept.Named,
        lambda it: tr("{name} is no longer second coach", name=it["name"]))
    SECOND_CONTACT_TOLD = Kind("second contact told", kept.AlertPassedOn,
        words.alert(mark("{level} ({flag}) passed on to {contact}. Why: {why}")))
    SETTINGS = Kind("settings", kept.Setting, Sentence("changed a setting"), CALENDAR)
    SIGN_OFF_LAPSED = Kind("sign-off lapsed", kept.Lapsed, words.sign_off_lapsed, back=Back.NEVER)
    SIGNED_OFF = Kind("signed off", kept.SignedOff, words.signed, back=Back.SIGNATURE)
    STAGE_CALLED_OFF = Kind("stage called off", kept.Times,
        Sentence("cancelled the event day"), CALENDAR, Back.TIMES)
    SYMPTOM = Kind("symptom", kept.Symptom, words.symptom)
    TAKEN_BACK = Kind("taken back", kept.TakenBack,
        lambda it: tr("took back: {what}", what=it["sentence"]), NOTED | CALENDAR, Back.NEVER)
    TIMES_TAKEN_BACK = Kind("times taken back", kept.TimesTakenBack,
        lambda it: tr("took back: {what}", what=it["sentence"]), NOTED | CALENDAR)
    TOP_UP = Kind("top-up", kept.TopUp, words.top_up)
    UNREACHABLE = Kind("unreachable", kept.Nothing, Sentence("could not be reached any more"))
    WEEKS_IMPORTED = Kind("weeks imported", kept.Weeks,
        lambda it: tr("imported past weeks from a sheet: {days}", days=words.days(it)), NOTED)
    WENT_ON_AGAINST_READINESS = Kind("went on against readiness", kept.Readiness,
        lambda it: tr("went ahead although the answer was: {outcome}",
                      outcome=word(it.get("outcome", ""))))
    # fmt: on


def following(what: Follows) -> tuple[AnyKind, ...]:
    """The kinds of entry that set this going."""
    return tuple(kind for kind in KINDS.values() if what in kind.follows)


#: What sets plan and limits in one go, as a change of each notes it.
BY_SHEET, BY_LEARNT_LOAD, BY_SETUP = "sheet", "next load", "setup"
