"""What the attacks on the web page aim at: a served folder, with a secret beside it."""

from __future__ import annotations

import os
import socket
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path

from diagnose.serve.guard import Guard
from diagnose.serve.keys import Door
from tests.support.serve_fuzz import SECRET, misses
from tests.support.serving import in_a_thread
from tests.support.web import Browser, Page, browser

JOB = "/job/petrel.toml"
NOTE = f"{JOB}/note"
PHONE = "192.168.7.20"


@dataclass
class Target:
    """A served folder with one job, and a browser that looks at it."""

    around: Path
    codes: list[str] = field(default_factory=list)
    tab: Browser = field(init=False)

    def __post_init__(self) -> None:
        (self.around / "secret.toml").write_text(
            f'schema = 1\n[job]\ntitle = "{SECRET}"\n', "utf-8"
        )
        self.jobs.mkdir()
        self.file.write_text('schema = 1\n[job]\ntitle = "Petrel"\n', "utf-8")
        self.tab = browser(self.jobs)

    @property
    def jobs(self) -> Path:
        """The folder that is served."""
        return self.around / "jobs"

    @property
    def file(self) -> Path:
        """The file of the one job."""
        return self.jobs / "petrel.toml"

    def phone(self) -> Browser:
        """Another machine of the workshop, on a server that was started with --lan."""
        made = browser(self.jobs, door=Door(self.codes.append), lan=True)
        made.client, made.host = PHONE, "192.168.7.1:8470"
        return made

    def form(self) -> dict[str, str | list[str]]:
        """A form that would save an entry."""
        return {**self.tab.get(NOTE).form("note").fields, "words": "oil level ok"}

    def refused(self, page: Page, *statuses: int) -> None:
        """Hold an answer to being a refusal that changed and shows nothing."""
        assert page.status in statuses, page.status
        assert misses(page) == []
        self.unchanged()

    def unchanged(self) -> None:
        """Hold the folder to be as it was."""
        assert self.file.read_text("utf-8") == 'schema = 1\n[job]\ntitle = "Petrel"\n'
        assert {p.name for p in self.around.iterdir()} == {"jobs", "secret.toml"}
        assert SECRET in (self.around / "secret.toml").read_text("utf-8")

    def by_socket(self, *pieces: bytes, patience: float = 0.3) -> bytes:
        """What the server answers to bytes as they are, which the sender never ends."""
        with (
            in_a_thread(self.jobs, Guard(patience=patience)) as port,
            socket.create_connection(("127.0.0.1", port), 20) as line,
        ):
            for piece in pieces:
                line.sendall(piece)
            got = b""
            while more := line.recv(65_536):
                got += more
            return got


@dataclass(frozen=True)
class Attack:
    """One attack: its name, what stops it, and the attempt."""

    name: str
    stopped_by: str
    attempt: Callable[[Target], None]


Attempt = Callable[[Target], None]


def attack(rows: list[Attack], name: str, stopped_by: str) -> Callable[[Attempt], Attempt]:
    """Add an attempt to the rows."""

    def added(attempt: Attempt) -> Attempt:
        rows.append(Attack(name, stopped_by, attempt))
        return attempt

    return added


def link(path: Path, to: Path) -> None:
    """Make a link that leads out of the folder."""
    os.symlink(to, path)
