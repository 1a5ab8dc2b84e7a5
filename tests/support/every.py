"""One test over every value of a long list: thousands of small tests cost more than they look at."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import TypeVar

T = TypeVar("T")


def every(
    values: Iterable[T], label: Callable[[T], str] = str
) -> Callable[[Callable[[T], None]], Callable[[], None]]:
    """Make a test of one value a test of them all, which names each value that fails.

    Fails as well where there is no value to look at.

    >>> @every([1, 2, 3])
    ... def test_is_small(number: int) -> None:
    ...     assert number < 2, "too large"
    >>> test_is_small()
    Traceback (most recent call last):
    AssertionError: 2 of 3 fail
    2: too large
    3: too large
    """

    def over_all(test: Callable[[T], None]) -> Callable[[], None]:
        def run() -> None:
            failed, looked_at = [], 0
            for value in values:
                looked_at += 1
                try:
                    test(value)
                except AssertionError as error:
                    failed.append(f"{label(value)}: {error}")
            assert looked_at, "nothing was looked at"
            assert not failed, "\n".join([f"{len(failed)} of {looked_at} fail", *failed])

        run.__name__, run.__doc__, run.__module__ = test.__name__, test.__doc__, test.__module__
        return run

    return over_all
