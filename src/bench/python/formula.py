"""The calibration's formula in plain NumPy, by the equations that the calibration file and docs give."""
import math

PRANDTL = 0.706
PR_04 = PRANDTL**0.4
CHURCHILL = 0.589 * PRANDTL**0.25 / (1 + (0.469 / PRANDTL) ** (9 / 16)) ** (4 / 9)


class Formula:
    def __init__(self, cal):
        value = {k: v["value"] for k, v in cal["parameters"].items()}
        self.q = [value[k] for k in ("conduction", "forced", "natural", "leads", "radiation", "tilt", "mixing", "warmth")]
        self.heating = value["heating"]
        self.path = [min(0.5, max(0.0, value["heater_share"])), value["heater_time"], value["bead_time"], value["offset"]]
        self.per_kelvin = cal["signal_per_K"]
        self.slope = value["sensitivity_slope"]
        air = cal["reference_air"]
        self.reference = air["temperature_K"]
        self.diameter = cal["ball_diameter_m"]
        vapour = air["relative_humidity"] * 2310 / air["pressure_Pa"]
        self.nu_300 = 1.85373e-5 / (air["pressure_Pa"] / (287.05 * 300) * (1 - 0.378 * vapour))
        self.covariance = cal["covariance"]["matrix"]

    def delta(self, signal, air_K):
        """Difference of a signal: two steps of Newton's are enough for so weak a bend."""
        base = (signal - self.path[3]) / self.per_kelvin
        first = 1 + self.slope * (air_K - self.reference)
        d = base / first
        for _ in range(2):
            d = d - (d * (first + 0.5 * self.slope * d) - base) / (first + self.slope * d)
        return d

    def loss(self, speed, delta, air_K):
        """Loss of a ball, 1/s."""
        q = self.q
        film = air_K + 0.5 * delta
        nu = self.nu_300 * (film / 300) ** 1.778
        k = (film / self.reference) ** 0.846
        y = q[2] * CHURCHILL * (9.80665 * delta * self.diameter**3 / (film * nu * nu)) ** 0.25
        re = speed * self.diameter / (self.nu_300 * (air_K / 300) ** 1.778)
        x = q[1] * (0.4 * math.sqrt(re) + 0.06 * re ** (2 / 3)) * PR_04 * (re / 300) ** q[5] * (air_K / film) ** q[7]
        mixed = (x ** q[6] + y ** q[6]) ** (1 / q[6])
        return q[0] * k * (1 + 0.5 * mixed) + q[3] + q[4] * (film / self.reference) ** 3
