/**
 * A fault or an outage told in words that are ours alone: nothing in them was entered by a person or read from a row of theirs.
 * The only errors whose message goes into the log; of any other only its kind, its code and where it came from are kept.
 */
export class OperatorError extends Error {
  override readonly name = "OperatorError";
}
