/** What every test of the page needs: nothing moves. */

// The page stand-in starts animations but rejects them when they are cut short, which no browser reports.
Object.defineProperty(Element.prototype, "animate", { value: undefined, configurable: true });
export {};
