# SPDX-License-Identifier: GPL-3.0-or-later
# Writes the systems nnls_test.cpp checks against: random, a smooth kernel and a nearly singular kernel, with the
# solution of scipy.optimize.nnls. Run with Debian's python3-scipy 1.10.
import json
import sys

import numpy as np
import scipy
from scipy.optimize import nnls

rng = np.random.default_rng(20260301)
systems = []


def add(name, a, b):
    x, residual = nnls(a, b, maxiter=10 * a.shape[1])
    systems.append({"name": name, "rows": a.shape[0], "columns": a.shape[1], "a": a.T.ravel().tolist(),
                    "b": b.tolist(), "x": x.tolist(), "residual": residual})


for rows, columns in ((6, 4), (30, 20), (40, 40), (20, 35)):
    a = rng.random((rows, columns))
    x = np.where(rng.random(columns) < 0.3, 10 ** rng.uniform(-2, 2, columns), 0.0)
    add(f"random {rows}x{columns}", a, a @ x + 0.01 * rng.standard_normal(rows))
for width in (0.8, 2.0, 4.0):
    n = 40
    i = np.arange(n)
    a = np.exp(-((i[:, None] - i[None, :]) / width) ** 2)
    x = np.zeros(n)
    x[[5, 17, 18, 33]] = [1.0, 0.3, 2.0, 0.05]
    add(f"kernel of width {width}", a, a @ x + 0.003 * rng.standard_normal(n))
add("nothing to find", rng.random((10, 5)), -rng.random(10))
json.dump({"scipy": scipy.__version__, "systems": systems}, sys.stdout)
