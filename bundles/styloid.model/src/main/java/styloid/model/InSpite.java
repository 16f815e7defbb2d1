package styloid.model;

import java.util.List;

/**
 * Why something was recorded although precautions withheld it. The precautions are kept as they
 * were then, whatever becomes of them later.
 *
 * @param reason as the therapist wrote it, 1 to {@value #LONGEST_REASON} characters
 * @param precautions those that were overridden; empty where they are not known, as in entries made
 *     before they were kept
 */
public record InSpite(String reason, List<Precaution> precautions) {
  public static final int LONGEST_REASON = 500;

  public InSpite {
    precautions = List.copyOf(precautions);
    if (reason == null || reason.isBlank() || reason.length() > LONGEST_REASON) {
      throw new IllegalArgumentException(
          "a reason to override has 1 to " + LONGEST_REASON + " characters");
    }
  }
}
