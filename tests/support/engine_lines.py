"""What changes in the text of a case where its [engine] is answered again."""

from __future__ import annotations


def only_its_engine(before: bytes, after: bytes) -> bool:
    """Whether only the [engine] was answered again: its old lines stay, as comments, indentation aside."""
    head, _, old = before.decode().partition("[engine]\n")
    new_head, _, new = after.decode().partition("[engine]\n")
    stays = [line.removeprefix("#").strip() for line in new.splitlines()]
    return bool(old) and new_head == head and all(x.strip() in stays for x in old.splitlines())
