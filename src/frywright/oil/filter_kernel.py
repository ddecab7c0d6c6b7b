"""Kernel of the oil outlook: a Kalman filter on (level, growth) of many vats, day by day.

All of it lives in one file because compiled code is kept by file. A day is: growth while hot, a reading at
the peak, a top-up or a discard.
"""

from __future__ import annotations

from numba import njit

from frywright.physics import kernels

assert kernels.cache_folder()  # importing it sets the folder that keeps compiled code


@njit(cache=True, nogil=True)
def run(days, fresh, start, prior, drift, out):  # type: ignore[no-untyped-def]
    """Filter every vat; ``out`` is (means (vat, 2), covers (vat, 2, 2)), the state after the last day.

    days : heat, share, discard, reading, noise, each (vat, day); a reading that is not there is NaN
    start : level and its sd on the first day, each (vat,)
    prior : level sd of fresh oil, growth mean, growth sd; drift : sd a day of level and growth
    """
    (heat, share, discard, reading, noise), (means, covers) = days, out
    for v in range(heat.shape[0]):
        c, g = start[0][v], prior[1]
        pcc, pcg, pgg = start[1][v] ** 2, 0.0, prior[2] ** 2
        for d in range(heat.shape[1]):
            h = heat[v, d]
            c += h * g
            pcc += 2.0 * h * pcg + h * h * pgg + drift[0] ** 2 * h
            pcg += h * pgg
            pgg += drift[1] ** 2
            y = reading[v, d]
            if y == y:
                s = pcc + noise[v, d] ** 2
                kc, kg = pcc / s, pcg / s
                gap = y - c
                c += kc * gap
                g += kg * gap
                pgg -= kg * pcg
                pcg -= kc * pcg
                pcc -= kc * pcc
            if discard[v, d]:
                c, pcc, pcg = fresh[v], prior[0] ** 2, 0.0
            else:
                r = share[v, d]
                c = c * (1.0 - r) + fresh[v] * r
                pcc *= (1.0 - r) ** 2
                pcg *= 1.0 - r
        means[v, 0], means[v, 1] = c, g
        covers[v, 0, 0], covers[v, 0, 1], covers[v, 1, 0], covers[v, 1, 1] = pcc, pcg, pcg, pgg
