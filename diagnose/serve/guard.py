"""What every request has to pass: its host, its size, who sends it; the headers of every answer."""

from __future__ import annotations

import contextlib
import ipaddress
import socket
from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass

MOST_FORM = 300_000  #: bytes of a form
MOST_UPLOAD = 15_000_000  #: bytes of a form with a photo
PATIENCE = 120.0  #: seconds for a form to arrive, with a photo over a weak network
HEADERS = {
    "x-content-type-options": "nosniff",
    "referrer-policy": "same-origin",
    "cross-origin-opener-policy": "same-origin",
    "cross-origin-resource-policy": "same-origin",
    "permissions-policy": "geolocation=(), microphone=(), camera=()",
    "x-frame-options": "DENY",
}
_HERE = ("localhost",)
_SAME = ("same-origin", "none", "")


@dataclass(frozen=True, slots=True)
class Guard:
    """Which requests are let through to the screens."""

    names: Collection[str] = _HERE  #: names of this machine that a browser may use
    lan: bool = False  #: whether other machines may ask
    patience: float = PATIENCE  #: seconds for a form to arrive

    def knows_host(self, host: str) -> bool:
        """Whether the Host header names this machine.

        A page elsewhere can point its own name to this machine, so only an address in figures
        or a known name counts.
        """
        name = _without_port(host)
        if name in self.names:
            return True
        try:
            at = ipaddress.ip_address(name.strip("[]"))
        except ValueError:
            return False
        return at.is_loopback or (self.lan and (at.is_private or at.is_link_local))

    def knows_client(self, client: str) -> bool:
        """Whether a machine may ask at all."""
        return self.lan or is_here(client)


def is_here(client: str) -> bool:
    """Whether a request comes from this machine."""
    try:
        at = ipaddress.ip_address(client.partition("%")[0])
    except ValueError:
        return False
    mapped = getattr(at, "ipv4_mapped", None)
    return (mapped or at).is_loopback


def from_this_page(headers: Mapping[str, str]) -> bool:
    """Whether a form was sent by a page of this server, as far as the browser says."""
    if headers.get("sec-fetch-site", "") not in _SAME:
        return False
    origin = headers.get("origin", "")
    if not origin or origin == "null":
        return not origin
    return origin.partition("://")[2] == headers.get("host", "")


def own_names() -> tuple[str, ...]:
    """Names by which other machines may call this one."""
    name = socket.gethostname().lower()
    return (*_HERE, name, f"{name}.local")


def own_addresses() -> tuple[str, ...]:
    """Addresses of this machine in its local network, the likeliest first; may be none."""
    found: list[str] = []
    with contextlib.suppress(OSError), socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as probe:
        probe.connect(("192.0.2.1", 9))  # sends nothing: it only picks the way out
        found.append(str(probe.getsockname()[0]))
    with contextlib.suppress(OSError):
        infos: Iterable[tuple[object, ...]] = socket.getaddrinfo(
            socket.gethostname(), None, socket.AF_INET
        )
        found += [str(info[4][0]) for info in infos if isinstance(info[4], tuple)]
    return tuple(dict.fromkeys(a for a in found if not is_here(a)))


def _without_port(host: str) -> str:
    """The name in a Host header; all of it where what follows is no port."""
    whole = host.strip().lower()
    name, colon, port = whole.rpartition(":")
    return name if colon and port.isdecimal() and len(port) < 6 else whole
