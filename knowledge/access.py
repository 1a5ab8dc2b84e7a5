"""The tree of access: what must be open before what, how long it takes, what it spoils.

Imported by ``diagnose.planning`` and tests. Minutes are judgement; nobody publishes them.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from knowledge.engines.features import (
    DRY_SUMP,
    OVERHEAD_CAM,
    PRESSED_PICKUP,
    PUMP_ON_CHAIN,
    PUMP_ON_CRANK_NOSE,
    PUMP_ON_DISTRIBUTOR_SHAFT,
    PUMP_ON_SKEW_GEAR,
    PUMP_OUTSIDE,
    RELIEF_OUTSIDE,
    TILTS,
    VEE_ENGINE,
    WINDAGE_TRAY,
)
from knowledge.sources import GMC, JUDGEMENT, JWJ
from knowledge.vocabulary import Access, Caution, Finding, Source


@dataclass(frozen=True, slots=True)
class Opening:
    """One step of dismantling: what it needs first, its minutes, what it spoils."""

    access: Access
    says: str
    needs: tuple[Access, ...]
    minutes_in_place: float
    minutes_on_stand: float
    source: Source
    destroys: str = ""
    keep: str = ""
    cautions: tuple[Caution, ...] = ()


_TYPICAL = (
    Opening(Access.OUTSIDE, "outside, engine as found", (), 0, 0, JUDGEMENT),
    Opening(
        Access.GAUGE_PORT,
        "open a gauge port: engine stopped and cool, sender out",
        (Access.OUTSIDE,),
        10,
        5,
        JUDGEMENT,
        cautions=(Caution.HOT, Caution.BATTERY),
    ),
    Opening(
        Access.OIL_SAMPLE,
        "draw an oil sample, warm, before any draining or topping up",
        (Access.OUTSIDE,),
        5,
        5,
        JUDGEMENT,
        keep="note level and hours; photograph the stick",
        cautions=(Caution.HOT, Caution.USED_OIL),
    ),
    Opening(
        Access.DRAINED,
        "drain the oil, sample first",
        (Access.OIL_SAMPLE,),
        20,
        15,
        JUDGEMENT,
        destroys="the level reading, the look of the oil on the stick, how debris lay",
        keep="photograph the level; keep the first and the last half litre",
        cautions=(Caution.HOT, Caution.USED_OIL, Caution.WASTE, Caution.LIFTING),
    ),
    Opening(
        Access.FILTER_OFF,
        "take the filter off",
        (Access.OIL_SAMPLE,),
        10,
        5,
        JUDGEMENT,
        destroys="how the filter's seal sat",
        keep="photograph the seal before and after; keep the filter",
        cautions=(Caution.HOT, Caution.USED_OIL, Caution.WASTE),
    ),
    Opening(
        Access.FILTER_CUT,
        "cut the filter open, drained 12 to 24 h if there is time",
        (Access.FILTER_OFF,),
        15,
        15,
        JUDGEMENT,
        destroys="the filter can; no hacksaw, its dust is taken for wear",
        keep="keep the pleats; bag the debris by place",
        cautions=(Caution.SHARP, Caution.USED_OIL, Caution.WASTE),
    ),
    Opening(
        Access.VALVE_COVER_OFF,
        "take a valve cover off",
        (Access.OUTSIDE,),
        20,
        10,
        JUDGEMENT,
        cautions=(Caution.HOT, Caution.ASBESTOS),
    ),
    Opening(
        Access.DISTRIBUTOR_OUT,
        "take the distributor, or the drive gear in its place, out",
        (Access.OUTSIDE,),
        15,
        10,
        JUDGEMENT,
        destroys="the ignition timing",
        keep="mark rotor, housing and engine position first",
        cautions=(Caution.BATTERY,),
    ),
    Opening(
        Access.RELIEF_CAP_OFF,
        "take the relief cap off; drain first where it lies below the oil",
        (Access.OUTSIDE,),
        10,
        10,
        JUDGEMENT,
        destroys="the position of valve and debris: the first removal loses it",
        keep="photograph the valve where it stands; note which way it moved",
        cautions=(Caution.SPRING, Caution.EYES, Caution.HOT),
    ),
    Opening(
        Access.ENGINE_EASED,
        "ease mounts or crossmember, or lift the engine",
        (Access.OUTSIDE,),
        120,
        0,
        JUDGEMENT,
        cautions=(Caution.LIFTING, Caution.HEAVY, Caution.BATTERY),
    ),
    Opening(
        Access.SUMP_OFF,
        "take the sump off",
        (Access.DRAINED,),
        150,
        30,
        JWJ,
        destroys="the lie of debris in the sump, the print of its gasket",
        keep="photograph as it drops; catch and bag the debris before wiping",
        cautions=(Caution.BATTERY, Caution.LIFTING, Caution.ASBESTOS, Caution.WASTE),
    ),
    Opening(
        Access.TRAY_OFF,
        "take windage tray and baffles off",
        (Access.SUMP_OFF,),
        15,
        10,
        JUDGEMENT,
        keep="photograph the rub marks",
        cautions=(Caution.SHARP,),
    ),
    Opening(
        Access.PICKUP_OFF,
        "take the pickup off",
        (Access.SUMP_OFF,),
        10,
        10,
        GMC,
        destroys="the press fit of the tube: one that was pressed in is renewed",
        keep="photograph the screen; bag what lies on it",
    ),
    Opening(
        Access.PUMP_OFF,
        "take the pump off",
        (Access.SUMP_OFF,),
        20,
        15,
        JUDGEMENT,
        destroys="the print of the mount gasket, how the shaft engaged",
        keep="keep and trace the gasket; note how tight each bolt was",
        cautions=(Caution.ASBESTOS,),
    ),
    Opening(
        Access.FRONT_COVER_OFF,
        "take the front cover off, with damper, pulleys and pump as needed",
        (Access.DRAINED,),
        200,
        60,
        JUDGEMENT,
        destroys="the front seal, the tensioner's position",
        keep="mark the timing; photograph the tensioner",
        cautions=(Caution.BATTERY, Caution.SPRING, Caution.HOT),
    ),
    Opening(
        Access.PUMP_COVER_OFF,
        "take the pump's cover off",
        (Access.PUMP_OFF,),
        10,
        10,
        GMC,
        destroys="the film that shows it was primed, the order of the teeth",
        keep="look for the oil film; mark the meshing teeth",
    ),
    Opening(
        Access.PUMP_RELIEF_OUT,
        "take the relief plug or pin out of the pump",
        (Access.PUMP_COVER_OFF,),
        10,
        10,
        JUDGEMENT,
        destroys="the position of valve and debris: the first removal loses it",
        keep="photograph the valve where it stands",
        cautions=(Caution.SPRING, Caution.EYES),
    ),
    Opening(
        Access.CAP_OFF,
        "take a bearing cap off, one at a time, caps numbered",
        (Access.SUMP_OFF, Access.TRAY_OFF),
        10,
        5,
        JUDGEMENT,
        destroys="oil film, debris and bolt tension at that bearing",
        keep="number the cap, note how tight it was, photograph before wiping",
        cautions=(Caution.HAND_TURN,),
    ),
    Opening(
        Access.VALLEY_OPEN,
        "take the intake manifold or valley cover off",
        (Access.DISTRIBUTOR_OUT,),
        100,
        30,
        JUDGEMENT,
        destroys="the gasket's print",
        keep="cover the ports; photograph the valley before wiping",
        cautions=(Caution.BATTERY, Caution.FIRE),
    ),
    Opening(
        Access.PLUGS_OUT,
        "take gallery plugs out, one after the other",
        (Access.FRONT_COVER_OFF,),
        20,
        20,
        JUDGEMENT,
        destroys="sealer and debris behind the plug",
        keep="count them first; photograph each one's depth",
    ),
    Opening(
        Access.FLYWHEEL_OFF,
        "take gearbox and flywheel off, engine out or split",
        (Access.ENGINE_EASED,),
        360,
        40,
        JUDGEMENT,
        keep="mark flywheel to crank",
        cautions=(Caution.HEAVY, Caution.LIFTING, Caution.BATTERY, Caution.ASBESTOS),
    ),
    Opening(
        Access.CRANK_OUT,
        "take the crankshaft out: the last resort",
        (Access.CAP_OFF, Access.FLYWHEEL_OFF, Access.FRONT_COVER_OFF),
        120,
        60,
        JUDGEMENT,
        destroys="every shell's seat",
        keep="tag every shell by place and half",
        cautions=(Caution.HEAVY,),
    ),
    Opening(
        Access.CAM_OUT,
        "take the camshaft out, its bearings seen: the last resort",
        (Access.FRONT_COVER_OFF, Access.VALLEY_OPEN),
        120,
        60,
        JUDGEMENT,
        destroys="the cam's timing; a bearing driven out is spent",
        keep="tag every lifter by its bore; mark how the bearings are clocked",
        cautions=(Caution.HEAVY,),
    ),
)

#: the typical engine: wet sump, pump in it, relief cap reached from outside, vee block
OPENINGS: dict[Access, Opening] = {o.access: o for o in _TYPICAL}

_PUMP_PLACES = (
    PUMP_ON_DISTRIBUTOR_SHAFT,
    PUMP_ON_SKEW_GEAR,
    PUMP_ON_CRANK_NOSE,
    PUMP_OUTSIDE,
    PUMP_ON_CHAIN,
)


def openings_for(has: Callable[[Finding], bool]) -> dict[Access, Opening]:
    """The tree for an engine of which ``has`` tells the features; typical where nothing is told."""
    tree = dict(OPENINGS)
    _set_pump(tree, has)
    _set_sump(tree, has)
    if any(has(place) for place in _PUMP_PLACES):
        _set_known(tree, has)
    return tree


def _set_pump(tree: dict[Access, Opening], has: Callable[[Finding], bool]) -> None:
    """Where the pump sits decides what comes off before it."""
    if has(PUMP_OUTSIDE):
        _alter(tree, Access.PUMP_OFF, (Access.DRAINED,), 30, 20)
        _alter(tree, Access.PUMP_COVER_OFF, (Access.DRAINED,), 20, 10)
    elif has(PUMP_ON_CRANK_NOSE):
        _alter(tree, Access.PUMP_OFF, (Access.FRONT_COVER_OFF,))
        _alter(tree, Access.PUMP_COVER_OFF, (Access.FRONT_COVER_OFF,))
    elif has(PRESSED_PICKUP):
        _alter(tree, Access.PUMP_OFF, (Access.SUMP_OFF, Access.PICKUP_OFF))
    if has(PUMP_ON_DISTRIBUTOR_SHAFT):
        tree[Access.PUMP_OFF] = replace(
            tree[Access.PUMP_OFF],
            keep="where its shaft is held from above, mark and lift the distributor first; "
            + tree[Access.PUMP_OFF].keep,
        )


def _set_sump(tree: dict[Access, Opening], has: Callable[[Finding], bool]) -> None:
    """A tank, a hull or a stressed sump changes the way to pickup and bearings."""
    if has(DRY_SUMP):
        _alter(tree, Access.SUMP_OFF, (Access.DRAINED,), 90, 30)
        _alter(tree, Access.PICKUP_OFF, (Access.DRAINED,), 20, 15)
        tree[Access.PICKUP_OFF] = replace(
            tree[Access.PICKUP_OFF],
            says="open the tank, take its strainer and feed line off",
            destroys="how the hose lay",
        )
    elif has(PUMP_OUTSIDE):
        _alter(tree, Access.PICKUP_OFF, (Access.DRAINED,), 25, 15)
        tree[Access.PICKUP_OFF] = replace(
            tree[Access.PICKUP_OFF],
            says="take the strainer out by its own cover; where it has none, the sump first",
        )
    if has(TILTS):
        _alter(tree, Access.SUMP_OFF, (Access.DRAINED, Access.ENGINE_EASED), 240, 30)


def _set_known(tree: dict[Access, Opening], has: Callable[[Finding], bool]) -> None:
    """With the layout known, a feature that is not named is taken as not there."""
    if has(RELIEF_OUTSIDE):
        _alter(tree, Access.PUMP_RELIEF_OUT, (Access.RELIEF_CAP_OFF,), 5, 5)
    else:
        _alter(tree, Access.RELIEF_CAP_OFF, tree[Access.PUMP_COVER_OFF].needs)
    if not has(WINDAGE_TRAY):
        _alter(tree, Access.TRAY_OFF, (Access.SUMP_OFF,), 0, 0)
    if not has(VEE_ENGINE):
        _alter(tree, Access.VALLEY_OPEN, (Access.OUTSIDE,), 40, 20)
        tree[Access.VALLEY_OPEN] = replace(
            tree[Access.VALLEY_OPEN], says="take the side cover over the lifters off"
        )
    elif not has(PUMP_ON_DISTRIBUTOR_SHAFT):
        _alter(tree, Access.VALLEY_OPEN, (Access.OUTSIDE,))
    if has(OVERHEAD_CAM):
        _alter(tree, Access.CAM_OUT, (Access.VALVE_COVER_OFF, Access.FRONT_COVER_OFF), 90, 45)


def _alter(
    tree: dict[Access, Opening],
    access: Access,
    needs: tuple[Access, ...],
    in_place: float | None = None,
    on_stand: float | None = None,
) -> None:
    """Give one opening other needs and, where stated, other minutes."""
    was = tree[access]
    tree[access] = replace(
        was,
        needs=needs,
        minutes_in_place=was.minutes_in_place if in_place is None else in_place,
        minutes_on_stand=was.minutes_on_stand if on_stand is None else on_stand,
    )
