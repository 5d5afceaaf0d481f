"""The published multi-pass turning problem by a general-purpose optimiser and by our engine, side by side.

Run from anywhere, with the packages of requirements.txt installed:

    python tests/outside/multipass.py

The problem and its sources stand in tests/support/multipass.rs; it is written here once more, apart from ours. The
optimiser is scipy's differential evolution: a population of 15 for each variable, all of it reckoned at once, limits by
its own handling of constraints, until the population's spread is a billionth; seeds 1 to 5, of which the median of
costs and times is shown with the worst cost. Each run solves one to five roughing passes, as ours does, and keeps the
best. Ours is `cargo bench --bench multipass`: the median of fifteen runs.
"""

import json
import pathlib
import statistics
import subprocess
import time

import numpy as np
from scipy.optimize import NonlinearConstraint, differential_evolution

SEEDS = range(1, 6)

DIAMETER, LENGTH = 50.0, 300.0
LIFE_FACTOR, OF_SPEED, OF_FEED, OF_DEPTH = 6e11, 5.0, 1.75, 0.75
MINUTE, EDGE, CHANGE, LOAD = 0.5, 2.5, 1.5, 0.75
TRAVEL = 7e-4 * LENGTH + 0.3


def life(speed, feed, depth):
    return LIFE_FACTOR / (speed**OF_SPEED * feed**OF_FEED * depth**OF_DEPTH)


class Problem:
    """So much depth in `count` equal roughing passes and one finishing pass; `theta` as in the full objective, or None."""

    def __init__(self, total, theta, count):
        self.total, self.theta, self.count = total, theta, count
        # A finishing depth is no deeper than a roughing depth, and both are 1 to 3 mm.
        self.finish = max(1.0, total - 3.0 * count), min(3.0, total - count, total / (count + 1))

    def is_possible(self):
        return self.finish[0] <= self.finish[1]

    def bounds(self):
        speed, feed = (np.log(50.0), np.log(500.0)), (np.log(0.1), np.log(0.9))
        free = [self.finish] if self.finish[0] < self.finish[1] else []
        return [speed, feed, speed, feed, *free]

    def parts(self, x):
        speed, feed, finish_speed, finish_feed = np.exp(x[:4])
        finish = x[4] if len(x) > 4 else np.full_like(speed, self.finish[0])
        rough = (self.total - finish) / self.count
        return (speed, feed, rough), (finish_speed, finish_feed, finish)

    def cost(self, x):
        rough, finish = self.parts(x)
        minutes = lambda cut: np.pi * DIAMETER * LENGTH / (1000.0 * cut[0] * cut[1])
        times = self.count * minutes(rough), minutes(finish)
        edge = MINUTE * CHANGE + EDGE
        if self.theta is None:
            wear = edge * (times[0] / life(*rough) + times[1] / life(*finish))
        else:
            lives = self.theta * life(*rough) + (1.0 - self.theta) * life(*finish)
            wear = edge * sum(times) / lives
        return MINUTE * sum(times) + MINUTE * (LOAD + TRAVEL * (self.count + 1)) + wear

    def limits(self, x):
        """Logarithms of what must not be below one."""
        rough, finish = self.parts(x)
        rows = [
            np.log(8.0 * 1.2 * 0.010 / finish[1] ** 2),
            np.log(finish[0] / rough[0]),
            np.log(rough[1] / (2.5 * finish[1])),
        ]
        for speed, feed, depth in (rough, finish):
            force = 108.0 * feed**0.75 * depth**0.95
            heat = 132.0 * speed**0.4 * feed**0.2 * depth**0.105
            rows += [
                np.log(life(speed, feed, depth) / 25.0),
                np.log(45.0 / life(speed, feed, depth)),
                np.log(200.0 / force),
                np.log(5.0 * 6120.0 * 0.85 / (force * speed)),
                np.log(speed**2 * feed / depth / 140.0),
                np.log(1000.0 / heat),
            ]
        return np.array(rows)

    def solve(self, seed):
        found = differential_evolution(
            self.cost,
            self.bounds(),
            constraints=NonlinearConstraint(self.limits, 0.0, np.inf),
            popsize=15,
            maxiter=3000,
            tol=1e-9,
            polish=False,
            vectorized=True,
            updating="deferred",
            rng=seed,
        )
        allowed = self.limits(found.x).min() > -1e-9
        return found.fun if allowed else np.inf


def by_optimiser(total, theta, seed):
    start = time.perf_counter()
    problems = [Problem(total, theta, count) for count in range(1, 6)]
    cost, count = min((p.solve(seed), p.count) for p in problems if p.is_possible())
    return cost, count, time.perf_counter() - start


def by_engine():
    root = pathlib.Path(__file__).resolve().parents[2]
    command = ["cargo", "bench", "--quiet", "--bench", "multipass"]
    done = subprocess.run(command, cwd=root, check=True, capture_output=True, text=True)
    return json.loads(done.stdout.strip().splitlines()[-1])


def main():
    print("total  theta | passes: theirs ours |     cost: theirs      worst       ours   gap of ours |"
          "   time: theirs      ours   ratio", flush=True)
    for ours in by_engine():
        total, theta = ours["total"], ours["theta"]
        runs = [by_optimiser(total, theta, seed) for seed in SEEDS]
        cost = statistics.median(run[0] for run in runs)
        worst = max(run[0] for run in runs)
        seconds = statistics.median(run[2] for run in runs)
        count = statistics.mode(run[1] for run in runs)
        print(f"{total:5} {theta!s:>6} | {count:14} {ours['roughing_passes']:4} |"
              f" {cost:16.8f} {worst:10.8f} {ours['cost']:10.8f} {ours['cost'] / cost - 1:13.1e} |"
              f" {seconds:12.2f} s {1e3 * ours['seconds']:6.2f} ms {seconds / ours['seconds']:7.0f}", flush=True)


if __name__ == "__main__":
    main()
