"""The photos of a job: which there are, in the folder of their own beside the case file."""

from __future__ import annotations

import os
import re
from dataclasses import dataclass
from pathlib import Path

#: number, then the id of the check, task or place it was taken at, where it was taken at one
PHOTO_NAME = re.compile(r"(\d{3})(?:-([a-z0-9_]{1,60}))?\.(jpg|png)")


@dataclass(frozen=True, slots=True)
class Photo:
    """One photo: its file, its number, and the id of the step it was taken at; may be empty."""

    file: str
    number: int
    step: str


def album_of(case: Path) -> Path:
    """The folder of a case's photos, which may not be there.

    >>> album_of(Path("jobs/petrel.toml")).name
    'petrel.photos'
    """
    return case.with_name(f"{case.stem}.photos")


def photos_of(case: Path) -> tuple[Photo, ...]:
    """The photos of a job in the order they were taken; links are none."""
    album = album_of(case)
    found = []
    try:
        names = [] if album.is_symlink() or not album.is_dir() else sorted(os.listdir(album))
    except OSError:
        names = []
    for name in names:
        match = PHOTO_NAME.fullmatch(name)
        if match and not (album / name).is_symlink():
            found.append(Photo(name, int(match[1]), match[2] or ""))
    return tuple(found)
