package faintwind.physics;

/**
 * Where published formulas lie apart: what of their form is uncertain, as numbers to vary.
 *
 * @param convection factor on all convection of a ball
 * @param mixing exponent that puts forced and natural convection together
 * @param wire factor on the convection of thin wires
 */
public record ModelForm(double convection, double mixing, double wire) {
  /** Every formula as published, mixed by the third power. */
  public static final ModelForm PUBLISHED = new ModelForm(1, 3, 1);
}
