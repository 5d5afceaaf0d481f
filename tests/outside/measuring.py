"""Budgets of readings, means of readings and lines along the work, for tests/measuring_outside.rs.

Prints three kinds of rows, with the seed fixed:

* `reading`: one reading with its limits; size at 20 °C, standard uncertainty, and what of it is the reading's own, by
  `uncertainties`, which differentiates the formula of the size by itself.
* `mean`: several readings at one place by one or two instruments; each thing that is off in several alike is one
  variable of `uncertainties`, so that covariances come about by themselves. The weights are taken over from the program:
  readings of an instrument by their own variance, instruments by the variance of their means.
* `taper`: diameters along the work; slope and bulge by `scipy.optimize.curve_fit`, whose uncertainties are widened where
  the scatter about the fit is larger.

Lengths in mm, what is off in µm, temperatures in °C, expansions in µm/(m K); an empty temperature of the work is that of
the room.
"""

import math
import random
from importlib.metadata import version

import numpy
import scipy
from scipy.optimize import curve_fit
from uncertainties import ufloat

random.seed(14_253)
ROOT3 = math.sqrt(3)


def limit(most):
    return ufloat(0, most / ROOT3)


def spread(low, typical, high):
    return ufloat(typical, max(high - typical, typical - low) / ROOT3) * 1e-6


class Bench:
    """What is off alike in all readings of a place, or of the work."""

    def __init__(self, work_alpha, room, room_limit, work_limit, form):
        self.work_alpha = spread(*work_alpha)
        self.room = room + limit(room_limit)
        self.unlike = limit(work_limit)
        self.thermometer = limit(work_limit)
        self.form = limit(form) * 1e-3


class Instrument:
    """What is off alike in all readings of an instrument."""

    def __init__(self, error, setting, step, repeat, alpha):
        self.off = (limit(error) + limit(setting)) * 1e-3
        self.step, self.repeat = step * 1e-3, repeat * 1e-3
        self.alpha = spread(*alpha)

    def read(self, shown, bench, work):
        """The size at 20 °C, and its own standard uncertainty."""
        own = ufloat(0, self.step / math.sqrt(12)) + ufloat(0, self.repeat)
        warm = bench.room + bench.unlike if work is None else work + bench.thermometer
        heat = 1 - bench.work_alpha * (warm - 20) + self.alpha * (bench.room - 20)
        size = (shown + self.off + bench.form + own) * heat
        return size, own.std_dev * heat.nominal_value


def any_alpha():
    typical = round(random.uniform(8, 24), 1)
    low, high = typical - random.choice([0, 0.4, 1]), typical + random.choice([0.3, 0.6, 1])
    return [round(low, 1), typical, round(high, 1)]


def any_instrument():
    return [
        round(random.uniform(0.5, 30), 1),
        random.choice([0, 0.3, 1]),
        random.choice([1, 2, 10, 50]),
        round(random.uniform(0.3, 12), 1),
    ]


def any_bench():
    room = random.choice([20, round(random.uniform(5, 35), 1)])
    return any_alpha(), room, random.choice([0, 1, 3]), random.choice([0.5, 2]), random.choice([0, 2, 5])


def any_work():
    return random.choice([None, round(random.uniform(5, 90), 1)])


def show(kind, *numbers):
    print(",".join([kind, *("" if it is None else str(it) for it in numbers)]))


def reading():
    shown = round(random.uniform(2, 400), 3)
    figures, bench, work, alpha = any_instrument(), any_bench(), any_work(), any_alpha()
    size, own = Instrument(*figures, alpha).read(shown, Bench(*bench), work)
    inputs = [shown, *figures, *alpha, *bench[0], *bench[1:], work]
    show("reading", *inputs, f"{size.n:.12f}", f"{size.s * 1e3:.12f}", f"{own * 1e3:.12f}")


def mean():
    bench, alpha = any_bench(), any_alpha()
    figures = [any_instrument() for _ in range(random.choice([1, 2]))]
    instruments = [Instrument(*it, alpha) for it in figures]
    place = Bench(*bench)
    base = random.uniform(5, 100)
    taken = []
    for _ in range(random.randint(2, 6)):
        which = random.randrange(len(figures))
        taken.append((which, round(base + random.gauss(0, 0.004), 3), any_work()))
    read = [instruments[which].read(shown, place, work) for which, shown, work in taken]
    weights = [0.0] * len(read)
    for which, instrument in enumerate(instruments):
        members = [i for i, it in enumerate(taken) if it[0] == which]
        if not members:
            continue
        information = sum(read[i][1] ** -2 for i in members)
        # Of the instrument: its scale, what it is set on, its expansion; the largest of its readings.
        of_all = max(
            math.hypot(
                instrument.off.std_dev * read[i][0].n / taken[i][1],
                instrument.alpha.std_dev * (place.room.n - 20) * taken[i][1],
            )
            for i in members
        )
        for i in members:
            weights[i] = read[i][1] ** -2 / information / (1 / information + of_all**2)
    whole = sum(weights)
    size = sum(weight / whole * it[0] for weight, it in zip(weights, read))
    own = math.sqrt(sum((weight / whole * it[1]) ** 2 for weight, it in zip(weights, read)))
    inputs = [*alpha, *bench[0], *bench[1:], len(figures), *sum(figures, [])]
    rows = [number for row in taken for number in row]
    show("mean", *inputs, f"{size.n:.12f}", f"{size.s * 1e3:.12f}", f"{own * 1e3:.12f}", *rows)


def fitted(model, z, d, u, unknowns):
    found, covariance = curve_fit(model, z, d, [0.0] * unknowns, u, absolute_sigma=True)
    off = (d - model(z, *found)) / u
    free = len(z) - unknowns
    scale = 1 if free == 0 else max(1, math.sqrt(off @ off / free))
    return found[-1], math.sqrt(covariance[-1, -1]) * scale


def taper():
    count = random.randint(2, 7)
    length = random.uniform(20, 200)
    z = numpy.array(sorted(round((i + random.random() * 0.8) * length / count, 1) for i in range(count)))
    slope, bulge = random.uniform(-2e-4, 2e-4), random.uniform(-0.02, 0.02)
    base, noise = random.uniform(5, 80), random.choice([0.0005, 0.002, 0.008])
    x = 2 * (z - z[0]) / (z[-1] - z[0]) - 1
    d = numpy.array([
        round(base + slope * at + bulge * (1 - out * out) + random.gauss(0, noise), 4)
        for at, out in zip(z, x)
    ])
    u = numpy.array([round(random.uniform(0.5, 6), 1) for _ in z]) * 1e-3
    # From the middle and the first diameter, so that the solver sees small numbers.
    s, s_u = fitted(lambda x, a, s: a + s * x, x, d - d[0], u, 2)
    half = (z[-1] - z[0]) / 2
    bow = [None, None]
    if count > 2:
        b, b_u = fitted(lambda x, a, s, b: a + s * x + b * (1 - x * x), x, d - d[0], u, 3)
        bow = [f"{b:.12f}", f"{b_u:.12f}"]
    rows = [round(number, 4) for row in zip(z.tolist(), d.tolist(), (u * 1e3).tolist()) for number in row]
    show("taper", f"{s / half:.14f}", f"{s_u / half:.14f}", *bow, *rows)


def main():
    print(f"# uncertainties {version('uncertainties')}, scipy {scipy.__version__}; see measuring.py")
    for case, count in ((reading, 60), (mean, 40), (taper, 60)):
        for _ in range(count):
            case()


main()
