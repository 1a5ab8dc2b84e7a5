"""Photos in the report of a job: on the owner's page, in the technical part, in the texts."""

from __future__ import annotations

import base64
import io
import json
import re
from pathlib import Path

import pytest
from PIL import Image

from diagnose.case.photos import PHOTO_NAME, album_of
from diagnose.output.documents.photos import (
    PhotoEntry,
    for_the_owner,
    photo_entries,
    step_title,
)
from diagnose.output.html.photos import LONGEST_SIDE, embedded
from diagnose.serve.album import keep
from knowledge.book import the_book
from tests.support.command_line import call
from tests.support.pictures import jpeg
from tests.support.web import browser

STEP = "pull_the_relief_valve"
SHORT = """schema = 1
[job]
title = "Petrel"
complaint = "petrol four, low when hot"
[[finding]]
no = 1
what = "gauge_reads_low"
state = "present"
"""
_EMBEDDED = re.compile(r'<img src="data:image/jpeg;base64,([^"]+)"')


def picture(size: tuple[int, int] = (40, 30), form: str = "JPEG", turned: int = 1) -> bytes:
    """A photo whose upper left quarter is red and the rest white."""
    made = Image.new("RGB", size, "white")
    made.paste("red", (0, 0, size[0] // 2, size[1] // 2))
    out = io.BytesIO()
    exif = Image.Exif()
    exif[0x0112] = turned
    made.save(out, form, exif=exif)
    return out.getvalue()


@pytest.fixture
def petrel(tmp_path: Path) -> Path:
    path = tmp_path / "petrel.toml"
    path.write_text(SHORT, "utf-8")
    return path


def test_the_page_holds_the_photos_with_the_titles_of_their_steps(petrel: Path) -> None:
    """On the owner's page and in the technical part, in one file; a damaged one is named only."""
    keep(petrel, picture(), STEP)
    keep(petrel, picture(form="PNG"), "")
    keep(petrel, jpeg(), STEP)
    out = petrel.with_name("report.html")
    done = call("report", petrel, "--out", out)
    assert done.code == 0
    assert f"petrel.photos/003-{STEP}.jpg" in done.err
    page = out.read_text("utf-8")
    owner, _, technical = page.partition("The technical part")
    for part in (owner, technical):
        assert len(_EMBEDDED.findall(part)) == 2
        assert step_title(STEP) in part
    for name in (f"001-{STEP}.jpg", "002.png", f"003-{STEP}.jpg"):
        assert f"petrel.photos/{name}" in technical
    assert "img-src data:" in page
    assert 'src="/' not in page


@pytest.mark.parametrize("turned", [1, 3, 6, 8])
def test_a_large_photo_becomes_small_and_stays_upright(petrel: Path, turned: int) -> None:
    """The red quarter is where a viewer that heeds the turn shows it."""
    corner = {1: (0.2, 0.2), 3: (0.8, 0.8), 6: (0.8, 0.2), 8: (0.2, 0.8)}[turned]
    keep(petrel, picture((1500, 1000), turned=turned), STEP)
    (address,) = embedded(photo_entries(petrel), petrel.parent).values()
    data = base64.b64decode(address.partition(",")[2])
    with Image.open(io.BytesIO(data)) as shown:
        assert max(shown.size) == LONGEST_SIDE
        assert (shown.size[0] > shown.size[1]) is (turned in (1, 3))
        at = int(corner[0] * shown.size[0]), int(corner[1] * shown.size[1])
        red, green, _ = shown.convert("RGB").getpixel(at)  # type: ignore[misc]
        assert red > 200
        assert green < 60
        assert not shown.getexif()


@pytest.mark.parametrize(
    "data", [b"", b"\xff\xd8\xff", b"<svg/>", picture()[:200], picture()[:-40]]
)
def test_what_cannot_be_read_is_left_out(petrel: Path, data: bytes) -> None:
    """Whatever bytes lie in the folder under the name of a photo."""
    album_of(petrel).mkdir()
    (album_of(petrel) / "001.jpg").write_bytes(data)
    (album_of(petrel) / "002.png").write_bytes(data)
    assert set(embedded(photo_entries(petrel), petrel.parent)) == set()


def test_the_texts_name_the_files(petrel: Path) -> None:
    """``review --full`` and the JSON of ``review``."""
    keep(petrel, picture(), STEP)
    text = call("review", petrel, "--full").out
    assert f"petrel.photos/001-{STEP}.jpg: {step_title(STEP)[:12]}" in text
    (entry,) = json.loads(call("review", petrel, "--json").out)["photos"]
    assert entry == {
        "number": 1, "file": f"001-{STEP}.jpg", "path": f"petrel.photos/001-{STEP}.jpg",
        "step": STEP, "says": step_title(STEP),
    }  # fmt: skip


def test_the_page_of_the_server_shows_them_too(petrel: Path) -> None:
    """At addresses of the server itself."""
    tab = browser(petrel.parent)
    keep(petrel, picture(), STEP)
    page = tab.get("/job/petrel.toml/report")
    src = f"/job/petrel.toml/photo/001-{STEP}.jpg"
    assert page.text.count(f'src="{src}"') == 2
    assert "img-src 'self'" in page.text
    assert "data:" not in page.text
    assert tab.get(src).headers["content-type"] == "image/jpeg"


def entry(number: int, step: str = "") -> PhotoEntry:
    file = f"{number:03d}.jpg"
    return PhotoEntry(number=number, file=file, path=file, step=step, says=step)


def test_the_owner_sees_those_that_show_what_was_wrong() -> None:
    """Then those of any step, then the last; in the order they were taken."""
    photos = [entry(1), entry(2, "wrong"), entry(3, "step"), entry(4, "step"), entry(5), entry(6)]
    shown = [p.number for p in for_the_owner(photos, {"wrong"})]
    assert shown == [2, 3, 4]
    assert [p.number for p in for_the_owner(photos[4:], {"wrong"})] == [5, 6]
    assert for_the_owner([], {"wrong"}) == ()


def test_every_step_fits_the_name_of_a_photo() -> None:
    """The id of every check and task, so that no photo loses its step."""
    for step in (*the_book().inspections, *the_book().tasks):
        assert PHOTO_NAME.fullmatch(f"001-{step}.jpg"), step
        assert step_title(step)
    assert album_of(Path("a/b.toml")) == Path("a/b.photos")
