package styloid.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.lang.module.ModuleFinder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The table of what each bundle's code may use, as data, against the compiled classes. */
class DependencyRuleTest {
  /** Compile-time only: bnd reads them, no manifest imports them. */
  private static final List<String> ANNOTATIONS =
      List.of("org.osgi.service.component.annotations", "org.osgi.annotation");

  private static final List<String> MODULES =
      List.of("styloid.screen", "styloid.grading", "styloid.goniometry", "styloid.grip");

  /** Bundle: packages it may use, with all below them. A name with "module:" is a JDK module. */
  private static final Map<String, String> TABLE = table();

  private static Map<String, String> table() {
    HashMap<String, String> table = new HashMap<>();
    table.put("styloid.model", "");
    table.put("styloid.spi", "styloid.model");
    MODULES.forEach(module -> table.put(module, "styloid.model styloid.spi"));
    table.put("styloid.plan", "styloid.model styloid.spi");
    table.put("styloid.exchange", "styloid.model styloid.spi com.fasterxml.jackson.core");
    // org.osgi.framework for the registrars of what lies in the clinic's folders alone.
    table.put("styloid.custom", "styloid.model styloid.spi styloid.exchange org.osgi.framework");
    table.put("styloid.store", "styloid.model module:java.sql org.sqlite org.postgresql");
    table.put(
        "styloid.workbook",
        "styloid.model styloid.spi module:java.xml org.apache.poi org.apache.xmlbeans"
            + " org.apache.commons org.openxmlformats");
    table.put(
        "styloid.session", "styloid.model styloid.spi styloid.plan styloid.store styloid.exchange");
    table.put("styloid.figure", "styloid.model styloid.spi javafx");
    // java.desktop for javax.sound.sampled alone: the tone at the end of a hold.
    table.put("styloid.form", "styloid.model styloid.spi javafx module:java.desktop");
    table.put(
        "styloid.shell",
        "styloid.model styloid.spi styloid.plan styloid.figure styloid.form styloid.store"
            + " styloid.session javafx module:java.prefs");
    table.put(
        "styloid.command",
        "styloid.model styloid.spi styloid.plan styloid.store styloid.session styloid.exchange"
            + " picocli com.fasterxml.jackson.core");
    table.put("styloid.launcher", "javafx org.osgi org.apache.felix");
    table.put(
        "styloid.testkit",
        "styloid.model styloid.spi org.junit.jupiter.api org.opentest4j org.apiguardian.api");
    return table;
  }

  static List<String> bundles() {
    return Project.bundles();
  }

  @Test
  void everyBundleHasARowAndEveryRowABundle() {
    assertEquals(new TreeSet<>(TABLE.keySet()), new TreeSet<>(Project.bundles()));
  }

  @ParameterizedTest
  @MethodSource("bundles")
  void usesOnlyWhatItsRowAllows(String bundle) {
    JavaClasses classes = new ClassFileImporter().importPath(Project.classes(bundle));
    Map<String, String> jdk = jdkPackages();
    ArrayList<String> breaches = new ArrayList<>();
    for (JavaClass one : classes) {
      for (Dependency dependency : one.getDirectDependenciesFromSelf()) {
        String target = dependency.getTargetClass().getBaseComponentType().getPackageName();
        if (!allowed(bundle, target, jdk)) {
          breaches.add(one.getSimpleName() + " uses " + target);
        }
      }
    }
    assertEquals(List.of(), breaches.stream().distinct().sorted().toList());
    assertTrue(classes.size() > 1, "nothing was read of " + bundle);
  }

  private static boolean allowed(String bundle, String target, Map<String, String> jdk) {
    if (target.isEmpty() || within(target, bundle)) {
      return true; // primitives and the bundle itself
    }
    List<String> row = Arrays.asList(TABLE.get(bundle).split(" "));
    String module = jdk.get(target);
    if (module != null) {
      return module.equals("java.base") || row.contains("module:" + module);
    }
    return ANNOTATIONS.stream().anyMatch(p -> within(target, p))
        || row.stream().anyMatch(p -> !p.isEmpty() && within(target, p));
  }

  private static boolean within(String name, String parent) {
    return name.equals(parent) || name.startsWith(parent + ".");
  }

  private static Map<String, String> jdkPackages() {
    HashMap<String, String> packages = new HashMap<>();
    ModuleFinder.ofSystem()
        .findAll()
        .forEach(
            m -> m.descriptor().packages().forEach(p -> packages.put(p, m.descriptor().name())));
    return packages;
  }

  @Test
  void noBundleUsesATestModuleOrAnEdge() {
    Set<String> nobodyImports = new HashSet<>(MODULES);
    nobodyImports.addAll(
        List.of("styloid.workbook", "styloid.command", "styloid.shell", "styloid.custom"));
    TABLE.forEach(
        (bundle, row) ->
            Arrays.stream(row.split(" "))
                .forEach(used -> assertTrue(!nobodyImports.contains(used), bundle + ": " + used)));
  }
}
