"""An athlete's morning pictures: offered, taken, named by pose, passed on to the coach, deleted."""

from __future__ import annotations

from datetime import date, timedelta

from sqlmodel import Session, select

from bot import agenda
from bot.context import Context
from bot.incoming import Incoming, SentFile
from bot.messages import photos as words
from bot.outbox import MOST_IN_AN_ALBUM, Button, Buttons, edit, say, send_pictures
from bot.pictures import folder
from bot.pictures.cleaning import MOST_BYTES, PictureRefused, clean
from bot.service import photo_rows
from bot.service.fetching import order
from bot.service.people import get_person, local_date, profile_of, record, speaking_to
from bot.service.photo_rows import delete_photos, kept_photos, when
from bot.service.tapping import answer, rewrite
from bot.store.people import AthleteProfile, AthleteStatus, Person
from bot.store.photos import PhotoMorning, PhotoRow, Pose
from bot.store.traffic import AgendaRow, FetchRow, OutboxRow

PHOTO = "photo"
FORWARD = "photos-forward"
MOST_A_DAY = 10
GATHER = timedelta(seconds=40)  # an album comes as single pictures; they go on together
SUMMARY_IN_SIGHT = timedelta(minutes=30)  # after that a new summary is written, not the old changed
POSES = (Pose.FRONT, Pose.SIDE, Pose.BACK)


def is_picture(file: SentFile) -> bool:
    return file.as_photo or file.mime.lower().startswith("image/")


def received(
    session: Session, person: Person, profile: AthleteProfile, incoming: Incoming, context: Context
) -> bool:
    """A picture has come: give it its pose and have it fetched. False while nobody wants pictures."""
    assert incoming.file is not None
    if profile.status not in (AthleteStatus.ACTIVE, AthleteStatus.PAUSED):
        return False
    if _has_order(session, incoming):
        return True
    refused = None
    day = local_date(profile, context)
    today = list(_of_day(session, profile.person_id, day))
    if context.photo_dir is None:
        refused = words.not_kept_here()
    elif incoming.file.size > MOST_BYTES:
        refused = words.refused("too-large")
    elif len(today) >= MOST_A_DAY:
        refused = words.too_many(MOST_A_DAY)
    if refused is not None:
        _say(session, person, refused, context)
        return True
    row = PhotoRow(
        athlete_id=profile.person_id, date=day, pose=_pose(incoming.text, today),
        name=folder.new_name(), received_at=context.now,
    )  # fmt: skip
    session.add(row)
    session.flush()
    order(session, person, incoming, PHOTO, MOST_BYTES, context, photo=row.id, name=row.name)
    return True


def unpack_photo(row: FetchRow, content: bytes, context: Context) -> PictureRefused | str | None:
    """Clean the picture and put its file down; outside any transaction. A repeat writes it again."""
    if context.photo_dir is None:
        return None
    try:
        folder.write(context.photo_dir, row.about["name"], clean(content))
    except PictureRefused as refused:
        return refused
    return "written"


def photo_came(
    session: Session, person: Person, fetch: FetchRow, outcome: object, context: Context
) -> None:
    """The file is in the folder, or could not be had."""
    row = session.get(PhotoRow, fetch.about["photo"])
    profile = profile_of(session, person.id)
    if row is None or profile is None:  # deleted while it was on its way
        photo_rows.remove_file_soon(session, fetch.about["name"], context)
        return
    if outcome is None or isinstance(outcome, PictureRefused):
        delete_photos(session, [row], context)
        text = words.refused(outcome.why) if outcome is not None else words.could_not_fetch()
        _say(session, person, text, context)
        return
    row.kept_at = context.now
    session.add(row)
    session.flush()
    record(session, profile.person_id, "picture kept", context, by=person.id, photo=row.id)
    _show_summary(session, person, profile, row.date, context)
    agenda.put(
        session, subject=f"athlete:{profile.person_id}", local_date=row.date, kind=FORWARD,
        due_at=context.now + GATHER, again=True,
    )  # fmt: skip
    photo_rows.expire_later(session, context)


def offer(session: Session, profile: AthleteProfile, day: date, context: Context) -> None:
    """One quiet line after a morning's numbers, unless the pictures are there already."""
    if context.photo_dir is None or list(_of_day(session, profile.person_id, day)):
        return
    person, coach = get_person(session, profile.person_id), get_person(session, profile.coach_id)
    say(
        session, chat_id=person.chat_id, now=context.now, silent=True,
        text=words.offer(coach.first_name, own=coach.id == person.id),
        dedupe=f"pictures:{profile.person_id}:{day.isoformat()}",
    )  # fmt: skip


def forward(session: Session, duty: AgendaRow, context: Context) -> None:
    """What has come together goes to the coach as one message, captioned."""
    profile = profile_of(session, int(duty.subject.partition(":")[2]))
    if profile is None or profile.status == AthleteStatus.ENDED:
        return  # without a coach they are the athlete's alone
    rows = [
        row
        for row in kept_photos(session, profile.person_id, duty.local_date)
        if row.forwarded_at is None
    ]
    for row in rows:
        row.forwarded_at = context.now
        session.add(row)
    if rows and profile.coach_id != profile.person_id:
        send_morning(session, get_person(session, profile.coach_id), profile, rows, context)


def send_morning(
    session: Session,
    to: Person,
    profile: AthleteProfile,
    rows: list[PhotoRow],
    context: Context,
) -> None:
    """Pictures of one morning, with days out and the morning's numbers."""
    day = rows[0].date
    shown = rows[:MOST_IN_AN_ALBUM]
    with speaking_to(to):
        send_pictures(
            session, chat_id=to.chat_id, now=context.now, silent=True,
            pictures=[photo_rows.named(row) for row in shown],
            caption=words.caption(
                get_person(session, profile.person_id).first_name,
                when(session, profile.person_id, day),
                list(dict.fromkeys(row.pose for row in shown)),
                photo_rows.numbers(session, profile, day),
            ),
        )  # fmt: skip


def show_own(session: Session, person: Person, _rest: str, context: Context) -> None:
    """/photos"""
    profile = profile_of(session, person.id)
    assert profile is not None
    days = photo_rows.mornings_of(session, profile.person_id)
    if not days:
        _say(session, person, words.nothing_kept("", own=True), context)
        return
    buttons = [
        [Button(when(session, profile.person_id, day), f"ph:see:{day.isoformat()}")]
        for day in days[-8:]
    ]
    buttons.append(
        [
            Button(words.compare_button(), "ph:cmp"),
            Button(words.wipe_button(), "ph:wipe"),
        ]
    )
    text = words.mornings("", own=True)
    say(session, chat_id=person.chat_id, text=text, buttons=buttons, now=context.now)


def pick(
    session: Session, person: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """Buttons under a summary: "pick:ID", "pose:ID:POSE", "drop:ID", "back:ID"."""
    action, number, pose = (*arguments, "", "", "")[:3]
    row = session.get(PhotoRow, int(number)) if number.isdigit() else None
    profile = profile_of(session, person.id)
    if row is None or profile is None or row.athlete_id != person.id:
        answer(session, incoming, context, words.picture_gone())
        return
    answer(session, incoming, context)
    if action == "pick":
        choices = [
            [Button(words.pose_button(p), f"ph:pose:{row.id}:{p}") for p in words.POSES],
            [
                Button(words.drop_button(), f"ph:drop:{row.id}"),
                Button(words.back_button(), f"ph:back:{row.id}"),
            ],
        ]
        rewrite(session, incoming, words.which_pose(row.pose), context, choices)
        return
    if action == "pose" and pose in words.POSES:
        _set_pose(session, row, pose)
    elif action == "drop":
        delete_photos(session, [row], context)
    text, buttons = _summary(session, profile, row.date)
    rewrite(session, incoming, text, context, buttons)


def see(
    session: Session, person: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """ "see:DATE": the athlete's own pictures of a morning, and the buttons to put them right."""
    answer(session, incoming, context)
    profile = profile_of(session, person.id)
    day = day_in(arguments[1:])
    rows = kept_photos(session, person.id or 0, day) if day is not None else []
    if profile is None or day is None or not rows:
        _say(session, person, words.picture_gone(), context)
        return
    send_morning(session, person, profile, rows, context)
    text, buttons = _summary(session, profile, day)
    say(session, chat_id=person.chat_id, text=text, buttons=buttons, now=context.now)


def wipe(
    session: Session, person: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """ "wipe", and after a second look "wipe-yes" or "wipe-no"."""
    answer(session, incoming, context)
    buttons: Buttons = ()
    if arguments[0] == "wipe":
        count = len(kept_photos(session, person.id or 0))
        yes = Button(words.wipe_yes_button(), "ph:wipe-yes")
        no = Button(words.keep_button(), "ph:wipe-no")
        text = words.ask_wipe(count) if count else words.nothing_kept("", own=True)
        buttons = [[yes, no]] if count else ()
        say(session, chat_id=person.chat_id, text=text, buttons=buttons, now=context.now)
    elif arguments[0] == "wipe-yes":
        photo_rows.delete_all_photos(session, person.id or 0, context)
        record(session, person.id or 0, "pictures deleted", context, by=person.id)
        rewrite(session, incoming, words.wiped(), context)
    else:
        rewrite(session, incoming, words.left(), context)


def day_in(parts: list[str]) -> date | None:
    """The date that a button names."""
    try:
        return date.fromisoformat(parts[0])
    except (IndexError, ValueError):
        return None


def _show_summary(
    session: Session, person: Person, profile: AthleteProfile, day: date, context: Context
) -> None:
    """One message a morning, rewritten as more comes; with how pictures are kept, the first time."""
    found = select(PhotoMorning).where(PhotoMorning.athlete_id == person.id)
    first_ever = session.exec(found.limit(1)).first() is None
    morning = session.exec(found.where(PhotoMorning.date == day)).first()
    text, buttons = _summary(session, profile, day)
    sent = session.get(OutboxRow, morning.outbox_id) if morning is not None else None
    if sent is not None and context.now - sent.created_at < SUMMARY_IN_SIGHT:
        edit(
            session, chat_id=person.chat_id, outbox_id=sent.id, text=text, buttons=buttons,
            now=context.now,
        )  # fmt: skip
        return
    if first_ever:
        coach = get_person(session, profile.coach_id)
        own = coach.id == person.id
        about = words.how_kept(coach.first_name, context.keep_photos_days, own=own)
        _say(session, person, about, context)
    row = say(session, chat_id=person.chat_id, text=text, buttons=buttons, now=context.now)
    morning = morning or PhotoMorning(athlete_id=profile.person_id, date=day)
    morning.outbox_id = row.id
    session.add(morning)
    session.flush()


def _summary(session: Session, profile: AthleteProfile, day: date) -> tuple[str, Buttons]:
    rows = kept_photos(session, profile.person_id, day)
    shown_day = when(session, profile.person_id, day)
    if not rows:
        return words.none_left(shown_day), ()
    coach = get_person(session, profile.coach_id)
    own = coach.id == profile.person_id
    text = words.kept([row.pose for row in rows], shown_day, coach.first_name, own=own)
    buttons = [Button(words.change_button(row.pose), f"ph:pick:{row.id}") for row in rows]
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
    session.flush()


def _of_day(session: Session, athlete_id: int, day: date) -> list[PhotoRow]:
    """All of a day's pictures, those on their way too."""
    query = select(PhotoRow).where(PhotoRow.athlete_id == athlete_id, PhotoRow.date == day)
    return list(session.exec(query))


def _has_order(session: Session, incoming: Incoming) -> bool:
    query = select(FetchRow.id).where(FetchRow.update_id == incoming.update_id)
    return session.exec(query).first() is not None


def _say(session: Session, person: Person, text: str, context: Context) -> None:
    say(session, chat_id=person.chat_id, text=text, now=context.now)
