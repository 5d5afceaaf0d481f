"""The 10 %, 50 % and 90 % points of total times, by a million draws each, for `tests/cycle_time.rs`.

    python3 tests/outside/cycle_time.py

Prints the rows of that file's table. Nothing is taken over from the program: the model is drawn as it is described.
Handling is drawn from triangular distributions and multiplied by one pace per job, triangular over 0.75, 1, 1.25;
feeding is drawn likewise and not multiplied. The seed is 20262 plus the number of the row. All times in seconds.
"""

import numpy

DRAWS = 1_000_000
PACE = (0.75, 1.0, 1.25)
SEED = 20_262

PASS = [(9, 13, 18), (6, 9, 12), (18, 24, 30)]


def passes(count):
    return [(count, *step) for step in PASS]


# Steps and feeding: (count, low, likely, high).
CASES = [
    ("a lone handling step", [(1, 180, 420, 900)], []),
    ("a lone lopsided step", [(1, 0, 0, 100)], []),
    ("a lone lopsided step, the other way", [(1, 0, 100, 100)], []),
    ("a lone exact step: the pace alone", [(1, 100, 100, 100)], []),
    ("a lone lopsided feed", [], [(1, 100, 100, 125)]),
    ("a lone feed, the other way", [], [(1, 0, 100, 100)]),
    ("an even feed", [], [(1, 0, 50, 100)]),
    ("two lopsided feeds", [], [(2, 0, 0, 100)]),
    ("five lopsided feeds", [], [(5, 0, 0, 100)]),
    ("a hundred feeds", [], [(100, 10, 20, 60)]),
    ("two steps", [(2, 30, 60, 120)], []),
    ("one large, many small", [(1, 0, 100, 1000), (20, 5, 6, 9)], []),
    ("four passes, exact feed", passes(4), [(1, 240, 240, 240)]),
    ("four passes, geared", passes(4), [(1, 240, 240, 300)]),
    ("thirty passes, geared", passes(30), [(1, 3600, 3600, 4500)]),
    ("two hundred passes, exact", passes(200), [(1, 9000, 9000, 9000)]),
    (
        "a small job in a collet",
        [(1, 180, 360, 720), (1, 18, 30, 60), (1, 18, 30, 90), *passes(3), (2, 30, 42, 60), (2, 30, 60, 120),
         (1, 60, 120, 240), (1, 120, 240, 480)],
        [(1, 100, 100, 125)],
    ),
    (
        "a whole job in a four-jaw chuck",
        [(1, 180, 360, 720), (1, 60, 120, 240), (1, 180, 420, 900), (1, 120, 240, 600), (1, 18, 42, 90),
         (1, 48, 72, 120), *passes(12), (3, 30, 42, 60), (1, 120, 240, 480), (1, 60, 120, 240), (2, 30, 60, 120),
         (1, 60, 120, 240), (1, 120, 240, 480)],
        [(1, 20, 20, 25), (1, 6, 6, 7.5), (1, 720, 720, 900)],
    ),
    (
        "a long job with many regrinds",
        [(1, 180, 360, 720), (1, 60, 120, 300), (1, 30, 60, 120), *passes(40), (10, 30, 42, 60), (10, 120, 240, 480),
         (2, 30, 60, 120)],
        [(1, 14400, 14400, 18000)],
    ),
    ("nearly all feeding", [(1, 60, 120, 240)], [(1, 36000, 36000, 45000)]),
    ("nearly all handling", [(1, 7200, 10800, 21600), (50, 18, 24, 30)], [(1, 10, 10, 10)]),
]


def drawn(generator, terms):
    total = numpy.zeros(DRAWS)
    for count, low, likely, high in terms:
        for _ in range(count):
            total += generator.triangular(low, likely, high, DRAWS) if low < high else low
    return total


def rust(terms):
    rows = ", ".join(f"({count}, [{low:.1f}, {likely:.1f}, {high:.1f}])" for count, low, likely, high in terms)
    return f"&[{rows}]"


for row, (name, handling, feeding) in enumerate(CASES):
    generator = numpy.random.default_rng(SEED + row)
    pace = generator.triangular(*PACE, DRAWS)
    total = pace * drawn(generator, handling) + drawn(generator, feeding)
    points = ", ".join(f"{point:.3f}" for point in numpy.quantile(total, [0.1, 0.5, 0.9]))
    print(f'    ("{name}", {rust(handling)}, {rust(feeding)},')
    print(f"        [{points}], {total.mean():.3f}, {total.std():.3f}),")
