package styloid.grip;

import java.util.List;
import styloid.model.Source;

/** The works this test rests on, apart from the norm tables, which name their own. */
final class Sources {
  /** Three trials a hand, scored by their mean. */
  static final Source MEAN_OF_THREE =
      Source.verified(
          "Mathiowetz V, Kashman N, Volland G, Weber K, Dowe M, Rogers S. 1985. Arch Phys Med"
              + " Rehabil 66(2):69-74 (mean of three trials as the score)");

  static final Source MAXIMUM =
      Source.verified("Cruz-Jentoft AJ et al. 2019. Age Ageing 48(1):16-31 (maximum as the score)");

  static final Source REST =
      Source.verified(
          "a stored test protocol: 60 s between trials of a hand; at least 15 s in another");

  static final Source CV =
      Source.verified("Dvir Z. 1999. Am J Phys Med Rehabil 78(3):216-221 (100 x SD / mean)");

  static final Source CV_LIMIT =
      Source.verified(
          "Variability of grip strength during isometric contraction. 1995. Ergonomics"
              + " 38:1819-1830");

  static final Source CV_USUAL =
      Source.memory("limit of 10 to 15 percent named in teaching texts, recalled, not read");

  static final Source UNITS =
      Source.memory("international pound 0.45359237 kg and standard gravity 9.80665 m/s2, exact");

  static final Source PETERSEN =
      Source.verified(
          "Petersen P, Petrick M, Connor H, Conklin D. 1989. Am J Occup Ther 43(7):444-447");

  static final Source INCEL =
      Source.verified("Incel NA et al. 2002. Singapore Med J 43(5):234-237");

  static final Source CROSBY =
      Source.verified("Crosby CA, Wehbe MA. 1994. J Hand Surg Am 19(4):665-670");

  static final Source KIM =
      Source.verified("Kim JK, Park MG, Shin SJ. 2014. Clin Orthop Relat Res 472(8):2536-2541");

  static final Source BOHANNON =
      Source.verified("Bohannon RW. 2019. J Phys Ther Sci 31:75-78 (review)");

  static final Source NITSCHKE = Source.memory("Nitschke JE et al. 1999. J Hand Ther 12:25-30");

  static final Source EWGSOP2 =
      Source.verified("Cruz-Jentoft AJ et al. 2019. Age Ageing 48(1):16-31 (EWGSOP2)");

  static final Source FNIH =
      Source.verified(
          "FNIH sarcopenia project (Studenski SA et al. 2014. J Gerontol A 69(5):547-558; cut-offs"
              + " read in a secondary text)");

  static final Source OLDER_PEOPLE =
      Source.memory("ages the cut-offs are made for, recalled, not read");

  static final List<Source> COMMON = List.of(Source.commonPractice());

  private Sources() {}
}
