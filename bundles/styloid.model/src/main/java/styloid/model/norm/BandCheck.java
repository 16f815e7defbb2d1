package styloid.model.norm;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Refuses tables whose bands overlap or leave a hole, or whose hands are named in two ways. */
final class BandCheck {
  private final String file;
  private final boolean points;

  BandCheck(String file, boolean points) {
    this.file = file;
    this.points = points;
  }

  void check(List<NormRow> rows) {
    String naming = naming(rows.get(0));
    for (NormRow row : rows) {
      if (!naming.equals(naming(row))) {
        throw refuse(row, "hands are named in two ways in one table");
      }
    }
    Map<String, List<NormRow>> series =
        rows.stream()
            .collect(
                Collectors.groupingBy(NormRow::series, LinkedHashMap::new, Collectors.toList()));
    series.values().forEach(this::checkSeries);
  }

  private static String naming(NormRow row) {
    if (row.hand() == NormHand.ANY) {
      return "none";
    }
    return row.hand().byDominance() ? "by dominance" : "by side";
  }

  private void checkSeries(List<NormRow> series) {
    Map<Band, List<NormRow>> byAge =
        series.stream()
            .collect(Collectors.groupingBy(NormRow::age, LinkedHashMap::new, Collectors.toList()));
    chain(byAge.values().stream().map(r -> r.get(0)).toList(), NormRow::age, "ages", points);
    byAge.values().forEach(rows -> chain(rows, NormRow::height, "heights", false));
  }

  private void chain(
      List<NormRow> rows, Function<NormRow, Band> which, String what, boolean holesAllowed) {
    List<NormRow> sorted =
        rows.stream().sorted(Comparator.comparingInt(r -> which.apply(r).min())).toList();
    for (int i = 1; i < sorted.size(); i++) {
      NormRow row = sorted.get(i);
      Band before = which.apply(sorted.get(i - 1));
      Band band = which.apply(row);
      if (before.overlaps(band)) {
        throw refuse(
            row, "the " + what + " " + band + " overlap " + before + " of the same series");
      }
      if (!holesAllowed && !before.meets(band)) {
        throw refuse(
            row, "between the " + what + " " + before + " and " + band + " a band is missing");
      }
    }
  }

  private NormTableException refuse(NormRow row, String what) {
    return new NormTableException(file, row.line(), what);
  }
}
