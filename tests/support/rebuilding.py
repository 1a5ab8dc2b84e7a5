"""Rebuild a case file through the builder of the library, each entry as a person types it."""

from __future__ import annotations

from typing import Any

import diagnose as api


def answer_of(entry: dict[str, Any]) -> str:
    """The state of a finding entry in words or percent."""
    sure = entry.get("sure")
    if sure is None or entry["state"] == "unknown":
        return {"present": "yes", "absent": "no", "unknown": "unknown"}[entry["state"]]
    percent = 100 * sure if entry["state"] == "present" else 100 - 100 * sure
    return f"{percent:.0f} %"


def reading_of(entry: dict[str, Any]) -> str:
    """A reading entry as a person types it."""
    words = [entry["rpm"], entry.get("oil", ""), entry["pressure"]]
    words += ["±" + entry["error"]] if "error" in entry else []
    return " ".join([*words, entry.get("gauge", ""), entry.get("tap", ""), entry.get("at", "")])


def behaviour_of(entry: dict[str, Any]) -> str:
    """A behaviour entry as a person types it."""
    words = [entry["shows"], entry.get("onset", ""), *entry.get("course", ())]
    words += [f"{k} {', '.join(entry[k])}" for k in ("during", "never") if k in entry]
    words += [f"{k} {entry[k]}" for k in ("since", "lasts", "gauge") if k in entry]
    words += ["only"] * bool(entry.get("only")) + ["with pressure"] * bool(
        entry.get("with_pressure")
    )
    return " ".join(words)


def earlier_of(entry: dict[str, Any]) -> str:
    """An entry of earlier work as a person types it."""
    words = [entry["what"], entry.get("done", ""), entry.get("before", "")]
    return " ".join(words + ([f"by {entry['hands']}"] if "hands" in entry else []))


def add(job: api.CaseBuilder, kind: str, entry: dict[str, Any]) -> int:
    """One entry of a file through the builder's methods."""
    details = {k: entry[k] for k in ("note", "by", "when", "learned", "replaces") if k in entry}
    if entry.get("state") == "withdrawn":
        return job.withdraw(entry["replaces"])
    if kind == "reading":
        return job.reading(reading_of(entry), **details)
    if kind == "baseline":
        return job.baseline(reading_of(entry), **details)
    if kind == "behaviour":
        return job.behaviour(behaviour_of(entry), **details)
    if kind == "earlier":
        return job.earlier(earlier_of(entry), **details)
    if kind == "trial":
        return job.trial(entry["what"], entry["result"], **details)
    where = entry.get("where", "")
    if kind == "work":
        return job.task(entry["what"], entry.get("value") or entry["state"], where=where, **details)
    if "value" in entry:
        return job.measurement(entry["what"], entry["value"], where=where, **details)
    return job.finding(entry["what"], answer_of(entry), where=where, **details)


def rebuilt(raw: dict[str, Any]) -> api.CaseBuilder:
    """A builder with the entries of a parsed case file, in the order of their numbers."""
    names = {"name": "engine_name", "note": "engine_note"}
    engine: dict[str, Any] = {names.get(k, k): v for k, v in raw.get("engine", {}).items()}
    builder = api.CaseBuilder(**raw.get("job", {}), **engine)
    kinds = ("finding", "reading", "baseline", "behaviour", "trial", "earlier", "work")
    entries = [(kind, entry) for kind in kinds for entry in raw.get(kind, [])]
    for kind, entry in sorted(entries, key=lambda e: int(e[1]["no"])):
        assert add(builder, kind, entry) == entry["no"]
    return builder
