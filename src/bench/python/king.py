"""The plain way: Savitzky-Golay, heat balance, King's law and its uncertainty. king.py CAL.json LOG.csv OUT.csv

Loss = (heating - d(delta)/dt) / delta from smoothed values; loss = a + b U^n with a, b, n fitted to the calibration's
formula at 20 C; U95 from a covariance of a, b, n (1 %, 2 %, 2 %) and the noise of the loss. No lags, no states.
"""
import json
import sys

import numpy as np
import pandas as pd
from scipy.optimize import curve_fit
from scipy.signal import savgol_filter

from formula import Formula

WINDOW = 61


def main(calibration, log, out):
    with open(calibration) as f:
        cal = json.load(f)
    formula = Formula(cal)
    rows = pd.read_csv(log)
    delta = formula.delta(rows["signal_uV"].to_numpy(), rows["air_C"].to_numpy() + 273.15)
    smooth = savgol_filter(delta, WINDOW, 3)
    slope = savgol_filter(delta, WINDOW, 3, deriv=1)
    loss = (formula.heating - slope) / smooth

    speeds = np.geomspace(0.05, 3, 40)
    at = np.array([formula.loss(u, formula.heating / 0.0035, 293.15) for u in speeds])
    king = lambda u, a, b, n: a + b * u**n
    (a, b, n), _ = curve_fit(king, speeds, at, p0=(at[0] / 2, at[-1] / 3, 0.5))

    above = np.maximum(loss - a, 1e-9) / b
    speed = above ** (1 / n)
    noise = np.std(np.diff(delta)) / np.sqrt(2) / np.sqrt(WINDOW)
    by_loss = speed / (n * np.maximum(loss - a, 1e-9))
    u2 = (by_loss * a * 0.01) ** 2 + (speed / n * 0.02) ** 2 + (speed * np.log(np.maximum(above, 1e-9)) / n * 0.02) ** 2
    u2 += (by_loss * loss * noise / smooth * 3) ** 2
    rows["speed_m_s"] = speed
    rows["u95_m_s"] = 2 * np.sqrt(u2)
    rows["flag"] = np.where(speed < 0.05, "floor", "")
    for name in ("speed_m_s", "u95_m_s"):
        rows[name] = rows[name].round(5)
    rows.to_csv(out, index=False)


if __name__ == "__main__":
    main(*sys.argv[1:])
