"""The web application: every address with its screen, behind the guard; holds no knowledge.

The only module that imports the web framework; what it hands to a screen is ``Asked``.
"""

from __future__ import annotations

import asyncio
import logging
import secrets
import time
from collections.abc import Callable, Mapping
from dataclasses import replace
from functools import partial

from starlette.applications import Starlette
from starlette.concurrency import run_in_threadpool
from starlette.datastructures import UploadFile
from starlette.exceptions import HTTPException
from starlette.requests import ClientDisconnect, Request
from starlette.responses import Response
from starlette.routing import Route
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from diagnose.serve import trouble
from diagnose.serve.addresses import ADDRESSES, Screen
from diagnose.serve.exchange import KEY, Answer, Asked, RefusedError, Upload, go
from diagnose.serve.guard import HEADERS, MOST_FORM, MOST_UPLOAD, Guard, from_this_page, is_here
from diagnose.serve.site import Site
from diagnose.serve.wording import TAPS
from diagnose.ways import worded

SESSION = "diagnose_session"  #: cookie
MOST_FIELDS = 800
OPEN_TO_ALL = ("/code", "/static/style.css")  #: what a machine without a key may ask for
_KEPT_DAYS = 30
log = logging.getLogger("diagnose.serve")


class _TooLargeError(Exception):
    """More was sent than a form may hold."""


class _TooSlowError(Exception):
    """A form took longer to arrive than anybody waits for."""


def application(site: Site, guard: Guard) -> ASGIApp:
    """The application over one folder."""
    routes = [
        Route(each.path, partial(_answer, site, each), methods=list(each.methods))
        for each in ADDRESSES
    ]
    missing: Mapping[int, Callable[..., Response]] = {
        404: partial(_no_page, 404),
        405: partial(_no_page, 405),
    }
    inner = Starlette(routes=routes, exception_handlers=dict(missing))
    inner.router.redirect_slashes = False  # an address is right or not here
    return _Guarded(inner, guard, site)


class _Guarded:
    """The application behind its guard."""

    def __init__(self, inner: ASGIApp, guard: Guard, site: Site) -> None:
        self.inner, self.guard, self.site = inner, guard, site

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] != "http":
            return
        request = Request(scope)
        refusal = self._refusal(request)
        if refusal is not None:
            await _response(refusal)(scope, receive, send)
            return
        most = MOST_UPLOAD if request.url.path.endswith("/photos") else MOST_FORM
        await self.inner(scope, _limited(receive, most, self.guard.patience), send)

    def _refusal(self, request: Request) -> Answer | None:
        """Why a request goes no further; None where it does."""
        client = request.client.host if request.client else ""
        if not self.guard.knows_host(request.headers.get("host", "")):
            return trouble.plain_page(421, "This address does not belong to this server.")
        if not self.guard.knows_client(client):
            return trouble.plain_page(403, "This page is for the machine it runs on.")
        size = request.headers.get("content-length", "0")
        if not size.isdecimal() or len(size) > 12 or int(size) > MOST_UPLOAD:
            return trouble.plain_page(413, "That is too much at once.")
        door, path = self.site.door, request.url.path
        if door is None or is_here(client) or path in OPEN_TO_ALL:
            return None
        return None if door.lets_in(request.cookies.get(KEY, "")) else go("code")


def _limited(receive: Receive, most: int, patience: float) -> Receive:
    """Receive no more than ``most`` bytes, within ``patience`` seconds.

    Raises _TooLargeError or _TooSlowError beyond.
    """
    read, until = 0, time.monotonic() + patience

    async def limited() -> Message:
        nonlocal read
        try:
            message = await asyncio.wait_for(receive(), until - time.monotonic())
        except TimeoutError:
            raise _TooSlowError from None
        read += len(message.get("body", b""))
        if read > most:
            raise _TooLargeError
        return message

    return limited


async def _answer(site: Site, screen: Screen, request: Request) -> Response:
    """Ask a screen; whatever goes wrong is a page of its own, without a trace."""
    session = request.cookies.get(SESSION, "") or secrets.token_urlsafe(24)
    asked = Asked(
        parts={name: str(value) for name, value in request.path_params.items()},
        query=dict(request.query_params),
        token=site.keys.token(session),
        address=request.url.path,
        partial=request.headers.get("x-part", "") == "1",
        here=is_here(request.client.host if request.client else ""),
    )
    try:
        with worded(TAPS):
            if request.method == "POST":
                asked = await _with_form(asked, request)
                answer = await run_in_threadpool(_saved_once, site, screen, asked, session, request)
            else:
                answer = await run_in_threadpool(screen.show, site, asked)
    except _TooLargeError:
        answer = trouble.plain_page(413, "That is too much at once; nothing was saved.")
    except _TooSlowError:
        answer = trouble.plain_page(408, "The form took too long to arrive; nothing was saved.")
    except (HTTPException, ClientDisconnect):
        answer = trouble.plain_page(400, "The form could not be read; nothing was saved.")
    except Exception as error:  # one request must not end the server for the others
        answer = trouble.answer_to(error, asked, site.folder.root)
        if answer.status >= 500:
            log.error("%s: %s: %s", request.url.path, type(error).__name__, error)
    response = _response(answer)
    if request.cookies.get(SESSION, "") != session:
        _set_cookie(response, SESSION, session)
    return response


def _saved_once(site: Site, screen: Screen, asked: Asked, session: str, request: Request) -> Answer:
    """Ask the screen that saves a form, unless this form was saved already."""
    if not from_this_page(request.headers):
        raise RefusedError("This form was not sent from a page of this server.")
    if not site.keys.fits(session, asked.text("token")):
        return trouble.again(asked)
    once = asked.text("once")
    earlier = site.keys.where_saved(once)
    if earlier is not None:
        return Answer(to=earlier, status=303)
    answer = screen.save(site, asked)
    if answer.to and answer.status == 303:
        site.keys.note_saved(once, answer.to)
    return answer


async def _with_form(asked: Asked, request: Request) -> Asked:
    """The request with its form."""
    form: dict[str, list[str]] = {}
    uploads: dict[str, Upload] = {}
    async with request.form(max_files=1, max_fields=MOST_FIELDS, max_part_size=MOST_FORM) as sent:
        for name, value in sent.multi_items():
            if isinstance(value, UploadFile):
                uploads[name] = Upload(value.filename or "", await value.read())
            else:
                form.setdefault(name, []).append(value)
    return replace(asked, form=form, uploads=uploads)


def _no_page(status: int, _request: Request, _error: Exception) -> Response:
    words = "There is no such page." if status == 404 else "That cannot be done here."
    return _response(trouble.plain_page(status, words))


def _response(answer: Answer) -> Response:
    headers = {**HEADERS, "content-security-policy": answer.policy}
    headers["cache-control"] = "max-age=600" if answer.kept else "no-store"
    if answer.to:
        headers["location"] = answer.to
    response = Response(answer.body, answer.status, headers, answer.kind)
    for name, value in answer.cookies.items():
        _set_cookie(response, name, value)
    return response


def _set_cookie(response: Response, name: str, value: str) -> None:
    response.set_cookie(
        name, value, max_age=_KEPT_DAYS * 86_400, httponly=True, samesite="strict", path="/"
    )
