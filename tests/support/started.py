"""Processes of tests, forked off one in which everything is loaded already.

To load the product and its libraries takes a process two seconds, and a test run starts dozens; so
does what nearly each of them does for the first time (the tables of complaints, a new database). The
processes are real ones: with a memory, signals, files and an environment of their own, and killed as
others are. What a start itself costs and loads is tested with processes that begin from nothing.
"""

from __future__ import annotations

import atexit
import errno
import fcntl
import functools
import gc
import importlib
import json
import os
import select
import shutil
import socket
import subprocess
import sys
import tempfile
import threading
from pathlib import Path
from typing import Any

ROOT = Path(__file__).parents[2]
LOADED = (
    "bot.cli", "bot.app", "bot.dispatcher", "bot.rehearsal.sitting", "alembic.command",
    "engine.__main__", "engine.cli.commands", "tests.support.small_bot",
    "tests.support.shaken.process",
    "tests.support.telegram_standin",
    "httpcore", "anyio._backends._asyncio", "apscheduler.triggers.interval",  # else at a first call
)  # fmt: skip
_MOST_FILES = 1024
#: What is sent first: that a process will be asked for some time; any other byte asks for one.
_NEEDED = b"?"


class Started(subprocess.Popen[Any]):
    """As `subprocess.Popen([sys.executable, "-m", module, ...])` or with "-c", but begun warm."""

    def __init__(self, *python: str, **how: Any) -> None:
        self._line: socket.socket | None = None
        super().__init__([sys.executable, *python], **how)

    def _execute_child(  # type: ignore[override]  # noqa: PLR0913
        self, args: Any, executable: Any, preexec_fn: Any, close_fds: Any, pass_fds: Any,
        cwd: Any, env: Any, startupinfo: Any, creationflags: Any, shell: Any,
        p2cread: int, p2cwrite: int, c2pread: int, c2pwrite: int, errread: int, errwrite: int,
        restore_signals: Any, gid: Any, gids: Any, uid: Any, umask: Any,
        start_new_session: bool, *more: Any,
    ) -> None:  # fmt: skip
        job = {
            "python": args[1:],
            "cwd": str(cwd or Path.cwd()),
            "environment": dict(os.environ if env is None else env),
            "own_session": start_new_session,
        }
        files = [own if given == -1 else given for own, given in
                 ((0, p2cread), (1, c2pwrite), (2, errwrite))]  # fmt: skip
        self._line = socket.socket(socket.AF_UNIX)
        self._line.connect(_mother())
        socket.send_fds(self._line, [b"+"], files)
        self._line.sendall(json.dumps(job).encode() + b"\n")
        self.pid = int(self._said())
        self._close_pipe_fds(  # type: ignore[attr-defined]
            p2cread, p2cwrite, c2pread, c2pwrite, errread, errwrite
        )
        self._child_created = True

    def _said(self) -> bytes:
        assert self._line is not None
        said = b""
        while not said.endswith(b"\n"):
            more = self._line.recv(1)
            if not more:
                raise ChildProcessError(errno.ECHILD, "the process that starts others is gone")
            said += more
        return said

    def _try_wait(self, wait_flags: int) -> tuple[int, int]:
        assert self._line is not None
        self._line.setblocking(not wait_flags & os.WNOHANG)
        try:
            self._line.recv(1, socket.MSG_PEEK)
        except BlockingIOError:
            return 0, 0
        self._line.setblocking(True)
        status = int(self._said())
        self._line.close()
        return self.pid, status

    def _internal_poll(self, *_: Any, **__: Any) -> int | None:  # type: ignore[override]
        with self._waitpid_lock:  # type: ignore[attr-defined]
            if self.returncode is None:
                pid, status = self._try_wait(os.WNOHANG)
                if pid == self.pid:
                    self._handle_exitstatus(status)  # type: ignore[attr-defined]
        return self.returncode


def run(
    *python: str, timeout: float = 60, given: str | None = None, **how: Any
) -> subprocess.CompletedProcess[str]:
    """As `subprocess.run`, with text in and out; raises subprocess.TimeoutExpired."""
    stdin = subprocess.DEVNULL if given is None else subprocess.PIPE
    with Started(
        *python, stdin=stdin, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, **how
    ) as process:
        try:
            out, err = process.communicate(given, timeout=timeout)
        except BaseException:
            process.kill()
            raise
    return subprocess.CompletedProcess(process.args, process.returncode, out, err)


@functools.cache
def _mother() -> str:
    """The address of the process that others are forked off, one for a whole test run."""
    run = os.environ.get("PYTEST_XDIST_TESTRUNUID", str(os.getpid()))
    folder = Path(tempfile.gettempdir()) / f"brimline-started-{run}"
    folder.mkdir(mode=0o700, exist_ok=True)
    address = str(folder / "socket")
    with (folder / "lock").open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        if not Path(address).exists():
            mother = subprocess.Popen(
                [sys.executable, "-m", "tests.support.started", address],
                cwd=ROOT, stdin=subprocess.DEVNULL, stdout=subprocess.PIPE,
                start_new_session=True,
            )  # fmt: skip
            assert mother.stdout is not None
            assert mother.stdout.readline() == b"ready\n"
            mother.stdout.close()
            mother.returncode = 0  # it ends by itself, after whoever may yet ask it for something
        needs_it = socket.socket(socket.AF_UNIX)
        needs_it.connect(address)
        needs_it.sendall(_NEEDED)
    atexit.register(needs_it.close)
    return address


def _next_job(address: str) -> dict[str, Any]:
    """Fork a process for each job that is asked for; returns in that process, with its job. It ends
    with the last of the processes that need it."""
    needed: list[socket.socket] = []
    with socket.socket(socket.AF_UNIX) as listener:
        listener.bind(address)
        listener.listen(64)
        sys.stdout.write("ready\n")
        sys.stdout.flush()
        tending = 0
        while True:
            called, _, _ = select.select([listener, *needed], [], [])
            while tending and os.waitpid(-1, os.WNOHANG)[0]:
                tending -= 1
            if listener not in called:
                for gone in called:
                    needed.remove(gone)
                    gone.close()
                if not needed:  # the tests are over
                    shutil.rmtree(Path(address).parent, ignore_errors=True)
                    os._exit(0)
                continue
            line, _ = listener.accept()
            asked, files, _, _ = socket.recv_fds(line, 1, 3)
            if asked == _NEEDED:
                needed.append(line)
                continue
            if os.fork() == 0:
                break
            tending += 1
            for file in files:
                os.close(file)
            line.close()
    for one in needed:
        one.close()
    with line.makefile() as said:
        job: dict[str, Any] = json.loads(said.readline())
    started = os.fork()
    if started:
        for file in (0, 1, 2, *files):
            os.close(file)
        _tend(line, started)
    for place, file in enumerate(files):
        os.dup2(file, place)
    os.closerange(3, _MOST_FILES)
    line.detach()
    return job


def _tend(line: socket.socket, process: int) -> None:
    """Tell which process it is and, once it has ended, how."""
    try:
        line.sendall(f"{process}\n".encode())
        _, status = os.waitpid(process, 0)
        line.sendall(f"{status}\n".encode())
    finally:
        os._exit(0)


def _do(job: dict[str, Any]) -> int:
    os.chdir(job["cwd"])
    os.environ.clear()
    os.environ.update(job["environment"])
    if job["own_session"]:
        os.setsid()
    how, what, *arguments = job["python"]
    sys.argv = [what if how == "-m" else how, *arguments]
    # The streams were opened on what the first process had there.
    for name, mode in (("stdin", "r"), ("stdout", "w"), ("stderr", "w")):
        number = ("stdin", "stdout", "stderr").index(name)
        buffering = 1 if name == "stderr" or os.isatty(number) else -1
        setattr(sys, name, open(number, mode, buffering=buffering, closefd=False))  # noqa: SIM115
    if how == "-c":
        exec(compile(what, "<string>", "exec"), {"__name__": "__main__"})
        return 0
    return int(importlib.import_module(what).main() or 0)


def _warm_up() -> None:
    """Do once what those forked off would each do at first."""
    for loaded in LOADED:
        importlib.import_module(loaded)
    from bot.dispatcher import USE_CASES  # noqa: PLC0415 - whoever asks for a process does not load it
    from bot.store.db import make_engine  # noqa: PLC0415
    from bot.store.migrate import upgrade_to_head  # noqa: PLC0415

    USE_CASES.load()
    with tempfile.TemporaryDirectory() as folder:
        engine = make_engine(f"sqlite:///{folder}/new.sqlite3")
        upgrade_to_head(engine)
        engine.dispose()


if __name__ == "__main__":
    _warm_up()
    gc.collect()
    gc.freeze()
    assert threading.active_count() == 1, "to fork a process with threads may lock it up"
    sys.exit(_do(_next_job(sys.argv[1])))
