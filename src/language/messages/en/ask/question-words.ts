/** The words of one prepared question. Names in braces are filled with what was computed. */
export interface QuestionWords {
  readonly title: string;
  /** What was run: the farm, the seasons, what differs. */
  readonly about: string;
  /** The answer for each way it can come out: first the short one, then why. */
  readonly answers: Readonly<Record<string, readonly string[]>>;
  /** What the model leaves out or cannot say here. */
  readonly limits: readonly string[];
  /** What the one or two columns of the table are called. */
  readonly sides: readonly string[];
  /** Lines of the table that no other question has. */
  readonly numbers: Readonly<Record<string, string>>;
  /** The numbers of the model that the answer hangs on. */
  readonly decides: Readonly<Record<string, string>>;
  /** Beside the link to two seasons, where they are not the ones of the question. */
  readonly compareNote?: string;
}
