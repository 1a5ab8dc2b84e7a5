"""The relief spring's part of the document of ``sizing``: figures, shims, bench-test sheet; SI."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from diagnose.case.case import Case
from diagnose.case.units import units_of
from diagnose.circuit.relief_spring import SHIMS, ReliefSpring
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.scale import Scale
from knowledge.units import FORCE, INCH, LENGTH, show

SHIM_INCH, SHIM_METRIC = 0.020 * INCH, 0.5e-3  #: m: the usual shim washer, an example


@dataclass(frozen=True, kw_only=True)
class BenchLine:
    """One line of the bench-test sheet: what to measure, what is right, pass or fail."""

    id: str
    says: str
    accepts: str
    found: str
    verdict: str  #: "passed", "failed", or empty where nothing was measured


@dataclass(frozen=True, kw_only=True)
class SizingSpring:
    """The relief valve's spring [Pa, m, N, N/m]."""

    setting: float
    least: float
    most: float
    plunger: float
    rate: float
    force: float
    preload: float
    free_length: float | None
    fitted_length: float | None
    printed_opens_at: float | None
    shims: dict[str, float]  #: thickness [mm] to gain [Pa]
    wanted: float | None
    shim_to_wanted: float | None
    assumed: tuple[str, ...]
    measured_rate: float | None  #: of the spring in hand
    force_found: float | None  #: of the spring in hand, at the fitted length
    opens_found: float | None
    shim_found: float | None  #: that brings it to the setting
    bench: tuple[BenchLine, ...]
    says: tuple[str, ...] = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, slots=True)
class SpringUnits:
    """How the spring's lengths and forces are shown: as typed, as on the card, as in the job."""

    length_unit: str | None
    force_unit: str | None

    @classmethod
    def of(cls, case: Case, spring: ReliefSpring) -> SpringUnits:
        """The units of a case's spring; those typed for the spring in hand go first."""
        units = units_of(case)
        force_typed, typed = spring.tests[0].units if spring.tests else (None, None)
        on_card = case.unit("length", "relief_spring_length")
        length = typed or on_card or case.unit("length", "relief_plunger") or units.shown_in(LENGTH)
        metric = length in ("mm", "cm")
        return cls(length, force_typed or units.shown_in(FORCE) or ("N" if metric else "lbf"))

    def length(self, si: float) -> str:
        """A length [m] in the unit."""
        return show(si, LENGTH, self.length_unit, 3)

    def force(self, si: float) -> str:
        """A force [N] in the unit."""
        return show(si, FORCE, self.force_unit, 3)

    def shim(self, si: float) -> str:
        """The thickness of a shim [m] in the unit, as finely as shims are sold."""
        return show(si, LENGTH, self.length_unit, 2)


def spring_document(spring: ReliefSpring, scale: Scale, units: SpringUnits) -> SizingSpring:
    """Build the relief spring's part."""
    wanted = spring.wanted
    shim = None if wanted is None else spring.shim_to(wanted)
    return SizingSpring(
        setting=spring.setting,
        least=spring.least,
        most=spring.most,
        plunger=spring.plunger,
        rate=spring.rate,
        force=spring.force,
        preload=spring.preload,
        free_length=spring.free_length,
        fitted_length=spring.fitted_length,
        printed_opens_at=spring.printed_opens_at,
        shims={f"{1e3 * s:g}": spring.gain(s) for s in SHIMS},
        wanted=wanted,
        shim_to_wanted=shim,
        assumed=spring.assumed,
        measured_rate=spring.measured_rate,
        force_found=spring.force_found,
        opens_found=spring.opens_found,
        shim_found=spring.shim_found,
        bench=tuple(_bench(spring, scale, units)),
        says=tuple(_spring_says(spring, scale, units, shim)),
    )


def _spring_says(
    spring: ReliefSpring, scale: Scale, units: SpringUnits, shim: float | None
) -> Sequence[str]:
    length, force = units.length, units.force
    says = (
        f"opens at {scale.one(spring.setting)} with {force(spring.force)} on a "
        f"{length(spring.plunger)} plunger, the spring pressed in {length(spring.preload)}"
    )
    if spring.fitted_length is not None and spring.free_length is not None:
        says += f", from {length(spring.free_length)} to {length(spring.fitted_length)}"
    thickness = SHIM_INCH if units.length_unit in ("in", "thou", None) else SHIM_METRIC
    lines = [
        f"{says}.",
        f"A shim of {length(thickness)} adds {scale.one(spring.gain(thickness))}"
        + (
            ""
            if shim is None or spring.wanted is None
            else f"; for {scale.one(spring.wanted)} {'add' if shim > 0 else 'take out'} "
            f"{units.shim(abs(shim))}"
        )
        + ".",
    ]
    fits_at = spring.length_to_open
    if fits_at is not None and spring.opens_found is None:
        lines.append(
            f"The spring in hand opens it at {scale.one(spring.setting)} where it is "
            f"{length(fits_at)} long with the valve shut: measure that length."
        )
    opens, mend = spring.opens_found, spring.shim_found
    if opens is not None and mend is not None:
        lines.append(_in_hand(spring, scale, units, opens, mend))
    printed = spring.printed_opens_at
    if printed is not None and not spring.passes(printed):
        lines.append(
            f"The printed load would open this plunger at {scale.one(printed)}: measure plunger "
            "and spring."
        )
    if spring.assumed:
        lines.append(f"Typical, not this engine's: {' and '.join(spring.assumed)}.")
    return lines


def _in_hand(
    spring: ReliefSpring, scale: Scale, units: SpringUnits, opens: float, mend: float
) -> str:
    """What the spring in hand comes to; beside a setting that is only usual it passes nothing."""
    says = f"The spring in hand opens it at {scale.one(opens)}"
    if spring.fitted_length is None:
        says += f", if it is {units.length(spring.tests[0].length)} long with the valve shut"
    band = f"{scale.figure(spring.least)} to {scale.one(spring.most)}"
    if not spring.own_setting:
        within = "as usual" if spring.passes(opens) else "not as usual"
        return f"{says}: {within} in engines of its kind ({band}); its maker's figure decides."
    if spring.passes(opens):
        return f"{says}: passed ({band})."
    way = "add" if mend > 0 else "take out"
    return (
        f"{says}: failed ({band}); {way} {units.shim(abs(mend))} of shim for "
        f"{scale.one(spring.setting)}, or renew it."
    )


def _bench(spring: ReliefSpring, scale: Scale, units: SpringUnits) -> Sequence[BenchLine]:
    length, force = units.length, units.force
    lines = []
    if spring.free_length is not None:
        lines.append(_line("free_length", "free length", length(spring.free_length)))
    share_low, share_high = spring.least / spring.setting, spring.most / spring.setting
    fitted = spring.fitted_length
    at = "fitted length" if fitted is None else length(fitted)
    low, high = force(share_low * spring.force), force(share_high * spring.force)
    opens, has = spring.opens_found, spring.force_found
    verdict = ""
    if opens is not None and spring.own_setting:
        verdict = "passed" if spring.passes(opens) else "failed"
    found = "" if has is None else force(has)
    lines.append(_line("force", f"force at {at}", f"{low.split()[0]} to {high}", found, verdict))
    accepts = f"{scale.figure(spring.least)} to {scale.one(spring.most)}"
    computed = f"{scale.one(opens)}, computed" if opens is not None else ""
    lines.append(_line("opens_at", "opening pressure", accepts, computed, verdict))
    lines.append(_line("drops", "plunger, oiled", "drops by its weight"))
    return lines


def _line(id: str, says: str, accepts: str, found: str = "", verdict: str = "") -> BenchLine:
    return BenchLine(id=id, says=says, accepts=accepts, found=found, verdict=verdict)
