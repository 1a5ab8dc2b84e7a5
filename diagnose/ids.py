"""Ids of the book as people write them: capitals, hyphens and spaces are no difference."""

from __future__ import annotations


def normal_id(name: str) -> str:
    """An id as the book writes it.

    >>> normal_id(" Needle-Flickers")
    'needle_flickers'
    """
    return name.strip().lower().replace("-", "_").replace(" ", "_")
