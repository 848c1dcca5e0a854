/** The small button at the right of a cell with a list, and the list it opens. */
import { createElement, type KeyboardEvent, type ReactElement, useEffect, useRef, useState } from "react";

export interface DropDownProps {
  readonly words: readonly string[];
  readonly current: string;
  /** True when the list is asked for by keyboard (Alt and arrow down). */
  readonly open: boolean;
  readonly choose: (word: string) => void;
  readonly leave: () => void;
}
/** The grid hands the properties over inside the popup. */
export function DropDown({ popup }: { popup: { extraProps?: DropDownProps } }): ReactElement | null {
  return popup.extraProps ? createElement(Choices, popup.extraProps) : null;
}
function Choices({ words, current, open, choose, leave }: DropDownProps): ReactElement {
  const [shown, setShown] = useState(open);
  const [at, setAt] = useState(Math.max(0, words.indexOf(current)));
  const list = useRef<HTMLUListElement>(null);
  useEffect(() => {
    if (shown) list.current?.focus();
  }, [shown]);
  useEffect(() => {
    list.current?.children[at]?.scrollIntoView({ block: "nearest" });
  }, [at, shown]);

  const onKey = (event: KeyboardEvent): void => {
    event.stopPropagation();
    if (event.key === "ArrowDown") setAt(Math.min(words.length - 1, at + 1));
    else if (event.key === "ArrowUp") setAt(Math.max(0, at - 1));
    else if (event.key === "Home") setAt(0);
    else if (event.key === "End") setAt(words.length - 1);
    else if (event.key === "Enter" || event.key === " ") choose(words[at] ?? current);
    else if (event.key === "Escape" || event.key === "Tab") {
      setShown(false);
      leave();
    } else return;
    event.preventDefault();
  };

  const items = words.map((word, index) =>
    createElement(
      "li",
      {
        key: word,
        id: `choice-${String(index)}`,
        role: "option",
        "aria-selected": index === at,
        onPointerEnter: () => {
          setAt(index);
        },
        onClick: () => {
          choose(word);
        },
      },
      word,
    ),
  );
  return createElement(
    "div",
    { className: "drop-down" },
    createElement(
      "button",
      {
        type: "button",
        "aria-label": "Choose from the list",
        "aria-haspopup": "listbox",
        "aria-expanded": shown,
        onClick: () => {
          setShown(!shown);
        },
      },
      createElement("span", { "aria-hidden": true }, "▾"),
    ),
    shown &&
      createElement(
        "ul",
        {
          ref: list,
          role: "listbox",
          tabIndex: 0,
          "aria-label": "Choices",
          "aria-activedescendant": `choice-${String(at)}`,
          onKeyDown: onKey,
        },
        ...items,
      ),
  );
}
