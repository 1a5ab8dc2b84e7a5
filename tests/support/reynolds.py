"""Reynolds' equation for one plain bearing by finite differences: an independent second opinion.

    d/dx(H^3 dP/dx) + (D/L)^2 d/dz(H^3 dP/dz) = dH/dx,   H = 1 + eps cos(x)

x the angle from the widest gap in the sense of rotation, z from the middle (0) to the edge (1),
P in units of 6 mu omega (r/c)^2. P is zero at the edge and where the film begins, on the line
of the widest gap, and never negative (projected cavitation). The inequality is settled by the
active set: solve on the cells that carry, drop those that pull, take back those that want to
push, until nothing changes. The same operator without rotation gives what a hole or groove under
pressure feeds.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from math import pi

import numpy as np
from scipy.sparse import csr_array, diags_array, eye_array, kron
from scipy.sparse.linalg import spsolve


@dataclass(frozen=True)
class Bearing:
    """What the solution says: Sommerfeld number and side flow Qs/(r c N L)."""

    sommerfeld: float
    side_flow: float


def solve(eps: float, ratio: float, around: int = 180, across: int = 24) -> Bearing:
    """A bearing of eccentricity ``eps`` and length over diameter ``ratio``.

    The grid has ``around`` cells over the full turn and ``across`` over half the length.
    """
    x = np.linspace(0.0, 2 * pi, around + 1)[1:-1]  # P = 0 on both ends
    dx, dz = 2 * pi / around, 1.0 / across
    h3 = (1 + eps * np.cos(x)) ** 3
    between = (1 + eps * np.cos(np.linspace(0.0, 2 * pi, 2 * around + 1)[1::2])) ** 3
    along = (
        diags_array(
            [between[1:-1], -(between[:-1] + between[1:]), between[1:-1]], offsets=[-1, 0, 1]
        )
        / dx**2
    )
    # z = 0, dz, .. 1 - dz; mirrored at the middle, zero at the edge
    over = (
        diags_array(
            [np.ones(across - 1), -2 * np.ones(across), np.ones(across - 1)], offsets=[-1, 0, 1]
        ).tolil()
        / dz**2
    )
    over[0, 1] = 2 / dz**2
    operator = csr_array(
        kron(along, eye_array(across)) + kron(diags_array(h3), over.tocsr()) / ratio**2
    )
    source = np.repeat(-eps * np.sin(x), across)
    p = _never_negative(operator, source).reshape(len(x), across)
    return Bearing(*_read(p, x, h3, dx, dz, ratio))


def _never_negative(operator: csr_array, source: np.ndarray) -> np.ndarray:
    """P >= 0 with operator P = source where P > 0 and operator P <= source where P = 0."""
    carries = source < 0
    for _ in range(60):
        p = np.zeros_like(source)
        p[carries] = spsolve(operator[carries][:, carries].tocsc(), source[carries])
        strongly_raised_by = np.where(carries, p > 0, operator @ p > source)
        if np.array_equal(strongly_raised_by, carries):
            return p
        carries = strongly_raised_by
    raise RuntimeError("the edge of the film does not settle")


def _read(
    p: np.ndarray, x: np.ndarray, h3: np.ndarray, dx: float, dz: float, ratio: float
) -> tuple[float, float]:
    """Sommerfeld number 1/(6 pi I) and side flow pi (D/L)^2 J of the pressure field."""
    weights = np.full(p.shape[1], dz)
    weights[0] = dz / 2  # trapezium: half a cell at the middle, zero at the edge
    load = abs((p @ weights * np.exp(1j * x)).sum() * dx)
    slope = (4 * p[:, -1] - p[:, -2]) / (2 * dz)  # second order, with P = 0 at the edge
    return 1 / (6 * pi * load), pi / ratio**2 * float((h3 * slope).sum() * dx)


def fed(
    eps: float,
    ratio: float,
    open_at: Callable[[np.ndarray, np.ndarray], np.ndarray],
    around: int = 240,
    across: int = 48,
) -> float:
    """Flow Q mu/(p c^3) a bearing at rest takes from whatever is open to pressure p.

    ``open_at(x, z)`` says which points are: x the angle from the widest gap, -pi to pi, z from
    edge to edge, -1 to 1. Cells: ``around`` the turn and ``across`` the whole length.
    """
    x = -pi + 2 * pi * np.arange(around) / around
    z = np.linspace(-1.0, 1.0, across + 1)[1:-1]
    dx, dz = 2 * pi / around, 2 / across
    h3, between = (1 + eps * np.cos(x)) ** 3, (1 + eps * np.cos(x + dx / 2)) ** 3
    along = diags_array(-(between + np.roll(between, 1))).tolil()
    for i in range(around):
        along[i, (i + 1) % around] = along[(i + 1) % around, i] = between[i]
    ones = np.ones(across - 2)
    over = diags_array([ones, np.full(across - 1, -2.0), ones], offsets=[-1, 0, 1])
    operator = csr_array(
        kron(along.tocsr() / dx**2, eye_array(across - 1))
        + kron(diags_array(h3), over / dz**2) / ratio**2
    )
    pushed = open_at(*np.meshgrid(x, z, indexing="ij")).ravel()
    p = pushed.astype(float)
    inner = operator[~pushed]
    p[~pushed] = spsolve(inner[:, ~pushed].tocsc(), -(inner @ p))
    grid = p.reshape(around, across - 1)
    slope = (4 * (grid[:, 0] + grid[:, -1]) - grid[:, 1] - grid[:, -2]) / (2 * dz)
    return float((h3 * slope).sum() * dx) / (12 * ratio)
