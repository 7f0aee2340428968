"""Fits the circles of a survey with SciPy and says how long that takes.

    python3 scipy_fit.py POINTS.json
"""
import json
import statistics
import sys
import time

import numpy as np
import scipy
from scipy import optimize


def offsets(c, x, y):
    return np.hypot(x - c[0], y - c[1]) - c[2]


def slopes(c, x, y):
    d = np.hypot(x - c[0], y - c[1])
    return np.column_stack(((c[0] - x) / d, (c[1] - y) / d, -np.ones_like(d)))


def start(x, y):
    return np.array([x.mean(), y.mean(), np.hypot(x - x.mean(), y - y.mean()).mean()])


def by_leastsq(x, y):
    return optimize.leastsq(offsets, start(x, y), args=(x, y), Dfun=slopes, xtol=1e-12, ftol=1e-12)[0]


def by_least_squares(x, y):
    return optimize.least_squares(offsets, start(x, y), jac=slopes, args=(x, y), method="lm", xtol=1e-12, ftol=1e-12).x


def microseconds(fit, stations, rounds=9, times=50):
    taken = []
    for _ in range(rounds):
        begin = time.perf_counter()
        for _ in range(times):
            for x, y in stations:
                fit(x, y)
        taken.append((time.perf_counter() - begin) / times * 1e6)
    return statistics.median(taken), min(taken), max(taken)


def main():
    with open(sys.argv[1]) as f:
        stations = [(np.array([p["X"] for p in s]), np.array([p["Y"] for p in s])) for s in json.load(f)]
    print(f"SciPy {scipy.__version__}, NumPy {np.__version__}, Python {sys.version.split()[0]}")
    for i, (x, y) in enumerate(stations):
        c = by_leastsq(x, y) * 1000
        print(f"station {i + 1}: x {c[0]:.9f} y {c[1]:.9f} r {c[2]:.9f} mm")
    for fit in by_leastsq, by_least_squares:
        middle, least, most = microseconds(fit, stations)
        print(f"three circles {fit.__name__}: median {middle:.0f} us, {least:.0f} to {most:.0f}")


main()
