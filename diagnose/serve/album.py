"""The photos of a job: files in a folder of their own beside the case file."""

from __future__ import annotations

import os
import re
import tempfile
from dataclasses import dataclass
from pathlib import Path

from diagnose.case.disk import locked
from diagnose.errors import CannotWriteError
from diagnose.serve.exchange import NotHereError
from diagnose.serve.pictures import NoPhotoError, cleaned
from knowledge.access import OPENINGS
from knowledge.book import the_book

MOST_PHOTOS = 300  #: of one job
KINDS = {"jpg": "image/jpeg", "png": "image/png"}
_NAME = re.compile(r"(\d{3})(?:-([a-z0-9_]{1,60}))?\.(jpg|png)")


@dataclass(frozen=True, slots=True)
class Photo:
    """One photo: its file, what it is of, its number."""

    file: str
    says: str
    number: int


def album_of(case: Path) -> Path:
    """The folder of a case's photos, which may not be there.

    >>> album_of(Path("jobs/petrel.toml")).name
    'petrel.photos'
    """
    return case.with_name(f"{case.stem}.photos")


def photos_of(case: Path) -> tuple[Photo, ...]:
    """The photos of a job in the order they were taken."""
    album = album_of(case)
    if album.is_symlink() or not album.is_dir():
        return ()
    found = []
    for name in sorted(os.listdir(album)):
        match = _NAME.fullmatch(name)
        if match and not (album / name).is_symlink():
            found.append(Photo(name, _says(match[2] or ""), int(match[1])))
    return tuple(found)


def photo(case: Path, name: str) -> tuple[str, bytes]:
    """The type and the bytes of one photo. Raises NotHereError."""
    match = _NAME.fullmatch(name)
    if match is None or all(p.file != name for p in photos_of(case)):
        raise NotHereError("There is no such photo.")
    return KINDS[match[3]], (album_of(case) / name).read_bytes()


def keep(case: Path, data: bytes, step: str) -> Photo:
    """Keep a photo without its metadata; ``step``: the id of a check or place, may be empty.

    Raises NoPhotoError; CannotWriteError.
    """
    kind, picture = cleaned(data)
    album = album_of(case)
    with locked(case):
        if album.is_symlink():
            raise CannotWriteError(f"{album.name}: is a link; photos are kept in a real folder")
        try:
            album.mkdir(exist_ok=True)
            taken = photos_of(case)
            number = max((p.number for p in taken), default=0) + 1
            if len(taken) >= MOST_PHOTOS or number > 999:
                raise NoPhotoError("That job has as many photos as are kept of one.")
            name = f"{number:03d}-{step}.{kind}" if _says(step) else f"{number:03d}.{kind}"
            _write(album, name, picture)
        except OSError as error:
            raise CannotWriteError(f"{album.name}: not saved, {error.strerror}") from None
    return Photo(name, _says(step), number)


def _write(album: Path, name: str, picture: bytes) -> None:
    """Write the whole photo under its name, or nothing."""
    handle, temporary = tempfile.mkstemp(prefix=".new-", dir=album)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(picture)
            file.flush()
            os.fsync(file.fileno())
        os.chmod(temporary, 0o644)
        os.replace(temporary, album / name)
    except OSError:
        os.unlink(temporary)
        raise


def _says(step: str) -> str:
    """What a photo is of: the check or the place with that id; empty where there is none."""
    book = the_book()
    if step in book.inspections:
        return book.inspections[step].says
    return next((o.says for o in OPENINGS.values() if o.access.value == step), "")
