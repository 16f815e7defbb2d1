package styloid.form;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ToneTest {
  @Test
  void theWaveSwingsEightHundredEightyTimesASecondAndFadesAtBothEnds() {
    byte[] wave = Tone.wave(22_050);
    int rises = 0;
    for (int i = 1; i < wave.length; i++) {
      rises += wave[i - 1] < 0 && wave[i] >= 0 ? 1 : 0;
    }
    assertEquals(880 / 3.0, rises, 2);
    assertEquals(0, wave[0]);
    assertEquals(0, wave[wave.length - 1], 1);
  }

  @Test
  void whereThereIsNoSpeakerNothingFails() {
    assertDoesNotThrow(() -> Tone.ofSpeaker().play());
  }
}
