"""Setting a bot up and looking after it, as whoever runs it does: by its commands, in a terminal."""

from __future__ import annotations

import shutil
import subprocess
import urllib.request
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

import pytest
from sqlmodel import Session, select

from bot.cli import main
from bot.operation.setup import set_up
from bot.store.db import make_engine
from bot.store.tables.people import Invite
from tests.support.chats import TOKEN, BotProcess, Telegram

pytestmark = [pytest.mark.loopback, pytest.mark.soak]


@dataclass(frozen=True)
class Done:
    code: int
    out: str


@pytest.fixture
def brimline(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> Callable[..., Done]:
    """The command line, in this process: `brimline("check", database_url=...)`."""
    monkeypatch.chdir(tmp_path)

    def run(*arguments: str, **settings: str) -> Done:
        capsys.readouterr()
        with monkeypatch.context() as environment:
            for name, value in settings.items():
                environment.setenv(f"BRIMLINE_{name.upper()}", value)
            code = main(arguments)
        said = capsys.readouterr()
        return Done(code, said.out + said.err)

    return run


class Keyboard:
    """Somebody who answers from a list, and the screen before them."""

    def __init__(self, *answers: str) -> None:
        self.answers = list(answers)
        self.screen = ""

    def ask(self, question: str) -> str:
        self.screen += f"\n{question}"
        return self.answers.pop(0) if self.answers else ""

    def say(self, text: str) -> None:
        self.screen += f"\n{text}"


def test_set_up_asks_for_the_token_until_it_works_and_shows_the_coachs_link_and_its_code(
    telegram: Telegram, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    database = f"sqlite:///{tmp_path / 'new.sqlite3'}"
    dotenv = tmp_path / ".env"
    dotenv.write_text(
        f"BRIMLINE_API_BASE_URL={telegram.url}\nBRIMLINE_DATABASE_URL={database}\nOTHER=1\n"
    )
    telegram.fault("getMe", 401, "Unauthorized", times=1)
    monkeypatch.setenv("PATH", str(tmp_path))  # a machine without systemd
    person = Keyboard("no token at all", "999:refused-by-the-server", TOKEN)

    assert set_up(tmp_path, person.ask, person.say)

    assert "BRIMLINE_BOT_TOKEN: is not a bot token" in person.screen
    assert "does not take this token" in person.screen
    assert "the bot is @brimline_test_bot" in person.screen
    assert "https://t.me/brimline_test_bot?start=" in person.screen
    assert "█" in person.screen or "▀" in person.screen
    assert f"BRIMLINE_BOT_TOKEN={TOKEN}" in dotenv.read_text()
    assert "OTHER=1" in dotenv.read_text()
    assert dotenv.stat().st_mode & 0o077 == 0
    engine = make_engine(database)
    with Session(engine) as session:
        assert [invite.kind for invite in session.exec(select(Invite))] == ["coach"]
    engine.dispose()


def test_set_up_installs_the_service_in_a_folder_of_any_name_and_says_what_did_not_work(
    telegram: Telegram, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    analyze = shutil.which("systemd-analyze")
    home, tools = tmp_path / "at 100% home", tmp_path / "tools"
    home.mkdir()
    tools.mkdir()
    for name, code in (("systemctl", 0), ("loginctl", 1)):
        (tools / name).write_text(f'#!/bin/sh\necho "{name} $*" >> "{tools}/calls"\nexit {code}\n')
        (tools / name).chmod(0o755)
    monkeypatch.setenv("PATH", str(tools))
    monkeypatch.setenv("HOME", str(home))
    monkeypatch.setenv("BRIMLINE_API_BASE_URL", telegram.url)
    monkeypatch.setenv("BRIMLINE_DATABASE_URL", f"sqlite:///{tmp_path / 'one.sqlite3'}")
    person = Keyboard(TOKEN, "yes")

    assert set_up(home, person.ask, person.say)

    assert "enable --now brimline.service" in (tools / "calls").read_text()
    assert "run it yourself: loginctl enable-linger" in person.screen
    unit = home / ".config" / "systemd" / "user" / "brimline.service"
    assert f"WorkingDirectory={tmp_path}/at 100%% home" in unit.read_text()
    if analyze is not None:
        found = subprocess.run(
            [analyze, "--man=no", "verify", unit], capture_output=True, text=True, check=False
        )
        assert (found.returncode, found.stderr) == (0, "")


def test_set_up_that_is_left_leaves_nothing_behind(
    telegram: Telegram, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("BRIMLINE_API_BASE_URL", telegram.url)
    monkeypatch.setenv("BRIMLINE_DATABASE_URL", f"sqlite:///{tmp_path / 'none.sqlite3'}")
    person = Keyboard("nonsense")

    assert not set_up(tmp_path, person.ask, person.say)

    assert list(tmp_path.iterdir()) == []


def test_a_running_bot_is_examined_backed_up_and_put_back(
    telegram: Telegram, tmp_path: Path, free_port: int, brimline: Callable[..., Done]
) -> None:
    settings = {
        "bot_token": TOKEN,
        "api_base_url": telegram.url,
        "database_url": f"sqlite:///{tmp_path / 'one.sqlite3'}",
        "photo_dir": str(tmp_path / "photos"),
    }
    health = {"health_port": str(free_port)}
    with BotProcess(telegram, settings["database_url"], tmp_path / "log", **health) as bot:
        telegram.says(11, "/start")
        telegram.wait_until(lambda: bool(telegram.texts(11)), "a word to a stranger")
        for page, said in [
            ("alive", "alive"),
            ("ready", "ready"),
            ("metrics", "brimline_queue_rows"),
        ]:
            with urllib.request.urlopen(f"http://127.0.0.1:{free_port}/{page}") as answer:
                assert said in answer.read().decode()
        examined = brimline("doctor", **settings)
        assert "ok      bot: runs" in examined.out
        assert examined.code == 0
        kept = brimline("backup", str(tmp_path / "kept.zip"), **settings)
        assert kept.out.startswith("ok ")
        assert bot.stop() == 0

    stood_still = brimline("doctor", **settings)
    assert "failed  bot: does not run" in stood_still.out
    elsewhere = settings | {"database_url": f"sqlite:///{tmp_path / 'two.sqlite3'}"}
    assert "ok      restored" in brimline("restore", str(tmp_path / "kept.zip"), **elsewhere).out
    again = brimline("restore", str(tmp_path / "kept.zip"), **elsewhere)
    assert (again.code, again.out.count("not empty")) == (1, 1)
    assert "All is well." in brimline("status", **elsewhere).out
    assert "Coaches:" in brimline("coaches", **elsewhere).out
    refused = brimline("migrate", "--from", elsewhere["database_url"], **settings)
    assert refused.code == 2


def test_a_damaged_database_is_called_so(
    telegram: Telegram, tmp_path: Path, brimline: Callable[..., Done]
) -> None:
    file = tmp_path / "torn.sqlite3"
    settings = {
        "bot_token": TOKEN, "api_base_url": telegram.url, "database_url": f"sqlite:///{file}",
    }  # fmt: skip
    assert brimline("migrate", **settings).code == 0
    content = bytearray(file.read_bytes())
    content[4096 * 3 : 4096 * 9] = bytes(4096 * 6)
    file.write_bytes(content)

    checked = brimline("check", **settings)

    assert checked.code == 1
    assert "damaged" in checked.out or "cannot be opened" in checked.out
