"""That a shop's closed jobs are part of an answer."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class ShopNote:
    """Which closed jobs an answer takes into account."""

    folder: str
    jobs: int
    says: str
