/** Every place keeps its own scroll position; a place that was not open yet starts on top. */
import { type RefObject, useLayoutEffect, useRef } from "react";

/** Keeps a position for each key; null starts on top and is not kept. */
export function useScrollOf(key: string | null): RefObject<HTMLDivElement | null> {
  const box = useRef<HTMLDivElement>(null);
  const kept = useRef(new Map<string, number>());
  useLayoutEffect(() => {
    const scroller = scrolls(box.current);
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
/** What moves when something in the place is scrolled. */
export function scrollerOf(inside: HTMLElement | null): Element | null {
  return scrolls(inside?.closest<HTMLElement>("#place") ?? null) ?? document.scrollingElement;
}
/** A very low pane scrolls as a whole. */
function scrolls(box: HTMLElement | null): Element | null {
  return box !== null && getComputedStyle(box).overflowY === "visible" ? document.scrollingElement : box;
}
