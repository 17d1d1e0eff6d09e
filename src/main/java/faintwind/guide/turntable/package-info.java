/**
 * The guide at the elbow of whoever turns the arm: what to do now, how much is still needed, and at
 * once what is wrong. Fed with readings and with what the person says; knows no clock.
 */
@NullMarked
package faintwind.guide.turntable;

import org.jspecify.annotations.NullMarked;
