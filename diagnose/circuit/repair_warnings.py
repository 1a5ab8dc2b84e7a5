"""Warnings about a planned repair: symptoms treated, suction, filter or drive overloaded.

Each warning is one sentence with its figures.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

import numpy as np

from diagnose.case.units import units_of
from diagnose.circuit.band import HIGH
from diagnose.circuit.deviations import Deviation
from diagnose.circuit.fixes import closed_by
from diagnose.circuit.forecast import HORSEPOWER, Forecast, predict
from diagnose.circuit.parameters import CircuitParameter
from knowledge.circuit.fixes import OIL
from knowledge.engines.features import PUMP_ON_DISTRIBUTOR_SHAFT
from knowledge.limits import Limit
from knowledge.model import State
from knowledge.stations.bearings import quantities as bearings
from knowledge.stations.bearings.quantities import LEAST_BEARING_CLEARANCE
from knowledge.stations.delivery import quantities as delivery
from knowledge.stations.oil import quantities as oil
from knowledge.stations.pump import quantities as pump
from knowledge.stations.relief import quantities as relief
from knowledge.stations.suction import quantities as suction
from knowledge.stations.suction.quantities import LEAST_PICKUP_GAP, MOST_PICKUP_GAP
from knowledge.stations.topend import quantities as topend
from knowledge.units import INCH, PRESSURE, PSI, TORQUE

WIDE = 1.25  #: times the usual clearance from which it is wide (judgement)
FEW = 0.1  #: share of plausible engines from which to warn
MOST_COLD_SPEED = 2500.0  #: rpm nobody should pass with cold oil
MOST_COLD = 90 * PSI  #: at the filter; beyond it seals and cans give way (judgement)
MORE_TORQUE = 1.25  #: times the torque before the repair
#: what leaks from its usual width on, and what leaks whatever its width
LEAKS_IF_WIDE = (
    bearings.MAIN_CLEARANCE,
    bearings.ROD_CLEARANCE,
    topend.CAM_BEARING_CLEARANCE,
    pump.PUMP_DISPLACEMENT,
    pump.PUMP_END_CLEARANCE,
    pump.PUMP_SIDE_CLEARANCE,
)
LEAKS = (
    relief.RELIEF_SEAT_GAP,
    delivery.OPEN_HOLE,
    topend.OPEN_JET,
    topend.LIFTER_CLEARANCE,
)
#: changes that raise the pressure, in the order they are named
BRINGS = ("pump_displacement", "relief_setting", "relief_shim", "oil", "viscosity_at_100c")


@dataclass(frozen=True, slots=True)
class RepairWarning:
    """One warning: its kind, and the sentence."""

    kind: str
    says: str


def repair_warnings(forecast: Forecast) -> tuple[RepairWarning, ...]:
    """Return every warning about a repair, gravest first."""
    return tuple(
        m
        for look in (_starved, _symptom, _cavitation, _filter, _drive, _wrong_fits, _fuel)
        for m in look(forecast)
    )


def _pressure(forecast: Forecast, si: float) -> str:
    """A pressure in the unit of the job, to two figures."""
    return units_of(forecast.case).show(si, PRESSURE, 2)


def _starved(forecast: Forecast) -> Iterator[RepairWarning]:
    share = float(np.mean(np.asarray(forecast.after.hot.starved)[:, 0]))
    if share > FEW:
        yield RepairWarning(
            "starved",
            f"In {100 * share:.0f} % of plausible engines the bearings still get no oil at hot "
            "idle: do not run it like this.",
        )


def _symptom(forecast: Forecast) -> Iterator[RepairWarning]:
    """More pump, spring or oil while a leak stays."""
    names, set_to = forecast.changed, {s.id for s in forecast.set_to}
    brings = [w for n in BRINGS if n in set_to and (w := _raised(forecast, n))]
    if not brings:
        return
    stays = [
        f"{d.says} {d.found}" for d in forecast.found if d.id not in names and _leaks(forecast, d)
    ]
    closes = any(closed_by(p.fix, forecast.state) for p in forecast.plans if p.fix)
    if forecast.unlisted and forecast.unlisted.mean > 2 * PSI and not closes:
        lost = _pressure(forecast, forecast.unlisted.mean)
        stays.append(f"a leak not found yet ({lost} at hot idle)")
    if stays:
        yield RepairWarning(
            "symptom",
            f"This treats a symptom with {' and '.join(brings)}. What stays: "
            f"{'; '.join(stays)}. Pressure is not oil film: put that right first.",
        )


def _raised(forecast: Forecast, name: str) -> str:
    """Return how this raises pressure, in words; empty if it does not."""
    before, after = forecast.before.engine, forecast.after.engine
    match name:
        case "pump_displacement":
            more = float(np.mean(after.pump_displacement / np.asarray(before.pump_displacement)))
            return f"a pump {100 * (more - 1):.0f} % bigger" if more > 1.02 else ""
        case "relief_setting" | "relief_shim":
            more = float(np.mean(after.relief_setting - np.asarray(before.relief_setting)))
            return f"{_pressure(forecast, more)} more on the relief valve" if more > PSI else ""
    sound = np.mean(np.asarray(forecast.sound.oil.kv100))
    more = float(np.mean(np.asarray(after.oil.kv100)) / sound)
    return "thicker oil" if more > 1.05 else ""


def _leaks(forecast: Forecast, found: Deviation) -> bool:
    """Return whether what was found leaks oil and still does after the repair."""
    if found.parameter is None:
        return False
    if found.parameter.quantity in LEAKS_IF_WIDE:
        return found.parameter.id != found.id or _width(forecast, found.parameter) > WIDE
    return found.parameter.quantity in LEAKS


def _width(forecast: Forecast, parameter: CircuitParameter) -> float:
    """Return the clearance after the repair over the usual one."""
    usual = float(np.median(np.asarray(parameter.read(forecast.sound))))
    return float(np.median(np.asarray(parameter.read(forecast.after.engine)))) / usual


def _cavitation(forecast: Forecast) -> Iterator[RepairWarning]:
    for cold, name in ((False, "hot"), (True, "cold")):
        before, after = (
            np.mean(np.asarray(s.cold.fill_share if cold else s.hot.fill_share) < 0.98, axis=0)
            for s in (forecast.before, forecast.after)
        )
        worse = (after > FEW) & (after > before + FEW)
        if cold:
            worse &= forecast.speeds <= MOST_COLD_SPEED
        if worse.any():
            at = forecast.speeds[int(np.argmax(worse))]
            yield RepairWarning(
                "cavitation",
                f"From {at:.0f} rpm {name} the pump does not fill in "
                f"{100 * after[np.argmax(worse)]:.0f} % of plausible engines (before: "
                f"{100 * before[np.argmax(worse)]:.0f} %): it cavitates; "
                "pickup, screen and tube must pass more first.",
            )


def _cold(forecast: Forecast) -> tuple[np.ndarray, int]:
    """Return the indices of speeds allowed cold, and the last of them."""
    allowed = np.flatnonzero(forecast.speeds <= MOST_COLD_SPEED)
    return allowed, int(allowed[-1])


def _filter(forecast: Forecast) -> Iterator[RepairWarning]:
    _, at = _cold(forecast)
    before, after = (
        np.asarray(s.cold.pump_pressure)[:, at] for s in (forecast.before, forecast.after)
    )
    shares = [float(np.mean(p > MOST_COLD)) for p in (before, after)]
    if shares[1] > shares[0] + FEW:
        high, most = float(np.percentile(after, HIGH)), _pressure(forecast, MOST_COLD)
        yield RepairWarning(
            "filter",
            f"Cold at {forecast.speeds[at]:.0f} rpm filter and pump see up to "
            f"{_pressure(forecast, high)}, more than {most} in {100 * shares[1]:.0f} % of plausible engines "
            f"(before: {100 * shares[0]:.0f} %): that bulges cans and blows seals (judgement).",
        )


def _drive(forecast: Forecast) -> Iterator[RepairWarning]:
    _, at = _cold(forecast)
    before, after = (
        float(np.mean(s.torque(cold=True)[:, at])) for s in (forecast.before, forecast.after)
    )
    if after > MORE_TORQUE * before:
        units = units_of(forecast.case)

        def torque(si: float) -> str:
            return units.show(si, TORQUE, 2)

        by = forecast.case.known_features.get(PUMP_ON_DISTRIBUTOR_SHAFT) is State.PRESENT
        part = "distributor gear and drive shaft carry" if by else "the pump's drive carries"
        yield RepairWarning(
            "drive",
            f"Cold, {part} {torque(after)} instead of {torque(before)}: look at gear, shaft and pin "
            "before and after.",
        )


def _wrong_fits(forecast: Forecast) -> Iterator[RepairWarning]:
    """A bearing set too tight, or a pickup too near or too far."""
    for s in forecast.set_to:
        if s.parameter is None:
            continue
        value = float(np.median(np.asarray(s.parameter.read(forecast.after.engine))))
        least_clearance = _limit(forecast, LEAST_BEARING_CLEARANCE)
        if s.parameter.quantity in LEAST_BEARING_CLEARANCE.quantities and value < least_clearance:
            least = f"{least_clearance / INCH:.4f} in"
            yield RepairWarning("tight", f"{s.parameter.says} below {least} runs dry and hot.")
        if s.parameter.quantity is suction.PICKUP_GAP:
            low, high = _limit(forecast, LEAST_PICKUP_GAP), _limit(forecast, MOST_PICKUP_GAP)
            if value < low:
                yield RepairWarning("pickup", f"Less than {low * 1e3:.1f} mm throttles the pickup.")
            elif value > high:
                yield RepairWarning(
                    "pickup", f"More than {high * 1e3:.1f} mm lets the pickup draw air in a bend."
                )


def _limit(forecast: Forecast, limit: Limit) -> float:
    return forecast.case.limit(limit)


def _fuel(forecast: Forecast) -> Iterator[RepairWarning]:
    fresh = any(
        s.parameter is None or s.parameter.quantity is oil.VISCOSITY_AT_100C
        for s in forecast.set_to
    ) or any(p.fix is OIL for p in forecast.plans)
    if fresh and any(d.id == oil.FUEL_SHARE.id for d in forecast.found):
        yield RepairWarning(
            "symptom", "Fuel thins fresh oil again until you find where it gets in."
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class ReliefCost:
    """Gain and cost of a higher relief setting; means over plausible engines, SI."""

    setting: float  #: more on the valve [Pa]
    idle: float  #: more at hot idle [Pa]
    top_speed: float  #: [rpm]
    top: float  #: more there, hot [Pa]
    rod_feed: float  #: more through the rods there, as a share of before
    watts: float  #: more to turn the pump there

    @property
    def horsepower(self) -> float:
        """More power, in horsepower."""
        return self.watts / HORSEPOWER


def relief_cost(forecast: Forecast) -> ReliefCost | None:
    """Compare a repair that raises the relief setting with the same repair without that."""
    raised = forecast.after.engine
    setting = forecast.before.engine.relief_setting
    more = float(np.mean(raised.relief_setting - np.asarray(setting)))
    if more < 0.5 * PSI:
        return None
    without = predict(
        replace(raised, relief_setting=setting), forecast.speeds, forecast.hot_temperature
    )
    before, after = without.hot, forecast.after.hot
    gain = np.mean(np.asarray(after.gallery_pressure) - before.gallery_pressure, axis=0)
    fed, fed_after = (float(np.mean(np.asarray(s.flows.rods)[:, -1])) for s in (before, after))
    power, power_after = (
        float(np.mean(s.power(forecast.speeds)[:, -1])) for s in (without, forecast.after)
    )
    return ReliefCost(
        setting=more,
        idle=float(gain[0]),
        top_speed=float(forecast.speeds[-1]),
        top=float(gain[-1]),
        rod_feed=fed_after / max(fed, 1e-12) - 1,
        watts=power_after - power,
    )
