class Speeds(LiveFilter):
    """With the expanded uncertainty and the flags."""
    columns = ["speed_m_s", "u95_m_s", "flag"]

    def __init__(self, c):
        super().__init__(c)
        self.u, self.range, size = c["uncertainty"], c["speed_range_m_s"], int(self.s["step_rows"])
        # the loss with each parameter a little more and a little less: all derivatives at once
        self.order, self.covariance = c["covariance"]["order"], np.array(c["covariance"]["matrix"])
        self.bump = np.array([1e-5 * max(abs(self.p[name]), 1e-3) for name in self.order])
        sides = np.hstack([np.diag(self.bump), -np.diag(self.bump)])
        bumped = {name: self.p[name] + sides[i] for i, name in enumerate(self.order)}
        self.loss_bumped = chain(c, "loss", ["speed_m_s", "delta_K", *AIR], "loss_1_s", {**self.p, **bumped})
        self.vector = chain(c, "speed", ["signal", "rate", *AIR, "supply_V"], "speed_m_s", self.p)
        self.pressure_seen, self.thicker = False, 1 + self.u.get("u_pressure_unrecorded", 0)
        self.air_seen, self.steps, self.step_count, self.usual_step = False, [0.0] * size, 0, 0.0
        self.gap_open, self.before_gap, self.last_v = False, 1.0, 1.0

    def follow_air(self, first, step, air):
        self.air_seen |= air[0] is not None
        self.pressure_seen |= air[1] is not None
        super().follow_air(first, step, air)

    def kind_of(self, step, signal):
        s, size = self.s, len(self.steps)
        gap = self.step_count >= s["step_needed"] and step > max(s["least_gap_s"], s["gap_steps"] * self.usual_step)
        if not gap:
            self.steps[self.step_count % size] = step
            self.step_count += 1
            if self.step_count <= size or self.step_count % size == 0:
                self.usual_step = float(np.median(self.steps[:min(self.step_count, size)]))
        kind = super().kind_of(step, signal)
        return "gap" if gap and kind == "usual" else kind

    def tell(self, read, signal, kind, unsettled):
        super().tell(read, signal, kind, unsettled)
        wide, u95 = self.band(read, signal)
        if unsettled:
            self.settled, self.begun = False, self.time
        self.settled |= self.V < self.s["settled_variance"] or self.time > self.begun + self.s["surely_settled_s"]
        gap = "gap" in kind
        self.before_gap = self.last_v if gap and not self.gap_open else self.before_gap
        self.gap_open = gap or (self.gap_open and self.V > self.s["gap_variance_ratio"] * self.before_gap)
        self.last_v = self.V
        cold = self.shown < self.s["warm_share"] * self.s["still_delta_K"]
        still = self.L <= wide or self.U <= self.u.get("still_draught_m_s", 0)
        flags = (("floor", self.U < self.performance["floor_m_s"] or still), ("above", self.U > self.range["to"]),
                 ("warmup", cold or not self.settled), ("gap", self.gap_open), ("power", self.supply in ("off", "out")))
        return [f"{self.U:.5f}", f"{u95:.5f}", "+".join(flag for flag, on in flags if on)]

    def band(self, read, signal):
        """How wide ln(loss) may be off, and the expanded uncertainty of the speed."""
        u, p, air, delta, n = self.u, self.p, self.air, self.delta, len(self.order)
        at, loss = max(self.U, u["least_slope_speed_m_s"]), self.still * math.exp(self.L)
        share, H, sides = min(max(self.flow / (loss * delta), 0), 3), self.sensitivity(delta), self.loss_bumped(at, delta, *air)
        speeds, deltas = at * np.array([1, 1.0001, 0.9999, 1, 1]), delta + np.array([0, 0, 0, 1e-3, -1e-3])
        there, more, less, warmer, colder = self.loss(speeds, deltas, *air)
        g, b = (sides[:n] - sides[n:]) / (2 * self.bump) / there, (share / delta + (warmer - colder) / 2e-3 / there) / H
        bySlope = p["signal_per_K"] * delta * (self.warmer + delta / 2)
        for name, value in (("heating", -share / p["heating"]), ("offset", -b), ("sensitivity_slope", -b * bySlope)):
            g[self.order.index(name)] = value
        spread = (self.spread / self.least_step) ** 2 if self.least_step else 9.0
        hidden = self.least_step / (math.pi * math.sqrt(2)) * math.exp(-2 * math.pi**2 * spread)
        parts = [g @ self.covariance @ g, self.V, (u["u_still"] * math.exp(-max(0, self.L))) ** 2, (hidden / H / delta) ** 2]
        if self.supply == "unseen":
            parts.append((u["u_heating_unseen"] * share) ** 2)
        if not self.air_seen:
            hot = [air[0] + u["u_air_unrecorded_K"], *air[1:]]
            there2, change = float(self.bead(signal, *hot)), math.log(float(self.loss(0.0, delta, *hot)) / self.still)
            parts.append((change + (0 if abs(read) < 0.1 or there2 * read <= 0 else math.log(there2 / read))) ** 2)
        if not self.pressure_seen:
            parts.append(math.log(float(self.loss(at, delta, air[0], air[1] * self.thicker, *air[2:])) / there) ** 2)
        wide, U = u["coverage_factor"] * math.sqrt(sum(parts)), lambda loss: float(self.speed(loss, delta, *air))
        side = wide * there / ((more - less) / (2e-4 * at))
        if side >= u["nearly_straight"] * self.U:
            high, low = U(self.still * math.exp(max(0, self.L) + wide)), U(self.still * math.exp(self.L - wide))
            side = max(high - self.U, self.U - low)
        film_K = air[0] + 273.15 + delta / 2
        x = p["gravity"] * delta * p["ball_diameter_m"] / (film_K * self.U**2) if self.U > 0 else 0
        turned = u["direction_share"] * x / (1 + x) * self.U if x > u["direction_from"] else 0
        V2, D2 = self.U**2, u.get("still_draught_m_s", 0) ** 2
        blown = max(math.sqrt(V2 + D2) - self.U, self.U - math.sqrt(max(0, V2 - D2)))
        return wide, math.hypot(side, turned, blown)


def check(live):
    """The largest relative difference from the calibration's own test vectors."""
    return max(abs(float(live.vector(v["signal"], v["rate"], v["air_C"], v["pressure_hPa"], v["rh_pct"], v.get("supply_V", 1.0)))
                   / v["speed_m_s"] - 1) for v in CALIBRATION["test_vectors"])


if __name__ == "__main__":
    np.seterr(all="ignore")
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    elif sys.argv[1] == "--check":
        print(f"largest difference from the test vectors: {100 * check(Speeds(CALIBRATION)):.5f} %")
    else:
        log = sys.stdin if sys.argv[1] == "-" else open(sys.argv[1], encoding="utf-8")
        convert(Speeds(CALIBRATION), CALIBRATION["signal_unit"], log, sys.stdout)
