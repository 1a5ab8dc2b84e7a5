"""A browser without a screen: asks the web application, keeps its cookies, fills in its forms."""

from __future__ import annotations

import asyncio
import re
import shutil
from collections.abc import Iterable, Iterator, Mapping, MutableMapping
from dataclasses import dataclass, field
from html import unescape
from html.parser import HTMLParser
from http.cookies import SimpleCookie
from pathlib import Path
from typing import Any
from urllib.parse import urlencode, urljoin, urlsplit

from diagnose.serve.app import application
from diagnose.serve.folder import JobFolder
from diagnose.serve.guard import Guard
from diagnose.serve.keys import Door
from diagnose.serve.site import Site
from tests.support.complaints import CASES

HOST = "localhost:8470"
BOUNDARY = "part-of-a-form"
_FORM = re.compile(r"<form\b.*?</form>", re.S)
_LINK = re.compile(r'<a\b[^>]*\bhref="([^"#]+)')
Fields = Mapping[str, str | Iterable[str]]


@dataclass(frozen=True)
class Page:
    """What came back: status, headers in lower case, body, and where it was asked for."""

    status: int
    headers: Mapping[str, str]
    body: bytes
    address: str

    @property
    def text(self) -> str:
        """The body as text."""
        return self.body.decode("utf-8", "replace")

    @property
    def words(self) -> str:
        """What a person reads: the content of the page without its marks."""
        reader = _Words()
        reader.feed(self.text)
        return " ".join("".join(reader.found).split())

    def links(self) -> list[str]:
        """Where its links lead."""
        return [unescape(a) for a in _LINK.findall(self.text)]

    def form(self, action: str = "") -> Form:
        """The first form that is sent to an address with this ending. Raises LookupError."""
        for form in self.forms():
            if form.action.endswith(action):
                return form
        raise LookupError(f"no form for {action!r} at {self.address}")

    def forms(self) -> Iterator[Form]:
        """Every form that saves something."""
        for text in _FORM.findall(self.text):
            reader = _Fields()
            reader.feed(text)
            if reader.method == "post":
                action = urljoin(self.address, reader.action)
                yield Form(action, reader.fields, reader.buttons, reader.files)


@dataclass
class Form:
    """A form with what it holds as it is shown."""

    action: str
    fields: dict[str, list[str]]
    buttons: list[tuple[str, str]]
    files: list[str] = field(default_factory=list)  #: fields for a file

    @property
    def answers(self) -> list[str]:
        """The values of its buttons called "answer"."""
        return [value for name, value in self.buttons if name == "answer"]


class _Words(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.found: list[str] = []
        self.skipped = 0

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.skipped += tag in ("head", "style", "script")
        self.found.append(" ")

    def handle_endtag(self, tag: str) -> None:
        self.skipped -= tag in ("head", "style", "script")

    def handle_data(self, data: str) -> None:
        if not self.skipped:
            self.found.append(data)


class _Fields(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.action, self.method = "", "get"
        self.fields: dict[str, list[str]] = {}
        self.buttons: list[tuple[str, str]] = []
        self.files: list[str] = []
        self._area: str | None = None
        self._select, self._first, self._option = "", True, False

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = {name: value or "" for name, value in attrs}
        name = given.get("name", "")
        if tag == "form":
            self.action, self.method = given.get("action", ""), given.get("method", "get")
        elif tag == "input" and given.get("type") in ("radio", "checkbox"):
            if "checked" in given:
                self.fields.setdefault(name, []).append(given.get("value", "on"))
        elif tag == "input" and given.get("type") == "file":
            self.files.append(name)
        elif tag == "input" and name:
            self.fields.setdefault(name, []).append(given.get("value", ""))
        elif tag == "button" and name:
            self.buttons.append((name, given.get("value", "")))
        elif tag == "textarea":
            self._area = name
            self.fields.setdefault(name, []).append("")
        elif tag == "select":
            self._select, self._first = name, True
        elif tag == "option" and self._select:
            if self._first or "selected" in given:
                self.fields[self._select] = [given.get("value", "")]
                self._option = "value" not in given
            self._first = False

    def handle_endtag(self, tag: str) -> None:
        if tag == "textarea":
            self._area = None
        elif tag == "select":
            self._select = ""
        elif tag == "option":
            self._option = False

    def handle_data(self, data: str) -> None:
        if self._area is not None:
            self.fields[self._area][-1] += data
        elif self._option:
            self.fields[self._select] = [data.strip()]


@dataclass
class Browser:
    """One browser; ``client``: the address it asks from."""

    app: Any
    client: str = "127.0.0.1"
    host: str = HOST
    cookies: dict[str, str] = field(default_factory=dict)

    def get(self, address: str, *, follow: bool = True) -> Page:
        """Ask for a page; go where it sends to."""
        page = self.ask("GET", address, b"", {})
        return self._followed(page) if follow else page

    def post(
        self,
        address: str,
        fields: Fields,
        *,
        follow: bool = True,
        headers: Mapping[str, str] | None = None,
    ) -> Page:
        """Send fields to an address."""
        pairs = [
            (name, each)
            for name, value in fields.items()
            for each in ([value] if isinstance(value, str) else value)
        ]
        kind = {"content-type": "application/x-www-form-urlencoded"}
        page = self.ask("POST", address, urlencode(pairs).encode(), {**kind, **(headers or {})})
        return self._followed(page) if follow else page

    def send(self, page: Page, action: str = "", *, follow: bool = True, **given: Any) -> Page:
        """Fill in the form of a page and send it; ``given`` names fields, "_" for ":"."""
        form = page.form(action)
        fields = {**form.fields, **{_named(n): v for n, v in given.items()}}
        return self.post(form.action, fields, follow=follow)

    def upload(
        self,
        page: Page,
        action: str,
        name: str,
        data: bytes,
        *,
        follow: bool = True,
        file_name: str = "x",
        **given: str,
    ) -> Page:
        """Send a file with the form of a page."""
        form = page.form(action)
        lines = b""
        for field_name, value in {**{n: v[0] for n, v in form.fields.items()}, **given}.items():
            head = f'--{BOUNDARY}\r\nContent-Disposition: form-data; name="{field_name}"\r\n\r\n'
            lines += head.encode() + value.encode() + b"\r\n"
        head = f'--{BOUNDARY}\r\nContent-Disposition: form-data; name="{name}"; filename="{file_name}"\r\n\r\n'
        lines += head.encode() + data + f"\r\n--{BOUNDARY}--\r\n".encode()
        kind = f"multipart/form-data; boundary={BOUNDARY}"
        answer = self.ask("POST", form.action, lines, {"content-type": kind})
        return self._followed(answer) if follow else answer

    def _followed(self, page: Page) -> Page:
        for _ in range(5):
            if page.status != 303:
                return page
            page = self.ask("GET", page.headers["location"], b"", {})
        raise AssertionError("sent round and round")

    def ask(
        self, method: str, address: str, body: bytes = b"", more: Mapping[str, str] | None = None
    ) -> Page:
        """Send a request as it is, ``more`` headers with it."""
        parts = urlsplit(address)
        headers = {"host": self.host, **(more or {})}
        if self.cookies:
            headers["cookie"] = "; ".join(f"{n}={v}" for n, v in self.cookies.items())
        headers.setdefault("content-length", str(len(body)))
        scope = {
            "type": "http",
            "asgi": {"version": "3.0"},
            "http_version": "1.1",
            "method": method,
            "scheme": "http",
            "path": _unquoted(parts.path),
            "raw_path": parts.path.encode(),
            "query_string": parts.query.encode(),
            "root_path": "",
            "headers": [(n.encode("latin-1"), v.encode("latin-1")) for n, v in headers.items()],
            "client": (self.client, 5000),
            "server": ("127.0.0.1", 8470),
        }
        page = asyncio.run(_answer(self.app, scope, body, address))
        for name, morsel in SimpleCookie(page.headers.get("set-cookie", "")).items():
            self.cookies[name] = morsel.value
        return page


def _named(name: str) -> str:
    """A field by its name as an argument: ``f_oil_milky`` is ``f:oil_milky``."""
    return f"{name[0]}:{name[2:]}" if len(name) > 2 and name[1] == "_" else name


def _unquoted(path: str) -> str:
    from urllib.parse import unquote

    return unquote(path)


async def _answer(app: Any, scope: dict[str, Any], body: bytes, address: str) -> Page:
    sent = [{"type": "http.request", "body": body, "more_body": False}]
    got: list[MutableMapping[str, Any]] = []

    async def receive() -> dict[str, Any]:
        return sent.pop(0) if sent else {"type": "http.disconnect"}

    async def send(message: MutableMapping[str, Any]) -> None:
        got.append(message)

    await app(scope, receive, send)
    start = got[0]
    headers = {n.decode().lower(): v.decode("latin-1") for n, v in start["headers"]}
    whole = b"".join(m.get("body", b"") for m in got[1:])
    return Page(start["status"], headers, whole, address)


def browser(folder: Path, *, door: Door | None = None, lan: bool = False) -> Browser:
    """A browser on this machine over the jobs of a folder."""
    return Browser(application(Site(JobFolder(folder), door), Guard(lan=lan)))


def jobs_in(folder: Path, *names: str) -> Path:
    """Copy worked jobs into a folder, with the engine cards they name."""
    shutil.copytree(CASES / "cards", folder / "cards", dirs_exist_ok=True)
    for name in names:
        shutil.copy(CASES / f"{name}.toml", folder / f"{name}.toml")
    return folder
