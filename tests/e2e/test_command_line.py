"""The commands as whoever runs the bot types them."""

from __future__ import annotations

import os
import socket
import sqlite3
import subprocess
import sys
from pathlib import Path

import pytest

from tests.support import started
from tests.support.chats import ROOT, SECRET, TOKEN, BotProcess, Telegram

pytestmark = [pytest.mark.loopback, pytest.mark.soak]


def environment(settings: dict[str, str]) -> dict[str, str]:
    return {
        **{key: value for key, value in os.environ.items() if not key.startswith("BRIMLINE_")},
        **{f"BRIMLINE_{name.upper()}": value for name, value in settings.items()},
    }


def brimline(*arguments: str, **settings: str) -> subprocess.CompletedProcess[str]:
    return started.run("-m", "bot.cli", *arguments, cwd=ROOT, env=environment(settings))


def test_a_new_bot_is_set_up_checked_run_and_gives_out_a_coachs_link(
    telegram: Telegram, tmp_path: Path
) -> None:
    settings = {
        "bot_token": TOKEN,
        "api_base_url": telegram.url,
        "database_url": f"sqlite:///{tmp_path / 'new.sqlite3'}",
    }
    from_nothing = subprocess.run(
        [sys.executable, "-m", "bot.cli", "check"],
        cwd=ROOT, env=environment(settings), capture_output=True, check=False,
    )  # fmt: skip
    assert from_nothing.returncode == 1
    assert brimline("migrate", **settings).returncode == 0
    checked = brimline("check", **settings)
    assert (checked.returncode, checked.stdout.count("ok  ")) == (0, 3)
    assert "@brimline_test_bot" in checked.stdout

    with BotProcess(telegram, settings["database_url"], tmp_path / "log") as bot:
        telegram.says(11, "/start")
        telegram.wait_until(lambda: bool(telegram.texts(11)), "a word to a stranger")
        assert bot.stop() == 0
    invited = brimline("invite", "coach", **settings)

    assert invited.returncode == 0
    assert "https://t.me/brimline_test_bot?start=" in invited.stdout
    assert telegram.refused() == []


def test_a_command_that_does_not_exist_shows_those_that_do() -> None:
    said = brimline("dance")

    assert said.returncode == 2
    assert "rehearse" in said.stderr
    assert "Traceback" not in said.stderr


@pytest.mark.parametrize("fault", [(401, "Unauthorized"), (404, "Not Found")])
def test_a_token_that_is_refused_is_named_by_check_and_run(
    telegram: Telegram, own_url: str, fault: tuple[int, str]
) -> None:
    telegram.fault("getMe", *fault, times=2)
    settings = {"bot_token": TOKEN, "api_base_url": telegram.url, "database_url": own_url}

    checked, run = brimline("check", **settings), brimline("run", **settings)

    assert checked.returncode == 1
    assert "BRIMLINE_BOT_TOKEN" in checked.stdout
    assert run.returncode == 2
    assert "BRIMLINE_BOT_TOKEN" in run.stderr
    assert "Traceback" not in run.stderr
    assert TOKEN not in run.stderr + checked.stdout


def test_a_webhook_port_in_use_is_named(telegram: Telegram, own_url: str) -> None:
    with socket.create_server(("127.0.0.1", 0)) as taken:
        run = brimline(
            "run",
            bot_token=TOKEN,
            api_base_url=telegram.url,
            database_url=own_url,
            webhook_url="https://example.org/hook",
            webhook_secret=SECRET,
            webhook_port=str(taken.getsockname()[1]),
        )

    assert run.returncode == 2
    assert "BRIMLINE_WEBHOOK_LISTEN" in run.stderr
    assert "Traceback" not in run.stderr


def test_a_database_of_a_newer_version_is_left_alone(sqlite_url: str) -> None:
    connection = sqlite3.connect(sqlite_url.removeprefix("sqlite:///"))
    with connection:
        connection.execute("UPDATE alembic_version SET version_num = '9999'")
    connection.close()
    said = brimline("migrate", database_url=sqlite_url)

    assert said.returncode == 2
    assert "newer version" in said.stderr


def test_a_database_that_is_away_is_no_wrong_setting() -> None:
    with socket.create_server(("127.0.0.1", 0)) as held:  # then closed: nobody listens there
        port = held.getsockname()[1]
    url = f"postgresql://brimline@127.0.0.1:{port}/brimline"

    said = brimline("migrate", database_url=url)

    assert said.returncode == 1  # a service manager starts that again; 2 it would not
    assert "BRIMLINE_DATABASE_URL" in said.stderr
    assert "is it running?" in said.stderr


def test_a_bot_whose_database_is_away_waits_for_it(telegram: Telegram) -> None:
    with socket.create_server(("127.0.0.1", 0)) as held:
        port = held.getsockname()[1]
    url = f"postgresql://brimline@127.0.0.1:{port}/brimline"
    settings = {"bot_token": TOKEN, "api_base_url": telegram.url, "database_url": url}

    with started.Started(
        "-m",
        "bot.cli",
        "run",
        cwd=ROOT,
        env=environment(settings),
        stderr=subprocess.PIPE,
        text=True,
    ) as bot:
        assert bot.stderr is not None
        line = bot.stderr.readline()
        still_there = bot.poll() is None
        bot.kill()

    assert "the database is out of reach or busy" in line
    assert still_there
