"""Chance with a fixed seed, from plain random numbers only, so that the bytes stay the same."""

import math
import random


class Chance:
    """One stream of chance; each aircraft has its own, so that none moves another's."""

    def __init__(self, seed):
        self._source = random.Random(seed)

    def share(self):
        """A number from 0 to 1."""
        return self._source.random()

    def happens(self, share):
        return self.share() < share

    def between(self, low, high):
        return low + (high - low) * self.share()

    def whole(self, low, high):
        """A whole number from low to high, both included."""
        return low + int(self.share() * (high - low + 1))

    def pick(self, values):
        return values[int(self.share() * len(values))]

    def normal(self, deviation):
        """A normal error with mean 0, by Box and Muller."""
        radius = math.sqrt(-2.0 * math.log(1.0 - self.share()))
        return deviation * radius * math.cos(2.0 * math.pi * self.share())


class Lagged:
    """An error that follows the one before it: lag-1 coefficient, and its own deviation."""

    def __init__(self, chance, deviation, coefficient):
        self._chance = chance
        self._deviation = deviation
        self._coefficient = coefficient
        self._last = chance.normal(deviation)

    def next(self):
        fresh = self._deviation * math.sqrt(1.0 - self._coefficient ** 2)
        self._last = self._coefficient * self._last + self._chance.normal(fresh)
        return self._last
