"""An athlete's morning pictures: offered, taken, named by pose, passed on to the coach, deleted.

Having a file fetched that somebody sent.
"""

from __future__ import annotations

from datetime import date, timedelta

from sqlalchemy import bindparam
from sqlmodel import Session, select

from bot.core.chat.outbox import (
    MOST_IN_AN_ALBUM,
    SILENTLY,
    Button,
    Buttons,
    Delivery,
    Shown,
    edit,
    send_pictures,
)
from bot.core.timing import agenda
from bot.core.timing.agenda import Subject
from bot.core.turn import Act, ChatTurn, Context, Incoming, SentFile, Turn
from bot.decision.eye import looking as eye
from bot.people.changes import Change
from bot.people.people import (
    get_person,
    get_profile,
    local_date,
    name_of,
    others_coaching,
    profile_of,
    record,
)
from bot.people.telling import answer, rewrite, say_to, speaking_to
from bot.pictures.buttons import (
    ON_PHOTO,
    OWN_COMPARED,
    SEE,
    WIPE,
    WIPE_NO,
    WIPE_YES,
    Do,
    OfMorning,
    OnPhoto,
)
from bot.pictures.photos import kept, photo_rows, words
from bot.pictures.photos.kept import MOST_BYTES, PictureRefused, clean
from bot.pictures.photos.photo_rows import delete_photos, kept_photos, when
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, AthleteStatus, Person
from bot.store.tables.photos import PhotoMorning, PhotoRow, Pose
from bot.store.tables.traffic import AgendaRow, FetchRow, OutboxRow
from bot.words.common import keep_them_button, nothing_deleted, step_back_button

PHOTO = "photo"
FORWARD = "photos-forward"
MOST_A_DAY = 10
GATHER = timedelta(seconds=40)  # an album comes as single pictures; they go on together
SUMMARY_IN_SIGHT = timedelta(minutes=30)  # after that a new summary is written, not the old changed
POSES = (Pose.FRONT, Pose.SIDE, Pose.BACK)


def is_picture(file: SentFile) -> bool:
    return file.as_photo or file.mime.lower().startswith("image/")


def received(turn: ChatTurn, person: Person, profile: AthleteProfile) -> bool:
    """A picture has come: give it its pose and have it fetched. False while nobody wants pictures."""
    assert turn.incoming.file is not None
    if profile.status not in (AthleteStatus.ACTIVE, AthleteStatus.PAUSED):
        return False
    if _has_order(turn.session, turn.incoming):
        return True
    refused = None
    day = local_date(profile, turn.context)
    today = list(_of_day(turn.session, profile.person_id, day))
    if turn.context.photo_dir is None:
        refused = words.not_kept_here()
    elif turn.incoming.file.size > MOST_BYTES:
        refused = words.refused("too-large")
    elif len(today) >= MOST_A_DAY:
        refused = words.too_many(MOST_A_DAY)
    if refused is not None:
        say_to(turn, person, refused)
        return True
    row = PhotoRow(
        athlete_id=profile.person_id, date=day, pose=_pose(turn.incoming.text, today),
        name=kept.new_name(), received_at=turn.now,
    )  # fmt: skip
    turn.session.add(row)
    order(turn, person, PHOTO, MOST_BYTES, photo=id_of(row), name=row.name)
    return True


def unpack_photo(row: FetchRow, content: bytes, context: Context) -> PictureRefused | str | None:
    """Clean the picture and put its file down; outside any transaction. A repeat writes it again."""
    if context.photo_dir is None:
        return None
    try:
        kept.write(context.photo_dir, row.about["name"], clean(content))
    except PictureRefused as refused:
        return refused
    return "written"


def photo_came(turn: Turn, person: Person, fetch: FetchRow, outcome: object) -> None:
    """The file is in the folder, or could not be had."""
    row = turn.session.get(PhotoRow, fetch.about["photo"])
    profile = profile_of(turn.session, person.id)
    if row is None or profile is None:  # deleted while it was on its way
        photo_rows.remove_file_soon(turn, fetch.about["name"])
        return
    if outcome is None or isinstance(outcome, PictureRefused):
        delete_photos(turn, [row])
        text = words.refused(outcome.why) if outcome is not None else words.could_not_fetch()
        say_to(turn, person, text)
        return
    row.kept_at = turn.now
    turn.session.add(row)
    record(turn, profile.person_id, Change.PICTURE_KEPT(photo=id_of(row)), by=person.id)
    _show_summary(turn, person, profile, row.date)
    agenda.put(
        turn.session, agenda.Named(Subject.ATHLETE(profile.person_id), row.date, FORWARD),
        due_at=turn.now + GATHER, again=True,
    )  # fmt: skip
    photo_rows.expire_later(turn)


def offer(turn: Turn, profile: AthleteProfile, day: date) -> None:
    """One quiet line after a morning's numbers, unless the pictures are there already."""
    if turn.context.photo_dir is None or list(_of_day(turn.session, profile.person_id, day)):
        return
    person, coach = (
        get_person(turn.session, profile.person_id),
        get_person(turn.session, profile.coach_id),
    )
    say_to(
        turn,
        person,
        words.offer(coach.first_name, own=coach.id == person.id),
        how=Delivery(silent=True, dedupe=f"pictures:{profile.person_id}:{day.isoformat()}"),
    )


def forward(turn: Turn, duty: AgendaRow) -> None:
    """What has come together goes to the coach as one message, captioned."""
    profile = profile_of(turn.session, Subject.ATHLETE.of(duty))
    if profile is None or profile.status == AthleteStatus.ENDED:
        return  # without a coach they are the athlete's alone
    rows = [
        row
        for row in kept_photos(turn.session, profile.person_id, duty.local_date)
        if row.forwarded_at is None
    ]
    for row in rows:
        row.forwarded_at = turn.now
        turn.session.add(row)
    if rows:
        for coach in others_coaching(turn.session, profile):
            send_morning(turn, coach, profile, rows)
            eye.ask(turn, coach, profile, duty.local_date)


def send_morning(turn: Turn, to: Person, profile: AthleteProfile, rows: list[PhotoRow]) -> None:
    """Pictures of one morning, with days out and the morning's numbers."""
    day = rows[0].date
    shown = rows[:MOST_IN_AN_ALBUM]
    with speaking_to(to):
        send_pictures(
            turn,
            chat_id=to.chat_id,
            pictures=[photo_rows.named(row) for row in shown],
            caption=words.caption(
                name_of(turn.session, profile.person_id),
                when(turn.session, profile.person_id, day),
                list(dict.fromkeys(row.pose for row in shown)),
                photo_rows.numbers(turn.session, profile, day),
            ),
            how=SILENTLY,
        )  # fmt: skip


def show_own(turn: Act) -> None:
    """/photos"""
    profile = get_profile(turn.session, turn.person.id)
    days = photo_rows.mornings_of(turn.session, profile.person_id)
    if not days:
        say_to(turn, turn.person, words.nothing_kept("", self_coached=True))
        return
    buttons = [[Button(when(turn.session, profile.person_id, day), SEE(day))] for day in days[-8:]]
    buttons.append(
        [Button(words.compare_button(), OWN_COMPARED()), Button(words.wipe_button(), WIPE())]
    )
    text = words.mornings("", self_coached=True)
    say_to(turn, turn.person, text, buttons=buttons)


def pick(turn: Act, pressed: OnPhoto) -> None:
    """The buttons under a summary: one picture's, its poses, and out with it."""
    row = turn.session.get(PhotoRow, pressed.photo)
    profile = profile_of(turn.session, turn.person.id)
    if row is None or profile is None or row.athlete_id != turn.person.id:
        answer(turn, words.picture_gone())
        return
    answer(turn)
    if pressed.do is Do.PICK:
        choices = [
            [Button(words.pose_button(p), ON_PHOTO(Do.POSE, id_of(row), p)) for p in Pose],
            [
                Button(words.drop_button(), ON_PHOTO(Do.DROP, id_of(row))),
                Button(step_back_button(), ON_PHOTO(Do.BACK, id_of(row))),
            ],
        ]
        rewrite(turn, words.which_pose(row.pose), choices)
        return
    if pressed.do is Do.POSE and pressed.pose is not None:
        _set_pose(turn.session, row, pressed.pose)
    elif pressed.do is Do.DROP:
        delete_photos(turn, [row])
    text, buttons = _summary(turn.session, profile, row.date)
    rewrite(turn, text, buttons)


def see(turn: Act, pressed: OfMorning) -> None:
    """The athlete's own pictures of a morning, and the buttons to put them right."""
    answer(turn)
    profile = profile_of(turn.session, turn.person.id)
    day = pressed.day
    rows = kept_photos(turn.session, id_of(turn.person), day) if day is not None else []
    if profile is None or day is None or not rows:
        say_to(turn, turn.person, words.picture_gone())
        return
    send_morning(turn, turn.person, profile, rows)
    text, buttons = _summary(turn.session, profile, day)
    say_to(turn, turn.person, text, buttons=buttons)


def ask_wipe(turn: Act) -> None:
    """All of them go by a second tap."""
    answer(turn)
    count = len(kept_photos(turn.session, id_of(turn.person)))
    yes = Button(words.wipe_yes_button(), WIPE_YES())
    no = Button(keep_them_button(), WIPE_NO())
    text = words.ask_wipe(count) if count else words.nothing_kept("", self_coached=True)
    say_to(turn, turn.person, text, buttons=[[yes, no]] if count else ())


def wipe(turn: Act) -> None:
    answer(turn)
    photo_rows.delete_all_photos(turn, id_of(turn.person))
    record(turn, id_of(turn.person), Change.PICTURES_DELETED(), by=turn.person.id)
    rewrite(turn, words.wiped())


def keep(turn: Act) -> None:
    answer(turn)
    rewrite(turn, nothing_deleted())


def _show_summary(turn: Turn, person: Person, profile: AthleteProfile, day: date) -> None:
    """One message a morning, rewritten as more comes; with how pictures are kept, the first time."""
    found = select(PhotoMorning).where(PhotoMorning.athlete_id == person.id)
    first_ever = turn.session.exec(found.limit(1)).first() is None
    morning = turn.session.exec(found.where(PhotoMorning.date == day)).first()
    text, buttons = _summary(turn.session, profile, day)
    sent = turn.session.get(OutboxRow, morning.outbox_id) if morning is not None else None
    if sent is not None and turn.now - sent.created_at < SUMMARY_IN_SIGHT:
        edit(turn, Shown(person.chat_id, outbox_id=sent.id), text=text, buttons=buttons)
        return
    if first_ever:
        coach = get_person(turn.session, profile.coach_id)
        own = coach.id == person.id
        about = words.how_kept(coach.first_name, turn.context.keep_photos_days, own=own)
        say_to(turn, person, about)
    row = say_to(turn, person, text, buttons=buttons)
    morning = morning or PhotoMorning(athlete_id=profile.person_id, date=day)
    morning.outbox_id = id_of(row)
    turn.session.add(morning)


def _summary(session: Session, profile: AthleteProfile, day: date) -> tuple[str, Buttons]:
    rows = kept_photos(session, profile.person_id, day)
    shown_day = when(session, profile.person_id, day)
    if not rows:
        return words.none_left(shown_day), ()
    coach = get_person(session, profile.coach_id)
    own = coach.id == profile.person_id
    text = words.kept([row.pose for row in rows], shown_day, coach.first_name, own=own)
    buttons = [Button(words.change_button(row.pose), ON_PHOTO(Do.PICK, id_of(row))) for row in rows]
    return text, [buttons[i : i + 3] for i in range(0, len(buttons), 3)]


def _pose(caption: str, today: list[PhotoRow]) -> str:
    """What the caption says; else the next of front, side, back that is not there yet."""
    said = [pose for pose in POSES if pose.value in caption.lower().split()]
    taken = {row.pose for row in today}
    if len(said) == 1:
        for row in today:
            if row.pose == said[0]:
                row.pose = (
                    Pose.OTHER
                )  # a newer one of that pose: the earlier is kept, and steps back
        return said[0]
    return next((pose for pose in POSES if pose not in taken), Pose.OTHER)


def _set_pose(session: Session, row: PhotoRow, pose: str) -> None:
    """Give it this pose; a picture that had it takes this one's in exchange."""
    if pose != Pose.OTHER:
        for other in _of_day(session, row.athlete_id, row.date):
            if other.pose == pose and other.id != row.id:
                other.pose = row.pose
                session.add(other)
    row.pose = pose
    session.add(row)


def _of_day(session: Session, athlete_id: int, day: date) -> list[PhotoRow]:
    """All of a day's pictures, those on their way too."""
    return list(session.exec(_OF_DAY, params={"athlete": athlete_id, "day": day}))


_OF_DAY = select(PhotoRow).where(
    PhotoRow.athlete_id == bindparam("athlete"), PhotoRow.date == bindparam("day")
)


def _has_order(session: Session, incoming: Incoming) -> bool:
    query = select(FetchRow.id).where(FetchRow.update_id == incoming.update_id)
    return session.exec(query).first() is not None


LONGEST_NAME = 200


def order(turn: ChatTurn, person: Person, kind: str, most_bytes: int, **about: object) -> FetchRow:
    """Have a file fetched; the same update orders it once."""
    assert turn.incoming.file is not None
    known = turn.session.exec(
        select(FetchRow).where(FetchRow.update_id == turn.incoming.update_id)
    ).first()
    if known is not None:
        return known
    row = FetchRow(
        update_id=turn.incoming.update_id, person_id=id_of(person), kind=kind,
        file_id=turn.incoming.file.file_id, name=turn.incoming.file.name[:LONGEST_NAME],
        most_bytes=most_bytes, about=about, not_before=turn.now, created_at=turn.now,
    )  # fmt: skip
    turn.session.add(row)
    return row
