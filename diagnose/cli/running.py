"""Run one command: its exit code, and one clear line where anything went wrong."""

from __future__ import annotations

import sys
from collections.abc import Iterable, Sequence
from copy import copy
from difflib import get_close_matches
from typing import Any, Protocol, runtime_checkable

import typer

from diagnose.cli import INTERRUPTED, STOPPED
from diagnose.cli.printing import remark_lines
from diagnose.cli.progress import working
from diagnose.errors import UsageError, UserError, plain

FAULT_OF_OURS = 70
INTERACTIVE = ("ask", "serve")  #: commands that wait for the person


@runtime_checkable
class CommandLineError(Protocol):
    """What typer raises for a wrong command line; its classes have no public name."""

    def format_message(self) -> str:
        """Return what is wrong."""
        ...


@runtime_checkable
class NoSuchOptionError(CommandLineError, Protocol):
    """The same for an option that does not exist."""

    option_name: str
    possibilities: Any


def with_bare_fix(words: Sequence[str]) -> list[str]:
    """Return the words with ``--fix`` that names nothing made one that asks for the list.

    >>> with_bare_fix(["forecast", "a.toml", "--fix", "--json"])
    ['forecast', 'a.toml', '--fix=', '--json']
    >>> with_bare_fix(["forecast", "--fix", "relief", "a.toml"])
    ['forecast', '--fix', 'relief', 'a.toml']
    """
    following = [*words[1:], "-"]
    return [
        "--fix=" if word == "--fix" and (after.startswith("-") or after.endswith(".toml")) else word
        for word, after in zip(words, following, strict=False)
    ]


def run(app: typer.Typer, arguments: Sequence[str] | None = None) -> int:
    """Run one command; return its exit code."""
    words = with_bare_fix(list(sys.argv[1:] if arguments is None else arguments))
    if not words or words[0] not in INTERACTIVE:
        working.begin()
    try:
        code = _run(app, words)
    except UserError as error:
        remark_lines(str(error))
        return error.code
    except (KeyboardInterrupt, typer.Abort):
        code = INTERRUPTED
    except Exception as error:  # a person gets one line, never a traceback, whatever went wrong
        if isinstance(error, CommandLineError):
            remark_lines(usage_line(error))
            return UsageError.code
        fault = plain(f"{type(error).__name__}: {error}", 200)
        remark_lines(
            f"a fault of diagnose itself, {fault}; what was saved is kept; please report it"
        )
        return FAULT_OF_OURS
    finally:
        working.end()
    if code == INTERRUPTED:
        remark_lines("", STOPPED)
    return code if isinstance(code, int) else 0


def _run(app: typer.Typer, words: list[str]) -> Any:
    """Run the command that the words name. Raises what it raises, and UsageError."""
    names = {_name(c): c for c in app.registered_commands}
    if words and words[0] in names:  # building the options of all takes longer than a short answer
        app = copy(app)
        app.registered_commands = [names[words[0]]]
    elif words and not words[0].startswith("-"):
        line = plain(f"no such command '{plain(words[0])}'.", 300)
        raise UsageError(f"{line}{_near(words[0], names)} Try: diagnose --help")
    return app(args=words, prog_name="diagnose", standalone_mode=False)


def _name(command: Any) -> str:
    return str(command.name or command.callback.__name__)


def usage_line(error: CommandLineError) -> str:
    """What typer says in several lines, in one, with the nearest right option."""
    context: Any = getattr(error, "ctx", None)
    message, near = error.format_message(), ""
    if isinstance(error, NoSuchOptionError):
        message = f"no such option '{plain(error.option_name)}'."
        near = _near(error.option_name, _options(context))
    line = plain(" ".join(message.split()), 300)
    line = line[:1].lower() + line[1:].rstrip(".") + "."
    return f"{line}{near}{_help(context)}"


def _options(context: Any) -> list[str]:
    parameters = context.command.get_params(context) if context else ()
    return [o for p in parameters for o in (*p.opts, *p.secondary_opts) if o.startswith("-")]


def _near(word: str, words: Iterable[str]) -> str:
    near = get_close_matches(word[:40], list(words), 1, 0.6)
    return f" Did you mean '{near[0]}'?" if near else ""


def _help(context: Any) -> str:
    return f" Try: {context.command_path} --help" if context else ""
