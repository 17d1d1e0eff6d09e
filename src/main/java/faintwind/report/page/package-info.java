/** The page itself: HTML, PDF, chapters, styles and words that every document shares. */
@NullMarked
package faintwind.report.page;

import org.jspecify.annotations.NullMarked;
