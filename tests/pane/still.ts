/** What every test of the page needs: nothing moves, and a busy machine gets its time. */
import { configure } from "@testing-library/react";

// The page stand-in starts animations but rejects them when they are cut short, which no browser reports.
Object.defineProperty(Element.prototype, "animate", { value: undefined, configurable: true });

configure({ asyncUtilTimeout: 5000 });
