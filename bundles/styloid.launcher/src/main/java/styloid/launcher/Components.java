package styloid.launcher;

import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;

/**
 * What the component runtime knows of components that do not work. Its types live in a bundle, so
 * the launcher, outside of all bundles, reads them by name.
 */
final class Components {
  private static final String RUNTIME =
      "org.osgi.service.component.runtime.ServiceComponentRuntime";
  private static final int UNSATISFIED_REFERENCE = 2;
  private static final int SATISFIED = 4;
  private static final int FAILED_ACTIVATION = 16;

  private Components() {}

  static List<Fault> faults(BundleContext context) {
    ServiceReference<?> reference = runtime(context);
    if (reference == null) {
      return List.of(Fault.waitsFor("styloid", RUNTIME));
    }
    Object runtime = context.getService(reference);
    try {
      Class<?> type = interfaceOf(runtime);
      ArrayList<Fault> faults = new ArrayList<>();
      Object all =
          type.getMethod("getComponentDescriptionDTOs", Bundle[].class)
              .invoke(runtime, (Object) new Bundle[0]);
      for (Object description : (Collection<?>) all) {
        Object configurations =
            type.getMethod("getComponentConfigurationDTOs", description.getClass())
                .invoke(runtime, description);
        for (Object configuration : (Collection<?>) configurations) {
          collect(context, description, configuration, faults);
        }
      }
      return faults;
    } catch (NoSuchMethodException
        | NoSuchFieldException
        | IllegalAccessException
        | InvocationTargetException e) {
      return List.of(Fault.failed(RUNTIME, e.toString()));
    } finally {
      context.ungetService(reference);
    }
  }

  /** Found whether or not its type, too, is on the launcher's own class path. */
  private static ServiceReference<?> runtime(BundleContext context) {
    try {
      ServiceReference<?>[] found = context.getAllServiceReferences(RUNTIME, null);
      return found == null ? null : found[0];
    } catch (InvalidSyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Class<?> interfaceOf(Object runtime) throws NoSuchMethodException {
    for (Class<?> type = runtime.getClass(); type != null; type = type.getSuperclass()) {
      for (Class<?> offered : type.getInterfaces()) {
        if (offered.getName().equals(RUNTIME)) {
          return offered;
        }
      }
    }
    throw new NoSuchMethodException(RUNTIME);
  }

  private static void collect(
      BundleContext context, Object description, Object configuration, List<Fault> faults)
      throws NoSuchFieldException, IllegalAccessException {
    String name = (String) field(description, "implementationClass");
    int state = (int) field(configuration, "state");
    if (state == FAILED_ACTIVATION) {
      String failure = String.valueOf(field(configuration, "failure"));
      faults.add(Fault.failed(name, deepestCause(failure)));
    } else if (state == SATISFIED && !loads(context, description)) {
      faults.add(Fault.cannotBeMade(name));
    } else if (state == UNSATISFIED_REFERENCE) {
      for (Object missing : (Object[]) field(configuration, "unsatisfiedReferences")) {
        faults.add(Fault.waitsFor(name, service(description, field(missing, "name"))));
      }
    }
  }

  /** The runtime counts a component as in order whose class it could not load. */
  private static boolean loads(BundleContext context, Object description)
      throws NoSuchFieldException, IllegalAccessException {
    long bundle = (long) field(field(description, "bundle"), "id");
    try {
      context.getBundle(bundle).loadClass((String) field(description, "implementationClass"));
      return true;
    } catch (ClassNotFoundException | LinkageError e) {
      return false;
    }
  }

  private static String deepestCause(String stackTrace) {
    String cause = "Caused by: ";
    List<String> causes = stackTrace.lines().filter(line -> line.startsWith(cause)).toList();
    return causes.isEmpty()
        ? stackTrace.lines().findFirst().orElse("")
        : causes.get(causes.size() - 1).substring(cause.length());
  }

  private static String service(Object description, Object reference)
      throws NoSuchFieldException, IllegalAccessException {
    for (Object declared : (Object[]) field(description, "references")) {
      if (field(declared, "name").equals(reference)) {
        Object target = field(declared, "target");
        String type = (String) field(declared, "interfaceName");
        return target == null ? type : type + " " + target;
      }
    }
    return String.valueOf(reference);
  }

  private static Object field(Object dto, String name)
      throws NoSuchFieldException, IllegalAccessException {
    return dto.getClass().getField(name).get(dto);
  }
}
