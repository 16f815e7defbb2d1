package styloid.workbook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import styloid.model.Absence;
import styloid.model.Evaluation;
import styloid.spi.Caseload;

/**
 * The first sheet of a caseload: counts, completeness, what is missing and why, and the change of
 * one measure by diagnosis group. All are formulas over the other sheets; the measure can be
 * changed.
 */
final class CaseloadSummary {
  private static final String CHOICE = "$B$4";

  private final Caseload caseload;
  private final CaseloadTally tally;
  private final Say say;
  private final StreamedPackage file;
  private final RowText row = new RowText();
  private int number;

  /** A sheet and its last row. */
  record Part(String name, int last) {
    String column(String letter) {
      return "'" + name.replace("'", "''") + "'!$" + letter + "$2:$" + letter + "$" + last;
    }
  }

  /** The sheets the formulas read. */
  record Parts(Part evaluations, List<Part> measures) {}

  CaseloadSummary(Caseload caseload, CaseloadTally tally, Say say, StreamedPackage file) {
    this.caseload = caseload;
    this.tally = tally;
    this.say = say;
    this.file = file;
  }

  int write(Parts parts) throws IOException {
    int sheet = file.beginSheet(say.own("sheet.summary"), head(List.of(60, 30, 24), 0));
    line(say.own("caseload.title"), StreamStyles.TITLE);
    line(say.own(caseload.identified() ? "caseload.identified" : "caseload.coded"), 0);
    line(say.own("scope.1"), StreamStyles.TEXT);
    row.begin(++number).text(say.own("caseload.measure"), StreamStyles.HEAD);
    file.write(row.text(choice(), StreamStyles.CHOICE).end());
    counts(parts.evaluations());
    missing(parts.evaluations());
    if (caseload.identified()) {
      groups(parts);
    } else {
      line(say.own("caseload.no-groups"), StreamStyles.TEXT);
    }
    file.endSheet(tail("", false));
    return sheet;
  }

  private String choice() {
    String commonest = tally.commonest();
    return commonest.isEmpty() ? say.own("nothing") : commonest;
  }

  private void line(String text, int style) throws IOException {
    file.write(row.begin(++number).text(text, style).end());
  }

  private void counts(Part evaluations) throws IOException {
    number++;
    line(say.own("caseload.counts"), StreamStyles.HEAD);
    String states = evaluations.column("D");
    String signed = say.texts().word(Evaluation.State.SIGNED);
    count("evaluations-count", "COUNTA(" + evaluations.column("A") + ")", tally.evaluations);
    count("patients", "COUNTIF(" + evaluations.column("E") + ",1)", tally.patients);
    count("signed", "COUNTIF(" + states + ",\"" + signed + "\")", tally.signed);
    count("values", "SUM(" + evaluations.column("K") + ")", tally.values);
    String all = "SUM(" + evaluations.column("K") + ")+" + absentSum(evaluations);
    double share =
        tally.values + tally.absent() == 0
            ? 0
            : (double) tally.values / (tally.values + tally.absent());
    row.begin(++number).text(say.own("caseload.complete"), StreamStyles.TEXT);
    String formula = "IF(" + all + "=0,0,SUM(" + evaluations.column("K") + ")/(" + all + "))";
    file.write(row.formula(formula, share, StreamStyles.LIVE_SHARE).end());
  }

  private void count(String key, String formula, double value) throws IOException {
    row.begin(++number).text(say.own("caseload." + key), StreamStyles.TEXT);
    file.write(row.formula(formula, value, StreamStyles.LIVE).end());
  }

  private static String absentSum(Part evaluations) {
    ArrayList<String> sums = new ArrayList<>();
    for (int i = 0; i < Absence.Reason.values().length; i++) {
      sums.add("SUM(" + evaluations.column(String.valueOf((char) ('L' + i))) + ")");
    }
    return String.join("+", sums);
  }

  private void missing(Part evaluations) throws IOException {
    number++;
    line(say.own("caseload.missing"), StreamStyles.HEAD);
    for (Absence.Reason reason : Absence.Reason.values()) {
      String letter = String.valueOf((char) ('L' + reason.ordinal()));
      row.begin(++number).text(say.texts().word(reason), StreamStyles.TEXT);
      long count = tally.absences.getOrDefault(reason, 0L);
      String sum = "SUM(" + evaluations.column(letter) + ")";
      file.write(row.formula(sum, count, StreamStyles.LIVE).end());
    }
  }

  private void groups(Parts parts) throws IOException {
    number++;
    row.begin(++number)
        .text(say.own("caseload.groups"), StreamStyles.HEAD)
        .text(say.own("caseload.evaluations-count"), StreamStyles.HEAD);
    file.write(row.text(say.own("caseload.mean-change"), StreamStyles.HEAD).end());
    for (Map.Entry<String, Integer> group : tally.groups.entrySet()) {
      row.begin(++number).text(group.getKey(), StreamStyles.TEXT);
      String name = "$A" + number;
      String here = "SUMPRODUCT(--(" + parts.evaluations().column("J") + "=" + name + "))";
      row.formula(here, group.getValue(), StreamStyles.LIVE);
      change(parts, group.getKey(), name);
      file.write(row.end());
    }
    if (tally.groups.size() == CaseloadTally.MOST_GROUPS) {
      line(say.own("caseload.more-groups", CaseloadTally.MOST_GROUPS), StreamStyles.TEXT);
    }
  }

  /**
   * Compares the texts themselves: a diagnosis may hold signs that a criterion reads as wildcards.
   */
  private void change(Parts parts, String group, String name) {
    ArrayList<String> sums = new ArrayList<>();
    ArrayList<String> counts = new ArrayList<>();
    for (Part measures : parts.measures()) {
      String which =
          "("
              + measures.column("L")
              + "="
              + name
              + ")*("
              + measures.column("D")
              + "="
              + CHOICE
              + ")";
      sums.add("SUMPRODUCT(" + which + "," + measures.column("K") + ")");
      counts.add("SUMPRODUCT(" + which + "*ISNUMBER(" + measures.column("K") + "))");
    }
    String count = String.join("+", counts);
    String none = say.own("caseload.none");
    String formula =
        "IF(" + count + "=0,\"" + none + "\",(" + String.join("+", sums) + ")/(" + count + "))";
    CaseloadTally.Change change = tally.change(group, tally.commonest());
    if (change.count == 0) {
      row.formula(formula, none, StreamStyles.LIVE);
    } else {
      row.formula(formula, change.mean(), StreamStyles.LIVE);
    }
  }

  /** What stands before the rows of a sheet: what stays in sight, and the columns' widths. */
  static String head(List<Integer> widths, int frozenRows) {
    StringBuilder head = new StringBuilder("<sheetPr><pageSetUpPr fitToPage=\"1\"/></sheetPr>");
    head.append("<sheetViews><sheetView workbookViewId=\"0\">");
    if (frozenRows > 0) {
      head.append("<pane ySplit=\"").append(frozenRows).append("\" topLeftCell=\"A");
      head.append(frozenRows + 1).append("\" activePane=\"bottomLeft\" state=\"frozen\"/>");
    }
    head.append("</sheetView></sheetViews><cols>");
    for (int i = 0; i < widths.size(); i++) {
      head.append("<col min=\"").append(i + 1).append("\" max=\"").append(i + 1);
      head.append("\" width=\"").append(widths.get(i)).append("\" customWidth=\"1\"/>");
    }
    return head.append("</cols>").toString();
  }

  /** What stands after the rows: protection without a password, a filter, how it is printed. */
  static String tail(String filter, boolean landscape) {
    String narrowed = filter.isEmpty() ? "" : "<autoFilter ref=\"" + filter + "\"/>";
    String protection =
        "<sheetProtection sheet=\"1\" objects=\"1\" scenarios=\"1\" formatColumns=\"0\""
            + " formatRows=\"0\" sort=\"0\" autoFilter=\"0\"/>";
    String way = landscape ? " orientation=\"landscape\"" : "";
    return protection
        + narrowed
        + "<pageMargins left=\"0.5\" right=\"0.5\" top=\"0.8\" bottom=\"0.7\" header=\"0.3\""
        + " footer=\"0.3\"/><pageSetup paperSize=\"9\" fitToHeight=\"0\""
        + way
        + "/><headerFooter><oddFooter>&amp;L&amp;A&amp;R&amp;P / &amp;N</oddFooter></headerFooter>";
  }
}
