package faintwind.guide.checklist;

/**
 * Where the two tips of the meter go for a reading.
 *
 * @param scene what lies on the bench: {@code tips-SCENE.svg} under {@code assets/pictures} draws
 *     it
 * @param one where one tip goes
 * @param other where the other tip goes
 */
public record Tips(String scene, ProbePoint one, ProbePoint other) {}
