"""The same estimator in NumPy with numba: block by block the likeliest of three strengths of the walk, an extended
Kalman filter of four states, the smoother backwards, the formula inverted, U95 by the calibration's covariance, means
over 10 s, flags. Sudden changes of the wind and lost heaters are not looked for. same.py CAL.json LOG.csv OUT.csv
"""
import json
import sys

import numpy as np
import pandas as pd
from numba import njit

from formula import CHURCHILL, PR_04, Formula

CORE, BEYOND, TERMS = 2000, 300, 6


@njit(cache=True)
def still(c, delta, air_K):
    """Loss of still air and its slope."""
    film = air_K + 0.5 * delta
    d = max(abs(delta), 1e-3)
    nu = c[12] * (film / 300) ** 1.778
    k = (film / c[10]) ** 0.846
    y = c[2] * CHURCHILL * (9.80665 * d * c[11] ** 3 / (film * nu * nu)) ** 0.25
    r = c[4] * (film / c[10]) ** 3
    half = 0.5 / film
    core = c[0] * k * (1 + 0.5 * y)
    slope = core * 0.846 * half + 0.5 * c[0] * k * y * 0.25 * (1 / d - half - 2 * 1.778 * half) + 3 * r * half
    return core + c[3] + r, slope


@njit(cache=True)
def speed_of(c, loss, delta, air_K):
    film = air_K + 0.5 * delta
    nu = c[12] * (film / 300) ** 1.778
    k = c[0] * (film / c[10]) ** 0.846
    y = c[2] * CHURCHILL * (9.80665 * max(delta, 1e-3) * c[11] ** 3 / (film * nu * nu)) ** 0.25
    mixed = 2 * ((loss - c[3] - c[4] * (film / c[10]) ** 3) / k - 1)
    if mixed <= y:
        return 0.0
    m = c[6]
    target = np.log(mixed**m - y**m) / m - np.log(c[1] * PR_04) + c[7] * np.log(film / air_K)
    log_re = (target + 1.1) / 0.6
    for _ in range(20):
        s = np.exp(log_re / 6)
        value = 0.4 + 0.06 * s
        miss = np.log(value * s * s * s) + c[5] * (log_re - np.log(300.0)) - target
        log_re -= miss / ((0.2 + 0.04 * s) / value + c[5])
        if abs(miss) < 1e-7:
            break
    return np.exp(log_re) * c[12] * (air_K / 300) ** 1.778 / c[11]


@njit(cache=True)
def begin(x, p, delta, heating):
    x[:] = np.array([delta, 0.0, delta, 1.8])
    p[:] = 0
    p[0, 0] = p[2, 2] = 0.25
    p[1, 1] = (0.1 * heating) ** 2
    p[3, 3] = 3


@njit(cache=True)
def forward(c, signal, air, first, last, x, p, walk, noise2, keep, store):
    """Runs over rows; tells their likelihood. keep: means, covariances, transitions, gains, misses go to the store."""
    share, lag, bead_lag = c[14], c[15], c[16]
    likelihood = 0.0
    jac = np.zeros((4, 4))
    for i in range(first, last):
        ratio = min(20.0, max(1.0, x[3]))
        q = 0.5 * walk * ratio * ratio
        loss0, slope0 = still(c, x[0], air[i])
        ratio = max(0.3, x[3])
        ball = 1 - share
        jac[0, 0] = -(loss0 * ratio + x[0] * slope0 * ratio) / ball
        jac[0, 1] = 1 / ball
        jac[0, 3] = -loss0 * x[0] / ball
        for j in range(4):
            jac[1, j] = -share / lag * jac[0, j]
        jac[1, 1] -= 1 / lag
        jac[2, 0] = 1 / bead_lag
        jac[2, 2] = -1 / bead_lag
        rate = np.zeros(4)
        rate[0] = (x[1] - loss0 * ratio * x[0]) / ball
        rate[1] = (c[8] - x[1] - share * rate[0]) / lag
        rate[2] = (x[0] - x[2]) / bead_lag
        power = np.eye(4)
        phi = np.eye(4)
        for k in range(1, TERMS + 1):
            x += rate
            power = jac @ power / k
            phi += power
            rate = jac @ rate / (k + 1)
        p[3, 3] += q
        p[:] = phi @ p @ phi.T
        p[3, 3] += q
        d = air[i] - c[10]
        sens = c[9] * (1 + c[13] * (d + x[2]))
        miss = signal[i] - c[17] - c[9] * x[2] * (1 + c[13] * (d + 0.5 * x[2]))
        s = sens * sens * p[2, 2] + noise2
        gain = p[:, 2] * sens / s
        if keep:
            r = store[i - first]
            r[20:36] = phi.ravel()
            r[36:40] = gain
            r[40] = miss
            r[41] = s
            r[42] = sens
        x += gain * miss
        p -= np.outer(gain, gain) * s
        if keep:
            r[0:4] = x
            r[4:20] = p.ravel()
        likelihood -= 0.5 * (np.log(s) + min(50.0, miss * miss / s))
    return likelihood


@njit(cache=True)
def backward(store, rows):
    lam = np.zeros(4)
    big = np.zeros((4, 4))
    h = np.zeros(4)
    for i in range(rows - 1, -1, -1):
        r = store[i]
        p = r[4:20].copy().reshape((4, 4))
        r[0:4] -= p @ lam
        r[19] = max(1e-12, p[3, 3] - p[3] @ big @ p[3])
        h[2] = r[42]
        keep = np.eye(4) - np.outer(r[36:40], h)
        lam = keep.T @ lam - h * r[40] / r[41]
        big = keep.T @ big @ keep + np.outer(h, h) / r[41]
        phi = r[20:36].copy().reshape((4, 4))
        lam = phi.T @ lam
        big = phi.T @ big @ phi


@njit(cache=True)
def run(c, covariance, signal, air, delta0, noise2):
    n = len(signal)
    speed = np.zeros(n)
    log_loss = np.zeros(n)
    variance = np.zeros(n)
    memory = np.zeros(n)
    deltas = np.zeros(n)
    x = np.zeros(4)
    p = np.zeros((4, 4))
    begin(x, p, delta0, c[8])
    store = np.zeros((CORE + BEYOND, 43))
    strength = np.log(3e-3)
    at = 0
    while at < n:
        core = min(n, at + CORE)
        end = min(n, core + BEYOND)
        low = forward(c, signal, air, at, core, x.copy(), p.copy(), np.exp(2 * (strength - 0.45)), noise2, False, store)
        mid = forward(c, signal, air, at, core, x.copy(), p.copy(), np.exp(2 * strength), noise2, False, store)
        high = forward(c, signal, air, at, core, x.copy(), p.copy(), np.exp(2 * (strength + 0.45)), noise2, False, store)
        bend = low - 2 * mid + high
        move = 0.225 * (low - high) / bend if bend < 0 else (0.9 if high > low else -0.9)
        strength = min(np.log(0.12), max(np.log(3e-4), strength + min(0.9, max(-0.9, move))))
        walk = 2 * np.exp(2 * strength)
        forward(c, signal, air, at, end, x, p, walk, noise2, True, store)
        x[:] = store[core - at - 1, 0:4]
        p[:] = store[core - at - 1, 4:20].copy().reshape((4, 4))
        backward(store, end - at)
        for i in range(at, core):
            r = store[i - at]
            ratio = max(0.3, min(50.0, r[3]))
            var = r[19] / (ratio * ratio)
            d = max(r[0], 0.05)
            base, _ = still(c, d, air[i])
            loss = base * ratio
            away = np.sqrt(3 * var)
            v = speed_of(c, loss, d, air[i])
            if var >= 1e-4 and np.log(ratio) >= 2 * away:
                below = speed_of(c, loss * max(0.0, 1 - away), d, air[i])
                above = speed_of(c, loss * (1 + away), d, air[i])
                v += (below - 2 * v + above) / 6
            speed[i], log_loss[i], variance[i], deltas[i] = v, np.log(ratio), var, d
            memory[i] = min(600.0, 4 * var / walk)
        at = core
    return means(c, covariance, speed, log_loss, variance, memory, deltas, air)


@njit(cache=True)
def means(c, covariance, speed, log_loss, variance, memory, deltas, air):
    n = len(speed)
    out = np.zeros(n)
    u95 = np.zeros(n)
    flag = np.zeros(n, np.int8)
    for i in range(n):
        a, b = max(0, i - 5), min(n, i + 6)
        v = speed[a:b].mean()
        ll = log_loss[a:b].mean()
        z = (b - a) / max(1e-3, memory[a:b].mean())
        left = 1.0 if z < 0.01 else (1 - np.exp(-z) * (np.sin(z) + np.cos(z))) / (z * z)
        var = variance[a:b].mean() * left
        d = deltas[i]
        film = air[i] + 0.5 * d
        nu = c[12] * (film / 300) ** 1.778
        k = c[0] * (film / c[10]) ** 0.846
        u = max(v, 0.01)
        y = c[2] * CHURCHILL * (9.80665 * d * c[11] ** 3 / (film * nu * nu)) ** 0.25
        re = u * c[11] / (c[12] * (air[i] / 300) ** 1.778)
        shape = 0.4 * np.sqrt(re) + 0.06 * re ** (2 / 3)
        x = c[1] * shape * PR_04 * (re / 300) ** c[5] * (air[i] / film) ** c[7]
        m = c[6]
        xm, ym = x**m, y**m
        total = xm + ym
        mixed = total ** (1 / m)
        rad = (film / c[10]) ** 3
        core = k * (1 + 0.5 * mixed)
        loss = core + c[3] + c[4] * rad
        by_x = 0.5 * k * mixed * xm / total
        by_y = 0.5 * k * mixed * ym / total
        slope = loss / (by_x * ((0.2 * np.sqrt(re) + 0.04 * re ** (2 / 3)) / shape + c[5]) / u)
        g = np.zeros(len(covariance))
        g[0], g[1], g[2], g[3], g[4] = core / c[0], by_x / c[1], by_y / c[2], 1.0, rad
        g[5], g[7] = by_x * np.log(re / 300), by_x * np.log(air[i] / film)
        g[6] = 0.5 * k * mixed * ((xm * np.log(x) + ym * np.log(y)) / total - np.log(total) / m) / m
        g /= loss
        sens = c[9] * (1 + c[13] * (air[i] + d - c[10]))
        by_delta = 1 / d / sens
        g[8], g[12] = -1 / c[8], -by_delta
        g[14] = -by_delta * c[9] * d * (air[i] - c[10] + 0.5 * d)
        known = g @ covariance @ g + (0.0045 * np.exp(-max(0.0, ll))) ** 2 + var
        wide = 2 * np.sqrt(known)
        side = wide * slope
        if side >= 0.2 * v:
            base, _ = still(c, d, air[i])
            up = speed_of(c, base * np.exp(max(0.0, ll) + wide), d, air[i]) - v
            side = max(up, v - speed_of(c, base * np.exp(ll - wide), d, air[i]))
        late = 2 * 0.7 * abs(speed[b - 1] - speed[a]) / max(1, b - a - 1)
        out[i] = v
        u95[i] = np.sqrt(side * side + late * late)
        flag[i] = (1 if v < 0.05 or ll <= wide else 0) + (2 if v > 2.5 else 0)
    return out, u95, flag


def main(calibration, log, out):
    with open(calibration) as f:
        cal = json.load(f)
    f = Formula(cal)
    c = np.array(f.q + [f.heating, f.per_kelvin, f.reference, f.diameter, f.nu_300, f.slope] + f.path)
    rows = pd.read_csv(log)
    signal = rows["signal_uV"].to_numpy()
    air = rows["air_C"].to_numpy() + 273.15
    second = signal[1:-1] - 0.5 * (signal[:-2] + signal[2:])
    noise2 = (1.4826 * np.median(np.abs(second))) ** 2 / 1.5
    delta0 = f.delta(signal[0], air[0])
    speed, u95, flag = run(c, np.array(f.covariance), signal, air, delta0, noise2)
    rows["speed_m_s"] = speed.round(5)
    rows["u95_m_s"] = u95.round(5)
    rows["flag"] = np.array(["", "floor", "above", "floor+above"])[flag]
    rows.to_csv(out, index=False)


if __name__ == "__main__":
    main(*sys.argv[1:])
