package faintwind.calibration;

/** Where numbers come from: an instrument of metal, or the virtual instrument of a rehearsal. */
public enum Provenance {
  MEASURED,
  /** Made up: may be shown and practised with, never taken for a calibration. */
  REHEARSAL
}
