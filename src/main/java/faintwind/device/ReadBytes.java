package faintwind.device;

/** The last bytes that were read of a file, to find out whether they are still there. */
final class ReadBytes {
  private static final int KEPT = 1 << 14;

  private final byte[] ring = new byte[KEPT];
  private long first;
  private long end;

  /** Nothing was read yet. */
  void clear() {
    end = first;
  }

  void add(byte[] bytes, int from, int length) {
    for (int i = 0; i < length; i++) {
      ring[(int) (end % KEPT)] = bytes[from + i];
      end++;
    }
    first = Math.max(first, end - KEPT);
  }

  /** How many are kept. */
  int count() {
    return (int) (end - first);
  }

  private byte kept(int index) {
    return ring[(int) ((first + index) % KEPT)];
  }

  /** How many of them are the same as these, from the first on. */
  int same(byte[] found, int length) {
    int same = 0;
    while (same < Math.min(length, count()) && found[same] == kept(same)) {
      same++;
    }
    return same;
  }

  /**
   * Keeps only the whole lines among the first so many of them.
   *
   * @return how many bytes these have
   */
  int cut(int bytes) {
    int whole = bytes;
    while (whole > 0 && kept(whole - 1) != '\n') {
      whole--;
    }
    end = first + whole;
    return whole;
  }
}
