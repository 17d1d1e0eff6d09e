@about@
#
# On the board: copy this file there as faintwind.py, then
#
#   import faintwind
#   f = faintwind.Faintwind()
#   speed_m_s, u95_m_s, flags = f.row(time_s, signal, air_C, supply_V)     None where air or supply is not recorded
#
# signal is in @unit@, as recorded. f.pressure_hPa and f.rh_pct may be set at any time. Elsewhere: micropython FILE LOG.csv,
# or python3 FILE LOG.csv; with --check the calibration's test vectors are worked out.
# It follows docs/formats/calibration.md with these shortcuts: the loss of still air by a parabola about the difference, five rounds
# of Newton's method, and the calibration's share of the uncertainty by a table over the speed, at rest.
# Against faintwind convert of a stream, on the demonstration's log: median below 0.1 % (0.2 % on a board whose floats are single),
# largest below 1 % of the rows without a flag after the first minute.
import math

@constants@
COLUMN = "@column@"
WALKS = (@walks@)
U_SPEED = (@u_speed@)  # ln of speed, m/s
U_LOSS = (@u_loss@)  # relative standard uncertainty of the loss, by the calibration
VECTORS = (
    @vectors@)


def square(x):
    return x * x


def cube(x):
    return x * x * x


def power(x, exponent):
    return x ** exponent if x > 0 else 0.0


def median(values):
    v = sorted(values)
    n = len(v)
    return v[n // 2] if n % 2 else (v[n // 2 - 1] + v[n // 2]) / 2


@functions@

def air_of(air_c, pressure, humidity):
    kelvin = air_K(air_c)
    nu = nu_300(air_c, pressure, humidity)
    return kelvin, nu, nu_air(kelvin, nu)


def loss(speed, delta, air):
    return loss_1_s(speed, delta, air[0], air[1], air[2])


def speed(loss_there, delta, air):
    u = speed_m_s(loss_there, delta, air[0], air[1], air[2]) if loss_there > 0 else 0.0
    return u if u > 1e-12 else 0.0


def sensitivity(bead, warmer):
    d = bead + warmer
    return SIGNAL_PER_K * (1 + d * (SENSITIVITY_SLOPE + d * SENSITIVITY_BEND))


def formula(signal, rate, air_c, pressure, humidity, supply_v):
    air = air_of(air_c, pressure, humidity)
    bead = bead_K(signal, air[0])
    ratio = supply_v / NOMINAL_SUPPLY_V if HAS_SUPPLY and supply_v is not None else 1.0
    bead_rate = rate / sensitivity(bead, air[0] - REFERENCE_K)
    delta = bead + BEAD_TIME * bead_rate
    return speed((HEATING * ratio * ratio - bead_rate) / delta, delta, air)


def times(a, b):
    return [[r[0] * b[0][j] + r[1] * b[1][j] + r[2] * b[2][j] + r[3] * b[3][j] for j in range(4)] for r in a]


def unit():
    return [[1.0 if i == j else 0.0 for j in range(4)] for i in range(4)]


class Walk:
    """One filter, with its own strength of the walk of the loss."""

    def __init__(self, strength):
        self.strength = strength
        self.score = self.kept = self.drift = self.room = self.miss = 0.0
        self.usual = self.s = 1.0
        self.x, self.p = [0.0] * 4, unit()

    def begin(self, read, flow):
        self.x = [read, flow, read, FIRST_RATIO]
        self.p = [[0.0] * 4 for _ in range(4)]
        self.p[0][0] = self.p[2][2] = FIRST_DELTA_VARIANCE_K2
        self.p[1][1] = (FIRST_FLOW_SHARE * HEATING) ** 2
        self.p[3][3] = FIRST_RATIO_VARIANCE
        self.s, self.miss = 1.0, 0.0

    def part(self, h, heating, still, slope, q, m):
        x, p, s, back = self.x, self.p, 1 - HEATER_SHARE, HEATER_SHARE / HEATER_LAG
        ratio = max(x[3], LEAST_RATIO)
        j0 = [-h * (still + x[0] * slope) * ratio / s, h / s, 0.0, -h * still * x[0] / s]
        j1 = [-back * j for j in j0]
        j1[1] -= h / HEATER_LAG
        jacobian = [j0, j1, [h / BEAD_LAG, 0.0, -h / BEAD_LAG, 0.0], [0.0] * 4]
        r0 = h * (x[1] - still * ratio * x[0]) / s
        r = [r0, h * (heating - x[1]) / HEATER_LAG - back * r0, h * (x[0] - x[2]) / BEAD_LAG]
        phi, term = unit(), unit()
        for k in range(1, int(SERIES_TERMS) + 1):
            for i in range(3):
                x[i] += r[i]
            r = [(jacobian[i][0] * r[0] + jacobian[i][1] * r[1] + jacobian[i][2] * r[2]) / (k + 1) for i in range(3)]
            term = [[value / k for value in row] for row in times(jacobian, term)]
            phi = [[phi[i][j] + term[i][j] for j in range(4)] for i in range(4)]
        p[3][3] += q
        p[0][0] += m
        half = times(phi, p)
        self.p = times(half, [[phi[j][i] for j in range(4)] for i in range(4)])
        self.p[3][3] += q
        self.p[0][0] += m

    def take(self, signal, warmer, noise2, spike):
        bead, p = self.x[2], self.p
        slope = sensitivity(bead, warmer)
        self.s = slope * slope * p[2][2] + noise2
        self.miss = 0.0 if spike else signal - signal_of(bead, warmer)
        if not spike:
            gain = [p[i][2] * slope / self.s for i in range(4)]
            for i in range(4):
                self.x[i] += gain[i] * self.miss
            for i in range(4):
                for j in range(4):
                    p[i][j] -= gain[i] * gain[j] * self.s

    def weigh(self, rows, fresh):
        if fresh:
            self.drift = 0.0
        elif rows > SCORE_AFTER_ROWS:
            z2 = self.miss * self.miss / self.s
            self.score -= 0.5 * (math.log(self.s) + min(z2, SCORE_CLIP))
            if abs(self.drift) < 1:
                self.kept = self.score
            self.usual += (min(z2, USUAL_CLIP) - self.usual) / USUAL_ROWS
            self.drift = DRIFT_KEEP * self.drift + math.sqrt(1 - DRIFT_KEEP * DRIFT_KEEP) * self.miss / math.sqrt(self.s)
            if abs(self.drift) > DRIFT_SURE * max(1.0, math.sqrt(self.usual)):
                self.room = (JUMP_SHARE * max(1.0, self.x[3])) ** 2
                self.score = max(self.score, self.kept - JUMP_COST)
                self.drift = 0.0


class Faintwind:
    """Give it a log's rows one after the other."""

    def __init__(self):
        self.walks = [Walk(strength) for strength in WALKS]
        self.chosen, self.time, self.lost = int(FIRST_WALK), None, 0.0
        self.air_c, self.pressure_hPa, self.rh_pct, self.away, self.air_seen = AIR_C, PRESSURE_HPA, RH_PCT, 0.0, False
        self.volts, self.supply, self.since_signal, self.spikes = 0.0, "unseen", 0.0, 0
        self.steps, self.step_count, self.usual_step = [0.0] * int(STEP_ROWS), 0, 0.0
        self.recent, self.since_look, self.noise2, self.hidden = [], int(NOISE_EVERY), 0.0, 0.0
        self.rows, self.since_begin, self.settled, self.gap_open, self.before_gap, self.last_v = 0, 0.0, False, False, 1.0, 1.0

    def row(self, time, signal, air_c=None, supply_v=None):
        if time is None or signal is None or signal != signal or (self.time is not None and time <= self.time):
            return None, None, "bad"
        first = self.time is None
        step = 0.0 if first else time - self.time
        self.time = time
        kind = "first" if first else self.kind(step, signal)
        self.follow_air(first, step, air_c)
        was_off = self.supply == "off"
        heating = self.follow_supply(step, supply_v)
        changed = not first and was_off != (self.supply == "off")
        air = air_of(self.air_c, self.pressure_hPa, self.rh_pct)
        read, warmer = bead_K(signal, air[0]), air[0] - REFERENCE_K
        warm = read > RESUME_SHARE * STILL_DELTA_K
        if kind != "spike":
            self.last_signal, self.last_delta, self.since_signal = signal, abs(read), 0.0
        self.look_at_noise(step, signal)
        fresh = anew = kind in ("first", "long gap")
        if anew:
            self.begin(read, heating if warm else 0.0)
        else:
            self.advance(step, heating, air)
            for walk in self.walks:
                walk.take(signal, warmer, self.noise2, kind == "spike")
            self.rows = 0 if changed else self.rows + (kind != "spike")
            if changed and warm:
                for walk in self.walks:
                    walk.x[3] = max(1.0, min(3.0, walk.x[3]))
                    walk.p[1][1] += (SWITCHED_FLOW_SHARE * HEATING) ** 2
                    walk.p[3][3] += SWITCHED_RATIO_VARIANCE
            elif changed:
                self.begin(read, 0.0)
                fresh = True
        self.weigh(step, fresh or self.supply == "off")
        unsettled = anew or changed or self.supply == "off"
        self.since_begin = 0.0 if unsettled else self.since_begin + step
        self.settled = self.settled and not unsettled
        return self.tell(signal, air, "gap" in kind)

    def begin(self, read, flow):
        self.rows = 0
        for walk in self.walks:
            walk.begin(read, flow)

    def kind(self, step, signal):
        gap = self.step_count >= STEP_NEEDED and step > max(LEAST_GAP_S, GAP_STEPS * self.usual_step)
        size = len(self.steps)
        self.since_signal += step
        if not gap:
            self.steps[self.step_count % size] = step
            self.step_count += 1
            if self.step_count <= size or self.step_count % size == 0:
                self.usual_step = median(self.steps[:min(self.step_count, size)])
        possible = (2 * HEATING + GREATEST_LOSS_1_S * self.last_delta) * self.since_signal
        allowed = abs(SIGNAL_PER_K) * possible * SPIKE_ALLOWANCE + SPIKE_NOISES * NOISE
        wild = abs(signal - self.last_signal) > allowed and self.spikes < SPIKES_IN_A_ROW and step <= LONG_GAP_S
        accepted = self.spikes >= SPIKES_IN_A_ROW
        self.spikes = self.spikes + 1 if wild else 0
        return "long gap" if step > LONG_GAP_S else "spike" if wild else "gap" if gap or accepted else "usual"

    def follow_air(self, first, step, air_c):
        read = self.air_c if air_c is None else air_c
        self.air_seen = self.air_seen or air_c is not None
        self.away = self.away + step if not first and abs(read - self.air_c) > AIR_JUMP_K else 0.0
        if first or self.away > AIR_JUMP_STANDS_S:
            self.air_c = read
        elif self.away == 0:
            self.air_c += (read - self.air_c) * (1 - math.exp(-step / AIR_SMOOTHING_S))

    def follow_supply(self, step, volts):
        if volts is None:
            self.supply = "off" if self.supply == "off" else "unseen"
        else:
            off = abs(volts) < (SUPPLY_OFF_SHARE * NOMINAL_SUPPLY_V if HAS_SUPPLY else SUPPLY_OFF_V)
            jump = off or abs(volts - self.volts) > SUPPLY_JUMP_SHARE * abs(self.volts)
            self.volts += (volts - self.volts) * (1.0 if jump else 1 - math.exp(-step / SUPPLY_SMOOTHING_S))
            out = HAS_SUPPLY and abs(abs(self.volts / NOMINAL_SUPPLY_V) - 1) > SUPPLY_TOLERANCE
            self.supply = "off" if off else "out" if out else "good"
        if self.supply == "off" and (volts is None or not HAS_SUPPLY):
            return 0.0
        return HEATING * ((self.volts / NOMINAL_SUPPLY_V) ** 2 if HAS_SUPPLY and (self.volts or self.supply == "off") else 1.0)

    def look_at_noise(self, step, signal):
        self.recent.append((signal, step))
        if len(self.recent) > NOISE_ROWS:
            self.recent.pop(0)
        self.since_look += 1
        if self.since_look < NOISE_EVERY:
            return
        self.since_look, self.hidden = 0, 0.0
        r, least = self.recent, abs(NOISE_LEAST_SHARE * STILL_SIGNAL)
        self.noise2 = max(least, NOISE) ** 2
        if len(r) < NOISE_FEWEST:
            return
        bends = [abs(r[i][0] - (r[i - 1][0] + r[i + 1][0]) / 2) for i in range(1, len(r) - 1)
                 if abs(r[i][1] - r[i + 1][1]) < 0.2 * r[i + 1][1]]
        jumps = [abs(r[i][0] - r[i - 1][0]) for i in range(1, len(r))]
        jumps = [jump for i, jump in enumerate(jumps) if jump > 2e-7 * abs(r[i + 1][0])]
        spread = NOISE_MEDIAN_FACTOR * median(bends) / math.sqrt(1.5) if bends else 0.0
        resolution = min(jumps) if jumps else 0.0
        bounded = min(spread, NOISE_TRUST * NOISE) if NOISE > 0 else spread
        self.noise2 = max(least * least, bounded * bounded + resolution * resolution / 12)
        if resolution > 0:
            self.hidden = resolution / 4.4428829 * math.exp(-19.739209 * min(4.0, (spread / resolution) ** 2))

    def still_about(self, delta, air):
        d = max(delta, 1.5)
        low, middle, high = loss(0.0, d - 1, air), loss(0.0, d, air), loss(0.0, d + 1, air)
        self.parabola = d, middle, (high - low) / 2, (high - 2 * middle + low) / 2

    def still(self, delta, air):
        if abs(delta - self.parabola[0]) > 2:
            if delta < 2:  # the parabola is no good near zero
                return loss(0.0, delta, air), (loss(0.0, delta + 0.05, air) - loss(0.0, delta - 0.05, air)) / 0.1
            self.still_about(delta, air)
        d0, value, slope, bend = self.parabola
        d = delta - d0
        return value + d * (slope + d * bend), slope + 2 * bend * d

    def advance(self, step, heating, air):
        longest = min(LONGEST_STEP_S, BEAD_LAG, HEATER_LAG)
        n = max(1, int(math.ceil(step / longest)))
        h = step / n
        self.still_about(self.walks[self.chosen].x[0], air)
        for walk in self.walks:
            q = 0.5 * h * (walk.strength * max(1.0, min(GREATEST_RATIO, walk.x[3]))) ** 2
            walk.p[3][3] += walk.room
            for _ in range(n):
                still, slope = self.still(walk.x[0], air)
                walk.part(h, heating, still, slope, q, 0.5 * h * MODEL_NOISE_K2_S)

    def weigh(self, step, fresh):
        # scores are kept less that of the strength that speaks, self.lost, so that single floats are fine enough
        fade = math.exp(-step / SCORE_MEMORY_S)
        for walk in self.walks:
            walk.score *= fade
            walk.kept += self.lost * (1 - fade)
            walk.room = 0.0
            walk.weigh(self.rows, fresh)
        self.lost *= fade
        for i, walk in enumerate(self.walks):
            if walk.score > self.walks[self.chosen].score + SWITCH_MARGIN:
                self.chosen = i
        shift = self.walks[self.chosen].score
        self.lost += shift
        for walk in self.walks:
            walk.score -= shift
            walk.kept -= shift

    def calibration_part(self, u):
        x, i = math.log(u), 1
        while i < len(U_SPEED) - 1 and U_SPEED[i] < x:
            i += 1
        share = max(0.0, min(1.0, (x - U_SPEED[i - 1]) / (U_SPEED[i] - U_SPEED[i - 1])))
        return U_LOSS[i - 1] + share * (U_LOSS[i] - U_LOSS[i - 1])

    def air_part(self, signal, delta, still, air):
        hot = air_of(self.air_c + U_AIR_UNRECORDED_K, self.pressure_hPa, self.rh_pct)
        read, there = bead_K(signal, air[0]), bead_K(signal, hot[0])
        change = math.log(loss(0.0, delta, hot) / still)
        return change + (0.0 if abs(read) < 0.1 or read * there <= 0 else math.log(there / read))

    def tell(self, signal, air, gap):
        walk = self.walks[self.chosen]
        x, v = walk.x, walk.p[3][3] / max(walk.x[3], LEAST_RATIO) ** 2
        delta, ratio = max(x[0], LEAST_SHOWN_K), max(0.3, min(50.0, x[3]))
        ln_ratio, still = math.log(ratio), loss(0.0, delta, air)
        lost, away = still * ratio, math.sqrt(max(0.0, 3 * v))
        u = speed(lost, delta, air)
        if v >= LEAST_BEND_VARIANCE and ln_ratio >= STILL_AWAY * away:
            u += (speed(lost * max(0.0, 1 - away), delta, air) - 2 * u + speed(lost * (1 + away), delta, air)) / 6
        at, share = max(u, LEAST_SLOPE_SPEED_M_S), max(0.0, min(3.0, x[1] / (lost * delta)))
        slope = loss(at, delta, air) * 0.02 * at / (loss(1.01 * at, delta, air) - loss(0.99 * at, delta, air))
        u2 = self.calibration_part(at) ** 2 + v + (U_STILL / max(1.0, ratio)) ** 2
        u2 += (self.hidden / sensitivity(delta, air[0] - REFERENCE_K) / delta) ** 2
        if self.supply == "unseen":
            u2 += (U_HEATING_UNSEEN * share) ** 2
        if not self.air_seen:
            u2 += self.air_part(signal, delta, still, air) ** 2
        wide = COVERAGE_FACTOR * math.sqrt(max(0.0, u2))
        side = wide * slope
        if side >= NEARLY_STRAIGHT * u:
            side = max(speed(still * math.exp(max(0.0, ln_ratio) + wide), delta, air) - u,
                       u - speed(still * math.exp(ln_ratio - wide), delta, air))
        mixed = GRAVITY * delta * BALL_DIAMETER_M / ((air[0] + delta / 2) * u * u) if u > 0 else 0.0
        direction = DIRECTION_SHARE * mixed / (1 + mixed) * u if mixed > DIRECTION_FROM else 0.0
        self.settled = self.settled or v < SETTLED_VARIANCE or self.since_begin > SURELY_SETTLED_S
        if gap and not self.gap_open:
            self.before_gap = self.last_v
        self.gap_open = gap or (self.gap_open and v > GAP_VARIANCE_RATIO * self.before_gap)
        self.last_v = v
        cold = min(x[0], x[2]) < WARM_SHARE * STILL_DELTA_K
        flags = (("floor", u < FLOOR_M_S or ln_ratio <= wide), ("above", u > TOP_M_S), ("warmup", cold or not self.settled),
                 ("gap", self.gap_open), ("power", self.supply in ("off", "out")))
        return u, math.sqrt(side * side + direction * direction), "+".join([flag for flag, on in flags if on])


def check():
    return max([abs(formula(v[0], v[1], v[2], v[3], v[4], v[5]) / v[6] - 1) for v in VECTORS])


def number(cells, at):
    try:
        return float(cells[at]) if at is not None else None
    except (ValueError, IndexError):
        return None


class Log:
    """Gives a log back line by line, with speed, uncertainty and flag after the header."""

    def __init__(self):
        self.f, self.head = Faintwind(), None

    def line(self, line):
        line = line.rstrip("\r\n")
        cells = line.split(",")
        if not line or (self.head is None and line.startswith("#")):
            return line if line.startswith("# start:") else None
        if self.head is None:
            self.head = {}
            for at, name in enumerate(cells):
                self.head[name.strip()] = at
            return line + ",speed_m_s,u95_m_s,flag"
        f, names = self.f, ("time_s", COLUMN, "air_C", "supply_V", "pressure_hPa", "rh_pct")
        values = [number(cells, self.head.get(name)) for name in names]
        f.pressure_hPa = f.pressure_hPa if values[4] is None else values[4]
        f.rh_pct = f.rh_pct if values[5] is None else values[5]
        u, u95, flags = f.row(values[0], values[1], values[2], values[3])
        return line + (",,," if u is None else ",%.5f,%.5f," % (u, u95)) + flags


if __name__ == "__main__":
    import sys
    if len(sys.argv) > 1 and sys.argv[1] == "--check":
        print("largest difference from the test vectors: %.5f %%" % (100 * check()))
    elif len(sys.argv) > 1:
        speeds = Log()
        with open(sys.argv[1]) as log:
            for row in log:
                text = speeds.line(row)
                if text is not None:
                    print(text)
