package org.cotyla.workbook;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.cotyla.issue.RejectedException;
import org.cotyla.protocol.Protocol;

/** Any damage gives a refusal or a good read: no other exception, and no hang. */
class DamagedBytesTest {

  private static final byte[] SOUND = SampleWorkbook.soundBytes();

  @Property(tries = 300)
  @Label("a workbook that is cut short anywhere is refused")
  void cutShort(@ForAll @IntRange(min = 0, max = 1_000_000) int at) {
    byte[] file = Arrays.copyOf(SOUND, at % SOUND.length);

    assertThat(assertReadOrRefused(file)).isFalse();
  }

  @Property(tries = 600, edgeCases = EdgeCasesMode.NONE)
  @Label("a workbook with flipped bytes is refused or read")
  void flippedBytes(@ForAll @Size(min = 1, max = 8) List<Integer> places, @ForAll byte value) {
    byte[] file = SOUND.clone();
    places.forEach(place -> file[Math.floorMod(place, file.length)] ^= value);

    assertReadOrRefused(file);
  }

  @Property(tries = 600, edgeCases = EdgeCasesMode.NONE)
  @Label("a workbook with flipped bytes in its directory is refused or read")
  void flippedDirectory(@ForAll @Size(min = 1, max = 4) List<Integer> places, @ForAll byte value) {
    byte[] file = SOUND.clone();
    int directory = file.length - 900;
    places.forEach(place -> file[directory + Math.floorMod(place, 900)] ^= value);

    assertReadOrRefused(file);
  }

  @Property(tries = 1200, edgeCases = EdgeCasesMode.NONE)
  @Label("a workbook with flipped bytes in an unpacked part is refused or read")
  void flippedPart(
      @ForAll int which, @ForAll @Size(min = 1, max = 5) List<Integer> places, @ForAll byte value) {
    byte[] file =
        Zips.changed(
            SOUND,
            parts -> {
              byte[] part = anyPart(parts, which);
              places.forEach(place -> part[Math.floorMod(place, part.length)] ^= value);
            });

    assertReadOrRefused(file);
  }

  @Property(tries = 600, edgeCases = EdgeCasesMode.NONE)
  @Label("a workbook with a number of its XML replaced by any other is refused or read")
  void otherNumbers(@ForAll int which, @ForAll int place, @ForAll long number) {
    byte[] file =
        Zips.changed(
            SOUND,
            parts -> {
              String name = List.copyOf(parts.keySet()).get(Math.floorMod(which, parts.size()));
              String text = new String(parts.get(name), UTF_8);
              int at = Math.floorMod(place, text.length());
              String edited =
                  text.substring(0, at)
                      + text.substring(at).replaceFirst("\\d+", String.valueOf(number));
              parts.put(name, edited.getBytes(UTF_8));
            });

    assertReadOrRefused(file);
  }

  private static byte[] anyPart(Map<String, byte[]> parts, int which) {
    List<byte[]> all = new ArrayList<>(parts.values());
    return all.get(Math.floorMod(which, all.size()));
  }

  /** Says whether it was read; every exception but a refusal with issues fails the test. */
  private static boolean assertReadOrRefused(byte[] file) {
    return assertTimeout(
        Duration.ofSeconds(5),
        () -> {
          try {
            Protocol protocol = Workbooks.read("rods.xlsx", file, List.of());
            assertThat(protocol.fields()).isNotEmpty();
            return true;
          } catch (RejectedException refused) {
            assertThat(refused.issues()).isNotEmpty();
            return false;
          }
        });
  }
}
