package org.gaugeline.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TextScanTest {
  private static final long SEED = 20260101;

  /** RFC 3629 by the JDK's own decoder as the second route. */
  @Test
  void refusesExactlyWhatTheDecoderRefuses() {
    SplittableRandom random = new SplittableRandom(SEED);
    int refused = 0;
    for (int i = 0; i < 200_000; i++) {
      byte[] bytes = new byte[random.nextInt(1, 6)];
      for (int j = 0; j < bytes.length; j++) {
        // Leads and continuations mostly, so that valid sequences do occur.
        bytes[j] = (byte) random.nextInt(j == 0 ? 0xC0 : 0x80, j == 0 ? 0xF8 : 0xC4);
      }
      boolean valid = decodes(bytes);
      refused += valid ? 0 : 1;
      assertThat(TextScan.firstFault(bytes) < 0).as("seed %d, round %d", SEED, i).isEqualTo(valid);
    }
    assertThat(refused).isBetween(1000, 199_000);
  }

  private static boolean decodes(byte[] bytes) {
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
      return true;
    } catch (CharacterCodingException e) {
      return false;
    }
  }

  @Test
  void knowsPairsFromLoneSurrogates() {
    assertThat(fault("\"\\ud83d\\ude00\"")).isEqualTo(-1);
    assertThat(fault("\"\\ud83d\"")).isEqualTo(1);
    assertThat(fault("\"a\\ude00\"")).isEqualTo(2);
    assertThat(fault("\"\\ud83d\\ud83d\"")).isEqualTo(1);
    assertThat(fault("\"\\\\ud83d\"")).as("an escaped backslash").isEqualTo(-1);
    assertThat(fault("\"\\u00e9\\n\\\"\"")).isEqualTo(-1);
    assertThat(fault("{\u0000}")).isEqualTo(1);
  }

  private static int fault(String json) {
    return TextScan.firstFault(json.getBytes(StandardCharsets.UTF_8));
  }
}
