package faintwind.ui.design;

/** The pages of the design screen, in the order in which a newcomer needs them. */
public enum DesignPage {
  /** What is wanted, and two or three designs for it. */
  WISH,
  /** The design that is being chosen, and what follows from it. */
  DESIGN,
  /** What parts that are on hand would change. */
  OTHERS,
  /** Several designs in one table. */
  SIDE,
  /** What to buy. */
  PARTS
}
