/** What is left out and what nobody read, in the place Sources. */
import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it } from "vitest";
import { LEFT_OUT, unconfirmed, type LeftOut } from "../../src/engine/pages/not-judged";
import { SourcesView } from "../../src/taskpane/sources/SourcesView";
import { Unjudged } from "../../src/taskpane/sources/Unjudged";
import "./still";

const user = userEvent.setup();

/** A folded section by its title. */
function section(title: string): HTMLDetailsElement {
  const found = screen.getByRole("heading", { level: 2, name: new RegExp(`^${title}`) }).closest("details");
  if (found === null) throw new Error(`"${title}" is not folded`);
  return found;
}

const search = async (words: string): Promise<void> => user.type(screen.getByRole("searchbox", { name: "Search the sources" }), words);

describe("what is left out", () => {
  it("is a folded section with document, clause, what it says and why it is not judged", () => {
    render(<SourcesView basis={["standard", "practice"]} />);
    const left = section("Left out");
    expect(left.open).toBe(false);
    expect(left).toHaveTextContent(`${String(LEFT_OUT.length)} entries`);
    for (const { document, what, why } of LEFT_OUT) {
      expect(within(left).getByRole("heading", { level: 3, name: document, hidden: true })).toBeInTheDocument();
      expect(left).toHaveTextContent(what);
      expect(left.textContent.replaceAll("\u00a0", " ").toLowerCase()).toContain(why.toLowerCase());
    }
    expect(left).toHaveTextContent("15.4.8 a.1. Superseded by any deformation.");
  });

  it("is searched by the same box, and opens on what it finds", async () => {
    render(<SourcesView basis={["standard"]} />);
    await search("tram points");
    expect(section("Left out").open).toBe(true);
    expect(section("Left out")).toHaveTextContent("1 entry");
    expect(screen.getByRole("status")).toHaveTextContent("No limit matches, but 1 entry below does.");
    await user.clear(screen.getByRole("searchbox"));
    expect(section("Left out").open).toBe(false);
  });

  it("says so where nothing matches", async () => {
    render(<SourcesView basis={["standard"]} />);
    await search("zzz");
    expect(section("Left out")).toHaveTextContent("Nothing in this list matches. Clear the search to see all.");
    expect(section("Unconfirmed, not used")).toHaveTextContent("Nothing in this list matches.");
    expect(screen.getByRole("status")).toHaveTextContent("No limit matches. Clear the search to see all.");
  });
});

describe("what nobody read", () => {
  it("is a folded section with each table row that decides nothing", () => {
    render(<SourcesView basis={["standard"]} />);
    const unread = section("Unconfirmed, not used");
    expect(unread.open).toBe(false);
    expect(within(unread).getAllByRole("listitem", { hidden: true })).toHaveLength(unconfirmed().length);
    expect(unread).toHaveTextContent("chain sling, link thickness: 3/4 in (20 mm), below 0.687 in");
  });

  it("is searched by the same box", async () => {
    render(<SourcesView basis={["standard"]} />);
    await search("0.687");
    expect(section("Unconfirmed, not used").open).toBe(true);
    expect(section("Unconfirmed, not used")).toHaveTextContent("1 entry");
  });

  it("says so where everything was read", () => {
    render(<Unjudged title="Unconfirmed, not used" holds="Held." none="Everything that is held was read." entries={[]} searched={false} />);
    expect(section("Unconfirmed, not used")).toHaveTextContent("0 entries");
    expect(section("Unconfirmed, not used")).toHaveTextContent("Everything that is held was read.");
  });
});

describe("a list that decides nothing", () => {
  const entry: LeftOut = { document: "A standard", clause: "", what: "a figure", why: "no column" };
  it("leaves out a clause that is not there", () => {
    render(<Unjudged title="Left out" holds="Held." none="None." entries={[entry]} searched={false} />);
    expect(within(section("Left out")).getByRole("listitem", { hidden: true })).toHaveTextContent(/^a figureNo column\.$/);
  });
});
