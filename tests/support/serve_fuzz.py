"""Anything that may be sent to the web page, and what every answer keeps to.

Addresses come from the application itself, names of fields from the source of its screens: what is
added to either is tried without a change here, or fails for want of a right value.
"""

from __future__ import annotations

import random
import re
import string
from collections.abc import Mapping, Sequence
from functools import cache
from html.parser import HTMLParser
from pathlib import Path
from typing import Any, ClassVar
from urllib.parse import quote, urlencode

import diagnose.serve
from diagnose.serve.guard import HEADERS
from knowledge.book import the_book
from tests.support.web import Page

SECRET = "KEEP-THIS-TO-YOURSELF"
STATUSES = frozenset((200, 303, 400, 403, 404, 405, 408, 409, 413, 421))
#: an element or attribute that appears where these are not inert
NASTY = (
    "", " ", "0", "-1", "1e999", "nan", "9" * 400, "../../secret.toml", "..%2f..%2fsecret.toml",
    "/etc/passwd", "%00", "\x00", "linked.toml", "..\\secret.toml", "é漢\u202e", "\x1b[31m",
    "\ud800".encode("utf-8", "surrogatepass").decode("latin-1"),
    "<script>planted()</script>", '"><img src=x onerror=planted()>', "' autofocus onfocus=planted() x='",
    "</textarea><svg onload=planted()>", "</title><script>planted()</script>", "javascript:planted()",
    "<!--", "]]><script>planted()</script>", "{{ 7*7 }}", "{% raw %}", "${7*7}", "' OR 1=1", "; rm -rf /",
    "https://evil.example/", "//evil.example", "/\\evil.example", "a\r\nset-cookie: planted=1",
    'x"\n[[finding]]\nno = 900\nwhat = "gauge_reads_low"\nstate = "present"\n#', '"""', "'''", "\\", "\\u0000",
    "\n" * 50, "a" * 2500, "yes", "no", "unknown", "probably", "done", "skipped", "4.5 thou",
    "5 psi at hot idle", "main 3", "true", "1", "2", "²", "٣", "y", "n", "d", "back", "why", "stop",
)  # fmt: skip
WORDS = (
    "oil level ok",
    "no 3 main 4.5 thou",
    "12 psi at hot idle",
    "backlash 12 thou",
    "knock",
    "new pump cured it",
    "petrol V8, needle wavers at hot idle",
    "sump full of metal",
)
METHODS = ("PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "HEAD", "CONNECT", "get", "PROPFIND", "X")
KINDS = (
    "application/json", "text/plain", "multipart/form-data", "multipart/form-data; boundary=",
    "multipart/form-data; boundary=x", "application/x-www-form-urlencoded; charset=utf-16", "\x00", "é",
)  # fmt: skip


@cache
def names_asked() -> tuple[tuple[str, ...], tuple[str, ...], tuple[str, ...]]:
    """Fields of forms, fields of addresses, beginnings of fields: as the screens ask for them."""
    source = "\n".join(
        p.read_text("utf-8") for p in sorted(Path(diagnose.serve.__file__).parent.rglob("*.py"))
    )
    fields = set(re.findall(r'\.(?:text|every)\(\s*"([\w-]+)"', source))
    query = set(re.findall(r'query(?:\.get\(|\[)\s*"([\w-]+)"', source))
    starts = set(re.findall(r'"([a-z]{1,4}:)"', source))
    return tuple(sorted(fields)), tuple(sorted(query)), tuple(sorted(starts))


class Dice:
    """Picks of one run, the same for the same seed."""

    def __init__(self, seed: int, right: Mapping[str, Sequence[str]]) -> None:
        """``right``: values that may be right in each part of an address."""
        self.random = random.Random(seed)
        self.right = right

    def chance(self, share: float) -> bool:
        """Whether it happens this time."""
        return self.random.random() < share

    def anything(self) -> str:
        """A text of one kind or another."""
        kind = self.random.random()
        if kind < 0.55:
            return self.random.choice(NASTY)
        if kind < 0.8:
            return self.random.choice(WORDS)
        letters = string.printable + "é漢\u202e\u200d"
        return "".join(self.random.choices(letters, k=self.random.randrange(1, 60)))

    def address(self, path: str) -> str:
        """An address with something in each of its parts, mostly right. Raises KeyError."""

        def part(match: re.Match[str]) -> str:
            if self.chance(0.85):
                return self.random.choice(self.right[match[1]])
            return quote(self.anything().encode("utf-8", "surrogateescape"), safe="%")

        path = re.sub(r"{(\w+)}", part, path)
        if self.chance(0.3):
            sliders = ("main_clearance", "relief_setting", "pump_displacement")
            names = self.random.choices(
                (*names_asked()[1], *sliders), k=self.random.randrange(1, 4)
            )
            path += "?" + urlencode({n: self.anything() for n in names}, errors="replace")
        return path

    def fields(self, form: Mapping[str, list[str]]) -> dict[str, Any]:
        """A form as it is, with something else in some of its fields and some fields more."""
        given: dict[str, Any] = dict(form)
        for name in self.random.sample(sorted(form), min(len(form), self.random.randrange(0, 6))):
            if name not in ("token", "once") or self.chance(0.1):
                given[name] = self.anything()
        book = the_book()
        more, _, starts = names_asked()
        for _ in range(self.random.randrange(0, 4)):
            word = self.random.choice([*book.findings, *book.measures, *book.tasks])
            given[self.random.choice(starts) + word] = self.anything()
        for name in more:
            if name not in ("token", "once") and self.chance(0.08):
                given[name] = self.anything()
        return given

    def headers(self) -> dict[str, str]:
        """Headers nobody sends, or that say something wrong."""
        every = {
            "content-type": self.random.choice(KINDS),
            "content-length": self.random.choice(("-1", "x", "99999999999", "0", "1" * 30)),
            "cookie": self.random.choice(("=", "diagnose_session=", "diagnose_session=é; ;;", "a" * 5000)),
            "origin": self.random.choice(("null", "http://evil.example", "http://localhost:8470.evil")),
            "sec-fetch-site": self.random.choice(("cross-site", "same-site", "?")),
            "x-part": "1",
            "x-http-method-override": "DELETE",
            "x-forwarded-host": "evil.example",
            "x-forwarded-for": "127.0.0.1",
            "host": self.random.choice(("evil.example", "", "[", "localhost:8470@evil.example")),
            "range": "bytes=0-1",
            "accept": "é" * 50,
        }  # fmt: skip
        return {n: every[n] for n in self.random.sample(sorted(every), self.random.randrange(1, 4))}


class _Tags(HTMLParser):
    """Elements and attributes that may run something or lead away."""

    leads: ClassVar[set[str]] = {"href", "src", "action", "formaction", "srcset", "data", "poster"}

    def __init__(self) -> None:
        super().__init__()
        self.wrong: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = {name: value or "" for name, value in attrs}
        if tag in ("iframe", "object", "embed", "base", "frame", "applet"):
            self.wrong.append(tag)
        if tag == "script" and given != {"src": "/static/comfort.js", "defer": ""}:
            self.wrong.append(f"script {given}")
        policy = "Content-Security-Policy"
        if tag == "meta" and given.get("http-equiv", policy) != policy:
            self.wrong.append(f"meta {given}")
        for name, value in given.items():
            if name.startswith("on") or name in ("srcdoc", "autofocus"):
                self.wrong.append(f"{tag} {name}={value}")
            ours = value.startswith(("/", "#", "?")) and not value.startswith(("//", "/\\"))
            ours = ours or value.startswith("data:image/jpeg;base64,")
            if name.rpartition(":")[2] in self.leads and value and not ours:
                self.wrong.append(f"{tag} {name}={value}")


def misses(page: Page) -> list[str]:
    """Return what an answer should have and has not, or has and should not have."""
    headers, text, found = page.headers, page.text, []
    found += [f"status {page.status}"] if page.status not in STATUSES else []
    found += [f"{n}: {headers.get(n)}" for n, v in HEADERS.items() if headers.get(n) != v]
    policy, kind = headers.get("content-security-policy", ""), headers.get("content-type", "")
    found += [f"policy {policy}"] if "default-src 'none'" not in policy or "http" in policy else []
    if headers.get("cache-control") not in ("no-store", "max-age=600"):
        found.append("may be kept")
    if not re.match("text/(html|css|javascript); charset=utf-8$|image/(svg.xml|jpeg|png)$", kind):
        found.append(f"type {kind!r}")
    to, cookie = headers.get("location", "/"), headers.get("set-cookie", "")
    if not to.startswith("/") or to.startswith(("//", "/\\")):
        found.append(f"sends to {to}")
    if cookie and not (
        "HttpOnly" in cookie and "SameSite=strict" in cookie and "planted" not in cookie
    ):
        found.append(f"cookie {cookie}")
    if any(c in v for v in headers.values() for c in "\r\n"):
        found.append("a line break in a header")
    found += [w for w in (SECRET, "Traceback", "site-packages", "root:x:") if w in text]
    if kind.startswith(("text/html", "image/svg")):
        tags = _Tags()
        tags.feed(text)
        found += tags.wrong
    return found
