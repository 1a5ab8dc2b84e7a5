"""A command writes the file named and no case, whatever a case holds and however files are named."""

from __future__ import annotations

import os
import re
from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.case.writing import start
from knowledge.book import the_book
from tests.support.command_line import call
from tests.support.complaints import INVENTED
from tests.support.fuzzing import one
from tests.support.watching import snapshot

BOOK = the_book()
#: every command that writes a file besides the case, with the option that names it
WRITERS = [
    (["graph"], "--out", "x.json"),
    (["graph", "--format", "svg"], "--out", "x.svg"),
    (["survey"], "--svg", "x.svg"),
    (["teardown"], "--html", "x.html"),
    (["signoff"], "--html", "x.html"),
    (["bearings"], "--html", "x.html"),
    (["report"], "--out", "x.html"),
]
NAMES = [f"{words[0]} {option}" for words, option, _ in WRITERS]
CLIMBING = "../../evil"


@pytest.fixture
def desk(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder in a folder, with a case that answers every command."""
    folder = tmp_path / "outer" / "desk"
    folder.mkdir(parents=True)
    (folder / "a.toml").write_text(INVENTED["slip_tractor"], "utf-8")
    (folder / "b.toml").write_text(INVENTED["winch"], "utf-8")
    monkeypatch.chdir(folder)
    return folder


@pytest.mark.parametrize(("words", "option", "name"), WRITERS, ids=NAMES)
def test_nothing_written_takes_the_place_of_a_case(
    desk: Path, words: list[str], option: str, name: str
) -> None:
    """By its name, by a link to it, by a link to a link, by a way round, in capitals."""
    (desk / name).symlink_to("b.toml")
    (desk / f"second.{name}").symlink_to(name)
    (desk / f"own.{name}").symlink_to("a.toml")
    before = snapshot(desk)
    for out in (name, f"second.{name}", f"own.{name}", "b.toml", "../desk/a.toml", "new.TOML"):
        done = call(words[0], "a.toml", *words[1:], option, out)
        assert (done.code, len(done.err.splitlines())) == (2, 1), (out, done)
        assert snapshot(desk) == before, out


@pytest.mark.parametrize(("words", "option", "name"), WRITERS, ids=NAMES)
def test_a_file_is_written_where_it_is_named(
    desk: Path, words: list[str], option: str, name: str
) -> None:
    """Up a folder if it says so; a second name of a case on the disk parts from it."""
    before = snapshot(desk.parent)
    for out in (f"../{name}", f"./in..side{name}"):
        assert call(words[0], "a.toml", *words[1:], option, out).code == 0
    new = {
        str(Path(p).relative_to(desk.parent)) for p in snapshot(desk.parent).keys() - before.keys()
    }
    assert new == {name, f"desk/in..side{name}"}
    os.link(desk / "b.toml", desk / f"twin.{name}")
    assert call(words[0], "a.toml", *words[1:], option, f"twin.{name}").code == 0
    assert {p: d for p, d in snapshot(desk.parent).items() if p in before} == before
    done = call(words[0], "a.toml", *words[1:], option, f"nowhere/{name}")
    assert (done.code, len(done.err.splitlines())) == (73, 1)


@pytest.mark.parametrize(("words", "option", "name"), WRITERS, ids=NAMES)
def test_a_title_that_climbs_goes_nowhere(
    desk: Path, words: list[str], option: str, name: str
) -> None:
    """No word of a case becomes a path."""
    text = INVENTED["slip_tractor"]
    for key, value in (("title", CLIMBING), ("by", f"/etc/{CLIMBING}")):
        text, many = re.subn(f'(?m)^{key} = ".*"$', f'{key} = "{value}"', text)
        assert many
    (desk / "evil.toml").write_text(text, "utf-8")
    assert load(desk / "evil.toml", BOOK).job.title == CLIMBING
    before = snapshot(desk.parent)
    assert call(words[0], "evil.toml", *words[1:], option, name).code == 0
    assert snapshot(desk.parent).keys() - before.keys() == {str(desk / name)}


def test_a_linked_case_is_written_through_its_link(desk: Path) -> None:
    """The link stays a link; what it leads to grows, and nothing else."""
    outer = desk.parent / "real.toml"
    start(outer, BOOK, {"title": CLIMBING})
    (desk / "link.toml").symlink_to(outer)
    before = outer.read_bytes()
    assert call("record", "link.toml", "needle_flickers=yes").code == 0
    assert (desk / "link.toml").is_symlink()
    assert outer.read_bytes().startswith(before)
    assert load(outer, BOOK).last_number == 1


def test_a_folder_of_odd_files_is_read_at_once(desk: Path) -> None:
    """A pipe, a device, a link in a circle and a folder among the jobs are passed by."""
    os.mkfifo(desk / "pipe.toml")
    (desk / "zero.toml").symlink_to("/dev/zero")
    (desk / "round.toml").symlink_to("round.toml")
    (desk / "inner.toml").mkdir()
    for words in (["history", "."], ["review", "a.toml", "--with-history", "."]):
        with one("hostile files", words, 10.0):
            done = call(*words)
        assert (done.code, words[0]) in ((0, "history"), (2, "review")), done
        assert "Traceback" not in done.err
    for link in ("round.toml", "zero.toml", "pipe.toml", "inner.toml"):
        with one("hostile files", link):
            done = call("record", link, "needle_flickers=yes")
        assert done.code in (66, 73)
        assert len(done.err.splitlines()) == 1
