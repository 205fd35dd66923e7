# Makes estimate-*.properties in this folder: python3 estimates.py
import os
import numpy
import scipy
from scipy import stats

FOLDER = os.path.dirname(os.path.abspath(__file__))


def write(name, source, tolerance, **entries):
    with open(os.path.join(FOLDER, 'estimate-' + name + '.properties'), 'w') as out:
        out.write('source   = ' + source + '\n')
        out.write('made-by  = python3 estimates.py (in this folder)\n')
        out.write('tolerance.relative = ' + tolerance + '\n')
        for key, values in entries.items():
            out.write(key + ' = ' + ' '.join(repr(float(v)) for v in values) + '\n')


freedom = [1, 2, 4, 9, 19, 39, 99, 999]
write('student', 'scipy ' + scipy.__version__ + ', stats.t.ppf', '1e-10',
      freedom=freedom,
      t90=[stats.t.ppf(0.95, f) for f in freedom],
      t95=[stats.t.ppf(0.975, f) for f in freedom],
      t99=[stats.t.ppf(0.995, f) for f in freedom])

cases = [(0, 40), (1, 40), (7, 40), (20, 40), (39, 40), (40, 40), (3, 1000), (0, 1)]
bounds = [stats.binomtest(k, n).proportion_ci(0.95, method='exact') for k, n in cases]
write('chance', 'scipy ' + scipy.__version__ + ', stats.binomtest(k, n).proportion_ci(0.95, method="exact")', '1e-8',
      happened=[k for k, n in cases], of=[n for k, n in cases],
      low=[b.low for b in bounds], high=[b.high for b in bounds])

values = [3.1, -4.0, 12.5, 0.25, 7.75, 7.75, 100.0, -0.5, 2.0, 5.5, 6.125]
shares = [0, 0.05, 0.1, 0.33, 0.5, 0.9, 0.95, 1]
write('quantile', 'numpy ' + numpy.__version__ + ', quantile(method="linear")', '1e-14',
      values=values, shares=shares, quantiles=numpy.quantile(values, shares, method='linear'))

# Ranks of the limits by the definition: greatest i with P(B < i) <= 0.025, least j with P(B >= j) <= 0.025; 0: none.
rows = [(n, p) for n in (5, 6, 10, 40, 71, 72, 100, 1000) for p in (0.05, 0.5, 0.95)]


def low(n, p):
    return max([i for i in range(1, n + 1) if stats.binom.cdf(i - 1, n, p) <= 0.025], default=0)


def high(n, p):
    return min([j for j in range(1, n + 1) if stats.binom.sf(j - 1, n, p) <= 0.025], default=0)


write('order-statistic', 'scipy ' + scipy.__version__ + ', stats.binom.cdf and sf, by the definition', '0',
      n=[n for n, p in rows], share=[p for n, p in rows],
      low=[low(n, p) for n, p in rows], high=[high(n, p) for n, p in rows])
