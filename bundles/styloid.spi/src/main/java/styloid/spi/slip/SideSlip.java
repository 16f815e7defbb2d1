package styloid.spi.slip;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import styloid.model.Message;
import styloid.spi.Texts;

/** The value fits the other limb, now or at the last visit, and does not fit this one. */
final class SideSlip {
  private static final Set<Comparison.Kind> OWN =
      Set.of(Comparison.Kind.TRIALS, Comparison.Kind.LAST);

  private SideSlip() {}

  static Optional<Doubt> look(Around around) {
    double at = around.place();
    Optional<Comparison> here =
        around.own().stream()
            .filter(c -> OWN.contains(c.kind()))
            .max(Comparator.comparingDouble(c -> c.fit(at)));
    Optional<Comparison> there =
        around.other().stream().max(Comparator.comparingDouble(c -> c.fit(at)));
    if (here.isEmpty() || there.isEmpty()) {
      return Optional.empty();
    }
    double strength = there.get().fit(at) - here.get().fit(at);
    Message question =
        Message.of(
            Texts.COMMON,
            "slip.side",
            around.typed(),
            said(here.get(), around),
            said(there.get(), around),
            around.side().opposite());
    return Optional.of(new Doubt(Slip.SIDE, question, strength));
  }

  private static Message said(Comparison comparison, Around around) {
    boolean own = OWN.contains(comparison.kind());
    boolean now =
        comparison.kind() == Comparison.Kind.TRIALS
            || comparison.kind() == Comparison.Kind.OTHER_NOW;
    return Message.of(
        Texts.COMMON,
        now ? "slip.side.now" : "slip.side.last",
        own ? around.side() : around.side().opposite(),
        comparison.about());
  }
}
