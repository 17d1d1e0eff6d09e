package faintwind.device;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;

/**
 * A source of which the first events were looked at already: they are given again, then the rest.
 */
public final class PeekedSource implements SampleSource {
  private final SampleSource source;
  private final Queue<SourceEvent> first;

  public PeekedSource(SampleSource source, List<SourceEvent> first) {
    this.source = source;
    this.first = new ArrayDeque<>(first);
  }

  @Override
  public SourceEvent next() throws IOException, InterruptedException {
    SourceEvent event = first.poll();
    return event == null ? source.next() : event;
  }

  @Override
  public void close() throws IOException {
    source.close();
  }
}
