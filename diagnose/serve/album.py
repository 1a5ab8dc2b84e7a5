"""Keep photos beside a case file, and hand them out."""

from __future__ import annotations

import os
import tempfile
from pathlib import Path

from diagnose.case.disk import locked
from diagnose.case.photos import PHOTO_NAME, Photo, album_of, photos_of
from diagnose.errors import CannotWriteError
from diagnose.output.documents.photos import step_title
from diagnose.serve.exchange import NotHereError
from diagnose.serve.pictures import NoPhotoError, cleaned

MOST_PHOTOS = 300  #: of one job
KINDS = {"jpg": "image/jpeg", "png": "image/png"}


def photo(case: Path, name: str) -> tuple[str, bytes]:
    """The type and the bytes of one photo. Raises NotHereError."""
    match = PHOTO_NAME.fullmatch(name)
    if match is None or all(p.file != name for p in photos_of(case)):
        raise NotHereError("There is no such photo.")
    return KINDS[match[3]], (album_of(case) / name).read_bytes()


def keep(case: Path, data: bytes, step: str) -> Photo:
    """Keep a photo without its metadata; ``step``: the id of a check or place, may be empty.

    Raises NoPhotoError; CannotWriteError.
    """
    kind, picture = cleaned(data)
    album = album_of(case)
    step = step if step_title(step) else ""
    with locked(case):
        if album.is_symlink():
            raise CannotWriteError(f"{album.name}: is a link; photos are kept in a real folder")
        try:
            album.mkdir(exist_ok=True)
            taken = photos_of(case)
            number = max((p.number for p in taken), default=0) + 1
            if len(taken) >= MOST_PHOTOS or number > 999:
                raise NoPhotoError("That job has as many photos as are kept of one.")
            name = f"{number:03d}-{step}.{kind}" if step else f"{number:03d}.{kind}"
            _write(album, name, picture)
        except OSError as error:
            raise CannotWriteError(f"{album.name}: not saved, {error.strerror}") from None
    return Photo(name, number, step)


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
