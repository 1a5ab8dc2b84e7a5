"""Turn a document into JSON values: the one serializer behind ``--json``.

A document is a frozen dataclass of plain values. Its field names are the JSON keys, in the order of
the fields. A field's metadata says what differs: ``NOT_IN_JSON``, ``IF_GIVEN``,
``key("...")`` or ``only("...")``.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import fields, is_dataclass
from enum import Enum
from typing import Any

SCHEMA = 1  #: version of the JSON; keys are only ever added
NOT_IN_JSON: Mapping[str, object] = {"in_json": False}  #: a field for the other renderers only
IF_GIVEN: Mapping[str, object] = {"if_given": True}  #: a key that is left out where it is None


def key(name: str) -> Mapping[str, object]:
    """Metadata of a field whose JSON key is not its own name, such as the keyword ``for``."""
    return {"key": name}


def only(name: str) -> Mapping[str, object]:
    """Metadata of a sequence field of which JSON shows one attribute of each element."""
    return {"only": name}


def as_json(document: Any) -> dict[str, Any]:
    """Return the document as a JSON object. Raises TypeError for a value JSON has no form for.

    >>> from dataclasses import dataclass, field
    >>> @dataclass(frozen=True)
    ... class Reading:
    ...     rpm: float
    ...     text: str = field(metadata=NOT_IN_JSON)
    ...     taps: tuple[str, ...] = field(metadata=key("tapped_at"))
    >>> as_json(Reading(700.0, "700 rpm", ("gallery",)))
    {'rpm': 700.0, 'tapped_at': ['gallery']}
    """
    content = {}
    for each in fields(document):
        value = getattr(document, each.name)
        if not each.metadata.get("in_json", True):
            continue
        if value is None and each.metadata.get("if_given"):
            continue
        if name := each.metadata.get("only"):
            value = [getattr(one, str(name)) for one in value]
        content[str(each.metadata.get("key", each.name))] = _value(value)
    return content


def _value(value: Any) -> Any:
    if isinstance(value, Enum):
        return _value(value.value)
    if value is None or isinstance(value, str | bool | int | float):
        return value
    if is_dataclass(value):
        return as_json(value)
    if isinstance(value, Mapping):
        return {str(name): _value(each) for name, each in value.items()}
    if isinstance(value, tuple | list):
        return [_value(each) for each in value]
    raise TypeError(f"no JSON form for {type(value).__name__}")
