"""What changes in the text of a case where its [engine] is answered again."""

from __future__ import annotations


def only_its_engine(before: bytes, after: bytes) -> bool:
    """Whether only the [engine] was answered again: its old lines stay, as comments, indentation aside."""
    head, _, old = before.decode().partition("[engine]\n")
    new_head, _, new = after.decode().partition("[engine]\n")
    said, stays = ([x.lstrip("# ").rstrip() for x in part.splitlines()] for part in (old, new))
    return bool(old) and new_head == head and all(line in stays for line in said)
