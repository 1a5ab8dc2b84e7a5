"""The server in a process of its own, for as long as it is needed."""

from __future__ import annotations

import contextlib
import re
import signal
import socket
import subprocess
import sys
import threading
from collections.abc import Iterator, Mapping, Sequence
from http.client import HTTPConnection
from pathlib import Path

import uvicorn
from starlette.types import ASGIApp, Receive, Scope, Send

from diagnose.serve.folder import JobFolder
from diagnose.serve.guard import Guard
from diagnose.serve.running import configured
from diagnose.serve.site import Site
from tests.support.command_line import environment

_ADDRESS = re.compile(r"http://localhost:\d+")


def free_port() -> int:
    """A port nobody uses at the moment."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port: int = probe.getsockname()[1]
        return port


@contextlib.contextmanager
def serving(
    command: Sequence[str | Path] = (),
    folder: Path | None = None,
    *,
    cwd: Path | None = None,
    env: Mapping[str, str] | None = None,
) -> Iterator[str]:
    """Serve a folder; the address of the page. It is stopped as Ctrl-C does in the end."""
    words = list(command) or [sys.executable, "-m", "diagnose", "serve", str(folder)]
    process = subprocess.Popen(
        [*words, "--port", str(free_port())],
        cwd=cwd,
        env=dict(env or environment()),
        stdout=subprocess.DEVNULL,
        stderr=subprocess.PIPE,
        text=True,
    )
    try:
        assert process.stderr is not None
        line = process.stderr.readline()
        found = _ADDRESS.search(line)
        assert found, line + process.stderr.read()
        yield found[0]
        assert process.poll() is None, f"it ended by itself: {process.returncode}"
    finally:
        process.send_signal(signal.SIGINT)
        try:
            process.wait(20)
        except subprocess.TimeoutExpired:
            process.kill()


@contextlib.contextmanager
def killed_at_last(folder: Path) -> Iterator[tuple[subprocess.Popen[str], int]]:
    """Serve a folder; the process and its port. It is killed in the end."""
    port = free_port()
    words = [sys.executable, "-m", "diagnose", "serve", str(folder), "--port", str(port)]
    process = subprocess.Popen(words, env=environment(), stderr=subprocess.PIPE, text=True)
    assert process.stderr is not None
    try:
        process.stderr.readline()  # from then on it listens
        yield process, port
    finally:
        process.kill()
        process.wait()


def wire(port: int) -> ASGIApp:
    """What asks a server of this machine over the network, for a ``Browser`` to call.

    Raises OSError or HTTPException where the server is gone.
    """

    async def asked(scope: Scope, receive: Receive, send: Send) -> None:
        message = await receive()
        line = HTTPConnection("127.0.0.1", port, timeout=60)
        try:
            query = scope["query_string"].decode()
            path = scope["raw_path"].decode() + (f"?{query}" if query else "")
            line.putrequest(scope["method"], path, skip_host=True, skip_accept_encoding=True)
            for name, value in scope["headers"]:
                line.putheader(name.decode(), value.decode("latin-1"))
            line.endheaders(message["body"])
            answer = line.getresponse()
            body = answer.read()
        finally:
            line.close()
        headers = [(n.encode(), v.encode("latin-1")) for n, v in answer.getheaders()]
        await send({"type": "http.response.start", "status": answer.status, "headers": headers})
        await send({"type": "http.response.body", "body": body})

    return asked


@contextlib.contextmanager
def in_a_thread(folder: Path, guard: Guard) -> Iterator[int]:
    """Serve a folder in a thread of this process, with the settings of the command; the port."""
    with socket.socket() as bound:
        bound.bind(("127.0.0.1", 0))
        bound.listen()
        server = uvicorn.Server(configured(Site(JobFolder(folder)), guard))
        thread = threading.Thread(target=server.run, kwargs={"sockets": [bound]})
        thread.start()
        try:
            yield bound.getsockname()[1]
        finally:
            server.should_exit = server.force_exit = True
            thread.join()
