package faintwind.ui.part;

/**
 * Something a person may do from the Next line.
 *
 * @param id stable kebab-case id of its button
 * @param label words on the button, verb first
 * @param run what it does, on the JavaFX thread
 */
public record Act(String id, String label, Runnable run) {}
