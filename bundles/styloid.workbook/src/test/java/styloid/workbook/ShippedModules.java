package styloid.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import styloid.goniometry.Goniometry;
import styloid.grading.Grading;
import styloid.grip.GripModule;
import styloid.model.Entry;
import styloid.model.Ledger;
import styloid.model.PatientContext;
import styloid.model.Results;
import styloid.screen.Screen;
import styloid.spi.Labels;
import styloid.spi.Report;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;
import styloid.spi.Texts;
import styloid.testkit.SampleEvaluations;

/** A report of the modules that ship, over a made-up evaluation. */
final class ShippedModules {
  private ShippedModules() {}

  /** Every place of every test filled with a value from the seed. */
  static Report report(long seed) {
    SampleEvaluations samples = new SampleEvaluations(seed);
    List<TestModule> modules =
        List.of(new Screen(), new Goniometry(), new Grading(), new GripModule());
    ArrayList<Entry> entries = new ArrayList<>();
    Map<String, Labels> labels = new HashMap<>();
    for (TestModule module : modules) {
      TestDefinition definition = module.definition();
      entries.addAll(samples.full(definition).entries());
      labels.put(definition.id().value(), definition.labels());
    }
    Ledger ledger = Ledger.of(entries);
    PatientContext context = samples.context(samples.patient(), ledger.snapshot());
    ArrayList<Report.Part> parts = new ArrayList<>();
    Results results = Results.empty();
    for (TestModule module : modules) {
      var own = module.results(context.withResults(results));
      results = results.and(own);
      parts.add(new Report.Part(module.definition(), module.sheets(context, own)));
    }
    return new Report(
        context.withResults(results),
        ledger,
        modules.stream().map(TestModule::definition).toList(),
        parts,
        List.of(),
        List.of(),
        List.of(),
        new Texts(labels, Locale.ENGLISH));
  }
}
