#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Seconds of processor time scipy.optimize.curve_fit takes for start + slope t + amount (1 - exp(-t/theta)) on the
record in the file argv[1]: times, then pressures, as doubles. One line for each of argv[2] runs."""
import sys
import time

import numpy as np
from scipy.optimize import curve_fit

values = np.fromfile(sys.argv[1])
t, p = values[: len(values) // 2], values[len(values) // 2 :]


def law(t, start, slope, amount, theta):
    return start + slope * t - amount * np.expm1(-t / theta)


third = len(t) // 3
slope = (p[-1] - p[-third]) / (t[-1] - t[-third])
guess = [p[0], slope, p[-1] - p[0] - slope * (t[-1] - t[0]), (t[-1] - t[0]) / 10]
for _ in range(int(sys.argv[2])):
    begin = time.process_time()
    curve_fit(law, t, p, p0=guess)
    print(time.process_time() - begin)
