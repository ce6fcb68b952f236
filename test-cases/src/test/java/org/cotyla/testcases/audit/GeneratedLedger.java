package org.cotyla.testcases.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.cotyla.evaluate.Engine;
import org.cotyla.expression.FormulaLibrary;
import org.cotyla.issue.RejectedException;
import org.cotyla.json.CaseJson;
import org.cotyla.ledger.Advice;
import org.cotyla.ledger.Choice;
import org.cotyla.ledger.Content;
import org.cotyla.ledger.Ledger;
import org.cotyla.ledger.LedgerAddress;
import org.cotyla.ledger.LedgerWriting;
import org.cotyla.ledger.Life;
import org.cotyla.ledger.ProtocolFile;
import org.cotyla.ledger.Recorder;
import org.cotyla.ledger.Registry;
import org.cotyla.ledger.Signer;
import org.cotyla.ledger.SigningKey;
import org.cotyla.protocol.Counts;
import org.cotyla.protocol.Reason;

/**
 * Fills a ledger with invented decisions. Some distinct cases of the library are run and recorded;
 * the rest repeats their recommendations under other references and days, which makes thousands in
 * seconds. The repeated ones have no documents of their own, so this is for audits, not for
 * verifying again.
 */
public final class GeneratedLedger {

  static final LocalDate START = LocalDate.of(2024, 1, 1);
  static final LocalDate LAST = LocalDate.of(2026, 11, 30);

  /** The day of the ledger's last entry, to which the others are followed. */
  static final LocalDate TODAY = LocalDate.of(2026, 12, 1);

  static final String EVENT = "dislocation";

  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-12-01T10:00:00Z"), ZoneOffset.UTC);
  private static final Path HOME = Path.of(System.getProperty("cotyla.home", ".."));
  private static final List<String> ROLES =
      List.of("consultant", "consultant", "consultant", "registrar", "fellow");
  private static final int DISTINCT = 120;

  private final Random random;
  private final List<Fact> facts = new ArrayList<>();
  private List<String> reasons = List.of();

  private GeneratedLedger(long seed) {
    random = new Random(seed);
  }

  /** Arguments: a file that is not there yet, and how many decisions. */
  public static void main(String[] arguments) {
    fill(Path.of(arguments[0]), Integer.parseInt(arguments[1]), 20261215);
  }

  /** A new ledger of so many decisions, and what is in it. */
  static List<Fact> fill(Path file, int decisions, long seed) {
    GeneratedLedger made = new GeneratedLedger(seed);
    SigningKey one = SigningKey.make();
    SigningKey two = SigningKey.make();
    try (Ledger ledger =
        Ledger.found(
            LedgerAddress.ofFile(file),
            CLOCK,
            List.of(
                SigningKey.publicKey("lead", one.publicPem()),
                SigningKey.publicKey("quality lead", two.publicPem())))) {
      ProtocolFile house = house();
      Registry registry = new Registry(ledger);
      registry.approve(house, Optional.of(START), new Signer("lead", one.privatePem()));
      registry.approve(house, Optional.of(START), new Signer("quality lead", two.privatePem()));
      made.reasons = house.protocol().reasons().stream().map(Reason::name).toList();
      List<Content.Recommendation> templates = templates(ledger, house);
      ledger.write(
          writing -> {
            for (int i = 0; i < decisions; i++) {
              made.decide(writing, templates, "G-" + i);
            }
            return true;
          });
    }
    return List.copyOf(made.facts);
  }

  private static ProtocolFile house() {
    try {
      byte[] workbook = Files.readAllBytes(HOME.resolve("rules/acetabular-revision.xlsx"));
      return ProtocolFile.read("house", workbook, FormulaLibrary.installed());
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static List<Content.Recommendation> templates(Ledger ledger, ProtocolFile house) {
    Recorder recorder = new Recorder(ledger, house, Engine.of(house.protocol()));
    List<Content.Recommendation> templates = new ArrayList<>();
    try (Stream<Path> found = Files.walk(HOME.resolve("test-cases/cases"))) {
      List<Path> files =
          found
              .filter(file -> file.toString().endsWith(".json"))
              .filter(file -> !file.toString().endsWith(".expected.json"))
              .sorted()
              .toList();
      int step = Math.max(1, files.size() / DISTINCT);
      for (int i = 0; i < files.size(); i += step) {
        try {
          templates.add(
              recorder
                  .recommend("T-" + i, CaseJson.read(Files.readAllBytes(files.get(i))), START)
                  .content());
        } catch (RejectedException refused) {
          // Some cases of the library are there to be refused.
          continue;
        }
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return templates;
  }

  private void decide(
      LedgerWriting writing, List<Content.Recommendation> templates, String reference) {
    LocalDate advisedOn = START.plusDays(random.nextInt(1050));
    LocalDate day = advisedOn.plusDays(random.nextInt(14));
    boolean advised = random.nextInt(200) > 0;
    Content.Recommendation template = templates.get(random.nextInt(templates.size()));
    Life life = random.nextInt(25) == 0 ? Life.DRAFT : Life.IN_FORCE;
    long entry = 1;
    if (advised) {
      entry =
          writing.append(copy(template, reference, advisedOn, life, Optional.empty())).sequence();
      if (random.nextInt(15) == 0) {
        template = templates.get(random.nextInt(templates.size()));
        entry = writing.append(copy(template, reference, day, life, Optional.of(entry))).sequence();
      }
    }
    boolean strict = day.getYear() != 2025 || day.getMonthValue() != 6;
    Choice construct = choose(template.advice().rankings().get(0), strict ? 80 : 45);
    Choice bearing = choose(template.advice().rankings().get(1), 90);
    boolean followed =
        construct.stood() == Choice.Stood.FIRST && bearing.stood() == Choice.Stood.FIRST;
    Optional<String> reason =
        followed ? Optional.empty() : Optional.of(reasons.get(random.nextInt(reasons.size())));
    String role = ROLES.get(random.nextInt(ROLES.size()));
    long decided =
        writing
            .append(
                new Content.Decision(
                    reference,
                    entry,
                    day,
                    role,
                    List.of(construct, bearing),
                    followed,
                    reason,
                    Optional.empty()))
            .sequence();
    Optional<LocalDate> event = outcome(writing, reference, decided, day);
    LocalDate end = event.orElse(TODAY);
    if (event.isEmpty() && random.nextInt(20) == 0) {
      end = earlier(day.plusDays(1 + random.nextInt(700)), LAST);
      writing.append(
          new Content.Outcome(reference, decided, end, "death", Counts.CENSORING, "registrar"));
    }
    facts.add(
        new Fact(
            reference,
            day,
            role,
            advised ? life.word() : "not recorded",
            construct.option(),
            construct.stood(),
            bearing.stood(),
            reason,
            event,
            end,
            template.advice().missing().size(),
            advised));
  }

  private Optional<LocalDate> outcome(
      LedgerWriting writing, String reference, long decided, LocalDate day) {
    if (random.nextInt(12) > 0) {
      return Optional.empty();
    }
    LocalDate on = day.plusDays((long) Math.abs(random.nextGaussian() * 200));
    if (on.isAfter(LAST)) {
      return Optional.empty();
    }
    writing.append(new Content.Outcome(reference, decided, on, EVENT, Counts.EVENT, "registrar"));
    return Optional.of(on);
  }

  private static LocalDate earlier(LocalDate one, LocalDate other) {
    return one.isBefore(other) ? one : other;
  }

  private Choice choose(Advice.Ranked ranking, int firstOfHundred) {
    int drawn = random.nextInt(100);
    if (drawn >= 98 || ranking.options().isEmpty()) {
      return new Choice(ranking.ranking(), Choice.NOT_LISTED, Choice.Stood.NOT_LISTED);
    }
    List<Advice.OptionStanding> options =
        ranking.options().stream()
            .filter(option -> (option.stood() == Choice.Stood.FIRST) == (drawn < firstOfHundred))
            .toList();
    List<Advice.OptionStanding> some = options.isEmpty() ? ranking.options() : options;
    Advice.OptionStanding chosen = some.get(random.nextInt(some.size()));
    return new Choice(ranking.ranking(), chosen.option(), chosen.stood());
  }

  private static Content.Recommendation copy(
      Content.Recommendation of, String reference, LocalDate day, Life life, Optional<Long> plan) {
    return new Content.Recommendation(
        reference,
        day,
        of.stage(),
        of.protocol(),
        life,
        of.reviewOverdue(),
        of.engineVersion(),
        of.caseDigest(),
        of.findings(),
        of.recommendation(),
        of.advice(),
        plan);
  }
}
