"""Words of the book as every document shows them: an id and what it stands for."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Protocol

UNTITLED = "case without a title"


class HasName(Protocol):
    """Anything of the book with an id and a sentence."""

    @property
    def id(self) -> str:
        """Its id in the book."""
        ...

    @property
    def says(self) -> str:
        """Its sentence."""
        ...


@dataclass(frozen=True, kw_only=True)
class Named:
    """A finding, cause, check or task by its id and in words."""

    id: str
    says: str

    def __str__(self) -> str:
        return f"{self.says} [{self.id}]"


def named(words: Iterable[HasName]) -> tuple[Named, ...]:
    """Return each word's id and sentence, in the same order."""
    return tuple(Named(id=w.id, says=w.says) for w in words)
