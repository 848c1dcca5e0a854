/** Lets a ribbon button ask the pane, which lives in the same runtime, for a piece of work. */
export interface Bell {
  /** Resolves to false when the work failed or nobody listens. */
  ring(): Promise<boolean>;
  answer(work: () => Promise<boolean>): () => void;
}
/** A button that is pressed while the pane still loads waits so long for somebody to answer. */
export const PATIENCE_MS = 15_000;
export function createBell(): Bell {
  let current: (() => Promise<boolean>) | null = null;
  const waiting = new Set<() => void>();
  const somebody = (): Promise<void> =>
    new Promise((resolve) => {
      const come = (): void => {
        clearTimeout(timer);
        waiting.delete(come);
        resolve();
      };
      const timer = setTimeout(come, PATIENCE_MS);
      waiting.add(come);
    });
  return {
    ring: async () => {
      if (current === null) await somebody();
      return current === null ? false : current();
    },
    answer: (work) => {
      current = work;
      for (const come of [...waiting]) come();
      return () => {
        if (current === work) current = null;
      };
    },
  };
}
