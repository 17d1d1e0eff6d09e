package faintwind.physics.part;

/**
 * What a part that came from a data file is called.
 *
 * @param id file name without its ending; unique within its kind
 * @param name name in words
 * @param source where its numbers come from, and whether they were seen or are from memory
 */
public record Label(String id, String name, String source) {}
