package org.cotyla.testcases.spark;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.Iterator;
import java.util.List;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.cotyla.evaluate.Engine;
import org.cotyla.expression.FormulaLibrary;
import org.cotyla.retrospective.PartJudge;
import org.cotyla.retrospective.PartTotals;
import org.cotyla.workbook.Workbooks;
import scala.Tuple2;

/**
 * Judges past cases in Apache Spark. An engine does not travel: the workbook's bytes are sent to
 * every machine once, each part of the rows builds its own engine from them, and only totals come
 * back.
 */
final class SparkRetrospect implements Serializable {

  private static final long serialVersionUID = 1;

  private final Broadcast<byte[]> workbook;
  private final LocalDate today;

  private SparkRetrospect(Broadcast<byte[]> workbook, LocalDate today) {
    this.workbook = workbook;
    this.today = today;
  }

  /** The totals of a CSV text with a row to the line, in so many parts or more. */
  static PartTotals run(
      JavaSparkContext spark, byte[] workbook, String csv, int parts, LocalDate today) {
    SparkRetrospect audit = new SparkRetrospect(spark.broadcast(workbook), today);
    JavaRDD<String> lines = spark.textFile(csv, parts);
    String headings = lines.first();
    return lines
        .zipWithIndex()
        .mapPartitions(part -> audit.judge(headings, part))
        .reduce(PartTotals::merge);
  }

  private Iterator<PartTotals> judge(String headings, Iterator<Tuple2<String, Long>> part) {
    Engine engine =
        Engine.of(Workbooks.read("protocol.xlsx", workbook.value(), FormulaLibrary.installed()));
    PartJudge judge = PartJudge.of(engine, headings, today);
    Iterator<PartJudge.Line> rows =
        new Iterator<>() {
          @Override
          public boolean hasNext() {
            return part.hasNext();
          }

          /** The line of headings counts as a blank one. */
          @Override
          public PartJudge.Line next() {
            Tuple2<String, Long> line = part.next();
            return new PartJudge.Line(line._2() + 1, line._2() == 0 ? "" : line._1());
          }
        };
    return List.of(judge.judge(rows)).iterator();
  }
}
