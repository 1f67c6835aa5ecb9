"""No test reaches the network; those marked `loopback` reach this machine."""

from __future__ import annotations

import ipaddress
import socket
from typing import Any

import pytest


class NetworkReachedError(AssertionError):
    """A test tried to reach the network."""


@pytest.fixture(autouse=True)
def no_network(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch) -> None:
    """Make connections fail: all of them, or, with the marker `loopback`, those that go out."""
    loopback = request.node.get_closest_marker("loopback") is not None
    connect, connect_ex = socket.socket.connect, socket.socket.connect_ex

    def check(sock: socket.socket, address: Any) -> None:
        if sock.family == socket.AF_UNIX or (loopback and _is_loopback(address[0])):
            return
        raise NetworkReachedError(f"a test tried to connect to {address!r}")

    def guarded_connect(sock: socket.socket, address: Any) -> None:
        check(sock, address)
        connect(sock, address)

    def guarded_connect_ex(sock: socket.socket, address: Any) -> int:
        check(sock, address)
        return connect_ex(sock, address)

    monkeypatch.setattr(socket.socket, "connect", guarded_connect)
    monkeypatch.setattr(socket.socket, "connect_ex", guarded_connect_ex)


def _is_loopback(host: str) -> bool:
    try:
        return ipaddress.ip_address(host).is_loopback
    except ValueError:
        return host == "localhost"
