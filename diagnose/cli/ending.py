"""How a command ends: one exit code, and one clear line where anything went wrong."""

from __future__ import annotations

import sys
from collections.abc import Iterable, Sequence
from copy import copy
from difflib import get_close_matches
from typing import Any, cast

import typer

from diagnose.cli import INTERRUPTED, STOPPED
from diagnose.cli.printing import say
from diagnose.cli.waiting import waiting
from diagnose.errors import UserError, plain

OUR_FAULT = 70
#: what typer complains of on the command line, whichever click it stands on
_COMPLAINT = cast("type[Exception]", typer.BadParameter.__mro__[2])


def run(app: typer.Typer, arguments: Sequence[str] | None = None) -> int:
    """Run one command; its exit code."""
    words = list(sys.argv[1:] if arguments is None else arguments)
    if words[:1] != ["ask"]:  # there the person is waited for
        waiting.begin()
    try:
        code = _narrowed(app, words)(args=words, prog_name="diagnose", standalone_mode=False)
    except UserError as error:
        say(str(error))
        return error.code
    except (KeyboardInterrupt, typer.Abort):
        code = INTERRUPTED
    except _COMPLAINT as complaint:
        say(usage_line(complaint))
        return 2
    except Exception as fault:
        what = plain(f"{type(fault).__name__}: {fault}", 200)
        say(f"a fault of diagnose itself, {what}; what was saved is kept; please report it")
        return OUR_FAULT
    finally:
        waiting.over()
    if code == INTERRUPTED:
        say("", STOPPED)
    return code if isinstance(code, int) else 0


def _narrowed(app: typer.Typer, words: Sequence[str]) -> typer.Typer:
    """Only the command asked for: building the options of all takes longer than a short answer."""
    named = [c for c in app.registered_commands if words and _name(c) == words[0]]
    if not named:
        return app
    narrow = copy(app)
    narrow.registered_commands = named
    return narrow


def _name(command: Any) -> str:
    return str(command.name or command.callback.__name__)


def usage_line(complaint: Any) -> str:
    """What typer says in several lines, in one, with the nearest right word."""
    context: Any = getattr(complaint, "ctx", None)
    message = str(complaint.format_message())
    if type(complaint).__name__ == "NoArgsIsHelpError":
        return message
    option = getattr(complaint, "option_name", None)
    near = ""
    if option and type(complaint).__name__ == "NoSuchOption":
        message = f"no such option '{plain(option)}'."
        near = _near(option, _options(context))
    elif message.startswith("No such command"):
        message, _, asked = message.partition(" Did you mean")[0].partition("'")
        message = f"{message}'{plain(asked)}"
        near = _near(asked.strip("'."), _commands(context))
    line = plain(" ".join(message.split()), 300)
    line = line[:1].lower() + line[1:].rstrip(".") + "."
    return f"{line}{near}{_help(context)}"


def _commands(context: Any) -> Iterable[str]:
    return context.command.list_commands(context) if context else ()


def _options(context: Any) -> list[str]:
    parameters = context.command.get_params(context) if context else ()
    return [o for p in parameters for o in (*p.opts, *p.secondary_opts) if o.startswith("-")]


def _near(word: str, words: Iterable[str]) -> str:
    near = get_close_matches(word[:40], list(words), 1, 0.6)
    return f" Did you mean '{near[0]}'?" if near else ""


def _help(context: Any) -> str:
    return f" Try: {context.command_path} --help" if context else ""
