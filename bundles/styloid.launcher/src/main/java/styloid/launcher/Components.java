package styloid.launcher;

import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.Arrays;
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
          collect(description, configuration, faults);
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

  private static void collect(Object description, Object configuration, List<Fault> faults)
      throws NoSuchFieldException, IllegalAccessException {
    String name = (String) field(description, "implementationClass");
    int state = (int) field(configuration, "state");
    if (state == FAILED_ACTIVATION) {
      String failure = String.valueOf(field(configuration, "failure"));
      faults.add(Fault.failed(name, failure.lines().findFirst().orElse("")));
    } else if (state == UNSATISFIED_REFERENCE) {
      for (Object missing : (Object[]) field(configuration, "unsatisfiedReferences")) {
        faults.add(Fault.waitsFor(name, service(description, field(missing, "name"))));
      }
    }
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
    return Arrays.toString(new Object[] {reference});
  }

  private static Object field(Object dto, String name)
      throws NoSuchFieldException, IllegalAccessException {
    return dto.getClass().getField(name).get(dto);
  }
}
