"""Attacks on the web page by requests: who asks, by which form, how much, how slowly."""

from __future__ import annotations

import threading
from urllib.parse import urlencode

from diagnose.serve.app import MOST_FIELDS
from diagnose.serve.guard import MOST_FORM
from diagnose.serve.keys import MOST_TRIES, Door, FormKeys
from tests.support.attacked import JOB, NOTE, PHONE, Attack, Target, attack
from tests.support.web import HOST, Browser

ROWS: list[Attack] = []
POST = f"POST {NOTE} HTTP/1.1\r\nhost: {HOST}\r\nconnection: close\r\ncontent-type: application/x-www-form-urlencoded\r\n"


@attack(
    ROWS,
    "a name of elsewhere that points here (DNS rebinding)",
    "Host must be an address of this machine",
)
def _rebinding(at: Target) -> None:
    for host in (
        "evil.example",
        "127.0.0.1.evil.example",
        f"{HOST}@evil.example",
        "localhost.",
        "",
    ):
        at.tab.host = host
        at.refused(at.tab.get("/"), 421)


@attack(
    ROWS,
    "a form on a page of elsewhere (cross-site request)",
    "Origin and Sec-Fetch-Site, then the token",
)
def _cross_site(at: Target) -> None:
    form = at.form()
    for headers in (
        {"origin": "http://evil.example"},
        {"sec-fetch-site": "cross-site"},
        {"origin": "null"},
    ):
        at.refused(at.tab.post(NOTE, form, headers=headers), 403)


@attack(ROWS, "a form without its token", "the token that only our pages know")
def _no_token(at: Target) -> None:
    at.refused(at.tab.post(NOTE, {"words": "oil level ok"}), 409)


@attack(
    ROWS,
    "a form with the token of another session, or of an earlier run",
    "the token is made from the session's cookie and a secret of this run",
)
def _other_token(at: Target) -> None:
    other = Browser(at.tab.app).get(NOTE).form("note").fields["token"]
    session = at.tab.cookies.get("diagnose_session", "")
    for token in (other, [FormKeys().token(session)]):
        at.refused(at.tab.post(NOTE, {**at.form(), "token": token}), 409)


@attack(ROWS, "a huge body, with its length", "Content-Length is looked at before anything is read")
def _huge(at: Target) -> None:
    at.refused(at.tab.post(NOTE, at.form(), headers={"content-length": "99999999999"}), 413)
    at.refused(at.tab.post(NOTE, {**at.form(), "words": "x" * (MOST_FORM + 1)}), 413)


@attack(ROWS, "a huge body in pieces, without a length", "bytes are counted as they arrive")
def _pieces(at: Target) -> None:
    piece = b"10000\r\n" + b"x" * 0x10000 + b"\r\n"
    got = at.by_socket(f"{POST}transfer-encoding: chunked\r\n\r\n".encode(), *[piece] * 5)
    assert got.startswith(b"HTTP/1.1 413 ")
    at.unchanged()


@attack(
    ROWS, "a body that never ends to arrive", "a form has two minutes; meanwhile others are served"
)
def _slow(at: Target) -> None:
    got = at.by_socket(f"{POST}content-length: 100\r\n\r\nwords=o".encode())
    assert got.startswith(b"HTTP/1.1 408 ")
    assert b"nothing was saved" in got
    at.unchanged()


@attack(
    ROWS,
    "two lengths of one body (request smuggling)",
    "the server refuses what can be read in two ways",
)
def _smuggled(at: Target) -> None:
    got = at.by_socket(f"{POST}content-length: 5\r\ncontent-length: 50\r\n\r\nwords".encode())
    assert got.startswith(b"HTTP/1.1 400 ")


@attack(ROWS, "thousands of fields, or of files", "a form has at most so many parts")
def _fields(at: Target) -> None:
    many = {f"f:{i}": "y" for i in range(MOST_FIELDS + 1)}
    at.refused(at.tab.post(NOTE, {**at.form(), **many}), 400)
    files = b"".join(
        b'--x\r\nContent-Disposition: form-data; name="photo"; filename="a"\r\n\r\n\r\n'
        for _ in range(9)
    )
    page = at.tab.ask(
        "POST",
        f"{JOB}/photos",
        files + b"--x--\r\n",
        {"content-type": "multipart/form-data; boundary=x"},
    )
    at.refused(page, 400)


@attack(
    ROWS,
    "an address that sends the browser elsewhere (open redirect)",
    "only our own addresses are sent to, each part encoded",
)
def _elsewhere(at: Target) -> None:
    for path in (
        "//evil.example",
        "/\\evil.example",
        "/job//evil.example/",
        "/https://evil.example",
        "/new/",
    ):
        page = at.tab.get(path, follow=False)
        assert (page.status, "location" in page.headers) == (404, False)
    page = at.tab.post(
        NOTE, {**at.form(), "back": "//evil.example", "at": "//evil.example"}, follow=False
    )
    assert page.headers["location"].startswith("/job/petrel.toml")


@attack(
    ROWS,
    "reading or sending on a cookie",
    "HttpOnly, SameSite=strict, no script of others, nothing sent to other hosts",
)
def _cookie(at: Target) -> None:
    page = at.tab.get("/")
    assert "HttpOnly" in page.headers["set-cookie"]
    assert "SameSite=strict" in page.headers["set-cookie"]
    assert "connect-src 'self'" in page.headers["content-security-policy"]


@attack(
    ROWS,
    "a cookie chosen by another (session fixation)",
    "a key is made anew when a code is right; a chosen one opens nothing",
)
def _fixed(at: Target) -> None:
    phone = at.phone()
    phone.cookies = {"diagnose_key": "chosen", "diagnose_session": "chosen"}
    assert phone.get("/", follow=False).status == 303
    assert phone.send(phone.get("/code"), "code", code=at.codes[-1]).status == 200
    assert phone.cookies["diagnose_key"] != "chosen"
    other = Browser(phone.app, PHONE, phone.host, {"diagnose_key": "chosen"})
    assert other.get("/", follow=False).headers["location"] == "/code"


@attack(
    ROWS,
    "trying all codes, also many at a time",
    "after a few wrong ones a new code, and none is taken for a while",
)
def _guessing(at: Target) -> None:
    door = Door(at.codes.append)
    found: list[str] = []
    first = at.codes[-1]
    wrong = [f"{(int(first) + i) % 10 ** len(first):0{len(first)}d}" for i in range(1, 40)]
    threads = [
        threading.Thread(target=lambda c=code: found.append(door.key_for(c))) for code in wrong
    ]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert found == [""] * len(wrong)
    assert len(at.codes) == 2, f"{MOST_TRIES} tries, then a pause with one new code"
    assert door.key_for(at.codes[-1]) == ""


@attack(ROWS, "a code that was used, or read over a shoulder", "each code lets one machine in")
def _used_code(at: Target) -> None:
    phone = at.phone()
    code = at.codes[-1]
    assert phone.send(phone.get("/code"), "code", code=code).status == 200
    late = Browser(phone.app, "192.168.7.30", phone.host)
    assert late.send(late.get("/code"), "code", code=code).status == 403


@attack(
    ROWS,
    "another machine without --lan, or one that says it is this one",
    "the address of the connection counts, no header",
)
def _other_machine(at: Target) -> None:
    at.tab.client = PHONE
    for headers in (
        {},
        {"x-forwarded-for": "127.0.0.1", "forwarded": "for=127.0.0.1", "x-real-ip": "127.0.0.1"},
    ):
        at.refused(at.tab.ask("GET", "/", more=headers), 403)
    phone = at.phone()
    page = phone.ask(
        "GET", JOB, more={"x-forwarded-for": "127.0.0.1", "x-forwarded-host": "localhost"}
    )
    assert page.headers["location"] == "/code"


@attack(ROWS, "a form that is sent again", "each form is saved once")
def _again(at: Target) -> None:
    form = at.form()
    assert at.tab.post(NOTE, form, follow=False).status == 303
    before = at.file.read_bytes()
    assert at.tab.post(NOTE, form, follow=False).status == 303
    assert at.file.read_bytes() == before


@attack(
    ROWS,
    "a form that is out of date (two tabs)",
    "it carries the state it was made from; the later one sees what changed",
)
def _stale(at: Target) -> None:
    old = at.tab.get(NOTE)
    assert at.tab.send(at.tab.get(NOTE), "note", words="main 3 is 4.5 thou").status == 200
    before = at.file.read_bytes()
    assert at.tab.send(old, "note", words="main 3 is 3 thou").status == 409
    assert at.file.read_bytes() == before


@attack(
    ROWS,
    "another method than an address takes",
    "no method is taken from a header or field; GET never saves",
)
def _method(at: Target) -> None:
    form = urlencode(at.form(), doseq=True)
    for method in ("PUT", "DELETE", "PATCH", "TRACE", "OPTIONS"):
        at.refused(at.tab.ask(method, NOTE, form.encode()), 405)
    at.refused(
        at.tab.ask("GET", f"{NOTE}?{form}&_method=POST", more={"x-http-method-override": "POST"}),
        200,
    )
    at.refused(at.tab.post(JOB, {**at.form(), "_method": "DELETE"}), 405)


@attack(
    ROWS, "a frame around the page (clickjacking)", "frame-ancestors 'none' and X-Frame-Options"
)
def _frame(at: Target) -> None:
    for path in ("/", NOTE, "/nothing", "/static/style.css"):
        headers = at.tab.get(path).headers
        assert "frame-ancestors 'none'" in headers["content-security-policy"]
        assert headers["x-frame-options"] == "DENY"
