package styloid.custom;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.model.ItemId;
import styloid.model.Source;
import styloid.model.Unit;
import styloid.spi.ResultDefinition;

/** How a result comes about. */
sealed interface Rule {
  ResultDefinition result();

  Source source();

  /** Names it reads, as written. */
  Map<String, Reference> reads();

  /**
   * A formula.
   *
   * @param text as written
   * @param units the unit names of a dimension are put in
   */
  record ByFormula(
      ResultDefinition result,
      Source source,
      String text,
      Term formula,
      Map<String, Reference> reads,
      Map<Unit.Dimension, Unit> units)
      implements Rule {}

  /**
   * Classes, by answers first and then by the number's band.
   *
   * @param of what the bands are of; empty when there are none
   */
  record ByClass(
      ResultDefinition result,
      Source source,
      Optional<Reference> of,
      List<Answer> answers,
      List<Draft.Limit> bands,
      Map<String, Reference> reads)
      implements Rule {}

  /** An answer of an item that leads to a class. */
  record Answer(ItemId item, Reference reference, List<String> codes, String to) {}
}
