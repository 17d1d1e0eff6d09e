#!/usr/bin/env python3
"""Air speed from a log and a Faintwind calibration file (minor version 1 or later), with numpy alone.

    python3 faintwind_reader.py CAL.json LOG.csv > SPEEDS.csv     (LOG.csv may be - for standard input)
The executable reference of docs/formats/calibration.md, whose words it follows: the formula and the live filter. It writes
the log's columns and the speed. `faintwind export --as python` adds the uncertainty and the flags."""
import csv, json, math, re, sys
from collections import deque
import numpy as np

TOKEN = re.compile(r"\d+\.?\d*(e[+-]?\d+)?|[A-Za-z_]\w*|[-+*/^(),\s]")
AIR = ["air_C", "pressure_hPa", "rh_pct"]

def chain(calibration, name, inputs, target, values):
    """A function of inputs that gives target, made of those formulas of a chain that it needs."""
    needed, lines = {target}, []
    for entry in reversed(calibration["relations"][name]):
        if entry["name"] in needed and entry["name"] not in inputs:
            texts = [entry[key] for key in ("formula", "start") if key in entry]
            if TOKEN.sub("", "".join(texts)):
                raise ValueError("not a formula: " + " or ".join(texts))
            needed |= set(re.findall(r"[A-Za-z_]\w*", " ".join(texts)))
            once = f"  {entry['name']} = {texts[0]}\n"
            again = f"  {entry['name']} = {texts[-1]}\n  for _ in range({int(entry.get('repeat', 0))}):\n  {once}"
            lines.insert(0, (again if "start" in entry else once).replace("^", "**"))
    scope = {**values, "exp": np.exp, "ln": np.log, "max": np.maximum, "__builtins__": {"range": range}}
    exec(f"def f({', '.join(inputs)}):\n{''.join(lines)}  return {target}\n", scope)
    return scope["f"]

class LiveFilter:
    columns = ["speed_m_s", "flag"]
    def __init__(self, c):
        self.s, self.performance, self.nominal = s, _, _ = c["filter"], c["performance"], c.get("supply_V")
        self.p = {name: entry["value"] for name, entry in (c["constants"] | c["parameters"]).items()}
        self.loss = chain(c, "loss", ["speed_m_s", "delta_K", *AIR], "loss_1_s", self.p)
        self.speed = chain(c, "speed", ["loss_1_s", "delta_K", *AIR], "speed_m_s", self.p)
        self.bead = chain(c, "speed", ["signal", *AIR], "bead_K", self.p)
        self.signal = chain(c, "state", ["bead_K", "warmer_K"], "signal", self.p)
        self.lag, self.heater = (max(s["least_lag_s"], self.p[name]) for name in ("bead_time", "heater_time"))
        self.walks, self.chosen, r = np.array(s["walks_1_sqrt_s"]), int(s["first_walk"]), c["reference_air"]
        self.score = self.kept = self.drift = self.room = self.none = 0 * self.walks
        self.usual, self.unit = self.none + 1, np.tile(np.eye(4), (len(self.walks), 1, 1))
        self.air = [r["temperature_K"] - 273.15, r["pressure_Pa"] / 100, 100 * r["relative_humidity"]]
        self.time, self.away, self.volts, self.supply, self.since_signal, self.spikes = None, 0.0, 0.0, "unseen", 0.0, 0
        self.recent, self.since_look = deque(maxlen=int(s["noise_rows"])), int(s["noise_every"])
    def row(self, time, signal, air=(None, None, None), volts=None):
        if None in (time, signal) or not math.isfinite(time + signal) or (self.time is not None and time <= self.time):
            return [""] * (len(self.columns) - 1) + ["bad"]
        first, step = self.time is None, 0.0 if self.time is None else time - self.time
        kind, self.time = "first" if first else self.kind_of(step, signal), time
        self.follow_air(first, step, air)
        was_off, heating = self.supply == "off", self.follow_supply(step, volts)
        changed = not first and was_off != (self.supply == "off")
        self.warmer, read = self.air[0] + 273.15 - self.p["reference_K"], float(self.bead(signal, *self.air))
        warm = read > self.s["resume_share"] * self.s["still_delta_K"]
        if kind != "spike":
            self.last_signal, self.last_delta, self.since_signal = signal, abs(read), 0.0
        self.look_at_noise(step, signal)
        if begins := kind in ("first", "long gap"):
            self.begin(read, heating * warm)
        else:
            self.P[:, 3, 3] += self.room
            self.advance(step, heating)
            self.take(signal, read, warm, kind == "spike", changed)
        self.room = self.none
        self.weigh(step, self.supply == "off" or begins or (changed and not warm and kind != "spike"))
        return self.tell(read, signal, kind, begins or changed or self.supply == "off")
    def kind_of(self, step, signal):
        s, self.since_signal, long = self.s, self.since_signal + step, step > self.s["long_gap_s"]
        possible = (2 * self.p["heating"] + s["greatest_loss_1_s"] * self.last_delta) * self.since_signal
        allowed = abs(self.p["signal_per_K"]) * possible * s["spike_allowance"] + s["spike_noises"] * self.performance["noise"]
        wild = abs(signal - self.last_signal) > allowed and self.spikes < s["spikes_in_a_row"] and not long
        accepted, self.spikes = self.spikes >= s["spikes_in_a_row"], self.spikes + 1 if wild else 0
        return "long gap" if long else "spike" if wild else "gap" if accepted else "usual"
    def follow_air(self, first, step, air):
        new = self.air[0] if air[0] is None else air[0]
        self.away = self.away + step if abs(new - self.air[0]) > self.s["air_jump_K"] and not first else 0.0
        taken = first or self.away > self.s["air_jump_stands_s"]
        self.air[0] += (new - self.air[0]) * (taken or (self.away == 0) * (1 - math.exp(-step / self.s["air_smoothing_s"])))
        self.air[1:] = [old if x is None else x for x, old in zip(air[1:], self.air[1:])]
    def follow_supply(self, step, volts):
        s, nominal = self.s, self.nominal
        if volts is None:
            self.supply = "off" if self.supply == "off" else "unseen"
        else:
            off = abs(volts) < (s["supply_off_share"] * nominal if nominal else s["supply_off_V"])
            jump = off or abs(volts - self.volts) > s["supply_jump_share"] * abs(self.volts)
            self.volts += (volts - self.volts) * (1 if jump else 1 - math.exp(-step / s["supply_smoothing_s"]))
            out = nominal and abs(abs(self.volts / nominal) - 1) > s["supply_tolerance"]
            self.supply = "off" if off else "out" if out else "good"
        if self.supply == "off" and (volts is None or not nominal):
            return 0.0
        return self.p["heating"] * ((self.volts / nominal) ** 2 if nominal and (self.volts or self.supply == "off") else 1.0)
    def look_at_noise(self, step, signal):
        s, calibrated, least = self.s, self.performance["noise"], self.s["noise_least_share"] * self.performance["still_signal"]
        self.recent.append((signal, step))
        self.since_look += 1
        if self.since_look >= s["noise_every"]:
            self.since_look, (y, steps) = 0, np.array(self.recent).T
            self.noise2, self.spread, self.least_step = max(least**2, calibrated**2), 0.0, 0.0
            if len(y) >= s["noise_fewest"]:
                bends = np.abs(y[1:-1] - (y[:-2] + y[2:]) / 2)[np.abs(steps[1:-1] - steps[2:]) < 0.2 * steps[2:]]
                self.spread = s["noise_median_factor"] * np.median(bends) / math.sqrt(1.5) if len(bends) else 0.0
                jumps = np.abs(np.diff(y))[np.abs(np.diff(y)) > 1e-9 * np.abs(y[1:])]
                self.least_step = jumps.min() if len(jumps) else 0.0
                bounded = min(self.spread, s["noise_trust"] * calibrated or np.inf)
                self.noise2 = max(least**2, bounded**2 + self.least_step**2 / 12)
    def begin(self, read, flow):
        s, self.x = self.s, np.tile([read, flow, read, self.s["first_ratio"]], (len(self.walks), 1))
        self.P = self.unit * [s["first_delta_variance_K2"], (s["first_flow_share"] * self.p["heating"]) ** 2,
                              s["first_delta_variance_K2"], s["first_ratio_variance"]]
        self.rows, self.S, self.miss = 0, self.none + 1, self.none
    def advance(self, step, heating):
        s, share = self.s, self.p["heater_share"]
        n = max(1, math.ceil(step / min(s["longest_step_s"], self.lag, self.heater)))
        h, Q = step / n, 0 * self.unit
        Q[:, 3, 3] = 0.5 * h * (self.walks * np.clip(self.x[:, 3], 1, s["greatest_ratio"])) ** 2
        Q[:, 0, 0] = 0.5 * h * s["model_noise_K2_s"]
        for _ in range(n):
            (delta, flow, bead, ratio), J = self.x.T, 0 * self.unit
            ratio = np.maximum(ratio, s["least_ratio"])
            still, more, less = self.loss(0.0, delta + np.array([[0.0], [1e-3], [-1e-3]]), *self.air)
            J[:, 0, 0] = -(still + delta * (more - less) / 2e-3) * ratio / (1 - share)
            J[:, 0, 1], J[:, 0, 3], J[:, 2, 0], J[:, 2, 2] = 1 / (1 - share), -still * delta / (1 - share), 1 / self.lag, -1 / self.lag
            J[:, 1] = -share / self.heater * J[:, 0]
            J[:, 1, 1] -= 1 / self.heater
            rate = (flow - still * ratio * delta) / (1 - share)
            r = h * np.stack([rate, (heating - flow - share * rate) / self.heater, (delta - bead) / self.lag, self.none], axis=1)
            power = phi = self.unit
            for k in range(1, int(s["series_terms"]) + 1):
                self.x, r, power = self.x + r, np.einsum("nij,nj->ni", h * J, r) / (k + 1), h * J @ power / k
                phi = phi + power
            self.P = phi @ (self.P + Q) @ phi.transpose(0, 2, 1) + Q
    def sensitivity(self, bead):
        return (self.signal(bead + 1e-3, self.warmer) - self.signal(bead - 1e-3, self.warmer)) / 2e-3
    def take(self, signal, read, warm, spike, switched):
        H, miss = self.sensitivity(self.x[:, 2]), signal - self.signal(self.x[:, 2], self.warmer)
        self.miss, self.S = (not spike) * miss, H * H * self.P[:, 2, 2] + self.noise2
        gain = 0 * self.x if spike else self.P[:, :, 2] * (H / self.S)[:, None]
        self.x, self.P = self.x + gain * self.miss[:, None], self.P - np.einsum("ni,nj,n->nij", gain, gain, self.S)
        self.rows = 0 if switched else self.rows + (not spike)
        if switched and warm:
            self.x[:, 3] = np.clip(self.x[:, 3], 1, 3)
            self.P = self.P + np.diag([0, (self.s["switched_flow_share"] * self.p["heating"]) ** 2, 0, self.s["switched_ratio_variance"]])
        elif switched:
            self.begin(read, 0.0)
    def weigh(self, step, fresh):
        s, z2, self.score = self.s, self.miss**2 / self.S, self.score * math.exp(-step / self.s["score_memory_s"])
        if fresh:
            self.drift = self.none
        elif self.rows > s["score_after_rows"]:
            self.score = self.score - 0.5 * (np.log(self.S) + np.minimum(z2, s["score_clip"]))
            self.kept = np.where(np.abs(self.drift) < 1, self.score, self.kept)
            self.usual = self.usual + (np.minimum(z2, s["usual_clip"]) - self.usual) / s["usual_rows"]
            self.drift = s["drift_keep"] * self.drift + math.sqrt(1 - s["drift_keep"] ** 2) * self.miss / np.sqrt(self.S)
            jumped = np.abs(self.drift) > s["drift_sure"] * np.maximum(1, np.sqrt(self.usual))
            self.room, self.drift = jumped * (s["jump_share"] * np.maximum(1, self.x[:, 3])) ** 2, ~jumped * self.drift
            self.score = np.where(jumped, np.maximum(self.score, self.kept - s["jump_cost"]), self.score)
        for i in range(len(self.walks)):
            self.chosen = i if self.score[i] > self.score[self.chosen] + s["switch_margin"] else self.chosen
    def tell(self, read, signal, kind, unsettled):
        s, (self.delta, self.flow, bead, ratio), p44 = self.s, self.x[self.chosen], self.P[self.chosen, 3, 3]
        self.V, self.L, self.shown = p44 / max(ratio, s["least_ratio"]) ** 2, math.log(min(max(ratio, 0.3), 50)), min(self.delta, bead)
        self.delta = max(self.delta, s["least_shown_K"])
        self.still, away = float(self.loss(0.0, self.delta, *self.air)), math.sqrt(3 * self.V)
        loss, U = self.still * math.exp(self.L), lambda loss: float(self.speed(loss, self.delta, *self.air))
        bends = self.V >= s["least_bend_variance"] and self.L >= s["still_away"] * away
        self.U = U(loss) + bends * (U(loss * max(0, 1 - away)) - 2 * U(loss) + U(loss * (1 + away))) / 6
        return [f"{self.U:.5f}", ""]

def number(cells, at):
    try:
        return float(cells[at])
    except (ValueError, IndexError, TypeError):
        return None

def convert(live, unit, lines, out):
    head = None
    for line in (line.rstrip("\r\n").lstrip("\ufeff") for line in lines):
        cells = next(csv.reader([line]), [])
        if head is None and line.startswith("#"):
            out.write(line + "\n" if line.startswith("# start:") else "")
        elif head is None:
            head = {name.strip(): at for at, name in enumerate(cells)}
            if not {"time_s", unit} <= set(head):
                sys.exit("the log needs the columns time_s and " + unit)
            out.write(",".join([line] + live.columns) + "\n")
        elif line:
            time, signal, volts, *air = (number(cells, head.get(name)) for name in ["time_s", unit, "supply_V", *AIR])
            out.write(",".join([line] + live.row(time, signal, air, volts)) + "\n")
            out.flush()

if __name__ == "__main__":
    np.seterr(all="ignore")
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    given, log = json.load(open(sys.argv[1], encoding="utf-8")), sys.argv[2]
    convert(LiveFilter(given), given["signal_unit"], sys.stdin if log == "-" else open(log, encoding="utf-8"), sys.stdout)
