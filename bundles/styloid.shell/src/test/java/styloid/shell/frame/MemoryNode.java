package styloid.shell.frame;

import java.util.Map;
import java.util.prefs.AbstractPreferences;

/** Preferences in memory, so that no test touches those of whoever runs it. */
final class MemoryNode extends AbstractPreferences {
  private final Map<String, String> kept;

  MemoryNode(Map<String, String> kept) {
    super(null, "");
    this.kept = kept;
  }

  @Override
  protected void putSpi(String key, String value) {
    kept.put(key, value);
  }

  @Override
  protected String getSpi(String key) {
    return kept.get(key);
  }

  @Override
  protected void removeSpi(String key) {
    kept.remove(key);
  }

  @Override
  protected void removeNodeSpi() {
    kept.clear();
  }

  @Override
  protected String[] keysSpi() {
    return kept.keySet().toArray(String[]::new);
  }

  @Override
  protected String[] childrenNamesSpi() {
    return new String[0];
  }

  @Override
  protected AbstractPreferences childSpi(String name) {
    throw new UnsupportedOperationException();
  }

  @Override
  protected void syncSpi() {
    // in memory
  }

  @Override
  protected void flushSpi() {
    // in memory
  }
}
