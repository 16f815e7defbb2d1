package styloid.form;

import java.lang.System.Logger.Level;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** A short sound. */
interface Tone {
  /** Returns at once. */
  void play();

  /** A tone of 880 Hz for a third of a second; silence where there is no audio. */
  static Tone ofSpeaker() {
    return () -> {
      Thread player = new Thread(Tone::sound, "styloid-tone");
      player.setDaemon(true);
      player.start();
    };
  }

  private static void sound() {
    AudioFormat format = new AudioFormat(22_050, 8, 1, true, false);
    try (SourceDataLine line = AudioSystem.getSourceDataLine(format)) {
      byte[] wave = wave(22_050);
      line.open(format);
      line.start();
      line.write(wave, 0, wave.length);
      line.drain();
    } catch (LineUnavailableException | RuntimeException | LinkageError e) {
      // A room without a speaker is no fault: the sweep shows the end as well.
      System.getLogger(Tone.class.getName()).log(Level.DEBUG, "no sound", e);
    }
  }

  /** Fades at both ends, so that it does not click. */
  static byte[] wave(int rate) {
    byte[] wave = new byte[rate / 3];
    for (int i = 0; i < wave.length; i++) {
      double edge = Math.min(i, wave.length - 1 - i) / (wave.length / 12.0);
      double swing = Math.sin(2 * Math.PI * 880 * i / rate) * Math.min(1, edge);
      wave[i] = (byte) Math.round(100 * swing);
    }
    return wave;
  }
}
