"""Keys of one run of the server: the token in each form, forms already saved, the workshop's code."""

from __future__ import annotations

import hashlib
import hmac
import secrets
import threading
import time
from collections import OrderedDict
from collections.abc import Callable

MOST_FORMS = 2_000  #: forms remembered, so that one that is sent twice is saved once
CODE_LENGTH = 6  #: figures
MOST_TRIES = 5  #: wrong codes before a new one is made
PAUSE = 30.0  #: seconds in which no code is taken after that


class FormKeys:
    """Tokens that only a page of this server can know, and the forms that were saved."""

    def __init__(self) -> None:
        """Make a new secret; tokens of an earlier run no longer hold."""
        self._secret = secrets.token_bytes(32)
        self._saved: OrderedDict[str, str] = OrderedDict()
        self._lock = threading.Lock()

    def token(self, session: str) -> str:
        """The token for the forms of a session."""
        return hmac.new(
            self._secret, session.encode("utf-8", "replace"), hashlib.sha256
        ).hexdigest()

    def fits(self, session: str, token: str) -> bool:
        """Whether a token is that of the session."""
        right = self.token(session).encode()
        return bool(session) and hmac.compare_digest(right, token.encode("utf-8", "replace"))

    def where_saved(self, once: str) -> str | None:
        """Where the form of this number led when it was saved; None: it was not."""
        with self._lock:
            return self._saved.get(once) if once else None

    def note_saved(self, once: str, to: str) -> None:
        """Remember that a form was saved."""
        with self._lock:
            if once:
                self._saved[once] = to
            while len(self._saved) > MOST_FORMS:
                self._saved.popitem(last=False)


class Door:
    """Lets other machines in by a code that holds once; each machine let in has its own key."""

    def __init__(
        self, announce: Callable[[str], None], clock: Callable[[], float] = time.monotonic
    ) -> None:
        """Make the first code; ``announce`` shows each new code on the terminal."""
        self._announce = announce
        self._clock = clock
        self._lock = threading.Lock()
        self._keys: set[str] = set()
        self._wrong, self._shut_until = 0, 0.0
        self._code = ""
        self._renew()

    def lets_in(self, key: str) -> bool:
        """Whether a machine has a key."""
        given = key.encode("utf-8", "replace")
        return any(hmac.compare_digest(k.encode(), given) for k in tuple(self._keys))

    def key_for(self, code: str) -> str:
        """A key for the right code, which then no longer holds; empty for a wrong one."""
        with self._lock:
            now = self._clock()
            if now < self._shut_until:
                return ""
            given = "".join(code.split()).encode("utf-8", "replace")
            if hmac.compare_digest(self._code.encode(), given):
                key = secrets.token_urlsafe(32)
                self._keys.add(key)
                self._renew()
                return key
            self._wrong += 1
            if self._wrong >= MOST_TRIES:
                self._shut_until = now + PAUSE
                self._renew()
            return ""

    def _renew(self) -> None:
        self._wrong = 0
        self._code = f"{secrets.randbelow(10**CODE_LENGTH):0{CODE_LENGTH}d}"
        self._announce(self._code)
