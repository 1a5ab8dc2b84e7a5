"""What an engine's layout changes in the tree of access."""

from collections.abc import Callable
from dataclasses import replace

from knowledge.access.openings import OPENINGS, Opening
from knowledge.engines import features, features_build
from knowledge.model import Finding
from knowledge.work import Access, Caution

_PUMP_PLACES = (
    features.PUMP_ON_DISTRIBUTOR_SHAFT,
    features.PUMP_ON_SKEW_GEAR,
    features.PUMP_ON_CRANK_NOSE,
    features.PUMP_ON_CAM_NOSE,
    features.PUMP_OUTSIDE,
    features.PUMP_ON_CHAIN,
)


def openings_for(has: Callable[[Finding], bool]) -> dict[Access, Opening]:
    """Return the tree for an engine whose features ``has`` answers; typical where none is known."""
    tree = dict(OPENINGS)
    _set_pump(tree, has)
    _set_drive(tree, has)
    _set_sump(tree, has)
    known = any(has(place) for place in _PUMP_PLACES)
    if known:
        _set_known(tree, has)
    if known or has(features.OVERHEAD_CAM) or has(features.DIESEL):
        _set_valley(tree, has)
    if has(features_build.SPLIT_CASE):
        _set_split_case(tree)
    return tree


def _set_pump(tree: dict[Access, Opening], has: Callable[[Finding], bool]) -> None:
    """Where the pump sits decides what comes off before it."""
    if has(features.PUMP_OUTSIDE) or has(features.PUMP_ON_CAM_NOSE):
        _alter(tree, Access.PUMP_OFF, (Access.DRAINED,), 30, 20)
        _alter(tree, Access.PUMP_COVER_OFF, (Access.DRAINED,), 20, 10)
    elif has(features.PUMP_ON_CRANK_NOSE):
        _alter(tree, Access.PUMP_OFF, (Access.FRONT_COVER_OFF,))
        _alter(tree, Access.PUMP_COVER_OFF, (Access.FRONT_COVER_OFF,))
    elif has(features.PRESSED_PICKUP):
        _alter(tree, Access.PUMP_OFF, (Access.SUMP_OFF, Access.PICKUP_OFF))
    if has(features.PUMP_ON_DISTRIBUTOR_SHAFT):
        tree[Access.PUMP_OFF] = replace(
            tree[Access.PUMP_OFF],
            keep="if its shaft is held from above, mark and lift the distributor first; "
            + tree[Access.PUMP_OFF].keep,
        )


def _set_drive(tree: dict[Access, Opening], has: Callable[[Finding], bool]) -> None:
    """With the cam overhead a distributor seldom drives the pump: an auxiliary shaft may."""
    from_above = has(features.PUMP_ON_DISTRIBUTOR_SHAFT) or has(features.PUMP_ON_SKEW_GEAR)
    if has(features.OVERHEAD_CAM) and not from_above:
        _alter(tree, Access.DISTRIBUTOR_OUT, (Access.OUTSIDE,), 30, 20)
        tree[Access.DISTRIBUTOR_OUT] = replace(
            tree[Access.DISTRIBUTOR_OUT],
            says="if an auxiliary shaft drives the pump: its drive gear out (or the distributor there)",
        )


def _set_sump(tree: dict[Access, Opening], has: Callable[[Finding], bool]) -> None:
    """A tank, a hull or a stressed sump changes the way to pickup and bearings."""
    if has(features.DRY_SUMP):
        _alter(tree, Access.SUMP_OFF, (Access.DRAINED,), 90, 30)
        _alter(tree, Access.PICKUP_OFF, (Access.DRAINED,), 20, 15)
        tree[Access.PICKUP_OFF] = replace(
            tree[Access.PICKUP_OFF],
            says="open the tank, take its strainer and feed line off",
            destroys="how the hose lay",
            ready=("tank gasket and union seals", "clean plugs for the hose ends", "labelled bags"),
            tools=("spanners for the unions", "paint pen"),
        )
    elif has(features.PUMP_OUTSIDE):
        _alter(tree, Access.PICKUP_OFF, (Access.DRAINED,), 25, 15)
        tree[Access.PICKUP_OFF] = replace(
            tree[Access.PICKUP_OFF],
            says="take the strainer out by its own cover; if it has none, the sump first",
            destroys="how debris lay on the strainer",
            ready=("strainer cover gasket", "suction ring or gasket", "labelled bags"),
            tools=("torque wrench", "camera"),
        )
    if has(features.STRESSED_SUMP):
        _set_trapped(
            tree,
            (
                "support gearbox and front axle separately, hold the engine on a hoist, and part the "
                "sump from what it carries"
            ),
            240,
            300,
        )
        tree[Access.ENGINE_EASED] = replace(
            tree[Access.ENGINE_EASED],
            cautions=(*tree[Access.ENGINE_EASED].cautions, Caution.TRACTOR),
            ready=("frame bolts, if the manual says single-use", "wood wedges"),
            tools=("rated hoist", "splitting stands for front end and gearbox", "torque wrench"),
        )
    elif has(features.TILTS):
        _set_trapped(
            tree,
            "lift the engine off its bed until the sump clears; if it will not, take it out",
            180,
            240,
        )


def _set_split_case(tree: dict[Access, Opening]) -> None:
    """A crankcase of two halves: a strainer plate below; bearings, pickup and cam once it is split."""
    _alter(tree, Access.SUMP_OFF, (Access.DRAINED,), 20, 15)
    tree[Access.SUMP_OFF] = replace(
        tree[Access.SUMP_OFF],
        says="take the strainer plate and strainer off below the case",
        destroys="how debris lay on the strainer",
    )
    _alter(tree, Access.FRONT_COVER_OFF, (Access.DRAINED,), 90, 30)
    tree[Access.FRONT_COVER_OFF] = replace(
        tree[Access.FRONT_COVER_OFF],
        says="take crank pulley, its tin and fan housing off as needed",
    )
    _alter(tree, Access.ENGINE_EASED, tree[Access.ENGINE_EASED].needs, 120, 0)
    tree[Access.ENGINE_EASED] = replace(
        tree[Access.ENGINE_EASED],
        says="take the engine out, on a trolley jack, fuel line clamped",
    )
    _alter(tree, Access.FLYWHEEL_OFF, (Access.ENGINE_EASED,), 40, 40)
    tree[Access.FLYWHEEL_OFF] = replace(
        tree[Access.FLYWHEEL_OFF], says="take clutch and flywheel off, engine out"
    )
    _alter(tree, Access.CAP_OFF, (Access.FLYWHEEL_OFF, Access.FRONT_COVER_OFF), 360, 300)
    tree[Access.CAP_OFF] = replace(
        tree[Access.CAP_OFF],
        says="heads and cylinders off, then split the crankcase",
        destroys="how the shells sat; joint and head seals",
    )
    _alter(tree, Access.TRAY_OFF, (Access.SUMP_OFF,), 0, 0)
    _alter(tree, Access.PICKUP_OFF, (Access.CAP_OFF,), 10, 10)
    _alter(tree, Access.CRANK_OUT, (Access.CAP_OFF,), 20, 20)
    _alter(tree, Access.CAM_OUT, (Access.CAP_OFF,), 5, 5)
    _alter(tree, Access.VALLEY_OPEN, (Access.CAP_OFF,), 10, 10)
    tree[Access.VALLEY_OPEN] = replace(
        tree[Access.VALLEY_OPEN],
        says="lifters out of the split case, in order",
    )


def _set_trapped(
    tree: dict[Access, Opening], says: str, minutes_to_ease: float, minutes_for_sump: float
) -> None:
    """A sump that cannot come off until the engine is lifted, or held up by itself."""
    _alter(tree, Access.ENGINE_EASED, tree[Access.ENGINE_EASED].needs, minutes_to_ease)
    tree[Access.ENGINE_EASED] = replace(tree[Access.ENGINE_EASED], says=says)
    _alter(tree, Access.SUMP_OFF, (Access.DRAINED, Access.ENGINE_EASED), minutes_for_sump)
    tree[Access.SUMP_OFF] = replace(
        tree[Access.SUMP_OFF], cautions=(*tree[Access.SUMP_OFF].cautions, Caution.HEAVY)
    )


def _set_known(tree: dict[Access, Opening], has: Callable[[Finding], bool]) -> None:
    """With the layout known, a feature that is not named is taken as not there."""
    if has(features.RELIEF_OUTSIDE):
        _alter(tree, Access.PUMP_RELIEF_OUT, (Access.RELIEF_CAP_OFF,), 5, 5)
    else:
        _alter(tree, Access.RELIEF_CAP_OFF, tree[Access.PUMP_COVER_OFF].needs)
    if not has(features.WINDAGE_TRAY):
        _alter(tree, Access.TRAY_OFF, (Access.SUMP_OFF,), 0, 0)
    if has(features.OVERHEAD_CAM):
        _alter(tree, Access.CAM_OUT, (Access.VALVE_COVER_OFF, Access.FRONT_COVER_OFF), 90, 45)


def _set_valley(tree: dict[Access, Opening], has: Callable[[Finding], bool]) -> None:
    """Cylinders in line have a side cover; a vee of which nothing is driven through the valley."""
    if not has(features.VEE_ENGINE):
        _alter(tree, Access.VALLEY_OPEN, (Access.OUTSIDE,), 40, 20)
        tree[Access.VALLEY_OPEN] = replace(
            tree[Access.VALLEY_OPEN],
            says="take the side cover over the lifters off",
            ready=("side cover gasket", "clean rags"),
        )
    elif not has(features.PUMP_ON_DISTRIBUTOR_SHAFT):
        _alter(tree, Access.VALLEY_OPEN, (Access.OUTSIDE,))


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
