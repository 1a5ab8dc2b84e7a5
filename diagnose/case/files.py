"""Read the text of a case file, a sheet or an engine's card, and its TOML."""

from __future__ import annotations

import re
import stat
import tomllib
from difflib import get_close_matches
from pathlib import Path
from typing import Any

from diagnose.errors import BadCaseError, NoCaseError, plain
from diagnose.ways import Way, to

_ALIKE = 0.65  #: how alike the names of two files are, without their endings, to be mixed up
LARGEST = 2_000_000  #: bytes; no job of a person's comes near
#: endings of each sort of file, and what to do where there is none of the name
_SORTS = {
    "case": ((".toml",), Way.BEGIN_CASE),
    "card": ((".toml",), Way.BEGIN_CARD),
    "sheet": ((".md", ".toml"), Way.MAKE_SHEET),
}
#: a key or header of more parts than any case has: reading it takes a time that grows squared
_LONG_KEY = re.compile(
    r"""^[ \t]*+(?:\[{1,2}[ \t]*+)?"""
    r"""(?:(?:[\w-]++|"(?:[^"\\\n]|\\.)*+"|'[^'\n]*+')[ \t]*+\.[ \t]*+){30}""",
    re.MULTILINE,
)


def named(path: Path | None) -> str:
    """The file's name in a message."""
    return plain(path, 4096) if path else "case"


def read_text(path: Path, sort: str = "case") -> str:
    """The text of a file, a case unless ``sort`` names another kind. Raises NoCaseError, BadCaseError."""
    try:
        if not stat.S_ISREG(path.stat().st_mode):
            raise NoCaseError(named(path), [_no_such(path, sort)])
        with path.open("rb") as file:
            data = file.read(LARGEST + 1)
        if len(data) > LARGEST:
            fault = f"{path.stat().st_size:,} bytes; a {sort} is at most {LARGEST:,}"
            raise BadCaseError(named(path), [fault])
        return data.decode("utf-8")
    except UnicodeDecodeError as error:
        fault = f"byte {error.start} is not UTF-8 text; save the file as UTF-8"
        raise BadCaseError(named(path), [fault]) from None
    except PermissionError:
        raise NoCaseError(named(path), ["no permission to read it"]) from None
    except (FileNotFoundError, NotADirectoryError):
        raise NoCaseError(named(path), [_no_such(path, sort)]) from None
    except OSError as error:
        raise NoCaseError(named(path), [error.strerror or str(error)]) from None
    except ValueError:
        raise NoCaseError(named(path), ["no such file name"]) from None


def is_toml(name: str) -> bool:
    """Whether a file is named as a case or card is."""
    return name.lower().endswith(".toml")


def _no_such(path: Path, sort: str) -> str:
    """Why there is no file of that name, and the nearest name."""
    if path.is_dir():
        return f"is a folder; name a {sort} file in it"
    if path.exists():
        return f"is no ordinary file, and so no {sort}"
    if path.is_symlink():
        return "is a link to a file that is not there"
    if not path.parent.is_dir():
        return f"there is no folder {named(path.parent)}"
    wanted, starts = _SORTS[sort]
    others = {p.stem: p.name for p in path.parent.glob("*") if p.suffix.lower() in wanted}
    near = get_close_matches(path.stem, list(others), 1, _ALIKE)
    hint = f"did you mean {named(path.parent / others[near[0]])}?" if near else to(starts)
    return f"no such {sort}; {hint}"


def parsed(text: str, sort: str = "case") -> dict[str, Any]:
    """TOML as raw tables. Raises ValueError with what is wrong."""
    text = text.removeprefix("\ufeff")
    if _LONG_KEY.search(text):
        raise ValueError(f"nested too deep for a {sort}")
    try:
        return tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise ValueError(f"not a TOML file: {plain(error, 300)}") from None
    except (RecursionError, ValueError):
        raise ValueError(f"nested too deep, or a number too long, for a {sort}") from None
