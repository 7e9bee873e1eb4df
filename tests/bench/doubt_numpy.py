#!/usr/bin/python3
"""The same draws as domain/decisions/season_draws.h, written in vectors with numpy: how long they take, to hold our own
time against. Not run by ctest; needs Debian's python3-numpy."""

import time

import numpy

DRAWS, VATS, POINTS = 100_000, 5, 9
ROOT = numpy.array([[0.4, 0, 0], [-0.1, 0.2, 0], [-0.15, 0, 0.2]])
MEAN = numpy.array([0.4, 0.0, -0.7])


def seasons(chance):
    failing = chance.beta(1.5, 9.5, (DRAWS, 1))
    lost = chance.random(DRAWS) < chance.beta(0.5, 3.5, DRAWS)
    widened = numpy.sqrt((POINTS - 1) / chance.chisquare(POINTS - 1, DRAWS))
    summer = chance.standard_normal((DRAWS, 1, 3)) * numpy.sqrt(0.5 + 1 / POINTS)
    own = chance.standard_normal((DRAWS, VATS, 3)) * numpy.sqrt(0.5)
    logs = MEAN + widened[:, None, None] * ((summer + own) @ ROOT.T)
    gave = chance.random((DRAWS, VATS)) >= failing
    values = numpy.exp(logs)
    grams = (values[:, :, 0] * gave).sum(1)
    shade = (values[:, :, 0] * values[:, :, 2] * gave).sum(1)
    bars = numpy.where(lost, 0, shade * 5 / 0.1)
    minutes = 20 * 5 * VATS + numpy.where(lost, 0, 120 * values[:, :, 1].sum(1))
    cash = 0.5 * 5 * VATS + numpy.where(lost, 0, 0.3 * 5 * VATS)
    return grams, bars * (0.5 + 0.1) - cash, minutes / 60


best = min(
    (lambda started: (seasons(numpy.random.default_rng(i)), time.perf_counter() - started)[1])(time.perf_counter())
    for i in range(10)
)
print(f"numpy: {1000 * best:.1f} ms for {DRAWS} seasons of {VATS} vats")
