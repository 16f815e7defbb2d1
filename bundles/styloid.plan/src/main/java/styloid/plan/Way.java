package styloid.plan;

/**
 * A way through the groups so far.
 *
 * @param layer the layer it has come to; the number of layers once it is finished
 * @param done groups of that layer that are done
 * @param setting how the patient is placed
 * @param cost of all changes so far
 * @param bound least cost of any whole way that begins like this
 * @param number place in the order the ways were found, to keep the search the same every time
 * @param from the way before the last change; null at the start
 * @param group the group that the last change was made for
 */
record Way(
    int layer, long done, int setting, int cost, int bound, int number, Way from, int group) {

  /** Same key: the same groups are left and the patient is placed alike. */
  long key() {
    return ((long) layer << Layer.MOST | done) << 8 | setting;
  }

  Way bounded(int least, int place) {
    return new Way(layer, done, setting, cost, least, place, from, group);
  }
}
