package faintwind.ui.frame;

import faintwind.ui.part.Act;
import java.util.Optional;

/**
 * Something chosen or typed that is not on disk.
 *
 * @param question says what it is, and asks what should become of it
 * @param keep keeps it; empty where it is not complete
 * @param drop what dropping it is called
 */
public record Unsaved(String question, Optional<Act> keep, String drop) {}
