package styloid.model.agreement;

/**
 * Intraclass correlation after Shrout PE, Fleiss JL. 1979. Intraclass correlations: uses in
 * assessing rater reliability. Psychol Bull 86(2):420-428. The first figure is the model: 1 each
 * target has raters of its own, 2 the same raters drawn from many, 3 these raters and no others.
 * The second is what the coefficient is of: one rating, or the mean of those of all raters.
 *
 * <p>Intervals are two-sided. Ratings without any spread have no coefficient.
 */
public enum Intraclass {
  ONE_WAY {
    @Override
    Estimate single(Ratings ratings, double confidence) {
      Ratings.MeanSquares ms = ratings.meanSquares();
      int n = ratings.targets();
      int k = ratings.raters();
      double value = checked((ms.between() - ms.within()) / (ms.between() + (k - 1) * ms.within()));
      FCurve curve = new FCurve(n - 1.0, n * (k - 1.0));
      return byRatio(value, ms.between() / ms.within(), curve, k, confidence);
    }
  },
  /** Raters stand for others; their differences count as error. */
  AGREEMENT {
    @Override
    Estimate single(Ratings ratings, double confidence) {
      Ratings.MeanSquares ms = ratings.meanSquares();
      double n = ratings.targets();
      double k = ratings.raters();
      double value =
          checked(
              (ms.between() - ms.error())
                  / (ms.between() + (k - 1) * ms.error() + k * (ms.raters() - ms.error()) / n));
      if (ms.error() == 0 && ms.raters() == 0) {
        return new Estimate(value, value, value, confidence);
      }
      double freedom = freedom(ms, value, n, k);
      double beyond = 1 - (1 - confidence) / 2;
      double low = new FCurve(n - 1, freedom).quantile(beyond);
      double high = new FCurve(freedom, n - 1).quantile(beyond);
      double rest = k * ms.raters() + (k * n - k - n) * ms.error();
      return new Estimate(
          value,
          n * (ms.between() - low * ms.error()) / (low * rest + n * ms.between()),
          n * (high * ms.between() - ms.error()) / (rest + n * high * ms.between()),
          confidence);
    }

    /** Degrees of freedom of the rest, after Satterthwaite. */
    private double freedom(Ratings.MeanSquares ms, double icc, double n, double k) {
      double byRaters = k * icc * ms.raters();
      double byError = (n * (1 + (k - 1) * icc) - k * icc) * ms.error();
      double sum = byRaters + byError;
      return (k - 1) * (n - 1) * sum * sum / ((n - 1) * byRaters * byRaters + byError * byError);
    }
  },
  /** These raters only; what one gives more than another throughout does not count. */
  CONSISTENCY {
    @Override
    Estimate single(Ratings ratings, double confidence) {
      Ratings.MeanSquares ms = ratings.meanSquares();
      int n = ratings.targets();
      int k = ratings.raters();
      double value = checked((ms.between() - ms.error()) / (ms.between() + (k - 1) * ms.error()));
      FCurve curve = new FCurve(n - 1.0, (n - 1.0) * (k - 1.0));
      return byRatio(value, ms.between() / ms.error(), curve, k, confidence);
    }
  };

  abstract Estimate single(Ratings ratings, double confidence);

  /**
   * Coefficient of one rating: ICC(1,1), ICC(2,1) or ICC(3,1).
   *
   * @param confidence of the interval, above 0 and below 1
   * @throws ArithmeticException when the ratings do not differ at all
   */
  public Estimate ofOne(Ratings ratings, double confidence) {
    Estimate.checkConfidence(confidence);
    return single(ratings, confidence);
  }

  /**
   * Coefficient of the mean of all k raters: ICC(1,k), ICC(2,k) or ICC(3,k), by stepping up that of
   * one.
   *
   * @throws ArithmeticException when the ratings do not differ at all
   */
  public Estimate ofMean(Ratings ratings, double confidence) {
    Estimate one = ofOne(ratings, confidence);
    int k = ratings.raters();
    return new Estimate(
        steppedUp(one.value(), k), steppedUp(one.low(), k), steppedUp(one.high(), k), confidence);
  }

  private static double steppedUp(double icc, int k) {
    return k * icc / (1 + (k - 1) * icc);
  }

  private static double checked(double icc) {
    if (!Double.isFinite(icc)) {
      throw new ArithmeticException("ratings that do not differ have no intraclass correlation");
    }
    return icc;
  }

  private static Estimate byRatio(
      double value, double ratio, FCurve curve, int k, double confidence) {
    if (Double.isInfinite(ratio)) {
      return new Estimate(value, value, value, confidence);
    }
    double beyond = 1 - (1 - confidence) / 2;
    double low = ratio / curve.quantile(beyond);
    double high = ratio * curve.turned().quantile(beyond);
    return new Estimate(value, (low - 1) / (low + k - 1), (high - 1) / (high + k - 1), confidence);
  }
}
