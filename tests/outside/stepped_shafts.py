"""Deflections and reactions of random stepped shafts, by a general-purpose frame solver, for `tests/stepped_shafts.rs`.

    pip install -r tests/outside/requirements.txt
    python3 tests/outside/stepped_shafts.py > tests/outside/stepped_shafts.csv

Solver: PyNiteFEA, three-dimensional frames by the direct stiffness method, Euler-Bernoulli members. Nothing is taken over from
the program. The seed is fixed. Units: mm, N, N/mm2; springs in N/mm and N mm/rad.

A line that begins with `shaft` gives E, springs at head and tail, tilting spring, then length:outside:hole of each segment from
the chuck. The lines below it are results for a force of 100 N: case, place of the force, deflection there in
micrometres, reactions at head and tail in newtons.
"""

import math
import random
from importlib.metadata import version

from Pynite import FEModel3D

random.seed(20_262)
SHAFTS = 100
FORCE = 100.0
NU = 0.3


def second_moment(outside, hole):
    return math.pi * (outside**4 - hole**4) / 64


def random_shaft():
    segments = []
    for _ in range(random.randint(1, 6)):
        outside = round(random.uniform(10, 36), 1)
        hole = round(random.uniform(0.2, 0.7) * outside, 1) if random.random() < 0.3 else 0.0
        segments.append((round(random.uniform(8, 60), 1), outside, hole))
    return {
        "modulus": random.choice([206_000.0, 210_000.0, 70_000.0]),
        "head": round(random.uniform(15e3, 80e3)),
        "tail": round(random.uniform(6e3, 40e3)),
        "tilt": round(random.uniform(2e7, 5e8)),
        "segments": segments,
    }


def solve(shaft, case, place):
    """Deflection under the load and the reactions at head and tail."""
    edges = [0.0]
    for length, _, _ in shaft["segments"]:
        edges.append(edges[-1] + length)
    end = edges[-1]
    places = sorted({*edges, place})
    model = FEModel3D()
    modulus = shaft["modulus"]
    model.add_material("metal", modulus, modulus / (2 * (1 + NU)), NU, 7.85e-6)
    for index, x in enumerate(places):
        model.add_node(f"N{index}", x, 0, 0)
    for index, (start, stop) in enumerate(zip(places, places[1:])):
        middle = (start + stop) / 2
        segment = next(i for i in range(len(edges) - 1) if edges[i] < middle < edges[i + 1])
        _, outside, hole = shaft["segments"][segment]
        inertia = second_moment(outside, hole)
        area = math.pi * (outside**2 - hole**2) / 4
        model.add_section(f"S{index}", area, inertia, inertia, 2 * inertia)
        model.add_member(f"M{index}", f"N{index}", f"N{index + 1}", "metal", f"S{index}")
    last = f"N{len(places) - 1}"
    springs = case.endswith("springs")
    between = case.startswith("between")
    # DX, DY, DZ, RX, RY, RZ: y is across the axis, in the plane of the force.
    model.def_support("N0", True, not springs, True, True, True, not (springs or between))
    if springs:
        model.def_support_spring("N0", "DY", shaft["head"])
        if not between:
            model.def_support_spring("N0", "RZ", shaft["tilt"])
    if not case.startswith("chuck-only"):
        model.def_support(last, False, not springs, True, False, False, False)
        if springs:
            model.def_support_spring(last, "DY", shaft["tail"])
    loaded = f"N{places.index(place)}"
    model.add_node_load(loaded, "FY", FORCE)
    model.analyze_linear(check_stability=False)
    combo = "Combo 1"

    def reaction(node, spring):
        if springs:
            return spring * model.nodes[node].DY[combo]
        return -model.nodes[node].RxnFY[combo]

    head = reaction("N0", shaft["head"])
    tail = 0.0 if case.startswith("chuck-only") else reaction(last, shaft["tail"])
    deflection = model.nodes[loaded].DY[combo]
    return deflection * 1000, head, tail


CASES = [
    f"{support}{springs}"
    for support in ("chuck-only", "chuck-and-centre", "between-centres")
    for springs in ("", "-springs")
]


def main():
    print(f"# PyNiteFEA {version('PyNiteFEA')}; see stepped_shafts.py")
    for _ in range(SHAFTS):
        shaft = random_shaft()
        end = sum(segment[0] for segment in shaft["segments"])
        numbers = [f"{shaft['modulus']:.0f}", shaft["head"], shaft["tail"], shaft["tilt"]]
        parts = [f"{length}:{outside}:{hole}" for length, outside, hole in shaft["segments"]]
        print(",".join(["shaft", *map(str, numbers), *parts]))
        for case in CASES:
            for share in (random.uniform(0.1, 0.5), random.uniform(0.5, 0.95)):
                place = round(share * end, 2)
                values = ",".join(f"{value:.10g}" for value in solve(shaft, case, place))
                print(f"{case},{place},{values}")


main()
