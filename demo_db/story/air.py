"""The air over Sedge Landing, an invented place: seasons, weather and the standard atmosphere."""

import math


def season(day):
    """C at 3,000 ft on that day of the year: 9 C in the mean, 25 in July, -7 in January."""
    turn = 2.0 * math.pi * (day.timetuple().tm_yday - 20) / 365.25
    return 9.0 - 16.0 * math.cos(turn)


def outside_air(day, pressure_altitude, chance):
    """Whole C: the season, 2 C less each 1,000 ft, and weather with a deviation of 4 C."""
    return round(season(day) - 2.0 * (pressure_altitude - 3000) / 1000.0 + chance.normal(4.0))


def theta(outside):
    """Absolute temperature over that of the standard atmosphere at sea level (ISO 2533)."""
    return (outside + 273.15) / 288.15


def delta(pressure_altitude):
    """Pressure over that of the standard atmosphere at sea level, from feet (ISO 2533)."""
    return (1.0 - 6.8755856e-6 * pressure_altitude) ** 5.2558798
