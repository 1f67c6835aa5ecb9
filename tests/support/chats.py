"""Both ends of a test against the stand-in: people in chats, and the bot as a real process."""

from __future__ import annotations

import itertools
import json
import os
import signal
import subprocess
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import IO, Any

import httpx
from sqlmodel import Session, select

from bot.store.db import make_engine
from bot.store.tables.traffic import InboxRow, OutboxRow
from tests.support.started import Started

ROOT = Path(__file__).parents[2]
TOKEN = "12345:invented-token-for-tests"
SECRET = "an-invented-webhook-secret"
PATIENCE_S = 20.0
_ids = itertools.count(1)


class Telegram:
    """The stand-in, seen from the people's side and from above."""

    def __init__(self, port: int) -> None:
        self.url = f"http://127.0.0.1:{port}"
        self.names: dict[int, str] = {}  # by chat, of those who are called otherwise than "P502"
        self.last_update = 0
        self._calls: list[dict[str, Any]] = []  # they are only ever added to
        self._asks = True  # for more calls, whenever somebody looks at them
        self._http = httpx.Client(base_url=self.url, timeout=PATIENCE_S + 10)

    def close(self) -> None:
        self._http.close()

    # What people do

    def update(self, **update: Any) -> int:
        """Any update as it is; returns its id."""
        answer = self._http.post("/__update", json={"token": TOKEN, "update": update})
        self.last_update = int(answer.raise_for_status().json()["update_id"])
        return self.last_update

    def says(self, chat_id: int, text: str, **more: Any) -> int:
        """Somebody writes; returns the message's id."""
        message = self._message(chat_id, text=text)
        self.update(message=message, **more)
        return int(message["message_id"])

    def sends_file(
        self, chat_id: int, content: bytes, *, name: str = "", caption: str = "", album: str = ""
    ) -> None:
        """Somebody sends a file; without a name, a picture (of an album, where one is named)."""
        file_id = f"sent-{next(_ids)}"
        asset = self._http.post("/__asset", params={"file_id": file_id}, content=content)
        asset.raise_for_status()
        file: dict[str, Any] = {
            "file_id": file_id, "file_unique_id": file_id, "file_size": len(content),
        }  # fmt: skip
        fields: dict[str, Any] = (
            {"document": file | {"file_name": name}}
            if name
            else {"photo": [file | {"width": 3, "height": 4}]}
        )
        fields |= {"caption": caption} if caption else {}
        fields |= {"media_group_id": album} if album else {}
        self.update(message=self._message(chat_id, **fields))

    def downloads(self, file_id: str) -> bytes:
        """A file that the bot sent, as its reader would get it."""
        answer = self._http.get(f"/file/bot{TOKEN}/{file_id}")
        return answer.raise_for_status().content

    def edits(self, chat_id: int, message_id: int, text: str) -> None:
        """Somebody changes what they wrote."""
        edited = self._message(
            chat_id, text=text, message_id=message_id, edit_date=int(time.time())
        )
        self.update(edited_message=edited)

    def taps(self, chat_id: int, data: str, message_id: int) -> str:
        """Somebody presses a button under a message; returns the press's id."""
        message = self._message(chat_id, text="asked", message_id=message_id)
        tap_id = f"tap-{next(_ids)}"
        self.update(
            callback_query={
                "id": tap_id,
                "from": message["from"],
                "chat_instance": "1",
                "data": data,
                "message": message,
            }
        )
        return tap_id

    def taps_label(self, chat_id: int, label: str) -> None:
        """Somebody presses the button with these words, where it was last shown to them."""
        for call in reversed(self.calls(chat_id)):
            rows = (call["fields"].get("reply_markup") or {}).get("inline_keyboard", [])
            for button in itertools.chain.from_iterable(rows):
                if button["text"] == label:
                    self.taps(chat_id, button["callback_data"], call["result"]["message_id"])
                    return
        raise AssertionError(f"no button says {label!r} in chat {chat_id}")

    def membership(self, chat_id: int, status: str) -> None:
        """Somebody stops the bot ("kicked") or starts it again ("member")."""
        bot = {"id": 7, "is_bot": True, "first_name": "Brimline"}
        until = {"until_date": 0} if status == "kicked" else {}
        self.update(
            my_chat_member={
                "chat": {"id": chat_id, "type": "private"},
                "from": user(chat_id, self.names.get(chat_id)),
                "date": int(time.time()),
                "old_chat_member": {"user": bot, "status": "member"},
                "new_chat_member": {"user": bot, "status": status, **until},
            }
        )

    def _message(self, chat_id: int, **fields: Any) -> dict[str, Any]:
        return message_from(chat_id, self.names.get(chat_id), **fields)

    # What the bot did

    def calls(self, chat_id: int | None = None, method: str | None = None) -> list[dict[str, Any]]:
        """The calls that were taken in so far, refused ones apart."""
        return [
            call
            for call in self._all_calls()
            if "refused" not in call
            and (chat_id is None or call["fields"].get("chat_id") == str(chat_id))
            and (method is None or call["method"] == method)
        ]

    def refused(self) -> list[dict[str, Any]]:
        """The calls that were refused so far, for their shape or by a fault."""
        return [call for call in self._all_calls() if "refused" in call]

    def texts(self, chat_id: int) -> list[str]:
        """What the bot wrote into a chat, in order."""
        return [call["fields"]["text"] for call in self.calls(chat_id, "sendMessage")]

    def wait_until(self, holds: Callable[[], bool], what: str) -> None:
        """Until it holds, looking again at every call that comes in."""
        deadline = time.monotonic() + PATIENCE_S
        self._take_in_calls(wait=0)
        while not self._holds_as_it_stands(holds):
            if time.monotonic() > deadline:
                raise AssertionError(f"waited in vain for {what}")
            self._take_in_calls(wait=0.5)

    def _holds_as_it_stands(self, holds: Callable[[], bool]) -> bool:
        """Whether it does by what was just taken in, without asking for more at each look."""
        self._asks = False
        try:
            return holds()
        finally:
            self._asks = True

    def wait_for_text(self, chat_id: int, part: str, times: int = 1) -> str:
        """Until the bot has written this into the chat; returns the last such message."""

        def found() -> list[str]:
            return [text for text in self.texts(chat_id) if part in text]

        self.wait_until(lambda: len(found()) >= times, f"{part!r} in chat {chat_id}")
        return found()[-1]

    def _all_calls(self) -> list[dict[str, Any]]:
        if self._asks:
            self._take_in_calls(wait=0)
        return self._calls

    def _take_in_calls(self, *, wait: float) -> None:
        """Those that came in since the last look, waiting so long (seconds) for one."""
        params = {"since": len(self._calls), "wait": wait}
        answer = self._http.get("/__tap", params=params).raise_for_status()
        self._calls += answer.json()["calls"]

    # What goes wrong

    def fault(self, method: str, status: int, description: str = "", **more: Any) -> None:
        """Answer the next such call (or `times`) with this error; status 0 drops the line."""
        body = {"method": method, "status": status, "description": description, **more}
        self._http.post("/__fault", json=body).raise_for_status()

    def cut_off(self, chat_id: int, *, blocked: bool = True) -> None:
        """Refuse what is sent into a chat, as after its person stopped the bot; or no longer."""
        body = {"chat_id": chat_id, "blocked": blocked}
        self._http.post("/__block", json=body).raise_for_status()

    def hold(self, method: str, moment: str) -> None:
        """Keep such calls waiting "before" they are taken in, or "after" (before the answer)."""
        self._http.post("/__hold", json={"method": method, "moment": moment}).raise_for_status()

    def wait_for_held(self) -> None:
        """Until a call is being held."""
        held = self._http.get("/__held", params={"wait": PATIENCE_S}).json()["held"]
        assert held, "no call came to be held"

    def release(self) -> None:
        """Let held calls go, and hold no more."""
        self._http.post("/__release", json={}).raise_for_status()


def user(chat_id: int, name: str | None = None) -> dict[str, Any]:
    """The person of a private chat, whose id is the chat's."""
    return {"id": abs(chat_id), "is_bot": False, "first_name": name or f"P{abs(chat_id)}"}


def message_from(chat_id: int, name: str | None = None, **fields: Any) -> dict[str, Any]:
    """A message in a private chat, as Telegram would put it."""
    person = user(chat_id, name)
    return {
        "message_id": 1_000_000 + next(_ids),
        "date": int(time.time()),
        "chat": {"id": chat_id, "type": "private", "first_name": person["first_name"]},
        "from": person,
        **fields,
    }


@contextmanager
def telegram_process() -> Iterator[Telegram]:
    """The stand-in as a process of its own, on a free port of loopback."""
    process = Started(
        "-m", "tests.support.telegram_standin", cwd=ROOT, stdout=subprocess.PIPE, text=True
    )
    assert process.stdout is not None
    telegram = Telegram(int(process.stdout.readline()))
    try:
        yield telegram
    finally:
        telegram.close()
        process.kill()
        process.wait()
        process.stdout.close()


class BotProcess:
    """The bot as whoever runs it starts it: a process, with settings in its environment."""

    def __init__(
        self,
        telegram: Telegram,
        database_url: str,
        log: Path,
        *,
        module: Sequence[str] = ("bot.cli", "run"),
        **settings: str,
    ) -> None:
        self.log = log
        self.database_url = database_url
        self._module = module
        self._environment = {
            **{key: value for key, value in os.environ.items() if not key.startswith("BRIMLINE_")},
            "BRIMLINE_BOT_TOKEN": TOKEN,
            "BRIMLINE_API_BASE_URL": telegram.url,
            "BRIMLINE_DATABASE_URL": database_url,
            "BRIMLINE_TICK_SECONDS": "0.2",
            **{f"BRIMLINE_{name.upper()}": value for name, value in settings.items()},
        }
        self._log: IO[str] | None = None
        self._process: Started | None = None

    def __enter__(self) -> BotProcess:
        self.start()
        return self

    def __exit__(self, *_: object) -> None:
        self.kill()

    def start(self) -> None:
        self._log = self.log.open("a")
        self._process = Started(
            "-m", *self._module, cwd=ROOT, env=self._environment, stderr=self._log, text=True
        )

    def kill(self) -> None:
        """SIGKILL: no goodbye."""
        self._end(signal.SIGKILL)

    def stop(self) -> int:
        """SIGTERM; returns the exit code."""
        return self._end(signal.SIGTERM)

    @property
    def pid(self) -> int:
        assert self._process is not None
        return self._process.pid

    def wait(self) -> int:
        """Until it ends by itself; returns the exit code."""
        assert self._process is not None
        return self._process.wait(timeout=PATIENCE_S)

    def log_lines(self) -> list[dict[str, Any]]:
        return [json.loads(line) for line in self.log.read_text().splitlines()]

    def open_rows(self) -> list[str]:
        """The statuses of what is not yet handled, or not yet known to have been sent."""
        engine = make_engine(self.database_url)
        with Session(engine) as session:
            inbox = session.exec(select(InboxRow.status)).all()
            outbox = session.exec(select(OutboxRow.status)).all()
        engine.dispose()
        return [status for status in (*inbox, *outbox) if status in ("new", "waiting", "sending")]

    def _end(self, number: signal.Signals) -> int:
        assert self._process is not None
        assert self._log is not None
        if self._process.poll() is None:
            self._process.send_signal(number)
        code = self._process.wait(timeout=PATIENCE_S)
        self._log.close()
        return code
