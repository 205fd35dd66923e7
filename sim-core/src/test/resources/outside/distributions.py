# Makes chance-*.properties in this folder: python3 distributions.py
# Every value comes from the density or the distribution function written out here, at 40 digits; no value is typed.
import os
from mpmath import (mp, mpf, exp, log, sqrt, pi, erfc, gammainc, gamma, betainc, beta, quad, findroot, inf, nstr,
                    ncdf)
import mpmath

mp.dps = 40
SHARES = [mpf(s) for s in ('1e-6', '0.001', '0.025', '0.25', '0.5', '0.7', '0.95', '0.999', '0.999999')]


def bisect(f, low, high):
    for _ in range(220):
        middle = (low + high) / 2
        if f(middle) < 0:
            low = middle
        else:
            high = middle
    return (low + high) / 2


class Case:
    """above: share of cases above x; below: share below x; pdf: density; all before the cut."""

    def __init__(self, name, formula, above, below, pdf, low, high, ends, tolerance):
        self.__dict__.update(locals())

    def write(self):
        low, high = self.low, self.high
        whole = self.between(low, high)
        first, last = self.ends
        points = [bisect(lambda x: self.between(low, x) / whole - u, first, last) for u in SHARES]
        cuts = sorted({p for p in [first, last] + points})
        mean = quad(lambda x: x * self.pdf(x), cuts) / whole
        sd = sqrt(quad(lambda x: (x - mean) ** 2 * self.pdf(x), cuts) / whole)
        digits = lambda value: nstr(value, 20)
        folder = os.path.dirname(os.path.abspath(__file__))
        with open(os.path.join(folder, 'chance-' + self.name + '.properties'), 'w') as out:
            out.write('source   = mpmath ' + mpmath.__version__ + ', 40 digits: ' + self.formula + '\n')
            out.write('made-by  = python3 distributions.py (in this folder)\n')
            out.write('tolerance.relative = ' + self.tolerance + '\n')
            out.write('u    = ' + ' '.join(nstr(u, 10) for u in SHARES) + '\n')
            out.write('x    = ' + ' '.join(digits(x) for x in points) + '\n')
            out.write('mean = ' + digits(mean) + '\nsd   = ' + digits(sd) + '\n')

    def between(self, a, b):
        """Differences of the smaller tails, so that a range far out keeps its digits."""
        if self.below(a) > mpf(1) / 2:
            return self.above(a) - self.above(b)
        return self.below(b) - self.below(a)


def normal(name, mean, sd, low=-inf, high=inf):
    mean, sd = mpf(mean), mpf(sd)
    first = mean - 40 * sd if low == -inf else low
    last = mean + 40 * sd if high == inf else high
    below = lambda x: erfc(-(x - mean) / sd / sqrt(2)) / 2
    above = lambda x: erfc((x - mean) / sd / sqrt(2)) / 2
    pdf = lambda x: exp(-((x - mean) / sd) ** 2 / 2) / sd / sqrt(2 * pi)
    return Case(name, 'normal by erfc, mean %s sd %s low %s high %s' % (mean, sd, low, high),
                above, below, pdf, low, high, (first, last), '1e-14')


def lognormal(name, mean, sd, low=mpf(0), high=inf):
    s2 = log(1 + (mpf(sd) / mean) ** 2)
    mu, s = log(mpf(mean)) - s2 / 2, sqrt(s2)
    z = lambda x: (log(x) - mu) / s if 0 < x < inf else (-inf if x <= 0 else inf)
    first = exp(mu - 40 * s) if low <= 0 else low
    last = exp(mu + 40 * s) if high == inf else high
    pdf = lambda x: exp(-z(x) ** 2 / 2) / (x * s) / sqrt(2 * pi)
    return Case(name, 'lognormal by erfc of the log, mean %s sd %s of the value, low %s high %s' % (mean, sd, low, high),
                lambda x: erfc(z(x) / sqrt(2)) / 2, lambda x: erfc(-z(x) / sqrt(2)) / 2, pdf,
                low, high, (first, last), '1e-14')


def weibull(name, k, scale, low=mpf(0), high=inf):
    k, scale = mpf(k), mpf(scale)
    h = lambda x: (x / scale) ** k
    last = scale * mpf(2000) ** (1 / k) if high == inf else high
    pdf = lambda x: k / scale * (x / scale) ** (k - 1) * exp(-h(x)) if x > 0 else mpf(0)
    return Case(name, '1 - exp(-(x/%s)^%s) low %s high %s' % (scale, k, low, high),
                lambda x: exp(-h(x)), lambda x: -mpmath.expm1(-h(x)), pdf, low, high, (low, last), '1e-14')


def gammas(name, mean, sd, low=mpf(0), high=inf):
    a, scale = (mpf(mean) / sd) ** 2, mpf(sd) ** 2 / mean
    last = mean + 400 * mpf(sd) if high == inf else high
    pdf = lambda x: (x / scale) ** (a - 1) * exp(-x / scale) / gamma(a) / scale if x > 0 else mpf(0)
    return Case(name, 'regularized incomplete gamma, mean %s sd %s low %s high %s' % (mean, sd, low, high),
                lambda x: gammainc(a, x / scale, inf, regularized=True) if x < inf else mpf(0),
                lambda x: gammainc(a, 0, x / scale, regularized=True) if x < inf else mpf(1),
                pdf, low, high, (low, last), '1e-11')


def betas(name, mean, sd, low, high):
    low, high = mpf(low), mpf(high)
    m, s = (mpf(mean) - low) / (high - low), mpf(sd) / (high - low)
    n = m * (1 - m) / s ** 2 - 1
    a, b, w = m * n, (1 - m) * n, high - low
    below = lambda x: betainc(a, b, 0, (x - low) / w, regularized=True)
    pdf = lambda x: ((x - low) / w) ** (a - 1) * ((high - x) / w) ** (b - 1) / beta(a, b) / w if low < x < high else mpf(0)
    return Case(name, 'regularized incomplete beta, mean %s sd %s low %s high %s' % (mean, sd, low, high),
                lambda x: 1 - below(x), below, pdf, low, high, (low, high), '1e-11')


def uniform(name, low, high):
    low, high = mpf(low), mpf(high)
    return Case(name, '(x - %s)/(%s - %s)' % (low, high, low), lambda x: (high - x) / (high - low),
                lambda x: (x - low) / (high - low), lambda x: 1 / (high - low), low, high, (low, high), '1e-14')


def triangular(name, low, mode, high):
    low, mode, high = mpf(low), mpf(mode), mpf(high)
    w = high - low
    below = lambda x: (x - low) ** 2 / w / (mode - low) if x < mode else 1 - (high - x) ** 2 / w / (high - mode)
    pdf = lambda x: 2 * (x - low) / w / (mode - low) if x < mode else 2 * (high - x) / w / (high - mode)
    return Case(name, 'triangle of least %s, mode %s, greatest %s' % (low, mode, high),
                lambda x: 1 - below(x), below, pdf, low, high, (low, high), '1e-13')


for case in [
    normal('normal', 1050, 70),
    normal('normal-cut', 1050, 70, mpf(700), mpf(1100)),
    normal('normal-far-out', 0, 1, mpf(6), inf),
    lognormal('lognormal', 18, 10),
    lognormal('lognormal-cut', 18, 10, mpf(8), inf),
    weibull('exponential', 1, 9),
    weibull('exponential-cut', 1, 9, mpf(2), mpf(20)),
    weibull('weibull', '1.5', 90),
    weibull('weibull-cut', '0.75', 90, mpf(10), mpf(200)),
    gammas('gamma', 30, 12),
    gammas('gamma-of-small-shape', 10, 14),
    gammas('gamma-cut', 30, 12, mpf(25), mpf(60)),
    uniform('uniform', 2, 7),
    triangular('triangular', 2, 3, 6),
    betas('beta', '0.3', '0.1', 0, 1),
    betas('beta-of-a-range', 30, 5, 10, 80),
]:
    case.write()
    print(case.name)
