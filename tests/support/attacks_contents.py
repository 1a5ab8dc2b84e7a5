"""Attacks on the web page by contents: paths, files, photos and texts."""

from __future__ import annotations

import os
from urllib.parse import quote

from diagnose.case.loading import load
from knowledge.book import the_book
from tests.support.attacked import JOB, Attack, Target, attack, link
from tests.support.pictures import SECRETS, jpeg, png
from tests.support.serve_fuzz import misses
from tests.support.web import HOST

ROWS: list[Attack] = []
HOSTILE = (
    "<script>planted()</script> \"><img src=x onerror=planted()> {{ 7*7 }} '\"\"\"''' pump new"
)
TOML = 'x"\n[[finding]]\nno = 900\nwhat = "gauge_reads_low"\nstate = "present"\n"""\'\'\'\n#'


@attack(
    ROWS,
    "a path that leads out: dots, encoded, backslash, null, absolute",
    "a job is a plain name of a file in the folder",
)
def _paths(at: Target) -> None:
    names = (
        "../secret.toml", "..%2fsecret.toml", "%2e%2e%2fsecret.toml", "..%252fsecret.toml", "..%5csecret.toml",
        "..\\secret.toml", "%00../secret.toml", "petrel.toml%00", "petrel.toml/../../secret.toml", "/etc/passwd",
        "%2fetc%2fpasswd", quote(str(at.around / "secret.toml"), safe=""), "....//secret.toml", "..%c0%afsecret.toml",
    )  # fmt: skip
    for name in names:
        for path in (
            f"/job/{name}",
            f"/job/{name}/photos",
            f"{JOB}/photo/{name}",
            f"/static/{name}",
        ):
            at.refused(at.tab.get(path), 404)


@attack(
    ROWS,
    "a link, a folder or a pipe in the folder that is named like a job",
    "only real files that lie in the folder are jobs",
)
def _links(at: Target) -> None:
    link(at.jobs / "linked.toml", at.around / "secret.toml")
    link(at.jobs / "petrel.photos", at.around)
    (at.jobs / "folder.toml").mkdir()
    os.mkfifo(at.jobs / "pipe.toml")
    for name in ("linked", "folder", "pipe"):
        at.refused(at.tab.get(f"/job/{name}.toml"), 404)
    assert misses(at.tab.get("/")) == []
    at.refused(at.tab.get(f"{JOB}/photo/secret.toml"), 404)
    at.refused(at.tab.upload(at.tab.get(f"{JOB}/photos"), "photos", "photo", jpeg()), 409)


@attack(
    ROWS,
    "a picture of more pixels than memory (image bomb)",
    "sides are read before anything is kept; nothing is unpacked",
)
def _bomb(at: Target) -> None:
    for data in (png((60_000, 60_000)), jpeg(sides=(65_000, 65_000)), png((20_000, 19_000))):
        at.refused(at.tab.upload(at.tab.get(f"{JOB}/photos"), "photos", "photo", data), 400)
    assert not (at.jobs / "petrel.photos").exists()


@attack(
    ROWS,
    "a page, drawing or program sent as a photo",
    "a photo is known by its bytes, not by its name or type",
)
def _no_picture(at: Target) -> None:
    for data in (
        b"<!DOCTYPE html><script>planted()</script>",
        b"<svg onload=planted()/>",
        b"GIF89a;",
        b"MZ\x90",
        b"%PDF-1.7",
    ):
        at.refused(at.tab.upload(at.tab.get(f"{JOB}/photos"), "photos", "photo", data), 400)
    assert not (at.jobs / "petrel.photos").exists()


@attack(
    ROWS, "a photo that says where and by whom it was taken", "only the picture itself is copied"
)
def _place(at: Target) -> None:
    for data in (jpeg(6), png()):
        at.tab.upload(at.tab.get(f"{JOB}/photos"), "photos", "photo", data)
    kept = b"".join(p.read_bytes() for p in (at.jobs / "petrel.photos").iterdir())
    assert kept
    assert not [s for s in SECRETS if s in kept]


@attack(
    ROWS,
    "a photo with a page behind it",
    "what follows the picture is cut off; its type is fixed and not guessed",
)
def _behind(at: Target) -> None:
    data = jpeg() + b"<script>planted()</script>"
    at.tab.upload(at.tab.get(f"{JOB}/photos"), "photos", "photo", data)
    shown = at.tab.get(f"{JOB}/photo/001.jpg")
    assert b"planted" not in shown.body
    assert shown.headers["content-type"] == "image/jpeg"
    assert shown.headers["x-content-type-options"] == "nosniff"


@attack(
    ROWS,
    "a photo whose file name leads out, or a step that does",
    "a photo gets a name of ours; a step must be one of the book",
)
def _photo_name(at: Target) -> None:
    page = at.tab.get(f"{JOB}/photos")
    at.tab.upload(
        page, "photos", "photo", jpeg(), file_name="../../planted.toml", step="../planted"
    )
    assert [p.name for p in (at.jobs / "petrel.photos").iterdir()] == ["001.jpg"]
    at.unchanged()


@attack(
    ROWS,
    "script in a story, a name, a note, a title",
    "every text is escaped; the policy forbids script in a page",
)
def _script(at: Target) -> None:
    page = at.tab.send(at.tab.get("/new"), "new", story=HOSTILE, by=HOSTILE[:60])
    assert (page.status, misses(page)) == (200, [])
    made = at.tab.send(page, "new", agreed="1", keep=page.form("new").fields.get("keep", []))
    assert misses(made) == []
    job = made.address.removesuffix("/ask")
    at.tab.send(
        at.tab.get(f"{job}/note"), "note", words="oil level ok", note=HOSTILE, by=HOSTILE[:60]
    )
    at.tab.send(at.tab.get(f"{job}/note"), "note", words=HOSTILE)
    for path in ("/", job, f"{job}/note", f"{job}/readings", f"{job}/close"):
        shown = at.tab.get(path)
        assert (shown.status, misses(shown)) == (200, []), path
        assert "planted()" not in shown.text or "&lt;script&gt;planted()" in shown.text


@attack(ROWS, "script in the name of a file", "names are escaped and encoded")
def _file_name(at: Target) -> None:
    name = '"><img src=x onerror=planted()>&#x27;.toml'
    at.file.rename(at.jobs / name)
    for path in ("/", "/shop", f"/job/{quote(name)}", f"/job/{quote(name)}/note"):
        shown = at.tab.get(path)
        assert (shown.status, misses(shown)) == (200, [])


@attack(ROWS, "the words of a template", "texts are values of a template, never templates")
def _template(at: Target) -> None:
    page = at.tab.send(
        at.tab.get("/new"), "new", story="{{ 7*7 }}{% for x in y %} #{7*7} ${7*7} pump"
    )
    assert "{{ 7*7 }}" in page.words
    assert "49" not in page.words


@attack(
    ROWS, "a text that ends its TOML string and begins tables", "a TOML writer quotes every text"
)
def _toml(at: Target) -> None:
    check = f"{JOB}/check/{next(iter(the_book().inspections))}"
    form = at.tab.get(check).form()
    name = next(n for n in form.fields if n.startswith("f:"))
    page = at.tab.post(
        check, {**form.fields, name: "no", "note": TOML, "by": TOML[:60], "kept": "1"}, follow=False
    )
    assert page.status == 303
    case = load(at.file, the_book())
    (record,) = case.finding_records
    assert record.entry.note.startswith(TOML)
    assert 900 not in case.standing


@attack(
    ROWS, "a line break that ends a header", "addresses are encoded; the server refuses line breaks"
)
def _header(at: Target) -> None:
    planted = "a\r\nset-cookie: planted=1\r\n\r\n<script>"
    page = at.tab.upload(
        at.tab.get(f"{JOB}/photos"), "photos", "photo", jpeg(), follow=False, step=planted
    )
    assert page.status == 303
    assert misses(page) == []
    got = at.by_socket(
        f"GET /job/x%0d%0aset-cookie:planted=1 HTTP/1.1\r\nhost: {HOST}\r\nconnection: close\r\n\r\n".encode()
    )
    assert got.startswith(b"HTTP/1.1 404 ")
    assert b"planted=1" not in got.partition(b"\r\n\r\n")[0]


@attack(ROWS, "a fault that shows how it is made inside", "a fault has one page without a trace")
def _inside(at: Target) -> None:
    for text in ("schema = 1\n[[finding]]\nno = 'x'", "\ud7ff = ", "schema = 1\n" + "[" * 5000):
        at.file.write_text(text, "utf-8")
        page = at.tab.get(JOB)
        assert (page.status, misses(page)) == (400, [])
        assert str(at.around) not in page.text
