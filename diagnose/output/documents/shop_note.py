"""That a shop's closed jobs are part of an answer."""

from __future__ import annotations

from dataclasses import dataclass, field

from diagnose.output.as_json import NOT_IN_JSON


@dataclass(frozen=True, kw_only=True)
class ShopNote:
    """Which closed jobs an answer takes into account."""

    folder: str
    jobs: int
    says: str
    #: the path and the command in ``says``, which are never broken over two lines
    whole: tuple[str, ...] = field(default=(), metadata=NOT_IN_JSON)
