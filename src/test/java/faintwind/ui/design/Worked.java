package faintwind.ui.design;

import faintwind.job.design.DesignWork;
import faintwind.job.design.Sized;
import faintwind.message.Checked;
import faintwind.ui.Cellar;
import java.io.IOException;
import java.util.Optional;

/** The sample design with the shipped parts, for the models beside the design. */
final class Worked {
  final DesignWork work;
  final Sized sample;

  Worked() throws IOException {
    work = ok(DesignWork.open(Optional.empty()));
    sample = ok(work.read(Cellar.resource("/design/half-inch-copper.json")));
  }

  static <T> T ok(Checked<T> checked) {
    return checked.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }
}
