package faintwind.physics.plating;

import faintwind.physics.Constants;

/**
 * A metal deposited from a bath, by Faraday's law m = η·Q·M/(n·F). Molar masses IUPAC; density of
 * the solid metal (a hard deposit can be lighter: gold 17–18 g/cm³).
 */
public enum Deposit {
  NICKEL(58.6934e-3, 2, 8900),
  /** From a bath in which gold is singly charged. */
  GOLD(196.966570e-3, 1, 19_300),
  /** From a bath in which gold is triply charged. */
  GOLD_III(196.966570e-3, 3, 19_300),
  COPPER(63.546e-3, 2, 8920);

  private final double molarMass_kg_mol;
  private final int charges;
  private final double density_kg_m3;

  Deposit(double molarMass_kg_mol, int charges, double density_kg_m3) {
    this.molarMass_kg_mol = molarMass_kg_mol;
    this.charges = charges;
    this.density_kg_m3 = density_kg_m3;
  }

  /** Mass deposited by a charge at an efficiency η, kg. */
  public double mass_kg(double charge_C, double efficiency) {
    return efficiency * charge_C * molarMass_kg_mol / (charges * Constants.FARADAY_C_MOL);
  }

  /** Thickness of that mass on an area, m. */
  public double thickness_m(double charge_C, double efficiency, double area_m2) {
    return mass_kg(charge_C, efficiency) / (density_kg_m3 * area_m2);
  }

  /** Charge for a thickness on an area, C. */
  public double charge_C(double thickness_m, double efficiency, double area_m2) {
    return thickness_m / thickness_m(1, efficiency, area_m2);
  }
}
