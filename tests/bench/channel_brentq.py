# SPDX-License-Identifier: GPL-3.0-or-later
# Reference of channel_bench: the diameter of a helium channel by scipy.optimize.brentq, in plain Python floats.
# Input: "length" or "exit", then leak rates in Pa m3/s, one a line. Output: seconds per solve, then diameters in m.
import sys
import time
from math import exp, log, log1p, pi, sqrt

from scipy.optimize import brentq

R = 8.31446261815324
T = 293.15
M = 4.002602e-3
ETA = 19.593e-6
GAMMA = 5.0 / 3.0
LENGTH = 5e-3
P1 = 1e5
KAPPA = 1.235
CHOKED = 0.84 * sqrt(GAMMA) * (2 / (GAMMA + 1)) ** ((GAMMA + 1) / (2 * (GAMMA - 1))) * sqrt(2 * pi)
MEAN = sqrt(8 * R * T / (pi * M))
LIKELY = sqrt(2 * R * T / M)
THERMAL = sqrt(2 * pi * R * T / M)
SLIP = sqrt(M / (R * T)) / ETA


def tube(d, p1, p2):
    b = KAPPA * d * SLIP
    viscous = pi * d**4 * (p1 * p1 - p2 * p2) / (256 * ETA * LENGTH)
    return viscous + d**3 / (6 * LENGTH) * THERMAL * (
        (p1 - p2) / KAPPA + (1 - 1 / KAPPA) / b * (log1p(b * p1) - log1p(b * p2))
    )


def outflow(d, p):
    delta = d * p / (2 * ETA * LIKELY)
    return pi / 4 * d * d * MEAN / 4 * (1 + (CHOKED - 1) * delta / (delta + 3)) * p


def with_exit(d):
    scale = tube(d, P1, 0.0)
    p = brentq(lambda q: (tube(d, P1, q) - outflow(d, q)) / scale, 0.0, P1, xtol=1e-11, rtol=1e-14)
    return tube(d, P1, p)


def main():
    lines = sys.stdin.read().split()
    law = with_exit if lines[0] == "exit" else (lambda d: tube(d, P1, 0.0))
    rates = [float(x) for x in lines[1:]]
    start = time.perf_counter()
    found = [
        exp(brentq(lambda x: log(law(exp(x))) - log(q), log(1e-10), log(5e-2), xtol=1e-14, rtol=1e-14)) for q in rates
    ]
    print((time.perf_counter() - start) / len(rates))
    for d in found:
        print(repr(d))


main()
