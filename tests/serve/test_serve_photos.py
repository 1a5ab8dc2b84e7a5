"""Photos: what they are is seen from their bytes, what they say of the person is taken out."""

from __future__ import annotations

import random
from pathlib import Path

import pytest

from diagnose.case.photos import album_of, photos_of
from diagnose.errors import CannotWriteError
from diagnose.serve.album import keep
from diagnose.serve.guard import MOST_UPLOAD
from diagnose.serve.pictures import NoPhotoError, cleaned
from tests.support.pictures import SECRETS, jpeg, png
from tests.support.web import browser, jobs_in

PHOTOS = "/job/petrel.toml/photos"
NO_PHOTOS = {
    "empty": b"",
    "text": b"hello",
    "page": b"<!DOCTYPE html><script>alert(1)</script>",
    "drawing": b'<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>',
    "gif": b"GIF89a\x01\x00\x01\x00",
    "only a head": b"\xff\xd8\xff",
    "no picture in it": b"\xff\xd8\xff\xe0\x00\x10JFIF\0\x01\x01\x00\x00\x01\x00\x01\x00\x00\xff\xd9",
    "cut": jpeg()[:150],
    "cut in the scan": jpeg().partition(b"\xff\xd9")[0],
    "png cut": png()[:60],
    "png without a head": png()[:8] + png()[33:],
    "png too large": png((60_000, 60_000)),
    "jpeg too large": jpeg(sides=(65_000, 65_000)),
    "jpeg of nothing": jpeg(sides=(0, 5)),
    "page behind a head": b"\xff\xd8\xff<script>alert(1)</script>",
}


@pytest.mark.parametrize("data", NO_PHOTOS.values(), ids=NO_PHOTOS)
def test_what_is_no_photo_is_not_kept(data: bytes, tmp_path: Path) -> None:
    with pytest.raises(NoPhotoError):
        cleaned(data)
    with pytest.raises(NoPhotoError):
        keep(jobs_in(tmp_path, "petrel") / "petrel.toml", data, "")
    assert photos_of(tmp_path / "petrel.toml") == ()


@pytest.mark.parametrize("data", [jpeg(), jpeg(6), jpeg(3, "<"), png()])
def test_nothing_of_place_time_or_person_stays(data: bytes) -> None:
    """The picture's own bytes stay as they were."""
    kind, clean = cleaned(data)
    assert not [s for s in SECRETS if s in clean]
    assert len(clean) < len(data)
    if kind == "jpg":
        scan = data[data.index(b"\xff\xda") : data.index(b"\xff\xd9")]
        assert clean.endswith(scan + b"\xff\xd9")
        assert b"\xff\xfe" not in clean
    else:
        assert clean.endswith(png()[-12 - len(SECRETS[1]) : -len(SECRETS[1])])


@pytest.mark.parametrize("order", [">", "<"])
@pytest.mark.parametrize("turned", [1, 3, 6, 8])
def test_a_photo_stays_the_right_way_up(turned: int, order: str) -> None:
    """The way it is turned is all that is left of its metadata, and reads as before."""
    from diagnose.serve.pictures import orientation, segments

    _, clean = cleaned(jpeg(turned, order))
    found = [orientation(part) for marker, part in segments(clean) if marker == 0xE1]
    assert found == ([turned] if turned > 1 else [])
    assert cleaned(clean)[1] == clean, "cleaning twice changes nothing"


def test_any_bytes_are_a_photo_or_refused() -> None:
    """Cut, changed and stretched photos never do anything else."""
    dice = random.Random(20)
    kept = 0
    for _ in range(3000):
        data = bytearray(dice.choice([jpeg(6), png()]))
        for _ in range(dice.randrange(1, 6)):
            data[dice.randrange(len(data))] = dice.randrange(256)
        del data[dice.randrange(len(data)) :][dice.randrange(40) :]
        try:
            kind, clean = cleaned(bytes(data[: dice.choice([None, dice.randrange(400)])]))
        except NoPhotoError:
            continue
        kept += 1
        assert cleaned(clean) == (kind, clean)
    assert kept > 100


def test_a_photo_is_kept_beside_the_case_and_shown(tmp_path: Path) -> None:
    (tmp_path / "petrel.toml").write_text("schema = 1\n", "utf-8")
    tab = browser(tmp_path)
    step = "pull_the_relief_valve"
    page = tab.get(f"{PHOTOS}?step={step}")
    assert page.form("photos").fields["step"] == [step]
    page = tab.upload(page, "photos", "photo", jpeg(6))
    assert page.status == 200
    assert 'href="/job/petrel.toml/check/pull_the_relief_valve"' in page.text, "back to the check"
    (kept,) = album_of(tmp_path / "petrel.toml").iterdir()
    assert not [s for s in SECRETS if s in kept.read_bytes()]
    photo = tab.get(f"/job/petrel.toml/photo/{kept.name}")
    assert (photo.status, photo.headers["content-type"]) == (200, "image/jpeg")
    assert photo.body == kept.read_bytes()
    check = tab.get(f"/job/petrel.toml/check/{step}")
    assert f'<img src="/job/petrel.toml/photo/{kept.name}"' in check.text
    page = tab.upload(tab.get(PHOTOS), "photos", "photo", png())
    names = [p.file for p in photos_of(tmp_path / "petrel.toml")]
    assert [n.partition(".")[2] for n in names] == ["jpg", "png"]
    report = tab.get("/job/petrel.toml/report")
    assert all(f"/job/petrel.toml/photo/{n}" in report.text for n in names)
    assert "img-src 'self'" in report.text


@pytest.mark.parametrize("data", [b"", b"<html>", b"x" * 100])
def test_a_refused_photo_says_why(tmp_path: Path, data: bytes) -> None:
    tab = browser(jobs_in(tmp_path, "petrel"))
    page = tab.upload(tab.get(PHOTOS), "photos", "photo", data)
    assert page.status == 400
    assert "photo" in page.words
    assert not album_of(tmp_path / "petrel.toml").exists()


def test_a_photo_has_a_size(tmp_path: Path) -> None:
    tab = browser(jobs_in(tmp_path, "petrel"))
    page = tab.upload(tab.get(PHOTOS), "photos", "photo", jpeg() + bytes(MOST_UPLOAD))
    assert page.status == 413
    page = tab.upload(tab.get("/job/petrel.toml/note"), "note", "photo", bytes(400_000))
    assert page.status == 413, "only where photos are sent"


@pytest.mark.parametrize(
    "name", ["../petrel.toml", "..%2f..%2fsecret", "002.jpg", "001.JPG", "001.jpg%00", "001-x.svg"]
)
def test_only_photos_of_the_job_are_handed_out(tmp_path: Path, name: str) -> None:
    tab = browser(jobs_in(tmp_path, "petrel"))
    keep(tmp_path / "petrel.toml", jpeg(), "no such step")
    (album_of(tmp_path / "petrel.toml") / "001-x.svg").write_text("<svg/>", "utf-8")
    (album_of(tmp_path / "petrel.toml") / "002.jpg").symlink_to(tmp_path / "petrel.toml")
    assert tab.get("/job/petrel.toml/photo/001.jpg").status == 200
    assert tab.get(f"/job/petrel.toml/photo/{name}").status == 404


def test_an_album_that_leads_out_is_no_album(tmp_path: Path) -> None:
    case = jobs_in(tmp_path, "petrel") / "petrel.toml"
    (tmp_path / "elsewhere").mkdir()
    album_of(case).symlink_to(tmp_path / "elsewhere")
    with pytest.raises(CannotWriteError, match="is a link"):
        keep(case, jpeg(), "")
    assert photos_of(case) == ()
    assert list((tmp_path / "elsewhere").iterdir()) == []
