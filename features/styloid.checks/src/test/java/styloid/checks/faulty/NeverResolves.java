package styloid.checks.faulty;

/** Imports a package that nobody exports. */
public final class NeverResolves extends Plain {}
