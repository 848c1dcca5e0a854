/** The trial page: a workbook without Excel around the add-in's own pane, functions and calls. */
import { addressOf } from "../book/address";
import { Book, type Calculator } from "../book/book";
import { WorkbookCalculator } from "../calculation/calculator";
import type { BlankMode } from "../calculation/worksheet-functions";
import { Host } from "../host/host";
import { BookView } from "../view/view";
import { type AddInFunctions, loadFunctions } from "./add-in-functions";
import { element } from "./elements";
import { clearMessages, say, sentenceOf } from "./messages";
import { PaneFrame } from "./pane";
import { followShade } from "./shade";
import { movableEdge } from "./splitter";
import { Unsaved } from "./unsaved";
import { listSamples, openFile, openSample, saveBook, titleOf } from "./workbooks";
import "./style.css";

/** What tests of the page hold on to. `ready` resolves when workbook, formulas and pane stand. */
interface Trial {
  book: Book;
  host: Host;
  view: BookView;
  calculator: WorkbookCalculator;
  ready: Promise<void>;
}
declare global {
  interface Window {
    trial?: Trial;
  }
}
const NOTHING: AddInFunctions = { functions: new Map(), shapes: new Map(), described: [] };
async function start(): Promise<void> {
  const shown: { view?: BookView; pane?: PaneFrame } = {};
  const dark = followShade((on) => {
    shown.view?.dark(on);
    shown.pane?.shade(on);
  });
  movableEdge();
  const pane = new PaneFrame(({ back, by }) => {
    if (back && by === "F6") shown.view?.focus();
    else if (back) element("hide-pane", HTMLButtonElement).focus();
    else element("sample", HTMLSelectElement).focus();
  });
  shown.pane = pane;
  pane.shade(dark);
  const addIn = await loadFunctions("/addin/").catch((failure: unknown) => {
    say(sentenceOf(failure));
    return NOTHING;
  });
  const calculator = new WorkbookCalculator({
    functions: addIn.functions,
    shapes: addIn.shapes,
    onRules: (sheet) => {
      shown.view?.repaint(sheet);
    },
  });
  const reporting = reported(calculator);

  let book = new Book();
  book.addSheet("Sheet1");
  let host = new Host(book, { calculator: reporting });
  const view = new BookView(
    element("grid", HTMLElement),
    addIn.described,
    {
      enter: (sheet, box, rows) => host.type(sheet.name, addressOf(box), rows),
      recalculate: () => reporting.recalculate(book),
      editing: (on) => {
        host.editing = on;
      },
      say,
      select: (sheet, box) => {
        host.select(sheet.name, addressOf(box));
      },
      rulesAt: (sheet, row, column) => calculator.rulesAt(sheet, row, column),
    },
    dark,
  );
  shown.view = view;

  const unsaved = new Unsaved();
  const show = async (opened: Book): Promise<void> => {
    clearMessages();
    host.close();
    book = opened;
    host = new Host(book, { calculator: reporting });
    if (window.trial) Object.assign(window.trial, { book, host });
    view.open(book);
    await reporting.recalculate(book);
    await view.settled();
    unsaved.follow(book);
    if (book.notKept.length > 0) say(`Not shown and not saved here: ${book.notKept.join(", ")}.`);
    if (!(await pane.load(host)))
      say("The pane did not come up within 20 seconds; look at the browser's console, or run npm run build and reload.");
  };

  const samples = await listSamples().catch((failure: unknown) => {
    say(sentenceOf(failure));
    return [];
  });
  const begin = (opening: Promise<Book>): Promise<void> =>
    opening.then(show).catch((failure: unknown) => {
      say(sentenceOf(failure));
    });
  const wanted = new URLSearchParams(window.location.search).get("sample");
  const first = samples.find((name) => name === wanted || name === `${wanted ?? ""}.xlsx`) ?? samples[0];
  const ready = begin(first === undefined ? Promise.resolve(book) : openSample(first));
  window.trial = { book, host, view, calculator, ready };
  connectControls({
    samples,
    first,
    calculator,
    reporting,
    pane,
    view,
    current: () => book,
    unsaved,
    open: (opening) => {
      if (window.trial) window.trial.ready = begin(opening);
    },
  });
  await ready;
}
interface Controls {
  readonly samples: readonly string[];
  readonly first: string | undefined;
  readonly calculator: WorkbookCalculator;
  readonly reporting: Calculator;
  readonly pane: PaneFrame;
  readonly view: BookView;
  readonly current: () => Book;
  readonly unsaved: Unsaved;
  readonly open: (opening: Promise<Book>) => void;
}
function connectControls({ samples, first, calculator, reporting, pane, view, current, unsaved, open }: Controls): void {
  const sample = element("sample", HTMLSelectElement);
  const ownFile = new Option("A file of yours", "");
  ownFile.hidden = true;
  sample.append(...samples.map((name) => new Option(titleOf(name), name)), ownFile);
  sample.value = first ?? "";
  const told = (failure: unknown): void => {
    say(sentenceOf(failure));
  };
  const save = async (): Promise<void> => {
    await saveBook(current());
    unsaved.saved();
  };
  /** Opens another workbook, unless the one that is open was changed and is to stay. */
  const replace = async (name: string, opening: () => Promise<Book>): Promise<boolean> => {
    const choice = await unsaved.before(name);
    if (choice === "stay") return false;
    if (choice === "save") await save();
    open(opening());
    return true;
  };
  let shown = sample.value;
  sample.addEventListener("change", () => {
    const wanted = sample.value;
    // The list names what is open until something else is.
    sample.value = shown;
    replace(titleOf(wanted), () => openSample(wanted))
      .then((done) => {
        if (done) sample.value = shown = wanted;
        sample.focus();
      })
      .catch(told);
  });

  const file = element("file", HTMLInputElement);
  element("open", HTMLButtonElement).addEventListener("click", () => {
    file.click();
  });
  file.addEventListener("change", () => {
    const chosen = file.files?.[0];
    file.value = "";
    if (!chosen) return;
    const opening = (): Promise<Book> =>
      openFile(chosen).then((book) => {
        ownFile.hidden = false;
        ownFile.text = chosen.name;
        sample.value = shown = "";
        return book;
      });
    replace(chosen.name, opening).catch(told);
  });
  element("save", HTMLButtonElement).addEventListener("click", () => {
    save().catch(told);
  });

  const blank = element("blank", HTMLSelectElement);
  blank.value = calculator.blank;
  blank.addEventListener("change", () => {
    calculator.blank = blank.value as BlankMode;
    reporting.recalculate(current()).catch((failure: unknown) => {
      say(sentenceOf(failure));
    });
  });

  const press = (button: HTMLButtonElement, name: string, failed: () => void): void => {
    button.addEventListener("click", () => {
      button.disabled = true;
      pane
        .press(name)
        .catch((failure: unknown) => {
          failed();
          say(sentenceOf(failure));
        })
        .finally(() => {
          button.disabled = false;
        });
    });
  };
  press(element("show-pane", HTMLButtonElement), "ShowPane", () => {
    pane.show(true);
  });
  press(element("rebuild", HTMLButtonElement), "RebuildRegister", () => undefined);

  moveBetweenParts(view, pane);
  element("grid", HTMLElement).addEventListener(
    "keydown",
    (event) => {
      if (!event.altKey || event.key !== "ArrowDown" || !view.openList()) return;
      event.preventDefault();
      event.stopPropagation();
    },
    true,
  );
}
/** Tab moves from cell to cell inside the grid, so F6 leads from one part of the page to the next, and with Shift back. */
function moveBetweenParts(view: BookView, pane: PaneFrame): void {
  const grid = element("grid", HTMLElement);
  const frames = element("pane-frame", HTMLDivElement);
  const stations = [
    () => {
      element("sample", HTMLSelectElement).focus();
    },
    () => {
      view.focus();
    },
    () => {
      pane.focus();
    },
  ];
  window.addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "F6") return;
      event.preventDefault();
      event.stopPropagation();
      const at = grid.contains(document.activeElement) ? 1 : frames.contains(document.activeElement) ? 2 : 0;
      stations[(at + (event.shiftKey ? 2 : 1)) % stations.length]?.();
    },
    true,
  );
}
/** The calculator, with a line in the tool bar about each pass. */
function reported(calculator: WorkbookCalculator): Calculator {
  const status = element("status", HTMLOutputElement);
  return {
    recalculate: async (book) => {
      const slow = setTimeout(() => {
        status.textContent = "Working out formulas…";
      }, 150);
      try {
        await calculator.recalculate(book);
        const { formulas, milliseconds } = calculator.last;
        status.textContent =
          formulas === 0
            ? "Up to date"
            : `${String(formulas)} ${formulas === 1 ? "formula" : "formulas"} worked out in ${milliseconds.toFixed(0)} ms`;
      } finally {
        clearTimeout(slow);
      }
    },
  };
}
start().catch((failure: unknown) => {
  say(`The trial page did not start: ${sentenceOf(failure)}`);
  throw failure;
});
