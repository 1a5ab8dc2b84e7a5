"""Run the server until it is stopped; the only module that imports uvicorn."""

from __future__ import annotations

import socket
from collections.abc import Callable
from pathlib import Path

import uvicorn

from diagnose.errors import UsageError
from diagnose.serve.app import application
from diagnose.serve.folder import JobFolder
from diagnose.serve.guard import Guard, own_addresses, own_names
from diagnose.serve.keys import Door
from diagnose.serve.site import Site

PORT = 8470
_NEXT_PORTS = 20  #: tried where nobody asked for one
_WAITING = 128  #: connections that wait until they are taken
HERE, EVERYWHERE = "127.0.0.1", "0.0.0.0"


def serve(
    folder: Path,
    port: int | None,
    *,
    lan: bool,
    say: Callable[[str], None],
    draw: Callable[[str], None],
) -> None:
    """Serve a folder of case files until Ctrl-C.

    ``port``: None for the usual one, or the next that is free. ``lan``: other machines of the
    network may ask, after they gave the code. ``say`` prints a line for the person, ``draw`` an
    address as a picture that a phone's camera reads, where it can. Raises NoCaseError; UsageError
    where the port is taken.
    """
    jobs = JobFolder(folder)
    bound = _bound(EVERYWHERE if lan else HERE, port)
    at = bound.getsockname()[1]
    say(f"Open http://localhost:{at} in a browser on this machine. Ctrl-C stops it.")
    door = None
    if lan:
        reached = [f"http://{address}:{at}" for address in own_addresses()]
        for address in reached:
            say(f"From a phone or tablet in the same network: {address}")

        def announce(code: str) -> None:
            say(f"Code for the next phone or tablet: {code[:3]} {code[3:]}")
            if reached:
                draw(f"{reached[0]}/code?code={code}")

        door = Door(announce)
    site = Site(jobs, door)
    guard = Guard(own_names(), lan=True) if lan else Guard()
    uvicorn.Server(configured(site, guard)).run(sockets=[bound])


def configured(site: Site, guard: Guard) -> uvicorn.Config:
    """Settings of the server: no word of itself in its answers, nothing believed of a proxy."""
    return uvicorn.Config(
        application(site, guard),
        lifespan="off",
        access_log=False,
        server_header=False,
        date_header=False,
        proxy_headers=False,
        log_level="error",
        ws="none",
        timeout_keep_alive=10,
        timeout_graceful_shutdown=5,
    )


def _bound(host: str, port: int | None) -> socket.socket:
    """A socket that listens on the port; where none was asked for, on the next that is free."""
    ports = [port] if port is not None else range(PORT, PORT + _NEXT_PORTS)
    for each in ports:
        bound = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
        bound.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            bound.bind((host, each))
        except OSError as error:
            bound.close()
            if port is not None:
                raise UsageError(f"port {port}: {error.strerror}; name another") from None
            continue
        bound.listen(_WAITING)
        return bound
    raise UsageError(f"ports {PORT} to {PORT + _NEXT_PORTS - 1} are taken; name one: --port")
