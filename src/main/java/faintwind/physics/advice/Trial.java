package faintwind.physics.advice;

import faintwind.physics.design.Design;

/**
 * One combination at its nominals.
 *
 * @param design the combination
 * @param smallest_m_s smallest speed told from still air, m/s, at the pessimistic end of its range
 * @param tau_s time constant at 1 m/s, s
 * @param still_K delta in still air, K
 * @param hidden share of the speed at 1 m/s that a difference of the air between the balls, and
 *     where it shines the sun, can hide
 * @param leads share of the power that the leads take in still air
 */
record Trial(
    Design design,
    double smallest_m_s,
    double tau_s,
    double still_K,
    double hidden,
    double leads) {}
