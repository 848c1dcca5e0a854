/** How much of a long list is shown. The button that shows more may go with the last line, so the first new line takes the focus. */
import { type RefObject, useEffect, useRef, useState } from "react";

interface More {
  readonly shown: number;
  /** The list whose lines are counted. */
  readonly list: RefObject<HTMLUListElement | null>;
  readonly more: () => void;
  /** Back to the first lines. */
  readonly again: () => void;
}
/** `stops` finds in the list what can hold the focus, one for each line. */
export function useMore(step: number, stops: string): More {
  const [shown, setShown] = useState(step);
  const list = useRef<HTMLUListElement>(null);
  const next = useRef<number | null>(null);
  useEffect(() => {
    if (next.current === null) return;
    list.current?.querySelectorAll<HTMLElement>(stops)[next.current]?.focus();
    next.current = null;
  }, [shown, stops]);
  return {
    shown,
    list,
    more: () => {
      next.current = shown;
      setShown(shown + step * 4);
    },
    again: () => {
      setShown(step);
    },
  };
}
