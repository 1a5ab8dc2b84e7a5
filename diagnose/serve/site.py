"""What the screens share: the folder, the diagnoses, interviews under way, keys, the frame."""

from __future__ import annotations

import os
import secrets
from collections.abc import Iterable, Sequence
from contextlib import AbstractContextManager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from diagnose.output.html.page import rendered
from diagnose.serve.diagnoses import Diagnoses, Known
from diagnose.serve.exchange import Answer, Asked, address
from diagnose.serve.folder import JobFolder
from diagnose.serve.interviews import Interviews
from diagnose.serve.keys import Door, FormKeys

UNTITLED = "Job without a title"


@dataclass
class Site:
    """One folder being served."""

    folder: JobFolder
    door: Door | None = None  #: None: for this machine only
    keys: FormKeys = field(default_factory=FormKeys)
    diagnoses: Diagnoses = field(default_factory=Diagnoses)
    interviews: Interviews = field(default_factory=Interviews)

    def job(self, asked: Asked) -> AbstractContextManager[Known]:
        """The job that is asked for, as it is on disk now, locked for as long as it is used.

        Raises NoCaseError, BadCaseError, OutOfScopeError.
        """
        return self.diagnoses.of(self.folder.path(asked.job))


@dataclass(frozen=True, slots=True)
class Refusal:
    """Why a form was not saved; it is shown once more with this and with all that was put in."""

    faults: Sequence[str] = ()  #: what is wrong
    meanwhile: Sequence[str] = ()  #: what was entered or changed elsewhere since it was made
    status: int = 400


def screen(template: str, asked: Asked, *, status: int = 200, **words: Any) -> Answer:
    """A page in the frame of all pages."""
    common = {
        "token": asked.token,
        "once": secrets.token_urlsafe(12),
        "link": address,
        "known": None,
        "job": asked.job,
        "back": ("/", "Jobs"),
        "notice": "",
        "faults": (),
        "asked": asked,
    }
    return Answer(rendered(template, "diagnose.serve", **{**common, **words}), status=status)


def job_screen(
    template: str, asked: Asked, known: Known, *, refused: Refusal | None = None, **words: Any
) -> Answer:
    """A page about one job, with the way back to it; ``refused``: why its form was not saved."""
    common = {
        "known": known,
        "faults": refused.faults if refused else (),
        "meanwhile": refused.meanwhile if refused else (),
        "name": name_of(known),
        "version": str(known.version),
        "back": (address("job", asked.job), name_of(known)),
    }
    status = refused.status if refused else 200
    return screen(template, asked, status=status, **{**common, **words})


def without_folder(lines: Iterable[str], root: Path) -> tuple[str, ...]:
    """Lines on what is wrong, without where the folder ``root`` lies."""
    return tuple(line.replace(f"{root}{os.sep}", "") for line in lines)


def name_of(known: Known) -> str:
    """What a job is called: its title, else how its complaint begins."""
    from diagnose.entry.titles import first_words

    job = known.case.job
    return " ".join((job.title or first_words(job.complaint) or UNTITLED).split())
