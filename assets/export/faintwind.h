/*
@about@
 *
 * In one file of the program:  #define FAINTWIND_IMPLEMENTATION  before  #include "@file@".
 * Then, with float rows of your logger:
 *
 *   static faintwind f;
 *   faintwind_begin(&f);
 *   faintwind_speed s = faintwind_row(&f, step_s, signal, air_C, supply_V);
 *
 * step_s is the time since the last row, signal is in @unit@; FAINTWIND_UNKNOWN where air or supply is not recorded.
 * f.pressure_hPa and f.rh_pct may be set at any time. No heap; of libm only sqrtf, expf, logf and powf.
 *
 * As a program of its own:  cc -O2 -DFAINTWIND_MAIN -x c @file@ -lm -o f && ./f < LOG.csv   (./f --check: test vectors)
 *
 * It follows docs/formats/calibration.md with these shortcuts: the loss of still air by a parabola about the difference,
 * five rounds of Newton's method, and the calibration's share of the uncertainty by a table over the speed, at rest.
 * Size: @state_bytes@ bytes of state, @table_bytes@ bytes of tables. Against the double-precision formula over the calibrated speeds, at
 * rest and changing, the float formula is off by at most @float_error@ of the speed. Against `faintwind convert` of a stream, on the
 * demonstration's log: median below 0.2 %, largest below 1 % of the rows without a flag after the first minute.
 */
#ifndef FAINTWIND_H
#define FAINTWIND_H

enum { FAINTWIND_FLOOR = 1, FAINTWIND_ABOVE = 2, FAINTWIND_WARMUP = 4, FAINTWIND_GAP = 8, FAINTWIND_POWER = 16, FAINTWIND_BAD = 32 };
enum { FW_WALKS = @walks_count@, FW_NOISE_SIZE = @noise_rows_count@, FW_STEP_SIZE = @step_rows_count@ };
#define FAINTWIND_UNKNOWN (1e30f)

typedef struct { float speed_m_s, u95_m_s; unsigned flags; } faintwind_speed;

typedef struct {
  float x[FW_WALKS][4], P[FW_WALKS][4][4];
  float score[FW_WALKS], kept[FW_WALKS], drift[FW_WALKS], room[FW_WALKS], usual[FW_WALKS], miss[FW_WALKS], S[FW_WALKS];
  float lost, air_C, pressure_hPa, rh_pct, away, volts, since_signal, last_signal, last_delta, usual_step;
  float noise2, hidden, since_begin, before_gap, last_v, still[4];
  float signals[FW_NOISE_SIZE], noise_steps[FW_NOISE_SIZE], steps[FW_STEP_SIZE], sorted[FW_NOISE_SIZE];
  int noise_count, since_look, step_count, rows, spikes, chosen, supply, air_seen, begun, settled, gap_open;
} faintwind;

void faintwind_begin(faintwind *f);
faintwind_speed faintwind_row(faintwind *f, float step_s, float signal, float air_C, float supply_V);
float faintwind_formula(float signal, float rate, float air_C, float pressure_hPa, float rh_pct, float supply_V);

#if defined(FAINTWIND_IMPLEMENTATION) || defined(FAINTWIND_MAIN)
#include <math.h>

@constants@
static const float fw_walks[FW_WALKS] = {@walks@};
static const float fw_u_speed[@u_count@] = {@u_speed@}; /* ln of speed, m/s */
static const float fw_u_loss[@u_count@] = {@u_loss@}; /* relative standard uncertainty of the loss, by the calibration */
enum { FW_NO_SUPPLY, FW_GOOD, FW_OUT, FW_OFF };
enum { FW_USUAL, FW_GAP, FW_SPIKE, FW_LONG_GAP };

typedef struct { float air_K, nu_300, nu_air; } fw_air;

static float fw_max(float a, float b) { return a > b ? a : b; }
static float fw_min(float a, float b) { return a < b ? a : b; }
static float fw_abs(float a) { return a < 0 ? -a : a; }
static float fw_square(float a) { return a * a; }
static float fw_cube(float a) { return a * a * a; }
static float fw_pow(float a, float b) { return a > 0 ? powf(a, b) : 0; }

@functions@
static fw_air fw_air_of(float air_C, float pressure_hPa, float rh_pct) {
  fw_air a;
  a.air_K = fw_air_K(air_C);
  a.nu_300 = fw_nu_300(air_C, pressure_hPa, rh_pct);
  a.nu_air = fw_nu_air(a.air_K, a.nu_300);
  return a;
}

static float fw_loss(float speed, float delta, fw_air a) { return fw_loss_1_s(speed, delta, a.air_K, a.nu_300, a.nu_air); }
static float fw_speed(float loss, float delta, fw_air a) {
  float speed = loss > 0 ? fw_speed_m_s(loss, delta, a.air_K, a.nu_300, a.nu_air) : 0;
  return speed > 1e-12f ? speed : 0;
}
static float fw_sensitivity(float bead, float warmer) {
  return FW_SIGNAL_PER_K * (1 + (warmer + bead) * (FW_SENSITIVITY_SLOPE + (warmer + bead) * FW_SENSITIVITY_BEND));
}

float faintwind_formula(float signal, float rate, float air_C, float pressure_hPa, float rh_pct, float supply_V) {
  fw_air a = fw_air_of(air_C, pressure_hPa, rh_pct);
  float bead = fw_bead_K(signal, a.air_K), warmer = a.air_K - FW_REFERENCE_K;
  float ratio = FW_HAS_SUPPLY && supply_V < FAINTWIND_UNKNOWN ? supply_V / FW_NOMINAL_SUPPLY_V : 1;
  float bead_rate = rate / fw_sensitivity(bead, warmer), delta = bead + FW_BEAD_TIME * bead_rate;
  return fw_speed((FW_HEATING * ratio * ratio - bead_rate) / delta, delta, a);
}

/* loss of still air about a difference: still[0] its place, then value, slope and half the bend */
static void fw_still_about(faintwind *f, float delta, fw_air a) {
  float low, high, d = fw_max(delta, 1.5f);
  f->still[0] = d;
  low = fw_loss(0, d - 1, a), f->still[1] = fw_loss(0, d, a), high = fw_loss(0, d + 1, a);
  f->still[2] = (high - low) / 2;
  f->still[3] = (high - 2 * f->still[1] + low) / 2;
}
static float fw_still(faintwind *f, float delta, fw_air a, float *slope) {
  float d = delta - f->still[0];
  if (d < -2 || d > 2) {
    if (delta < 2) { /* the parabola is no good near zero */
      *slope = (fw_loss(0, delta + 0.05f, a) - fw_loss(0, delta - 0.05f, a)) / 0.1f;
      return fw_loss(0, delta, a);
    }
    fw_still_about(f, delta, a);
    d = delta - f->still[0];
  }
  *slope = f->still[2] + 2 * f->still[3] * d;
  return f->still[1] + d * (f->still[2] + d * f->still[3]);
}

void faintwind_begin(faintwind *f) {
  static const faintwind none;
  int i;
  *f = none;
  f->air_C = FW_AIR_C, f->pressure_hPa = FW_PRESSURE_HPA, f->rh_pct = FW_RH_PCT;
  for (i = 0; i < FW_WALKS; i++) f->usual[i] = 1;
  f->chosen = (int)FW_FIRST_WALK, f->since_look = (int)FW_NOISE_EVERY, f->before_gap = f->last_v = 1;
}

static void fw_start(faintwind *f, float read, float flow) {
  int i, j, k;
  for (i = 0; i < FW_WALKS; i++) {
    for (j = 0; j < 4; j++)
      for (k = 0; k < 4; k++) f->P[i][j][k] = 0;
    f->x[i][0] = f->x[i][2] = read, f->x[i][1] = flow, f->x[i][3] = FW_FIRST_RATIO;
    f->P[i][0][0] = f->P[i][2][2] = FW_FIRST_DELTA_VARIANCE_K2;
    f->P[i][1][1] = FW_FIRST_FLOW_SHARE * FW_HEATING * FW_FIRST_FLOW_SHARE * FW_HEATING;
    f->P[i][3][3] = FW_FIRST_RATIO_VARIANCE;
    f->S[i] = 1, f->miss[i] = 0;
  }
  f->rows = 0;
}

static float fw_median(float *v, int n) { /* sorts v */
  int i, j;
  for (i = 1; i < n; i++) {
    float x = v[i];
    for (j = i; j > 0 && v[j - 1] > x; j--) v[j] = v[j - 1];
    v[j] = x;
  }
  return n % 2 ? v[n / 2] : (v[n / 2 - 1] + v[n / 2]) / 2;
}

static void fw_noise(faintwind *f, float step, float signal) {
  float least = FW_NOISE_LEAST_SHARE * FW_STILL_SIGNAL, spread = 0, resolution = 0, bound;
  int i, n, found = 0, at = f->noise_count++ % FW_NOISE_SIZE;
  if (f->noise_count == 2 * FW_NOISE_SIZE) f->noise_count = FW_NOISE_SIZE;
  f->signals[at] = signal, f->noise_steps[at] = step;
  if (++f->since_look < (int)FW_NOISE_EVERY) return;
  f->since_look = 0, f->hidden = 0;
  n = f->noise_count < FW_NOISE_SIZE ? f->noise_count : FW_NOISE_SIZE;
  bound = fw_max(fw_abs(least), FW_NOISE);
  f->noise2 = bound * bound;
  if (n < (int)FW_NOISE_FEWEST) return;
  for (i = 1; i < n; i++) {
    int first = f->noise_count - n + i;
    float y0 = f->signals[(first - 1) % FW_NOISE_SIZE], y1 = f->signals[first % FW_NOISE_SIZE], jump = fw_abs(y1 - y0);
    if (jump > 2e-7f * fw_abs(y1) && (resolution == 0 || jump < resolution)) resolution = jump;
    if (i + 1 < n) {
      float y2 = f->signals[(first + 1) % FW_NOISE_SIZE], s1 = f->noise_steps[first % FW_NOISE_SIZE];
      float s2 = f->noise_steps[(first + 1) % FW_NOISE_SIZE];
      if (fw_abs(s1 - s2) < 0.2f * s2) f->sorted[found++] = fw_abs(y1 - (y0 + y2) / 2);
    }
  }
  if (found > 0) spread = FW_NOISE_MEDIAN_FACTOR * fw_median(f->sorted, found) / sqrtf(1.5f);
  bound = FW_NOISE > 0 ? fw_min(spread, FW_NOISE_TRUST * FW_NOISE) : spread;
  f->noise2 = fw_max(least * least, bound * bound + resolution * resolution / 12);
  if (resolution > 0)
    f->hidden = resolution / 4.4428829f * expf(-19.739209f * fw_min(4, spread / resolution * (spread / resolution)));
}

static int fw_kind(faintwind *f, float step, float signal) {
  float possible, allowed;
  int gap = f->step_count >= (int)FW_STEP_NEEDED && step > fw_max(FW_LEAST_GAP_S, FW_GAP_STEPS * f->usual_step), wild, accepted;
  f->since_signal += step;
  if (!gap) {
    int i, n;
    f->steps[f->step_count++ % FW_STEP_SIZE] = step;
    if (f->step_count > 2 * FW_STEP_SIZE) f->step_count = FW_STEP_SIZE + 1;
    n = f->step_count < FW_STEP_SIZE ? f->step_count : FW_STEP_SIZE;
    if (f->step_count <= FW_STEP_SIZE || f->step_count % FW_STEP_SIZE == 0) {
      for (i = 0; i < n; i++) f->sorted[i] = f->steps[i];
      f->usual_step = fw_median(f->sorted, n);
    }
  }
  possible = (2 * FW_HEATING + FW_GREATEST_LOSS_1_S * f->last_delta) * f->since_signal;
  allowed = fw_abs(FW_SIGNAL_PER_K) * possible * FW_SPIKE_ALLOWANCE + FW_SPIKE_NOISES * FW_NOISE;
  wild = fw_abs(signal - f->last_signal) > allowed && f->spikes < (int)FW_SPIKES_IN_A_ROW && step <= FW_LONG_GAP_S;
  accepted = f->spikes >= (int)FW_SPIKES_IN_A_ROW;
  f->spikes = wild ? f->spikes + 1 : 0;
  return step > FW_LONG_GAP_S ? FW_LONG_GAP : wild ? FW_SPIKE : gap || accepted ? FW_GAP : FW_USUAL;
}

static void fw_follow_air(faintwind *f, int first, float step, float air_C) {
  float read = air_C < FAINTWIND_UNKNOWN ? air_C : f->air_C;
  if (air_C < FAINTWIND_UNKNOWN) f->air_seen = 1;
  f->away = !first && fw_abs(read - f->air_C) > FW_AIR_JUMP_K ? f->away + step : 0;
  if (first || f->away > FW_AIR_JUMP_STANDS_S) f->air_C = read;
  else if (f->away == 0) f->air_C += (read - f->air_C) * (1 - expf(-step / FW_AIR_SMOOTHING_S));
}

static float fw_follow_supply(faintwind *f, float step, float volts) { /* the heating */
  float ratio;
  if (!(volts < FAINTWIND_UNKNOWN)) {
    f->supply = f->supply == FW_OFF ? FW_OFF : FW_NO_SUPPLY;
    if (f->supply == FW_OFF) return 0;
  } else {
    int off = fw_abs(volts) < (FW_HAS_SUPPLY ? FW_SUPPLY_OFF_SHARE * FW_NOMINAL_SUPPLY_V : FW_SUPPLY_OFF_V);
    int jump = off || fw_abs(volts - f->volts) > FW_SUPPLY_JUMP_SHARE * fw_abs(f->volts);
    f->volts += (volts - f->volts) * (jump ? 1 : 1 - expf(-step / FW_SUPPLY_SMOOTHING_S));
    ratio = fw_abs(f->volts / FW_NOMINAL_SUPPLY_V);
    f->supply = off ? FW_OFF : FW_HAS_SUPPLY && fw_abs(ratio - 1) > FW_SUPPLY_TOLERANCE ? FW_OUT : FW_GOOD;
    if (off && !FW_HAS_SUPPLY) return 0;
  }
  ratio = FW_HAS_SUPPLY && (f->volts != 0 || f->supply == FW_OFF) ? f->volts / FW_NOMINAL_SUPPLY_V : 1;
  return FW_HEATING * ratio * ratio;
}

static void fw_times(float a[4][4], float b[4][4], float out[4][4]) {
  int i, j;
  for (i = 0; i < 4; i++)
    for (j = 0; j < 4; j++) out[i][j] = a[i][0] * b[0][j] + a[i][1] * b[1][j] + a[i][2] * b[2][j] + a[i][3] * b[3][j];
}

static void fw_part(faintwind *f, int w, float h, float heating, fw_air a, float q, float m) {
  float J[4][4], power[4][4], phi[4][4], next[4][4], r[4], t[4], *x = f->x[w], slope, back = FW_HEATER_SHARE / FW_HEATER_LAG;
  float still = fw_still(f, x[0], a, &slope), ratio = fw_max(x[3], FW_LEAST_RATIO), s = 1 - FW_HEATER_SHARE;
  int i, j, k;
  J[0][0] = -h * (still + x[0] * slope) * ratio / s, J[0][1] = h / s, J[0][2] = 0, J[0][3] = -h * still * x[0] / s;
  for (j = 0; j < 4; j++) J[1][j] = -back * J[0][j], J[2][j] = J[3][j] = 0;
  J[1][1] -= h / FW_HEATER_LAG, J[2][0] = h / FW_BEAD_LAG, J[2][2] = -h / FW_BEAD_LAG;
  r[0] = h * (x[1] - still * ratio * x[0]) / s;
  r[1] = h * (heating - x[1]) / FW_HEATER_LAG - back * r[0];
  r[2] = h * (x[0] - x[2]) / FW_BEAD_LAG, r[3] = 0;
  for (i = 0; i < 4; i++)
    for (j = 0; j < 4; j++) power[i][j] = phi[i][j] = i == j;
  for (k = 1; k <= (int)FW_SERIES_TERMS; k++) {
    for (i = 0; i < 3; i++) x[i] += r[i];
    for (i = 0; i < 4; i++) t[i] = (J[i][0] * r[0] + J[i][1] * r[1] + J[i][2] * r[2]) / (k + 1);
    for (i = 0; i < 3; i++) r[i] = t[i];
    fw_times(J, power, next);
    for (i = 0; i < 4; i++)
      for (j = 0; j < 4; j++) power[i][j] = next[i][j] / k, phi[i][j] += power[i][j];
  }
  f->P[w][3][3] += q, f->P[w][0][0] += m;
  fw_times(phi, f->P[w], next);
  for (i = 0; i < 4; i++)
    for (j = i; j < 4; j++) {
      float sum = next[i][0] * phi[j][0] + next[i][1] * phi[j][1] + next[i][2] * phi[j][2] + next[i][3] * phi[j][3];
      f->P[w][i][j] = f->P[w][j][i] = sum;
    }
  f->P[w][3][3] += q, f->P[w][0][0] += m;
}

static void fw_advance(faintwind *f, float step, float heating, fw_air a) {
  float longest = fw_min(FW_LONGEST_STEP_S, fw_min(FW_BEAD_LAG, FW_HEATER_LAG)), h;
  int n = (int)(step / longest), w, i;
  if (n * longest < step) n++;
  h = step / n;
  fw_still_about(f, f->x[f->chosen][0], a);
  for (w = 0; w < FW_WALKS; w++) {
    float ratio = fw_max(1, fw_min(FW_GREATEST_RATIO, f->x[w][3])) * fw_walks[w], q = 0.5f * h * ratio * ratio;
    f->P[w][3][3] += f->room[w];
    for (i = 0; i < n; i++) fw_part(f, w, h, heating, a, q, 0.5f * h * FW_MODEL_NOISE_K2_S);
  }
}

static int fw_take(faintwind *f, float signal, float read, float warmer, int spike, int switched) { /* whether it began anew */
  int w, i, j;
  for (w = 0; w < FW_WALKS; w++) {
    float bead = f->x[w][2], H = fw_sensitivity(bead, warmer), gain[4];
    f->S[w] = H * H * f->P[w][2][2] + f->noise2;
    f->miss[w] = spike ? 0 : signal - fw_signal(bead, warmer);
    for (i = 0; i < 4; i++) gain[i] = spike ? 0 : f->P[w][i][2] * H / f->S[w], f->x[w][i] += gain[i] * f->miss[w];
    for (i = 0; i < 4; i++)
      for (j = 0; j < 4; j++) f->P[w][i][j] -= gain[i] * gain[j] * f->S[w];
  }
  f->rows = switched ? 0 : f->rows < 1000 ? f->rows + !spike : f->rows;
  if (!switched) return 0;
  if (read <= FW_RESUME_SHARE * FW_STILL_DELTA_K) {
    fw_start(f, read, 0);
    return 1;
  }
  for (w = 0; w < FW_WALKS; w++) {
    f->x[w][3] = fw_max(1, fw_min(3, f->x[w][3]));
    f->P[w][1][1] += FW_SWITCHED_FLOW_SHARE * FW_HEATING * FW_SWITCHED_FLOW_SHARE * FW_HEATING;
    f->P[w][3][3] += FW_SWITCHED_RATIO_VARIANCE;
  }
  return 0;
}

static void fw_weigh(faintwind *f, float step, int fresh) {
  /* scores are kept less that of the strength that speaks, f->lost, so that floats are fine enough */
  float fade = expf(-step / FW_SCORE_MEMORY_S), shift;
  int w;
  for (w = 0; w < FW_WALKS; w++) {
    float z2 = f->miss[w] * f->miss[w] / f->S[w];
    f->score[w] *= fade, f->kept[w] += f->lost * (1 - fade), f->room[w] = 0;
    if (fresh) {
      f->drift[w] = 0;
    } else if (f->rows > (int)FW_SCORE_AFTER_ROWS) {
      f->score[w] -= 0.5f * (logf(f->S[w]) + fw_min(z2, FW_SCORE_CLIP));
      if (fw_abs(f->drift[w]) < 1) f->kept[w] = f->score[w];
      f->usual[w] += (fw_min(z2, FW_USUAL_CLIP) - f->usual[w]) / FW_USUAL_ROWS;
      f->drift[w] = FW_DRIFT_KEEP * f->drift[w] + sqrtf(1 - FW_DRIFT_KEEP * FW_DRIFT_KEEP) * f->miss[w] / sqrtf(f->S[w]);
      if (fw_abs(f->drift[w]) > FW_DRIFT_SURE * fw_max(1, sqrtf(f->usual[w]))) {
        float ratio = FW_JUMP_SHARE * fw_max(1, f->x[w][3]);
        f->room[w] = ratio * ratio;
        f->score[w] = fw_max(f->score[w], f->kept[w] - FW_JUMP_COST);
        f->drift[w] = 0;
      }
    }
  }
  f->lost *= fade;
  for (w = 0; w < FW_WALKS; w++)
    if (f->score[w] > f->score[f->chosen] + FW_SWITCH_MARGIN) f->chosen = w;
  shift = f->score[f->chosen], f->lost += shift;
  for (w = 0; w < FW_WALKS; w++) f->score[w] -= shift, f->kept[w] -= shift;
}

static float fw_calibration_part(float speed) {
  float x = logf(speed);
  int i = 1, last = (int)(sizeof fw_u_speed / sizeof *fw_u_speed) - 1;
  while (i < last && fw_u_speed[i] < x) i++;
  x = fw_max(0, fw_min(1, (x - fw_u_speed[i - 1]) / (fw_u_speed[i] - fw_u_speed[i - 1])));
  return fw_u_loss[i - 1] + x * (fw_u_loss[i] - fw_u_loss[i - 1]);
}

static float fw_air_part(float signal, float delta, float still, fw_air a, float air_C, float pressure_hPa, float rh_pct) {
  fw_air hot = fw_air_of(air_C + FW_U_AIR_UNRECORDED_K, pressure_hPa, rh_pct);
  float read = fw_bead_K(signal, a.air_K), there = fw_bead_K(signal, hot.air_K), change = logf(fw_loss(0, delta, hot) / still);
  return change + (fw_abs(read) < 0.1f || read * there <= 0 ? 0 : logf(there / read));
}

static faintwind_speed fw_tell(faintwind *f, float signal, fw_air a, int gap) {
  const float *x = f->x[f->chosen];
  float least = fw_max(x[3], FW_LEAST_RATIO), V = f->P[f->chosen][3][3] / (least * least), delta = fw_max(x[0], FW_LEAST_SHOWN_K);
  float ratio = fw_max(0.3f, fw_min(50, x[3])), L = logf(ratio), still = fw_loss(0, delta, a), loss = still * ratio;
  float away = sqrtf(3 * V), speed = fw_speed(loss, delta, a), at, slope, share, part, u2, wide, side, mixed;
  faintwind_speed told = {0, 0, 0};
  if (V >= FW_LEAST_BEND_VARIANCE && L >= FW_STILL_AWAY * away)
    speed += (fw_speed(loss * fw_max(0, 1 - away), delta, a) - 2 * speed + fw_speed(loss * (1 + away), delta, a)) / 6;
  at = fw_max(speed, FW_LEAST_SLOPE_SPEED_M_S), share = fw_max(0, fw_min(3, x[1] / (loss * delta)));
  slope = fw_loss(at, delta, a) * 0.02f * at / (fw_loss(1.01f * at, delta, a) - fw_loss(0.99f * at, delta, a));
  part = fw_calibration_part(at), u2 = part * part + V;
  part = FW_U_STILL / fw_max(1, ratio), u2 += part * part;
  part = f->hidden / fw_sensitivity(delta, a.air_K - FW_REFERENCE_K) / delta, u2 += part * part;
  part = f->supply == FW_NO_SUPPLY ? FW_U_HEATING_UNSEEN * share : 0, u2 += part * part;
  part = f->air_seen ? 0 : fw_air_part(signal, delta, still, a, f->air_C, f->pressure_hPa, f->rh_pct), u2 += part * part;
  wide = FW_COVERAGE_FACTOR * sqrtf(u2), side = wide * slope;
  if (side >= FW_NEARLY_STRAIGHT * speed)
    side = fw_max(fw_speed(still * expf(fw_max(0, L) + wide), delta, a) - speed, speed - fw_speed(still * expf(L - wide), delta, a));
  mixed = speed > 0 ? FW_GRAVITY * delta * FW_BALL_DIAMETER_M / ((a.air_K + delta / 2) * speed * speed) : 0;
  part = mixed > FW_DIRECTION_FROM ? FW_DIRECTION_SHARE * mixed / (1 + mixed) * speed : 0;
  told.speed_m_s = speed, told.u95_m_s = sqrtf(side * side + part * part);
  if (V < FW_SETTLED_VARIANCE || f->since_begin > FW_SURELY_SETTLED_S) f->settled = 1;
  if (gap && !f->gap_open) f->before_gap = f->last_v;
  f->gap_open = gap || (f->gap_open && V > FW_GAP_VARIANCE_RATIO * f->before_gap), f->last_v = V;
  if (speed < FW_FLOOR_M_S || L <= wide) told.flags |= FAINTWIND_FLOOR;
  if (speed > FW_TOP_M_S) told.flags |= FAINTWIND_ABOVE;
  if (!f->settled || fw_min(x[0], x[2]) < FW_WARM_SHARE * FW_STILL_DELTA_K) told.flags |= FAINTWIND_WARMUP;
  if (f->gap_open) told.flags |= FAINTWIND_GAP;
  if (f->supply == FW_OUT || f->supply == FW_OFF) told.flags |= FAINTWIND_POWER;
  return told;
}

faintwind_speed faintwind_row(faintwind *f, float step_s, float signal, float air_C, float supply_V) {
  faintwind_speed bad = {0, 0, FAINTWIND_BAD};
  int first = !f->begun, kind, anew, was_off = f->supply == FW_OFF, changed, fresh;
  float heating, read;
  fw_air a;
  if (!(fw_abs(signal) < FAINTWIND_UNKNOWN) || !(step_s > 0 || first)) return bad;
  f->begun = 1;
  kind = first ? FW_LONG_GAP : fw_kind(f, step_s, signal);
  anew = kind == FW_LONG_GAP;
  fw_follow_air(f, first, step_s, air_C);
  heating = fw_follow_supply(f, step_s, supply_V);
  changed = !first && was_off != (f->supply == FW_OFF);
  a = fw_air_of(f->air_C, f->pressure_hPa, f->rh_pct);
  read = fw_bead_K(signal, a.air_K);
  if (kind != FW_SPIKE) f->last_signal = signal, f->last_delta = fw_abs(read), f->since_signal = 0;
  fw_noise(f, step_s, signal);
  fresh = anew;
  if (anew) {
    fw_start(f, read, read > FW_RESUME_SHARE * FW_STILL_DELTA_K ? heating : 0);
  } else {
    fw_advance(f, step_s, heating, a);
    fresh = fw_take(f, signal, read, a.air_K - FW_REFERENCE_K, kind == FW_SPIKE, changed);
  }
  fw_weigh(f, step_s, fresh || f->supply == FW_OFF);
  f->since_begin = anew || changed || f->supply == FW_OFF ? 0 : f->since_begin + step_s;
  if (f->since_begin == 0) f->settled = 0;
  return fw_tell(f, signal, a, kind == FW_GAP || (anew && !first));
}
#endif

#ifdef FAINTWIND_MAIN
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const char *fw_names[] = {"time_s", "@column@", "air_C", "pressure_hPa", "rh_pct", "supply_V"};
static const float fw_vectors[][7] = {@vectors@};

/* the cell of a column in a line, by position; returns whether it is a number */
static int fw_cell(const char *line, int column, double *value) {
  int quoted = 0;
  char *end;
  if (column < 0) return 0;
  for (; *line && column > 0; line++) {
    if (*line == '"') quoted = !quoted;
    else if (*line == ',' && !quoted) column--;
  }
  *value = strtod(line, &end);
  while (*end == ' ') end++;
  return column == 0 && end != line && (*end == ',' || !*end) && *value == *value;
}

static void fw_write(const char *line, faintwind_speed s) {
  static const char *words[] = {"floor", "above", "warmup", "gap", "power", "bad"};
  int i, any = 0;
  if (s.flags & FAINTWIND_BAD) printf("%s,,,", line);
  else printf("%s,%.5f,%.5f,", line, s.speed_m_s, s.u95_m_s);
  for (i = 0; i < 6; i++)
    if (s.flags & (1u << i)) printf("%s%s", any++ ? "+" : "", words[i]);
  printf("\n");
  fflush(stdout);
}

static int fw_check(void) {
  float worst = 0;
  unsigned i;
  for (i = 0; i < sizeof fw_vectors / sizeof *fw_vectors; i++) {
    const float *v = fw_vectors[i];
    worst = fw_max(worst, fw_abs(faintwind_formula(v[0], v[1], v[2], v[3], v[4], v[5]) / v[6] - 1));
  }
  printf("state %u bytes, tables %u bytes, largest difference from the test vectors: %.5f %%\n", (unsigned)sizeof(faintwind),
         (unsigned)(sizeof fw_walks + sizeof fw_u_speed + sizeof fw_u_loss), 100 * worst);
  return 0;
}

int main(int count, char **arguments) {
  static faintwind f;
  static char line[65536];
  double v[6], last = 0;
  int column[6], head = 0, i;
  if (count > 1 && !strcmp(arguments[1], "--check")) return fw_check();
  faintwind_begin(&f);
  while (fgets(line, sizeof line, stdin)) {
    char *text = line;
    int known[6];
    text[strcspn(text, "\r\n")] = 0;
    if (!strncmp(text, "\xef\xbb\xbf", 3)) text += 3;
    if (!head && *text == '#') {
      if (!strncmp(text, "# start:", 8)) printf("%s\n", text);
    } else if (!head) {
      const char *cell = text;
      for (i = 0; i < 6; i++) column[i] = -1;
      for (int at = 0; cell; at++, cell = strchr(cell, ',') ? strchr(cell, ',') + 1 : 0)
        for (i = 0; i < 6; i++)
          if (!strncmp(cell, fw_names[i], strlen(fw_names[i])) && strchr(",", cell[strlen(fw_names[i])])) column[i] = at;
      if (column[0] < 0 || column[1] < 0) {
        fprintf(stderr, "the log needs the columns time_s and @column@\n");
        return 3;
      }
      printf("%s,speed_m_s,u95_m_s,flag\n", text);
      head = 1;
    } else if (*text) {
      faintwind_speed s = {0, 0, FAINTWIND_BAD};
      for (i = 0; i < 6; i++) known[i] = fw_cell(text, column[i], &v[i]);
      if (known[0] && known[1] && (!f.begun || v[0] > last)) {
        if (known[3]) f.pressure_hPa = (float)v[3];
        if (known[4]) f.rh_pct = (float)v[4];
        s = faintwind_row(&f, f.begun ? (float)(v[0] - last) : 0, (float)v[1], known[2] ? (float)v[2] : FAINTWIND_UNKNOWN,
                          known[5] ? (float)v[5] : FAINTWIND_UNKNOWN);
        last = v[0];
      }
      fw_write(text, s);
    }
  }
  return 0;
}
#endif
#endif
