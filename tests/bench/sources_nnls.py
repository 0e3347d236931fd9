# SPDX-License-Identifier: GPL-3.0-or-later
# Reference of sources_bench: scipy.optimize.nnls. Input: n, then n*n numbers column after column, then n numbers.
# Output: seconds of one solve, the residual norm, and the solution, one number a line.
import sys
import time

import numpy as np
from scipy.optimize import nnls

numbers = [float(word) for word in sys.stdin.read().split()]
n = int(numbers[0])
a = np.array(numbers[1 : 1 + n * n]).reshape(n, n).T.copy()
b = np.array(numbers[1 + n * n :])
start = time.perf_counter()
x, residual = nnls(a, b, maxiter=10 * n)
print(time.perf_counter() - start)
print(residual)
print("\n".join(repr(float(value)) for value in x))
