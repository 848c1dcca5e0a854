/** Every place, and every list in one, keeps its own scroll position; a place that was not open yet starts on top. */
import { createContext, type RefObject, useLayoutEffect, useRef } from "react";

/** Positions of lists, by their name. They outlast the list, which goes when an item card or another place opens. */
export const ScrollMemory = createContext<Map<string, number>>(new Map());
/** Keeps a position for each key; null starts on top and is not kept. */
export function useScrollOf(key: string | null): RefObject<HTMLDivElement | null> {
  const box = useRef<HTMLDivElement>(null);
  const kept = useRef(new Map<string, number>());
  useLayoutEffect(() => {
    const scroller = scrollerOf(box.current);
    if (scroller === null) return;
    scroller.scrollTop = key === null ? 0 : (kept.current.get(key) ?? 0);
    const keep = ({ target }: Event): void => {
      if (key !== null && (target === scroller || target === document)) kept.current.set(key, scroller.scrollTop);
    };
    document.addEventListener("scroll", keep, true);
    return () => {
      document.removeEventListener("scroll", keep, true);
    };
  }, [key]);
  return box;
}
/** A very low pane scrolls as a whole. */
function scrollerOf(box: HTMLElement | null): Element | null {
  return box !== null && getComputedStyle(box).overflowY === "visible" ? document.scrollingElement : box;
}
