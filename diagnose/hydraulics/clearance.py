"""Clearance on the diameter and on the radius, as two types.

The workshop measures on the diameter, every film formula takes the radius; leakage goes as the
cube, so a mix-up is a factor 8. A film formula takes a ``RadialClearance``; a plain float or a
``Diametral`` in its place is a type error, and a ``Diametral`` is refused at run time too.
"""

from __future__ import annotations

from typing import TypeAlias

from diagnose.hydraulics.ranges import FloatArray, Floats


class Radial(float):
    """Clearance on the radius, bore radius less shaft radius [m]; what film formulas take."""

    __slots__ = ()

    @property
    def diametral(self) -> Diametral:
        """The same gap as the workshop states it [m]."""
        return Diametral(2 * self)


class Diametral(float):
    """Clearance on the diameter [m]; what a gauge strip and a workshop manual state.

    >>> Diametral(0.0025 * 0.0254).radial
    3.175e-05
    >>> (Diametral(63.5e-6) / Diametral(63.5e-6).radial) ** 3  # the price of mixing them up
    8.0
    """

    __slots__ = ()

    @property
    def radial(self) -> Radial:
        """The same gap as a film formula takes it [m]."""
        return Radial(self / 2)


RadialClearance: TypeAlias = Radial | FloatArray


def radial_of(diametral: Floats) -> RadialClearance:
    """Half the clearance on the diameter [m]: a ``Radial`` for a number, an array for an array.

    >>> radial_of(63.5e-6)
    3.175e-05

    Raises TypeError for what is radial already.
    """
    if isinstance(diametral, Radial):
        raise TypeError("this clearance is radial already; halving it again is a factor 8 in flow")
    if isinstance(diametral, float | int):
        return Diametral(diametral).radial
    return diametral / 2


def film(radial_clearance: RadialClearance) -> Floats:
    """The clearance as a bare number or array [m], for the inside of a film formula.

    Raises TypeError for a ``Diametral``.
    """
    if isinstance(radial_clearance, Diametral):
        raise TypeError("a film formula takes the radial clearance: pass clearance.radial")
    return radial_clearance
