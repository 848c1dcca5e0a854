import "@testing-library/jest-dom/vitest";
import { cleanup, configure } from "@testing-library/react";
import { afterEach, beforeAll, expect, vi } from "vitest";
import { fetchPlaces } from "../src/taskpane/shell/OpenPlace";

// Two busy cores take their time to draw a popover.
configure({ asyncUtilTimeout: 15_000 });

// In the add-in they are fetched after the first load.
beforeAll(fetchPlaces);

const complaints: string[] = [];
const complain = console.error.bind(console);
vi.spyOn(console, "error").mockImplementation((...parts: unknown[]) => {
  complaints.push(parts.map(String).join(" "));
  complain(...parts);
});

afterEach(() => {
  cleanup();
  const seen = complaints.splice(0);
  expect(seen, "a component wrote to the error console").toEqual([]);
});
