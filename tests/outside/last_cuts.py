"""What measured cuts teach, by general-purpose statistics, for `src/measuring/belief_tests.rs`.

    pip install -r tests/outside/requirements.txt
    python3 tests/outside/last_cuts.py > tests/outside/last_cuts.csv

The posterior is found twice: by inverse matrices, and as least squares with the prior put in as two rows more. Ordinary
least squares are those of scipy.stats.linregress. Nothing is taken over from the program. The seed is fixed. Units: mm on
diameter.

Each line: prior mean and deviation of offset and share; scatter; engaged:off of each cut; offset, share, their deviations
and covariance afterwards; offset and share by ordinary least squares; then size, lower limit, deviation of the size,
engaged, and the odds of going under.
"""

import math
import random

import numpy as np
from scipy.linalg import lstsq
from scipy.stats import linregress, norm

random.seed(20_266)
CASES = 60


def case():
    offset, of_offset = random.uniform(-0.01, 0.005), random.uniform(0.002, 0.03)
    share, of_share = random.uniform(0.8, 1.0), random.uniform(0.01, 0.1)
    scatter = random.uniform(0.001, 0.01)
    true = random.gauss(offset, of_offset), random.gauss(share, of_share)
    cuts = []
    for _ in range(random.randint(2, 8)):
        engaged = round(random.uniform(0.03, 0.6), 4)
        cuts.append((engaged, round(true[0] + true[1] * engaged + random.gauss(0, scatter), 4)))
    x = np.array([[1.0, engaged] for engaged, _ in cuts])
    y = np.array([off for _, off in cuts])
    prior = np.diag([of_offset**-2, of_share**-2])
    mean = np.array([offset, share])
    covariance = np.linalg.inv(prior + x.T @ x / scatter**2)
    posterior = covariance @ (prior @ mean + x.T @ y / scatter**2)
    rows = np.vstack([x / scatter, np.diag([1 / of_offset, 1 / of_share])])
    values = np.concatenate([y / scatter, mean / np.array([of_offset, of_share])])
    again = lstsq(rows, values)[0]
    assert np.allclose(posterior, again, rtol=1e-9, atol=1e-12)
    plain = linregress([engaged for engaged, _ in cuts], [off for _, off in cuts])
    size = 20.0
    engaged = random.uniform(0.03, 0.5)
    vector = np.array([1.0, engaged])
    of_size = random.uniform(0.0005, 0.005)
    deviation = math.sqrt(vector @ covariance @ vector + scatter**2 + of_size**2)
    after = size - vector @ posterior
    lower = after - random.uniform(-1, 3.5) * deviation
    odds = norm.cdf((lower - after) / deviation)
    numbers = [
        [offset, of_offset, share, of_share, scatter],
        [*posterior, math.sqrt(covariance[0, 0]), math.sqrt(covariance[1, 1]), covariance[0, 1]],
        [plain.intercept, plain.slope],
        [size, lower, of_size, engaged, odds],
    ]
    head, *rest = [" ".join(f"{number:.15g}" for number in group) for group in numbers]
    print(",".join([head, " ".join(f"{e}:{o}" for e, o in cuts), *rest]))


for _ in range(CASES):
    case()
