/** Ends a run with one plain line of counts, so that a continuous integration log can be read by any tool. */
import type { Reporter, TestModule } from "vitest/node";

export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    let passed = 0,
      failed = 0,
      skipped = 0;
    for (const module of modules) {
      if (module.state() === "failed" && [...module.children.allTests()].every((t) => t.result().state !== "failed")) failed += 1;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === "passed") passed += 1;
        else if (state === "failed") failed += 1;
        else skipped += 1;
      }
    }
    process.stdout.write(`\n${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}\n`);
  }
}
