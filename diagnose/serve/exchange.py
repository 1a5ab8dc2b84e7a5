"""What a browser asks and what it is answered, without a word of the web framework."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from urllib.parse import quote, urlencode

HTML = "text/html; charset=utf-8"
KEY = "diagnose_key"  #: cookie of a machine that was let in
#: of every screen: nothing from outside, no script or style in the page itself
SCREEN_POLICY = (
    "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; connect-src 'self'; "
    "form-action 'self'; base-uri 'none'; frame-ancestors 'none'"
)
#: of a page or drawing that carries its own style, and nothing else
DRAWN_POLICY = (
    "default-src 'none'; style-src 'unsafe-inline'; img-src 'self'; base-uri 'none'; "
    "form-action 'none'; frame-ancestors 'none'"
)


class NotHereError(Exception):
    """There is no such page, job or photo; the text says which."""


class RefusedError(Exception):
    """The request is not from a page of this server, or not let in; the text says why."""


@dataclass(frozen=True, slots=True)
class Upload:
    """A file sent with a form."""

    name: str
    data: bytes


@dataclass(frozen=True, slots=True)
class Asked:
    """One request: the parts of its address, its fields, and who asks."""

    parts: Mapping[str, str] = field(default_factory=dict)  #: of the address: job, stage ...
    query: Mapping[str, str] = field(default_factory=dict)
    form: Mapping[str, Sequence[str]] = field(default_factory=dict)
    uploads: Mapping[str, Upload] = field(default_factory=dict)
    token: str = ""  #: goes into every form of the answer
    address: str = "/"  #: the path asked for
    partial: bool = False  #: only the part of the page that changes is wanted
    here: bool = True  #: asked on this machine

    @property
    def job(self) -> str:
        """The file name of the job asked for."""
        return self.parts.get("job", "")

    def text(self, name: str) -> str:
        """A field of the form without blanks around it; empty where it is not there."""
        values = self.form.get(name, ())
        return values[0].strip() if values else ""

    def every(self, name: str) -> tuple[str, ...]:
        """Every value of a field, without blanks around them and without empty ones."""
        return tuple(v.strip() for v in self.form.get(name, ()) if v.strip())

    def named(self, prefix: str) -> dict[str, str]:
        """The filled-in fields whose name begins so, by the rest of their name."""
        found = {n[len(prefix) :]: self.text(n) for n in self.form if n.startswith(prefix)}
        return {name: value for name, value in found.items() if value}


@dataclass(frozen=True, slots=True)
class Answer:
    """What goes back."""

    body: str | bytes = ""
    kind: str = HTML
    status: int = 200
    to: str = ""  #: address to go to instead
    policy: str = SCREEN_POLICY
    kept: bool = False  #: a browser may keep it
    cookies: Mapping[str, str] = field(default_factory=dict)


def go(*parts: str, **query: str) -> Answer:
    """Send the browser to another page of this server.

    >>> go("job", "a b.toml", saved="3").to
    '/job/a%20b.toml?saved=3'
    """
    return Answer(to=address(*parts, **query), status=303)


def address(*parts: str, **query: str) -> str:
    """The address of a page of this server."""
    path = "/" + "/".join(quote(part, safe="") for part in parts)
    given = {name: value for name, value in query.items() if value}
    return f"{path}?{urlencode(given)}" if given else path
