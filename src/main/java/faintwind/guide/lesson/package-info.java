/** A class of pairs: what it is for, its lessons, and how far its instruments lie apart. */
@NullMarked
package faintwind.guide.lesson;

import org.jspecify.annotations.NullMarked;
