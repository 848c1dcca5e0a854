/** Lets a ribbon button ask the pane, which lives in the same runtime, for a piece of work. */
export interface Bell {
  /** Resolves to false when the work failed or nobody listens. */
  ring(): Promise<boolean>;
  answer(work: () => Promise<boolean>): () => void;
}
export function createBell(): Bell {
  let current: (() => Promise<boolean>) | null = null;
  return {
    ring: async () => (current === null ? false : current()),
    answer: (work) => {
      current = work;
      return () => {
        if (current === work) current = null;
      };
    },
  };
}
