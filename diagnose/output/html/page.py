"""A page from a template; the only module that imports jinja2."""

from __future__ import annotations

from functools import cache
from typing import Any

from jinja2 import Environment, PackageLoader, StrictUndefined

from diagnose.errors import clean
from diagnose.output.lines import percent


@cache
def _environment(package: str) -> Environment:
    environment = Environment(
        loader=PackageLoader(package),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
    )
    environment.filters |= {"percent": percent, "said": clean, "whole": _whole}
    return environment


def _whole(value: float) -> str:
    """A number without decimals, as the other renderers print it."""
    return f"{value:.0f}"


def rendered(template: str, package: str = "diagnose.output.html", **words: Any) -> str:
    """Return the page as text; the same words give the same page.

    ``package``: the one whose folder ``templates`` holds the template.
    """
    return _environment(package).get_template(template).render(words)
