/** Something that is to be done at a moment, with all that making it known needs. The times are epoch ms. */
export type RingDue = {
  /** The same for the same thing, however often its time is worked out anew. */
  readonly id: string;
  readonly dueMs: number;
  /** Said on the screen and by the voice as it comes. */
  readonly words: string;
  readonly notice: { readonly title: string; readonly body: string };
  /** Where a tap on the notice leads. */
  readonly path: string;
  /** Who it is about, where several are told in one line. */
  readonly name: string;
  /** Its event; `say` puts a time into words. */
  readonly calendar: (say: (at: number) => string) => {
    readonly summary: string;
    readonly description: string;
    readonly durationMin: number;
  };
};

/** The due times of one thing that is watched: the rack, a kiln run, a melt, a pour. */
export type AlarmSource = {
  readonly key: string;
  readonly dues: readonly RingDue[];
  /** What came before this moment, epoch ms, is no news at the first look. */
  readonly since: number;
  /**
   * What came while nobody looked: `listed` is told in one line and waits in the list of what came due, `rung` rings
   * all the same, as fire and metal do not wait.
   */
  readonly missed: "listed" | "rung";
};
