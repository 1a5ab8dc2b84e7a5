"""The one-time code of ``serve --lan`` as a QR code: what it says, where it is drawn, where not."""

from __future__ import annotations

import io
import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

from diagnose.cli.commands.serve import draw_address
from diagnose.serve.keys import Door
from diagnose.serve.qr import Terminal, drawn
from tests.support import qr_reader
from tests.support.command_line import environment
from tests.support.serving import free_port
from tests.support.web import browser, jobs_in

ADDRESSES = ("http://10.0.0.7:80/code?code=000000", "http://192.168.178.123:18470/code?code=907142")


@pytest.mark.parametrize("address", ADDRESSES)
def test_every_way_to_draw_it_can_be_read(address: str) -> None:
    """In blocks with and without colours, and in blanks on colours."""
    coloured = drawn(address, Terminal(80))
    assert qr_reader.read(qr_reader.from_blocks(coloured, inked=1)) == address
    plain = drawn(address, Terminal(80, colours=False))
    assert "\x1b" not in "".join(plain)
    assert qr_reader.read(qr_reader.from_blocks(plain, inked=0)) == address
    blanks = drawn(address, Terminal(80, blocks=False))
    assert "".join(blanks).isascii()
    assert qr_reader.read(qr_reader.from_colours(blanks)) == address


@pytest.mark.parametrize("terminal", [Terminal(80), Terminal(80, blocks=False)])
def test_it_fits_a_screen_and_has_its_quiet_zone(terminal: Terminal) -> None:
    """Lines of one width; two light modules all around."""
    lines = drawn(ADDRESSES[1], terminal)
    widths = {len(re.sub(r"\x1b\[[\d;]*m", "", line)) for line in lines}
    assert len(widths) == 1
    assert max(widths) <= 80
    assert len(lines) <= (20 if terminal.blocks else 40)
    rows = (
        qr_reader.from_blocks(lines, inked=1) if terminal.blocks else qr_reader.from_colours(lines)
    )
    assert not any(any(row) for row in (*rows[:2], *rows[-2:]))
    assert not any(row[i] for row in rows for i in (0, 1, -1, -2))


def test_where_there_is_no_room_there_is_none() -> None:
    """One column less than it takes, or a terminal that shows neither blocks nor colours."""
    wide = len(drawn(ADDRESSES[0], Terminal(80, colours=False))[0])
    assert drawn(ADDRESSES[0], Terminal(wide))
    assert drawn(ADDRESSES[0], Terminal(wide - 1)) == ()
    assert drawn(ADDRESSES[0], Terminal(2 * wide, blocks=False))
    assert drawn(ADDRESSES[0], Terminal(2 * wide - 1, blocks=False)) == ()
    assert drawn(ADDRESSES[0], Terminal(80, blocks=False, colours=False)) == ()


def test_a_code_read_by_the_camera_is_filled_in(tmp_path: Path) -> None:
    """Opening the address lets nobody in; pressing the button does, once."""
    codes: list[str] = []
    phone = browser(jobs_in(tmp_path, "petrel"), door=Door(codes.append), lan=True)
    phone.client, phone.host = "192.168.7.20", "192.168.7.1:8470"
    page = phone.get(f"/code?code={codes[0]}")
    assert page.form("code").fields["code"] == [codes[0]]
    assert phone.get("/", follow=False).status == 303, "not in yet"
    assert len(codes) == 1
    assert "Petrel" in phone.send(page, "code").text
    assert phone.get(f"/code?code={codes[1]}").form("code").fields["code"] == [codes[1]]
    for odd in ("12345", "1234567", "<b>", "12345x", "１２３４５６"):
        assert phone.get("/code?code=" + odd.encode().hex()).form("code").fields["code"] == [""]


class _Screen(io.StringIO):
    """Standard error of a terminal, or of none."""

    def __init__(self, *, terminal: bool, encoding: str) -> None:
        super().__init__()
        self._terminal, self._encoding = terminal, encoding

    def isatty(self) -> bool:
        return self._terminal

    @property
    def encoding(self) -> str:  # type: ignore[override]
        return self._encoding


@pytest.mark.parametrize(
    ("terminal", "encoding", "columns", "more", "shown"),
    [
        (True, "utf-8", "80", {}, "▀"),
        (True, "ascii", "80", {}, "\x1b[40m  "),
        (True, "utf-8", "30", {}, ""),
        (True, "ascii", "50", {}, ""),
        (True, "ascii", "80", {"TERM": "dumb"}, ""),
        (True, "ascii", "80", {"NO_COLOR": "1"}, ""),
        (False, "utf-8", "80", {}, ""),
    ],
)
def test_only_a_terminal_that_can_show_it_gets_it(
    monkeypatch: pytest.MonkeyPatch,
    terminal: bool,
    encoding: str,
    columns: str,
    more: dict[str, str],
    shown: str,
) -> None:
    """Not a pipe, a narrow terminal, or one without blocks and colours."""
    screen = _Screen(terminal=terminal, encoding=encoding)
    monkeypatch.setattr(sys, "stderr", screen)
    monkeypatch.delenv("NO_COLOR", raising=False)
    for name, value in {"COLUMNS": columns, "TERM": "xterm", **more}.items():
        monkeypatch.setenv(name, value)
    draw_address(ADDRESSES[0])
    said = screen.getvalue()
    assert bool(said) is bool(shown)
    assert shown in said
    assert encoding != "ascii" or said.isascii()


@pytest.mark.skipif(sys.platform == "win32", reason="needs a pseudo-terminal")
def test_the_command_shows_the_code_that_holds(tmp_path: Path) -> None:
    """On a pseudo-terminal: the picture says what the line above it says."""
    said = _said(jobs_in(tmp_path, "petrel"))
    code = re.search(r"Code for the next phone or tablet: (\d{3}) (\d{3})", said)
    assert code, said
    lines = [line for line in said.splitlines() if "\x1b[30;47" in line]
    assert bool(lines) is ("in the same network" in said)
    if lines:
        address = qr_reader.read(qr_reader.from_blocks(lines, inked=1))
        assert address.endswith(f"/code?code={code[1]}{code[2]}")


def _said(folder: Path) -> str:
    """What the command prints on a terminal of 80 columns before it waits."""
    words = [sys.executable, "-m", "diagnose", "serve", str(folder), "--lan"]
    env = {**environment(), "TERM": "xterm", "PYTHONIOENCODING": "utf-8"}
    env.pop("NO_COLOR", None)
    reading, writing = os.openpty()
    process = subprocess.Popen(
        [*words, "--port", str(free_port())], env=env, stdout=subprocess.DEVNULL, stderr=writing
    )
    os.close(writing)
    said = b""
    try:
        while not _is_whole(said):
            said += os.read(reading, 65_536)
    finally:
        process.terminate()  # SIGINT is ignored below a shell's background job
        process.wait(20)
        os.close(reading)
    return said.decode("utf-8", "replace")


def _is_whole(said: bytes) -> bool:
    """Whether the code and, where it is drawn, the last line of the drawing have come."""
    after = said.partition(b"next phone or tablet: ")[2]
    lines = after.count(b"\n")
    return lines > 16 if b"in the same network" in said else lines > 0
