"""Random parts, and their volumes and centres of gravity by numerical integration, for `tests/solids.rs`.

    python3 tests/data/solids.py > tests/data/solids.jsonl

The geometry is written down anew from what the fields of a job mean; nothing is taken over from the program. The area
of each cross-section is integrated over strips, and these areas over the axis, with `scipy.integrate.quad`. The seed is
fixed. Numbers of standard tapers (inch tables), threads (ISO 724) and centre drills (ISO 866) are typed in here again.
"""

import json
import math
import random

import numpy
from scipy.integrate import quad

random.seed(20_261)
NODES, WEIGHTS = numpy.polynomial.legendre.leggauss(20)

# Taper in inches per foot, large and small diameter and length in inches.
TAPERS = {
    "morse-2": (0.59941, 0.700, 0.572, 2.5625),
    "morse-3": (0.60235, 0.938, 0.778, 3.1875),
    "jarno-7": (0.600, 0.875, 0.700, 3.5),
    "brown-sharpe-8": (0.50100, 0.89873, 0.750, 3.5625),
}
# Major diameter, and minor diameter of the nut.
THREADS = {"M4": (4.0, 3.242), "M6": (6.0, 4.917), "M8": (8.0, 6.647), "M10x1": (10.0, 8.917)}
OUTSIDE_THREADS = {"M16": 16.0, "M20x1.5": 20.0, "M24": 24.0, "M30x2": 30.0}
# Pilot diameter, mouth, least and greatest length of the pilot.
DRILLS = {"A2": (2.0, 4.25, 2.5, 3.3), "A2.5": (2.5, 5.3, 3.1, 4.1), "A3.15": (3.15, 6.7, 3.9, 4.9)}


def mm(value):
    return f"{value:.3f}".rstrip("0").rstrip(".") + " mm"


def pick(low, high, digits=1):
    return round(random.uniform(low, high), digits)


class Line:
    """A straight piece of an outline: radius from z to z."""

    def __init__(self, z0, z1, r0, r1):
        self.z0, self.z1, self.r0, self.r1 = z0, z1, r0, r1

    def at(self, z):
        return self.r0 + (self.r1 - self.r0) * (z - self.z0) / (self.z1 - self.z0)


def largest(lines, z):
    """The widest of all pieces that stand at z, inside them; 0 where there is none."""
    return max((line.at(z) for line in lines if line.z0 < z < line.z1), default=0.0)


# --- the part ---


def section(wide):
    """JSON of a section, and its pieces (length, radius at the shoulder's side, radius at the free side)."""
    kind = random.choice(["cylinder", "taper", "standard-taper", "ratio-taper", "angle-taper", "groove", "thread", "relief"])
    long = pick(8, 30)
    if kind == "taper":
        near, far = pick(wide - 4, wide), pick(wide - 6, wide)
        return {"kind": kind, "shoulder_diameter": mm(near), "end_diameter": mm(far), "length": mm(long)}, long, near, far
    if kind == "standard-taper":
        code = random.choice(list(TAPERS))
        per_foot, gauge, _, table = TAPERS[code]
        past = pick(-2, 6)
        near = gauge * 25.4 + past * per_foot / 12
        form = {"kind": kind, "taper": code, "past_gauge": mm(past)}
        if random.random() < 0.5:
            form["length"] = mm(long)
        else:
            long = table * 25.4 + past
        return form, long, near, near - long * per_foot / 12
    if kind == "ratio-taper":
        near, ratio = pick(wide - 4, wide), random.choice([8, 10, 16, 20, -25])
        return {"kind": kind, "shoulder_diameter": mm(near), "ratio": f"{ratio} :1",
                "length": mm(long)}, long, near, near - long / ratio
    if kind == "angle-taper":
        near, angle = pick(wide - 4, wide), random.choice([3, 5.5, 8, -4])
        return ({"kind": kind, "shoulder_diameter": mm(near), "angle": f"{angle} deg", "length": mm(long)},
                long, near, near - 2 * long * math.tan(math.radians(angle) / 2))
    if kind == "thread":
        code = random.choice([code for code, major in OUTSIDE_THREADS.items() if major <= wide + 2])
        return {"kind": kind, "thread": code, "length": mm(long)}, long, OUTSIDE_THREADS[code], OUTSIDE_THREADS[code]
    diameter = pick(wide - 3, wide) if kind == "cylinder" else pick(wide - 6, wide - 3)
    long = long if kind == "cylinder" else pick(2, 5)
    return {"kind": kind, "diameter": mm(diameter), "length": mm(long)}, long, diameter, diameter


def hole(end, most_radius, most_depth):
    """JSON of a hole and its pieces (depth from, depth to, radius, radius)."""
    kind = random.choice(["drilled", "stepped", "tapped", "reamed", "centre-hole"])
    radius, depth = pick(1, most_radius), pick(4, most_depth)
    bottom = random.choice(["drill-point", "flat"])
    # The point of a twist drill: 118 degrees included.
    point = lambda r, d: [(d, d + r / math.tan(math.radians(59)), r, 0.0)]
    form = {"kind": kind, "end": end}
    if kind == "drilled":
        form |= {"diameter": mm(2 * radius), "depth": mm(depth), "bottom": bottom}
        pieces = [(0, depth, radius, radius)] + (point(radius, depth) if bottom == "drill-point" else [])
    elif kind == "stepped":
        narrow, step = round(radius * 0.6, 1), round(depth * 0.4, 1)
        form |= {"diameter": mm(2 * narrow), "depth": mm(depth), "step_diameter": mm(2 * radius),
                 "step_depth": mm(step), "bottom": bottom}
        pieces = [(0, depth, narrow, narrow), (0, step, radius, radius)]
        pieces += point(narrow, depth) if bottom == "drill-point" else []
    elif kind == "tapped":
        code = random.choice([code for code, (major, _) in THREADS.items() if major / 2 <= most_radius + 0.5])
        minor = THREADS[code][1] / 2
        form |= {"thread": code, "thread_depth": mm(round(depth * 0.7, 1)), "drill_depth": mm(depth)}
        pieces = [(0, depth, minor, minor)] + point(minor, depth)
    elif kind == "reamed":
        form |= {"diameter": mm(2 * radius), "ream_depth": mm(round(depth * 0.8, 1)), "drill_depth": mm(depth)}
        pieces = [(0, depth, radius, radius)] + point(radius, depth)
    else:
        code = random.choice(list(DRILLS))
        pilot, mouth, short, long = DRILLS[code]
        cone, long = (mouth - pilot) / 2 / math.tan(math.radians(30)), (short + long) / 2
        form |= {"centre_drill": code}
        pieces = [(0, cone, mouth / 2, pilot / 2), (cone, cone + long, pilot / 2, pilot / 2)]
    return form, pieces


def put(pieces, end, start, finish):
    """Pieces of a hole by depth, as lines along z within the part."""
    lines = []
    for d0, d1, r0, r1 in pieces:
        line = Line(finish - d1, finish - d0, r1, r0) if end == "free-end" else Line(start + d0, start + d1, r0, r1)
        low, high = max(line.z0, start), min(line.z1, finish)
        if high > low:
            lines.append(Line(low, high, line.at(low), line.at(high)))
    return lines


class Feature:
    """What is cut away: `breadths(z)` gives where it lies, as boxes (y half, x from, x to)."""

    def __init__(self, form, low, high, boxes):
        self.form, self.low, self.high, self.boxes = form, low, high, boxes


FAR = 1e3


def feature(outline, low, high, whole):
    """A feature between two places, or None where it would be no part of a workshop."""
    kind = random.choice(["flat", "flat", "keyway", "woodruff-keyway", "cross-hole"])
    near = [line for line in outline if line.z1 > low + 1e-9 and line.z0 < high - 1e-9]
    ends = lambda a, b: [line.at(min(max(z, line.z0), line.z1)) for line in outline
                         if line.z1 > a + 1e-6 and line.z0 < b - 1e-6 for z in (a, b)]
    datum = random.choice(["shoulder", "free-end"])
    least = min(line.at(min(max(z, line.z0), line.z1)) for line in near for z in (low, high))

    def place(form, a, b, middle):
        at = (a + b) / 2 if middle else (a if datum == "shoulder" else b)
        form |= {"from": datum, "start": f"{at if datum == 'shoulder' else whole - at:.9f} mm"}

    if kind == "flat":
        low, high = round(low, 3), round(high, 3)
        flats = random.choice(["one", "two"])
        rim = max(ends(low, high))
        over = round((rim + least * random.uniform(0.5, 0.9)) if flats == "one" else 2 * least * random.uniform(0.5, 0.9), 2)
        bottom = over - rim if flats == "one" else over / 2
        form = {"kind": kind, "over": mm(over), "flats": flats, "length": mm(round(high - low, 3))}
        place(form, low, high, False)
        boxes = [(FAR, bottom, FAR)] + ([(FAR, -FAR, -bottom)] if flats == "two" else [])
        return Feature(form, low, high, lambda z: boxes)
    if kind == "keyway":
        low, high = round(low, 3), round(high, 3)
        depth, width = pick(least * 0.2, least * 0.5, 2), pick(2, least, 1)
        form = {"kind": kind, "width": mm(width), "depth": mm(depth), "length": mm(round(high - low, 3))}
        place(form, low, high, False)
        bottom = min(ends(low, high)) - depth
        return Feature(form, low, high, lambda z: [(width / 2, bottom, FAR)])
    middle = (low + high) / 2
    if kind == "woodruff-keyway":
        if len({round(radius, 9) for radius in ends(low, high)}) > 1:
            return None
        disc, depth, width = pick(8, 16), pick(1.5, 3, 2), pick(2, 4)
        half = math.sqrt((disc / 2) ** 2 - (disc / 2 - depth) ** 2)
        if 2 * half > high - low:
            return None
        form = {"kind": kind, "width": mm(width), "depth": mm(depth), "disc": mm(disc)}
        place(form, low, high, True)
        bottom = least - depth
        floor = lambda z: bottom + disc / 2 - math.sqrt(max((disc / 2) ** 2 - (z - middle) ** 2, 0.0))
        return Feature(form, middle - half, middle + half, lambda z: [(width / 2, floor(z), FAR)])
    diameter = pick(2, min(high - low, least), 2)
    form = {"kind": kind, "diameter": mm(diameter)}
    place(form, low, high, True)
    half = diameter / 2
    chord = lambda z: math.sqrt(max(half**2 - (z - middle) ** 2, 0.0))
    return Feature(form, middle - half, middle + half, lambda z: [(chord(z), -FAR, FAR)])


# --- the integration ---


def area(outer, inner, boxes):
    """Of a round with a round hole, less the boxes: strips across, each as long as what is left of it."""
    if outer <= 0 or inner >= outer:
        return 0.0
    if not boxes:
        return math.pi * (outer**2 - inner**2)
    breaks = {0.0, outer, min(inner, outer)}
    for half, low, high in boxes:
        breaks.add(min(half, outer))
        for edge in (abs(low), abs(high)):
            for radius in (outer, inner):
                if edge < radius:
                    breaks.add(math.sqrt(radius**2 - edge**2))
    breaks = sorted(breaks)
    total = 0.0
    for y0, y1 in zip(breaks, breaks[1:]):
        # Thicker strips in the middle of a panel: the chords begin with a root at both of its ends.
        turn = (NODES + 1) / 2 * math.pi
        ys = y0 + (y1 - y0) * (1 - numpy.cos(turn)) / 2
        weights = WEIGHTS / 2 * math.pi * (y1 - y0) * numpy.sin(turn) / 2
        rim, hole = numpy.sqrt(numpy.maximum(outer**2 - ys**2, 0)), numpy.sqrt(numpy.maximum(inner**2 - ys**2, 0))
        left = 2 * (rim - hole)
        for half, low, high in boxes:
            within = ys < half
            for a, b in ((-rim, -hole), (hole, rim)):
                cut = numpy.maximum(numpy.minimum(b, high) - numpy.maximum(a, low), 0)
                left = left - numpy.where(within, cut, 0)
        total += float(numpy.dot(weights, left))
    return 2 * total


def crossings(lines):
    """Where two straight outlines cross."""
    found = []
    for i, one in enumerate(lines):
        for other in lines[:i]:
            low, high = max(one.z0, other.z0), min(one.z1, other.z1)
            if high > low:
                a, b = one.at(low) - other.at(low), one.at(high) - other.at(high)
                if a * b < 0:
                    found.append(low + (high - low) * a / (a - b))
    return found


def content(outer, holes, features, low, high, more):
    """Volume and first moment about the shoulder between two places."""
    places = {low, high, *more}
    for line in holes:
        places |= {line.z0, line.z1}
    places |= set(crossings(holes))
    for it in features:
        span = it.high - it.low
        # A round hole begins steeply at both ends.
        places |= {it.low + span * share for share in (0, 0.001, 0.01, 0.1, 0.5, 0.9, 0.99, 0.999, 1)}
    places = sorted(z for z in places if low <= z <= high)

    def boxes(z):
        return [box for it in features if it.low < z < it.high for box in it.boxes(z)]

    volume = moment = 0.0
    for a, b in zip(places, places[1:]):
        if b - a < 1e-9:
            continue
        at = lambda z: area(outer(z), min(largest(holes, z), outer(z)), boxes(z))
        cut = any(it.low < (a + b) / 2 < it.high for it in features)
        limit, near = (60, 1e-9) if cut else (200, 1e-13)
        volume += quad(at, a, b, epsabs=near, epsrel=1e-11, limit=limit)[0]
        moment += quad(lambda z: z * at(z), a, b, epsabs=near, epsrel=1e-11, limit=limit)[0]
    return volume, moment


def case(with_features):
    wide = pick(20, 34)
    forms, outline, z = [], [], 0.0
    for _ in range(random.randint(1, 5)):
        form, long, near, far = section(wide)
        if min(near, far) < 10:
            continue
        forms.append(form)
        outline.append(Line(z, z + long, near / 2, far / 2))
        z += long
    whole = z
    if whole < 25:
        return None
    heads = [(pick(wide, wide + 20), pick(5, 40))] + [(pick(12, 50), pick(3, 15)) for _ in range(random.randint(0, 3))]
    head, start = [], 0.0
    for diameter, long in heads:
        head.append(Line(start - long, start, diameter / 2, diameter / 2))
        start -= long
    body = head + outline
    thinnest = min(min(line.r0, line.r1) for line in body)
    bores, holes = [], []
    for end in random.choices(["free-end", "head-end"], k=random.randint(0, 3)):
        form, pieces = hole(end, thinnest * 0.55, 30)
        if random.random() < 0.2 and not with_features and not bores:
            form["off_centre"] = mm(0.2)
        bores.append(form)
        holes += put(pieces, end, start, whole)
    if random.random() < 0.2:
        radius = pick(1, thinnest * 0.4)
        bores.append({"kind": "through", "diameter": mm(2 * radius)})
        holes.append(Line(start, whole, radius, radius))
    features, used = [], 0.0
    if with_features:
        tang = random.random() < 0.3
        room = whole
        if tang:
            long, half = pick(6, min(14, whole / 2)), round(thinnest * random.uniform(0.3, 0.7), 2)
            form = {"kind": "tang", "thickness": mm(2 * half), "length": mm(long)}
            slot = None
            if random.random() < 0.6:
                slot = (pick(2, half * 1.5 + 1), pick(2, long))
                form |= {"slot_width": mm(slot[0]), "slot_depth": mm(slot[1])}
            boxes = [(FAR, half, FAR), (FAR, -FAR, -half)]
            features.append(Feature(form, whole - long, whole, lambda z: boxes))
            if slot:
                # The slot runs across between the two flats.
                features.append(Feature(None, whole - slot[1], whole, lambda z: [(slot[0] / 2, -half, half)]))
            room = whole - long
        while used + 6 < room and len(features) < 6:
            low = used + random.uniform(0.5, 6)
            high = min(low + random.uniform(5, 18), room)
            if high - low < 4:
                break
            made = feature(outline, low, high, whole)
            if made:
                features.append(made)
            used = high
    listed = [it.form for it in features if it.form]
    if with_features and not listed:
        return None
    # The finished shank.
    length = pick(whole * 0.4, whole * 0.8)
    diameter = pick(thinnest * 1.2, thinnest * 2.2)
    fillet, chamfer = pick(0.2, 1.5), pick(0.2, 1.5)
    kerf, facing = pick(0.5, 2), pick(0, 1)
    if whole - length - kerf - facing < 0.5:
        return None
    aim = (diameter - 0.01) / 2

    def wanted(z):
        if z < fillet:
            return aim + fillet - math.sqrt(max(fillet**2 - (fillet - z) ** 2, 0.0))
        return aim - max(z - (length - chamfer), 0.0)

    received = lambda z: largest(body, z)
    finished = lambda z: largest(head, z) if z < 0 else min(wanted(z), largest(outline, z))
    ends = {place for line in body for place in (line.z0, line.z1)}
    # Where the finished outline leaves that of the part: found by halving.
    steps = numpy.linspace(1e-7, length - 1e-7, 4001)
    more = set(ends) | {fillet, length - chamfer}
    gap = lambda z: wanted(z) - largest(outline, z)
    for a, b in zip(steps, steps[1:]):
        if gap(a) * gap(b) < 0:
            for _ in range(60):
                middle = (a + b) / 2
                a, b = (middle, b) if gap(a) * gap(middle) > 0 else (a, middle)
            more.add(a)
    before = content(received, holes, features, start, whole, ends)
    after = content(finished, holes, features, start, length, more)
    offcut = content(received, holes, features, length + facing + kerf, whole, ends)[0]
    job = {
        "part": {
            "head_diameter": mm(heads[0][0]), "head_length": mm(heads[0][1]),
            "head_beyond": [{"diameter": mm(d), "length": mm(l)} for d, l in heads[1:]],
            "sections": forms, "features": listed, "bores": bores,
        },
        "wanted": {
            "diameter": mm(diameter), "tolerance": {"upper": "0 mm", "lower": "-0.02 mm"}, "length": mm(length),
            "shoulder_radius": mm(fillet), "end_chamfer": mm(chamfer), "countersink": None,
        },
        "shop": {"kerf": mm(kerf), "facing_stock": mm(facing)},
    }
    return {
        "job": job, "before": before[0], "after": after[0], "offcut": offcut,
        "balance_before": before[1] / before[0], "balance_after": after[1] / after[0],
    }


made = 0
while made < 200:
    found = case(made >= 100)
    if found:
        print(json.dumps(found, separators=(",", ":")), flush=True)
        made += 1
