package styloid.store;

/** Text that UTF-8 cannot carry, as bytes of UTF-16, high byte first. */
final class Surrogates {
  private Surrogates() {}

  /** Whether the text has no half of a character in it. */
  static boolean arePaired(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean pair =
          Character.isHighSurrogate(c)
              && i + 1 < text.length()
              && Character.isLowSurrogate(text.charAt(i + 1));
      if (pair) {
        i++;
      } else if (Character.isSurrogate(c)) {
        return false;
      }
    }
    return true;
  }

  static byte[] bytes(String text) {
    byte[] bytes = new byte[text.length() * 2];
    for (int i = 0; i < text.length(); i++) {
      bytes[2 * i] = (byte) (text.charAt(i) >> 8);
      bytes[2 * i + 1] = (byte) text.charAt(i);
    }
    return bytes;
  }

  static String text(byte[] bytes) {
    char[] chars = new char[bytes.length / 2];
    for (int i = 0; i < chars.length; i++) {
      chars[i] = (char) ((bytes[2 * i] & 0xFF) << 8 | bytes[2 * i + 1] & 0xFF);
    }
    return new String(chars);
  }
}
