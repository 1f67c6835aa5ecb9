"""What is delivered for a server holds together: pins, unit, container and settings."""

from __future__ import annotations

import re
import shutil
import subprocess
import tomllib
from configparser import ConfigParser
from pathlib import Path

import pytest
from packaging.requirements import Requirement

from bot.settings import PREFIX, Settings
from bot.words.languages import CATALOGUES, ENGLISH

ROOT = Path(__file__).parents[2]
DEPLOY = ROOT / "deploy"


def pinned() -> dict[str, str]:
    return dict(
        re.findall(r"^([a-z0-9-]+)==(\S+) \\$", (DEPLOY / "constraints.txt").read_text(), re.M)
    )


def unit(name: str) -> ConfigParser:
    found = ConfigParser(strict=False, interpolation=None, delimiters="=")
    found.optionxform = str  # type: ignore[assignment, method-assign]
    found.read_string((DEPLOY / name).read_text())
    return found


def test_every_library_is_pinned_to_a_version_that_the_project_allows_and_has_a_hash() -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text())["project"]
    pins = pinned()
    for line in project["dependencies"]:
        wanted = Requirement(line)
        assert wanted.name.lower() in pins, f"{wanted.name} is not in deploy/constraints.txt"
        assert wanted.specifier.contains(pins[wanted.name.lower()]), line
    text = (DEPLOY / "constraints.txt").read_text()
    assert text.count("--hash=sha256:") == len(pins)


def test_the_service_comes_back_but_not_with_a_wrong_setting_and_has_few_rights() -> None:
    service = unit("brimline.service")["Service"]
    assert service["Restart"] == "always"
    assert service["RestartPreventExitStatus"] == "2"  # as bot.operation.commands.WRONG_SETTING
    for right in ("NoNewPrivileges", "PrivateTmp", "PrivateDevices", "ProtectHome"):
        assert service[right] == "true"
    assert service["ProtectSystem"] == "strict"
    assert service["CapabilityBoundingSet"] == ""


def test_the_nightly_backup_runs_beside_the_service_as_the_same_user() -> None:
    backup, service = (
        unit("brimline-backup.service")["Service"],
        unit("brimline.service")["Service"],
    )
    assert backup["User"] == service["User"]
    assert backup["EnvironmentFile"] == service["EnvironmentFile"]
    assert backup["ExecStart"].endswith("brimline backup")
    kept_from_it = {key for key in service if key.startswith(("Protect", "Restrict", "SystemCall"))}
    assert kept_from_it <= set(backup)


@pytest.mark.skipif(shutil.which("systemd-analyze") is None, reason="no systemd here")
@pytest.mark.parametrize("name", ["brimline.service", "brimline-backup.service"])
def test_systemd_understands_each_unit_and_finds_little_exposed(name: str) -> None:
    """Its own scale goes from 0 to 10; below 2 it says OK (systemd-analyze(1), "security")."""
    said = subprocess.run(
        ["systemd-analyze", "verify", DEPLOY / name], capture_output=True, text=True, check=False
    ).stderr.splitlines()
    assert [line for line in said if "not executable" not in line] == []  # it is not installed
    judged = subprocess.run(
        ["systemd-analyze", "security", "--offline=true", "--threshold=20", DEPLOY / name],
        capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert judged.returncode == 0, judged.stdout[-200:]


def test_what_containers_are_given_is_a_setting_of_the_bot_or_called_otherwise() -> None:
    """The file with settings goes to the bot whole, which does not start with one it does not know."""
    known = {f"{PREFIX}{name.upper()}" for name in Settings.model_fields}
    for name in ("compose.yaml", "Caddyfile", "Containerfile", "example.env"):
        given = set(re.findall(rf"{PREFIX}[A-Z_]+", (DEPLOY / name).read_text()))
        assert given <= known, name


def test_the_container_runs_as_nobody_special_and_is_asked_whether_it_is_ready() -> None:
    text = (DEPLOY / "Containerfile").read_text()
    assert text.rindex("USER brimline") > text.rindex("FROM ")
    assert "--require-hashes" in text
    assert "/ready" in text
    kept = set(re.findall(r"! -name '(\w+)\*'", text))
    spoken = {ENGLISH, *(file.parts[-3] for file in CATALOGUES.glob("*/*/*.po"))}
    assert kept == spoken, "the container keeps the days of other languages"
    assert "read_only: true" in (DEPLOY / "compose.yaml").read_text()
