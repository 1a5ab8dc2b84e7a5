"""What the web page lets in: host, forms, paths, sizes, other machines; what it says of faults."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.errors import NoCaseError
from diagnose.serve import trouble
from diagnose.serve.addresses import ADDRESSES
from diagnose.serve.exchange import Asked
from diagnose.serve.folder import JobFolder
from diagnose.serve.guard import MOST_FORM, Guard, from_this_page, is_here
from diagnose.serve.keys import MOST_TRIES, PAUSE, Door, FormKeys
from tests.support.web import Browser, browser, jobs_in

ELSEWHERE = "192.168.7.20"


@pytest.fixture
def here(tmp_path: Path) -> Browser:
    """A browser over a folder with one job, beside a file that is none of its business."""
    jobs = tmp_path / "jobs"
    jobs.mkdir()
    (tmp_path / "secret.toml").write_text('schema = 1\n[job]\ntitle = "SECRET"\n', "utf-8")
    return browser(jobs_in(jobs, "petrel"))


@pytest.mark.parametrize(
    ("host", "known"),
    [
        ("localhost:8470", True),
        ("127.0.0.1:8470", True),
        ("[::1]:8470", True),
        ("LOCALHOST", True),
        ("evil.example", False),
        ("localhost.evil.example", False),
        ("127.0.0.1.evil.example:8470", False),
        ("192.168.7.1:8470", False),
        ("", False),
        ("a@localhost", False),
    ],
)
def test_the_host_must_be_this_machine(here: Browser, host: str, known: bool) -> None:
    """A page elsewhere may point its own name here; it is not answered."""
    here.host = host
    page = here.get("/")
    assert (page.status == 200) is known
    assert ("Petrel" in page.text) is known


def test_only_this_machine_by_default(here: Browser) -> None:
    here.client = ELSEWHERE
    assert here.get("/").status == 403


def test_a_network_address_only_with_lan() -> None:
    assert Guard(lan=True).knows_host("192.168.7.1:8470")
    assert not Guard(lan=True).knows_host("8.8.8.8")
    assert not Guard(lan=True).knows_host("evil.example")
    assert [is_here(a) for a in ("127.0.0.1", "::1", "::ffff:127.0.0.1", ELSEWHERE, "x")] == [
        True, True, True, False, False,
    ]  # fmt: skip


def test_every_answer_forbids_what_is_outside(here: Browser) -> None:
    """No script or style in a page, nothing from another host, no frame around it."""
    jobs_in(_folder(here), "crane_truck")
    (_folder(here) / "empty.toml").write_text("schema = 1\n", "utf-8")
    for address in (
        "/",
        "/new",
        "/job/crane_truck.toml",
        "/job/crane_truck.toml/nothing",
        "/nothing",
    ):
        headers = here.get(address).headers
        policy = headers["content-security-policy"]
        assert "default-src 'none'" in policy
        assert "unsafe" not in policy
        assert "http" not in policy
        assert headers["x-frame-options"] == "DENY"
        assert headers["x-content-type-options"] == "nosniff"
    for address in ("/job/empty.toml/report", "/job/crane_truck.toml/survey.svg"):
        policy = here.get(address).headers["content-security-policy"]
        assert "script" not in policy
        assert "default-src 'none'" in policy


def test_a_page_asks_for_nothing_outside(here: Browser) -> None:
    jobs_in(_folder(here), "crane_truck")
    for address in ("/", "/new", "/job/crane_truck.toml", "/job/crane_truck.toml/ask", "/shop"):
        text = here.get(address).text
        assert "//" not in text.replace("<!DOCTYPE html>", "")
        assert "style=" not in text
        assert "<script>" not in text


@pytest.mark.parametrize("token", ["", "wrong", "é", "0" * 64])
def test_a_form_needs_its_token(here: Browser, token: str) -> None:
    """What was put in is shown again; nothing is saved."""
    page = here.get("/job/petrel.toml/note")
    before = (_folder(here) / "petrel.toml").read_bytes()
    answer = here.send(page, "note", words="oil level ok", token=token)
    assert answer.status == 409
    assert "not saved yet" in answer.words
    assert "oil level ok" in answer.text
    assert (_folder(here) / "petrel.toml").read_bytes() == before
    assert here.send(answer, "note").status == 200
    assert (_folder(here) / "petrel.toml").read_bytes() != before


def test_a_token_of_another_session_does_not_hold() -> None:
    keys = FormKeys()
    assert keys.fits("mine", keys.token("mine"))
    assert not keys.fits("mine", keys.token("yours"))
    assert not keys.fits("", keys.token(""))
    assert not keys.fits("mine", FormKeys().token("mine"))


@pytest.mark.parametrize(
    "headers",
    [
        {"sec-fetch-site": "cross-site"},
        {"sec-fetch-site": "same-site"},
        {"origin": "http://evil.example"},
        {"origin": "http://localhost:9999"},
        {"origin": "null"},
    ],
)
def test_a_form_from_another_page_is_refused(here: Browser, headers: dict[str, str]) -> None:
    form = here.get("/job/petrel.toml/note").form("note")
    answer = here.post(form.action, {**form.fields, "words": "oil level ok"}, headers=headers)
    assert answer.status == 403
    assert "oil level ok" not in (_folder(here) / "petrel.toml").read_text("utf-8")


def test_a_form_of_this_page_is_taken() -> None:
    assert from_this_page({"origin": "http://localhost:8470", "host": "localhost:8470"})
    assert from_this_page({"sec-fetch-site": "same-origin"})
    assert from_this_page({})


@pytest.mark.parametrize(
    "name",
    [
        "../secret.toml",
        "..%2fsecret.toml",
        "%2e%2e%2fsecret.toml",
        "..%5csecret.toml",
        "/etc/passwd",
        "%2fetc%2fpasswd",
        "petrel.toml%00.toml",
        ".hidden.toml",
        "linked.toml",
        "folder.toml",
        "notes.txt",
        "secret.toml",
        "",
    ],
)
def test_nothing_outside_the_folder(here: Browser, name: str) -> None:
    """Neither by dots, by an absolute path, nor by a link that leads out."""
    jobs = _folder(here)
    (jobs / "linked.toml").symlink_to(jobs.parent / "secret.toml")
    (jobs / ".hidden.toml").write_text('schema = 1\n[job]\ntitle = "SECRET"\n', "utf-8")
    (jobs / "folder.toml").mkdir()
    (jobs / "notes.txt").write_text("SECRET", "utf-8")
    for screen in ("", "/why", "/report", "/photos", "/photo/001.jpg", "/note"):
        page = here.get(f"/job/{name}{screen}")
        assert page.status in (404, 405), name
        assert "SECRET" not in page.text
    listed = here.get("/").text
    assert "SECRET" not in listed
    assert "linked" not in listed


def test_a_link_within_the_folder_is_a_job(here: Browser) -> None:
    jobs = _folder(here)
    (jobs / "same.toml").symlink_to(jobs / "petrel.toml")
    assert here.get("/job/same.toml/note").status == 200


def test_too_much_at_once(here: Browser) -> None:
    form = here.get("/new").form("new")
    page = here.post(form.action, {**form.fields, "story": "x" * (MOST_FORM + 1)})
    assert page.status == 413
    page = here.post(form.action, {**form.fields}, headers={"content-length": "99999999999"})
    assert page.status == 413
    assert here.post(form.action, {**form.fields, "story": "x" * 20_000}).status == 400
    many = {f"f:{i}": "yes" for i in range(900)}
    assert here.post(form.action, {**form.fields, **many}).status == 400


def test_hostile_words_stay_words(here: Browser) -> None:
    """They are shown as they were typed, and do nothing."""
    words = '<script>alert(1)</script> "><img src=x onerror=alert(1)> {{ 7*7 }} pump new'
    page = here.send(here.get("/new"), "new", story=words, by="<b>Ann")
    assert page.status == 200
    assert "<script>alert" not in page.text
    assert "<img" not in page.text
    assert "49" not in page.words
    facts = page.form("new").fields
    page = here.send(page, "new", agreed="1", keep=facts.get("keep", []))
    assert page.status == 200
    for address in ("/", page.address, page.address.removesuffix("/ask") + "/report"):
        text = here.get(address).text
        assert "<script>alert" not in text
        assert "<img src=x" not in text


def test_a_fault_of_ours_has_no_trace(
    here: Browser, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    """One page that says so; the terminal gets one line."""

    def broken(*_: object, **__: object) -> None:
        raise ZeroDivisionError("secret of the inside")

    monkeypatch.setattr(JobFolder, "lines", broken)
    page = here.get("/")
    assert page.status == 500
    assert "fault of the program itself" in page.words
    assert "secret" not in page.text
    assert "Traceback" not in page.text
    assert [r.getMessage() for r in caplog.records if r.name == "diagnose.serve"] == [
        "/: ZeroDivisionError: secret of the inside"
    ]


def test_a_broken_file_is_named_with_its_faults(here: Browser) -> None:
    (_folder(here) / "broken.toml").write_text("schema = 1\n[[finding]]\nno = 1\n", "utf-8")
    (_folder(here) / "bytes.toml").write_bytes(b"\xff\xfe\x00")
    assert here.get("/").status == 200
    for name in ("broken", "bytes"):
        page = here.get(f"/job/{name}.toml")
        assert page.status == 400
        assert "That did not work" in page.words
        assert str(_folder(here)) not in page.text


def test_no_folder_no_server(tmp_path: Path) -> None:
    with pytest.raises(NoCaseError, match="is no folder"):
        JobFolder(tmp_path / "none")


def test_another_machine_needs_the_code(tmp_path: Path) -> None:
    """The code lets one machine in, once; the next gets the next code."""
    codes: list[str] = []
    phone = browser(jobs_in(tmp_path, "petrel"), door=Door(codes.append), lan=True)
    phone.client, phone.host = ELSEWHERE, "192.168.7.1:8470"
    for address in ("/", "/job/petrel.toml", "/new", "/static/comfort.js"):
        page = phone.get(address, follow=False)
        assert (page.status, page.headers["location"]) == (303, "/code")
    asked = phone.get("/")
    assert "Petrel" not in asked.text
    assert phone.send(asked, "code", code="000000x").status == 403
    inside = phone.send(phone.get("/code"), "code", code=codes[-1])
    assert "Petrel" in inside.text
    other = Browser(phone.app, "192.168.7.30", phone.host)
    assert other.send(other.get("/"), "code", code=codes[0]).status == 403
    assert other.send(other.get("/"), "code", code=codes[-1]).status == 200
    assert Browser(phone.app).get("/").status == 200, "this machine needs none"


def test_guessing_the_code_is_slow() -> None:
    """After a few wrong tries the code changes, and none is taken for a while."""
    codes: list[str] = []
    now = [0.0]
    door = Door(codes.append, lambda: now[0])
    for _ in range(MOST_TRIES):
        assert door.key_for("wrong") == ""
    assert len(codes) == 2
    assert door.key_for(codes[-1]) == ""
    now[0] += PAUSE + 1
    key = door.key_for(f" {codes[-1][:3]} {codes[-1][3:]} ")
    assert door.lets_in(key)
    assert not door.lets_in("")
    assert not door.lets_in(key[:-1])


def test_only_some_addresses_take_a_form(here: Browser) -> None:
    for each in ADDRESSES:
        path = each.path.replace("{job}", "petrel.toml").replace("{", "").replace("}", "")
        if "POST" not in each.methods:
            assert here.post(path, {}).status in (405, 409), path


def test_an_address_is_right_or_not_here(here: Browser) -> None:
    """No address is put right by sending the browser on: every answer has its headers."""
    for path in ("/new/", "/job/petrel.toml/", "//new", "/job//petrel.toml", "/favicon.ico/"):
        page = here.get(path, follow=False)
        assert page.status == 404
        assert "content-security-policy" in page.headers
    assert here.get("/favicon.ico").headers["content-type"] == "image/svg+xml"


def test_errors_of_every_kind_have_a_page() -> None:
    statuses = {
        type(e).__name__: trouble.answer_to(e, Asked(), Path()).status
        for e in (NoCaseError("x", ["gone"]), ValueError("y"), OSError("z"))
    }
    assert statuses == {"NoCaseError": 404, "ValueError": 500, "OSError": 500}


def _folder(asking: Browser) -> Path:
    root: Path = asking.app.site.folder.root
    return root
