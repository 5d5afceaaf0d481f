"""Where round work settles in a three-jaw chuck with packing under its jaws, for `tests/packing_contact.rs`.

    pip install -r tests/outside/requirements.txt
    python3 tests/outside/packing_contact.py > tests/outside/packing_contact.csv

Nothing is taken over from the program: packing goes in, the place of the work's centre comes out. The scroll closes as far as
it can. Flat faces: the least opening of three straight faces that holds a disc, a linear programme (`scipy.optimize.linprog`).
Line contacts: the three tips lie on the work's circle, three equations for the centre and the opening, solved by
`scipy.optimize.root` with `hybr` and started from the flat case; the tips must enclose the centre. The seed is fixed.

Columns: contact, radius, packing under jaws 1, 2, 3, place of the centre x, y (x towards jaw 1), all in mm.
"""

import math
import random

import numpy
import scipy
from scipy.optimize import linprog, root

random.seed(20_263)
JAWS = [(math.cos(math.radians(a)), math.sin(math.radians(a))) for a in (0, 120, 240)]


def flat(radius, packing):
    # Each face stays clear of the disc: n.m + r <= opening - t.
    above = [[nx, ny, -1.0] for nx, ny in JAWS]
    limits = [-t - radius for t in packing]
    free = [(None, None)] * 3
    found = linprog([0, 0, 1], A_ub=above, b_ub=limits, bounds=free, method="highs")
    assert found.success
    return found.x


def line(radius, packing):
    def off(unknown):
        x, y, opening = unknown
        tips = [((opening - t) * nx, (opening - t) * ny) for t, (nx, ny) in zip(packing, JAWS)]
        return [((px - x) ** 2 + (py - y) ** 2) / radius**2 - 1 for px, py in tips]

    found = root(off, flat(radius, packing), method="hybr", options={"xtol": 1e-15})
    assert max(map(abs, off(found.x))) < 1e-13, found
    x, y, opening = found.x
    angles = [
        math.atan2((opening - t) * ny - y, (opening - t) * nx - x)
        for t, (nx, ny) in zip(packing, JAWS)
    ]
    gaps = numpy.diff(sorted(a % (2 * math.pi) for a in angles))
    assert max(*gaps, 2 * math.pi - sum(gaps)) < math.pi, "the tips do not enclose the work"
    return found.x


def main():
    print(f"# scipy {scipy.__version__}; see packing_contact.py")
    cases = [(10, (0.05, 0, 0)), (10, (0.3, 0, 0)), (15, (3, 0, 0)), (15, (7.5, 0, 0))]
    for _ in range(60):
        radius = round(random.uniform(3, 40), 1)
        most = radius * random.choice([0.001, 0.01, 0.1, 0.4])
        packing = [round(random.uniform(0, most), 5) for _ in range(3)]
        packing[random.randrange(3)] = 0.0
        cases.append((radius, tuple(packing)))
    for radius, packing in cases:
        for name, solve in (("flat", flat), ("line", line)):
            x, y, _ = solve(radius, packing)
            numbers = [radius, *packing, f"{x:.12f}", f"{y:.12f}"]
            print(",".join([name, *map(str, numbers)]))


main()
