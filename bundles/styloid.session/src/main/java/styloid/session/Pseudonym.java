package styloid.session;

import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.NoSuchAlgorithmException;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Codes that stand for record numbers. The same number gives the same code under the same key;
 * without the key nobody can tell whose it is (HMAC-SHA-256, RFC 2104; 60 bits of it are shown).
 */
public final class Pseudonym {
  public static final int LEAST_KEY = 16;
  private static final String ALGORITHM = "HmacSHA256";
  private static final String SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
  private static final int SHOWN = 12;

  private final SecretKeySpec key;

  /**
   * Codes under a key.
   *
   * @throws IllegalArgumentException when the key is shorter than {@value #LEAST_KEY} bytes
   */
  public Pseudonym(byte[] key) {
    if (key.length < LEAST_KEY) {
      throw new IllegalArgumentException("a key has at least " + LEAST_KEY + " bytes");
    }
    this.key = new SecretKeySpec(key, ALGORITHM);
  }

  /** The code of a record number. */
  public String of(String recordNumber) {
    byte[] hash;
    try {
      Mac mac = Mac.getInstance(ALGORITHM);
      mac.init(key);
      hash = mac.doFinal(recordNumber.strip().getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException | InvalidKeyException e) {
      throw new IllegalStateException("every Java platform has " + ALGORITHM, e);
    }
    StringBuilder code = new StringBuilder("P-");
    long bits = 0;
    for (int i = 0; i < Long.BYTES; i++) {
      bits = bits << Byte.SIZE | hash[i] & 0xFF;
    }
    for (int i = 0; i < SHOWN; i++) {
      code.append(SIGNS.charAt((int) (bits >>> 59 & 31)));
      bits <<= 5;
    }
    return code.toString();
  }
}
