"""A fit of the two-node heat balance to the runs of a bench with SciPy, and bootstrap refits. fit.py FOLDER REFITS

One formula with weak priors, least squares over every row of the still run and the spins, rows that jump replaced, the
balance integrated with numba; each refit fits the first fit's curves plus residuals drawn anew in stretches of a minute.
"""
import sys
from pathlib import Path

import numpy as np
import pandas as pd
from numba import njit
from scipy.optimize import least_squares

SUBSTEPS = 4
STRETCH = 60
NOISE_K = 0.05
START = np.log(np.array([0.07, 0.03, 4, 3, 6.5e-4, 5e-4, 1, 1]))
WIDTH = np.array([1, 0.5, 0.8, 0.7, 0.45, 0.8, 0.12, 0.12])


@njit(cache=True)
def curve(q, speed, air, first):
    """Bead's difference of rows a second apart: ball, heater, bead; loss with forced and natural parts."""
    heating, share, lag, bead_lag, conduction, leads, forced, natural = np.exp(q[:8])
    delta, bead = first, first
    flow = heating if first > 2 else 0.0
    out = np.zeros(len(speed))
    h = 1.0 / SUBSTEPS
    for i in range(len(speed)):
        out[i] = bead + q[8]
        nu = 1.5e-5 * (air[i] / 293.15) ** 1.778
        for _ in range(SUBSTEPS):
            re = speed[i] * 0.02 / nu
            x = forced * (0.4 * np.sqrt(re) + 0.06 * re ** (2 / 3)) * 0.87
            y = natural * 0.44 * (9.81 * abs(delta) * 8e-6 / (air[i] * nu * nu)) ** 0.25
            loss = conduction * (1 + 0.5 * (x**3 + y**3) ** (1 / 3)) + leads
            rate = (flow - loss * delta) / (1 - share)
            flow += h * ((heating - flow) / lag - share / lag * rate)
            bead += h * (delta - bead) / bead_lag
            delta += h * rate
    return out


def runs(folder):
    table = pd.read_csv(folder / "runs.csv")
    for _, run in table.iterrows():
        if run["kind"] == "zero":
            continue
        rows = pd.read_csv(folder / run["file"])
        speed = np.zeros(len(rows))
        if run["kind"] == "spin":
            t = rows["time_s"].to_numpy()
            top = 2 * np.pi * run["radius_mm"] / 1000 * run["turns"] / run["turns_time_s"]
            on = (t >= run["spin_start_s"]) & (t < run["spin_stop_s"])
            speed[on] = top * (1 - np.exp(-(t[on] - run["spin_start_s"]) / 2))
        usual = rows["delta_K"].rolling(5, center=True, min_periods=1).median()
        signal = rows["delta_K"].where((rows["delta_K"] - usual).abs() < 1, usual)
        yield speed, rows["air_C"].to_numpy() + 273.15, signal.to_numpy()


def main(folder, refits):
    bench = list(runs(Path(folder)))

    def fitted(signals, start):
        def misses(q):
            rows = [(curve(q, u, a, s[0]) - s) / NOISE_K for (u, a, _), s in zip(bench, signals)]
            return np.concatenate([*rows, (q[:8] - START) / WIDTH])

        return least_squares(misses, start, x_scale="jac")

    measured = [s for _, _, s in bench]
    first = fitted(measured, np.append(START, 0.0))
    print(np.exp(first.x[:8]), first.x[8], NOISE_K * np.sqrt(np.mean(first.fun**2)))
    random = np.random.default_rng(1)
    found = []
    for _ in range(int(refits)):
        signals = []
        for u, a, s in bench:
            smooth = curve(first.x, u, a, s[0])
            rest = s - smooth
            begins = random.integers(0, max(1, len(s) - STRETCH), len(s) // STRETCH + 1)
            drawn = np.concatenate([rest[b:b + STRETCH] for b in begins])[: len(s)]
            signals.append(smooth + np.pad(drawn, (0, len(s) - len(drawn))))
        found.append(fitted(signals, first.x).x)
    if found:
        print(np.std(found, axis=0))


if __name__ == "__main__":
    main(*sys.argv[1:])
