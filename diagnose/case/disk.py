"""Write whole files safely: lock, write beside, flush to disk, rename into place."""

from __future__ import annotations

import contextlib
import errno
import os
import stat
import tempfile
import time
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from diagnose.case.files import is_toml
from diagnose.case.loading import named
from diagnose.errors import CannotWriteError, UsageError

PATIENCE = 30.0  #: seconds to wait for another command that is writing
_PREFIX, _SUFFIX = ".diagnose-", ".new"
NO_FOLDER = "there is no such folder"
DASH = Path("-")  #: elsewhere the standard input; a file of that name is one by mistake
NO_NAME = "a dash is no name of a case; without words, the standard input is read by itself"
#: what file systems without such locks answer: there the rename alone keeps files whole
NO_LOCKS = (errno.ENOLCK, errno.EBADF, errno.ENOTSUP, errno.EINVAL, errno.ENOSYS)


@dataclass(frozen=True, slots=True)
class Place:
    """A file to write: as named by the person, and where its links lead."""

    path: Path
    target: Path
    alone: bool  #: the folder is locked: no other command is writing in it


@contextlib.contextmanager
def locked(path: Path) -> Iterator[Place]:
    """Hold the lock on the folder the file is really in. Raises CannotWriteError."""
    if path == DASH:
        raise _cannot(path, NO_NAME)
    target = Path(os.path.realpath(path))
    if os.path.islink(target):
        raise _cannot(path, "its links lead in a circle")
    try:
        handle = os.open(target.parent, os.O_RDONLY)
    except (FileNotFoundError, NotADirectoryError):
        raise _cannot(path, NO_FOLDER) from None
    except OSError as error:
        if os.name != "nt":
            raise _cannot(path, error.strerror) from None
        yield Place(path, target, alone=False)  # that system opens no folders
        return
    try:
        yield Place(path, target, _lock(handle, path))
    finally:
        os.close(handle)


def _lock(handle: int, path: Path) -> bool:
    """Wait for the lock; False where the file system knows none. Raises CannotWriteError."""
    try:
        import fcntl
    except ImportError:
        return False
    deadline = time.monotonic() + PATIENCE
    while True:
        try:
            fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
            return True
        except BlockingIOError:
            if time.monotonic() > deadline:
                raise _cannot(path, "another command keeps writing there") from None
            time.sleep(0.005)
        except OSError as error:
            if error.errno not in NO_LOCKS:
                raise _cannot(path, error.strerror) from None
            return False


def ready(path: Path) -> None:
    """Check that the file can be written, before a person starts to type.

    Raises CannotWriteError.
    """
    with locked(path) as place:
        try:
            os.lstat(place.target)
            if not os.access(place.target, os.W_OK):
                raise _cannot(path, "the file is read-only")
        except FileNotFoundError:
            pass
        except OSError as error:
            raise _cannot(path, error.strerror) from None
        folder = place.target.parent
        if not (os.access(folder, os.W_OK) and os.access(folder, os.X_OK)):
            raise _cannot(path, "no permission to write in that folder")


def atomic_write(place: Place, text: str) -> None:
    """Write the text as the whole file, all or nothing. Raises CannotWriteError."""
    target, name = place.target, None
    try:
        old = target.stat() if target.exists() else None
        if old and not os.access(target, os.W_OK):
            raise _cannot(place.path, "the file is read-only")
        if place.alone:
            _remove_leftovers(target.parent)
        data = text.encode("utf-8")
        handle, name = tempfile.mkstemp(prefix=_PREFIX, suffix=_SUFFIX, dir=target.parent)
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        _copy_permissions(name, old)
        os.replace(name, target)
        name = None
        _sync_folder(target.parent)
    except (OSError, UnicodeEncodeError) as error:
        raise _cannot(place.path, getattr(error, "strerror", None) or str(error)) from None
    finally:
        if name is not None:
            with contextlib.suppress(OSError):
                os.unlink(name)


def write_plain(path: Path, text: str, case: Path) -> None:
    """A file that is no case, or a device. Raises CannotWriteError; UsageError for a case."""
    refuse_a_case(path, case)
    try:
        if path.is_dir() or (path.exists() and not path.is_file()):
            path.write_text(text, encoding="utf-8")
            return
    except OSError as error:
        raise _cannot(path, error.strerror) from None
    with locked(path) as place:
        atomic_write(place, text)


def refuse_a_case(path: Path, case: Path) -> None:
    """Raise UsageError where the file, or what it is a link to, is named as a case is."""
    target = os.path.realpath(path)
    if target == os.path.realpath(case) or is_toml(target):
        raise UsageError(f"{named(path)}: is the name of a case; name another file")


def refuse_no_folder(path: Path) -> None:
    """Raise CannotWriteError where the folder of the file does not exist."""
    if not path.parent.is_dir():
        raise _cannot(path, NO_FOLDER)


def _cannot(path: Path, reason: str | None) -> CannotWriteError:
    kept = "; the old file is unchanged" if os.path.isfile(path) else ""
    return CannotWriteError(f"{named(path)}: not saved, {reason}{kept}")


def _copy_permissions(name: str, old: os.stat_result | None) -> None:
    """Give a new file the permissions of the old one, or this user's default."""
    if old is None:
        mask = os.umask(0)
        os.umask(mask)
        os.chmod(name, 0o666 & ~mask)
        return
    with contextlib.suppress(OSError, AttributeError):
        os.chown(name, old.st_uid, old.st_gid)
    os.chmod(name, stat.S_IMODE(old.st_mode) & 0o777)


def _remove_leftovers(folder: Path) -> None:
    """Remove what a killed command left behind."""
    for left in folder.glob(f"{_PREFIX}*{_SUFFIX}"):
        with contextlib.suppress(OSError):
            left.unlink()


def _sync_folder(folder: Path) -> None:
    """Force the rename itself to disk."""
    with contextlib.suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)
