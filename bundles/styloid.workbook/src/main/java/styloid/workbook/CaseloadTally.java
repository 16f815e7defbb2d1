package styloid.workbook;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import styloid.model.Absence;
import styloid.model.Evaluation;
import styloid.spi.Caseload;

/** What the formulas of a caseload's summary come to, counted while its rows go by. */
final class CaseloadTally {
  /** Diagnosis groups that get a line; a clinic that writes each differently has no groups. */
  static final int MOST_GROUPS = 60;

  private static final int MOST_MEASURES = 2000;

  /** Sum and number of changes. */
  static final class Change {
    double sum;
    int count;

    double mean() {
      return sum / count;
    }
  }

  int evaluations;
  int patients;
  int signed;
  long values;
  final Map<Absence.Reason, Long> absences = new EnumMap<>(Absence.Reason.class);
  final Map<String, Integer> groups = new LinkedHashMap<>();
  private final Map<String, Map<String, Change>> changes = new HashMap<>();
  private final Map<String, Integer> measures = new HashMap<>();

  /** The group a visit counts to: its diagnosis without regard to case; empty without one. */
  static String group(Caseload.Visit visit) {
    String line = visit.diagnosis().replaceAll("\\s+", " ").strip();
    return line.length() <= 120 ? line : line.substring(0, line.offsetByCodePoints(0, 100)) + "…";
  }

  void add(Caseload.Visit visit) {
    evaluations++;
    patients += visit.number() == 1 ? 1 : 0;
    signed += visit.state() == Evaluation.State.SIGNED ? 1 : 0;
    values += visit.values();
    visit.absences().forEach((reason, count) -> absences.merge(reason, (long) count, Long::sum));
    String group = group(visit);
    if (!group.isEmpty() && (groups.containsKey(group) || groups.size() < MOST_GROUPS)) {
      groups.merge(group, 1, Integer::sum);
      for (Caseload.Measure measure : visit.measures()) {
        measure.change().ifPresent(change -> add(group, measure.item(), change));
      }
    }
  }

  private void add(String group, String measure, double change) {
    if (measures.containsKey(measure) || measures.size() < MOST_MEASURES) {
      measures.merge(measure, 1, Integer::sum);
      Change sum =
          changes
              .computeIfAbsent(group, g -> new HashMap<>())
              .computeIfAbsent(measure, m -> new Change());
      sum.sum += change;
      sum.count++;
    }
  }

  long absent() {
    return absences.values().stream().mapToLong(Long::longValue).sum();
  }

  /** The measure with most changes; empty when there is none. */
  String commonest() {
    return measures.entrySet().stream()
        .max(
            Map.Entry.<String, Integer>comparingByValue()
                .thenComparing(Map.Entry.<String, Integer>comparingByKey().reversed()))
        .map(Map.Entry::getKey)
        .orElse("");
  }

  Change change(String group, String measure) {
    return changes.getOrDefault(group, Map.of()).getOrDefault(measure, new Change());
  }
}
