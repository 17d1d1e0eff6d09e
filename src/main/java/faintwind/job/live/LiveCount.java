package faintwind.job.live;

/**
 * What a live recording came to.
 *
 * @param rows rows in the file
 * @param gaps breaks marked in it
 * @param unreadable lines that could not be read
 */
public record LiveCount(long rows, long gaps, long unreadable) {}
